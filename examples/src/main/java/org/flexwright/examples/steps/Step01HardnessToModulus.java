package org.flexwright.examples.steps;

import java.io.PrintStream;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.relation.ModulusFromHardness;

/**
 * Shows: a Shore hardness gives a band of small-strain moduli, and a polyurethane a stress curve.
 *
 * <p>Source: the published relations that the table names; the curve is a generic default.
 *
 * <p>Expect: 41 MPa at 95 Shore A, 34 to 49 MPa over the relations.
 */
public final class Step01HardnessToModulus {

  private Step01HardnessToModulus() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** The nominal modulus at 95 Shore A in MPa. */
  static double run(PrintStream out) {
    ShoreA reading = ShoreA.of(95).plusMinus(2);
    ModulusFromHardness modulus = ModulusFromHardness.of(reading);
    out.println(modulus.table());

    Grade grade = Grade.polyurethane(reading);
    out.println("at rest        " + grade.modulusAt(0.0));
    out.println("at 10 % strain " + grade.modulusAt(0.1));
    return modulus.spread().nominal().mpa();
  }
}
