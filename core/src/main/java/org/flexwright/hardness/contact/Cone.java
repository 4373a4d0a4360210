package org.flexwright.hardness.contact;

import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;

/**
 * A sharp cone.
 *
 * <p>F = (2 / pi) E / (1 - nu^2) tan(alpha) d^2, a = (2 / pi) d tan(alpha).
 *
 * <p>F force; d depth; a radius of contact; alpha angle between axis and flank; E Young's modulus;
 * nu Poisson's ratio.
 *
 * <p>Source: I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47, from memory.
 *
 * <pre>{@code
 * new Cone(Angle.degrees(15)).forceArea(Length.mm(1))      // 0.08529 mm2
 * }</pre>
 *
 * @param halfAngle the angle between axis and flank, 1 to 89 degrees
 */
public record Cone(Angle halfAngle) implements Indenter {

  /**
   * Refuses an angle that makes no sense.
   *
   * @param halfAngle the angle between axis and flank, 1 to 89 degrees
   * @throws org.flexwright.InvalidInputException unless the angle is 1 to 89 degrees
   */
  public Cone {
    Shape.halfAngle(halfAngle);
  }

  private double tangent() {
    return Math.tan(halfAngle.rad());
  }

  @Override
  public Length contactRadius(Length depth) {
    return Length.m(2.0 / Math.PI * Shape.depth(depth) * tangent());
  }

  @Override
  public Length depthAt(Length contactRadius) {
    return Length.m(0.5 * Math.PI * Shape.contact(contactRadius) / tangent());
  }

  @Override
  public Area forceArea(Length depth) {
    double d = Shape.depth(depth);
    return Area.m2(tangent() * d * d / Math.PI);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "cone of half angle " + halfAngle;
  }
}
