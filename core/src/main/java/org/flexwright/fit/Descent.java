package org.flexwright.fit;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathIllegalArgumentException;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresFactory;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.fitting.leastsquares.ValueAndJacobianFunction;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;

/**
 * Levenberg-Marquardt from one start. Bounds are held exactly: a constant that is pushed against
 * its bound is taken out, the others go on, and it comes back in once the slope turns. Not
 * thread-safe.
 */
final class Descent {

  private static final double NO_LAW = 1e12;
  private static final double FLAT = 1e-7;

  /** Where a descent came to. */
  static final class Point {
    private final double[] x;
    private final double cost;
    private final boolean[] held;

    Point(double[] x, double cost, boolean[] held) {
      this.x = x;
      this.cost = cost;
      this.held = held;
    }

    double[] x() {
      return x;
    }

    double cost() {
      return cost;
    }

    boolean[] held() {
      return held;
    }
  }

  private final StressModel model;
  private final boolean fine;
  private final int evaluations;
  private final LevenbergMarquardtOptimizer optimizer;

  Descent(StressModel model, boolean fine) {
    this.model = model;
    this.fine = fine;
    evaluations = fine ? 1000 : 40;
    optimizer =
        new LevenbergMarquardtOptimizer()
            .withCostRelativeTolerance(fine ? 1e-15 : 1e-5)
            .withParameterRelativeTolerance(fine ? 1e-13 : 1e-5)
            .withOrthoTolerance(fine ? 1e-15 : 1e-8);
  }

  /** The sum of squares of the weighted residuals, infinite where there is no law. */
  double cost(double[] x) {
    double[] r = new double[model.data.size];
    return model.residuals(x, r) ? square(r) : Double.POSITIVE_INFINITY;
  }

  /** Goes down from a start at which there is a law. */
  Point from(double[] start) {
    double[] x = start.clone();
    for (int i = 0; i < x.length; i++) {
      x[i] = model.clamp(i, x[i]);
    }
    boolean[] held = new boolean[model.size];
    for (int round = 0; round < 2 * model.size + 2; round++) {
      x = descend(x, held);
      if (!changed(x, held)) {
        break;
      }
    }
    return new Point(x, cost(x), held);
  }

  private double[] descend(double[] x, boolean[] held) {
    int[] free = free(held);
    if (free.length == 0) {
      return x;
    }
    Residuals function = new Residuals(x, free);
    try {
      optimizer.optimize(
          LeastSquaresFactory.create(
              function,
              new ArrayRealVector(model.data.size),
              new ArrayRealVector(pick(x, free), false),
              null,
              null,
              evaluations,
              evaluations,
              true,
              function::clamped));
    } catch (MathIllegalStateException | MathIllegalArgumentException ended) {
      // out of evaluations, or no digit left to win: the best state so far is the result
    }
    return function.best;
  }

  static int[] free(boolean[] held) {
    int[] all = new int[held.length];
    int count = 0;
    for (int i = 0; i < held.length; i++) {
      if (!held[i]) {
        all[count++] = i;
      }
    }
    return Arrays.copyOf(all, count);
  }

  private static double[] pick(double[] x, int[] free) {
    double[] some = new double[free.length];
    for (int c = 0; c < free.length; c++) {
      some[c] = x[free[c]];
    }
    return some;
  }

  /** Takes constants out at their bounds, or lets one in again. */
  private boolean changed(double[] x, boolean[] held) {
    boolean bound = false;
    for (int i = 0; i < x.length; i++) {
      bound |= x[i] <= model.low[i] || x[i] >= model.high[i];
    }
    if (!bound) {
      return false;
    }
    double[] slope = slope(x);
    boolean changed = false;
    for (int i = 0; i < x.length; i++) {
      boolean outward =
          (x[i] <= model.low[i] && slope[i] > FLAT) || (x[i] >= model.high[i] && slope[i] < -FLAT);
      if (outward != held[i]) {
        held[i] = outward;
        changed = true;
      }
    }
    return changed;
  }

  /** The cosine between the residuals and their derivative by each constant. */
  private double[] slope(double[] x) {
    int n = model.data.size;
    double[] r = new double[n];
    double[][] j = new double[n][model.size];
    model.residuals(x, r);
    model.jacobian(x, free(new boolean[model.size]), fine, j);
    double[] slope = new double[model.size];
    for (int i = 0; i < model.size; i++) {
      double dot = 0.0;
      double norm = 0.0;
      for (int k = 0; k < n; k++) {
        dot += r[k] * j[k][i];
        norm += j[k][i] * j[k][i];
      }
      slope[i] = dot == 0.0 ? 0.0 : dot / Math.sqrt(norm * square(r));
    }
    return slope;
  }

  static double square(double[] r) {
    double sum = 0.0;
    for (double each : r) {
      sum += each * each;
    }
    return sum;
  }

  /** The residuals of the free constants, with the best state met on the way. */
  private final class Residuals implements ValueAndJacobianFunction {
    private final double[] x;
    private final int[] free;
    private double[] best;
    private double least = Double.POSITIVE_INFINITY;

    Residuals(double[] start, int[] free) {
      x = start.clone();
      best = start.clone();
      this.free = free;
    }

    RealVector clamped(RealVector point) {
      for (int c = 0; c < free.length; c++) {
        point.setEntry(c, model.clamp(free[c], point.getEntry(c)));
      }
      return point;
    }

    private void set(double[] point) {
      for (int c = 0; c < free.length; c++) {
        x[free[c]] = point[c];
      }
    }

    @Override
    public RealVector computeValue(double[] point) {
      set(point);
      double[] r = new double[model.data.size];
      if (!model.residuals(x, r)) {
        Arrays.fill(r, NO_LAW);
        return new ArrayRealVector(r, false);
      }
      double cost = square(r);
      if (cost < least) {
        least = cost;
        best = x.clone();
      }
      return new ArrayRealVector(r, false);
    }

    @Override
    public RealMatrix computeJacobian(double[] point) {
      set(point);
      double[][] j = new double[model.data.size][free.length];
      model.jacobian(x, free, fine, j);
      return new Array2DRowRealMatrix(j, false);
    }

    @Override
    public Pair<RealVector, RealMatrix> value(RealVector point) {
      return new Pair<>(computeValue(point.toArray()), computeJacobian(point.toArray()));
    }
  }
}
