package org.flexwright.lattice.cell;

/**
 * Struts of one cubic family of directions.
 *
 * <p>Symbols: a4, the mean of n1^4 over the family, and b4, the mean of n1^2 n2^2, with n the
 * direction of a strut; a4 + 2 b4 = 1/3.
 *
 * <p>Source: derived. JShell: {@code StrutFamily.EDGES.fourth()}
 */
public enum StrutFamily {
  /** Along the cell edges. */
  EDGES(1.0 / 3.0, 0.0),
  /** Along the face diagonals. */
  FACE_DIAGONALS(1.0 / 6.0, 1.0 / 12.0),
  /** Along the space diagonals. */
  SPACE_DIAGONALS(1.0 / 9.0, 1.0 / 9.0);

  private final double fourth;
  private final double mixed;

  StrutFamily(double fourth, double mixed) {
    this.fourth = fourth;
    this.mixed = mixed;
  }

  /**
   * The mean of n1^4.
   *
   * @return a4
   */
  public double fourth() {
    return fourth;
  }

  /**
   * The mean of n1^2 n2^2.
   *
   * @return b4
   */
  public double mixed() {
    return mixed;
  }

  /** Stretch of the most strained struts, per strain along z, sides free with Poisson's ratio v. */
  double[] stretches(double v) {
    return switch (this) {
      case EDGES -> new double[] {1.0, -v};
      case FACE_DIAGONALS -> new double[] {0.5 * (1.0 - v), -v};
      case SPACE_DIAGONALS -> new double[] {(1.0 - 2.0 * v) / 3.0};
    };
  }

  /** Shear of the struts of {@link #stretches}: end offset across the strut over its length. */
  double[] offsets(double v) {
    return switch (this) {
      case EDGES -> new double[] {0.0, 0.0};
      case FACE_DIAGONALS -> new double[] {0.5 * (1.0 + v), 0.0};
      case SPACE_DIAGONALS -> new double[] {Math.sqrt(2.0) / 3.0 * (1.0 + v)};
    };
  }
}
