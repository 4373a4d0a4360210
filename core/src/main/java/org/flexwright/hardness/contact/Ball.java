package org.flexwright.hardness.contact;

import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;

/**
 * A ball, taken as a paraboloid.
 *
 * <p>F = (4 / 3) E / (1 - nu^2) R^(1/2) d^(3/2), a = (R d)^(1/2).
 *
 * <p>F force; d depth; a radius of contact; R radius of the ball; E Young's modulus; nu Poisson's
 * ratio.
 *
 * <p>Range: contact radius up to half the ball. The exact profile of a sphere takes 0.4 per cent
 * less force at a = 0.2 R, 2.8 at 0.5 R, 6.1 at 0.7 R (computed).
 *
 * <p>Source: H. Hertz 1882, in K. L. Johnson, Contact Mechanics (1985), from memory.
 *
 * <pre>{@code
 * new Ball(Length.mm(1.25)).contactRadius(Length.mm(0.2))      // 0.5 mm
 * }</pre>
 *
 * @param radius the radius of the ball, above 0 and at most 1 m
 */
public record Ball(Length radius) implements Indenter {

  /**
   * Refuses a radius that makes no sense.
   *
   * @param radius the radius of the ball, above 0 and at most 1 m
   * @throws org.flexwright.InvalidInputException unless the radius is above 0 and at most 1 m
   */
  public Ball {
    Shape.radius("radius of the ball", radius);
  }

  @Override
  public Length contactRadius(Length depth) {
    return Length.m(Math.sqrt(radius.m() * Shape.depth(depth)));
  }

  @Override
  public Length depthAt(Length contactRadius) {
    double a = Shape.contact(contactRadius);
    return Length.m(a * a / radius.m());
  }

  @Override
  public Area forceArea(Length depth) {
    double d = Shape.depth(depth);
    return Area.m2(2.0 / 3.0 * d * Math.sqrt(radius.m() * d));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "ball of radius " + radius;
  }
}
