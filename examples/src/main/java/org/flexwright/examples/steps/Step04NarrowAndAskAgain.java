package org.flexwright.examples.steps;

import static org.flexwright.quantity.Length.mm;

import java.io.PrintStream;
import org.flexwright.decide.Window;
import org.flexwright.grade.Grade;

/**
 * Shows: what a test print teaches, and the same question asked again.
 *
 * <p>Source: the lip of step 3. The readings are invented: strips 8 % softer than the curve, known
 * to 10 %; walls true to 0.02 mm.
 *
 * <p>Expect: P(meets) of the best wall rises from 89 % to more than 99 %.
 */
public final class Step04NarrowAndAskAgain {

  private Step04NarrowAndAskAgain() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** P(meets) of the best wall after the test print, in per cent. */
  static double run(PrintStream out) {
    Grade grade = Step03PartOfYourOwn.grade();
    Window<Lip> before = Step03PartOfYourOwn.question().answer(grade);
    out.println("from hardness alone: " + before);
    before.levers().forEach(lever -> out.println("  lever: " + lever));

    Grade learned = grade.measuredModulus(0.92, 1.1).measuredSizes(mm(0.02), mm(0.02));
    Window<Lip> after = Step03PartOfYourOwn.question().answer(learned);
    out.println("after test prints:   " + after);
    out.println(after.table());
    return 100.0 * after.best().orElseThrow().probability();
  }
}
