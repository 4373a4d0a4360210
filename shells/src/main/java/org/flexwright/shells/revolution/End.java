package org.flexwright.shells.revolution;

/**
 * How an end of a meridian is held. Axially the first end stays, the last one is moved, loaded or
 * left alone by a {@link Drive}; an end on the axis keeps its radius and turn by symmetry, whatever
 * is said here, and an end in a rigid stretch is built in there.
 *
 * <p>In words of practice:
 *
 * <ul>
 *   <li>printed onto a flange or glued to a solid: BUILT_IN;
 *   <li>clamped or simply supported as in the formulas of plates: CLAMPED, PINNED;
 *   <li>a plane of symmetry, or a slide without friction across the axis: GUIDED;
 *   <li>closed by a rigid lid that is free to move: any of them, with a first leg {@code
 *       Drive.force(newtons(0))}. Flat lids are taken as closed, and the pressure p on a lid pushes
 *       the last end. To draw the lid, make it a stretch up to the axis and {@link
 *       Meridian#rigid(String) rigid};
 *   <li>closed by a lid that is held: the same without that leg;
 *   <li>an end that slides over a fixed plug of radius a, where the plug bears the pressure: a
 *       first leg {@code Drive.force} of p pi a^2, which takes the thrust on the lid off the wall.
 * </ul>
 */
public enum End {
  /**
   * Built into a rigid solid, as a wall printed onto a thick flange: no growth, no turn, and no
   * thinning at the edge either. The wall gives way as if clamped 0.0508 of its thickness inside
   * the edge. Against continuum mechanics, wall up to a tenth of the radius: sleeves within 1.1 %,
   * domes 1.5 % until they snap (snap pressure 0.2 %), discs 0.1 % in bending and 1.7 % where they
   * mainly stretch, 3 % at a boss of a radius of three walls.
   */
  BUILT_IN(true, true),
  /**
   * The clamp of shell theory: no growth, no turn, but the wall may thin right at the edge. For
   * comparison with the formulas of plates and shells.
   */
  CLAMPED(true, true),
  /** Held to its radius, free to turn. */
  PINNED(true, false),
  /** Free to grow, no turn: a plane of symmetry, or a frictionless guide. */
  GUIDED(false, true),
  /**
   * Free to grow and to turn. Among obstacles a first end on the axis is then free along it, too:
   * the pole of a dome that a {@link Drive#travel} of its rim presses onto a ball or a plate.
   */
  FREE(false, false);

  private final boolean radius;
  private final boolean turn;

  End(boolean radius, boolean turn) {
    this.radius = radius;
    this.turn = turn;
  }

  boolean holdsRadius() {
    return radius;
  }

  boolean holdsTurn() {
    return turn;
  }
}
