package org.flexwright.run;

/**
 * How a run ended.
 *
 * @param kind the kind of ending
 * @param why one sentence a person can act on
 */
public record Termination(Kind kind, String why) {

  /** The kinds of ending. */
  public enum Kind {
    /** Everything asked for was computed. */
    COMPLETED,
    /** The caller stopped the run; the result holds what was done before. */
    STOPPED,
    /** The path turned back on itself: a limit point of load, pressure or travel. */
    LIMIT_POINT,
    /** The solver could not go on; the result holds the converged part. */
    NOT_CONVERGED,
    /** The material or the geometry allows no further state. */
    NO_FURTHER_STATE
  }

  /**
   * The ending of a run that did all that was asked.
   *
   * @return the ending
   */
  public static Termination completed() {
    return new Termination(Kind.COMPLETED, "all that was asked for was computed");
  }

  /**
   * The ending of a run that its caller stopped.
   *
   * @param done what had been done
   * @return the ending
   */
  public static Termination stopped(String done) {
    return new Termination(Kind.STOPPED, "stopped by the caller after " + done);
  }

  /**
   * Whether the result is whole.
   *
   * @return true if completed
   */
  public boolean complete() {
    return kind == Kind.COMPLETED;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return kind + ": " + why;
  }
}
