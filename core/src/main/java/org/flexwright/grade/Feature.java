package org.flexwright.grade;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;

/**
 * The thinnest feature of a part, which the process must be able to make.
 *
 * @param kind what it is
 * @param size its thickness or diameter, above 0
 */
public record Feature(Kind kind, Length size) {

  /** Kinds of feature that a process treats differently. */
  public enum Kind {
    /** A wall that need not hold air. */
    WALL("wall"),
    /** A wall that must hold air. */
    AIRTIGHT_WALL("airtight wall"),
    /** A strut of a lattice. */
    STRUT("strut");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** The name in words. */
    @Override
    public String toString() {
      return words;
    }
  }

  /**
   * Refuses a feature without size.
   *
   * @param kind what it is
   * @param size its thickness or diameter, above 0
   */
  public Feature {
    Require.positive(kind + " size", size.m(), "m");
  }

  /** One readable line. */
  @Override
  public String toString() {
    return kind + " of " + size;
  }
}
