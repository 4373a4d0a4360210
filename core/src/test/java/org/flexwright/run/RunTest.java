package org.flexwright.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class RunTest {

  @Test
  void nobodyWatchingStopsOnlyAtAnInterruptAndLeavesItSet() {
    RunControl none = RunControl.none();
    none.progress(new Progress("step", 0.5));
    assertThat(none.stopRequested()).isFalse();
    Thread.currentThread().interrupt();
    try {
      assertThat(none.stopRequested()).isTrue();
      assertThat(none.stopRequested()).isTrue();
    } finally {
      assertThat(Thread.interrupted()).isTrue();
    }
    assertThat(none.executor()).isEmpty();
    assertThat(none.memoryLimitBytes()).isEqualTo(Long.MAX_VALUE);
  }

  @Test
  void progressIsAShare() {
    assertThat(new Progress("mesh", 0.25)).hasToString("mesh 25 %");
    assertThatThrownBy(() -> new Progress("mesh", 1.01))
        .hasMessage("progress is 1.01, allowed is 0 to 1");
    assertThatThrownBy(() -> new Progress("mesh", Double.NaN)).hasMessageContaining("progress");
  }

  @Test
  void endingsSayWhy() {
    assertThat(Termination.completed().complete()).isTrue();
    assertThat(Termination.stopped("3 of 9 steps").complete()).isFalse();
    assertThat(Termination.stopped("3 of 9 steps"))
        .hasToString("STOPPED: stopped by the caller after 3 of 9 steps");
  }
}
