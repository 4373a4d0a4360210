package org.flexwright.hardness;

/**
 * A hardness reading on one of the scales that the library knows, with its tolerance.
 *
 * <p>Points lie strictly between 0 and 100: at 0 the indenter meets no resistance, at 100 it does
 * not enter at all, and neither says anything about a modulus. The tolerance is the half width of
 * the whole band of the reading, two standard deviations.
 *
 * <p>Not open to users: a reading on another scale, a {@link DurometerReading}, is converted first.
 * All readings are immutable and thread-safe.
 */
public sealed interface HardnessReading permits ShoreA, ShoreD, Irhd {

  /**
   * The reading.
   *
   * @return points of the scale, strictly between 0 and 100
   */
  double points();

  /**
   * Half the width of the whole band of the reading, two standard deviations.
   *
   * @return points of the scale, not negative
   */
  double tolerance();

  /**
   * The name of the scale.
   *
   * @return such as "Shore A"
   */
  String scale();

  /**
   * The lower end of the band, kept half a point inside the scale (or at the reading, if that is
   * lower still).
   *
   * @return points of the scale
   */
  default double low() {
    return Scale.low(points(), tolerance());
  }

  /**
   * The upper end of the band, kept half a point inside the scale (or at the reading, if that is
   * higher still).
   *
   * @return points of the scale
   */
  default double high() {
    return Scale.high(points(), tolerance());
  }
}
