package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class EffortTest {
  private record Pair(double a, double b) {}

  @Test
  void seesWhatIsAllocated() {
    double[] counter = new double[1];
    assertThat(Effort.ofNumber(() -> Math.sqrt(counter[0]++)).bytes()).isLessThan(0.1);
    assertThat(Effort.ofObject(() -> new Pair(counter[0]++, 1)).bytes()).isBetween(24.0, 40.0);
    assertThat(Effort.ofObject(() -> new double[1000]).bytes()).isBetween(8000.0, 8100.0);
  }

  @Test
  void recordThatStaysInsideCallCostsNothing() {
    double[] counter = new double[1];
    Effort effort =
        Effort.ofNumber(
            () -> {
              Pair pair = new Pair(counter[0]++, 2);
              return pair.a() * pair.b();
            });
    assertThat(effort.bytes()).isLessThan(0.1);
    assertThat(effort.nanos()).isLessThan(1000);
  }
}
