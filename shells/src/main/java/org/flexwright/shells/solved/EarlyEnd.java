package org.flexwright.shells.solved;

import org.flexwright.run.Termination;

/** A run on which ratios would rest ended before the load that was asked for. */
final class EarlyEnd extends Exception {

  private static final long serialVersionUID = 1L;

  private final transient Termination end;

  EarlyEnd(Termination end) {
    super(end.why());
    this.end = end;
  }

  Termination end() {
    return end;
  }
}
