package org.flexwright.evidence;

import java.util.Optional;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The range of one input in which a model was fitted, derived or checked.
 *
 * @param model the model, such as "Gent 1958"
 * @param input the input that is bounded, such as "Shore A"
 * @param low the lower end, minus infinity if none
 * @param high the upper end, infinity if none
 * @param unit the unit of both ends, or an empty text
 * @param source who says so
 */
public record ValidityRange(
    String model, String input, double low, double high, String unit, Source source) {

  /**
   * Refuses an empty range.
   *
   * @param model the model, such as "Gent 1958"
   * @param input the input that is bounded, such as "Shore A"
   * @param low the lower end, minus infinity if none
   * @param high the upper end, infinity if none
   * @param unit the unit of both ends, or an empty text
   * @param source who says so
   * @throws org.flexwright.InvalidInputException if low is above high or either is not a number
   */
  public ValidityRange {
    Require.that(
        low <= high,
        "range of " + input,
        low + " to " + high,
        "low not above high",
        "swap the ends");
  }

  /**
   * Whether a value lies inside, ends included.
   *
   * @param value the value
   * @return true if inside
   */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }

  /**
   * The caveat for a value outside the range; nothing for a value inside.
   *
   * @param value the value, in the unit of the range
   * @return the caveat, if any
   */
  public Optional<Caveat> check(double value) {
    return contains(value) ? Optional.empty() : Optional.of(Caveat.outside(this, value));
  }

  /** One readable line. */
  @Override
  public String toString() {
    String suffix = unit.isEmpty() ? "" : " " + unit;
    if (Double.isInfinite(low)) {
      return input + " up to " + Text.number(high) + suffix;
    }
    if (Double.isInfinite(high)) {
      return input + " from " + Text.number(low) + suffix;
    }
    return input + " " + Text.number(low) + " to " + Text.number(high) + suffix;
  }
}
