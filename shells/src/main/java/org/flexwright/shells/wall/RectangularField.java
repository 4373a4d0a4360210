package org.flexwright.shells.wall;

/**
 * Bending of a rectangular plate, short side 1 along x, long side r along y, D = 1, under even
 * pressure or a central square patch of load 1.
 *
 * <p>Levy: w = sum f_m Y_m(y) cos(k x), k = m pi, m odd, with Y the answer of an infinite strip to
 * the load plus A cosh ky + B ky sinh ky for the supported ends. Clamped edges: moments E_m cos(k
 * x) on the short and G_n cos(l y) on the long edges, l = n pi/r, that take the slopes back; their
 * slopes meet in 4 k l/(k^2 + l^2)^2. The load's singular part stays in the exact series.
 */
final class RectangularField {

  private static final Collocation AT = Collocation.POINTS;
  private static final int N = AT.size();
  private static final int SHORT = 12;
  private static final double STRIP = 5.0; // a clamped plate so long is a strip to 1e-4

  private static final double FAR = 40.0; // exp(-40) is nothing

  private final double ratio;
  private final double[][] across = new double[N][N];
  private final double[][] along = new double[N][N];
  private final double[][] twist = new double[N][N];
  private final double[] value = new double[N];
  private final double[] slope = new double[N];
  private final double[] bend = new double[N];
  private double travel;
  private double laplacian;

  private double line;
  private double pole;

  private RectangularField(double ratio) {
    this.ratio = ratio;
  }

  /** Under a pressure of 1. */
  static RectangularField pressed(double ratio, boolean clamped) {
    double r = clamped ? Math.min(ratio, STRIP) : ratio;
    return new RectangularField(r).solve(clamped, 1.0, r, 1.0);
  }

  /** Under a force of 1 on a square of a side, which counts as at least a thousandth. */
  static RectangularField patched(double ratio, boolean clamped, double side) {
    double r = clamped ? Math.min(ratio, STRIP) : ratio;
    double s = Math.max(side, 1e-3);
    return new RectangularField(r).solve(clamped, s, s, 1.0 / (s * s));
  }

  private RectangularField solve(boolean clamped, double sx, double sy, double q) {
    int terms = (int) Math.min(400.0, Math.max(30.0, 4.0 / sx));
    for (int i = 0; i < terms; i++) {
      double k = (2 * i + 1) * Math.PI;
      loaded(k, 0.5 * ratio, 0.5 * sy);
      add(k, 4.0 * q / k * Math.sin(0.5 * k * sx), false, 0.5 * sy);
    }
    laplacian = across[0][0] + along[0][0];
    if (clamped) {
      clamp(sx, sy, q);
    }
    return this;
  }

  /** Moments on the edges that take the slopes back. */
  private void clamp(double sx, double sy, double q) {
    int count = SHORT + (int) (8.0 + 6.0 * ratio);
    double[][] a = new double[count][count];
    double[] b = new double[count];
    for (int i = 0; i < SHORT; i++) {
      double k = (2 * i + 1) * Math.PI;
      b[i] = -4.0 * q / k * Math.sin(0.5 * k * sx) * loadedSlope(k, 0.5 * ratio, 0.5 * sy);
      a[i][i] = edgeSlope(k, 0.5 * ratio);
    }
    for (int j = SHORT; j < count; j++) {
      double l = wave(j);
      b[j] = -4.0 * q / (l * ratio) * Math.sin(0.5 * l * sy) * loadedSlope(l, 0.5, 0.5 * sx);
      a[j][j] = edgeSlope(l, 0.5);
      for (int i = 0; i < SHORT; i++) {
        double k = (2 * i + 1) * Math.PI;
        double sum = k * k + l * l;
        double sign = (i + j - SHORT) % 2 == 0 ? 1.0 : -1.0;
        double meet = -4.0 * sign * k * l / (sum * sum);
        a[i][j] = meet;
        a[j][i] = meet / ratio;
      }
    }
    Dense.solve(a, b);
    for (int i = 0; i < count; i++) {
      double k = i < SHORT ? (2 * i + 1) * Math.PI : wave(i);
      double half = i < SHORT ? 0.5 * ratio : 0.5;
      line = 0.5 * half / k * Math.tanh(k * half);
      pole = -0.5 / (k * k);
      add(k, b[i], i >= SHORT, -1.0);
    }
  }

  private double wave(int j) {
    return (2 * (j - SHORT) + 1) * Math.PI / ratio;
  }

  private static double edgeSlope(double k, double half) {
    double tanh = Math.tanh(k * half);
    return -0.5 / k * (tanh + k * half * (1.0 - tanh * tanh));
  }

  private double loadedSlope(double k, double half, double d) {
    loaded(k, half, d);
    double tanh = Math.tanh(k * half);
    double strip = green(k, half + d) - green(k, half - d);
    return strip + k * ((line + pole) * tanh + pole * k * half);
  }

  /**
   * Sets A and B (times cosh k half) of the supported ends at y = half for a load on |y| below d.
   */
  private void loaded(double k, double half, double d) {
    double at = sum(k, half + d) - sum(k, half - d);
    double second = bent(k, half + d) - bent(k, half - d);
    pole = 0.5 * (at - second / (k * k));
    line = -at - pole * k * half * Math.tanh(k * half);
  }

  /** Answer of the infinite strip to a line load, (1 + k|z|) exp(-k|z|)/(4 k^3). */
  private static double green(double k, double z) {
    double u = k * Math.abs(z);
    return u > 700.0 ? 0.0 : (1.0 + u) * Math.exp(-u) / (4.0 * k * k * k);
  }

  /** Its integral from 0. */
  private static double sum(double k, double z) {
    double u = k * Math.abs(z);
    double of = (2.0 - (2.0 + u) * Math.exp(-u)) / (4.0 * k * k * k * k);
    return z < 0.0 ? -of : of;
  }

  /** Its derivative. */
  private static double bent(double k, double z) {
    return -z * Math.exp(-k * Math.abs(z)) / (4.0 * k);
  }

  /** Adds one wave: cos kx times the y shape, or turned; load half width d, below 0 for none. */
  private void add(double k, double amplitude, boolean turned, double d) {
    double half = turned ? 0.5 : 0.5 * ratio;
    int points = shape(k, half, d);
    double other = turned ? 0.5 * ratio : 0.5;
    double[][] along1 = turned ? along : across;
    double[][] along2 = turned ? across : along;
    for (int i = 0; i < N; i++) {
      double x = other * AT.x(i);
      double cos = amplitude * Math.cos(k * x);
      double sin = amplitude * k * Math.sin(k * x);
      for (int j = 0; j < points; j++) {
        int p = turned ? j : i;
        int r = turned ? i : j;
        along1[p][r] += k * k * value[j] * cos;
        along2[p][r] -= bend[j] * cos;
        twist[p][r] += slope[j] * sin;
      }
    }
    travel += amplitude * value[0];
  }

  /** Fills value, slope and bend of the y shape; gives how many points it reaches. */
  private int shape(double k, double half, double d) {
    boolean local = d >= 0.0 && k * (half - d) > FAR;
    double whole = 1.0 + Math.exp(-2.0 * k * half);
    double unit = 0.25 / (k * k * k * k);
    for (int j = 0; j < N; j++) {
      double y = half * AT.x(j);
      if (local && k * (y - d) > FAR) {
        return j;
      }
      double near = Math.exp(-k * (half - y));
      double far = Math.exp(-k * (half + y));
      double cosh = (near + far) / whole;
      double sinh = (near - far) / whole;
      value[j] = line * cosh + pole * k * y * sinh;
      slope[j] = k * ((line + pole) * sinh + pole * k * y * cosh);
      bend[j] = k * k * ((line + 2.0 * pole) * cosh + pole * k * y * sinh);
      if (d >= 0.0) {
        double out = k * (y + d);
        double in = k * Math.abs(y - d);
        double side = y < d ? 1.0 : -1.0;
        double eOut = Math.exp(-out);
        double eIn = Math.exp(-in);
        value[j] += unit * (2.0 - (2.0 + out) * eOut + side * (2.0 - (2.0 + in) * eIn));
        slope[j] += k * unit * ((1.0 + out) * eOut - (1.0 + in) * eIn);
        bend[j] -= k * k * unit * (out * eOut + side * in * eIn);
      }
    }
    return N;
  }

  /** Deflection of the centre. */
  double travel() {
    return travel;
  }

  /** Curvature across at the centre (of the short span). */
  double centreAcross() {
    return across[0][0];
  }

  /** Curvature along at the centre. */
  double centreAlong() {
    return along[0][0];
  }

  /** Curvature across at the middle of the long edge. */
  double longEdge() {
    return across[N - 1][0];
  }

  /** Curvature along at the middle of the short edge. */
  double shortEdge() {
    return along[0][N - 1];
  }

  /** Sum of the curvatures at the centre with supported edges: what shear adds to the travel. */
  double laplacian() {
    return laplacian;
  }

  /** The largest principal curvature. */
  double peak() {
    double most = 0.0;
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double mean = 0.5 * (across[i][j] + along[i][j]);
        double half = 0.5 * (across[i][j] - along[i][j]);
        most = Math.max(most, Math.abs(mean) + Math.hypot(half, twist[i][j]));
      }
    }
    return most;
  }

  /** Energy-weighted equivalent curvature over the largest curvature. */
  double working() {
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        double a = across[i][j];
        double b = along[i][j];
        double c = twist[i][j];
        double square = 4.0 / 3.0 * (a * a + a * b + b * b + c * c);
        double weight = AT.weight(i) * AT.weight(j);
        squares += weight * square;
        cubes += weight * square * Math.sqrt(square);
      }
    }
    return cubes / squares / peak();
  }
}
