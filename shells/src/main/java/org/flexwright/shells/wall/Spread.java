package org.flexwright.shells.wall;

/**
 * How a small patch of load spreads through a wall, for the bending strain under it: Westergaard's
 * equivalent radius sqrt(1.6 c^2 + t^2) - 0.675 t for patches below 1.724 t, where it meets c.
 */
final class Spread {

  private Spread() {}

  static double radius(double patch, double wall) {
    return patch < 1.724 * wall
        ? Math.sqrt(1.6 * patch * patch + wall * wall) - 0.675 * wall
        : patch;
  }
}
