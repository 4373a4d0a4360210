package org.flexwright.condition;

/**
 * The error function for the inner loop of a law: that of Commons Math makes an object a call from
 * 1.2 on. The series of positive terms, erf x = 2/sqrt(pi) exp(-x^2) sum (2 x^2)^k x/(2 k + 1)!!,
 * good to 5e-15; 1 from 6 on, where the rest is below 3e-17.
 */
final class ErrorFunction {

  private static final double ROOT_PI = Math.sqrt(Math.PI);
  private static final double END = 6.0;

  private ErrorFunction() {}

  /** The density 2 exp(-x^2)/sqrt(pi). */
  static double slope(double x) {
    double square = x * x;
    // exp of the square as it is, not as it is rounded
    return 2.0 / ROOT_PI * Math.exp(-square) * (1.0 - Math.fma(x, x, -square));
  }

  /** erf x for x not negative. */
  static double at(double x) {
    if (x >= END) {
      return 1.0;
    }
    double square = 2.0 * x * x;
    double term = x;
    double sum = x;
    for (int k = 3; term > 1e-17 * sum; k += 2) {
      term *= square / k;
      sum += term;
    }
    return Math.min(1.0, slope(x) * sum);
  }

  /** The integral of erf from 0 to x, x not negative. */
  static double integral(double x) {
    return x * at(x) + Math.expm1(-x * x) / ROOT_PI;
  }
}
