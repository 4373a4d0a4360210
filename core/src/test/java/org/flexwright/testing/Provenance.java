package org.flexwright.testing;

/** Where a reference value comes from, best first. */
public enum Provenance {
  /** Read in a source. */
  PUBLISHED,
  /** Derived or computed independently, outside this library. */
  DERIVED,
  /** Common practice of the trade. */
  TRADE,
  /** Recalled from a named source that was not at hand. */
  HANDBOOK_MEMORY
}
