package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.flexwright.evidence.Caveat;
import org.flexwright.law.StrainEnergy;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/** One run of a shell through its legs. Work space; not thread-safe. */
final class Journey {

  private static final String NAME = "shell of revolution";

  private final BuiltIn ends;
  private final ShellModel model;
  private final StrainEnergy law;
  private final ShellSolver solver;
  private final Strains strains;
  private final int[] held; // besides the height of the last end
  private final int top; // height of the last end
  private final double towards; // sign of a push
  private final double rest;
  private final double empty;
  private final List<ShellState> states = new ArrayList<>();
  private final List<ShellPath.Limit> limits = new ArrayList<>();
  private final FirstTouch touch;
  private Drive.What what = Drive.What.TRAVEL; // driven now
  private boolean axiallyHeld = true;
  private double push; // dead force on the last end while it is not held
  private double pressure;

  Journey(
      ShellMesh mesh, End first, End last, int layers, StrainEnergy law, List<Obstacle> obstacles) {
    this.law = law;
    ends = BuiltIn.of(mesh, first, last);
    ShellMesh moving = ends.moving;
    model = new ShellModel(moving, law, layers, obstacles);
    strains = new Strains(moving);
    touch = new FirstTouch(model.self);
    top = 3 * (moving.nodes() - 1) + 1;
    held = held(moving, first, last);
    solver = new ShellSolver(model, Loading.pressure(top + 2), with(held, top));
    solver.evaluate();
    empty = model.volume;
    rest = solver.x[top];
    double down = Math.signum(mesh.height[0] - mesh.height[mesh.nodes() - 1]);
    towards = down == 0.0 ? -1.0 : down;
  }

  private static int[] held(ShellMesh mesh, End first, End last) {
    IntStream.Builder held = IntStream.builder();
    held.add(1);
    hold(held, 0, mesh.radius[0], first);
    int n = mesh.nodes() - 1;
    hold(held, n, mesh.radius[n], last);
    return held.build().toArray();
  }

  private static void hold(IntStream.Builder held, int node, double radius, End end) {
    if (radius == 0.0 || end.holdsRadius()) {
      held.add(3 * node);
    }
    if (radius == 0.0 || end.holdsTurn()) {
      held.add(3 * node + 2);
    }
  }

  private static int[] with(int[] held, int more) {
    int[] all = Arrays.copyOf(held, held.length + 1);
    all[held.length] = more;
    return all;
  }

  ShellPath run(List<Drive> legs, RunControl run) {
    Termination end = Termination.completed();
    record(new Control.Load());
    for (int i = 0; i < legs.size() && end.complete(); i++) {
      end = leg(i, legs.get(i), run);
    }
    return new ShellPath(states, limits, end, List.copyOf(caveats()));
  }

  private Termination leg(int number, Drive leg, RunControl run) {
    Control control = prepare(leg);
    if (!solver.evaluate()) {
      return new Termination(Termination.Kind.NOT_CONVERGED, "the start of leg " + (number + 1));
    }
    PathFollower follower = new PathFollower(solver, () -> record(control));
    Termination end = follower.follow(control, target(leg), leg.steps(), NAME, run);
    for (PathFollower.LimitPoint p : follower.limits()) {
      limits.add(new ShellPath.Limit(number, signed(leg, p.factor()), driven(leg, p.value())));
    }
    settle(leg);
    return end;
  }

  /** Loads and holds for a leg; gives what grows. */
  private Control prepare(Drive leg) {
    what = leg.what();
    boolean axial = leg.what() == Drive.What.TRAVEL || leg.what() == Drive.What.FORCE;
    if (axial) {
      solver.load(Loading.force(top + 2, top).under(pressure), reaction(), held);
      return leg.what() == Drive.What.TRAVEL ? new Control.Unknown(top) : new Control.Load();
    }
    Loading by = Loading.pressure(top + 2);
    solver.load(
        axiallyHeld ? by : by.holding(towards * push, top),
        pressure,
        axiallyHeld ? with(held, top) : held);
    return leg.what() == Drive.What.VOLUME ? new Control.Volume() : new Control.Load();
  }

  private double target(Drive leg) {
    return switch (leg.what()) {
      case TRAVEL -> rest + towards * leg.target();
      case FORCE -> towards * leg.target();
      case PRESSURE -> leg.target();
      case VOLUME -> empty + leg.target();
    };
  }

  private double signed(Drive leg, double factor) {
    return leg.what() == Drive.What.PRESSURE || leg.what() == Drive.What.VOLUME
        ? factor
        : towards * factor;
  }

  private double driven(Drive leg, double value) {
    return switch (leg.what()) {
      case TRAVEL -> towards * (value - rest);
      case FORCE -> towards * value;
      case PRESSURE -> value;
      case VOLUME -> value - empty;
    };
  }

  private void settle(Drive leg) {
    switch (leg.what()) {
      case TRAVEL -> axiallyHeld = true;
      case FORCE -> {
        axiallyHeld = false;
        push = towards * solver.factor;
      }
      default -> pressure = solver.factor;
    }
  }

  /** The axial force on the last end that balances the present state. */
  private double reaction() {
    return model.force[top] - solver.pressure() * model.swept[top];
  }

  private void record(Control control) {
    ShellState state =
        new ShellState(
            ends.whole(solver.x),
            towards * (solver.x[top] - rest),
            towards * reaction(),
            solver.pressure(),
            model.volume - empty,
            model.energy,
            strains.peak(solver.x).further(ends.before()),
            strains.touches(solver.x, model.contact),
            strains.touches(solver.x, model.self),
            solver.stable(control));
    touch.look(state, what, solver.x);
    states.add(state);
  }

  private Set<Caveat> caveats() {
    Set<Caveat> caveats = new LinkedHashSet<>();
    double stretch = 1.0;
    for (ShellState s : states) {
      stretch = Math.max(stretch, 1.0 + s.peak().strain());
    }
    touch.caveat().ifPresent(caveats::add);
    law.range().of("law of the shell").check(stretch).ifPresent(caveats::add);
    return caveats;
  }
}
