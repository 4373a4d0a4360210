package org.flexwright.law;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.apache.commons.math3.optim.univariate.UnivariatePointValuePair;

/**
 * The first place, on the way from rest to an end, at which a smooth function of the Hencky strain
 * is no longer positive, or no longer finite.
 *
 * <p>The way is walked in steps of 0.05 at first, growing to 0.25. Where three values in a row show
 * a dip that may reach zero between them its bottom is looked up, so that a loss shorter than a
 * step is found as long as the dip around it is not.
 *
 * @param strain the signed Hencky strain of the place, the end if nothing is lost
 * @param kind what is there
 */
record FirstLoss(double strain, Kind kind) {

  /** What ends the way. */
  enum Kind {
    /** Nothing: the function is positive to the end. */
    NONE,
    /** The function falls to zero. */
    ZERO,
    /** The function has no finite value from here on: the law locks. */
    LOCKED
  }

  private static final double SHORT = 0.05;
  private static final double LONG = 0.25;
  private static final double GROWTH = 1.25;
  private static final int MOST = 200;

  static FirstLoss of(UnivariateFunction f, double end) {
    double far = 0.0;
    double farValue = Double.NaN;
    double near = 0.0;
    double nearValue = f.value(0.0);
    if (!(nearValue > 0.0)) {
      return new FirstLoss(0.0, Double.isFinite(nearValue) ? Kind.ZERO : Kind.LOCKED);
    }
    double step = SHORT;
    while (near != end) {
      double next = Math.abs(end) - Math.abs(near) > step ? near + Math.copySign(step, end) : end;
      double value = f.value(next);
      if (!Double.isFinite(value)) {
        return beforeLock(f, near, next);
      }
      if (mayReachZero(
          near - far, next - near, farValue - nearValue, value - nearValue, nearValue)) {
        FirstLoss lost = bottom(f, far, next);
        if (lost.kind != Kind.NONE) {
          return lost;
        }
      }
      if (!(value > 0.0)) {
        return zero(f, near, next);
      }
      far = near;
      farValue = nearValue;
      near = next;
      nearValue = value;
      step = Math.min(LONG, step * GROWTH);
    }
    return new FirstLoss(end, Kind.NONE);
  }

  /**
   * Whether a dip at the middle of three values, the rise to its sides given, may reach zero: a
   * parabola through them falls by a tenth below the middle value.
   */
  private static boolean mayReachZero(
      double before, double after, double riseBefore, double riseAfter, double middle) {
    if (!(riseBefore > 0.0 && riseAfter >= 0.0)) {
      return false;
    }
    double curved = (riseBefore / before + riseAfter / after) / (before + after);
    double slope = riseAfter / after - curved * after;
    return middle - 0.25 * slope * slope / curved < 0.9 * middle;
  }

  private static FirstLoss zero(UnivariateFunction f, double inside, double outside) {
    double low = Math.min(inside, outside);
    double high = Math.max(inside, outside);
    return new FirstLoss(new BrentSolver(1e-14, 1e-13).solve(MOST, f, low, high), Kind.ZERO);
  }

  private static FirstLoss bottom(UnivariateFunction f, double inside, double outside) {
    UnivariatePointValuePair least =
        new BrentOptimizer(1e-8, 1e-10)
            .optimize(
                new MaxEval(MOST),
                GoalType.MINIMIZE,
                new UnivariateObjectiveFunction(f),
                new SearchInterval(Math.min(inside, outside), Math.max(inside, outside)));
    return least.getValue() > 0.0
        ? new FirstLoss(outside, Kind.NONE)
        : zero(f, inside, least.getPoint());
  }

  /** Halves the step to the last strain with a finite value, unless the zero comes first. */
  private static FirstLoss beforeLock(UnivariateFunction f, double inside, double outside) {
    double good = inside;
    double bad = outside;
    for (int i = 0; i < 50; i++) {
      double mid = 0.5 * (good + bad);
      double value = f.value(mid);
      if (!Double.isFinite(value)) {
        bad = mid;
      } else if (value > 0.0) {
        good = mid;
      } else {
        return zero(f, good, mid);
      }
    }
    return new FirstLoss(good, Kind.LOCKED);
  }
}
