package org.flexwright.shells.solved;

import java.util.List;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.flexwright.evidence.Caveat;

/**
 * The ratios of engine and closed form over the logarithm of the size: the polynomial through
 * Chebyshev points, its last coefficient taken as its error. Immutable.
 */
final class Surface {

  private static final int FEWEST = 4;
  private static final double EACH = 0.5; // of ln size, for ranges beyond four points

  // the largest strain changes its place: its ratio has corners
  private static final double KINKS = 3.0;

  private final double middle;
  private final double half;
  private final PolynomialFunction[] fits;
  private final PolynomialFunction[] slopes;
  private final double[] error;
  private final double[] nodes;
  private final boolean[] hoop;
  private final List<List<Caveat>> caveats;

  Surface(double low, double high, double[][] rows, boolean[] hoop, List<List<Caveat>> caveats) {
    nodes = nodes(low, high, rows.length);
    middle = 0.5 * (low + high);
    half = 0.5 * (high - low);
    this.hoop = hoop;
    this.caveats = caveats;
    int figures = rows[0].length;
    fits = new PolynomialFunction[figures];
    slopes = new PolynomialFunction[figures];
    error = new double[figures];
    double[] x = new double[rows.length];
    for (int j = 0; j < x.length; j++) {
      x[j] = (nodes[j] - middle) / half;
    }
    for (int k = 0; k < figures; k++) {
      double[] y = new double[rows.length];
      for (int j = 0; j < y.length; j++) {
        y[j] = rows[j][k];
      }
      fits[k] = new PolynomialFunction(new PolynomialFunctionLagrangeForm(x, y).getCoefficients());
      slopes[k] = fits[k].polynomialDerivative();
      boolean strain = k >= figures / 2 - 1;
      error[k] = (strain ? KINKS : 1.0) * tail(y);
    }
  }

  /** How many points a range of ln size takes. */
  static int points(double low, double high) {
    return Math.max(FEWEST, (int) Math.ceil((high - low) / EACH));
  }

  /** Where they lie, falling. */
  static double[] nodes(double low, double high, int count) {
    double[] nodes = new double[count];
    for (int j = 0; j < count; j++) {
      double x = Math.cos(Math.PI * (j + 0.5) / count);
      nodes[j] = 0.5 * (low + high) + 0.5 * (high - low) * x;
    }
    return nodes;
  }

  /** The largest of the last two Chebyshev coefficients, the one before it shrunk by a third. */
  private static double tail(double[] y) {
    return Math.max(coefficient(y, y.length - 1), coefficient(y, y.length - 2) / 3.0);
  }

  private static double coefficient(double[] y, int order) {
    double sum = 0.0;
    for (int j = 0; j < y.length; j++) {
      sum += y[j] * Math.cos(Math.PI * order * (j + 0.5) / y.length);
    }
    return Math.abs(2.0 * sum / y.length);
  }

  double[] at(double logSize) {
    double[] row = new double[fits.length];
    for (int k = 0; k < row.length; k++) {
      row[k] = fits[k].value((logSize - middle) / half);
    }
    return row;
  }

  double[] slope(double logSize) {
    double[] row = new double[slopes.length];
    for (int k = 0; k < row.length; k++) {
      row[k] = slopes[k].value((logSize - middle) / half) / half;
    }
    return row;
  }

  /** The straight line, by ln size, through what one figure is here above another surface. */
  double[] lessAt(Surface of, int figure) {
    double x0 = nodes[0];
    double x1 = nodes[nodes.length - 1];
    double y0 = at(x0)[figure] - of.at(x0)[figure];
    double y1 = at(x1)[figure] - of.at(x1)[figure];
    double tilt = (y0 - y1) / (x0 - x1);
    return new double[] {y1 - tilt * x1, tilt};
  }

  double[] error() {
    return error.clone();
  }

  private int nearest(double logSize) {
    int near = 0;
    for (int j = 1; j < nodes.length; j++) {
      if (Math.abs(nodes[j] - logSize) < Math.abs(nodes[near] - logSize)) {
        near = j;
      }
    }
    return near;
  }

  boolean hoop(double logSize) {
    return hoop[nearest(logSize)];
  }

  List<Caveat> caveats(double logSize) {
    return caveats.get(nearest(logSize));
  }
}
