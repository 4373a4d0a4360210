package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.flexwright.evidence.Caveat;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * A run of a shell that is driven leg by leg: the state found says where to go next. For legs known
 * beforehand use {@link RevolvedShell#run(StrainEnergy, Drive...)}.
 *
 * <p>The wall is elastic and the obstacles have no friction, so a leg may lead back, and a leg that
 * failed leaves the last state found, from which another may start. A pressure leg that ended at a
 * limit point stands there.
 *
 * <p>JShell: {@code RevolvedShell.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(
 * mm(1))).journey(NeoHookean.of(mpa(1))).go(Drive.pressure(kpa(20)), RunControl.none())}
 *
 * <p>Work space; not thread-safe.
 */
public final class Journey {

  private static final int PUT_ON = 10; // steps for the standing loads
  private static final String NAME = "shell of revolution";

  private final BuiltIn ends;
  private final ShellModel model;
  private final StrainEnergy law;
  private final ShellSolver solver;
  private final Strains strains;
  private final Wrinkles wrinkles;
  private Profile profile;
  private final double[] carried; // standing forces by unknown
  private boolean loaded;
  private boolean put; // the standing loads are on
  private final RigidReach reach;
  private final int[] held; // besides the height of the last end
  private final int top; // height of the last end
  private final double towards; // sign of a push
  private final double rest;
  private final double empty;
  private final List<ShellState> states = new ArrayList<>();
  private final List<ShellPath.Limit> limits = new ArrayList<>();
  private final Forks forks = new Forks();
  private final List<LegEnd> legEnds = new ArrayList<>();
  private final FirstTouch touch;
  private Drive.What what = Drive.What.TRAVEL; // driven now
  private boolean axiallyHeld = true;
  private double push; // dead force on the last end while it is not held
  private double pressure;
  private int number;
  private Termination end = Termination.completed();

  Journey(
      ShellMesh mesh, End first, End last, int layers, StrainEnergy law, List<Obstacle> obstacles) {
    this.law = law;
    ends = BuiltIn.of(mesh, first, last);
    ShellMesh moving = ends.moving;
    model = new ShellModel(moving, law, layers, obstacles);
    strains = new Strains(moving);
    wrinkles = new Wrinkles(moving, law);
    profile = new Profile(ends, law, layers, List.copyOf(obstacles), Optional.empty());
    reach = new RigidReach(mesh, obstacles);
    touch = new FirstTouch(model.self);
    top = 3 * (moving.nodes() - 1) + 1;
    carried = new double[top + 2];
    held = held(moving, ends.first, ends.last, !obstacles.isEmpty());
    solver = new ShellSolver(model, Loading.pressure(top + 2), with(held, top));
    solver.evaluate();
    empty = model.volume;
    rest = solver.x[top];
    double down = Math.signum(mesh.height[0] - mesh.height[mesh.nodes() - 1]);
    towards = down == 0.0 ? -1.0 : down;
    record(new Control.Load());
  }

  /** Tells where the wall steps, before the run. */
  Journey drawn(Shoulders shoulders) {
    profile = profile.drawn(shoulders);
    return this;
  }

  /**
   * Puts loads on, before the run.
   *
   * @param loads what the shell bears
   * @param pieces of its meridian
   */
  Journey under(List<Load> loads, List<Meridian.Piece> pieces) {
    for (Load load : loads) {
      loaded = true;
      if (load instanceof Load.Fill fill) {
        double weight = fill.liquid().kgPerM3() * Liquid.GRAVITY;
        model.liquid = new Liquid(weight, fill.level().m());
      } else if (load instanceof Load.Ring ring) {
        int node = start(ring.piece(), pieces);
        carried[3 * node] += ring.radial().newtons();
        carried[3 * node + 1] += ring.axial().newtons();
      }
    }
    return this;
  }

  private int start(String name, List<Meridian.Piece> pieces) {
    int number =
        pieces.stream().filter(p -> p.name().equals(name)).findFirst().orElseThrow().number();
    int node = 0;
    while (node < model.mesh.elements() - 1 && model.mesh.piece[node] < number - 1) {
      node++;
    }
    return node;
  }

  private static int[] held(ShellMesh mesh, End first, End last, boolean among) {
    IntStream.Builder held = IntStream.builder();
    boolean rests = among && first == End.FREE && mesh.radius[0] == 0.0; // on what it touches
    if (!rests) {
      held.add(1);
    }
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

  /** The mesh that moves. */
  ShellMesh mesh() {
    return model.mesh;
  }

  /** The ends of the legs finished so far. */
  List<LegEnd> ends() {
    return List.copyOf(legEnds);
  }

  /**
   * Goes to the end of a leg straight from a guess.
   *
   * @return whether a stable state was found no farther from the guess than allowed
   */
  boolean jump(Drive leg, double[] guess, double factor, double farthest) {
    Control control = prepare(leg);
    double held = solver.x[top];
    System.arraycopy(guess, 0, solver.x, 0, guess.length);
    if (axiallyHeld && (leg.what() == Drive.What.PRESSURE || leg.what() == Drive.What.VOLUME)) {
      solver.x[top] = held;
    }
    solver.factor = factor;
    boolean found =
        solver.solve(control, target(leg))
            && solver.stable(control)
            && solver.distance(guess) <= farthest;
    if (found) {
      settle(leg);
      record(control);
    }
    return found;
  }

  ShellPath run(List<Drive> legs, RunControl run) {
    for (int i = 0; i < legs.size() && end.complete(); i++) {
      go(legs.get(i), run);
    }
    return path();
  }

  /**
   * Drives one leg on from the last state.
   *
   * @param leg the leg
   * @param run progress and stop request
   * @return how the leg ended
   */
  public Termination go(Drive leg, RunControl run) {
    if (loaded && !put) {
      put = true;
      end = load(run);
      if (!end.complete()) {
        return end;
      }
    }
    end = leg(number++, leg, run);
    return end;
  }

  /**
   * The state the shell is in.
   *
   * @return the last state found, that of rest at the start
   */
  public ShellState last() {
    return states.get(states.size() - 1);
  }

  /**
   * The way so far.
   *
   * @return all states found, with the ending of the last leg
   */
  public ShellPath path() {
    return new ShellPath(states, limits, end, List.copyOf(caveats()));
  }

  private Termination load(RunControl run) {
    Control control = new Control.Load();
    solver.load(Loading.growing(carried), 0.0, with(held, top));
    if (!solver.evaluate()) {
      return new Termination(Termination.Kind.NOT_CONVERGED, "the start of the standing loads");
    }
    PathFollower follower = new PathFollower(solver, () -> record(control));
    Termination end = follower.follow(control, 1.0, PUT_ON, NAME, run);
    for (PathFollower.LimitPoint p : follower.limits()) {
      limits.add(new ShellPath.Limit(p.kind(), -1, p.factor(), p.value()));
      forks.see(p, Text.percent(p.value()) + " of the standing loads");
    }
    return told(end);
  }

  private Termination leg(int at, Drive leg, RunControl run) {
    Control control = prepare(leg);
    if (!solver.evaluate()) {
      return new Termination(Termination.Kind.NOT_CONVERGED, "the start of leg " + (at + 1));
    }
    PathFollower follower = new PathFollower(solver, () -> record(control));
    Termination end = follower.follow(control, target(leg), leg.steps(), NAME, run);
    for (PathFollower.LimitPoint p : follower.limits()) {
      double load = signed(leg, p.factor());
      double value = driven(leg, p.value());
      limits.add(new ShellPath.Limit(p.kind(), at, load, value));
      forks.see(p, Forks.value(leg.what(), value) + " of leg " + (at + 1));
    }
    settle(leg);
    if (end.complete()) {
      legEnds.add(new LegEnd(solver.x, solver.factor, states.get(states.size() - 1)));
    }
    return told(end);
  }

  private Termination told(Termination end) {
    boolean ended =
        end.kind() == Termination.Kind.LIMIT_POINT || end.kind() == Termination.Kind.NOT_CONVERGED;
    return ended
        ? new Termination(end.kind(), end.why() + " (" + states.get(states.size() - 1) + ")")
        : end;
  }

  /** Loads and holds for a leg; gives what grows. */
  private Control prepare(Drive leg) {
    what = leg.what();
    boolean axial = leg.what() == Drive.What.TRAVEL || leg.what() == Drive.What.FORCE;
    if (axial) {
      solver.load(carried(Loading.force(top + 2, top).under(pressure)), reaction(), held);
      return leg.what() == Drive.What.TRAVEL ? new Control.Unknown(top) : new Control.Load();
    }
    Loading by = carried(Loading.pressure(top + 2));
    solver.load(
        axiallyHeld ? by : by.holding(towards * push, top),
        pressure,
        axiallyHeld ? with(held, top) : held);
    return leg.what() == Drive.What.VOLUME ? new Control.Volume() : new Control.Load();
  }

  private Loading carried(Loading by) {
    return loaded ? by.carrying(carried) : by;
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
    return model.force[top] - solver.pressure() * model.swept[top] - model.head * model.wetted[top];
  }

  private void record(Control control) {
    double energy = model.energy(solver.x);
    if (!(energy < Double.POSITIVE_INFINITY)) {
      return; // the law has no such state
    }
    double[] whole = ends.whole(solver.x);
    reach.look(whole);
    ShellState state =
        new ShellState(
            whole,
            towards * (solver.x[top] - rest),
            towards * reaction(),
            solver.pressure(),
            model.volume - empty,
            energy,
            ends.numbered(strains.peak(solver.x, false)),
            ends.numbered(strains.peak(solver.x, true)),
            strains.touches(solver.x, model.contact, ends),
            strains.touches(solver.x, model.self),
            solver.stable(control),
            profile,
            model.contact.multipliers());
    touch.look(state, what, solver.x);
    states.add(state);
    wrinkles.look(solver.x, towards * (solver.x[top] - rest), solver.pressure());
  }

  private Set<Caveat> caveats() {
    Set<Caveat> caveats = new LinkedHashSet<>();
    double stretch = 1.0;
    for (ShellState s : states) {
      stretch = Math.max(stretch, 1.0 + s.peak().strain());
    }
    touch.caveat().ifPresent(caveats::add);
    law.range().of("law of the shell").check(stretch).ifPresent(caveats::add);
    caveats.addAll(wrinkles.caveats());
    caveats.addAll(forks.caveats());
    reach.caveat().ifPresent(caveats::add);
    return caveats;
  }
}
