package org.flexwright.shells.inflate;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;

/**
 * A round rigid hole that an inflated part grips.
 *
 * <p>Friction of elastomers on hard surfaces: 0.3 to 1 dry, 0.05 to 0.2 wet (common practice;
 * measure). A new bore has no tolerance and the friction 0.4 dry, 0.1 wet.
 *
 * <p>JShell: {@code Bore.of(mm(22)).tolerance(mm(0.2)).friction(0.4, 0.1)}
 *
 * @param diameter nominal diameter, above 0
 * @param tolerance the diameter may be this much larger or smaller, not negative
 * @param friction usual coefficient of friction (dry), above 0
 * @param lowFriction least coefficient of friction (wet), above 0, at most the usual one
 */
public record Bore(Length diameter, Length tolerance, double friction, double lowFriction) {

  /**
   * Refuses a bore that makes no sense.
   *
   * @param diameter nominal diameter, above 0
   * @param tolerance the diameter may be this much larger or smaller, not negative
   * @param friction usual coefficient of friction (dry), above 0
   * @param lowFriction least coefficient of friction (wet), above 0, at most the usual one
   * @throws org.flexwright.InvalidInputException if the diameter or a friction is not above 0, the
   *     tolerance is negative or eats the diameter, or the low friction is above the usual one
   */
  public Bore {
    Require.positive("bore diameter", diameter.m(), "m");
    Require.notNegative("bore tolerance", tolerance.m(), "m");
    Require.that(
        tolerance.m() < diameter.m(),
        "bore tolerance",
        tolerance,
        () -> "below the diameter, " + diameter,
        "");
    Require.positive("friction", friction, "");
    Require.positive("low friction", lowFriction, "");
    Require.that(
        lowFriction <= friction,
        "low friction",
        Text.number(lowFriction),
        () -> "at most the usual friction, " + Text.number(friction),
        "give the usual (dry) value first, then the low (wet) one");
  }

  /**
   * A bore of a diameter, exact, friction 0.4 dry and 0.1 wet.
   *
   * @param diameter the diameter
   * @return the bore
   */
  public static Bore of(Length diameter) {
    return new Bore(diameter, Length.m(0.0), 0.4, 0.1);
  }

  /**
   * This bore with a tolerance to either side.
   *
   * @param of the tolerance of the diameter
   * @return the new bore
   */
  public Bore tolerance(Length of) {
    return new Bore(diameter, of, friction, lowFriction);
  }

  /**
   * This bore with other friction.
   *
   * @param usual usual (dry) coefficient
   * @param low least (wet) coefficient
   * @return the new bore
   */
  public Bore friction(double usual, double low) {
    return new Bore(diameter, tolerance, usual, low);
  }

  /**
   * The smallest this bore may be.
   *
   * @return the diameter
   */
  public Length narrowest() {
    return diameter.minus(tolerance);
  }

  /**
   * The largest this bore may be.
   *
   * @return the diameter
   */
  public Length widest() {
    return diameter.plus(tolerance);
  }

  /** This bore at one exact diameter with the low friction. */
  Bore worst(Length exact) {
    return new Bore(exact, Length.m(0.0), lowFriction, lowFriction);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "bore "
        + diameter
        + " +- "
        + tolerance
        + ", friction "
        + Text.number(friction)
        + " (low "
        + Text.number(lowFriction)
        + ")";
  }
}
