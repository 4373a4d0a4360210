package org.flexwright.run;

/** The control of a caller who only wants the answer. */
enum Unwatched implements RunControl {
  INSTANCE;

  @Override
  public void progress(Progress progress) {
    // nobody watches
  }

  @Override
  public boolean stopRequested() {
    return Thread.currentThread().isInterrupted();
  }

  @Override
  public String toString() {
    return "unwatched run";
  }
}
