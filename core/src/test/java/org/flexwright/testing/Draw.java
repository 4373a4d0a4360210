package org.flexwright.testing;

import java.util.Random;

/** Random numbers of one try; the same try draws the same numbers again. */
public final class Draw {
  private final Random random;

  Draw(long seed) {
    // neighbouring seeds give nearly the same first number unless they are stirred
    random = new Random(seed * 0x9E3779B97F4A7C15L ^ (seed >>> 7));
  }

  /** Draws a number between two ends, evenly in its logarithm; both ends above 0. */
  public double between(double low, double high) {
    return low * Math.pow(high / low, random.nextDouble());
  }

  /** Draws one of the given values. */
  @SafeVarargs
  public final <T> T oneOf(T... values) {
    return values[random.nextInt(values.length)];
  }
}
