package org.flexwright.finder;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.evidence.Source;
import org.flexwright.response.Response;

/**
 * What one analysis has to say about a described thing.
 *
 * @param analysis the analysis
 * @param response its response, if it could be asked
 * @param reason why it could not be asked, if it could not: dimensions that are missing, or a
 *     geometry that makes no sense to it
 */
public record Finding(Analysis analysis, Optional<Response> response, Optional<String> reason) {

  /**
   * Whether it could be asked.
   *
   * @return true if there is a response
   */
  public boolean applies() {
    return response.isPresent();
  }

  /**
   * How far out of range the case is: the sum over its ranges of {@link RangeCheck#excess}, 0 where
   * all are kept; 1 more where its path ended before it got there.
   *
   * @return the distance; infinite if it could not be asked
   */
  public double excess() {
    if (response.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double ended = response.get().termination().complete() ? 0.0 : 1.0;
    return ended + ranges().stream().mapToDouble(RangeCheck::excess).sum();
  }

  /**
   * The validity ranges, and where the case stands in each.
   *
   * @return the ranges, empty if it could not be asked
   */
  public List<RangeCheck> ranges() {
    return response.map(Response::ranges).orElse(List.of());
  }

  /**
   * Where the formulas come from.
   *
   * @return the sources, empty if it could not be asked
   */
  public List<Source> sources() {
    return response.map(Response::sources).orElse(List.of());
  }

  /**
   * The reservations.
   *
   * @return the caveats, empty if it could not be asked
   */
  public List<Caveat> caveats() {
    return response.map(Response::caveats).orElse(List.of());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return analysis.name()
        + ": "
        + response
            .map(
                r ->
                    r.load().channel().show(r.load().nominal())
                        + (caveats().isEmpty() ? "" : ", " + caveats().size() + " caveat(s)"))
            .orElseGet(() -> reason.orElse("not asked"));
  }
}
