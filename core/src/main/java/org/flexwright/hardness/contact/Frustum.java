package org.flexwright.hardness.contact;

import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;

/**
 * A truncated cone: a cone cut off at a flat.
 *
 * <p>d = a cot(alpha) t, F = E / (1 - nu^2) cot(alpha) a^2 (t + sin(t) cos(t)), with cos(t) = b /
 * a.
 *
 * <p>d depth; a radius of contact, at least b; b radius of the flat; alpha angle between axis and
 * flank; F force; E Young's modulus; nu Poisson's ratio. The angle t follows from the depth by
 * Newton steps on t = q cos(t), q = d tan(alpha) / b, which fall from above. A shallow contact is
 * the {@link FlatPunch} of radius b.
 *
 * <p>Source: derived from the integrals of I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47.
 *
 * <pre>{@code
 * var typeA = new Frustum(Length.mm(0.395), Angle.degrees(17.5));
 * typeA.contactRadius(Length.mm(1))      // 0.4925 mm
 * }</pre>
 *
 * @param flatRadius the radius of the flat, above 0 and at most 1 m
 * @param halfAngle the angle between axis and flank, 1 to 89 degrees
 */
public record Frustum(Length flatRadius, Angle halfAngle) implements Indenter {

  private static final int STEPS = 60;
  private static final double ROUND_OFF = 1e-16;

  /**
   * Refuses a shape that makes no sense.
   *
   * @param flatRadius the radius of the flat, above 0 and at most 1 m
   * @param halfAngle the angle between axis and flank, 1 to 89 degrees
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds
   */
  public Frustum {
    Shape.radius("radius of the flat", flatRadius);
    Shape.halfAngle(halfAngle);
  }

  /** The root of t = q cos(t): the left side less the right one is convex and rising. */
  private static double turn(double q) {
    double t = Math.min(q, 0.5 * Math.PI);
    for (int k = 0; k < STEPS; k++) {
      double step = (t - q * Math.cos(t)) / (1.0 + q * Math.sin(t));
      if (!(step > ROUND_OFF * t)) {
        break;
      }
      t -= step;
    }
    return t;
  }

  private double steepness(Length depth) {
    return Shape.depth(depth) * Math.tan(halfAngle.rad()) / flatRadius.m();
  }

  @Override
  public Length contactRadius(Length depth) {
    double q = steepness(depth);
    return q == 0.0 ? flatRadius : Length.m(flatRadius.m() * Math.max(1.0, q / turn(q)));
  }

  @Override
  public Length depthAt(Length contactRadius) {
    double a = Shape.contact(contactRadius);
    double b = flatRadius.m();
    return Length.m(a <= b ? 0.0 : a * Math.acos(b / a) / Math.tan(halfAngle.rad()));
  }

  @Override
  public Area forceArea(Length depth) {
    double q = steepness(depth);
    if (q == 0.0) {
      return Area.m2(0.0);
    }
    double t = turn(q);
    double a = flatRadius.m() * q / t;
    double sum = t + Math.sin(t) * Math.cos(t);
    return Area.m2(0.5 * a * a * sum / Math.tan(halfAngle.rad()));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "truncated cone of half angle " + halfAngle + ", flat of radius " + flatRadius;
  }
}
