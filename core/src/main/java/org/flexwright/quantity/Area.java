package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * An area, held in square metres.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param m2 the value in square metres, finite
 */
public record Area(double m2) implements Comparable<Area> {

  /**
   * Refuses a value that is not finite.
   *
   * @param m2 the value in square metres, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Area {
    Require.finite("area", m2, "m2");
  }

  /**
   * An area in square metres.
   *
   * @param value the number of square metres, finite
   * @return the area
   * @throws InvalidInputException if the value is not finite
   */
  public static Area m2(double value) {
    return new Area(value);
  }

  /**
   * An area in square millimetres.
   *
   * @param value the number of square millimetres, finite
   * @return the area
   * @throws InvalidInputException if the value is not finite
   */
  public static Area mm2(double value) {
    return new Area(value / 1e6);
  }

  /**
   * This area in square millimetres.
   *
   * @return the number of square millimetres
   */
  public double mm2() {
    return m2 * 1e6;
  }

  /**
   * An area in square centimetres.
   *
   * @param value the number of square centimetres, finite
   * @return the area
   * @throws InvalidInputException if the value is not finite
   */
  public static Area cm2(double value) {
    return new Area(value / 1e4);
  }

  /**
   * This area in square centimetres.
   *
   * @return the number of square centimetres
   */
  public double cm2() {
    return m2 * 1e4;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 mm2"}. Known units: m2, mm2, cm2.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the area
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Area parse(String words) {
    Text.NumberAndUnit text = Text.split("area", words, "m2, mm2, cm2");
    return switch (text.unit()) {
      case "m2" -> m2(text.value());
      case "mm2" -> mm2(text.value());
      case "cm2" -> cm2(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another area.
   *
   * @param other what is added
   * @return the sum
   */
  public Area plus(Area other) {
    return new Area(m2 + other.m2);
  }

  /**
   * The difference of this and another area.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Area minus(Area other) {
    return new Area(m2 - other.m2);
  }

  /**
   * This area times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Area times(double factor) {
    return new Area(m2 * factor);
  }

  /**
   * The ratio of this to another area, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Area other) {
    return m2 / Require.nonZero("divisor", other.m2, "m2");
  }

  /**
   * This area times a length: a volume.
   *
   * @param other the length
   * @return the volume
   */
  public Volume times(Length other) {
    return Volume.m3(m2 * other.m());
  }

  @Override
  public int compareTo(Area other) {
    return Double.compare(m2, other.m2);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(m2) >= 0.1) {
      return Text.number(m2) + " m2";
    }
    return Text.number(mm2()) + " mm2";
  }
}
