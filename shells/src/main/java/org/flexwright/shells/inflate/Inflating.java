package org.flexwright.shells.inflate;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.Grade;
import org.flexwright.law.Deformation;
import org.flexwright.response.LoadCase;

/** Reservations that all inflated parts share. */
final class Inflating {

  /** Share of the limit pressure up to which a part is trusted. */
  static final double SAFE = 0.8;

  private static final Source HABIT =
      Source.commonPractice("stay below 70 to 80 % of the limit pressure");
  private static final ValidityRange NEAR =
      new ValidityRange("stability", "pressure / limit pressure", 0.0, SAFE, "", HABIT);
  private static final ValidityRange PAST =
      new ValidityRange(
          "stability", "stretch / stretch at the limit pressure", 0.0, 1.0, "", HABIT);

  private Inflating() {}

  /**
   * What must be said of the law of a grade at the stretch of the end, refusing what never fits.
   */
  static void law(Checks checks, Grade grade, Deformation mode, double stretch) {
    if (stretch > 0.0 && Double.isFinite(stretch)) {
      grade.caveatsIn(mode, stretch).forEach(checks::note);
    } else {
      checks.note("the law of the grade carries no state to the end asked for: " + grade.law());
    }
  }

  /** How near a state is to the limit pressure, unless the limit itself was asked for. */
  static void reserve(
      Checks checks,
      Optional<LimitPoints.Point> limit,
      LoadCase load,
      double stretch,
      DoubleUnaryOperator pressure) {
    if (limit.isEmpty() || load instanceof LoadCase.ToLimit || !Double.isFinite(stretch)) {
      return;
    }
    LimitPoints.Point at = limit.get();
    double past = stretch / at.stretch();
    checks.check(PAST, past);
    if (past <= 1.0) {
      checks.check(NEAR, pressure.applyAsDouble(stretch) / at.pressure().pa());
    } else {
      checks.note(
          "beyond the limit pressure: stable only while the volume is controlled, not the pressure");
    }
  }
}
