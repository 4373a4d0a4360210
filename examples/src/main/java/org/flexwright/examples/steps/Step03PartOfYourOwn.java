package org.flexwright.examples.steps;

import static org.flexwright.quantity.Force.newtons;
import static org.flexwright.quantity.Length.mm;

import java.io.PrintStream;
import java.util.List;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.decide.Window;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;

/**
 * Shows: a part that the library does not know, the {@link Lip}, is asked the same question.
 *
 * <p>Source: slender cantilever, derived. The lip is invented.
 *
 * <p>Expect: a wall of 1.5 mm is the one to take or to test first.
 */
public final class Step03PartOfYourOwn {

  private Step03PartOfYourOwn() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  static Question<Lip> question() {
    return Question.of(new Lip(mm(20), mm(12), mm(0.9)))
        .vary(Lip.WALL, mm(0.3), mm(1.5))
        .sizes(List.of(mm(0.3), mm(0.6), mm(0.9), mm(1.2), mm(1.5)))
        .meet(Target.force().between(newtons(0.3), newtons(1.0)).atTravel(mm(4)));
  }

  static Grade grade() {
    return Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(mm(0.3)));
  }

  /** The best wall in mm. */
  static double run(PrintStream out) {
    Window<Lip> window = question().answer(grade());
    out.println(window.table());
    out.println(window);
    window.levers().forEach(out::println);
    return window.best().orElseThrow().size().mm();
  }
}
