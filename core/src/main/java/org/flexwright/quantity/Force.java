package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A force, held in newtons.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param newtons the value in newtons, finite
 */
public record Force(double newtons) implements Comparable<Force> {

  /**
   * Refuses a value that is not finite.
   *
   * @param newtons the value in newtons, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Force {
    Require.finite("force", newtons, "N");
  }

  /**
   * A force in newtons.
   *
   * @param value the number of newtons, finite
   * @return the force
   * @throws InvalidInputException if the value is not finite
   */
  public static Force newtons(double value) {
    return new Force(value);
  }

  /**
   * A force in millinewtons.
   *
   * @param value the number of millinewtons, finite
   * @return the force
   * @throws InvalidInputException if the value is not finite
   */
  public static Force millinewtons(double value) {
    return new Force(value / 1e3);
  }

  /**
   * This force in millinewtons.
   *
   * @return the number of millinewtons
   */
  public double millinewtons() {
    return newtons * 1e3;
  }

  /**
   * A force in kilonewtons.
   *
   * @param value the number of kilonewtons, finite
   * @return the force
   * @throws InvalidInputException if the value is not finite
   */
  public static Force kilonewtons(double value) {
    return new Force(value * 1e3);
  }

  /**
   * This force in kilonewtons.
   *
   * @return the number of kilonewtons
   */
  public double kilonewtons() {
    return newtons / 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 mN"}. Known units: N, mN, kN.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the force
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Force parse(String words) {
    Text.NumberAndUnit text = Text.split("force", words, "N, mN, kN");
    return switch (text.unit()) {
      case "N" -> newtons(text.value());
      case "mN" -> millinewtons(text.value());
      case "kN" -> kilonewtons(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another force.
   *
   * @param other what is added
   * @return the sum
   */
  public Force plus(Force other) {
    return new Force(newtons + other.newtons);
  }

  /**
   * The difference of this and another force.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Force minus(Force other) {
    return new Force(newtons - other.newtons);
  }

  /**
   * This force times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Force times(double factor) {
    return new Force(newtons * factor);
  }

  /**
   * The ratio of this to another force, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Force other) {
    return newtons / Require.nonZero("divisor", other.newtons, "N");
  }

  /**
   * This force per travel: a stiffness.
   *
   * @param other the length
   * @return the stiffness
   */
  public Stiffness per(Length other) {
    return Stiffness.newtonsPerM(newtons / Require.positive("travel", other.m(), "m"));
  }

  /**
   * This force per area: a stress.
   *
   * @param other the area
   * @return the pressure
   */
  public Pressure per(Area other) {
    return Pressure.pa(newtons / Require.positive("area", other.m2(), "m2"));
  }

  @Override
  public int compareTo(Force other) {
    return Double.compare(newtons, other.newtons);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(newtons) >= 1e4) {
      return Text.number(kilonewtons()) + " kN";
    }
    if (Math.abs(newtons) >= 0.1) {
      return Text.number(newtons) + " N";
    }
    return Text.number(millinewtons()) + " mN";
  }
}
