package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

final class EffortTest {
  private record Pair(double a, double b) {}

  @Test
  void seesWhatIsAllocated() {
    double[] counter = new double[1];
    Effort.numberWithin(0, () -> Math.sqrt(counter[0]++));
    Effort.objectWithin(40, () -> new Pair(counter[0]++, 1));
    Effort effort = Effort.ofObject(() -> new double[1000]);
    assertThat(effort.bytes()).isBetween(8000.0, 8100.0);
    assertThat(effort.nanos()).isPositive();
  }

  @Test
  void recordThatStaysInsideCallCostsNothing() {
    double[] counter = new double[1];
    Effort.numberWithin(
        0,
        () -> {
          Pair pair = new Pair(counter[0]++, 2);
          return pair.a() * pair.b();
        });
  }

  @Test
  @Tag("slow")
  void tooManyBytesFail() {
    assertThatThrownBy(() -> Effort.objectWithin(100, () -> new double[100]))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("must be at most 100.0 B/call");
  }
}
