package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * An energy, held in joules.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param joules the value in joules, finite
 */
public record Energy(double joules) implements Comparable<Energy> {

  /**
   * Refuses a value that is not finite.
   *
   * @param joules the value in joules, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Energy {
    Require.finite("energy", joules, "J");
  }

  /**
   * An energy in joules.
   *
   * @param value the number of joules, finite
   * @return the energy
   * @throws InvalidInputException if the value is not finite
   */
  public static Energy joules(double value) {
    return new Energy(value);
  }

  /**
   * An energy in millijoules.
   *
   * @param value the number of millijoules, finite
   * @return the energy
   * @throws InvalidInputException if the value is not finite
   */
  public static Energy millijoules(double value) {
    return new Energy(value / 1e3);
  }

  /**
   * This energy in millijoules.
   *
   * @return the number of millijoules
   */
  public double millijoules() {
    return joules * 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 mJ"}. Known units: J, mJ.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the energy
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Energy parse(String words) {
    Text.NumberAndUnit text = Text.split("energy", words, "J, mJ");
    return switch (text.unit()) {
      case "J" -> joules(text.value());
      case "mJ" -> millijoules(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another energy.
   *
   * @param other what is added
   * @return the sum
   */
  public Energy plus(Energy other) {
    return new Energy(joules + other.joules);
  }

  /**
   * The difference of this and another energy.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Energy minus(Energy other) {
    return new Energy(joules - other.joules);
  }

  /**
   * This energy times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Energy times(double factor) {
    return new Energy(joules * factor);
  }

  /**
   * The ratio of this to another energy, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Energy other) {
    return joules / Require.nonZero("divisor", other.joules, "J");
  }

  @Override
  public int compareTo(Energy other) {
    return Double.compare(joules, other.joules);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(joules) >= 1.0) {
      return Text.number(joules) + " J";
    }
    return Text.number(millijoules()) + " mJ";
  }
}
