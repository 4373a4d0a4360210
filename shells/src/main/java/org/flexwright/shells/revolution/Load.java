package org.flexwright.shells.revolution;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;

/**
 * What a shell bears besides its {@link Drive}: put on before the first leg, with the last end
 * held, and left on.
 *
 * <p>Signs: radial loads push away from the axis, axial ones upwards (larger height). Both are
 * dead: they keep size and direction. JShell: {@code shell.under(Load.fill(Density.kgPerM3(1000),
 * mm(40)))}
 */
public sealed interface Load {

  /**
   * A force spread evenly around the axis, where the piece of a name starts.
   *
   * <p>Formula: F = 2 pi R times the load per length, R the radius at rest of the middle of the
   * wall there.
   *
   * @param piece name of the piece of the meridian, the first of that name
   * @param radial force all around, away from the axis
   * @param axial force all around, upwards
   */
  record Ring(String piece, Force radial, Force axial) implements Load {

    /**
     * Refuses a force that is not a number.
     *
     * @param piece name of the piece of the meridian
     * @param radial force all around, away from the axis
     * @param axial force all around, upwards
     */
    public Ring {
      Require.finite("radial ring load", radial.newtons(), "N");
      Require.finite("axial ring load", axial.newtons(), "N");
    }
  }

  /**
   * The weight of a liquid inside, its level held: what the wall gives way is topped up.
   *
   * <p>Formula: pressure rho g (level - z) below the level, g = 9.80665 m/s2, on top of the driven
   * pressure, on the mid-surface; the wetted face lies half a wall further in, which counts t/2
   * over the depth. Range: a level that stays, an axis that stands upright.
   *
   * @param liquid its density
   * @param level height of its surface
   */
  record Fill(Density liquid, Length level) implements Load {

    /**
     * Refuses a liquid without density.
     *
     * @param liquid its density
     * @param level height of its surface
     */
    public Fill {
      Require.positive("density of a liquid", liquid.kgPerM3(), "kg/m3");
      Require.finite("level of a liquid", level.m(), "m");
    }
  }

  /**
   * A force spread evenly around the axis.
   *
   * @param piece name of the piece at whose start it acts
   * @param radial force all around, away from the axis
   * @param axial force all around, upwards
   * @return the load
   */
  static Load ring(String piece, Force radial, Force axial) {
    return new Ring(piece, radial, axial);
  }

  /**
   * A liquid inside up to a level.
   *
   * @param liquid its density
   * @param level height of its surface
   * @return the load
   */
  static Load fill(Density liquid, Length level) {
    return new Fill(liquid, level);
  }
}
