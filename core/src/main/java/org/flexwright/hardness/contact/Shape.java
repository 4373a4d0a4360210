package org.flexwright.hardness.contact;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/** Checks that the shapes share. */
final class Shape {

  private Shape() {}

  /** The depth in m, not negative. */
  static double depth(Length depth) {
    return Require.notNegative("depth of the indenter", depth.m(), "m");
  }

  /** The radius of contact in m, not negative. */
  static double contact(Length radius) {
    return Require.notNegative("radius of contact", radius.m(), "m");
  }

  /** A radius of an indenter, above 0 and at most a metre. */
  static void radius(String name, Length radius) {
    Require.positive(name, radius.mm(), "mm");
    Require.between(name, radius.mm(), 0.0, 1000.0, "mm");
  }

  /** A half angle, 1 to 89 degrees. */
  static void halfAngle(Angle angle) {
    // half a unit in the last place may be lost between degrees and radians
    Require.between("half angle of the cone", angle.degrees(), 1.0 - 1e-12, 89.0 + 1e-12, "deg");
  }
}
