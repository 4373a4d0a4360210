package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

/** Paths of plain shells against closed forms and integrals. */
final class ShellSolverTest {

  private static final StrainEnergy UNIT = NeoHookean.of(Pressure.pa(1.0));
  private static final StrainEnergy UNIT_YOUNG = NeoHookean.of(Pressure.pa(1.0 / 3.0));
  private static final int LAYERS = 5;

  private static ShellSolver solver(ShellMesh mesh, StrainEnergy law, Loading load, int... held) {
    ShellSolver solver = new ShellSolver(new ShellModel(mesh, law, LAYERS), load, held);
    assertThat(solver.evaluate()).isTrue();
    return solver;
  }

  private static Termination go(ShellSolver solver, Control control, double to, int steps) {
    return new PathFollower(solver, () -> {}).follow(control, to, steps, "test", RunControl.none());
  }

  /** Axial stretch held at 1: Green and Zerna's integral for a neo-Hookean tube. */
  private static double tube(double ratio, double bore) {
    double out = Math.sqrt(1.0 + (bore * bore - 1.0) * ratio * ratio);
    return Math.log(bore / out) + 0.5 * (1.0 / (out * out) - 1.0 / (bore * bore));
  }

  @Test
  void aThickTubeIsExact() {
    int n = 4;
    for (double ratio : new double[] {0.8, 0.9, 0.98}) {
      double inner = 10.0 * ratio;
      double middle = 0.5 * (10.0 + inner);
      int[] held = IntStream.range(0, 2 * n + 2).map(i -> 3 * (i / 2) + 1 + i % 2).toArray();
      ShellMesh mesh = Meshes.tube(middle, 10.0, 10.0 - inner, n);
      ShellSolver s = solver(mesh, UNIT, Loading.pressure(3 * mesh.nodes()), held);
      double bore = 1.5 * inner;
      double to = Math.sqrt(bore * bore + middle * middle - inner * inner);
      assertThat(go(s, new Control.Unknown(0), to, 5).complete()).isTrue();
      // five Gauss points on a smooth wall
      assertThat(s.factor).isCloseTo(tube(ratio, 1.5), within(1e-11));
    }
  }

  private static double sphere(double ratio, double bore) {
    double out = Math.cbrt(1.0 + (bore * bore * bore - 1.0) * ratio * ratio * ratio);
    return 2.0 / out + 0.5 / Math.pow(out, 4) - 2.0 / bore - 0.5 / Math.pow(bore, 4);
  }

  private static ShellSolver balloon(double ratio, int n) {
    double middle = 5.0 * (1.0 + ratio);
    int q = 3 * (n + 1);
    ShellMesh mesh = Meshes.sphere(middle, Math.PI, 10.0 - 10.0 * ratio, n);
    int[] held = {0, 2, q - 3, q - 1, 3 * (n / 2) + 1};
    return solver(mesh, UNIT, Loading.pressure(3 * mesh.nodes()), held);
  }

  private static double missed(double ratio, int n) {
    ShellSolver s = balloon(ratio, n);
    double inner = 10.0 * ratio;
    double middle = 5.0 * (1.0 + ratio);
    double to = Math.cbrt(Math.pow(1.5 * inner, 3) + Math.pow(middle, 3) - Math.pow(inner, 3));
    assertThat(go(s, new Control.Unknown(3 * (n / 2)), to, 5).complete()).isTrue();
    return s.factor / sphere(ratio, 1.5) - 1.0;
  }

  @Test
  void aThickSphereConvergesWithTheSquareOfTheElement() {
    for (double ratio : new double[] {0.5, 0.9}) {
      double coarse = missed(ratio, 32);
      double fine = missed(ratio, 64);
      assertThat(Math.abs(fine)).isLessThan(5e-4);
      assertThat(coarse / fine).isCloseTo(4.0, within(0.1));
    }
  }

  @Test
  void theLimitPointOfASphereIsFound() {
    // A/B 0.9: 0.130427 mu, Green and Zerna's integral at its maximum
    double coarse = limit(48);
    double fine = limit(96);
    double limit = (4.0 * fine - coarse) / 3.0;
    assertThat(limit).isCloseTo(0.130427, within(1.3e-4));
  }

  private static double limit(int n) {
    ShellSolver s = balloon(0.9, n);
    assertThat(new PathFollower(s, () -> {}).limit(0.03, 100)).isTrue();
    return s.factor;
  }

  @Test
  void aClampedDiscBendsWithItsShear() {
    // w = p a^4/(64 D) (1 + 6.4 (t/a)^2) for shear share 5/6 and Poisson ratio 1/2
    double t = 1.0;
    for (double a : new double[] {10.0, 20.0, 50.0}) {
      double d = t * t * t / 9.0;
      double load = 64.0 * d / Math.pow(a, 4) * 1e-4;
      double coarse = sag(a, t, load, 80);
      double fine = sag(a, t, load, 160);
      double sag = (4.0 * fine - coarse) / 3.0;
      assertThat(sag / 1e-4).isCloseTo(1.0 + 6.4 * t * t / (a * a), within(2e-4));
    }
  }

  private static double sag(double a, double t, double load, int n) {
    int q = 3 * (n + 1);
    ShellSolver s =
        solver(Meshes.disc(a, t, n), UNIT_YOUNG, Loading.pressure(q), 0, 2, q - 3, q - 2, q - 1);
    assertThat(go(s, new Control.Load(), load, 1).complete()).isTrue();
    return -s.x[1];
  }

  @Test
  void aFlatMembraneFollowsItsDifferentialEquation() {
    // p a/(mu h) = 1: pole stretch 1.200195, height 0.531214 a; a wall of a/500 has no bending left
    int n = 150;
    int q = 3 * (n + 1);
    double wall = 0.002;
    ShellSolver s =
        solver(Meshes.disc(1.0, wall, n), UNIT, Loading.pressure(q), 0, 2, q - 3, q - 2);
    assertThat(go(s, new Control.Load(), -wall, 20).complete()).isTrue();
    assertThat(s.x[1]).isCloseTo(0.531214, within(0.001));
  }

  @Test
  void workIsStoredAndAReturnedPathEndsAtRest() {
    ShellMesh mesh = Meshes.convolution(15.0, 6.0, 1.5, 0.8, 16);
    int q = 3 * mesh.nodes();
    ShellSolver s = solver(mesh, UNIT, Loading.force(q, q - 2), 1, 2, q - 1);
    double start = s.x[q - 2];
    // Gauss quadrature of the force over re-solved states
    double end = start - 1.5;
    double work = 0.0;
    double[] points = Gauss.points(8);
    double[] weights = Gauss.weights(8);
    for (int i = 0; i < points.length; i++) {
      double at = start + 0.5 * (end - start) * (1.0 + points[i]);
      assertThat(go(s, new Control.Unknown(q - 2), at, 1).complete()).isTrue();
      work += 0.5 * (end - start) * weights[i] * s.factor;
    }
    assertThat(go(s, new Control.Unknown(q - 2), end, 1).complete()).isTrue();
    assertThat(s.model().energy(s.x)).isCloseTo(work, within(1e-6 * work));
    assertThat(go(s, new Control.Unknown(q - 2), start, 2).complete()).isTrue();
    double[] rest = mesh.rest();
    for (int i = 0; i < q; i++) {
      assertThat(s.x[i]).isCloseTo(rest[i], within(1e-9 * mesh.size()));
    }
  }

  @Test
  void aBowlSnapsThroughUnderTravel() {
    int n = 60;
    ShellMesh mesh = Meshes.straight(10.0, 3.0, 20.0, 0.0, 1.0, n);
    ShellSolver s = solver(mesh, UNIT_YOUNG, Loading.force(3 * (n + 1), 1), 3 * n + 1);
    List<Double> forces = new ArrayList<>();
    PathFollower f = new PathFollower(s, () -> forces.add(-s.factor));
    Termination end = f.follow(new Control.Unknown(1), -3.0, 30, "snap", RunControl.none());
    assertThat(end.complete()).isTrue();
    // h0/t = 3 is above 2 sqrt 2: the force turns negative on the way (Almen and Laszlo 1936)
    assertThat(forces).anyMatch(v -> v < 0.0);
    assertThat(forces.get(forces.size() - 1)).isPositive();
  }

  private static ShellSolver bowl() {
    int n = 60;
    ShellMesh mesh = Meshes.straight(10.0, 3.0, 20.0, 0.0, 1.0, n);
    return solver(mesh, UNIT_YOUNG, Loading.force(3 * (n + 1), 1), 3 * n + 1);
  }

  @Test
  void aDeadLoadStopsAtItsLimitPointWhicheverWayItPushes() {
    // the largest push by travel, found by a parabola through three forces
    ShellSolver s = bowl();
    double[] force = new double[3];
    for (int i = 0; i < 3; i++) {
      assertThat(go(s, new Control.Unknown(1), 1.585 - 0.05 * i, 4).complete()).isTrue();
      force[i] = -s.factor;
    }
    double bend = force[0] - 2.0 * force[1] + force[2];
    double slope = 0.5 * (force[2] - force[0]);
    double peak = force[1] - 0.5 * slope * slope / bend;
    assertThat(Math.abs(slope / bend)).isLessThan(1.0);
    s = bowl();
    Termination end = go(s, new Control.Load(), -1.0, 20);
    assertThat(end.kind()).isEqualTo(Termination.Kind.LIMIT_POINT);
    assertThat(-s.factor).isCloseTo(peak, within(1e-4 * peak));
    assertThat(s.x[1]).isBetween(1.485, 1.585);
  }
}
