package org.flexwright.internal;

/** Which library this is, for the stamps of what it writes. */
public final class Library {

  /** The version of the library, that of its build. */
  public static final String VERSION = "0.1.0-SNAPSHOT";

  /** The version of the built-in material figures: one more whenever a generic grade changes. */
  public static final int DATA = 1;

  private Library() {}
}
