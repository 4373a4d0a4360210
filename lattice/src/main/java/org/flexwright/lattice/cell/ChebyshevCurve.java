package org.flexwright.lattice.cell;

import java.util.function.DoubleUnaryOperator;

/**
 * A smooth function read from a polynomial through its values at Chebyshev points, for functions
 * that are dear to compute. Evaluated by Clenshaw's recurrence.
 */
final class ChebyshevCurve {

  private static final int TERMS = 40;

  private final double[] coefficient;
  private final double middle;
  private final double half;

  private ChebyshevCurve(double[] coefficient, double middle, double half) {
    this.coefficient = coefficient;
    this.middle = middle;
    this.half = half;
  }

  static ChebyshevCurve of(DoubleUnaryOperator f, double from, double to) {
    double middle = 0.5 * (from + to);
    double half = 0.5 * (to - from);
    double[] value = new double[TERMS];
    for (int k = 0; k < TERMS; k++) {
      value[k] = f.applyAsDouble(middle + half * Math.cos(Math.PI * (k + 0.5) / TERMS));
    }
    double[] c = new double[TERMS];
    for (int j = 0; j < TERMS; j++) {
      double sum = 0.0;
      for (int k = 0; k < TERMS; k++) {
        sum += value[k] * Math.cos(Math.PI * j * (k + 0.5) / TERMS);
      }
      c[j] = 2.0 * sum / TERMS;
    }
    return new ChebyshevCurve(c, middle, half);
  }

  double at(double x) {
    double t = (x - middle) / half;
    double b1 = 0.0;
    double b2 = 0.0;
    for (int j = TERMS - 1; j >= 1; j--) {
      double b = 2.0 * t * b1 - b2 + coefficient[j];
      b2 = b1;
      b1 = b;
    }
    return t * b1 - b2 + 0.5 * coefficient[0];
  }
}
