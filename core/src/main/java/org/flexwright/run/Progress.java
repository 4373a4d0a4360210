package org.flexwright.run;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * How far a run has come.
 *
 * @param task what is being done
 * @param fraction the share done, 0 to 1
 */
public record Progress(String task, double fraction) {

  /**
   * Refuses a share outside 0 to 1.
   *
   * @param task what is being done
   * @param fraction the share done, 0 to 1
   */
  public Progress {
    Require.between("progress", fraction, 0.0, 1.0, "");
  }

  /** One readable line. */
  @Override
  public String toString() {
    return task + " " + Text.percent(fraction);
  }
}
