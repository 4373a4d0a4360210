package org.flexwright.lattice.scaling;

/**
 * The section of a strut, by how much it resists bending for its area: xi = I/A^2.
 *
 * <p>Circle 1/(4 pi), square 1/12, equilateral triangle 1/(6 sqrt 3), three-cusped section between
 * three touching circles (the Plateau border of a liquid foam) (20 sqrt 3 - 11 pi)/(6 (2 sqrt 3 -
 * pi)^2). Source: geometry (derived); the four numbers of the Kelvin foam that follow are those of
 * Zhu, Knott and Mills 1997 (from memory).
 *
 * <p>JShell: {@code StrutSection.SQUARE.xi()}
 */
public enum StrutSection {
  /** A round strut. */
  CIRCLE("round", 0.25 / Math.PI),
  /** A square strut. */
  SQUARE("square", 1.0 / 12.0),
  /** A strut with the section of an equilateral triangle. */
  TRIANGLE("triangular", 1.0 / (6.0 * Math.sqrt(3.0))),
  /** A strut with three cusps. */
  PLATEAU_BORDER(
      "three-cusped",
      (20.0 * Math.sqrt(3.0) - 11.0 * Math.PI)
          / (6.0 * Math.pow(2.0 * Math.sqrt(3.0) - Math.PI, 2)));

  private final String words;
  private final double xi;

  StrutSection(String words, double xi) {
    this.words = words;
    this.xi = xi;
  }

  /**
   * Second moment of area over the square of the area.
   *
   * @return I/A^2
   */
  public double xi() {
    return xi;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
