package org.flexwright.shells.revolution;

/**
 * The potential of a liquid up to a level: H = pi int r^2 w max(0, level - z) dz along each
 * frustum, w its weight per volume, with slopes and curvatures by the nodes' radii and heights. An
 * element that the level cuts is taken up to the cut.
 *
 * @param weight per volume, newtons per cubic metre
 * @param level height of the surface
 */
record Liquid(double weight, double level) {

  static final double GRAVITY = 9.80665;
  static final Liquid NONE = new Liquid(0.0, 0.0);

  private static final int N = 6;
  private static final double[] AT = Gauss.points(3); // exact: cubic along an element
  private static final double[] BY = Gauss.weights(3);

  /**
   * Adds element i to the slopes and takes a share off an element's tangent, upper half.
   *
   * @return the potential of the element
   */
  double add(int i, double[] x, double share, double[] slope, double[] tangent) {
    double z1 = x[3 * i + 1];
    double z2 = x[3 * i + 4];
    if (weight == 0.0 || Math.min(z1, z2) >= level) {
      return 0.0;
    }
    double from = z1 > level ? (level - z1) / (z2 - z1) : 0.0;
    double to = z2 > level ? (level - z1) / (z2 - z1) : 1.0;
    double sum = 0.0;
    for (int g = 0; g < AT.length; g++) {
      double s = 0.5 * (from + to) + 0.5 * (to - from) * AT[g];
      sum += point(i, x, s, 0.5 * (to - from) * BY[g], share, slope, tangent);
    }
    if (Math.max(z1, z2) > level) {
      double s = z1 > level ? from : to;
      double r = x[3 * i] + s * (x[3 * i + 3] - x[3 * i]);
      double cut = share * weight * Math.PI * r * r * Math.signum(z2 - z1);
      tangent[N + 1] -= cut * (1.0 - s) * (1.0 - s);
      tangent[N + 4] -= cut * (1.0 - s) * s;
      tangent[4 * N + 4] -= cut * s * s;
    }
    return sum;
  }

  private double point(
      int i, double[] x, double s, double by, double share, double[] slope, double[] tangent) {
    int n = 3 * i;
    double rise = x[n + 4] - x[n + 1];
    double r = x[n] + s * (x[n + 3] - x[n]);
    double p = weight * (level - x[n + 1] - s * rise);
    double f = Math.PI * by;
    for (int a = 0; a < 2; a++) {
      double na = a == 0 ? 1.0 - s : s;
      double sa = a == 0 ? -1.0 : 1.0;
      slope[n + 3 * a] += f * 2.0 * r * na * rise * p;
      slope[n + 3 * a + 1] += f * r * r * (sa * p - rise * weight * na);
      for (int b = 0; b < 2; b++) {
        double nb = b == 0 ? 1.0 - s : s;
        double sb = b == 0 ? -1.0 : 1.0;
        double rr = 2.0 * na * nb * rise * p;
        double rz = 2.0 * r * na * (sb * p - rise * weight * nb);
        double zz = -r * r * weight * (sa * nb + sb * na);
        upper(tangent, 3 * a, 3 * b, share * f * rr);
        upper(tangent, 3 * a + 1, 3 * b + 1, share * f * zz);
        tangent[N * Math.min(3 * a, 3 * b + 1) + Math.max(3 * a, 3 * b + 1)] -= share * f * rz;
      }
    }
    return f * r * r * rise * p;
  }

  private static void upper(double[] tangent, int a, int b, double value) {
    if (a <= b) {
      tangent[N * a + b] -= value;
    }
  }
}
