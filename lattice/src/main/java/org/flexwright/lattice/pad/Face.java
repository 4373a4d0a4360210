package org.flexwright.lattice.pad;

/** What the end face of a pad does on its plate. */
public enum Face {
  /** Glued, or printed onto a solid plate: nodes neither slip nor turn. */
  BONDED("bonded"),
  /**
   * Dry on a flat hard plate: taken as no slip. Where it slips the pad is softer; the low end of
   * the band is the answer of a face without friction.
   */
  DRY("dry"),
  /** Lubricated: slips and turns freely on a flat hard plate. */
  LUBRICATED("lubricated");

  private final String words;

  Face(String words) {
    this.words = words;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
