package org.flexwright.hardness;

/**
 * A reading of a type A durometer (ASTM D2240, ISO 48-4), the scale of rubber and soft
 * thermoplastic elastomers. The standards advise to discard readings below 10 and above 90 points.
 *
 * <p>Immutable and thread-safe. Ordered by points, then by tolerance.
 *
 * <pre>{@code
 * ShoreA.of(95).plusMinus(3)      // 95 +- 3 Shore A
 * }</pre>
 *
 * @param points the reading in points, strictly between 0 and 100
 * @param tolerance half the width of the whole band in points (two standard deviations), not
 *     negative
 */
public record ShoreA(double points, double tolerance)
    implements HardnessReading, Comparable<ShoreA> {

  private static final String SCALE = "Shore A";

  /**
   * Refuses a reading that is off its scale.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @param tolerance half the width of the whole band in points, not negative
   * @throws org.flexwright.InvalidInputException unless points are strictly between 0 and 100 and
   *     the tolerance is finite and not negative
   */
  public ShoreA {
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
  public static ShoreA of(double points) {
    return new ShoreA(points, 0.0);
  }

  /**
   * This reading with another tolerance.
   *
   * @param tolerance half the width of the whole band in points, not negative
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the tolerance is negative or not finite
   */
  public ShoreA plusMinus(double tolerance) {
    return new ShoreA(points, tolerance);
  }

  /**
   * This reading with other points and the same tolerance.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the reading is off its scale
   */
  public ShoreA points(double points) {
    return new ShoreA(points, tolerance);
  }

  @Override
  public String scale() {
    return SCALE;
  }

  @Override
  public int compareTo(ShoreA other) {
    int byPoints = Double.compare(points, other.points);
    return byPoints != 0 ? byPoints : Double.compare(tolerance, other.tolerance);
  }

  /** One readable line, such as "95 +- 3 Shore A". */
  @Override
  public String toString() {
    return Scale.line(this);
  }
}
