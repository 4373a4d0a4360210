package org.flexwright.quantity;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A moment or torque, held in newton metres.
 *
 * <p>Immutable and thread-safe. The value is always finite; anything else is refused when the value
 * is made. Factory and accessor share the name of the unit.
 *
 * @param newtonMetres the value in newton metres, finite
 */
public record Moment(double newtonMetres) implements Comparable<Moment> {

  /**
   * Refuses a value that is not finite.
   *
   * @param newtonMetres the value in newton metres, finite
   * @throws InvalidInputException if the value is NaN or infinite
   */
  public Moment {
    Require.finite("moment", newtonMetres, "N m");
  }

  /**
   * A moment in newton metres.
   *
   * @param value the number of newton metres, finite
   * @return the moment
   * @throws InvalidInputException if the value is not finite
   */
  public static Moment newtonMetres(double value) {
    return new Moment(value);
  }

  /**
   * A moment in newton millimetres.
   *
   * @param value the number of newton millimetres, finite
   * @return the moment
   * @throws InvalidInputException if the value is not finite
   */
  public static Moment newtonMillimetres(double value) {
    return new Moment(value / 1e3);
  }

  /**
   * This moment in newton millimetres.
   *
   * @return the number of newton millimetres
   */
  public double newtonMillimetres() {
    return newtonMetres * 1e3;
  }

  /**
   * Reads a value with its unit, such as {@code "1.2 N mm"}. Known units: N m, N mm.
   *
   * @param words a number and a unit, the decimal sign being a point
   * @return the moment
   * @throws InvalidInputException if the number or the unit cannot be read
   */
  public static Moment parse(String words) {
    Text.NumberAndUnit text = Text.split("moment", words, "N m, N mm");
    return switch (text.unit()) {
      case "N m" -> newtonMetres(text.value());
      case "N mm" -> newtonMillimetres(text.value());
      default -> throw text.unknownUnit();
    };
  }

  /**
   * The sum of this and another moment.
   *
   * @param other what is added
   * @return the sum
   */
  public Moment plus(Moment other) {
    return new Moment(newtonMetres + other.newtonMetres);
  }

  /**
   * The difference of this and another moment.
   *
   * @param other what is taken away
   * @return the difference
   */
  public Moment minus(Moment other) {
    return new Moment(newtonMetres - other.newtonMetres);
  }

  /**
   * This moment times a bare number.
   *
   * @param factor the number, finite
   * @return the product
   */
  public Moment times(double factor) {
    return new Moment(newtonMetres * factor);
  }

  /**
   * The ratio of this to another moment, a bare number.
   *
   * @param other the divisor, not zero
   * @return the ratio
   * @throws InvalidInputException if the divisor is zero
   */
  public double ratioTo(Moment other) {
    return newtonMetres / Require.nonZero("divisor", other.newtonMetres, "N m");
  }

  @Override
  public int compareTo(Moment other) {
    return Double.compare(newtonMetres, other.newtonMetres);
  }

  /** One readable line with the unit, ASCII, the same in every locale. */
  @Override
  public String toString() {
    if (Math.abs(newtonMetres) >= 1.0) {
      return Text.number(newtonMetres) + " N m";
    }
    return Text.number(newtonMillimetres()) + " N mm";
  }
}
