package org.flexwright.shells.revolution;

/**
 * The side of a wall that a meridian draws; the wall grows from it and it stays when the wall
 * changes.
 *
 * <p>The inner face lies to the left of the run. On a meridian that runs up, or from the axis at
 * the bottom outwards and up, it is the face towards the axis and towards what is enclosed.
 */
public enum DrawnFace {
  /** To the right of the run: away from the axis on a meridian that runs up. */
  OUTER(0.0),
  /** Half a wall on either side of the line. */
  MIDDLE(-0.5),
  /** To the left of the run: towards the axis on a meridian that runs up. */
  INNER(-1.0);

  private final double right;

  DrawnFace(double right) {
    this.right = right;
  }

  /** Where the right side of the wall is, in walls to the left of the drawn line. */
  double right() {
    return right;
  }

  /** Where the middle of the wall is. */
  double middle() {
    return right + 0.5;
  }

  /** Where the left side of the wall is. */
  double left() {
    return right + 1.0;
  }
}
