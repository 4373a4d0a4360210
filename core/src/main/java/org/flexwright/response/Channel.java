package org.flexwright.response;

/** What a load path records, each in its SI unit. */
public enum Channel {
  /** Travel of the loaded face or growth of the radius, in metres. */
  TRAVEL("travel", "m", 1e3, "mm"),
  /** Turn of the loaded end, in radians. */
  ANGLE("angle", "rad", 180.0 / Math.PI, "deg"),
  /** Force on the loaded face or holding force, in newtons. */
  FORCE("force", "N", 1.0, "N"),
  /** Moment on the loaded end, in newton metres. */
  MOMENT("moment", "N m", 1e3, "N mm"),
  /** Gauge pressure, in pascals. */
  PRESSURE("pressure", "Pa", 1e-3, "kPa"),
  /** Volume taken in, in cubic metres. */
  VOLUME("volume", "m3", 1e6, "cm3"),
  /** Largest tensile strain anywhere in the part, dimensionless. */
  STRAIN("peak strain", "", 100.0, "%");

  private final String words;
  private final String unit;
  private final double shownFactor;
  private final String shownUnit;

  Channel(String words, String unit, double shownFactor, String shownUnit) {
    this.words = words;
    this.unit = unit;
    this.shownFactor = shownFactor;
    this.shownUnit = shownUnit;
  }

  /**
   * The SI unit, empty if dimensionless.
   *
   * @return the unit
   */
  public String unit() {
    return unit;
  }

  /**
   * A value of this channel as a person reads it.
   *
   * @param value the value in SI
   * @return number and unit
   */
  public String show(double value) {
    return org.flexwright.internal.Text.number(value * shownFactor, 3) + " " + shownUnit;
  }

  /**
   * The factor from SI to the unit a person reads.
   *
   * @return the factor
   */
  public double shownFactor() {
    return shownFactor;
  }

  /**
   * The unit a person reads.
   *
   * @return the unit
   */
  public String shownUnit() {
    return shownUnit;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
