package org.flexwright.evidence;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * With which power a result follows each uncertainty factor: d ln(result) / d ln(factor), at the
 * state the result was computed for. Immutable and thread-safe.
 */
public final class Exponents {

  private static final Exponents NONE = new Exponents(new double[Factor.values().length]);

  private final double[] power;

  private Exponents(double[] power) {
    this.power = power;
  }

  /**
   * A result that follows no factor.
   *
   * @return zero exponents
   */
  public static Exponents none() {
    return NONE;
  }

  /**
   * These exponents with one of them changed.
   *
   * @param factor which one
   * @param exponent the new value, finite
   * @return the new exponents
   */
  public Exponents with(Factor factor, double exponent) {
    double[] p = power.clone();
    if (!Double.isFinite(exponent)) {
      Require.finite("exponent of the " + factor, exponent, "");
    }
    p[factor.ordinal()] = exponent;
    return new Exponents(p);
  }

  /**
   * The exponent of one factor.
   *
   * @param factor which one
   * @return d ln(result) / d ln(factor)
   */
  public double of(Factor factor) {
    return power[factor.ordinal()];
  }

  /** One readable line. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder();
    for (Factor f : Factor.values()) {
      if (of(f) != 0.0) {
        line.append(line.length() == 0 ? "" : ", ")
            .append(f)
            .append(" ^")
            .append(Text.number(of(f), 3));
      }
    }
    return line.length() == 0 ? "follows no factor" : line.toString();
  }
}
