package org.flexwright.shells.wall;

/**
 * Chebyshev points on x = (r/a)^2 from 0 to 1 for fields that are even in the radius: derivative,
 * quadrature (Clenshaw and Curtis) and the operator L f = 4 x f'' + 8 f', which both equations of
 * the round plate share (the Laplacian of r f cos, over r cos).
 */
final class Collocation {

  /** The one set of points; 15 of them bring 1e-5 in the load at 7 thicknesses of travel. */
  static final Collocation POINTS = new Collocation(15);

  private static final int FINE = 8;

  private final double[] x;
  private final double[] weight;
  private final double[][] slope;
  private final double[][] operator;
  private final double[][] between;

  private Collocation(int n) {
    x = new double[n];
    for (int i = 0; i < n; i++) {
      double s = Math.sin(0.5 * Math.PI * i / (n - 1));
      x[i] = s * s;
    }
    slope = slopes(x);
    weight = weights(n);
    between = interpolation();
    operator = new double[n][n];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double second = 0.0;
        for (int k = 0; k < n; k++) {
          second += slope[i][k] * slope[k][j];
        }
        operator[i][j] = 4.0 * x[i] * second + 8.0 * slope[i][j];
      }
    }
  }

  private static double[][] slopes(double[] x) {
    int n = x.length;
    double[][] d = new double[n][n];
    for (int i = 0; i < n; i++) {
      double sum = 0.0;
      for (int j = 0; j < n; j++) {
        if (j != i) {
          double ends = (i == 0 || i == n - 1 ? 2.0 : 1.0) / (j == 0 || j == n - 1 ? 2.0 : 1.0);
          d[i][j] = ((i + j) % 2 == 0 ? ends : -ends) / (x[i] - x[j]);
          sum += d[i][j];
        }
      }
      d[i][i] = -sum;
    }
    return d;
  }

  private static double[] weights(int n) {
    int last = n - 1;
    double[] w = new double[n];
    for (int i = 0; i < n; i++) {
      double sum = 0.5;
      for (int k = 2; k <= last; k += 2) {
        double term = Math.cos(k * Math.PI * i / last) / (1.0 - k * k);
        sum += k == last ? 0.5 * term : term;
      }
      w[i] = (i == 0 || i == last ? 1.0 : 2.0) * sum / last;
    }
    return w;
  }

  int size() {
    return x.length;
  }

  double x(int i) {
    return x[i];
  }

  double weight(int i) {
    return weight[i];
  }

  double slope(int i, int j) {
    return slope[i][j];
  }

  double operator(int i, int j) {
    return operator[i][j];
  }

  /** The derivative of a field at one point. */
  double derivative(double[] field, int i) {
    double[] row = slope[i];
    double sum = 0.0;
    for (int j = 0; j < field.length; j++) {
      sum += row[j] * field[j];
    }
    return sum;
  }

  /** The largest value of mean + |wave| anywhere, between the points too. */
  double largest(double[] mean, double[] wave) {
    int node = 0;
    for (int i = 1; i < mean.length; i++) {
      if (mean[i] + Math.abs(wave[i]) > mean[node] + Math.abs(wave[node])) {
        node = i;
      }
    }
    int first = FINE * Math.max(0, node - 1);
    int last = FINE * Math.min(mean.length - 1, node + 1);
    int top = first;
    double most = 0.0;
    for (int g = first; g <= last; g++) {
      double value = between(mean, wave, g);
      if (value > most) {
        most = value;
        top = g;
      }
    }
    if (top == 0 || top == between.length - 1) {
      return most;
    }
    double left = (most - between(mean, wave, top - 1)) / (fine(top) - fine(top - 1));
    double right = (most - between(mean, wave, top + 1)) / (fine(top + 1) - fine(top));
    double width = fine(top + 1) - fine(top - 1);
    double bend = (left + right) / width;
    double slant =
        (left * (fine(top + 1) - fine(top)) - right * (fine(top) - fine(top - 1))) / width;
    return bend > 0.0 ? most + 0.25 * slant * slant / bend : most;
  }

  private double between(double[] mean, double[] wave, int g) {
    double[] row = between[g];
    double a = 0.0;
    double b = 0.0;
    for (int j = 0; j < row.length; j++) {
      a += row[j] * mean[j];
      b += row[j] * wave[j];
    }
    return a + Math.abs(b);
  }

  private double fine(int g) {
    int i = g / FINE;
    return g % FINE == 0 ? x[i] : x[i] + (x[i + 1] - x[i]) * (g % FINE) / FINE;
  }

  /** The polynomial through the points, read at all fine points (barycentric form). */
  private double[][] interpolation() {
    int n = x.length;
    double[][] rows = new double[FINE * (n - 1) + 1][n];
    for (int g = 0; g < rows.length; g++) {
      double[] row = rows[g];
      if (g % FINE == 0) {
        row[g / FINE] = 1.0;
        continue;
      }
      double sum = 0.0;
      for (int j = 0; j < n; j++) {
        double end = j == 0 || j == n - 1 ? 0.5 : 1.0;
        row[j] = (j % 2 == 0 ? end : -end) / (fine(g) - x[j]);
        sum += row[j];
      }
      for (int j = 0; j < n; j++) {
        row[j] /= sum;
      }
    }
    return rows;
  }
}
