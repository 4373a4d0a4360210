package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A mass density, held in kilograms per cubic metre.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param kgPerM3 the value in kilograms per cubic metre, finite
 */
public record Density(double kgPerM3) implements Comparable<Density> {

  /**
   * Refuses a value that is not finite.
   *
   * @param kgPerM3 the value in kilograms per cubic metre, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Density {
    Require.finite("density", kgPerM3, "kg/m3");
  }

  /**
   * A density in kilograms per cubic metre.
   *
   * @param value the number of kilograms per cubic metre, finite
   * @return the density
   * @throws InvalidInputException if the value is not finite
   */
  public static Density kgPerM3(double value) {
    return new Density(value);
  }

  /**
   * A density in grams per cubic centimetre.
   *
   * @param value the number of grams per cubic centimetre, finite
   * @return the density
   * @throws InvalidInputException if the value is not finite
   */
  public static Density gPerCm3(double value) {
    return new Density(value * 1e3);
  }

  /**
   * This density in grams per cubic centimetre.
   *
   * @return the number of grams per cubic centimetre
   */
  public double gPerCm3() {
    return kgPerM3 / 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 g/cm3"}. Known units: kg/m3, g/cm3.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the density
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Density parse(String words) {
    Text.NumberAndUnit text = Text.split("density", words, "kg/m3, g/cm3");
    return switch (text.unit()) {
      case "kg/m3" -> kgPerM3(text.value());
      case "g/cm3" -> gPerCm3(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another density.
   *
   * @param other what is added
   * @return the sum
   */
  public Density plus(Density other) {
    return new Density(kgPerM3 + other.kgPerM3);
  }

  /**
   * The difference of this and another density.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Density minus(Density other) {
    return new Density(kgPerM3 - other.kgPerM3);
  }

  /**
   * This density times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Density times(double factor) {
    return new Density(kgPerM3 * factor);
  }

  /**
   * The ratio of this to another density, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Density other) {
    return kgPerM3 / Require.nonZero("divisor", other.kgPerM3, "kg/m3");
  }

  @Override
  public int compareTo(Density other) {
    return Double.compare(kgPerM3, other.kgPerM3);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    return Text.number(gPerCm3()) + " g/cm3";
  }
}
