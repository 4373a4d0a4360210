package org.flexwright.evidence;

/**
 * The named uncertainty factors. Each is a multiplier with median 1 whose logarithm is normally
 * distributed; a response says with which exponent it follows each of them.
 */
public enum Factor {
  /** How stiff the printed material is, against the grade's stress curve. */
  MODULUS(
      "modulus", "test-print a strip of this grade and measure its force at the working strain"),
  /** How far the mean of printed walls or struts misses the drawn size. */
  SIZE_BIAS("size bias", "print a comb of walls at the candidate sizes and measure them"),
  /** How printed walls or struts differ from one another. */
  SIZE_SCATTER("size scatter", "measure the wall or strut at ten places of one print"),
  /** How much strain the printed material bears once, against the grade's limit. */
  STRENGTH("strength", "pull tensile coupons printed in the same build direction to break"),
  /** How many cycles the printed material bears, against the grade's life law. */
  LIFE("life", "cycle one part or pad at the working travel until the count is reached");

  private final String words;
  private final String test;

  Factor(String words, String test) {
    this.words = words;
    this.test = test;
  }

  /**
   * The test print that narrows this factor most directly.
   *
   * @return one sentence
   */
  public String test() {
    return test;
  }

  /** The name in words. */
  @Override
  public String toString() {
    return words;
  }
}
