package org.flexwright.evidence;

/**
 * Where a formula or a value comes from.
 *
 * @param text author, work, year, table or section
 * @param standing how the source was used
 */
public record Source(String text, Standing standing) {

  /** How a source was used. */
  public enum Standing {
    /** Read in the named text. */
    READ,
    /** Taken from memory of the named text, not seen again. */
    MEMORY,
    /** Derived or computed from first principles, no publication claimed. */
    DERIVED,
    /** Common practice of the trade, without a text to cite. */
    COMMON_PRACTICE,
    /** A judgement to be replaced by a test. */
    ASSUMPTION,
    /** Invented for a demonstration. */
    INVENTED
  }

  /**
   * A text that was read.
   *
   * @param text what was read
   * @return the source
   */
  public static Source read(String text) {
    return new Source(text, Standing.READ);
  }

  /**
   * A text known from memory.
   *
   * @param text the text
   * @return the source
   */
  public static Source memory(String text) {
    return new Source(text, Standing.MEMORY);
  }

  /**
   * A derivation or computation from first principles.
   *
   * @param text what was derived
   * @return the source
   */
  public static Source derived(String text) {
    return new Source(text, Standing.DERIVED);
  }

  /**
   * Common practice of the trade.
   *
   * @param text the habit
   * @return the source
   */
  public static Source commonPractice(String text) {
    return new Source(text, Standing.COMMON_PRACTICE);
  }

  /**
   * A judgement to be replaced by a test.
   *
   * @param text the judgement
   * @return the source
   */
  public static Source assumption(String text) {
    return new Source(text, Standing.ASSUMPTION);
  }

  /** The text, and its standing unless it was read. */
  @Override
  public String toString() {
    return switch (standing) {
      case READ -> text;
      case MEMORY -> text + " (from memory)";
      case DERIVED -> text + " (derived)";
      case COMMON_PRACTICE -> text + " (common practice)";
      case ASSUMPTION -> text + " (assumption)";
      case INVENTED -> text + " (invented)";
    };
  }
}
