package org.flexwright.seed;

/**
 * A named seed.
 *
 * @param name its name
 */
public record Seed(String name) {

  /**
   * Square root of the name's length, found by Newton steps.
   *
   * @return the root
   */
  public double root() {
    return Math.sqrt(name.length());
  }
}
