package org.flexwright.examples.steps;

import static org.flexwright.quantity.Length.mm;
import static org.flexwright.quantity.Pressure.kpa;

import java.io.PrintStream;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.law.LawCheck;
import org.flexwright.law.Stability;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * Shows: a law that the library does not know, the {@link ExponentialLaw}, is checked, made a grade
 * and asked for the force of a part, the {@link Lip} of step 3.
 *
 * <p>Source: Demiray 1972, J. Biomech. 5 (from memory); the constants are invented.
 *
 * <p>Expect: the law passes its check, and the lip takes 6.115 mN at 4 mm of travel.
 */
public final class Step05LawOfYourOwn {

  private Step05LawOfYourOwn() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** The force at 4 mm of travel in mN. */
  static double run(PrintStream out) {
    ExponentialLaw law = new ExponentialLaw(kpa(400), 0.5);
    LawCheck.Report check = LawCheck.of(law).report();
    out.println(check);
    out.println(Stability.of(law).map(0.5, 2.5, 5).table());

    Grade grade = Grade.ofLaw("soft, of my own", law).known(Factor.MODULUS, 1.2);
    Lip lip = new Lip(mm(20), mm(12), mm(1.5));
    Response response = lip.respond(grade, LoadCase.toTravel(mm(4)), RunControl.none());
    out.println(response.load());
    return check.passed() ? 1e3 * response.load().nominal() : 0.0;
  }
}
