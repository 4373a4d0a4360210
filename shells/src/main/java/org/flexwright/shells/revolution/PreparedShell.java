package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.run.RunControl;

/**
 * A shell made ready to be asked for many walls, as by a slider or a search: the ends of its legs,
 * each from a start near by instead of along the whole path.
 *
 * <p>Formula: whole paths are kept for a fixed ladder of walls, 1.1^k mm; a wall between two rungs
 * starts each leg's end from the displacements in between, u = u1 + (u2 - u1)(w - w1)/(w2 - w1), on
 * its own mesh, and Newton's method does the rest. Symbols: w wall, u displacements at equal shares
 * of each piece.
 *
 * <p>Range: this is done where both rungs were reached stably, without limit points and obstacles,
 * and where the state found is stable and near its start; otherwise the whole path is run. Answers
 * do not depend on what was asked before. They agree with those of a fresh run within the solver's
 * tolerance: nine digits. The first question between two rungs runs their paths, too; the next ones
 * take one mesh and one to three steps of Newton's method a leg. For a bellows of 252 elements
 * pushed in eight steps that is a quarter of the time of a fresh run.
 *
 * <p>Caveats: those of the states given. Source: Newton's method; nothing is approximated.
 *
 * <p>JShell: {@code RevolvedShell.of(meridian).prepare(Meridian.WALL, law,
 * Drive.travel(mm(4))).at(mm(0.8)).last().force()}
 *
 * <p>Thread-safe; keeps 24 rungs, those asked for last.
 */
public final class PreparedShell {

  private static final double STEP = 1.1;
  private static final int KEPT = 24;
  private static final double NEAR = 0.5; // of the distance between the rungs
  private static final double NOISE = 1e-3; // of the size, per node: one mesh to another

  private final RevolvedShell shell;
  private final Lever<Meridian> lever;
  private final StrainEnergy law;
  private final List<Drive> legs;
  private final Map<Integer, Rung> rungs =
      new LinkedHashMap<>(KEPT, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Integer, Rung> eldest) {
          return size() > KEPT;
        }
      };

  /**
   * The ends of the legs at one wall of the ladder.
   *
   * @param mesh the mesh that moves
   * @param ends of the legs; none if they are no good start
   */
  private record Rung(ShellMesh mesh, List<LegEnd> ends) {}

  PreparedShell(RevolvedShell shell, Lever<Meridian> lever, StrainEnergy law, List<Drive> legs) {
    Require.atLeast("legs", legs.size(), 1);
    this.shell = shell;
    this.lever = lever;
    this.law = law;
    this.legs = List.copyOf(legs);
  }

  /**
   * The state of rest and the end of each leg at a value of the lever.
   *
   * @param value of the lever
   * @return these states; if a leg could not be finished, the last state found and the reason
   * @throws InvalidInputException if the meridian refuses the value
   */
  public ShellPath at(Length value) {
    return at(value, RunControl.none());
  }

  /**
   * The same, watched.
   *
   * @param value of the lever
   * @param run progress and stop request
   * @return the states; if stopped, those found so far
   * @throws InvalidInputException if the meridian refuses the value
   */
  public ShellPath at(Length value, RunControl run) {
    Require.positive(lever.name(), value.m(), "m");
    RevolvedShell here = shell.meridian(lever.set(shell.meridian(), value));
    int below = (int) Math.floor(Math.log(value.mm()) / Math.log(STEP));
    if (here.obstacles().isEmpty()) {
      Rung low = rung(below, run);
      Rung high = low.ends().isEmpty() ? low : rung(below + 1, run);
      if (!low.ends().isEmpty() && !high.ends().isEmpty()) {
        double from = wall(below);
        double share = (value.m() - from) / (wall(below + 1) - from);
        Journey journey = here.journey(law);
        if (between(journey, low, high, share)) {
          return journey.path();
        }
      }
    }
    return whole(here, run);
  }

  private static double wall(int rung) {
    return 1e-3 * Math.pow(STEP, rung);
  }

  private ShellPath whole(RevolvedShell here, RunControl run) {
    Journey journey = here.journey(law);
    ShellPath path = journey.run(legs, run);
    List<ShellState> states = new ArrayList<>(List.of(path.states().get(0)));
    journey.ends().forEach(e -> states.add(e.state));
    if (states.get(states.size() - 1) != path.last()) {
      states.add(path.last());
    }
    return new ShellPath(states, path.limits(), path.termination(), path.caveats());
  }

  /** Goes from leg's end to leg's end; whether all of them were found near by. */
  private boolean between(Journey journey, Rung low, Rung high, double share) {
    ShellMesh mesh = journey.mesh();
    if (!Carried.alike(low.mesh(), mesh) || !Carried.alike(high.mesh(), mesh)) {
      return false;
    }
    double[] start = new double[3 * mesh.nodes()];
    for (int i = 0; i < legs.size(); i++) {
      LegEnd a = low.ends().get(i);
      LegEnd b = high.ends().get(i);
      double[] apart = new double[start.length];
      Carried.add(high.mesh(), b.x, 1.0, mesh, apart);
      Carried.add(low.mesh(), a.x, -1.0, mesh, apart);
      System.arraycopy(mesh.rest(), 0, start, 0, start.length);
      Carried.add(low.mesh(), a.x, 1.0, mesh, start);
      double size = mesh.size();
      double sum = NOISE * NOISE * mesh.nodes();
      for (int k = 0; k < start.length; k++) {
        start[k] += share * apart[k];
        double u = NEAR * apart[k] / (k % 3 == 2 ? 1.0 : size);
        sum += u * u;
      }
      double factor = a.factor + share * (b.factor - a.factor);
      if (!journey.jump(legs.get(i), start, factor, Math.sqrt(sum))) {
        return false;
      }
    }
    return true;
  }

  private Rung rung(int number, RunControl run) {
    synchronized (rungs) {
      Rung known = rungs.get(number);
      if (known != null) {
        return known;
      }
    }
    Rung made = climb(number, run); // twice by two threads at once comes to the same
    if (!run.stopRequested()) {
      synchronized (rungs) {
        rungs.put(number, made);
      }
    }
    return made;
  }

  private Rung climb(int number, RunControl run) {
    Meridian meridian;
    try {
      meridian = lever.set(shell.meridian(), Length.m(wall(number)));
    } catch (InvalidInputException e) {
      return new Rung(shell.journey(law).mesh(), List.of());
    }
    Journey journey = shell.meridian(meridian).journey(law);
    ShellPath path = journey.run(legs, run);
    boolean good = path.termination().complete() && path.limits().isEmpty();
    for (ShellState s : path.states()) {
      good &= s.stable() && s.self().isEmpty();
    }
    return new Rung(journey.mesh(), good ? journey.ends() : List.of());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return shell + ", prepared for its " + lever + " and " + legs.size() + " legs";
  }
}
