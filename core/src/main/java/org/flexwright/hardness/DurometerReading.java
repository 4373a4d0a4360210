package org.flexwright.hardness;

/**
 * A reading of any durometer type with its tolerance. Scales A and D have types of their own,
 * {@link ShoreA} and {@link ShoreD}, which the relations take; a reading of another type is
 * converted by {@link HardnessChart} (OO) or taken to a modulus by {@link LinearContact}.
 *
 * <p>Immutable and thread-safe.
 *
 * <pre>{@code
 * DurometerReading.of(Durometer.SHORE_OO, 50).plusMinus(3)      // 50 +- 3 Shore OO
 * }</pre>
 *
 * @param durometer the instrument
 * @param points the reading in points, strictly between 0 and 100
 * @param tolerance half the width of the whole band in points (two standard deviations), not
 *     negative
 */
public record DurometerReading(Durometer durometer, double points, double tolerance) {

  /**
   * Refuses a reading that is off its scale.
   *
   * @param durometer the instrument
   * @param points the reading in points, strictly between 0 and 100
   * @param tolerance half the width of the whole band in points, not negative
   * @throws org.flexwright.InvalidInputException unless points are strictly between 0 and 100 and
   *     the tolerance is finite and not negative
   */
  public DurometerReading {
    Scale.points(durometer.scale(), points);
    Scale.tolerance(durometer.scale(), tolerance);
  }

  /**
   * A reading taken as exact.
   *
   * @param durometer the instrument
   * @param points the reading in points, strictly between 0 and 100
   * @return the reading
   * @throws org.flexwright.InvalidInputException if the reading is off its scale
   */
  public static DurometerReading of(Durometer durometer, double points) {
    return new DurometerReading(durometer, points, 0.0);
  }

  /**
   * This reading with another tolerance.
   *
   * @param tolerance half the width of the whole band in points, not negative
   * @return the new reading
   * @throws org.flexwright.InvalidInputException if the tolerance is negative or not finite
   */
  public DurometerReading plusMinus(double tolerance) {
    return new DurometerReading(durometer, points, tolerance);
  }

  /**
   * The lower end of the band, kept half a point inside the scale (or at the reading, if that is
   * lower still).
   *
   * @return points of the scale
   */
  public double low() {
    return Scale.low(points, tolerance);
  }

  /**
   * The upper end of the band, kept half a point inside the scale (or at the reading, if that is
   * higher still).
   *
   * @return points of the scale
   */
  public double high() {
    return Scale.high(points, tolerance);
  }

  /** One readable line, such as "50 +- 3 Shore OO". */
  @Override
  public String toString() {
    return Scale.line(points, tolerance, durometer.scale());
  }
}
