package org.flexwright.shells.solved;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellState;

/**
 * A part of closed form that answers with the figures of the engine of shells of revolution: at
 * finite strain and any turn, in the grade's law itself, between solid ends.
 *
 * <p>Formula: load = closed form times r(ln t), r the ratio of engine and closed form at a few
 * Chebyshev points of the wall, interpolated as ln r by the polynomial through them; along each
 * other lever straight through the part beside, e^(1/4) away on that side (of the gap for the
 * outside of a sleeve), and no further than e^(1/2). The same for the largest strain and for the
 * share of the load that follows the modulus. Symbols: t wall (m).
 *
 * <p>A question tells the part its range of walls ({@link #prepared}); until then it is ready from
 * 0.8 to 1.25 of the wall it was made with. Four runs serve a range of up to 1 to 7. A wall outside
 * is run by itself, with the exponents of the closed form. What was found is kept with the part and
 * all parts made from it by levers; the answers do not depend on the order of questions.
 *
 * <p>Range and band. Bellows, pushed, the outermost roots held by flanges: wall to 0.15 of the
 * depth and 0.1 of the mean radius, until flanks touch; load 0.99 to 1.005, strain 0.95 to 1.05.
 * Sleeve: wall to 0.12 of the radius; pressure 0.985 to 1.015, strain 0.8 to 1.2 since a fillet at
 * the ends lowers it and a notch raises it. Each band is widened by the error of the interpolation:
 * the last coefficients of the Chebyshev series (three times that for the strain, whose place may
 * change) and a quarter of the move along other levers. The material counts as incompressible.
 *
 * <p>Caveats: where engine and closed form lie further apart than the closed form's band, with both
 * figures; where a lever lies beyond e^(1/2); where a run ends early, with the reason and the
 * figures of its last state; where the engine has none at all, that those of the closed form are
 * given, and why. The largest strain is across the layers or in them by where the engine finds it.
 *
 * <p>Source: derived; see the package of shells of revolution. Immutable and thread-safe.
 *
 * <p>JShell: {@code Question.of(Solved.of(neck)).vary(Solved.by(Bellows.WALL), mm(0.3), mm(2.1))}
 *
 * @param <P> the part of closed form
 */
public final class Solved<P extends Part<P>> implements Part<Solved<P>> {

  static final Source ENGINE =
      Source.derived("shell of revolution at finite strain, by the engine");

  private static final double AROUND = 1.25; // of the wall, before a question tells its range
  private static final double SHRINK = 0.9; // of a range that ends where no part exists
  private static final int SHRINKS = 60;
  private static final double EDGE = 1e-12;

  private final Engine<P> engine;
  private final P part;
  private final P home; // from which levers are told
  private final Length least;
  private final Length most;
  private final Store store;

  private Solved(Engine<P> engine, P part, P home, Length least, Length most, Store store) {
    this.engine = engine;
    this.part = part;
    this.home = home;
    this.least = least;
    this.most = most;
    this.store = store;
  }

  /**
   * A bellows on the engine.
   *
   * @param bellows the bellows
   * @return the same bellows, pushed between flanges
   */
  public static Solved<Bellows> of(Bellows bellows) {
    return of(BellowsEngine.ONLY, bellows);
  }

  /**
   * A sleeve on the engine.
   *
   * @param sleeve the sleeve
   * @return the same sleeve, inflated between solid ends
   */
  public static Solved<Sleeve> of(Sleeve sleeve) {
    return of(SleeveEngine.ONLY, sleeve);
  }

  private static <P extends Part<P>> Solved<P> of(Engine<P> engine, P part) {
    Length wall = engine.thickness().of(part);
    return new Solved<>(
        engine, part, part, wall.times(1.0 / AROUND), top(engine, part, wall), new Store());
  }

  private static <P extends Part<P>> Length top(Engine<P> engine, P part, Length wall) {
    return existing(engine, part, wall, wall.times(AROUND));
  }

  /** The greatest size that makes a part, found by shrinking. */
  private static <P extends Part<P>> Length existing(
      Engine<P> engine, P part, Length least, Length most) {
    Length to = most;
    for (int i = 0; i < SHRINKS && to.compareTo(least) > 0; i++) {
      try {
        engine.thickness().set(part, to);
        return to;
      } catch (InvalidInputException e) {
        to = to.times(SHRINK); // a wall that fills the part
      }
    }
    return least.times(AROUND);
  }

  /**
   * A lever of the closed form as one of the solved part.
   *
   * @param of the lever
   * @param <P> the part of closed form
   * @return the same lever
   */
  public static <P extends Part<P>> Lever<Solved<P>> by(Lever<P> of) {
    return Lever.of(of.name(), s -> of.of(s.part), (s, v) -> s.with(of.set(s.part, v)));
  }

  private Solved<P> with(P other) {
    return new Solved<>(engine, other, home, least, most, store);
  }

  /**
   * The part of closed form.
   *
   * @return the part with these dimensions
   */
  public P part() {
    return part;
  }

  /**
   * This part ready for a range of its wall; any other lever makes no difference.
   *
   * @param lever the dimension that will vary
   * @param from its least value
   * @param to its greatest value
   * @return the part, ready for that range
   */
  @Override
  public Optional<Solved<P>> prepared(Lever<Solved<P>> lever, Length from, Length to) {
    if (!lever.name().equals(engine.thickness().name())) {
      return Optional.empty();
    }
    Require.that(from.compareTo(to) < 0, "range of the " + lever, from + " to " + to, "rising", "");
    return Optional.of(
        new Solved<>(engine, part, home, from, existing(engine, home, from, to), store));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    engine.refuseOther(load);
    Response closed = part.respond(grade, load, run);
    Corrected<P> corrected = new Corrected<>(engine, part, grade, load, closed);
    Anchors<P> anchors = new Anchors<>(engine, store, grade, load, run);
    double wall = engine.thickness().of(part).m();
    if (wall >= least.m() * (1.0 - EDGE) && wall <= most.m() * (1.0 + EDGE)) {
      try {
        return corrected.by(anchors.ratios(part, home, least, most), Termination.completed());
      } catch (EarlyEnd e) {
        if (e.end().kind() == Termination.Kind.STOPPED) {
          return corrected.closedForm(e.end());
        }
      }
    }
    return alone(anchors, corrected, closed);
  }

  /** By a run of this very part. */
  private Response alone(Anchors<P> anchors, Corrected<P> corrected, Response closed) {
    Solution found = anchors.solution(part, closed);
    if (found.loads().length == 0 || !closed.termination().complete()) {
      return corrected.closedForm(found.end());
    }
    double[] row = anchors.row(found, closed);
    double[] still = new double[row.length];
    return corrected.by(Ratios.of(row, still, still, found.hoop(), found.caveats()), found.end());
  }

  /**
   * Engine and closed form side by side.
   *
   * @param grade the material
   * @param load what is asked
   * @return both figures
   */
  public Comparison compare(Grade grade, LoadCase load) {
    Response solved = respond(grade, load);
    Response closed = part.respond(grade, load);
    return new Comparison(
        solved.load().channel(),
        solved.load().nominal(),
        closed.load().nominal(),
        solved.strain().nominal(),
        closed.strain().nominal());
  }

  /**
   * What engine and closed form say.
   *
   * @param channel what the load is
   * @param engine the load by the engine, in SI units
   * @param closed the load by the closed form
   * @param engineStrain the largest strain by the engine
   * @param closedStrain the largest strain by the closed form
   */
  public record Comparison(
      Channel channel, double engine, double closed, double engineStrain, double closedStrain) {

    /**
     * Engine over closed form.
     *
     * @return the ratio of the loads
     */
    public double ratio() {
      return engine / closed;
    }

    /** One readable line. */
    @Override
    public String toString() {
      return channel
          + " "
          + channel.show(engine)
          + " by the engine, "
          + channel.show(closed)
          + " by the closed form, ratio "
          + Text.number(ratio(), 3);
    }
  }

  /**
   * The wall at rest and at a load, by a run of this very part.
   *
   * @param grade the material
   * @param load what is asked
   * @param run progress and stop
   * @return both shapes; if the run ended early, the last is that of its last state
   */
  public Shapes shapes(Grade grade, LoadCase load, RunControl run) {
    Response found = respond(grade, load, run);
    Engine.Pictured of = engine.pictured(part, grade.law(), load, found.load().nominal(), run);
    List<ShellState> states = of.path().states();
    return new Shapes(
        whole(of.shell().wall(states.get(0))),
        whole(of.shell().wall(of.path().last())),
        engine.bore(part),
        of.path().termination());
  }

  /** The half that was run and its image in the plane of its last end. */
  private static List<RevolvedShell.Across> whole(List<RevolvedShell.Across> half) {
    RevolvedShell.Across last = half.get(half.size() - 1);
    Length twice = last.outerHeight().plus(last.innerHeight());
    List<RevolvedShell.Across> image = new ArrayList<>();
    for (RevolvedShell.Across a : half.subList(0, half.size() - 1)) {
      image.add(
          new RevolvedShell.Across(
              a.outerRadius(),
              twice.minus(a.outerHeight()),
              a.innerRadius(),
              twice.minus(a.innerHeight())));
    }
    Collections.reverse(image);
    List<RevolvedShell.Across> whole = new ArrayList<>(half);
    whole.addAll(image);
    return List.copyOf(whole);
  }

  /**
   * The wall of a part at rest and at its load, from one end to the other.
   *
   * @param rest across the wall at rest
   * @param loaded the same places at the load
   * @param bore radius of the bore around it, if there is one
   * @param termination how the run ended
   */
  public record Shapes(
      List<RevolvedShell.Across> rest,
      List<RevolvedShell.Across> loaded,
      Optional<Length> bore,
      Termination termination) {

    /**
     * Keeps the lists from being changed.
     *
     * @param rest across the wall at rest
     * @param loaded the same places at the load
     * @param bore radius of the bore around it, if there is one
     * @param termination how the run ended
     */
    public Shapes {
      rest = List.copyOf(rest);
      loaded = List.copyOf(loaded);
    }
  }

  @Override
  public List<Lever<Solved<P>>> levers() {
    return part.levers().stream().map(Solved::by).toList();
  }

  @Override
  public Volume printedVolume() {
    return part.printedVolume();
  }

  @Override
  public Feature thinnest() {
    return part.thinnest();
  }

  @Override
  public List<Solved<P>> serviceExtremes() {
    List<P> now = part.serviceExtremes();
    List<P> from = home.serviceExtremes();
    List<Solved<P>> all = new ArrayList<>();
    for (int i = 0; i < now.size(); i++) {
      all.add(new Solved<>(engine, now.get(i), from.get(i), least, most, store));
    }
    return List.copyOf(all);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return part + ", on the engine";
  }
}
