package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

/** A shell that meets itself, against its mirror image, its energy and its geometry. */
final class SelfContactTest {

  private static final StrainEnergy MEGA = NeoHookean.of(Pressure.mpa(1.0));

  /** Upper half of a fold open to the axis: from its crest at height 0 to the middle of a root. */
  private static double[][] half(int n) {
    double round = 1.5e-3;
    double[][] nodes = new double[4 * n + 1][];
    for (int i = 0; i <= n; i++) {
      double a = 0.5 * Math.PI * i / n;
      double c = round * Math.cos(a);
      double s = round * Math.sin(a);
      nodes[i] = new double[] {18e-3 + c, s, 0.5 * Math.PI + a};
      nodes[4 * n - i] = new double[] {14e-3 - c, 2.0 * round - s, 0.5 * Math.PI + a};
    }
    for (int i = 1; i < 2 * n; i++) {
      nodes[n + i] = new double[] {18e-3 - 4e-3 * i / (2 * n), round, Math.PI};
    }
    return nodes;
  }

  static ShellMesh halfMesh(int n) {
    return Meshes.smooth(half(n), i -> 0.8e-3);
  }

  /** The same with its mirror image below, from the lower end on. */
  static ShellMesh fold(int n) {
    double[][] up = half(n);
    int last = up.length - 1;
    double[][] all = new double[2 * last + 1][];
    for (int i = 0; i <= last; i++) {
      all[last + i] = up[i];
      all[last - i] = new double[] {up[i][0], -up[i][1], Math.PI - up[i][2]};
    }
    return Meshes.smooth(all, i -> 0.8e-3);
  }

  static ShellPath run(ShellMesh mesh, End first, List<Obstacle> by, Drive... legs) {
    return new Journey(mesh, first, End.GUIDED, Runs.LAYERS, MEGA, by)
        .run(List.of(legs), RunControl.none());
  }

  private static ShellPath pushed(int n) {
    return run(fold(n), End.GUIDED, List.of(), Drive.travel(Length.mm(3.2)).steps(16));
  }

  @Test
  void aFoldMeetsItselfAsItsHalfMeetsAPlate() {
    int n = 32;
    Obstacle mirror = Obstacle.plateBelow(Length.mm(0.0));
    ShellPath half =
        run(halfMesh(n), End.GUIDED, List.of(mirror), Drive.travel(Length.mm(1.6)).steps(16));
    ShellPath full = pushed(n);
    assertThat(half.termination().complete()).isTrue();
    assertThat(full.termination().complete()).isTrue();
    int compared = 0;
    for (ShellState one : half.states()) {
      for (ShellState two : full.states()) {
        if (Math.abs(two.travel().m() - 2.0 * one.travel().m()) < 1e-9) {
          compared++;
          double energy = 2.0 * one.energy().joules();
          assertThat(two.energy().joules()).isCloseTo(energy, within(5e-4 * energy + 1e-15));
          double force = one.force().newtons();
          // either contact leaves a gap of 1e-4 of the wall; just after the touch, where the force
          // grows by 7 N/mm, that is a micrometre of travel
          assertThat(two.force().newtons()).isCloseTo(force, within(2e-3 * force + 7e-3));
          assertThat(two.stable()).isTrue();
        }
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(17);
    double pressed = half.last().touches().get(0).normal().newtons();
    assertThat(full.last().self().orElseThrow().normal().newtons())
        .isCloseTo(pressed, within(5e-3 * pressed));
  }

  @Test
  void itTakesFewStepsOfNewtonsMethod() {
    ShellMesh mesh = fold(16);
    int q = 3 * mesh.nodes();
    ShellSolver s = Runs.solver(mesh, MEGA, Loading.force(q, q - 2), 1, 2, q - 1);
    Runs.reach(s, new Control.Unknown(q - 2), s.x[q - 2] - 3.2e-3, 8);
    assertThat(s.model().self.presses()).isTrue();
    // 66 when this was written, 19 of them before the touch
    assertThat(s.iterations).isLessThan(130);
  }

  @Test
  void theForceIsTheSlopeOfTheStoredEnergy() {
    ShellPath path =
        run(
            fold(16),
            End.GUIDED,
            List.of(),
            Drive.travel(Length.mm(2.8)).steps(7),
            Drive.travel(Length.mm(3.2)).steps(20));
    ShellState from = path.states().get(path.states().size() - 21);
    assertThat(from.self()).isPresent();
    assertThat(from.travel().mm()).isCloseTo(2.8, within(1e-9));
    // nothing is lost in the contact: the trapezoidal rule along the second leg
    double work = 0.0;
    for (int i = path.states().size() - 20; i < path.states().size(); i++) {
      ShellState a = path.states().get(i - 1);
      ShellState b = path.states().get(i);
      work += 0.5 * (a.force().newtons() + b.force().newtons()) * (b.travel().m() - a.travel().m());
    }
    double stored = path.last().energy().joules() - from.energy().joules();
    assertThat(stored).isCloseTo(work, within(5e-4 * work));
  }

  @Test
  void theFirstTouchIsWhereTheFacesMeet() {
    ShellPath coarse = pushed(16);
    Drive near = Drive.travel(Length.mm(2.5)).steps(1);
    Drive past = Drive.travel(Length.mm(2.7)).steps(20);
    ShellPath fine = run(fold(16), End.GUIDED, List.of(), near, past);
    double open = 0.0;
    for (ShellState s : fine.states()) {
      if (openAt(fine.states().get(0), s) > 1e-3 * 0.8) {
        open = s.travel().mm();
      }
    }
    assertThat(open).isBetween(2.52, 2.68);
    String said = coarse.caveats().get(0).message();
    assertThat(said).contains("touch each other from a travel of ");
    String number = said.replaceAll(".*travel of ([0-9.]+) mm.*", "$1");
    // the next state, 0.01 mm on, touches; one more for the straight line and the wall's thickness
    assertThat(Double.parseDouble(number)).isCloseTo(open + 0.005, within(0.015));
    assertThat(fine.caveats()).hasSize(1);
  }

  @Test
  void aShellThatStaysOpenSaysNothing() {
    ShellPath path = run(fold(8), End.GUIDED, List.of(), Drive.travel(Length.mm(2.0)).steps(2));
    assertThat(path.caveats()).isEmpty();
    assertThat(path.last().self()).isEmpty();
  }

  private static double length(ShellState s, int i) {
    return Math.hypot(s.radius(i + 1).m() - s.radius(i).m(), s.height(i + 1).m() - s.height(i).m());
  }

  /** The gap between the two legs in mm, the volume of the wall kept to first order. */
  private static double openAt(ShellState rest, ShellState s) {
    int n = s.nodes() - 1;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < n / 2; i++) {
      double grown = length(s, i) / length(rest, i);
      grown *=
          (s.radius(i).m() + s.radius(i + 1).m()) / (rest.radius(i).m() + rest.radius(i + 1).m());
      double flat = (s.radius(i + 1).m() - s.radius(i).m()) / length(s, i);
      double up = 0.5 * (s.height(i).m() + s.height(i + 1).m()) + 0.4e-3 / grown * flat;
      double middle = 0.5 * (s.height(0).m() + s.height(n).m());
      least = Math.min(least, 2e3 * (middle - up));
    }
    return least;
  }

  @Test
  void forcesAndTangentAreDerivatives() {
    double step = 1e-6;
    ShellMesh mesh = scaled(fold(4));
    ShellModel model = new ShellModel(mesh, Runs.SHEAR, 3);
    Random random = new Random(4L);
    double[] x = mesh.rest();
    int m = mesh.nodes();
    for (int i = 0; i < m; i++) {
      // the lower half moves up through the upper one
      double below = 0.5 * (m - 1) - i;
      x[3 * i + 1] += 1.3 * Math.signum(below) * Math.min(1.0, 0.1 * Math.abs(below));
      x[3 * i] += 0.02 * random.nextGaussian();
      x[3 * i + 1] += 0.02 * random.nextGaussian();
      x[3 * i + 2] += 0.02 * random.nextGaussian();
    }
    assertThat(model.at(x, 0.0)).isTrue();
    assertThat(model.touching).isZero();
    model.update(x);
    assertThat(model.at(x, 0.0)).isTrue();
    model.update(x);
    assertThat(model.at(x, 0.0)).isTrue();
    assertThat(model.self.presses()).isTrue();
    assertThat(model.touching).isPositive();
    double[] force = model.force.clone();
    double[][] tangent = new double[x.length][x.length];
    double stiff = 0.0;
    double scale = 0.0;
    for (int j = 0; j < x.length; j++) {
      double[] unit = new double[x.length];
      unit[j] = 1.0;
      model.times(unit, tangent[j]);
      stiff = Math.max(stiff, Math.abs(tangent[j][j]));
      scale = Math.max(scale, Math.abs(force[j]));
    }
    for (int j = 0; j < x.length; j++) {
      double at = x[j];
      x[j] = at + step;
      assertThat(model.at(x, 0.0)).isTrue();
      double up = model.energy(x) + model.touching;
      double[] forceUp = model.force.clone();
      x[j] = at - step;
      assertThat(model.at(x, 0.0)).isTrue();
      double slope = (up - model.energy(x) - model.touching) / (2.0 * step);
      assertThat(slope).isCloseTo(force[j], within(1e-7 * scale));
      for (int i = 0; i < x.length; i++) {
        double bend = (forceUp[i] - model.force[i]) / (2.0 * step);
        assertThat(bend).isCloseTo(tangent[j][i], within(1e-7 * stiff));
      }
      x[j] = at;
    }
  }

  /** The same shape in millimetres. */
  static ShellMesh scaled(ShellMesh of) {
    int n = of.nodes();
    double[] r = new double[n];
    double[] z = new double[n];
    double[] start = new double[n - 1];
    double[] end = new double[n - 1];
    double[] wall = new double[n - 1];
    for (int i = 0; i < n; i++) {
      r[i] = 1e3 * of.radius[i];
      z[i] = 1e3 * of.height[i];
    }
    for (int i = 0; i < n - 1; i++) {
      double bow = 0.5 * of.sections[i].curvature() * of.length[i];
      start[i] = of.angle[i] - bow;
      end[i] = of.angle[i] + bow;
      wall[i] = 1e3 * of.sections[i].thickness();
    }
    return new ShellMesh(r, z, start, end, wall);
  }
}
