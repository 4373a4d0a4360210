package org.flexwright.lattice.cell;

import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Peak strut strain over macroscopic strain against x: exact slope c at x = 0, then the values of a
 * periodic Timoshenko frame with Poisson's ratio 0.3; straight on beyond the last.
 */
final class PeakStrain {

  private final double slope;
  private final double last;
  private final PolynomialSplineFunction overLine;

  PeakStrain(double slope, double[] x, double[] ratio) {
    this.slope = slope;
    last = x[x.length - 1];
    double[] y = new double[x.length];
    y[0] = 1.0;
    for (int i = 1; i < x.length; i++) {
      y[i] = ratio[i] / (slope * x[i]);
    }
    overLine = new SplineInterpolator().interpolate(x, y);
  }

  double at(double x) {
    if (x <= last) {
      return slope * x * overLine.value(x);
    }
    double end = overLine.value(last);
    double rise = end + last * overLine.derivative().value(last);
    return slope * (last * end + Math.max(0.0, rise) * (x - last));
  }
}
