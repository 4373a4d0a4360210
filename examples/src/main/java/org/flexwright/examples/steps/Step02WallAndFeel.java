package org.flexwright.examples.steps;

import static org.flexwright.quantity.Force.newtons;
import static org.flexwright.quantity.Length.mm;

import java.io.PrintStream;
import java.util.List;
import org.flexwright.decide.FeelsLike;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.decide.Window;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;
import org.flexwright.shells.bellows.Bellows;

/**
 * Shows: the wall of a bellows for a force at a travel, and the rubber that it feels like.
 *
 * <p>Source: the closed form that {@link Bellows} names. The bellows is invented.
 *
 * <p>Expect: a wall of 0.6 mm is the one to take or to test first.
 */
public final class Step02WallAndFeel {

  private Step02WallAndFeel() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** The best wall in mm. */
  static double run(PrintStream out) {
    Grade grade =
        Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(mm(0.3)));
    Bellows neck =
        Bellows.convolutions(5).meanRadius(mm(15)).pitch(mm(14)).depth(mm(8)).wall(mm(0.9));
    Window<Bellows> window =
        Question.of(neck)
            .vary(Bellows.WALL, mm(0.3), mm(2.1))
            .sizes(List.of(mm(0.3), mm(0.6), mm(0.9), mm(1.2), mm(1.5), mm(1.8), mm(2.1)))
            .meet(Target.force().between(newtons(3), newtons(8)).atTravel(mm(6)))
            .answer(grade);
    out.println(window.table());
    out.println(window);
    var best = window.best().orElseThrow();
    var feel = FeelsLike.of(neck, Bellows.WALL, mm(2)).hardness(best.size(), grade);
    out.println("feels like the same bellows of 2 mm rubber of " + feel);
    return best.size().mm();
  }
}
