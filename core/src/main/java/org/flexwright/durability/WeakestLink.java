package org.flexwright.durability;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The weakest link of many alike: what a count or a volume costs in strength.
 *
 * <p>Formula (Weibull, two parameters): P = 1 - exp(-n (s/s0)^m), so at equal probability s1/s2 =
 * (n2/n1)^(1/m). Symbols: n count of links or volume in multiples of that of s0, s stress or
 * strain, s0 that at which 63 % of single links have failed, m modulus of Weibull (small: much
 * scatter).
 *
 * <p>Range: links alike, loaded alike and independent of one another. Source: Weibull 1951, J.
 * Appl. Mech. 18, 293 (from memory). No published m of printed elastomer struts is known to us:
 * measure it.
 *
 * <p>JShell: {@code new WeakestLink(10).strengthRatio(1000)}
 *
 * @param modulus m, 1 to 200
 */
public record WeakestLink(double modulus) {

  /**
   * Refuses a modulus that makes no sense.
   *
   * @param modulus m, 1 to 200
   * @throws org.flexwright.InvalidInputException if outside 1 to 200
   */
  public WeakestLink {
    Require.between("Weibull modulus", modulus, 1.0, 200.0, "");
  }

  /**
   * Strength of many links over that of one, at the same probability.
   *
   * @param count how many links, or the ratio of the volumes, above 0
   * @return count^(-1/m)
   */
  public double strengthRatio(double count) {
    return Math.pow(Require.positive("count of links", count, ""), -1.0 / modulus);
  }

  /**
   * The probability that at least one of many links fails.
   *
   * @param count how many links, above 0
   * @param load stress or strain over that at which 63 % of single links fail, not negative
   * @return the probability, 0 to 1
   */
  public double failure(double count, double load) {
    Require.positive("count of links", count, "");
    Require.notNegative("load over strength", load, "");
    return -Math.expm1(-count * Math.pow(load, modulus));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "weakest link, Weibull modulus " + Text.number(modulus);
  }
}
