package org.flexwright.hardness;

import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/** What all scales share: the open interval from 0 to 100, how a reading is written and solved. */
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

  /** The lower end of a band. */
  static double low(double points, double tolerance) {
    return Math.max(points - tolerance, Math.min(points, LOWEST));
  }

  /** The upper end of a band. */
  static double high(double points, double tolerance) {
    return Math.min(points + tolerance, Math.max(points, HIGHEST));
  }

  /** One line such as "95 +- 3 Shore A". */
  static String line(HardnessReading reading) {
    return line(reading.points(), reading.tolerance(), reading.scale());
  }

  static String line(double points, double tolerance, String scale) {
    String band = tolerance == 0.0 ? "" : " +- " + Text.number(tolerance);
    return Text.number(points) + band + " " + scale;
  }

  private static String text(double value) {
    return Double.isFinite(value) ? Text.number(value) : Double.toString(value);
  }

  /** The reading that has a given modulus, solved on the open scale to 1e-10 points. */
  static double solve(String name, DoubleFunction<Pressure> modulusAt, Pressure modulus) {
    double least = 1e-6;
    double most = 100.0 - 1e-6;
    double low = modulusAt.apply(least).pa();
    double high = modulusAt.apply(most).pa();
    if (!(modulus.pa() >= low && modulus.pa() <= high)) {
      throw new InvalidInputException(
          "modulus for " + name,
          modulus.toString(),
          Pressure.pa(low) + " to " + Pressure.pa(high),
          "use a relation on a softer or a harder scale");
    }
    if (modulus.pa() == low || modulus.pa() == high) {
      return modulus.pa() == low ? least : most;
    }
    double target = Math.log(modulus.pa());
    return new BrentSolver(1e-15, 1e-11)
        .solve(500, s -> Math.log(modulusAt.apply(s).pa()) - target, least, most);
  }
}
