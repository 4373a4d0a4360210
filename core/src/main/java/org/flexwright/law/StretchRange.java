package org.flexwright.law;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The principal stretches between which a law may be used.
 *
 * @param low least stretch, above 0
 * @param high greatest stretch
 * @param reason what ends it: data, stability or locking
 * @param source who says so
 */
public record StretchRange(double low, double high, String reason, Source source) {

  /**
   * Refuses a range that does not hold the state of rest.
   *
   * @param low least stretch, above 0
   * @param high greatest stretch
   * @param reason what ends it: data, stability or locking
   * @param source who says so
   */
  public StretchRange {
    Require.positive("least stretch", low, "");
    Require.that(
        low <= 1.0 && high >= 1.0, "stretch range", low + " to " + high, "a range around 1", "");
  }

  /**
   * This range as a validity range of a named law.
   *
   * @param law the name of the law
   * @return the range, which makes the caveat for a stretch outside
   */
  public ValidityRange of(String law) {
    return new ValidityRange(law, "principal stretch", low, high, "", source);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "stretch " + Text.number(low) + " to " + Text.number(high) + " (" + reason + ")";
  }
}
