package org.flexwright.shells.revolution;

/**
 * A point of a curve in the meridian plane.
 *
 * @param r distance from the axis, m
 * @param z height, m
 * @param angle of the tangent from the outward radial direction, continuous along a curve
 * @param curvature slope of the angle by arc length, positive to the left, 1/m
 */
record Spot(double r, double z, double angle, double curvature) {

  /** The point moved straight along the tangent. */
  Spot ahead(double by) {
    return new Spot(r + by * Math.cos(angle), z + by * Math.sin(angle), angle, 0.0);
  }

  double distance(double toR, double toZ) {
    return Math.hypot(toR - r, toZ - z);
  }

  /** The angle, a whole number of turns off, that is nearest to another. */
  static double near(double angle, double to) {
    return to + Math.IEEEremainder(angle - to, 2.0 * Math.PI);
  }
}
