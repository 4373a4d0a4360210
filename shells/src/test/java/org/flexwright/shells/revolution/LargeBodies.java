package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.run.RunControl;

/** Finite deformations of plain bodies. */
final class LargeBodies {

  private LargeBodies() {}

  /** w0/t of a plate of radius 1 under P = q a^4/(E t^4), held at its rim. */
  static double plate(boolean clamped, double load, double wall, int n) {
    int q = 3 * (n + 1);
    int[] held = clamped ? new int[] {0, 2, q - 3, q - 2, q - 1} : new int[] {0, 2, q - 3, q - 2};
    ShellSolver s = Runs.solver(Meshes.disc(1.0, wall, n), Runs.YOUNG, Loading.pressure(q), held);
    Runs.reach(s, new Control.Load(), load * Math.pow(wall, 4), 4);
    return -s.x[1] / wall;
  }

  /**
   * A flat membrane of radius 1 blown to a height of its pole, by a pressure below 0.
   *
   * @return p a/(mu t), pole stretch, height, volume
   */
  static double[] membrane(StrainEnergy law, double height, double wall, int n) {
    int q = 3 * (n + 1);
    ShellSolver s =
        Runs.solver(Meshes.disc(1.0, wall, n), law, Loading.pressure(q), 0, 2, q - 3, q - 2);
    Runs.reach(s, new Control.Unknown(1), height, 8);
    return figures(s, law, wall);
  }

  /** Hencky's constant of a membrane at a height, Young's modulus 1. */
  static double hencky(double height, double wall, int n) {
    double p = membrane(Runs.YOUNG, height, wall, n)[0] * Runs.YOUNG.shearModulus();
    return height / Math.cbrt(-p);
  }

  /** The same under a pressure. */
  static double[] membraneAt(StrainEnergy law, double load, double wall, int n) {
    int q = 3 * (n + 1);
    ShellSolver s =
        Runs.solver(Meshes.disc(1.0, wall, n), law, Loading.pressure(q), 0, 2, q - 3, q - 2);
    Runs.reach(s, new Control.Load(), load * law.shearModulus() * wall, 12);
    return figures(s, law, wall);
  }

  private static double[] figures(ShellSolver s, StrainEnergy law, double wall) {
    return new double[] {
      s.factor / (law.shearModulus() * wall),
      s.x[3] / s.model().mesh.radius[1],
      -s.x[1],
      s.model().volume
    };
  }

  /** Limit points of a flat membrane up to a volume: p a/(mu t) of each. */
  static List<PathFollower.LimitPoint> membraneLimits(
      StrainEnergy law, double volume, double wall, int steps, int n) {
    int q = 3 * (n + 1);
    ShellSolver s =
        Runs.solver(Meshes.disc(1.0, wall, n), law, Loading.pressure(q), 0, 2, q - 3, q - 2);
    PathFollower f = new PathFollower(s, () -> {});
    assertThat(f.follow(new Control.Volume(), volume, steps, "x", RunControl.none()).complete())
        .isTrue();
    return f.limits();
  }

  /** Limit points of a sphere of radius 1 up to a stretch: p R0/(mu t0) of each. */
  static double[] balloonLimits(StrainEnergy law, double wall, double stretch, int steps, int n) {
    ShellMesh mesh = Meshes.sphere(1.0, Math.PI, wall, n);
    int q = 3 * (n + 1);
    int[] held = {0, 2, q - 3, q - 1, 3 * (n / 2) + 1};
    ShellSolver s = Runs.solver(mesh, law, Loading.pressure(q), held);
    PathFollower f = new PathFollower(s, () -> {});
    double volume = s.model().volume * Math.pow(stretch, 3);
    assertThat(f.follow(new Control.Volume(), volume, steps, "x", RunControl.none()).complete())
        .isTrue();
    double unit = law.shearModulus() * wall;
    return f.limits().stream().mapToDouble(l -> l.factor() / unit).toArray();
  }

  /** Pressure over mu of a thick sphere of inner over outer radius at a stretch of its bore. */
  static double sphere(double ratio, double bore, int n) {
    double middle = 0.5 * (1.0 + ratio);
    ShellMesh mesh = Meshes.sphere(middle, Math.PI, 1.0 - ratio, n);
    int q = 3 * (n + 1);
    int[] held = {0, 2, q - 3, q - 1, 3 * (n / 2) + 1};
    ShellSolver s = Runs.solver(mesh, Runs.SHEAR, Loading.pressure(q), held);
    double layer = (middle * middle * middle) - (ratio * ratio * ratio);
    double to = Math.cbrt(Math.pow(bore * ratio, 3) + layer);
    Runs.reach(s, new Control.Unknown(3 * (n / 2)), to, 6);
    return s.factor;
  }

  /** Limit points of a closed tube that stays a tube, axially free. */
  static double[] tubeLimits(StrainEnergy law, double wall, double times, int steps) {
    int n = 4;
    ShellMesh mesh = Meshes.tube(1.0, 1.0, wall, n);
    int q = 3 * (n + 1);
    int[] held = new int[n + 2];
    held[0] = 1;
    for (int i = 0; i <= n; i++) {
      held[i + 1] = 3 * i + 2;
    }
    ShellSolver s = Runs.solver(mesh, law, Loading.pressure(q), held);
    PathFollower f = new PathFollower(s, () -> {});
    double volume = s.model().volume * times;
    assertThat(f.follow(new Control.Volume(), volume, steps, "x", RunControl.none()).complete())
        .isTrue();
    double unit = law.shearModulus() * wall;
    return f.limits().stream().mapToDouble(l -> l.factor() / unit).toArray();
  }

  /** Pressure p R0/(mu t0) along a tube with a weak middle, by the volume taken in. */
  static double[] bulge(
      StrainEnergy law, double wall, double length, double share, double times, int steps, int n) {
    ShellMesh mesh = Meshes.necked(1.0, length, wall, share, 2.0, n);
    int q = 3 * (n + 1);
    ShellSolver s = Runs.solver(mesh, law, Loading.pressure(q), 1, 2, q - 1);
    List<Double> p = new ArrayList<>();
    double unit = law.shearModulus() * wall;
    PathFollower f = new PathFollower(s, () -> p.add(s.factor / unit));
    double volume = s.model().volume * times;
    assertThat(f.follow(new Control.Volume(), volume, steps, "x", RunControl.none()).complete())
        .isTrue();
    return p.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Limit pressure over the classical one of a clamped shallow cap. */
  static double cap(double lambda, double ratio, int n) {
    // radius 1: lambda = [12 (1 - nu^2)]^(1/4) a/sqrt(R t) = sqrt(3) a sqrt(ratio)
    double a = lambda / Math.sqrt(3.0 * ratio);
    ShellMesh mesh = Meshes.sphere(1.0, Math.asin(a), 1.0 / ratio, n);
    int q = 3 * (n + 1);
    double classical = 2.0 / (1.5 * ratio * ratio);
    Loading outside =
        new Loading(0.0, -classical, new double[3 * (n + 1)], new double[3 * (n + 1)]);
    ShellSolver s = Runs.solver(mesh, Runs.YOUNG, outside, 0, 2, q - 3, q - 2, q - 1);
    PathFollower f = new PathFollower(s, () -> {});
    assertThat(
            f.follow(new Control.Unknown(1), s.x[1] + 2.0 / ratio, 20, "x", RunControl.none())
                .complete())
        .isTrue();
    return f.limits().get(0).factor();
  }

  /** F R/(E t^3) of a clamped hemisphere pushed at its pole, at the travels w/t. */
  static double[] pushedDome(double ratio, double crowd, int n, double... travels) {
    ShellMesh mesh = Meshes.zone(ratio, 0.0, 0.5 * Math.PI, crowd, 1.0, n);
    int q = 3 * mesh.nodes();
    ShellSolver s = Runs.solver(mesh, Runs.YOUNG, Loading.force(q, 1), 0, 2, q - 3, q - 2, q - 1);
    double[] force = new double[travels.length];
    for (int i = 0; i < force.length; i++) {
      Runs.reach(s, new Control.Unknown(1), travels[i] - ratio, 4);
      force[i] = s.factor * ratio;
    }
    return force;
  }

  /** F/E of a disc spring of outer radius 20 and wall 1, at travels s/h0. */
  static double[] discSpring(double inner, double height, int n, double... travels) {
    ShellMesh mesh = Meshes.straight(inner, height, 20.0, 0.0, 1.0, n);
    ShellSolver s = Runs.solver(mesh, Runs.YOUNG, Loading.force(3 * (n + 1), 1), 3 * n + 1);
    double[] force = new double[travels.length];
    for (int i = 0; i < force.length; i++) {
      Runs.reach(s, new Control.Unknown(1), height * (1.0 - travels[i]), 2);
      force[i] = -s.factor;
    }
    return force;
  }
}
