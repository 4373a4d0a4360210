package org.flexwright.decide;

/** The three values of a verdict. */
public enum Verdict {
  /** Meets over the whole band and at every extreme of service. */
  MEETS("meets"),
  /** What is known leaves it open; a test print would decide. */
  NOT_DECIDABLE("not decidable yet"),
  /** Fails over the whole band, or cannot be printed. */
  FAILS("fails");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** The verdict in words. */
  @Override
  public String toString() {
    return words;
  }
}
