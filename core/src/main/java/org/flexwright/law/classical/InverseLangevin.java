package org.flexwright.law.classical;

/**
 * The inverse of the function of Langevin, L(x) = coth x - 1/x: how strongly a chain pulls at a
 * part y of its length.
 *
 * <p>Below y = 0.1 it is the power series of the inverse, reverted term by term in rational
 * numbers; the first term left out is below 1e-16 of it. Above, x (1 - y^2)/y is smooth in y^2 and
 * taken as a rational function fitted to the inverse in 40 digits (error 1.1e-6), and one step of
 * Halley leaves the cube of that.
 */
final class InverseLangevin {

  private static final double SMALL = 0.1;
  private static final double LEAST = 1e-9; // x/(1 - e^-2x) has no value at 0

  // x/y in powers of y^2
  private static final double[] SERIES = {
    3.0,
    9.0 / 5.0,
    297.0 / 175.0,
    1539.0 / 875.0,
    126117.0 / 67375.0,
    43733439.0 / 21896875.0,
    231321177.0 / 109484375.0,
    20495009043.0 / 9306171875.0
  };

  // x (1 - y^2)/y as a ratio of polynomials in y^2
  private static final double[] OVER = {
    3.000000989, -11.5653744, 18.74494138, -15.43033871, 6.456368455, -0.9531241355
  };
  private static final double[] UNDER = {
    1.0, -3.455088842, 4.899874948, -3.317405202, 1.00846678, -0.009610778782
  };

  private InverseLangevin() {}

  /** x with L(x) = y, for y from 0 up; infinite from 1 up. */
  static double of(double y) {
    return y < SMALL ? y * polynomial(SERIES, y * y) : solved(y);
  }

  /** x/y. */
  static double ratio(double y) {
    return y < SMALL ? polynomial(SERIES, y * y) : solved(y) / y;
  }

  /** d(x/y)/d(y^2), from x/y and y. */
  static double ratioSlope(double ratio, double y) {
    if (y < SMALL) {
      double s = y * y;
      double sum = 0.0;
      for (int k = SERIES.length - 1; k > 0; k--) {
        sum = sum * s + k * SERIES[k];
      }
      return sum;
    }
    return (1.0 / slope(ratio * y) - ratio) / (2.0 * y * y);
  }

  /** The work of the force, the integral of x dy from y0 to y, where y^2 - y0^2 = rise. */
  static double work(double y0, double y, double rise) {
    if (y < SMALL && y0 < SMALL) {
      return 0.5 * rise * meanRatio(y0 * y0, y * y);
    }
    double x0 = of(y0);
    double x = Math.max(of(y), LEAST);
    double dx = x - x0;
    double e0 = Math.exp(-2.0 * x0);
    if (Math.abs(dx) < 0.5) {
      // the terms of first order in dx fall out, so nothing but x dy sets the digits
      double dy = rise / (y + y0);
      double half = Math.sinh(0.5 * dx);
      double sinh = (1.0 + e0) / (1.0 - e0) * Math.sinh(dx) + 2.0 * half * half;
      return x * dy + y0 * dx + Math.log1p(dx / x0) - Math.log1p(sinh);
    }
    // x y + ln(x/sinh x) without the overflow of sinh
    double e = Math.exp(-2.0 * x);
    return x0 * (1.0 - y0) - x * (1.0 - y) + Math.log(x / x0 * ((1.0 - e0) / (1.0 - e)));
  }

  /** The mean of x/y over y^2 from s0 to s. */
  private static double meanRatio(double s0, double s) {
    double sum = 0.0;
    double power = 1.0; // s0^k
    double mixed = 1.0; // sum of s^j s0^(k-j)
    for (int k = 0; k < SERIES.length; k++) {
      sum += SERIES[k] / (k + 1) * mixed;
      power *= s0;
      mixed = mixed * s + power;
    }
    return sum;
  }

  private static double polynomial(double[] c, double s) {
    double sum = 0.0;
    for (int k = c.length - 1; k >= 0; k--) {
      sum = sum * s + c[k];
    }
    return sum;
  }

  private static double solved(double y) {
    if (!(y < 1.0)) {
      return Double.POSITIVE_INFINITY;
    }
    double s = y * y;
    double left = 1.0 - y;
    double x = y * polynomial(OVER, s) / (polynomial(UNDER, s) * left * (1.0 + y));
    double e = Math.exp(-2.0 * x);
    double w = 1.0 - e;
    double cothLessOne = 2.0 * e / w;
    double off = cothLessOne - 1.0 / x + left; // L(x) - y with the digits of 1 - y
    double h = 4.0 * e / (w * w);
    double d = 1.0 / (x * x) - h;
    double d2 = 2.0 * (h * (1.0 + cothLessOne) - 1.0 / (x * x * x));
    return x - off / (d - 0.5 * off * d2 / d);
  }

  /** L'(x) = 1/x^2 - 1/sinh^2 x. */
  private static double slope(double x) {
    double e = Math.exp(-2.0 * x);
    double w = 1.0 - e;
    return 1.0 / (x * x) - 4.0 * e / (w * w);
  }
}
