package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

/** Forks and snaps of a path, and that a step does not jump over them. */
final class PathLimitsTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(10.0));
  private static final double E = 30e6;

  private static Length mm(double mm) {
    return Length.mm(mm);
  }

  private static ShellPath pushed(double wall, int halfWaves) {
    // the half wave of Timoshenko and Gere: pi sqrt(R t)/(12 (1 - nu^2))^(1/4)
    double half = Math.PI * Math.sqrt(20.0 * wall) / Math.sqrt(3.0);
    double strain = wall / 20.0 / 1.5;
    return RevolvedShell.of(
            Meridian.from(mm(20.0), mm(0.0)).lineTo(mm(20.0), mm(halfWaves * half)).wall(mm(wall)))
        .first(End.GUIDED)
        .last(End.GUIDED)
        .fineness(2.0)
        .run(LAW, Drive.travel(mm(1.15 * strain * halfWaves * half)).steps(10));
  }

  @Test
  void aPushedCylinderForksAtTheClassicalStress() {
    for (double wall : new double[] {0.1, 0.2}) {
      ShellPath path = pushed(wall, 4);
      assertThat(path.termination().complete()).isTrue();
      ShellPath.Limit fork = path.limits().get(0);
      assertThat(fork.kind()).isEqualTo(ShellPath.Limit.Kind.BIFURCATION);
      double classical = E * wall * wall / (20.0 * 1.5) * 2.0 * Math.PI * 20.0 * 1e-6;
      // finite strain: E t/(1.5 R) is a strain of t/(1.5 R), so that figures differ by this order
      assertThat(fork.load()).isCloseTo(classical, within(1.5 * wall / 20.0 * classical));
      assertThat(path.caveats()).anyMatch(c -> c.message().contains("another path branches off"));
      assertThat(path.last().stable()).isFalse();
      assertThat(path.states().get(5).stable()).isTrue();
    }
  }

  private static RevolvedShell cap() {
    // a clamped cap of radius 50, wall 0.5, half angle 30 degrees
    return RevolvedShell.of(
        Meridian.from(mm(25.0), mm(0.0))
            .arcAbout(mm(0.0), mm(-25.0 * Math.sqrt(3.0)), mm(0.0), mm(50.0 - 43.30127018922193))
            .wall(mm(0.5)));
  }

  /** The largest volume taken out along the path's own length, by a parabola. */
  private static double[] turning() {
    ShellMesh mesh = BuiltIn.of(cap().meridian().mesh(1.0), End.BUILT_IN, End.BUILT_IN).moving;
    int q = 3 * mesh.nodes();
    ShellModel model = new ShellModel(mesh, LAW, 5);
    ShellSolver s =
        new ShellSolver(model, Loading.pressure(q), new int[] {0, 1, 2, q - 3, q - 2, q - 1});
    assertThat(s.evaluate()).isTrue();
    double empty = model.volume;
    double[] out = new double[3];
    double[] press = new double[3];
    s.mark(false);
    s.turnRound();
    for (int i = 0; i < 300; i++) {
      assertThat(s.solve(new Control.Arc(), 0.004)).isTrue();
      out[0] = out[1];
      out[1] = out[2];
      out[2] = empty - model.volume;
      press[0] = press[1];
      press[1] = press[2];
      press[2] = s.factor;
      if (i > 2 && out[2] < out[1]) {
        double slope = 0.5 * (out[2] - out[0]);
        double at = -slope / (out[2] - 2.0 * out[1] + out[0]);
        double p = press[1] + at * 0.5 * (press[2] - press[0]);
        return new double[] {out[1] + 0.5 * slope * at, p};
      }
      s.mark(true);
    }
    return new double[] {0.0, 0.0};
  }

  @Test
  void aCapThatSnapsBackUnderVolumeEndsAtTheTurnHoweverCoarseTheSteps() {
    double[] turn = turning();
    for (int steps : new int[] {1, 3, 10}) {
      ShellPath path = cap().run(LAW, Drive.volume(Volume.cm3(-1.2)).steps(steps));
      assertThat(path.termination().kind()).isEqualTo(Termination.Kind.LIMIT_POINT);
      assertThat(path.termination().why()).contains("snaps back").contains("pressure");
      List<ShellPath.Limit> limits = path.limits();
      assertThat(limits).hasSize(2);
      assertThat(limits.get(0).kind()).isEqualTo(ShellPath.Limit.Kind.LIMIT_POINT);
      ShellPath.Limit back = limits.get(1);
      assertThat(back.kind()).isEqualTo(ShellPath.Limit.Kind.SNAP_BACK);
      // a parabola through arcs of 0.004
      assertThat(-back.driven()).isCloseTo(turn[0], within(1e-4 * turn[0]));
      assertThat(back.load()).isCloseTo(turn[1], within(2e-3 * Math.abs(turn[1])));
      assertThat(path.last().volume().m3()).isEqualTo(back.driven());
      assertThat(path.last().pressure().pa()).isEqualTo(back.load());
    }
  }
}
