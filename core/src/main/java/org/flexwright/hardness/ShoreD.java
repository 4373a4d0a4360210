package org.flexwright.hardness;

/**
 * A reading of a type D durometer (ASTM D2240, ISO 48-4), the scale of hard rubber and of the
 * harder thermoplastic elastomers, usual from about 90 Shore A upwards.
 *
 * <p>Immutable and thread-safe. Ordered by points, then by tolerance.
 *
 * <pre>{@code
 * ShoreD.of(46).plusMinus(2)      // 46 +- 2 Shore D
 * }</pre>
 *
 * @param points the reading in points, strictly between 0 and 100
 * @param tolerance half the width of the whole band in points (two standard deviations), not
 *     negative
 */
public record ShoreD(double points, double tolerance)
    implements HardnessReading, Comparable<ShoreD> {

  private static final String SCALE = "Shore D";

  /**
   * Refuses a reading that is off its scale.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @param tolerance half the width of the whole band in points, not negative
   * @throws org.flexwright.InvalidInputException unless points are strictly between 0 and 100 and
   *     the tolerance is finite and not negative
   */
  public ShoreD {
    Scale.points(SCALE, points);
    Scale.tolerance(SCALE, tolerance);
  }

  /**
   * A reading taken as exact.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @return the reading
   * @throws org.flexwright.InvalidInputException if the reading is off its scale
   */
  public static ShoreD of(double points) {
    return new ShoreD(points, 0.0);
  }

  /**
   * This reading with another tolerance.
   *
   * @param tolerance half the width of the whole band in points, not negative
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the tolerance is negative or not finite
   */
  public ShoreD plusMinus(double tolerance) {
    return new ShoreD(points, tolerance);
  }

  /**
   * This reading with other points and the same tolerance.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the reading is off its scale
   */
  public ShoreD points(double points) {
    return new ShoreD(points, tolerance);
  }

  @Override
  public String scale() {
    return SCALE;
  }

  @Override
  public int compareTo(ShoreD other) {
    int byPoints = Double.compare(points, other.points);
    return byPoints != 0 ? byPoints : Double.compare(tolerance, other.tolerance);
  }

  /** One readable line, such as "46 +- 2 Shore D". */
  @Override
  public String toString() {
    return Scale.line(this);
  }
}
