package org.flexwright.response;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;

/** What a part is asked to do, from rest to an exact end state. */
public sealed interface LoadCase {

  /**
   * Push or pull the loaded face.
   *
   * @param travel the travel at the end, above 0
   */
  record ToTravel(Length travel) implements LoadCase {

    /**
     * Refuses a travel that is not above 0.
     *
     * @param travel the travel at the end, above 0
     */
    public ToTravel {
      Require.positive("travel", travel.m(), "m");
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "to a travel of " + travel;
    }
  }

  /**
   * Inflate until the part holds an axial force by friction in its bore.
   *
   * @param force the force to hold, above 0
   */
  record ToHold(Force force) implements LoadCase {

    /**
     * Refuses a force that is not above 0.
     *
     * @param force the force to hold, above 0
     */
    public ToHold {
      Require.positive("holding force", force.newtons(), "N");
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "until it holds " + force;
    }
  }

  /**
   * Turn the loaded end.
   *
   * @param angle the angle at the end, above 0
   */
  record ToAngle(Angle angle) implements LoadCase {

    /**
     * Refuses an angle that is not above 0.
     *
     * @param angle the angle at the end, above 0
     */
    public ToAngle {
      Require.positive("angle", angle.rad(), "rad");
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "to an angle of " + angle;
    }
  }

  /** Load until the part gives way: buckling, collapse, snap-through or limit pressure. */
  record ToLimit() implements LoadCase {

    /** One readable line. */
    @Override
    public String toString() {
      return "to its limit load";
    }
  }

  /**
   * Push or pull the loaded face.
   *
   * @param travel the travel at the end
   * @return the load case
   */
  static LoadCase toTravel(Length travel) {
    return new ToTravel(travel);
  }

  /**
   * Inflate until a force is held.
   *
   * @param force the force to hold
   * @return the load case
   */
  static LoadCase toHold(Force force) {
    return new ToHold(force);
  }

  /**
   * Turn the loaded end.
   *
   * @param angle the angle at the end
   * @return the load case
   */
  static LoadCase toAngle(Angle angle) {
    return new ToAngle(angle);
  }

  /**
   * Load until the part gives way.
   *
   * @return the load case
   */
  static LoadCase toLimit() {
    return new ToLimit();
  }
}
