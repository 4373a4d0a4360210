package org.flexwright.hardness;

import java.util.Arrays;

/**
 * A rising curve through points that rise: piecewise cubic with the slopes of Fritsch and Butland
 * (SIAM J. Sci. Stat. Comput. 5 (1984) 300), exact at the points, without overshoot, smooth, and
 * inverted on the same cubic, so that there and back closes.
 */
final class MonotoneCurve {

  private final double[] x;
  private final double[] y;
  private final double[] slope;

  /** Both lists strictly rising, at least three points. */
  MonotoneCurve(double[] x, double[] y) {
    this.x = x.clone();
    this.y = y.clone();
    int n = x.length;
    slope = new double[n];
    slope[0] = secant(0);
    slope[n - 1] = secant(n - 2);
    for (int i = 1; i < n - 1; i++) {
      double before = x[i] - x[i - 1];
      double after = x[i + 1] - x[i];
      double w1 = 2.0 * after + before;
      double w2 = after + 2.0 * before;
      slope[i] = (w1 + w2) / (w1 / secant(i - 1) + w2 / secant(i));
    }
  }

  private double secant(int i) {
    return (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
  }

  /** The value at a place between the ends. */
  double at(double place) {
    int i = segment(x, place);
    return cubic(i, (place - x[i]) / (x[i + 1] - x[i]));
  }

  /** The place of a value between the ends; exact at the points. */
  double placeOf(double value) {
    int i = segment(y, value);
    double low = 0.0;
    double high = 1.0;
    double t = (value - y[i]) / (y[i + 1] - y[i]);
    if (t == 0.0 || t == 1.0) {
      return x[i + (int) t];
    }
    for (int k = 0; k < 60 && high - low > 1e-15; k++) {
      double miss = cubic(i, t) - value;
      if (miss == 0.0) {
        break;
      }
      low = miss < 0.0 ? t : low;
      high = miss > 0.0 ? t : high;
      double newton = t - miss / rate(i, t);
      double next = newton > low && newton < high ? newton : 0.5 * (low + high);
      if (Math.abs(next - t) < 1e-16) {
        break;
      }
      t = next;
    }
    return x[i] + t * (x[i + 1] - x[i]);
  }

  private static int segment(double[] grid, double place) {
    int found = Arrays.binarySearch(grid, place);
    int i = found >= 0 ? found : -found - 2;
    return Math.max(0, Math.min(i, grid.length - 2));
  }

  private double cubic(int i, double t) {
    double h = x[i + 1] - x[i];
    double u = 1.0 - t;
    return u * u * (1.0 + 2.0 * t) * y[i]
        + t * t * (3.0 - 2.0 * t) * y[i + 1]
        + h * t * u * (u * slope[i] - t * slope[i + 1]);
  }

  private double rate(int i, double t) {
    double h = x[i + 1] - x[i];
    double u = 1.0 - t;
    return 6.0 * t * u * (y[i + 1] - y[i])
        + h * (u * (1.0 - 3.0 * t) * slope[i] + t * (3.0 * t - 2.0) * slope[i + 1]);
  }
}
