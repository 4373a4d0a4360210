package org.flexwright.shells.wall;

import java.util.Arrays;

/**
 * The equations of von Karman for a round plate under even pressure, walked from state to state.
 *
 * <p>With x = (r/a)^2, w in units of the wall, slope -dw/dr = r f (of t/a), membrane force n (of E
 * t^3/a^2), P = q a^4/(E t^4) and k = 1/[12 (1 - nu^2)]: k L f = n f - P/2, L n = -f^2/2, L g = 4 x
 * g'' + 8 g'. Rim: f = 0 or 2 f' + (1 + nu) f = 0; n = 0 or 2 n' + (1 - nu) n = 0. The travel of
 * the centre is int f dx/2 plus that of shear, 1.2 (1 + nu) (t/a)^2 int (-k L f) dx, which at small
 * travel is the exact term q a^2/(4 (5/6) G t).
 *
 * <p>Newton with P as an unknown and the travel given. One instance serves one response. Not
 * thread-safe.
 */
final class LargeDeflection {

  private static final Collocation AT = Collocation.POINTS;
  private static final int N = AT.size();
  private static final int RIM = N - 1;
  private static final int ROUNDS = 40;
  private static final double FIRST = 0.5;
  private static final int LAYERS = 16;

  private final double poisson;
  private final double bending;
  private final double[][] plate = new double[N][N];
  private final double[][] inverse;
  private final double[][] matrix = new double[N + 1][N + 1];
  private final double[] step = new double[N + 1];
  private final double[] travelRow = new double[N];
  private final double[] f = new double[N];
  private final double[] old = new double[N];
  private final double[] n = new double[N];
  private final double[] along = new double[N];
  private final double[] around = new double[N];
  private final double[] bent = new double[N];
  private final double[] turned = new double[N];
  private double pressure;
  private double travel;
  private double earlier;
  private double slender;

  LargeDeflection(double poisson, boolean clamped, boolean fixed) {
    this.poisson = poisson;
    bending = 1.0 / (12.0 * (1.0 - poisson * poisson));
    double[][] stretch = new double[N][N];
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        boolean diagonal = i == j;
        if (i < RIM) {
          plate[i][j] = bending * AT.operator(i, j);
          stretch[i][j] = AT.operator(i, j);
        } else {
          double d = 2.0 * AT.slope(i, j);
          double one = diagonal ? 1.0 : 0.0;
          plate[i][j] = clamped ? one : d + (1.0 + poisson) * one;
          stretch[i][j] = fixed ? d + (1.0 - poisson) * one : one;
        }
      }
    }
    inverse = new double[N][];
    for (int j = 0; j < RIM; j++) {
      double[][] copy = new double[N][];
      for (int i = 0; i < N; i++) {
        copy[i] = stretch[i].clone();
      }
      double[] unit = new double[N];
      unit[j] = -0.5;
      Dense.solve(copy, unit);
      inverse[j] = unit; // the membrane force of f^2 = 1 at one point
    }
    inverse[RIM] = new double[N];
  }

  /** Goes to a travel of the centre over the wall, at a wall over radius. */
  void to(double travelOverWall, double wallOverRadius) {
    if (travelOverWall == travel && wallOverRadius == slender) {
      return;
    }
    slender = wallOverRadius;
    double shear = 4.8 * (1.0 + poisson) * bending * slender * slender;
    for (int j = 0; j < N; j++) {
      double ends = (j == RIM ? 1.0 : 0.0) - (j == 0 ? 1.0 : 0.0);
      travelRow[j] = 0.5 * AT.weight(j) - shear * (AT.slope(RIM, j) + ends);
    }
    if (!(travel > 0.0)) {
      Arrays.fill(f, 0.0);
      Arrays.fill(n, 0.0);
      travel = 0.0;
      newton(Math.min(FIRST, travelOverWall));
    }
    while (travelOverWall > 2.0 * travel) {
      guess(2.0 * travel);
      newton(2.0 * travel);
    }
    guess(travelOverWall);
    newton(travelOverWall);
  }

  /** Along the line through the last two states where they lie near, else in proportion. */
  private void guess(double to) {
    double before = travel - earlier;
    double next = to - travel;
    boolean near = earlier > 0.0 && before != 0.0 && Math.abs(next) <= 1.5 * Math.abs(before);
    double slopeOf = near ? next / before : 0.0;
    for (int i = 0; i < N; i++) {
      double was = f[i];
      f[i] = near ? was + slopeOf * (was - old[i]) : was * to / travel;
      old[i] = was;
    }
    earlier = travel;
  }

  private void newton(double to) {
    travel = to;
    for (int round = 0; round < ROUNDS; round++) {
      force();
      system(to);
      if (!Dense.solve(matrix, step)) {
        pressure = Double.NaN;
        return;
      }
      double change = 0.0;
      double size = 0.0;
      for (int i = 0; i < N; i++) {
        f[i] += step[i];
        change = Math.max(change, Math.abs(step[i]));
        size = Math.max(size, Math.abs(f[i]));
      }
      pressure = step[N];
      if (change <= 1e-6 * size) { // and the next step would be of its square
        force();
        return;
      }
    }
    pressure = Double.NaN;
  }

  private void force() {
    Arrays.fill(n, 0.0);
    for (int j = 0; j < RIM; j++) {
      double square = f[j] * f[j];
      double[] column = inverse[j];
      for (int i = 0; i < N; i++) {
        n[i] += column[i] * square;
      }
    }
  }

  /** The system for the step of f and for the pressure itself. */
  private void system(double to) {
    double total = to;
    for (int i = 0; i < N; i++) {
      double[] row = matrix[i];
      double residual = 0.0;
      for (int j = 0; j < N; j++) {
        row[j] = plate[i][j];
        residual += plate[i][j] * f[j];
        if (i < RIM) {
          row[j] -= 2.0 * f[i] * inverse[j][i] * f[j];
        }
      }
      if (i < RIM) {
        row[i] -= n[i];
        residual -= n[i] * f[i];
      }
      row[N] = i < RIM ? 0.5 : 0.0;
      step[i] = -residual;
      total -= travelRow[i] * f[i];
      matrix[N][i] = travelRow[i];
    }
    matrix[N][N] = 0.0;
    step[N] = total;
  }

  /** Pressure in E t^4/a^4. */
  double pressure() {
    return pressure;
  }

  /** Volume under the plate in pi a^2 t. */
  double volume() {
    double sum = 0.0;
    for (int i = 0; i < N; i++) {
      sum += 0.5 * AT.weight(i) * AT.x(i) * f[i];
    }
    double shear = 4.8 * (1.0 + poisson) * bending * slender * slender;
    return sum - shear * AT.derivative(f, RIM);
  }

  /** Largest tensile strain of either face in (t/a)^2. */
  double peak() {
    for (int i = 0; i < N; i++) {
      double tangent = n[i] + 2.0 * AT.x(i) * AT.derivative(n, i);
      double radial = f[i] + 2.0 * AT.x(i) * AT.derivative(f, i);
      along[i] = n[i] - poisson * tangent;
      around[i] = tangent - poisson * n[i];
      bent[i] = 0.5 * radial;
      turned[i] = 0.5 * f[i];
    }
    return Math.max(AT.largest(along, bent), AT.largest(around, turned));
  }

  /** Energy-weighted equivalent strain over the largest tensile strain. */
  double working() {
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < N; i++) {
      double tangent = n[i] + 2.0 * AT.x(i) * AT.derivative(n, i);
      double radial = f[i] + 2.0 * AT.x(i) * AT.derivative(f, i);
      for (int k = 0; k < LAYERS; k++) {
        double z = (k + 0.5) / LAYERS - 0.5;
        double a = n[i] - poisson * tangent + z * radial;
        double b = tangent - poisson * n[i] + z * f[i];
        double square = 4.0 / 3.0 * (a * a + a * b + b * b);
        squares += AT.weight(i) * square;
        cubes += AT.weight(i) * square * Math.sqrt(square);
      }
    }
    return cubes / squares / peak();
  }
}
