package org.flexwright.response;

import java.util.function.DoubleFunction;
import java.util.function.DoubleUnaryOperator;

/**
 * The exponent with which a closed form follows a size: d ln f / d ln x by a central difference.
 * Good to about 1e-8 on smooth formulas.
 */
public final class LogSlope {

  private static final double STEP = 1e-4;

  private LogSlope() {}

  /**
   * The exponent at a size.
   *
   * @param f a function with values above 0
   * @param x the size, above 0
   * @return d ln f / d ln x
   */
  public static double at(DoubleUnaryOperator f, double x) {
    double up = f.applyAsDouble(x * Math.exp(STEP));
    double down = f.applyAsDouble(x * Math.exp(-STEP));
    return Math.log(up / down) / (2.0 * STEP);
  }

  /**
   * The exponents of several figures that one run of a formula gives, at a size.
   *
   * @param f a function with values above 0, always as many
   * @param x the size, above 0
   * @return d ln f_i / d ln x for each figure
   */
  public static double[] ofAll(DoubleFunction<double[]> f, double x) {
    double[] up = f.apply(x * Math.exp(STEP));
    double[] down = f.apply(x * Math.exp(-STEP));
    double[] slopes = new double[up.length];
    for (int i = 0; i < slopes.length; i++) {
      slopes[i] = Math.log(up[i] / down[i]) / (2.0 * STEP);
    }
    return slopes;
  }
}
