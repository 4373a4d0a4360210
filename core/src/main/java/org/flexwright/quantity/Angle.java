package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A plane angle, held in radians.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param rad the value in radians, finite
 */
public record Angle(double rad) implements Comparable<Angle> {

  /**
   * Refuses a value that is not finite.
   *
   * @param rad the value in radians, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Angle {
    Require.finite("angle", rad, "rad");
  }

  /**
   * A angle in radians.
   *
   * @param value the number of radians, finite
   * @return the angle
   * @throws InvalidInputException if the value is not finite
   */
  public static Angle rad(double value) {
    return new Angle(value);
  }

  /**
   * A angle in degrees.
   *
   * @param value the number of degrees, finite
   * @return the angle
   * @throws InvalidInputException if the value is not finite
   */
  public static Angle degrees(double value) {
    return new Angle(value * (Math.PI / 180.0));
  }

  /**
   * This angle in degrees.
   *
   * @return the number of degrees
   */
  public double degrees() {
    return rad / (Math.PI / 180.0);
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 deg"}. Known units: rad, deg.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the angle
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Angle parse(String words) {
    Text.NumberAndUnit text = Text.split("angle", words, "rad, deg");
    return switch (text.unit()) {
      case "rad" -> rad(text.value());
      case "deg" -> degrees(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another angle.
   *
   * @param other what is added
   * @return the sum
   */
  public Angle plus(Angle other) {
    return new Angle(rad + other.rad);
  }

  /**
   * The difference of this and another angle.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Angle minus(Angle other) {
    return new Angle(rad - other.rad);
  }

  /**
   * This angle times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Angle times(double factor) {
    return new Angle(rad * factor);
  }

  /**
   * The ratio of this to another angle, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Angle other) {
    return rad / Require.nonZero("divisor", other.rad, "rad");
  }

  @Override
  public int compareTo(Angle other) {
    return Double.compare(rad, other.rad);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    return Text.number(degrees()) + " deg";
  }
}
