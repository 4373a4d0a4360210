package org.flexwright.shells.solved;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.grade.Grade;
import org.flexwright.law.ScaledLaw;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/** The engine's answers for one grade and load, found once and kept in the store. */
final class Anchors<P extends Part<P>> {

  private static final double STEP = 0.25; // along a lever, to the part beside
  private static final double FAR = 0.5; // a place further off has the ratios of this one
  private static final double BEND = 0.25; // of a straight move along a lever may be off
  private static final double FARTHER = 2.0; // times as much beyond
  private static final int BESIDE = 2; // points of a surface beside
  private static final double STILL = 1e-12;

  private final Engine<P> engine;
  private final Store store;
  private final Grade grade;
  private final LoadCase load;
  private final RunControl run;
  private final StrainEnergy law;
  private final double times;

  Anchors(Engine<P> engine, Store store, Grade grade, LoadCase load, RunControl run) {
    this.engine = engine;
    this.store = store;
    this.grade = grade;
    this.load = load;
    this.run = run;
    StrainEnergy of = grade.law();
    law = of instanceof ScaledLaw s ? s.of() : of;
    times = of instanceof ScaledLaw s ? s.factor() : 1.0;
  }

  private record Asked(Object part, StrainEnergy law, LoadCase load) {}

  private record Spanned(
      Object part,
      StrainEnergy law,
      double times,
      double poisson,
      LoadCase load,
      double low,
      double high,
      int points) {}

  /** What the engine finds of a part, in this grade. */
  Solution solution(P part, Response closed) {
    LoadCase asked = engine.softer(load, times);
    Asked key = new Asked(part, law, asked);
    Optional<Solution> known = store.get(key, Solution.class);
    if (known.isPresent()) {
      return known.get().stiffer(times);
    }
    Solution found = solve(part, asked, closed);
    if (found.end().kind() != Termination.Kind.STOPPED) {
      store.put(key, found);
    }
    return found.stiffer(times);
  }

  private Solution solve(P part, LoadCase asked, Response closed) {
    double[] guess = stations(closed, closed.load().channel());
    for (int i = 0; i < guess.length; i++) {
      guess[i] /= times;
    }
    try {
      return engine.solve(part, law, asked, guess, run);
    } catch (InvalidInputException e) {
      return Solution.none(
          new Termination(Termination.Kind.NO_FURTHER_STATE, "no such shell: " + e.sentence()));
    }
  }

  /** The closed form's figures at the stations. */
  private double[] stations(Response closed, Channel channel) {
    LoadPath path = closed.path();
    double[] at = engine.stations().clone();
    for (int i = 0; i < at.length; i++) {
      at[i] = path.value(channel, (int) Math.round(at[i] * (path.size() - 1)));
    }
    return at;
  }

  /** Engine over closed form of one part, by a run of its own. */
  double[] row(Solution found, Response closed) {
    return Ratios.row(
        stations(closed, closed.load().channel()),
        stations(closed, Channel.STRAIN),
        found,
        closed.load().nominal() - closed.load().offset());
  }

  /** The ratios over a range of sizes. */
  private Surface surface(P home, double low, double high, int points) throws EarlyEnd {
    Spanned key = new Spanned(home, law, times, grade.poisson(), load, low, high, points);
    Optional<Surface> known = store.get(key, Surface.class);
    if (known.isPresent()) {
      return known.get();
    }
    double[] nodes = Surface.nodes(low, high, points);
    double[][] rows = new double[points][];
    boolean[] hoop = new boolean[points];
    List<List<Caveat>> caveats = new ArrayList<>();
    for (int j = 0; j < points; j++) {
      P part = engine.thickness().set(home, Length.m(Math.exp(nodes[j])));
      Response closed = part.respond(grade, load);
      Solution found = solution(part, closed);
      if (!found.whole()) {
        throw new EarlyEnd(found.end());
      }
      rows[j] = row(found, closed);
      hoop[j] = found.hoop();
      caveats.add(found.caveats());
    }
    Surface made = new Surface(low, high, rows, hoop, caveats);
    store.put(key, made);
    return made;
  }

  /**
   * The ratios of a part between those of runs near it: along its size by four points and more,
   * along its other levers straight from home through the part beside on that side.
   *
   * @param home the part from which levers are told
   * @param least least size of the range
   * @param most greatest size
   * @throws EarlyEnd if a run that is needed ended before the load
   */
  Ratios ratios(P part, P home, Length least, Length most) throws EarlyEnd {
    double low = Math.log(least.m());
    double high = Math.log(most.m());
    try {
      P base = engine.thickness().set(home, least);
      Surface surface = surface(base, low, high, Surface.points(low, high));
      double x = Math.log(engine.thickness().of(part).m());
      double[] row = surface.at(x);
      double[] slope = surface.slope(x);
      double[] error = surface.error();
      List<Caveat> caveats = new ArrayList<>(surface.caveats(x));
      for (Lever<P> lever : others(part)) {
        double off = engine.place(part, lever) - engine.place(base, lever);
        if (Math.abs(off) > STILL) {
          double by = Math.copySign(Math.min(FAR, Math.abs(off)), off);
          if (by != off) {
            caveats.add(Caveat.note(engine.name(), far(lever), Solved.ENGINE));
          }
          double step = step(base, lever, off);
          Surface beside = surface(engine.moved(base, lever, step), low, high, BESIDE);
          for (int k = 0; k < row.length; k++) {
            double[] line = beside.lessAt(surface, k);
            double move = by / step * (line[0] + line[1] * x);
            row[k] += move;
            slope[k] += by / step * line[1];
            error[k] += BEND * (by == off ? 1.0 : FARTHER * off / by) * Math.abs(move);
          }
        }
      }
      return Ratios.of(row, slope, error, surface.hoop(x), caveats);
    } catch (InvalidInputException e) {
      throw new EarlyEnd(new Termination(Termination.Kind.NO_FURTHER_STATE, e.sentence()));
    }
  }

  /** To the part beside on that side, or on the other if none can exist there. */
  private double step(P base, Lever<P> lever, double off) {
    double step = Math.copySign(STEP, off);
    try {
      engine.moved(base, lever, step);
      return step;
    } catch (InvalidInputException e) {
      return -step; // a depth below what the pitch needs
    }
  }

  private static String far(Lever<?> lever) {
    return "the " + lever + " lies far from those that were run: ask a part made with that one";
  }

  private List<Lever<P>> others(P part) {
    String size = engine.thickness().name();
    return part.levers().stream().filter(l -> !l.name().equals(size)).toList();
  }
}
