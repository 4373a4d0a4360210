package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * The point of a face at the middle of an element: (r - y sin f, z + y cos f) for the depth y that
 * the face has come to, with first and second derivatives by the element's six unknowns.
 *
 * <p>Work space; not thread-safe.
 */
final class FacePoint {

  private static final int N = 6;
  private static final int V = 4; // e, k, r, angle
  private static final double SHEAR = Math.sqrt(5.0 / 6.0);

  private final WallSection wall;
  private final double[] slopes = new double[V * N];
  private final double[] inner = new double[V * V];
  private final double[] by = new double[V];

  double r;
  double z;
  double depth;
  double sin;
  double cos;
  final double[] dr = new double[N];
  final double[] dz = new double[N];
  private double length;
  private double stretch;
  private double tr;
  private double tz;
  private double cosShear;
  private double sinShear;
  private double e;
  private double k;
  private double middle;
  private WallSection.Section rest;
  private double restDepth;

  FacePoint(WallSection wall) {
    this.wall = wall;
    rest = new WallSection.Section(1.0, 0.0, 1.0, 0.0);
  }

  /**
   * Places the point.
   *
   * @param side -1 for the face at negative depth, 1 for the other
   */
  void at(ShellMesh mesh, int i, int side, double[] x) {
    int n = 3 * i;
    rest = mesh.sections[i];
    restDepth = 0.5 * side * rest.thickness();
    length = mesh.length[i];
    double run = (x[n + 3] - x[n]) / length;
    double rise = (x[n + 4] - x[n + 1]) / length;
    double f = mesh.angle[i] + 0.5 * (x[n + 2] + x[n + 5]);
    cos = Math.cos(f);
    sin = Math.sin(f);
    k = rest.curvature() + (x[n + 5] - x[n + 2]) / length;
    middle = 0.5 * (x[n] + x[n + 3]);
    stretch = Math.sqrt(run * run + rise * rise);
    tr = run / stretch;
    tz = rise / stretch;
    double shear = SHEAR * Math.atan2(rise * cos - run * sin, run * cos + rise * sin);
    cosShear = Math.cos(shear);
    sinShear = Math.sin(shear);
    e = stretch * cosShear;
    PressedFace.at(wall, rest, restDepth, e, k, middle, sin);
    depth = wall.depth;
    r = middle - depth * sin;
    z = 0.5 * (x[n + 1] + x[n + 4]) + depth * cos;
  }

  /** Fills the slopes of r and z by the unknowns; the point must be the one placed last. */
  void slopes() {
    Arrays.fill(slopes, 0.0);
    double across = -SHEAR * sinShear;
    double er = (cosShear * tr - across * tz) / length;
    double ez = (cosShear * tz + across * tr) / length;
    double ep = 0.5 * SHEAR * stretch * sinShear;
    set(0, -er, -ez, ep, er, ez, ep);
    set(1, 0.0, 0.0, -1.0 / length, 0.0, 0.0, 1.0 / length);
    set(2, 0.5, 0.0, 0.0, 0.5, 0.0, 0.0);
    set(3, 0.0, 0.0, 0.5, 0.0, 0.0, 0.5);
    for (int u = 0; u < N; u++) {
      double turn = slopes[3 * N + u];
      double y =
          wall.dy[0] * slopes[u]
              + wall.dy[1] * slopes[N + u]
              + wall.dy[2] * slopes[2 * N + u]
              + wall.dy[3] * cos * turn;
      dr[u] = slopes[2 * N + u] - y * sin - depth * cos * turn;
      dz[u] = (u % 3 == 1 ? 0.5 : 0.0) + y * cos - depth * sin * turn;
    }
  }

  private void set(int v, double r1, double z1, double p1, double r2, double z2, double p2) {
    int i = N * v;
    slopes[i] = r1;
    slopes[i + 1] = z1;
    slopes[i + 2] = p1;
    slopes[i + 3] = r2;
    slopes[i + 4] = z2;
    slopes[i + 5] = p2;
  }

  /**
   * The second derivatives of nr r + nz z by the unknowns; the slopes must be those of this point.
   *
   * @param out 6 x 6, row by row
   */
  void curved(double nr, double nz, double[] out) {
    double along = nz * cos - nr * sin; // by depth
    double turn = -nr * cos - nz * sin; // by depth and angle
    for (int a = 0; a < 3; a++) {
      for (int b = 0; b < 3; b++) {
        inner[V * a + b] = along * wall.depthCurved[4 * a + b];
      }
      double mixed = along * wall.depthCurved[4 * a + 3] * cos + turn * wall.dy[a];
      inner[V * a + 3] = mixed;
      inner[V * 3 + a] = mixed;
    }
    double yf = wall.dy[3] * cos;
    double yff = wall.depthCurved[15] * cos * cos - wall.dy[3] * sin;
    inner[15] = along * yff + 2.0 * turn * yf - depth * along;
    for (int u = 0; u < N; u++) {
      for (int a = 0; a < V; a++) {
        double sum = 0.0;
        for (int b = 0; b < V; b++) {
          sum += inner[V * a + b] * slopes[N * b + u];
        }
        by[a] = sum;
      }
      for (int w = 0; w < N; w++) {
        double sum = 0.0;
        for (int a = 0; a < V; a++) {
          sum += by[a] * slopes[N * a + w];
        }
        out[N * u + w] = sum;
      }
    }
    addStretch(along * wall.dy[0], out);
  }

  /** Adds the stretch's own second derivatives: along (t), across (n) the line and by angle (p). */
  private void addStretch(double weight, double[] out) {
    double nn = weight * (1.0 - SHEAR * SHEAR) / stretch * cosShear / (length * length);
    double tp = 0.5 * weight * SHEAR * sinShear / length;
    double np = 0.5 * weight * SHEAR * SHEAR * cosShear / length;
    double pp = -0.25 * weight * SHEAR * SHEAR * e;
    double rp = tp * tr - np * tz;
    double zp = tp * tz + np * tr;
    for (int a = 0; a < N; a += 3) {
      for (int b = 0; b < N; b += 3) {
        double sign = a == b ? 1.0 : -1.0;
        out[N * a + b] += sign * nn * tz * tz;
        out[N * a + b + 1] -= sign * nn * tz * tr;
        out[N * (a + 1) + b] -= sign * nn * tz * tr;
        out[N * (a + 1) + b + 1] += sign * nn * tr * tr;
        out[N * (a + 2) + b + 2] += pp;
        double way = a == 0 ? -1.0 : 1.0;
        out[N * a + b + 2] += way * rp;
        out[N * (b + 2) + a] += way * rp;
        out[N * (a + 1) + b + 2] += way * zp;
        out[N * (b + 2) + a + 1] += way * zp;
      }
    }
  }
}
