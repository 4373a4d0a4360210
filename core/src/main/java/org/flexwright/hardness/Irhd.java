package org.flexwright.hardness;

/**
 * A reading in international rubber hardness degrees (ISO 48-2): a ball is pressed into a flat
 * piece by a dead weight. Close to Shore A between 30 and 80 points.
 *
 * <p>Immutable and thread-safe. Ordered by points, then by tolerance.
 *
 * <pre>{@code
 * Irhd.of(60).plusMinus(2)        // 60 +- 2 IRHD
 * }</pre>
 *
 * @param points the reading in points, strictly between 0 and 100
 * @param tolerance half the width of the whole band in points (two standard deviations), not
 *     negative
 */
public record Irhd(double points, double tolerance) implements HardnessReading, Comparable<Irhd> {

  private static final String SCALE = "IRHD";

  /**
   * Refuses a reading that is off its scale.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @param tolerance half the width of the whole band in points, not negative
   * @throws org.flexwright.InvalidInputException unless points are strictly between 0 and 100 and
   *     the tolerance is finite and not negative
   */
  public Irhd {
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
  public static Irhd of(double points) {
    return new Irhd(points, 0.0);
  }

  /**
   * This reading with another tolerance.
   *
   * @param tolerance half the width of the whole band in points, not negative
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the tolerance is negative or not finite
   */
  public Irhd plusMinus(double tolerance) {
    return new Irhd(points, tolerance);
  }

  /**
   * This reading with other points and the same tolerance.
   *
   * @param points the reading in points, strictly between 0 and 100
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the reading is off its scale
   */
  public Irhd points(double points) {
    return new Irhd(points, tolerance);
  }

  @Override
  public String scale() {
    return SCALE;
  }

  @Override
  public int compareTo(Irhd other) {
    int byPoints = Double.compare(points, other.points);
    return byPoints != 0 ? byPoints : Double.compare(tolerance, other.tolerance);
  }

  /** One readable line, such as "60 +- 2 IRHD". */
  @Override
  public String toString() {
    return Scale.line(this);
  }
}
