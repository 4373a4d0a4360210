package org.flexwright.shells.revolution;

/** Linear answers of plain bodies, Young's modulus 1, mesh extrapolated. */
final class LinearBodies {

  private static final double RATIO = 0.5; // Poisson's

  private LinearBodies() {}

  static double bending(double wall) {
    return wall * wall * wall / (12.0 * (1.0 - RATIO * RATIO));
  }

  /** Sag of the centre of a plate of radius 1 under even pressure, over q a^4/D. */
  static double pressedPlate(boolean clamped, double wall, int n) {
    ShellMesh mesh = Meshes.disc(1.0, wall, n);
    int q = 3 * (n + 1);
    int[] held = clamped ? new int[] {0, 2, q - 3, q - 2, q - 1} : new int[] {0, 2, q - 2};
    return -Runs.linear(mesh, Loading.pressure(q), held)[1] * bending(wall);
  }

  /** Sag of the centre of a plate of radius 1 under a ring of load at node n/4, over P a^2/D. */
  static double ringOnPlate(boolean clamped, double wall, int n) {
    ShellMesh mesh = Meshes.disc(1.0, wall, n);
    int q = 3 * (n + 1);
    int[] held = clamped ? new int[] {0, 2, q - 3, q - 2, q - 1} : new int[] {0, 2, q - 2};
    return Runs.linear(mesh, Runs.forces(mesh, 3 * (n / 4) + 1, 1.0), held)[1] * bending(wall);
  }

  /** Travel of the inner edge of an annular plate, over P a^2/D or q a^4/D. */
  static double annulus(
      boolean clamped, boolean guided, boolean pressed, double bore, double wall, int n) {
    ShellMesh mesh = Meshes.straight(bore, 0.0, 1.0, 0.0, wall, n);
    int q = 3 * (n + 1);
    int[] outer = clamped ? new int[] {q - 3, q - 2, q - 1} : new int[] {q - 2};
    int[] held = java.util.Arrays.copyOf(outer, outer.length + (guided ? 1 : 0));
    if (guided) {
      held[outer.length] = 2;
    }
    double[] force = new double[q];
    force[1] =
        pressed ? Math.PI * bore * bore : 1.0; // takes off the thrust on the plug in the bore
    Loading load = new Loading(0.0, pressed ? 1.0 : 0.0, new double[q], force);
    return Math.abs(Runs.linear(mesh, load, held)[1]) * bending(wall);
  }

  /** Travel by force, turn by force, turn by moment of a cylinder's edge over their thin values. */
  static double[] cylinderEdge(double ratio, int n) {
    double beta = Math.sqrt(1.5 * ratio); // of radius 1
    double wall = 1.0 / ratio;
    ShellMesh mesh = Meshes.tube(1.0, 12.0 / beta, wall, n);
    int q = 3 * (n + 1);
    double d = bending(wall);
    double[] byForce = Runs.linear(mesh, Runs.forces(mesh, 0, 2.0 * Math.PI), q - 2);
    double[] byMoment = Runs.linear(mesh, Runs.forces(mesh, 2, 2.0 * Math.PI), q - 2);
    return new double[] {
      byForce[0] * 2.0 * beta * beta * beta * d,
      byForce[2] * 2.0 * beta * beta * d,
      byMoment[2] * beta * d
    };
  }

  /** Travel under a ring of load in the middle of a long cylinder, over P R^2 beta/(2 E t). */
  static double cylinderRing(double ratio, int n) {
    double beta = Math.sqrt(1.5 * ratio);
    double wall = 1.0 / ratio;
    ShellMesh mesh = Meshes.tube(1.0, 12.0 / beta, wall, n);
    double[] u = Runs.linear(mesh, Runs.forces(mesh, 0, Math.PI), 1, 2);
    return u[0] * 2.0 * wall / beta;
  }

  /** Travel by force, turn by force, turn by moment of a dome's edge over Geckeler's values. */
  static double[] domeEdge(double degrees, double ratio, int n) {
    double edge = Math.toRadians(degrees);
    double wall = 1.0 / ratio;
    double steep = Math.sqrt(1.5 * ratio);
    ShellMesh mesh = Meshes.sphere(1.0, edge, wall, n);
    int q = 3 * (n + 1);
    double around = 2.0 * Math.PI * Math.sin(edge);
    double sin = Math.sin(edge);
    double[] byForce = Runs.linear(mesh, Runs.forces(mesh, q - 3, around), 0, 1, 2);
    double[] byMoment = Runs.linear(mesh, Runs.forces(mesh, q - 1, around), 0, 1, 2);
    return new double[] {
      byForce[q - 3] * wall / (2.0 * steep * sin * sin),
      byForce[q - 1] * wall / (2.0 * steep * steep * sin),
      byMoment[q - 1] * wall / (4.0 * steep * steep * steep)
    };
  }

  /** Growth of the joint and largest curvature of a cylinder with hemispherical ends. */
  static double[] flask(double ratio, int n) {
    double wall = 1.0 / ratio;
    double beta = Math.sqrt(1.5 * ratio);
    ShellMesh mesh = Meshes.flask(1.0, 8.0 / beta, wall, n);
    int q = 3 * mesh.nodes();
    double[] u = Runs.linear(mesh, Loading.pressure(q), 0, 2, q - 2, q - 1);
    double bend = 0.0;
    for (int i = n; i < 2 * n; i++) {
      bend = Math.max(bend, Math.abs(u[3 * i + 5] - u[3 * i + 2]) / mesh.length[i]);
    }
    return new double[] {u[3 * n] * wall, bend * wall * wall};
  }

  /** Stiffness of a convolution K w^3/(E Dm t^3), w 1. */
  static double bellows(double mean, double round, double wall, int n) {
    ShellMesh mesh = Meshes.convolution(0.5 * mean, 1.0, round, wall, n);
    int q = 3 * mesh.nodes();
    double[] u = Runs.linear(mesh, Runs.forces(mesh, q - 2, 1.0), 1, 2, q - 1);
    return 0.5 / (u[q - 2] * mean * wall * wall * wall);
  }

  /** B3 of an omega convolution, K 12 (1 - nu^2) r^3/(E Dm t^3), r 1. */
  static double omega(double mean, double wall, boolean held, int n) {
    ShellMesh mesh = Meshes.torus(0.5 * mean, 1.0, wall, n);
    int q = 3 * mesh.nodes();
    int[] fixed = held ? new int[] {0, 2, q - 2, q - 1} : new int[] {2, q - 2, q - 1};
    double[] u = Runs.linear(mesh, Runs.forces(mesh, 1, 1.0), fixed);
    return 0.5 / u[1] * 9.0 / (mean * wall * wall * wall);
  }

  /**
   * k R sqrt(1 - nu^2)/(E t^2) of a clamped hemisphere pressed on a small ring about its pole.
   *
   * @param share of the nodes inside the ring; the ring's angle is that share squared of a quarter
   */
  static double pushedDome(double ratio, double share, int n) {
    ShellMesh mesh = Meshes.zone(ratio, 0.0, 0.5 * Math.PI, 2.0, 1.0, n);
    int q = 3 * mesh.nodes();
    int at = 3 * (int) Math.round(share * n) + 1;
    double[] u = Runs.linear(mesh, Runs.forces(mesh, at, 1.0), 0, 2, q - 3, q - 2, q - 1);
    return ratio * Math.sqrt(0.75) / u[at];
  }
}
