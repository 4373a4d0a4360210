package org.flexwright.internal;

import java.util.function.Supplier;
import org.flexwright.InvalidInputException;

/** Input checks that fail at once with one clear sentence. */
public final class Require {

  private Require() {}

  /**
   * A finite number.
   *
   * @param name the name of the input
   * @param value its value
   * @param unit its unit
   * @return the value
   */
  public static double finite(String name, double value, String unit) {
    if (!Double.isFinite(value)) {
      throw refuse(name, value, unit, "a finite number");
    }
    return value;
  }

  /**
   * A finite number above zero.
   *
   * @param name the name of the input
   * @param value its value
   * @param unit its unit
   * @return the value
   */
  public static double positive(String name, double value, String unit) {
    if (!(value > 0.0) || Double.isInfinite(value)) {
      throw refuse(name, value, unit, "finite and above 0");
    }
    return value;
  }

  /**
   * A finite number, zero or above.
   *
   * @param name the name of the input
   * @param value its value
   * @param unit its unit
   * @return the value
   */
  public static double notNegative(String name, double value, String unit) {
    if (!(value >= 0.0) || Double.isInfinite(value)) {
      throw refuse(name, value, unit, "finite and not below 0");
    }
    return value;
  }

  /**
   * A finite number other than zero.
   *
   * @param name the name of the input
   * @param value its value
   * @param unit its unit
   * @return the value
   */
  public static double nonZero(String name, double value, String unit) {
    if (value == 0.0 || !Double.isFinite(value)) {
      throw refuse(name, value, unit, "finite and not 0");
    }
    return value;
  }

  /**
   * A number inside a closed interval.
   *
   * @param name the name of the input
   * @param value its value
   * @param low the least allowed value
   * @param high the greatest allowed value
   * @param unit its unit
   * @return the value
   */
  public static double between(String name, double value, double low, double high, String unit) {
    if (!(value >= low && value <= high)) {
      throw refuse(
          name, value, unit, Text.number(low) + " to " + Text.number(high) + Text.unit(unit));
    }
    return value;
  }

  /**
   * A whole number of at least a given size.
   *
   * @param name the name of the input
   * @param value its value
   * @param least the least allowed value
   * @return the value
   */
  public static int atLeast(String name, int value, int least) {
    if (value < least) {
      throw new InvalidInputException(name, Integer.toString(value), "at least " + least, "");
    }
    return value;
  }

  /**
   * States a condition between inputs.
   *
   * @param holds whether it holds
   * @param name the name of the input to blame
   * @param value its value with unit
   * @param allowed what is allowed
   * @param advice what to do
   */
  public static void that(boolean holds, String name, Object value, String allowed, String advice) {
    if (!holds) {
      throw new InvalidInputException(name, show(value), allowed, advice);
    }
  }

  /**
   * States a condition between inputs, with words made only when it does not hold.
   *
   * @param holds whether it holds
   * @param name the name of the input to blame
   * @param value its value with unit
   * @param allowed what is allowed
   * @param advice what to do
   */
  public static void that(
      boolean holds, String name, Object value, Supplier<String> allowed, String advice) {
    if (!holds) {
      throw new InvalidInputException(name, show(value), allowed.get(), advice);
    }
  }

  private static String show(Object value) {
    if (value instanceof Double number) {
      return Double.isFinite(number) ? Text.number(number) : number.toString();
    }
    return value.toString();
  }

  private static InvalidInputException refuse(
      String name, double value, String unit, String allowed) {
    return new InvalidInputException(name, show(value) + Text.unit(unit), allowed, "");
  }
}
