package org.flexwright.lattice.cell;

import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * How much stiffer solid struts with fat joints are than centre-line struts: the logarithm of the
 * ratio is a natural cubic spline in x through 0 at x = 0 and the solid finite-element values, goes
 * on straight beyond the last, and is scaled in proportion to Poisson's ratio between 0.3 and 0.49.
 */
final class JointStiffening {

  private final double last;
  private final PolynomialSplineFunction[] log = new PolynomialSplineFunction[3];
  private final double[] nearlyIncompressible;
  private final boolean known;

  /**
   * @param x slenderness of the knots, from 0
   * @param young ratio of E100 at Poisson's ratio 0.3
   * @param bulk ratio of K
   * @param shear ratio of C44
   * @param nearlyIncompressible how much larger each logarithm is at Poisson's ratio 0.49; none if
   *     only 0.3 was computed
   */
  JointStiffening(
      double[] x, double[] young, double[] bulk, double[] shear, double... nearlyIncompressible) {
    last = x[x.length - 1];
    double[][] ratios = {young, bulk, shear};
    for (int k = 0; k < 3; k++) {
      double[] y = new double[x.length];
      for (int i = 0; i < x.length; i++) {
        y[i] = Math.log(ratios[k][i]);
      }
      log[k] = new SplineInterpolator().interpolate(x, y);
    }
    known = nearlyIncompressible.length > 0;
    this.nearlyIncompressible = known ? nearlyIncompressible.clone() : new double[] {1.0, 1.0, 1.0};
  }

  /** The last slenderness that was computed. */
  double last() {
    return last;
  }

  /** The largest Poisson's ratio that was computed, the limit of rubber taken in. */
  double mostPoisson() {
    return known ? 0.5 : 0.3;
  }

  CubicStiffness of(CubicStiffness centreLine, double x, double poisson) {
    return CubicStiffness.ofYoung(
        centreLine.young100() * ratio(0, x, poisson),
        centreLine.bulk() * ratio(1, x, poisson),
        centreLine.c44() * ratio(2, x, poisson));
  }

  private double ratio(int k, double x, double poisson) {
    double inside = Math.min(x, last);
    double y = log[k].value(inside);
    if (x > last) {
      y += log[k].derivative().value(last) * (x - last);
    }
    double share = Math.max(0.0, (poisson - 0.3) / 0.19);
    return Math.exp(y * (1.0 + share * (nearlyIncompressible[k] - 1.0)));
  }
}
