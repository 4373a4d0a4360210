package org.flexwright.shells;

import static org.flexwright.quantity.Length.mm;

import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.quantity.Pressure;

/** Grades that the tests of this module use. */
public final class Grades {

  private Grades() {}

  /** Young's modulus 1 MPa at every strain to 100 %. */
  public static Grade linear(double poisson) {
    return Grade.ofLaw(
            "linear",
            HenckyCurve.through(
                new double[] {0.5, 1.0}, new Pressure[] {Pressure.mpa(0.5), Pressure.mpa(1.0)}))
        .poisson(poisson);
  }

  /** A generic printed polyurethane. */
  public static Grade polyurethane() {
    return Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(mm(0.3)));
  }

  /** A rubber with another law. */
  public static Grade rubber() {
    return Grade.ofLaw("rubber", MooneyRivlin.of(Pressure.mpa(0.3), Pressure.mpa(0.05)))
        .poisson(0.5);
  }
}
