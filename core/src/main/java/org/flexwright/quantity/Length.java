package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A length, held in metres.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param m the value in metres, finite
 */
public record Length(double m) implements Comparable<Length> {

  /**
   * Refuses a value that is not finite.
   *
   * @param m the value in metres, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Length {
    Require.finite("length", m, "m");
  }

  /**
   * A length in metres.
   *
   * @param value the number of metres, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length m(double value) {
    return new Length(value);
  }

  /**
   * A length in millimetres.
   *
   * @param value the number of millimetres, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length mm(double value) {
    return new Length(value / 1e3);
  }

  /**
   * This length in millimetres.
   *
   * @return the number of millimetres
   */
  public double mm() {
    return m * 1e3;
  }

  /**
   * A length in centimetres.
   *
   * @param value the number of centimetres, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length cm(double value) {
    return new Length(value / 1e2);
  }

  /**
   * This length in centimetres.
   *
   * @return the number of centimetres
   */
  public double cm() {
    return m * 1e2;
  }

  /**
   * A length in micrometres.
   *
   * @param value the number of micrometres, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length um(double value) {
    return new Length(value / 1e6);
  }

  /**
   * This length in micrometres.
   *
   * @return the number of micrometres
   */
  public double um() {
    return m * 1e6;
  }

  /**
   * A length in inches.
   *
   * @param value the number of inches, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length inches(double value) {
    return new Length(value * 0.0254);
  }

  /**
   * This length in inches.
   *
   * @return the number of inches
   */
  public double inches() {
    return m / 0.0254;
  }

  /**
   * A length in thousandths of an inch.
   *
   * @param value the number of thousandths of an inch, finite
   * @return the length
   * @throws InvalidInputException if the value is not finite
   */
  public static Length thou(double value) {
    return new Length(value * 2.54e-5);
  }

  /**
   * This length in thousandths of an inch.
   *
   * @return the number of thousandths of an inch
   */
  public double thou() {
    return m / 2.54e-5;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 mm"}. Known units: m, mm, cm, um, in, thou.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the length
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Length parse(String words) {
    Text.NumberAndUnit text = Text.split("length", words, "m, mm, cm, um, in, thou");
    return switch (text.unit()) {
      case "m" -> m(text.value());
      case "mm" -> mm(text.value());
      case "cm" -> cm(text.value());
      case "um", "\u00b5m", "\u03bcm" -> um(text.value());
      case "in" -> inches(text.value());
      case "thou", "mil" -> thou(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another length.
   *
   * @param other what is added
   * @return the sum
   */
  public Length plus(Length other) {
    return new Length(m + other.m);
  }

  /**
   * The difference of this and another length.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Length minus(Length other) {
    return new Length(m - other.m);
  }

  /**
   * This length times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Length times(double factor) {
    return new Length(m * factor);
  }

  /**
   * The ratio of this to another length, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Length other) {
    return m / Require.nonZero("divisor", other.m, "m");
  }

  /**
   * This length times another: an area.
   *
   * @param other the length
   * @return the area
   */
  public Area times(Length other) {
    return Area.m2(m * other.m);
  }

  /**
   * This length times an area: a volume.
   *
   * @param other the area
   * @return the volume
   */
  public Volume times(Area other) {
    return Volume.m3(m * other.m2());
  }

  @Override
  public int compareTo(Length other) {
    return Double.compare(m, other.m);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(m) >= 1.0) {
      return Text.number(m) + " m";
    }
    if (Math.abs(m) >= 1e-4) {
      return Text.number(mm()) + " mm";
    }
    if (um() == 0.0) {
      return "0 mm";
    }
    return Text.number(um()) + " um";
  }
}
