package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
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
  private static final double STILL = 1e-9; // rounding, which a leg to the present load must bear

  private final ShellSolver solver;
  private final Runnable onState;
  private final double[] now;
  private final double[] before;
  private double nowFactor;
  private double beforeFactor;
  private double lastStep;
  private double[] pressed;
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
    nowFactor = solver.factor;
    beforeFactor = solver.factor;
    pressed = solver.model().contact.multipliers();
    folded = solver.model().self.state();
  }

  /**
   * A state where the load turns round.
   *
   * @param factor the load factor there
   * @param value the controlled value there
   */
  record LimitPoint(double factor, double value) {}

  /** The limit points passed so far, in order. */
  List<LimitPoint> limits() {
    return limits;
  }

  /** Takes the present state of the solver as the one to go on from. */
  void settle() {
    keep(0.0);
    lastStep = 0.0;
  }

  private void keep(double step) {
    System.arraycopy(now, 0, before, 0, now.length);
    beforeFactor = nowFactor;
    System.arraycopy(solver.x, 0, now, 0, now.length);
    nowFactor = solver.factor;
    pressed = solver.model().contact.multipliers();
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

  /** Starts from a straight line through the last two states. */
  private void extrapolate(double step) {
    double share = lastStep == 0.0 ? 0.0 : step / lastStep;
    for (int i = 0; i < now.length; i++) {
      solver.x[i] = now[i] + share * (now[i] - before[i]);
    }
    solver.factor = nowFactor + share * (nowFactor - beforeFactor);
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
    while (done < steps) {
      run.progress(new Progress(task, whole == 0.0 ? 0.0 : fraction(start, at, target)));
      if (run.stopRequested()) {
        return Termination.stopped(done + " of " + steps + " steps");
      }
      double mark = start + (done + 1) * whole;
      boolean last = Math.abs(mark - at) <= 1.0001 * Math.abs(step);
      double next = last ? mark : at + step;
      if (attempt(control, next, next - at)) {
        double slope = watched ? solver.rate(control) : 0.0;
        if (slope * sign < 0.0) {
          turn(control, at, next, sign);
        }
        sign = Math.signum(slope);
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

  private boolean attempt(Control control, double next, double step) {
    // under a dead load Newton's method can land beyond a snap: that is another path
    boolean dead = control instanceof Control.Load;
    double most = dead ? JUMP * solver.speed() * Math.abs(step) + STILL : Double.POSITIVE_INFINITY;
    extrapolate(step);
    if (solver.solve(control, next) && solver.distance(now) <= most) {
      keep(step);
      return true;
    }
    restore();
    return false;
  }

  /** Notes the state between two values of the control where the load turns round. */
  private void turn(Control control, double from, double to, double sign) {
    double low = from;
    double high = to;
    double best = Double.NaN;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = 0.5 * (low + high);
      if (!solver.solve(control, mid)) {
        break;
      }
      boolean same = Math.abs(solver.factor - best) <= LIMIT * Math.abs(solver.factor);
      best = solver.factor;
      if (solver.rate(control) * sign > 0.0) {
        low = mid;
      } else {
        high = mid;
      }
      if (same && high - low <= 1e-3 * Math.abs(to - from)) {
        break;
      }
    }
    if (!Double.isNaN(best)) {
      limits.add(new LimitPoint(best, 0.5 * (low + high)));
    }
    restore();
  }

  /** What a search along the path's own length came to. */
  private enum Found {
    LIMIT,
    TARGET,
    STOP,
    NOTHING
  }

  private Termination stuck(Control control, double target, String done, RunControl run) {
    if (!(control instanceof Control.Load)) {
      return new Termination(
          Termination.Kind.NOT_CONVERGED,
          "no state of balance beyond " + Text.number(solver.value(control)));
    }
    Found found = search(ARC, ARCS, target, run);
    if (found == Found.LIMIT || found == Found.TARGET) {
      settle();
      onState.run();
    } else {
      restore();
    }
    return switch (found) {
      case LIMIT -> {
        limits.add(new LimitPoint(solver.factor, solver.factor));
        yield new Termination(
            Termination.Kind.LIMIT_POINT,
            "no state of balance at a larger load than " + Text.number(solver.factor));
      }
      case TARGET -> Termination.completed();
      case STOP -> Termination.stopped(done);
      case NOTHING ->
          new Termination(
              Termination.Kind.NOT_CONVERGED,
              "no state of balance found beyond " + Text.number(solver.factor));
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
    return search(arc, most, Double.POSITIVE_INFINITY, RunControl.none()) == Found.LIMIT;
  }

  /** Follows the path by its own length to a limit point or to a load, the way to that load. */
  private Found search(double arc, int most, double target, RunControl run) {
    Control control = new Control.Arc();
    solver.mark(false);
    double way = target < solver.factor ? -1.0 : 1.0;
    if (way < 0.0) {
      solver.turnRound();
    }
    double sign = Math.signum(solver.rate(control));
    double step = arc;
    for (int i = 0; i < most; i++) {
      settle();
      if (run.stopRequested()) {
        return Found.STOP;
      }
      if (!solver.solve(control, step)) {
        restore();
        step *= 0.5;
        if (step < SHORTEST * arc) {
          return Found.NOTHING;
        }
        continue;
      }
      if (solver.rate(control) * sign < 0.0) {
        return bisect(control, sign, step) ? Found.LIMIT : Found.NOTHING;
      }
      if (way * (solver.factor - target) >= 0.0) {
        return solver.solve(new Control.Load(), target) ? Found.TARGET : Found.NOTHING;
      }
      onState.run();
      solver.mark(true);
      step = Math.min(arc, 2.0 * step);
    }
    return Found.NOTHING;
  }

  private boolean bisect(Control control, double sign, double upper) {
    double low = 0.0;
    double high = upper;
    double last = Double.NaN;
    for (int i = 0; i < HALVINGS; i++) {
      double mid = 0.5 * (low + high);
      if (!solver.solve(control, mid)) {
        restore();
        return false;
      }
      if (Math.abs(solver.factor - last) <= LIMIT * Math.abs(solver.factor)
          && Math.abs(high - low) <= 1e-3 * Math.abs(upper)) {
        return true;
      }
      last = solver.factor;
      if (solver.rate(control) * sign > 0.0) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return true;
  }
}
