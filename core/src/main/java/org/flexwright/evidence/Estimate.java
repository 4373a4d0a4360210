package org.flexwright.evidence;

import java.util.List;
import org.flexwright.internal.Require;

/**
 * A value with its band, its sources and its caveats.
 *
 * @param low the lower end of the band
 * @param nominal the best single value
 * @param high the upper end of the band
 * @param band what the band is
 * @param sources where the value comes from
 * @param caveats the reservations
 * @param <Q> the quantity, such as {@link org.flexwright.quantity.Pressure}
 */
public record Estimate<Q extends Comparable<? super Q>>(
    Q low, Q nominal, Q high, Band band, List<Source> sources, List<Caveat> caveats) {

  /** What a band is. A band that does not say what it is cannot be compared with another. */
  public enum Band {
    /** Published scatter of the data behind a correlation. */
    PUBLISHED_SCATTER,
    /** Lowest and highest of the relations that apply. */
    SPREAD_OF_RELATIONS,
    /** Spread of the relations, widened by the tolerance of the reading. */
    SPREAD_AND_READING,
    /** The named uncertainty factors at their coverage, see {@link Factors#COVERAGE}. */
    FACTORS,
    /** Bounds from two limiting models. */
    BRACKET,
    /** Interval of a calibrated posterior. */
    POSTERIOR
  }

  /**
   * Keeps the lists from being changed and refuses a band out of order.
   *
   * @param low the lower end of the band
   * @param nominal the best single value
   * @param high the upper end of the band
   * @param band what the band is
   * @param sources where the value comes from
   * @param caveats the reservations
   * @throws org.flexwright.InvalidInputException unless low, nominal and high are in order
   */
  public Estimate {
    Require.that(
        low.compareTo(nominal) <= 0 && nominal.compareTo(high) <= 0,
        "estimate",
        low + ", " + nominal + ", " + high,
        "low <= nominal <= high",
        "");
    sources = List.copyOf(sources);
    caveats = List.copyOf(caveats);
  }

  /** One readable line. */
  @Override
  public String toString() {
    String label =
        switch (band) {
          case PUBLISHED_SCATTER -> "published scatter";
          case SPREAD_OF_RELATIONS -> "spread of the relations";
          case SPREAD_AND_READING -> "relations and reading";
          case FACTORS -> "uncertainty factors";
          case BRACKET -> "bracket";
          case POSTERIOR -> "posterior";
        };
    String tail = caveats.isEmpty() ? "" : ", " + caveats.size() + " caveat(s)";
    return nominal + " (" + low + " to " + high + ", " + label + tail + ")";
  }
}
