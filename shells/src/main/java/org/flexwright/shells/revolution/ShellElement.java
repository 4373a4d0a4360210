package org.flexwright.shells.revolution;

/**
 * A two-node element of a shell of revolution, exact for any displacement and turn, with one point
 * along the meridian (which does not lock).
 *
 * <p>Unknowns of a node: radius r, height z, turn p of the director. Strains at mid-length, with f =
 * f0 + (p1 + p2)/2: see {@link WallSection}. The reference length is the chord, so that the element
 * is free of strain at rest. Energies are for the whole turn, 2 pi.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class ShellElement {

  private static final int N = 6;
  private static final int S = WallSection.STRAINS;
  private static final double TURN = 2.0 * Math.PI;

  private final WallSection wall;
  private final double[] slopes = new double[S * N]; // strain by unknown
  private final double[] product = new double[S * N];

  final double[] force = new double[N];
  final double[] tangent = new double[N * N]; // upper half
  double energy;
  double e;
  double k;
  double r;
  double q;
  double g;
  private double c;

  ShellElement(WallSection wall) {
    this.wall = wall;
  }

  /** Strains of element i in state x. */
  void strains(ShellMesh mesh, int i, double[] x) {
    int n = 3 * i;
    double length = mesh.length[i];
    double rise = (x[n + 4] - x[n + 1]) / length;
    double run = (x[n + 3] - x[n]) / length;
    double f = mesh.angle[i] + 0.5 * (x[n + 2] + x[n + 5]);
    double cos = Math.cos(f);
    double sin = Math.sin(f);
    e = run * cos + rise * sin;
    g = -run * sin + rise * cos;
    k = mesh.sections[i].curvature() + (x[n + 5] - x[n + 2]) / length;
    r = 0.5 * (x[n] + x[n + 3]);
    q = sin;
    c = cos;
  }

  /**
   * Energy, forces and tangent of element i in state x.
   *
   * @return whether the element can exist
   */
  boolean at(ShellMesh mesh, int i, double[] x) {
    strains(mesh, i, x);
    if (!(r > 0.0) || !wall.at(mesh.sections[i], e, k, r, q, g)) {
      return false;
    }
    double length = mesh.length[i];
    double scale = TURN * length;
    energy = scale * wall.energy;
    fillSlopes(length);
    double[] first = wall.first;
    for (int a = 0; a < N; a++) {
      double sum = 0.0;
      for (int s = 0; s < S; s++) {
        sum += first[s] * slopes[N * s + a];
      }
      force[a] = scale * sum;
    }
    double[] second = wall.second;
    for (int s = 0; s < S; s++) {
      for (int a = 0; a < N; a++) {
        double sum = 0.0;
        for (int t = 0; t < S; t++) {
          sum += second[S * s + t] * slopes[N * t + a];
        }
        product[N * s + a] = sum;
      }
    }
    for (int a = 0; a < N; a++) {
      for (int b = a; b < N; b++) {
        double sum = 0.0;
        for (int s = 0; s < S; s++) {
          sum += slopes[N * s + a] * product[N * s + b];
        }
        tangent[N * a + b] = scale * sum;
      }
    }
    addCurved(scale, length);
    return true;
  }

  private void fillSlopes(double length) {
    double a = c / length;
    double b = q / length;
    set(0, -a, -b, 0.5 * g, a, b, 0.5 * g);
    set(1, 0.0, 0.0, -1.0 / length, 0.0, 0.0, 1.0 / length);
    set(2, 0.5, 0.0, 0.0, 0.5, 0.0, 0.0);
    set(3, 0.0, 0.0, 0.5 * c, 0.0, 0.0, 0.5 * c);
    set(4, b, -a, -0.5 * e, -b, a, -0.5 * e);
  }

  private void set(
      int strain, double r1, double z1, double p1, double r2, double z2, double p2) {
    int i = N * strain;
    slopes[i] = r1;
    slopes[i + 1] = z1;
    slopes[i + 2] = p1;
    slopes[i + 3] = r2;
    slopes[i + 4] = z2;
    slopes[i + 5] = p2;
  }

  /** What the strains' own second derivatives add to the tangent. */
  private void addCurved(double scale, double length) {
    double we = scale * wall.first[0];
    double wq = scale * wall.first[3];
    double wg = scale * wall.first[4];
    double run = 0.5 * (we * q + wg * c) / length; // r1 with a turn
    double rise = 0.5 * (-we * c + wg * q) / length; // z1 with a turn
    double turn = -0.25 * (we * e + wg * g + wq * q);
    tangent[2] += run;
    tangent[5] += run;
    tangent[N + 2] += rise;
    tangent[N + 5] += rise;
    tangent[2 * N + 2] += turn;
    tangent[2 * N + 3] -= run;
    tangent[2 * N + 4] -= rise;
    tangent[2 * N + 5] += turn;
    tangent[3 * N + 5] -= run;
    tangent[4 * N + 5] -= rise;
    tangent[5 * N + 5] += turn;
  }
}
