package org.flexwright.hardness;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** What all scales share: the open interval from 0 to 100 and how a reading is written. */
final class Scale {

  /** The lowest end of a band: half a point, the resolution of a dial. */
  static final double LOWEST = 0.5;

  /** The highest end of a band. */
  static final double HIGHEST = 99.5;

  private static final String ADVICE =
      "0 and 100 are the stops of the instrument and say nothing about the material, "
          + "use a softer or a harder scale";

  private Scale() {}

  /** Points strictly inside the scale, or a refusal. */
  static double points(String scale, double points) {
    if (!(points > 0.0 && points < 100.0)) {
      throw new InvalidInputException(
          scale + " reading", text(points) + " points", "above 0 and below 100 points", ADVICE);
    }
    return points;
  }

  /** A tolerance, or a refusal. */
  static double tolerance(String scale, double tolerance) {
    return Require.notNegative(scale + " tolerance", tolerance, "points");
  }

  /** One line such as "95 +- 3 Shore A". */
  static String line(HardnessReading reading) {
    String band = reading.tolerance() == 0.0 ? "" : " +- " + Text.number(reading.tolerance());
    return Text.number(reading.points()) + band + " " + reading.scale();
  }

  private static String text(double value) {
    return Double.isFinite(value) ? Text.number(value) : Double.toString(value);
  }
}
