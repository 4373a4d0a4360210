package org.flexwright.shells.inflate;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * Where the pressure of an inflated part stops rising: its first maximum, the limit pressure, and
 * the minimum after which it rises again; or neither.
 *
 * <p>Formula: dp/dl = 0 along the path of uniform states, looked for from rest in steps of 2 % of
 * the stretch to the end of the law, at most 20. Beyond the maximum the part is stable only while
 * its volume is controlled; at a given pressure it runs away to the state beyond the minimum, or
 * bursts. Keep below 70 to 80 % of the limit pressure (common practice). Source: derived.
 *
 * <p>JShell: {@code Balloon.of(mm(40), mm(1)).limits(grade)}
 *
 * @param maximum the limit pressure, if the pressure has a maximum
 * @param minimum the least pressure after it, if it rises again
 * @param searchedTo the stretch to which was looked
 */
public record LimitPoints(Optional<Point> maximum, Optional<Point> minimum, double searchedTo) {

  private static final double FARTHEST = 20.0;
  private static final double STEP = 1.02;
  private static final double NEAR = 1e-6;
  private static final int ITERATIONS = 200;

  /**
   * A state at a limit.
   *
   * @param stretch the stretch of the bore or of the pole
   * @param pressure the pressure
   */
  public record Point(double stretch, Pressure pressure) {

    /** One readable line. */
    @Override
    public String toString() {
      return pressure + " at a stretch of " + Text.number(stretch);
    }
  }

  /**
   * Whether the pressure rises all the way: no limit.
   *
   * @return true if there is no maximum
   */
  public boolean monotone() {
    return maximum.isEmpty();
  }

  /** The stretch to which a law that ends at a stretch is looked at. */
  static double farthest(double lawEnd) {
    return Math.min(FARTHEST, lawEnd);
  }

  static LimitPoints of(DoubleUnaryOperator pressure, double from, double to) {
    DoubleUnaryOperator slope = l -> slope(pressure, l);
    Optional<Point> max = firstZero(slope, from, to).map(l -> point(pressure, l));
    Optional<Point> min =
        max.flatMap(m -> firstZero(l -> -slope(pressure, l), m.stretch() * (1.0 + NEAR), to))
            .map(l -> point(pressure, l));
    return new LimitPoints(max, min, to);
  }

  /** The one turn of the pressure between two stretches. */
  static Point turn(DoubleUnaryOperator pressure, double low, double high) {
    UnivariateFunction slope = l -> slope(pressure, l);
    double a = slope.value(low);
    double b = slope.value(high);
    return point(
        pressure,
        a * b < 0.0
            ? new BrentSolver(1e-8, 1e-9).solve(ITERATIONS, slope, low, high)
            : Math.abs(a) < Math.abs(b) ? low : high);
  }

  private static Point point(DoubleUnaryOperator pressure, double l) {
    return new Point(l, Pressure.pa(pressure.applyAsDouble(l)));
  }

  /**
   * The first zero of a function that starts above it, in steps; where it dips between two steps
   * the bottom of the dip is looked at too.
   */
  static Optional<Double> firstZero(DoubleUnaryOperator f, double from, double to) {
    double before = from;
    double middle = from;
    double last = f.applyAsDouble(from);
    boolean falling = false;
    while (middle < to) {
      double here = Math.min(to, middle * STEP);
      double value = f.applyAsDouble(here);
      if (Double.isNaN(value)) {
        return Optional.empty();
      }
      if (falling && value > last) {
        double bottom = bottom(f, before, middle, here);
        if (f.applyAsDouble(bottom) <= 0.0) {
          return Optional.of(root(f, before, bottom));
        }
      }
      if (value <= 0.0) {
        return Optional.of(root(f, middle, here));
      }
      falling = value < last;
      before = middle;
      middle = here;
      last = value;
    }
    return Optional.empty();
  }

  private static double bottom(DoubleUnaryOperator f, double low, double start, double high) {
    return new BrentOptimizer(1e-9, 1e-12)
        .optimize(
            new UnivariateObjectiveFunction(f::applyAsDouble),
            GoalType.MINIMIZE,
            new SearchInterval(low, high, start),
            new MaxEval(ITERATIONS))
        .getPoint();
  }

  /** The root of a function in an interval; the nearer end if it has one sign. */
  static double root(DoubleUnaryOperator f, double low, double high) {
    double a = f.applyAsDouble(low);
    double b = f.applyAsDouble(high);
    if (!(a * b < 0.0)) {
      return Math.abs(a) < Math.abs(b) ? low : high;
    }
    return new BrentSolver(1e-14, 1e-14).solve(ITERATIONS, f::applyAsDouble, low, high);
  }

  /** d p/d ln x by a central difference, good to 1e-8. */
  private static double slope(DoubleUnaryOperator f, double x) {
    double h = 1e-4;
    return (f.applyAsDouble(x * (1 + h)) - f.applyAsDouble(x * (1 - h))) / (2.0 * h);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return maximum
            .map(m -> "limit pressure " + m)
            .orElse("monotone to a stretch of " + Text.number(searchedTo) + ": no limit pressure")
        + minimum.map(m -> ", then down to " + m).orElse("");
  }
}
