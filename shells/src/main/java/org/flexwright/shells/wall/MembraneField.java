package org.flexwright.shells.wall;

import java.util.Arrays;

/**
 * A round membrane without bending under pressure that acts normal to it (Fichter), radius 1. With
 * x = r^2, force n (of E t) and pressure q (of E t/a): slope q r/(2 n), L n + q^2 (x/n)' + (1 + nu)
 * q^2/(2 n) + q^2/(8 n^2) = 0, rim (1 - nu) n + 2 n' + q^2/(2 n) = e, the strain put in before.
 * Scaled by the travel w: n = w^2 m, q = w^3 Q. At small w this is Hencky's membrane; with e it is
 * Campbell's.
 *
 * <p>Newton with Q as an unknown. One instance serves one response. Not thread-safe.
 */
final class MembraneField {

  private static final Collocation AT = Collocation.POINTS;
  private static final int N = AT.size();
  private static final int RIM = N - 1;
  private static final int ROUNDS = 40;

  private final double poisson;
  private final double prestrain;
  private final double[] m = new double[N];
  private final double[] tangent = new double[N];
  private final double[] along = new double[N];
  private final double[] around = new double[N];
  private final double[] none = new double[N];
  private final double[][] matrix = new double[N + 1][N + 1];
  private final double[] step = new double[N + 1];
  private double pressure;
  private double travel;

  MembraneField(double poisson, double prestrain) {
    this.poisson = poisson;
    this.prestrain = prestrain;
  }

  /** Goes to a travel of the centre over the radius. */
  void to(double w) {
    if (w == travel) {
      return;
    }
    travel = w;
    double given = prestrain / (w * w);
    Arrays.fill(m, 1.0 + given / (1.0 - poisson));
    pressure = 4.0 * m[0];
    for (int round = 0; round < ROUNDS; round++) {
      system(w * w, given);
      if (!Dense.solve(matrix, step)) {
        break;
      }
      double change = 0.0;
      for (int i = 0; i < N; i++) {
        // at most to a half, so that no force turns into compression on the way
        m[i] = Math.max(0.5 * m[i], m[i] + step[i]);
        change = Math.max(change, Math.abs(step[i]) / m[i]);
      }
      pressure += step[N];
      if (change < 1e-6) { // and the next step would be of its square
        strains(w * w);
        return;
      }
    }
    pressure = Double.NaN;
  }

  private void system(double square, double given) {
    double turn = square * pressure * pressure;
    double total = 1.0;
    for (int i = 0; i < RIM; i++) {
      double lean = 0.5 * (1.0 + poisson) * turn / m[i];
      double residual = pressure * pressure / (8.0 * m[i] * m[i]) + lean;
      double byPressure = 2.0 * residual / pressure;
      for (int j = 0; j < N; j++) {
        double d = AT.slope(i, j) * AT.x(j) / m[j];
        residual += AT.operator(i, j) * m[j] + turn * d;
        byPressure += 2.0 * turn / pressure * d;
        matrix[i][j] = AT.operator(i, j) - turn * d / m[j];
      }
      matrix[i][i] -= pressure * pressure / (4.0 * m[i] * m[i] * m[i]) + lean / m[i];
      matrix[i][N] = byPressure;
      step[i] = -residual;
    }
    double edge = (1.0 - poisson) * m[RIM] - given + turn / (2.0 * m[RIM]);
    for (int j = 0; j < N; j++) {
      matrix[RIM][j] = 2.0 * AT.slope(RIM, j);
      edge += 2.0 * AT.slope(RIM, j) * m[j];
      double w = 0.25 * AT.weight(j) / m[j];
      total -= pressure * w;
      matrix[N][j] = -pressure * w / m[j];
    }
    matrix[RIM][RIM] += 1.0 - poisson - turn / (2.0 * m[RIM] * m[RIM]);
    matrix[RIM][N] = turn / (pressure * m[RIM]);
    step[RIM] = -edge;
    matrix[N][N] = (1.0 - total) / pressure;
    step[N] = total;
  }

  private void strains(double square) {
    for (int i = 0; i < N; i++) {
      tangent[i] =
          m[i]
              + 2.0 * AT.x(i) * AT.derivative(m, i)
              + 0.5 * square * pressure * pressure * AT.x(i) / m[i];
      along[i] = m[i] - poisson * tangent[i];
      around[i] = tangent[i] - poisson * m[i];
    }
  }

  /** Pressure in E t/a. */
  double pressure() {
    return pressure * travel * travel * travel;
  }

  /** Volume under the membrane in a^3. */
  double volume() {
    double sum = 0.0;
    for (int i = 0; i < N; i++) {
      sum += 0.25 * AT.weight(i) * AT.x(i) / m[i];
    }
    return Math.PI * pressure * sum * travel;
  }

  /** Radial force at the rim in E t. */
  double rimForce() {
    return m[RIM] * travel * travel;
  }

  /** The largest strain of the middle surface. */
  double peak() {
    return travel * travel * Math.max(AT.largest(along, none), AT.largest(around, none));
  }

  /** Largest strain of a rim that cannot turn: the slope is bent away in a narrow strip. */
  double clamped() {
    double slope = 0.5 * pressure / m[RIM] * travel;
    double bending = slope * Math.sqrt(3.0 * (1.0 - poisson * poisson) * rimForce());
    return Math.max(peak(), along[RIM] * travel * travel + bending);
  }

  /** Energy-weighted equivalent strain of the middle surface. */
  double working() {
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < N; i++) {
      double a = along[i];
      double b = around[i];
      double square = 4.0 / 3.0 * (a * a + a * b + b * b);
      squares += AT.weight(i) * square;
      cubes += AT.weight(i) * square * Math.sqrt(square);
    }
    return travel * travel * cubes / squares;
  }
}
