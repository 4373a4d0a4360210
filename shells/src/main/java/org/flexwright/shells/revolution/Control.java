package org.flexwright.shells.revolution;

/** What is made to grow along a path. */
sealed interface Control {

  /** The load factor itself. */
  record Load() implements Control {}

  /**
   * One unknown: a radius, height or turn of a node.
   *
   * @param at which
   */
  record Unknown(int at) implements Control {}

  /** The volume enclosed. */
  record Volume() implements Control {}

  /**
   * The length of the path of displacements, from the state and along the direction marked last.
   */
  record Arc() implements Control {}
}
