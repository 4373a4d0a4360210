package org.flexwright.examples.steps;

import static org.flexwright.quantity.Length.mm;

import java.io.PrintStream;
import java.time.Duration;
import org.flexwright.condition.AtTemperature;
import org.flexwright.condition.Held;
import org.flexwright.condition.PowerRelaxation;
import org.flexwright.condition.TemperatureTable;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Temperature;
import org.flexwright.response.LoadCase;
import org.flexwright.run.RunControl;

/**
 * Shows: the grade of step 3 in service, at 40 degC and held for a day, and what the lip pushes
 * with then.
 *
 * <p>Source: the relaxation and the modulus by temperature that the grade's sources name.
 *
 * <p>Expect: 36 % of the force is left, with a wider band.
 */
public final class Step07GradeInService {

  private Step07GradeInService() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** The force left, in per cent of that of a test at room temperature. */
  static double run(PrintStream out) {
    Grade tested = Step03PartOfYourOwn.grade();
    Grade service =
        tested
            .under(AtTemperature.of(Temperature.celsius(40), TemperatureTable.polyurethane()))
            .under(Held.of(Duration.ofDays(1), PowerRelaxation.polyurethane()));
    out.println("as tested  " + tested.modulusAt(0.05));
    out.println("in service " + service.modulusAt(0.05));
    service.caveats().forEach(caveat -> out.println("  " + caveat));

    Lip lip = new Lip(mm(20), mm(12), mm(1.5));
    var before = lip.respond(tested, LoadCase.toTravel(mm(4)), RunControl.none()).load();
    var after = lip.respond(service, LoadCase.toTravel(mm(4)), RunControl.none()).load();
    out.println("lip at 4 mm: " + before + ", in service " + after);
    return 100.0 * after.nominal() / before.nominal();
  }
}
