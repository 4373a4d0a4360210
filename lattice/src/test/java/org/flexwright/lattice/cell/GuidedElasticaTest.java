package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class GuidedElasticaTest {

  /** The polynomials stand for the solved elastica; the difference is far below any model error. */
  @Test
  void polynomialsFollowTheSolvedElastica() {
    for (double sine : new double[] {Math.sqrt(0.5), 1.0 / Math.sqrt(3.0)}) {
      GuidedElastica strut = GuidedElastica.ofSine(sine);
      for (int i = 1; i <= 1600; i++) {
        double strain = 0.8 * i / 1600;
        double softening = strut.exactSoftening(strain);
        double peak = strut.exactPeak(strain);
        assertThat(strut.softening(strain)).isCloseTo(softening, within(1e-9 * softening));
        assertThat(strut.peakStrainOverSlenderness(strain)).isCloseTo(peak, within(1e-9 * peak));
      }
      assertThat(strut.softening(0.0)).isZero();
    }
  }
}
