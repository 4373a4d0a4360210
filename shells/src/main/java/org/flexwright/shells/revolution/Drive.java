package org.flexwright.shells.revolution;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;

/**
 * One leg of a shell's journey: what is made to grow, from where the leg before left it, and to
 * which value.
 *
 * <p>Signs: travel and force push the last end towards the first; negative ones pull. Pressure is
 * inside over outside. Whatever is not driven stays as the leg before left it: the last end at its
 * travel if a travel led there (at the start: at rest), under its force if a force did.
 *
 * <p>JShell: {@code Drive.travel(mm(8)).steps(8)}
 *
 * @param what what grows
 * @param target its value at the end of the leg, in SI units
 * @param steps the steps asked for, at least 1; more are taken where needed
 */
public record Drive(What what, double target, int steps) {

  private static final int USUAL = 10;

  /** What a leg makes grow. */
  public enum What {
    /** Travel of the last end towards the first; its force follows. */
    TRAVEL,
    /** Dead force on the last end towards the first; its travel follows. */
    FORCE,
    /** Pressure inside. */
    PRESSURE,
    /** Volume enclosed, beyond that at rest; the pressure follows and may fall. */
    VOLUME
  }

  /**
   * Refuses a leg that leads nowhere.
   *
   * @param what what grows
   * @param target its value at the end of the leg, in SI units
   * @param steps the steps asked for, at least 1
   */
  public Drive {
    Require.finite("target of a drive", target, "");
    Require.atLeast("steps of a drive", steps, 1);
  }

  /**
   * To a travel of the last end.
   *
   * @param of towards the first end; negative pulls
   * @return the leg
   */
  public static Drive travel(Length of) {
    return new Drive(What.TRAVEL, of.m(), USUAL);
  }

  /**
   * To a force on the last end.
   *
   * @param of towards the first end; negative pulls
   * @return the leg
   */
  public static Drive force(Force of) {
    return new Drive(What.FORCE, of.newtons(), USUAL);
  }

  /**
   * To a pressure inside, the last end held where it is or under the force it bears.
   *
   * @param of inside over outside
   * @return the leg
   */
  public static Drive pressure(Pressure of) {
    return new Drive(What.PRESSURE, of.pa(), USUAL);
  }

  /**
   * To a volume taken in; passes the limit points of the pressure.
   *
   * @param more beyond that at rest
   * @return the leg
   */
  public static Drive volume(Volume more) {
    return new Drive(What.VOLUME, more.m3(), USUAL);
  }

  /**
   * This leg in another number of steps.
   *
   * @param count at least 1
   * @return the new leg
   */
  public Drive steps(int count) {
    return new Drive(what, target, count);
  }
}
