package org.flexwright.durability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.flexwright.evidence.Source;
import org.junit.jupiter.api.Test;

class PowerLifeTest {

  /**
   * Flaw growth dc/dn = B (2 k W c)^beta with beta 2 integrates to a life falling with W^2, that is
   * with the fourth power of strain (Gent, Lindley and Thomas 1964, from memory); here by direct
   * summation of the growth law at two strains.
   */
  @Test
  void exponentIsThatOfFlawGrowth() {
    double ratio = growth(0.05) / growth(0.10);
    PowerLife law = PowerLife.measured(1e5, 0.1, 4, 2, Source.assumption("test"));
    assertThat(law.medianCycles(0.05) / law.medianCycles(0.10))
        .isCloseTo(ratio, within(0.02 * ratio));
  }

  private static double growth(double strain) {
    double w = 0.5 * 30e6 * strain * strain;
    double c = 50e-6;
    double cycles = 0;
    double end = 1e-3;
    while (c < end) {
      double dc = 1e-3 * c;
      double rate = 1e-15 * Math.pow(2 * 2.5 * w * (c + 0.5 * dc), 2);
      cycles += dc / rate;
      c += dc;
    }
    return cycles;
  }

  @Test
  void passesThroughItsPointAndKnowsItsBand() {
    PowerLife law = PowerLife.measured(2e5, 0.08, 3, 4, Source.assumption("test"));
    assertThat(law.medianCycles(0.08)).isCloseTo(2e5, within(1e-6));
    assertThat(law.logSlope(0.3)).isEqualTo(-3);
    assertThat(Math.exp(2 * law.logSigma())).isCloseTo(4, within(1e-12));
    assertThat(law.placeholder()).isFalse();
    assertThat(LifeLaw.generic().placeholder()).isTrue();
    assertThat(LifeLaw.generic().toString()).contains("placeholder");
  }

  @Test
  void nonsenseIsRefused() {
    Source s = Source.assumption("test");
    assertThatThrownBy(() -> PowerLife.measured(-1, 0.1, 4, 2, s)).hasMessageContaining("cycles");
    assertThatThrownBy(() -> PowerLife.measured(1, 0.1, 4, 0.5, s)).hasMessageContaining("band");
    assertThatThrownBy(() -> LifeLaw.generic().medianCycles(0))
        .hasMessage("peak strain is 0, allowed is finite and above 0");
  }
}
