package org.flexwright.shells.tube;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;

/** What all straight tubes given by outside, length and wall share. */
final class TubeWall {

  private TubeWall() {}

  static void require(Length outside, Length length, Length wall) {
    Require.positive("outside", outside.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "a solid round section is another part");
  }

  /** Mean radius of a wall within an outside, both in metres. */
  static double mean(Length outside, double wall) {
    return 0.5 * (outside.m() - wall);
  }

  static Volume volume(Length outside, Length length, Length wall) {
    double mean = mean(outside, wall.m());
    return Volume.m3(2.0 * Math.PI * mean * wall.m() * length.m());
  }
}
