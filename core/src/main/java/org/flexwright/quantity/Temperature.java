package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A temperature, held in kelvin.
 *
 * <p>Immutable and thread-safe. Factory and accessor share the name of the unit.
 *
 * @param kelvin the absolute temperature in kelvin, finite and not negative
 */
public record Temperature(double kelvin) implements Comparable<Temperature> {

  private static final double ICE_POINT = 273.15;

  /**
   * Refuses what is below absolute zero.
   *
   * @param kelvin the absolute temperature in kelvin, finite and not negative
   * @throws InvalidInputException if the value is negative, NaN or infinite
   */
  public Temperature {
    Require.notNegative("temperature", kelvin, "K");
  }

  /**
   * A temperature in kelvin.
   *
   * @param value the number of kelvin
   * @return the temperature
   */
  public static Temperature kelvin(double value) {
    return new Temperature(value);
  }

  /**
   * A temperature in degrees Celsius.
   *
   * @param value the number of degrees Celsius
   * @return the temperature
   */
  public static Temperature celsius(double value) {
    return new Temperature(value + ICE_POINT);
  }

  /**
   * This temperature in degrees Celsius.
   *
   * @return the number of degrees Celsius
   */
  public double celsius() {
    return kelvin - ICE_POINT;
  }

  /**
   * Reads a value with its unit, such as {@code "23 degC"}. Known units: K, degC.
   *
   * @param words a number and a unit
   * @return the temperature
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Temperature parse(String words) {
    Text.NumberAndUnit text = Text.split("temperature", words, "K, degC");
    return switch (text.unit()) {
      case "K" -> kelvin(text.value());
      case "degC", "C" -> celsius(text.value());
      default -> throw text.unknownUnit();
    };
  }

  @Override
  public int compareTo(Temperature other) {
    return Double.compare(kelvin, other.kelvin);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    return Text.number(celsius()) + " degC";
  }
}
