package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.flexwright.internal.Text;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * Follows a path of balance in steps that shorten where Newton's method fails and grow again.
 *
 * <p>Work space of one path; not thread-safe.
 */
final class PathFollower {

  private static final double SHORTEST = 1.0 / 1024.0; // of a step asked for
  private static final double LIMIT = 1e-7; // of the load: where a limit point is found
  private static final int HALVINGS = 60;
  private static final double ARC = 0.01;
  private static final int ARCS = 200;
  private static final double JUMP = 4.0; // times as far as the slope says
  private static final double STRAIGHT = 0.7; // cosine of a step to the path at either end
  private static final double NOISE = 1e-5;
  private static final double KINK = 1.0 / 256.0; // of a step asked for: in less, a path may kink
  private static final double NEAR = 1e-6; // what Newton's method leaves near a fork
  private static final double STILL = 1e-9; // rounding, which a leg to the present load must bear

  private final ShellSolver solver;
  private final Runnable onState;
  private final double[] now;
  private final double[] before;
  private final double[] earlier;
  private double nowFactor;
  private double beforeFactor;
  private double earlierFactor;
  private double lastStep;
  private double stepBefore;
  private boolean bent; // whether a parabola would have met the last state better
  private double[] pressed;
  private final double[] below; // the states on both sides of a turn or fork
  private final double[] above;
  private double width; // of the interval between them
  private double[] folded;
  private final List<LimitPoint> limits = new ArrayList<>();

  /**
   * A follower from the present state of a solver, which must be in balance.
   *
   * @param onState called at every state found, the first included
   */
  PathFollower(ShellSolver solver, Runnable onState) {
    this.solver = solver;
    this.onState = onState;
    now = solver.x.clone();
    before = solver.x.clone();
    earlier = solver.x.clone();
    below = solver.x.clone();
    above = solver.x.clone();
    nowFactor = solver.factor;
    beforeFactor = solver.factor;
    pressed = solver.model().contact.multipliers();
    folded = solver.model().self.state();
  }

  /**
   * A state where something turns round or the path forks.
   *
   * @param kind what it is
   * @param factor the load factor there
   * @param value the controlled value there
   * @param lost how many ways out of the path open there; negative where they close
   */
  record LimitPoint(ShellPath.Limit.Kind kind, double factor, double value, int lost) {}

  /** The limit points and forks passed so far, in order. */
  List<LimitPoint> limits() {
    return limits;
  }

  /** Takes the present state of the solver as the one to go on from. */
  void settle() {
    keep(0.0);
  }

  private void keep(double step) {
    bent = step != 0.0 && lastStep != 0.0 && stepBefore != 0.0 && bends(step);
    System.arraycopy(before, 0, earlier, 0, now.length);
    earlierFactor = beforeFactor;
    System.arraycopy(now, 0, before, 0, now.length);
    beforeFactor = nowFactor;
    System.arraycopy(solver.x, 0, now, 0, now.length);
    nowFactor = solver.factor;
    pressed = solver.model().contact.multipliers();
    stepBefore = step == 0.0 ? 0.0 : lastStep;
    folded = solver.model().self.state();
    lastStep = step;
  }

  /** Back to the last state found, evaluated. */
  private void restore() {
    System.arraycopy(now, 0, solver.x, 0, now.length);
    solver.factor = nowFactor;
    solver.model().contact.restore(pressed);
    solver.model().self.restore(folded);
    solver.evaluate();
  }

  /** Starts from a straight line through the last two states or a parabola through three. */
  private void extrapolate(double step) {
    double a = lastStep == 0.0 ? 0.0 : step / lastStep;
    double b = 0.0; // weight of how the slope changed
    if (lastStep != 0.0 && stepBefore != 0.0 && bent && !solver.model().touches()) {
      b = weight(step);
    }
    for (int i = 0; i < now.length; i++) {
      solver.x[i] = predicted(now[i], before[i], earlier[i], a, b);
    }
    solver.factor = predicted(nowFactor, beforeFactor, earlierFactor, a, b);
  }

  /** Whether the state just found lies nearer to a parabola through three than to a line. */
  private boolean bends(double step) {
    double a = step / lastStep;
    double b = weight(step);
    double line = 0.0;
    double parabola = 0.0;
    for (int i = 0; i < now.length; i++) {
      line += Math.abs(solver.x[i] - predicted(now[i], before[i], earlier[i], a, 0.0));
      parabola += Math.abs(solver.x[i] - predicted(now[i], before[i], earlier[i], a, b));
    }
    return parabola < line;
  }

  private double weight(double step) {
    return step * (step + lastStep) / (lastStep + stepBefore);
  }

  private double predicted(double last, double second, double third, double a, double b) {
    double straight = last + a * (last - second);
    return b == 0.0
        ? straight
        : straight + b * ((last - second) / lastStep - (second - third) / stepBefore);
  }

  /**
   * Follows to a value of the control.
   *
   * @param control what grows
   * @param target its value at the end
   * @param steps steps of equal length asked for, more are taken where needed
   * @param task the name for progress
   * @param run progress and stop request
   * @return how it ended
   */
  Termination follow(Control control, double target, int steps, String task, RunControl run) {
    double start = solver.value(control);
    double whole = (target - start) / steps;
    double step = whole;
    double at = start;
    int done = 0;
    boolean watched = !(control instanceof Control.Load);
    double sign = watched ? Math.signum(solver.rate(control)) : 0.0;
    int ways = solver.negatives(control);
    while (done < steps) {
      run.progress(new Progress(task, whole == 0.0 ? 0.0 : fraction(start, at, target)));
      if (run.stopRequested()) {
        return Termination.stopped(done + " of " + steps + " steps");
      }
      double mark = start + (done + 1) * whole;
      boolean last = Math.abs(mark - at) <= 1.0001 * Math.abs(step);
      double next = last ? mark : at + step;
      if (attempt(control, next, next - at, whole, ways)) {
        double slope = watched ? solver.rate(control) : 0.0;
        if (slope * sign < 0.0) {
          turn(control, at, next, sign);
        }
        sign = Math.signum(slope);
        ways = fork(control, control, at, next, ways);
        at = next;
        onState.run();
        if (last) {
          done++;
        }
        step = Math.copySign(Math.min(Math.abs(whole), 2.0 * Math.abs(step)), whole);
      } else {
        step = 0.5 * (next - at);
        if (Math.abs(step) < SHORTEST * Math.abs(whole)) {
          return stuck(control, target, done + " of " + steps + " steps", run);
        }
      }
    }
    run.progress(new Progress(task, 1.0));
    return Termination.completed();
  }

  private static double fraction(double start, double at, double target) {
    return Math.min(1.0, Math.max(0.0, (at - start) / (target - start)));
  }

  private boolean attempt(Control control, double next, double step, double whole, int ways) {
    // under a load or a volume Newton's method can land beyond a snap: that is another path
    boolean travel = control instanceof Control.Unknown;
    double most =
        travel ? Double.POSITIVE_INFINITY : JUMP * solver.speed(control) * Math.abs(step) + STILL;
    boolean fed = control instanceof Control.Volume && Math.abs(step) > KINK * Math.abs(whole);
    if (fed) {
      solver.aim(control, step);
    }
    extrapolate(step);
    if (solver.solve(control, next)
        && (settled(control)
            || (solver.distance(now) <= most && (!fed || smooth(control, step, ways))))) {
      keep(step);
      return true;
    }
    restore();
    return false;
  }

  /**
   * Whether a held volume presses on something, where a path may bend sharply and stays put, or has
   * not moved by more than what Newton's method leaves, which has no direction.
   */
  private boolean settled(Control control) {
    return control instanceof Control.Volume
        && (solver.model().presses() || solver.distance(now) < NOISE);
  }

  private boolean smooth(Control control, double step, int ways) {
    return solver.negatives(control) == ways && solver.aligned(control, now, step) >= STRAIGHT;
  }

  /** Notes the state between two values of the control where the load turns round. */
  private void turn(Control control, double from, double to, double sign) {
    if (narrow(control, from, to, () -> solver.rate(control) * sign > 0.0)) {
      double value = solver.value(control);
      limits.add(new LimitPoint(ShellPath.Limit.Kind.LIMIT_POINT, solver.factor, value, 0));
    }
    restore();
  }

  /**
   * Notes the state between two values of a control where the path forks: the signs of the tangent
   * change though what is driven goes on.
   *
   * @param ways negative eigenvalues at the first value
   * @return those of the present state
   */
  private int fork(Control along, Control driven, double from, double to, int ways) {
    int after = solver.negatives(driven);
    if (after == ways) {
      return ways;
    }
    double value = Double.NaN;
    double factor = Double.NaN;
    ShellPath.Limit.Kind kind = ShellPath.Limit.Kind.BIFURCATION;
    if (narrow(along, from, to, () -> solver.negatives(driven) == ways)) {
      value = solver.value(driven);
      factor = solver.factor;
      double near = JUMP * solver.speed(along) * width + NEAR;
      if (Math.max(solver.distance(below), solver.distance(above)) > near) {
        kind = ShellPath.Limit.Kind.SNAP_BACK; // the states of both sides do not meet
      }
    }
    if (!Double.isFinite(value)) { // not to be missed, if less well placed
      restore();
      value = solver.value(driven);
      factor = solver.factor;
    }
    limits.add(new LimitPoint(kind, factor, value, after - ways));
    if (along == driven || !solver.solve(along, to)) {
      restore();
    }
    return after;
  }

  /**
   * Halves an interval of a control down to where a condition ceases to hold.
   *
   * @return whether a state was found there; the state is then the present one
   */
  private boolean narrow(Control control, double from, double to, BooleanSupplier holds) {
    double low = from;
    double high = to;
    double last = Double.NaN;
    System.arraycopy(before, 0, below, 0, below.length);
    System.arraycopy(solver.x, 0, above, 0, above.length);
    for (int i = 0; i < HALVINGS; i++) {
      if (!solver.solve(control, 0.5 * (low + high))) {
        return false;
      }
      boolean same = Math.abs(solver.factor - last) <= LIMIT * Math.abs(solver.factor);
      if (same && Math.abs(high - low) <= 1e-3 * Math.abs(to - from)) {
        return true;
      }
      last = solver.factor;
      width = Math.abs(high - low);
      if (holds.getAsBoolean()) {
        low = 0.5 * (low + high);
        System.arraycopy(solver.x, 0, below, 0, below.length);
      } else {
        high = 0.5 * (low + high);
        System.arraycopy(solver.x, 0, above, 0, above.length);
      }
    }
    return true;
  }

  /** What a search along the path's own length came to. */
  private enum Found {
    LIMIT,
    TARGET,
    STOP,
    NOTHING
  }

  private Termination stuck(Control control, double target, String done, RunControl run) {
    boolean dead = control instanceof Control.Load;
    Found found = search(control, ARC, ARCS, target, run);
    if (found == Found.LIMIT || found == Found.TARGET) {
      settle();
      onState.run();
    } else {
      restore();
    }
    return switch (found) {
      case LIMIT -> {
        ShellPath.Limit.Kind kind =
            dead ? ShellPath.Limit.Kind.LIMIT_POINT : ShellPath.Limit.Kind.SNAP_BACK;
        limits.add(new LimitPoint(kind, solver.factor, solver.value(control), 0));
        yield new Termination(
            Termination.Kind.LIMIT_POINT,
            dead
                ? "no state of balance at a larger load than " + Text.number(solver.factor)
                : "what is driven turns round, the part snaps back");
      }
      case TARGET -> Termination.completed();
      case STOP -> Termination.stopped(done);
      case NOTHING ->
          new Termination(
              Termination.Kind.NOT_CONVERGED,
              dead
                  ? "no state of balance found beyond " + Text.number(solver.factor)
                  : "no state of balance found further on");
    };
  }

  /**
   * Follows the path by its own length until its load has passed a limit point.
   *
   * @param arc the length of a step, over the size of the shell
   * @param most the most steps
   * @return whether a limit point was found; the state is then the limit point
   */
  boolean limit(double arc, int most) {
    double target = Double.POSITIVE_INFINITY;
    return search(new Control.Load(), arc, most, target, RunControl.none()) == Found.LIMIT;
  }

  /**
   * Follows the path by its own length until a value turns round or reaches its target, the way to
   * that target.
   */
  private Found search(Control control, double arc, int most, double target, RunControl run) {
    Control path = new Control.Arc();
    solver.mark(false);
    double way = target < solver.value(control) ? -1.0 : 1.0;
    if (solver.growth(control) * way < 0.0) {
      solver.turnRound();
    }
    boolean dead = control instanceof Control.Load;
    double load = Math.signum(solver.rate(path));
    int ways = solver.negatives(control);
    double step = arc;
    for (int i = 0; i < most; i++) {
      settle();
      if (run.stopRequested()) {
        return Found.STOP;
      }
      if (!solver.solve(path, step)) {
        restore();
        step *= 0.5;
        if (step < SHORTEST * arc) {
          return Found.NOTHING;
        }
        continue;
      }
      if (solver.growth(control) * way < 0.0) {
        return narrow(path, 0.0, step, () -> solver.growth(control) * way > 0.0)
            ? Found.LIMIT
            : Found.NOTHING;
      }
      if (way * (solver.value(control) - target) >= 0.0) {
        return solver.solve(control, target) ? Found.TARGET : Found.NOTHING;
      }
      double slope = solver.rate(path);
      if (!dead && slope * load < 0.0) {
        turnOnArc(control, path, step, load);
      }
      load = Math.signum(slope);
      ways = fork(path, control, 0.0, step, ways);
      onState.run();
      solver.mark(true);
      step = Math.min(arc, 2.0 * step);
    }
    return Found.NOTHING;
  }

  /** Notes where on an arc the load turns round, and goes back to the end of the arc. */
  private void turnOnArc(Control control, Control path, double step, double sign) {
    if (narrow(path, 0.0, step, () -> solver.rate(path) * sign > 0.0)) {
      double value = solver.value(control);
      limits.add(new LimitPoint(ShellPath.Limit.Kind.LIMIT_POINT, solver.factor, value, 0));
    }
    solver.solve(path, step);
  }
}
