package org.flexwright.fit;

/** How the distance between a law and a point of a test counts in a fit. */
public enum Weighting {
  /**
   * As a share of the measured stress, (P_law - P)/|P|: small strains count as much as large ones.
   * Near zero |P| is replaced by a floor, {@link LawFit#floor} times the greatest |P| of the curve.
   */
  RELATIVE,
  /** As it is, P_law - P in megapascals: the largest stresses decide. */
  ABSOLUTE
}
