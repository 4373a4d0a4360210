package org.flexwright.shells.inflate;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.revolution.Drive;
import org.flexwright.shells.revolution.Journey;
import org.flexwright.shells.revolution.ShellState;
import org.flexwright.shells.revolution.Touch;

/**
 * The way of a seal to its first touch, in a bore so much wider that nothing touches: the gap is
 * then smooth beyond zero and its zero found by a solve at each trial. Work space.
 */
final class Approach {

  private static final int STEPS = 10;
  private static final int FILLS = 40; // to 45 times the volume of the limit point
  private static final double FILL = 0.1; // of that volume, growing by as much each time
  private static final double ROOM = 10.0; // radii of the bore
  private static final int TRIALS = 60;
  private static final double NEAR = 1e-6; // of the coordinate

  /** A leg that failed while a state was looked for. */
  private static final class Halt extends RuntimeException {
    private static final long serialVersionUID = 1L;
  }

  private final Journey journey;
  private final RunControl run;
  private final double offset; // of the gap
  private Termination end = Termination.completed();
  private boolean touches;
  private double limit = Double.NaN;
  private double limitVolume;

  Approach(Seal seal, StrainEnergy law, RunControl run) {
    this.run = run;
    double room = ROOM * seal.bore().diameter().m();
    offset = room * Math.cos(seal.widening().rad());
    journey = seal.among(Length.m(room)).journey(law);
    if (seal.sliding()) {
      release(journey, run);
    }
  }

  /** Lets the last end of a part at rest slide. */
  static Termination release(Journey journey, RunControl run) {
    return journey.go(Drive.force(Force.newtons(0.0)).steps(1), run);
  }

  /** Goes until it touches, a pressure is reached, or nothing more is found. */
  void to(double supply) {
    ShellState before = journey.last();
    for (int i = 1; i <= STEPS && end.complete(); i++) {
      end = journey.go(Drive.pressure(Pressure.pa(supply * i / STEPS)).steps(1), run);
      if (reached(before)) {
        return;
      }
      before = journey.last();
    }
    if (end.kind() == Termination.Kind.LIMIT_POINT) {
      beyond(before);
    }
  }

  private void beyond(ShellState at) {
    limit = at.pressure().pa();
    limitVolume = at.volume().m3();
    ShellState before = at;
    double more = FILL * limitVolume;
    for (int i = 0; i < FILLS; i++) {
      double next = before.volume().m3() + more;
      Termination leg = journey.go(Drive.volume(Volume.m3(next)).steps(1), run);
      if (reached(before)) {
        end = Termination.completed();
        return;
      }
      if (!leg.complete()) {
        end = leg.kind() == Termination.Kind.STOPPED ? leg : end;
        return;
      }
      before = journey.last();
      more *= 1.0 + FILL;
    }
  }

  /** Whether the gap has closed since a state; the journey then stands at the touch. */
  private boolean reached(ShellState before) {
    if (gap(journey.last()) > 0.0) {
      return false;
    }
    touches = true;
    Termination found =
        locate(journey, run, Drive.What.VOLUME, before, journey.last(), s -> -gap(s));
    if (!found.complete()) {
      end = found;
      touches = false;
    }
    return touches;
  }

  /**
   * Drives a journey to the state between two where a function goes through zero.
   *
   * @param what volume or pressure
   * @param f below zero at the first state, not below at the second
   * @return how it ended
   */
  static Termination locate(
      Journey journey,
      RunControl run,
      Drive.What what,
      ShellState from,
      ShellState to,
      ToDoubleFunction<ShellState> f) {
    double a = value(what, from);
    double b = value(what, to);
    double scale = Math.abs(b - a);
    double near = NEAR * Math.max(Math.abs(a), Math.abs(b));
    if (f.applyAsDouble(from) >= 0.0 || !(scale > near)) {
      return Termination.completed();
    }
    try {
      double x =
          new BracketingNthOrderBrentSolver(near, 3)
              .solve(TRIALS, v -> f.applyAsDouble(at(journey, run, what, v)), a, b);
      at(journey, run, what, x);
      return Termination.completed();
    } catch (Halt halt) {
      return journey.path().termination();
    }
  }

  private static ShellState at(Journey journey, RunControl run, Drive.What what, double value) {
    if (value(what, journey.last()) != value
        && !journey.go(new Drive(what, value, 1), run).complete()) {
      throw new Halt();
    }
    return journey.last();
  }

  static double value(Drive.What what, ShellState s) {
    return what == Drive.What.VOLUME ? s.volume().m3() : s.pressure().pa();
  }

  private double gap(ShellState s) {
    return nearest(s).gap().m() - offset;
  }

  private static Touch.Nearest nearest(ShellState s) {
    return s.touches().get(0).nearest();
  }

  /** The touch of a state in the true bore before it touches, after one in that bore. */
  Touch untouched(ShellState s, Touch in) {
    Touch.Nearest wide = nearest(s);
    return new Touch(
        in.obstacle(),
        Length.m(0.0),
        Pressure.pa(0.0),
        Pressure.pa(0.0),
        Force.newtons(0.0),
        new Touch.Nearest(wide.element(), Length.m(wide.gap().m() - offset)),
        List.of());
  }

  /** The states so far. */
  List<ShellState> states() {
    return journey.path().states();
  }

  Termination end() {
    return end;
  }

  boolean touches() {
    return touches;
  }

  /** Whether the pressure passed a limit point. */
  boolean turned() {
    return !Double.isNaN(limit);
  }

  /** The pressure of the limit point passed. */
  double limit() {
    return limit;
  }

  double limitVolume() {
    return limitVolume;
  }

  /** The last state: the touch if it touches. */
  ShellState last() {
    return journey.last();
  }

  int element() {
    return nearest(journey.last()).element();
  }
}
