package org.flexwright.shells.revolution;

/**
 * How an end of a meridian is held. Axially the first end stays, the last one is moved, loaded or
 * left alone by a {@link Drive}; an end on the axis is held by symmetry, whatever is said here.
 */
public enum End {
  /** Built into something rigid: no growth, no turn. */
  CLAMPED(true, true),
  /** Held to its radius, free to turn. */
  PINNED(true, false),
  /** Free to grow, no turn: a plane of symmetry, or a frictionless guide. */
  GUIDED(false, true),
  /** Free to grow and to turn. */
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
