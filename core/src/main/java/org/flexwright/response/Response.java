package org.flexwright.response;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.evidence.Source;
import org.flexwright.run.Termination;

/**
 * The answer of an analysis.
 *
 * @param path the states from rest to the end
 * @param load the load at the end and how it moves with the factors: a force at a travel, the
 *     pressure that holds a force, a limit load
 * @param strain the largest tensile strain on the path and how it moves
 * @param strainCrossesLayers whether that strain pulls printed layers apart
 * @param sources where the formulas come from
 * @param caveats the reservations of this state
 * @param ranges every validity range that was looked at, and where this state stands in it
 */
public record Response(
    LoadPath path,
    ScaledValue load,
    ScaledValue strain,
    boolean strainCrossesLayers,
    List<Source> sources,
    List<Caveat> caveats,
    List<RangeCheck> ranges) {

  /**
   * Keeps the lists from being changed.
   *
   * @param path the states from rest to the end
   * @param load the load at the end and how it moves with the factors: a force at a travel, or the
   *     pressure that holds a force
   * @param strain the largest tensile strain on the path and how it moves
   * @param strainCrossesLayers whether that strain pulls printed layers apart
   * @param sources where the formulas come from
   * @param caveats the reservations of this state
   * @param ranges every validity range that was looked at, and where this state stands in it
   */
  public Response {
    sources = List.copyOf(sources);
    caveats = List.copyOf(caveats);
    ranges = List.copyOf(ranges);
  }

  /**
   * A response whose ranges were not kept.
   *
   * @param path the states from rest to the end
   * @param load the load at the end and how it moves with the factors
   * @param strain the largest tensile strain on the path and how it moves
   * @param strainCrossesLayers whether that strain pulls printed layers apart
   * @param sources where the formulas come from
   * @param caveats the reservations of this state
   */
  public Response(
      LoadPath path,
      ScaledValue load,
      ScaledValue strain,
      boolean strainCrossesLayers,
      List<Source> sources,
      List<Caveat> caveats) {
    this(path, load, strain, strainCrossesLayers, sources, caveats, List.of());
  }

  /**
   * How the path ended.
   *
   * @return the ending
   */
  public Termination termination() {
    return path.termination();
  }

  /**
   * This response with one more caveat.
   *
   * @param caveat the caveat
   * @return the new response
   */
  public Response with(Caveat caveat) {
    List<Caveat> more = new ArrayList<>(caveats);
    more.add(caveat);
    return new Response(path, load, strain, strainCrossesLayers, sources, more, ranges);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return path + (caveats.isEmpty() ? "" : "; " + caveats.size() + " caveat(s)");
  }
}
