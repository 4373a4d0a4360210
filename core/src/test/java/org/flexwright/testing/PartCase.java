package org.flexwright.testing;

import java.util.function.BiFunction;
import org.flexwright.grade.Grade;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.jspecify.annotations.Nullable;

/**
 * A kind of part for {@link PartHarness}: how to draw one at random, all of its lengths times a
 * scale, and how to draw what it is asked.
 *
 * <pre>{@code
 * PartCase.of(
 *     "clamped plate",
 *     (s, d) -> CircularPlate.of(CLAMPED, mm(20 * s), mm(d.between(1, 15) * s), mm(d.between(0.1, 3) * s)),
 *     (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 2) * s)));
 * }</pre>
 *
 * @param name for messages
 * @param part draws a part; every length times the scale
 * @param load draws a load case; lengths times the scale, forces times its square
 * @param rises whether the load rises along every path
 * @param stiffens whether a thicker thinnest feature carries more at the same travel, or null if
 *     either
 * @param energy the energy stored at the end by an independent route, or null
 */
public record PartCase<P extends Part<P>>(
    String name,
    BiFunction<Double, Draw, P> part,
    BiFunction<Double, Draw, LoadCase> load,
    boolean rises,
    @Nullable Boolean stiffens,
    @Nullable Energy<P> energy) {

  /** Energy by a route that does not use the part's own response. */
  @FunctionalInterface
  public interface Energy<P> {
    /** Gives the energy in joules at the end of a load case. */
    double of(P part, Grade grade, LoadCase load);
  }

  /** A case whose load rises along every path. */
  public static <P extends Part<P>> PartCase<P> of(
      String name, BiFunction<Double, Draw, P> part, BiFunction<Double, Draw, LoadCase> load) {
    return new PartCase<>(name, part, load, true, true, null);
  }

  /** This case with paths that may fall: limit points, snap-through. */
  public PartCase<P> mayFall() {
    return new PartCase<>(name, part, load, false, stiffens, energy);
  }

  /** This case with a thinnest feature that may be a height: thicker is stiffer or softer. */
  public PartCase<P> eitherWay() {
    return new PartCase<>(name, part, load, rises, null, energy);
  }

  /** This case with an independent energy, which the work along the path must meet. */
  public PartCase<P> energy(Energy<P> route) {
    return new PartCase<>(name, part, load, rises, stiffens, route);
  }

  @Override
  public String toString() {
    return name;
  }
}
