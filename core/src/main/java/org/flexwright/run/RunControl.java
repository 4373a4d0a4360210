package org.flexwright.run;

import java.util.Optional;
import java.util.concurrent.Executor;

/**
 * What a caller lends to long work. Implement it to watch, to stop, or to lend threads.
 *
 * <p>The library calls {@link #progress} once per outer step on the calling thread, then asks
 * {@link #stopRequested}. A stop is never an error: the work returns what it has, with {@link
 * Termination.Kind#STOPPED}. The library starts no threads of its own; it uses the executor if one
 * is lent.
 */
public interface RunControl {

  /**
   * Called before each outer step.
   *
   * @param progress how far the run has come
   */
  void progress(Progress progress);

  /**
   * Asked after each report of progress.
   *
   * @return true to end the run with what it has
   */
  boolean stopRequested();

  /**
   * Threads that the work may use.
   *
   * @return an executor, or nothing to stay on the calling thread
   */
  default Optional<Executor> executor() {
    return Optional.empty();
  }

  /**
   * The memory that the work may take for itself.
   *
   * @return a limit in bytes
   */
  default long memoryLimitBytes() {
    return Long.MAX_VALUE;
  }

  /**
   * A control that watches nothing; the run still ends when its thread is interrupted, and the
   * interrupt flag stays set.
   *
   * @return the control
   */
  static RunControl none() {
    return Unwatched.INSTANCE;
  }
}
