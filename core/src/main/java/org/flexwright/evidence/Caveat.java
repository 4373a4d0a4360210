package org.flexwright.evidence;

import java.util.Optional;
import org.flexwright.internal.Text;

/**
 * A reservation that travels with a result: the answer is given, and this is why to trust it less.
 *
 * @param model the model or data the caveat is about
 * @param message one sentence a person can act on
 * @param source who says so
 * @param excursion the input that left its range, if that is the reason
 */
public record Caveat(String model, String message, Source source, Optional<Excursion> excursion) {

  /**
   * An input outside a validity range.
   *
   * @param value the value of the input
   * @param range the range that it left
   */
  public record Excursion(double value, ValidityRange range) {}

  /**
   * The caveat for a value outside a validity range.
   *
   * @param range the range
   * @param value the value outside it
   * @return the caveat
   */
  public static Caveat outside(ValidityRange range, double value) {
    String message =
        range.input() + " is " + Text.number(value) + ", the model is good for " + range;
    return new Caveat(
        range.model(), message, range.source(), Optional.of(new Excursion(value, range)));
  }

  /**
   * A caveat that is not about a range.
   *
   * @param model the model or data
   * @param message one sentence a person can act on
   * @param source who says so
   * @return the caveat
   */
  public static Caveat note(String model, String message, Source source) {
    return new Caveat(model, message, source, Optional.empty());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return model + ": " + message;
  }
}
