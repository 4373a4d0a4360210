package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A mass, held in kilograms.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param kg the value in kilograms, finite
 */
public record Mass(double kg) implements Comparable<Mass> {

  /**
   * Refuses a value that is not finite.
   *
   * @param kg the value in kilograms, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Mass {
    Require.finite("mass", kg, "kg");
  }

  /**
   * A mass in kilograms.
   *
   * @param value the number of kilograms, finite
   * @return the mass
   * @throws InvalidInputException if the value is not finite
   */
  public static Mass kg(double value) {
    return new Mass(value);
  }

  /**
   * A mass in grams.
   *
   * @param value the number of grams, finite
   * @return the mass
   * @throws InvalidInputException if the value is not finite
   */
  public static Mass grams(double value) {
    return new Mass(value / 1e3);
  }

  /**
   * This mass in grams.
   *
   * @return the number of grams
   */
  public double grams() {
    return kg * 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 g"}. Known units: kg, g.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the mass
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Mass parse(String words) {
    Text.NumberAndUnit text = Text.split("mass", words, "kg, g");
    return switch (text.unit()) {
      case "kg" -> kg(text.value());
      case "g" -> grams(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another mass.
   *
   * @param other what is added
   * @return the sum
   */
  public Mass plus(Mass other) {
    return new Mass(kg + other.kg);
  }

  /**
   * The difference of this and another mass.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Mass minus(Mass other) {
    return new Mass(kg - other.kg);
  }

  /**
   * This mass times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Mass times(double factor) {
    return new Mass(kg * factor);
  }

  /**
   * The ratio of this to another mass, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Mass other) {
    return kg / Require.nonZero("divisor", other.kg, "kg");
  }

  @Override
  public int compareTo(Mass other) {
    return Double.compare(kg, other.kg);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(kg) >= 1.0) {
      return Text.number(kg) + " kg";
    }
    return Text.number(grams()) + " g";
  }
}
