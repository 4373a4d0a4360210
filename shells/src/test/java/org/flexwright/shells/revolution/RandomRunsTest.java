package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import org.flexwright.run.Termination;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Whatever is asked of it, the engine ends, says how, and keeps what it has. */
final class RandomRunsTest {

  /** Evaluations of the shell for each step asked for: about twice the dearest of 1500 runs. */
  private static final double DEAR = 3000.0;

  private static void runs(int count, RandomRuns runs) {
    for (int i = 0; i < count; i++) {
      runs.one();
    }
    assertThat(runs.dearest).isLessThan(DEAR);
    // no kind of ending that matters is missing from the sample
    for (Termination.Kind kind :
        new Termination.Kind[] {
          Termination.Kind.COMPLETED,
          Termination.Kind.STOPPED,
          Termination.Kind.LIMIT_POINT,
          Termination.Kind.NOT_CONVERGED
        }) {
      assertThat(runs.ends[kind.ordinal()]).as(kind.name()).isPositive();
    }
  }

  @Test
  void someRunsEndWell() {
    runs(60, new RandomRuns(20L));
  }

  @Tag("slow")
  @Test
  void aThousandRunsEndWell() {
    runs(1000, new RandomRuns(21L));
  }

  @Test
  void someRunsOfStiffenedShellsEndWell() {
    runs(40, new RandomRuns(22L, true));
  }

  @Tag("slow")
  @Test
  void manyRunsOfStiffenedShellsEndWell() {
    runs(600, new RandomRuns(23L, true));
  }
}
