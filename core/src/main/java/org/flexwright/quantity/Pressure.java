package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A pressure, stress or modulus, held in pascals.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param pa the value in pascals, finite
 */
public record Pressure(double pa) implements Comparable<Pressure> {

  /**
   * Refuses a value that is not finite.
   *
   * @param pa the value in pascals, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Pressure {
    Require.finite("pressure", pa, "Pa");
  }

  /**
   * A pressure in pascals.
   *
   * @param value the number of pascals, finite
   * @return the pressure
   * @throws InvalidInputException if the value is not finite
   */
  public static Pressure pa(double value) {
    return new Pressure(value);
  }

  /**
   * A pressure in kilopascals.
   *
   * @param value the number of kilopascals, finite
   * @return the pressure
   * @throws InvalidInputException if the value is not finite
   */
  public static Pressure kpa(double value) {
    return new Pressure(value * 1e3);
  }

  /**
   * This pressure in kilopascals.
   *
   * @return the number of kilopascals
   */
  public double kpa() {
    return pa / 1e3;
  }

  /**
   * A pressure in megapascals.
   *
   * @param value the number of megapascals, finite
   * @return the pressure
   * @throws InvalidInputException if the value is not finite
   */
  public static Pressure mpa(double value) {
    return new Pressure(value * 1e6);
  }

  /**
   * This pressure in megapascals.
   *
   * @return the number of megapascals
   */
  public double mpa() {
    return pa / 1e6;
  }

  /**
   * A pressure in bar.
   *
   * @param value the number of bar, finite
   * @return the pressure
   * @throws InvalidInputException if the value is not finite
   */
  public static Pressure bar(double value) {
    return new Pressure(value * 1e5);
  }

  /**
   * This pressure in bar.
   *
   * @return the number of bar
   */
  public double bar() {
    return pa / 1e5;
  }

  /**
   * A pressure in pounds-force per square inch.
   *
   * @param value the number of pounds-force per square inch, finite
   * @return the pressure
   * @throws InvalidInputException if the value is not finite
   */
  public static Pressure psi(double value) {
    return new Pressure(value * 6894.757293168361);
  }

  /**
   * This pressure in pounds-force per square inch.
   *
   * @return the number of pounds-force per square inch
   */
  public double psi() {
    return pa / 6894.757293168361;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 kPa"}. Known units: Pa, kPa, MPa, bar, psi.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the pressure
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Pressure parse(String words) {
    Text.NumberAndUnit text = Text.split("pressure", words, "Pa, kPa, MPa, bar, psi");
    return switch (text.unit()) {
      case "Pa" -> pa(text.value());
      case "kPa" -> kpa(text.value());
      case "MPa", "N/mm2" -> mpa(text.value());
      case "bar" -> bar(text.value());
      case "psi" -> psi(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another pressure.
   *
   * @param other what is added
   * @return the sum
   */
  public Pressure plus(Pressure other) {
    return new Pressure(pa + other.pa);
  }

  /**
   * The difference of this and another pressure.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Pressure minus(Pressure other) {
    return new Pressure(pa - other.pa);
  }

  /**
   * This pressure times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Pressure times(double factor) {
    return new Pressure(pa * factor);
  }

  /**
   * The ratio of this to another pressure, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Pressure other) {
    return pa / Require.nonZero("divisor", other.pa, "Pa");
  }

  /**
   * The force of this pressure on an area.
   *
   * @param other the area
   * @return the force
   */
  public Force times(Area other) {
    return Force.newtons(pa * other.m2());
  }

  @Override
  public int compareTo(Pressure other) {
    return Double.compare(pa, other.pa);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(pa) >= 1e6) {
      return Text.number(mpa()) + " MPa";
    }
    if (Math.abs(pa) >= 100.0) {
      return Text.number(kpa()) + " kPa";
    }
    return Text.number(pa) + " Pa";
  }
}
