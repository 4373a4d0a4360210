package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A volume, held in cubic metres.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param m3 the value in cubic metres, finite
 */
public record Volume(double m3) implements Comparable<Volume> {

  /**
   * Refuses a value that is not finite.
   *
   * @param m3 the value in cubic metres, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Volume {
    Require.finite("volume", m3, "m3");
  }

  /**
   * A volume in cubic metres.
   *
   * @param value the number of cubic metres, finite
   * @return the volume
   * @throws InvalidInputException if the value is not finite
   */
  public static Volume m3(double value) {
    return new Volume(value);
  }

  /**
   * A volume in cubic millimetres.
   *
   * @param value the number of cubic millimetres, finite
   * @return the volume
   * @throws InvalidInputException if the value is not finite
   */
  public static Volume mm3(double value) {
    return new Volume(value / 1e9);
  }

  /**
   * This volume in cubic millimetres.
   *
   * @return the number of cubic millimetres
   */
  public double mm3() {
    return m3 * 1e9;
  }

  /**
   * A volume in cubic centimetres (millilitres).
   *
   * @param value the number of cubic centimetres (millilitres), finite
   * @return the volume
   * @throws InvalidInputException if the value is not finite
   */
  public static Volume cm3(double value) {
    return new Volume(value / 1e6);
  }

  /**
   * This volume in cubic centimetres (millilitres).
   *
   * @return the number of cubic centimetres (millilitres)
   */
  public double cm3() {
    return m3 * 1e6;
  }

  /**
   * A volume in litres.
   *
   * @param value the number of litres, finite
   * @return the volume
   * @throws InvalidInputException if the value is not finite
   */
  public static Volume litres(double value) {
    return new Volume(value / 1e3);
  }

  /**
   * This volume in litres.
   *
   * @return the number of litres
   */
  public double litres() {
    return m3 * 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 mm3"}. Known units: m3, mm3, cm3, l.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the volume
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Volume parse(String words) {
    Text.NumberAndUnit text = Text.split("volume", words, "m3, mm3, cm3, l");
    return switch (text.unit()) {
      case "m3" -> m3(text.value());
      case "mm3" -> mm3(text.value());
      case "cm3", "ml" -> cm3(text.value());
      case "l", "L" -> litres(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another volume.
   *
   * @param other what is added
   * @return the sum
   */
  public Volume plus(Volume other) {
    return new Volume(m3 + other.m3);
  }

  /**
   * The difference of this and another volume.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Volume minus(Volume other) {
    return new Volume(m3 - other.m3);
  }

  /**
   * This volume times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Volume times(double factor) {
    return new Volume(m3 * factor);
  }

  /**
   * The ratio of this to another volume, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Volume other) {
    return m3 / Require.nonZero("divisor", other.m3, "m3");
  }

  /**
   * The mass of this volume at a density.
   *
   * @param other the density
   * @return the mass
   */
  public Mass times(Density other) {
    return Mass.kg(m3 * other.kgPerM3());
  }

  @Override
  public int compareTo(Volume other) {
    return Double.compare(m3, other.m3);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(m3) >= 1e-3) {
      return Text.number(litres()) + " l";
    }
    if (Math.abs(m3) >= 1e-7) {
      return Text.number(cm3()) + " cm3";
    }
    return Text.number(mm3()) + " mm3";
  }
}
