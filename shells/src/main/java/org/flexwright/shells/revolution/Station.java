package org.flexwright.shells.revolution;

import org.flexwright.internal.Text;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * The wall of a deformed shell at the middle of one element: where it is, how its faces are
 * stretched and stressed, and the forces and moments in it.
 *
 * <p>Formula: N = (W_l cos s + W_g sin s)/r along and c (W_g cos s - W_l sin s)/r across the line
 * of the meridian, W_r/l around the axis; M = W_k/r and W_q/l. Symbols: W energy per length at rest
 * and radian by the strains of the mid-surface, l stretch and s angle of shear of the line, c =
 * sqrt(5/6), r radius. Stress: stretch times slope of the law, less that across the wall, plus what
 * acts on the face.
 *
 * <p>Signs: tension is positive; a positive moment stretches the outer face. The shear force acts
 * on the part before the cut along the left normal of the meridian. So a cut bears the axial force
 * 2 pi r (N sin a + Q cos a), a the angle. Forces and moments are per deformed length of the
 * mid-surface, where the pressure is taken to act: a tube under pressure p has N = p r around.
 *
 * <p>Range: that of the shell. Stress in the middle takes the pressure across the wall for the mean
 * of both faces, which for a tube whose wall is a fifth of its radius misses by a twentieth of the
 * pressure. Caveats: those of the path. Source: virtual work of the kinematics of this package.
 *
 * <p>JShell: {@code path.last().profile().get(0).outer().meridianStress()}
 *
 * @param element counted from the first end, as in {@link ShellState.Peak}
 * @param piece of the meridian, counted from 1
 * @param arc deformed length of the mid-surface from the first end
 * @param radius of the mid-surface
 * @param height of the mid-surface
 * @param angle of the meridian from the outward radial direction
 * @param wall thickness as deformed
 * @param inner the face to the left of the meridian, where pressure inside acts
 * @param middle the mid-surface
 * @param outer the face to the right
 * @param meridianForce along the meridian, newtons per metre
 * @param hoopForce around the axis, newtons per metre
 * @param shearForce across the wall, newtons per metre
 * @param meridianMoment bending along the meridian, newton metres per metre
 * @param hoopMoment bending around the axis, newton metres per metre
 */
public record Station(
    int element,
    int piece,
    Length arc,
    Length radius,
    Length height,
    Angle angle,
    Length wall,
    Face inner,
    Face middle,
    Face outer,
    double meridianForce,
    double hoopForce,
    double shearForce,
    double meridianMoment,
    double hoopMoment) {

  /**
   * One layer of the wall.
   *
   * @param meridianStretch along the meridian
   * @param hoopStretch around the axis
   * @param meridianStress true stress along the meridian
   * @param hoopStress true stress around the axis
   * @param contact pressure of obstacles, zero in the middle
   */
  public record Face(
      double meridianStretch,
      double hoopStretch,
      Pressure meridianStress,
      Pressure hoopStress,
      Pressure contact) {

    /** One readable line. */
    @Override
    public String toString() {
      return "stretch "
          + Text.number(meridianStretch)
          + " x "
          + Text.number(hoopStretch)
          + ", stress "
          + meridianStress
          + " x "
          + hoopStress;
    }
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "element " + element + " at " + radius + ", " + height + ": " + middle;
  }
}
