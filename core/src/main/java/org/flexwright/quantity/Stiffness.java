package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A stiffness (force per travel), held in newtons per metre.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param newtonsPerM the value in newtons per metre, finite
 */
public record Stiffness(double newtonsPerM) implements Comparable<Stiffness> {

  /**
   * Refuses a value that is not finite.
   *
   * @param newtonsPerM the value in newtons per metre, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Stiffness {
    Require.finite("stiffness", newtonsPerM, "N/m");
  }

  /**
   * A stiffness in newtons per millimetre.
   *
   * @param value the number of newtons per millimetre, finite
   * @return the stiffness
   * @throws InvalidInputException if the value is not finite
   */
  public static Stiffness newtonsPerMm(double value) {
    return new Stiffness(value * 1e3);
  }

  /**
   * This stiffness in newtons per millimetre.
   *
   * @return the number of newtons per millimetre
   */
  public double newtonsPerMm() {
    return newtonsPerM / 1e3;
  }

  /**
   * A stiffness in newtons per metre.
   *
   * @param value the number of newtons per metre, finite
   * @return the stiffness
   * @throws InvalidInputException if the value is not finite
   */
  public static Stiffness newtonsPerM(double value) {
    return new Stiffness(value);
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 N/m"}. Known units: N/mm, N/m.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the stiffness
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Stiffness parse(String words) {
    Text.NumberAndUnit text = Text.split("stiffness", words, "N/mm, N/m");
    return switch (text.unit()) {
      case "N/mm" -> newtonsPerMm(text.value());
      case "N/m" -> newtonsPerM(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another stiffness.
   *
   * @param other what is added
   * @return the sum
   */
  public Stiffness plus(Stiffness other) {
    return new Stiffness(newtonsPerM + other.newtonsPerM);
  }

  /**
   * The difference of this and another stiffness.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Stiffness minus(Stiffness other) {
    return new Stiffness(newtonsPerM - other.newtonsPerM);
  }

  /**
   * This stiffness times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Stiffness times(double factor) {
    return new Stiffness(newtonsPerM * factor);
  }

  /**
   * The ratio of this to another stiffness, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Stiffness other) {
    return newtonsPerM / Require.nonZero("divisor", other.newtonsPerM, "N/m");
  }

  /**
   * The force of this stiffness at a travel.
   *
   * @param other the length
   * @return the force
   */
  public Force times(Length other) {
    return Force.newtons(newtonsPerM * other.m());
  }

  @Override
  public int compareTo(Stiffness other) {
    return Double.compare(newtonsPerM, other.newtonsPerM);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(newtonsPerM) >= 10.0) {
      return Text.number(newtonsPerMm()) + " N/mm";
    }
    return Text.number(newtonsPerM) + " N/m";
  }
}
