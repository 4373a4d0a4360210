package org.flexwright.hardness.contact;

import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;

/**
 * A cylinder with a flat end.
 *
 * <p>F = 2 R E / (1 - nu^2) d.
 *
 * <p>F force; R radius of the cylinder; d depth; E Young's modulus; nu Poisson's ratio.
 *
 * <p>Source: J. Boussinesq 1885, in K. L. Johnson, Contact Mechanics (1985), from memory.
 *
 * <pre>{@code
 * new FlatPunch(Length.mm(0.395)).forceArea(Length.mm(1))      // 0.395 mm2
 * }</pre>
 *
 * @param radius the radius of the flat end, above 0 and at most 1 m
 */
public record FlatPunch(Length radius) implements Indenter {

  /**
   * Refuses a radius that makes no sense.
   *
   * @param radius the radius of the flat end, above 0 and at most 1 m
   * @throws org.flexwright.InvalidInputException unless the radius is above 0 and at most 1 m
   */
  public FlatPunch {
    Shape.radius("radius of the punch", radius);
  }

  @Override
  public Length contactRadius(Length depth) {
    Shape.depth(depth);
    return radius;
  }

  /**
   * {@inheritDoc}
   *
   * <p>The flat end never touches more than its own radius: the depth is nothing for any radius.
   */
  @Override
  public Length depthAt(Length contactRadius) {
    Shape.contact(contactRadius);
    return Length.m(0.0);
  }

  @Override
  public Area forceArea(Length depth) {
    return Area.m2(radius.m() * Shape.depth(depth));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "flat punch of radius " + radius;
  }
}
