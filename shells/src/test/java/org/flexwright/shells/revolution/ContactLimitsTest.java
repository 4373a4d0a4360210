package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.shells.Grades;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.junit.jupiter.api.Test;

/**
 * Contact against linear theories: a sleeve in its bore, a dome under a plate, a ball on a plate.
 */
final class ContactLimitsTest {

  private static ShellSolver pressed(
      ShellMesh mesh, StrainEnergy law, Loading load, Obstacle by, int... held) {
    ShellModel model = new ShellModel(mesh, law, Runs.LAYERS, List.of(by));
    ShellSolver s = new ShellSolver(model, load, held);
    assertThat(s.evaluate()).isTrue();
    return s;
  }

  /** Half a thin sleeve in metres: built in at its first end, its middle at the last. */
  private static ShellMesh sleeve(int n) {
    return Meshes.tube(9.9e-3, 6e-3, 0.2e-3, n);
  }

  private static Sleeve form() {
    return Sleeve.outside(mm(20)).span(mm(12)).wall(mm(0.2)).into(Bore.of(mm(20.04)));
  }

  private static final StrainEnergy MEGA = NeoHookean.ofYoung(Pressure.mpa(1.0));

  @Test
  void aSleeveTouchesItsBoreWhereTheBeamOnAFoundationSays() {
    double touch =
        Runs.extrapolated(
            60,
            n -> {
              int q = 3 * (n + 1);
              ShellMesh mesh = sleeve(n);
              ShellSolver s = Runs.solver(mesh, MEGA, Loading.pressure(q), 0, 1, 2, q - 2, q - 1);
              // the outside grows less than the middle of the wall, as the area of the wall stays
              double to = Math.sqrt(Math.pow(9.9e-3, 2) + Math.pow(10.02e-3, 2) - 1e-4);
              Runs.reach(s, new Control.Unknown(q - 3), to, 2);
              return s.factor;
            });
    // left out there: shear and thickness, 0.1 t/R, and strains of 0.2 percent
    assertThat(touch / form().touch(Grades.linear(0.5)).pa()).isCloseTo(1.0, within(0.003));
  }

  @Test
  void theContactOfASleeveSpreadsAsTheLinearProblemSays() {
    int n = 240;
    int q = 3 * (n + 1);
    ShellMesh mesh = sleeve(n);
    Obstacle bore = Obstacle.bore(Length.m(10.02e-3));
    ShellSolver s = pressed(mesh, MEGA, Loading.pressure(q), bore, 0, 1, 2, q - 2, q - 1);
    Sleeve form = form();
    for (double newtons : new double[] {2e-3, 1e-2}) {
      Force force = Force.newtons(newtons);
      double pressure =
          form.respond(
                  Grades.linear(0.5), LoadCase.toHold(force), org.flexwright.run.RunControl.none())
              .load()
              .nominal();
      Runs.reach(s, new Control.Load(), pressure, 4);
      double length = 0.0;
      for (int i = 0; i < n; i++) {
        if (s.model().contact.pressure(0, i, -1) > 0.0) {
          length += 2.0 * mesh.length[i];
        }
      }
      double said = form.contact(Grades.linear(0.5), force).m();
      // with shear the edge of a contact is a zone of a wall's size, not a line: in walls of 0.025
      // to 0.2 mm either edge lies within 0.8 t of the line
      assertThat(length).isCloseTo(said, within(1.6 * 0.2e-3));
    }
  }

  @Test
  void aPlateOnADomePressesAsARing() {
    double ratio = 100.0;
    int n = 200;
    int q = 3 * (n + 1);
    ShellMesh mesh = Meshes.zone(ratio, 0.0, 0.5 * Math.PI, 2.0, 1.0, n);
    Obstacle plate = Obstacle.plateBelow(Length.m(-ratio - 0.5));
    ShellSolver s = pressed(mesh, Runs.YOUNG, Loading.force(q, q - 2), plate, 0, 2, q - 3, q - 1);
    double start = s.x[q - 2];
    for (double w : new double[] {0.1, 0.2, 0.5}) {
      Runs.reach(s, new Control.Unknown(q - 2), start - w, 4);
      int foot = 0;
      for (int i = 0; i < n; i++) {
        foot = s.model().contact.pressure(0, i, -1) > 0.0 ? i : foot;
      }
      // the same dome, not in contact, pushed on the node next to the edge of the foot, as far
      int at = 3 * foot + 1;
      ShellSolver ring =
          Runs.solver(mesh, Runs.YOUNG, Loading.force(q, at), 0, 2, q - 3, q - 2, q - 1);
      double lifted = mesh.height[foot] + ratio;
      Runs.reach(ring, new Control.Unknown(at), mesh.height[foot] + w - lifted, 4);
      // all but the very edge of the foot lifts off: the wall there is bent flat by a ring
      assertThat(-s.factor / ring.factor).isCloseTo(1.0, within(0.03));
    }
  }

  @Test
  void aSmallBallOnAPlateIsAPoint() {
    double radius = 20.0;
    double ball = 2.0;
    double travel = 0.1;
    int n = 200;
    int q = 3 * (n + 1);
    ShellMesh mesh = Meshes.disc(radius, 1.0, n);
    Obstacle by = Obstacle.ball(Length.m(ball), Length.m(ball + 0.5));
    ShellSolver s = pressed(mesh, Runs.YOUNG, Loading.force(q, q - 2), by, 0, 2, q - 3, q - 1);
    Runs.reach(s, new Control.Unknown(q - 2), travel, 4);
    double foot = 0.0;
    for (int i = 0; i < n; i++) {
      if (s.model().contact.pressure(0, i, 1) > 0.0) {
        foot = Math.max(foot, 0.5 * (s.x[3 * i] + s.x[3 * i + 3]));
      }
    }
    assertThat(foot).isBetween(0.05, 0.3);
    double d = LinearBodies.bending(1.0);
    double far = Math.log(radius / foot);
    double ring = (0.5 * (radius * radius - foot * foot) - foot * foot * far) / (8.0 * Math.PI * d);
    double shear = far / (2.0 * Math.PI * 5.0 / 18.0);
    double reach = travel - foot * foot / (2.0 * ball); // the foot's edge, not the ball's tip
    // Timoshenko and Woinowsky-Krieger 1959 for a ring of load; stretching adds 0.5 (w/t)^2
    assertThat(s.factor * (ring + shear) / reach).isCloseTo(1.0, within(0.025));
  }
}
