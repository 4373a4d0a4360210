package org.flexwright.shells.inflate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.revolution.Drive;
import org.flexwright.shells.revolution.Journey;
import org.flexwright.shells.revolution.ShellState;
import org.flexwright.shells.revolution.Touch;

/** One filling of a seal in its bore. Work space; not thread-safe. */
final class Filling {

  private static final String NAME = "seal in a bore";
  private static final Source SOURCE = Source.derived("shell of revolution against a rigid bore");
  private static final int BEFORE = 4; // steps to the touch
  private static final int AFTER = 8;
  private static final int FILLS = 200;
  private static final double SAFE = 0.9; // of a limit point: where the volume takes over

  private final Seal seal;
  private final Grade grade;
  private final double supply;
  private final RunControl run;
  private final ToDoubleFunction<Sealing.State> goal;
  private final Approach way;
  private final Journey journey;
  private final Demand demand;
  private final List<Sealing.State> states = new ArrayList<>();
  private boolean beyond; // the limit point
  private Optional<Sealing.State> wanted = Optional.empty();
  private Termination end = Termination.completed();

  Filling(
      Seal seal, Grade grade, double supply, RunControl run, ToDoubleFunction<Sealing.State> goal) {
    this.seal = seal;
    this.grade = grade;
    this.supply = supply;
    this.run = new Watch(run);
    this.goal = goal;
    way = new Approach(seal, grade.law(), this.run);
    journey = seal.among(Length.m(0.0)).journey(grade.law());
    demand = new Demand(grade, seal.build(), journey.last());
  }

  /** Tells how far the pressure has come and passes a stop on. */
  private final class Watch implements RunControl {
    private final RunControl of;
    private double share;

    Watch(RunControl of) {
      this.of = of;
    }

    @Override
    public void progress(Progress progress) {
      if (!states.isEmpty()) {
        double now = states.get(states.size() - 1).pressure().pa() / supply;
        share = Math.max(share, Math.min(1.0, now));
      }
      of.progress(new Progress(NAME, share));
    }

    @Override
    public boolean stopRequested() {
      return of.stopRequested();
    }
  }

  Sealing sealing() {
    way.to(supply);
    if (way.end().kind() == Termination.Kind.STOPPED) {
      way.states().forEach(s -> states.add(free(s)));
      end = way.end();
      return result();
    }
    states.add(state(journey.last()));
    if (seal.sliding()) {
      end = Approach.release(journey, run);
    }
    if (end.complete()) {
      fill();
    }
    return result();
  }

  private void fill() {
    double touch = way.last().pressure().pa();
    if (way.turned()) {
      if (!march(Drive.What.PRESSURE, SAFE * way.limit(), BEFORE)
          || !march(Drive.What.VOLUME, way.limitVolume(), 1)) {
        return;
      }
      if (!way.touches()) {
        end = way.end();
        return;
      }
      if (!snap()) {
        return;
      }
    }
    if (!way.touches() && !way.end().complete()) {
      if (march(Drive.What.PRESSURE, touch, BEFORE)) {
        end = way.end();
      }
      return;
    }
    if (touch > journey.last().pressure().pa() && !march(Drive.What.PRESSURE, touch, BEFORE)) {
      return;
    }
    if (way.touches()) {
      march(Drive.What.PRESSURE, supply, AFTER);
    }
  }

  /** Through the states of a held volume to the bore and up to the pressure of the limit point. */
  private boolean snap() {
    beyond = true;
    double full = way.last().volume().m3();
    double step = (full - way.limitVolume()) / BEFORE;
    boolean met = false;
    for (int i = 0; i < FILLS; i++) {
      double now = journey.last().volume().m3();
      double next = met || now + 1.01 * step < full ? now + step : full;
      if (!march(Drive.What.VOLUME, next, 1)) {
        return false;
      }
      met = met || next >= full;
      if (!last().held()) {
        return true;
      }
    }
    end =
        new Termination(
            Termination.Kind.LIMIT_POINT,
            "no state of balance in the bore at the pressure of the limit point, "
                + Text.number(way.limit())
                + " Pa");
    return false;
  }

  /** Goes to a value in even steps; whether the filling goes on. */
  private boolean march(Drive.What what, double to, int steps) {
    double from = Approach.value(what, journey.last());
    for (int i = 1; i <= steps; i++) {
      double next = i == steps ? to : from + (to - from) * i / steps;
      Termination leg = journey.go(new Drive(what, next, 1), run);
      if (!leg.complete()) {
        end = leg;
        if (leg.kind() == Termination.Kind.LIMIT_POINT) {
          accept(what);
        }
        return false;
      }
      if (!accept(what)) {
        return false;
      }
    }
    return true;
  }

  /** Takes the state that the journey stands in, or the first one before it that ends the way. */
  private boolean accept(Drive.What what) {
    ShellState from = last().shell();
    ShellState to = journey.last();
    Sealing.State here = state(to);
    if (here.demand() >= 1.0) {
      find(what, from, to, s -> state(s).demand() - 1.0);
      here = state(journey.last());
      if (end.complete()) {
        end = demand.reached(here.shell());
      }
    } else if (last().held() && !here.held()) {
      find(what, from, to, s -> s.pressure().pa() / way.limit() - 1.0);
      // a hair below the limit point or above it: this is where a supply of pressure lands
      here = state(journey.last(), false);
    }
    if (!here.held() && goal.applyAsDouble(here) >= 0.0) {
      if (!last().held()) {
        find(what, from, here.shell(), s -> goal.applyAsDouble(state(s, false)));
        here = state(journey.last(), false);
        end = end.kind() == Termination.Kind.STOPPED ? end : Termination.completed();
      }
      wanted = Optional.of(here);
    }
    states.add(here);
    return end.complete() && wanted.isEmpty();
  }

  private void find(
      Drive.What what, ShellState from, ShellState to, ToDoubleFunction<ShellState> f) {
    Termination found = Approach.locate(journey, run, what, from, to, f);
    end = found.complete() ? end : found;
  }

  private Sealing.State last() {
    return states.get(states.size() - 1);
  }

  private Sealing.State state(ShellState s) {
    return state(s, beyond && s.pressure().pa() < way.limit());
  }

  private Sealing.State state(ShellState s, boolean held) {
    return state(s, s.touches().get(0), held);
  }

  private Sealing.State state(ShellState s, Touch touch, boolean held) {
    return new Sealing.State(seal.bore(), s, touch, best(touch.patches()), demand.of(s), held);
  }

  /** A state of the approach, its touch that of the true bore. */
  private Sealing.State free(ShellState s) {
    return state(s, way.untouched(s, journey.last().touches().get(0)), false);
  }

  private Sealing.Place best(List<Touch.Patch> patches) {
    Band band = Band.best(patches);
    int where = patches.isEmpty() ? way.element() : band.element();
    return new Sealing.Place(Pressure.pa(band.pressure()), height(where));
  }

  private int elements() {
    return journey.last().nodes() - 1;
  }

  private Length height(int element) {
    ShellState rest = journey.path().states().get(0);
    return rest.height(element).plus(rest.height(element + 1)).times(0.5);
  }

  private Sealing result() {
    Optional<Sealing.First> touch = Optional.empty();
    if (way.touches() && states.stream().anyMatch(s -> s.contact().normal().newtons() > 0.0)) {
      double at = way.last().pressure().pa();
      double by = way.turned() ? Math.max(at, way.limit()) : at;
      touch =
          Optional.of(new Sealing.First(Pressure.pa(by), Pressure.pa(at), height(way.element())));
    }
    return new Sealing(states, touch, wanted, end, caveats());
  }

  private List<Caveat> caveats() {
    Checks checks = Checks.of(NAME, SOURCE);
    journey.path().caveats().forEach(checks::note);
    grade.caveats().forEach(checks::note);
    if (beyond) {
      checks.note(
          "passes a limit point at "
              + Pressure.pa(way.limit())
              + " and snaps: states marked so are those of a held volume; a supply of pressure"
              + " passes them at once");
    }
    if (!last().contact().patches().isEmpty()) {
      touching(checks, last().contact());
    }
    ShellState.Peak peak = last().shell().peak();
    if (peak.strain() > 0.0 && Math.min(peak.element(), elements() - 1 - peak.element()) <= 1) {
      checks.note(
          "the largest strain is at an edge of the part, where it grows with the fineness: give"
              + " solid ends a fillet and draw them with the part");
    }
    if (seal.widening().rad() != 0.0) {
      checks.note(
          "in a conical bore the holding force is that along the wall; the slope itself pushes"
              + " the part towards the wide end");
    }
    return checks.caveats();
  }

  private static void touching(Checks checks, Touch contact) {
    List<Touch.Patch> patches = contact.patches();
    double thin = patches.stream().mapToDouble(p -> p.wall().m()).min().orElseThrow();
    double edge = Math.max(patches.get(0).wall().m(), patches.get(patches.size() - 1).wall().m());
    checks.check("contact / wall", 2.0, Double.POSITIVE_INFINITY, contact.length().m() / thin);
    checks.check("wall at the edge of the contact / thinnest touching wall", 1.0, 1.5, edge / thin);
    checks.note(
        "the medium's own pressure on the free part beside the contact is not counted: it shortens"
            + " the contact on that side");
  }
}
