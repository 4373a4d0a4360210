package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class StrutMixtureTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(StrutMixtureTest.class, "mixtures.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsTheReference(ReferenceCase c) {
    double space = c.input("s111");
    double face = c.input("s110");
    CubicStiffness s = new StrutMixture(1.0 - space - face, face, space).stretchLimit(1.0);
    TABLE.check(
        c,
        switch (c.formula()) {
          case "mixture E100" -> s.young100();
          case "mixture E111" -> s.young111();
          case "mixture nu12" -> s.poisson12();
          case "mixture Zener" -> s.zener();
          case "mixture C44" -> s.c44();
          default -> throw new IllegalArgumentException(c.formula());
        });
  }

  /** Equal in all directions along the whole line between the two binary mixtures. */
  @Test
  void theIsotropicLine() {
    for (double s = 0.0; s <= 0.6; s += 0.06) {
      StrutMixture m = StrutMixture.isotropic(s);
      assertThat(m.anisotropy()).isCloseTo(0.0, within(1e-15));
      CubicStiffness c = m.stretchLimit(0.3);
      assertThat(c.young100()).isCloseTo(0.05, within(1e-15));
      assertThat(c.young110()).isCloseTo(0.05, within(1e-15));
      assertThat(c.young111()).isCloseTo(0.05, within(1e-15));
      assertThat(c.c44()).isCloseTo(0.02, within(1e-15));
      assertThat(c.poisson12()).isCloseTo(0.25, within(1e-14));
    }
    assertThat(StrutMixture.isotropic(0.0).edges()).isEqualTo(0.2);
    assertThat(StrutMixture.isotropic(0.6).faceDiagonals()).isCloseTo(0.0, within(1e-15));
  }

  /** Means over directions drawn out one by one. */
  @Test
  void familiesAreMeansOverTheirDirections() {
    double[] fourth = new double[3];
    double[] mixed = new double[3];
    int[] count = new int[3];
    for (int k = 0; k < 27; k++) {
      int[] n = {k / 9 - 1, k / 3 % 3 - 1, k % 3 - 1};
      int q = n[0] * n[0] + n[1] * n[1] + n[2] * n[2];
      if (q > 0) {
        count[q - 1]++;
        fourth[q - 1] += n[0] * n[0] / (double) (q * q);
        mixed[q - 1] += n[0] * n[0] * n[1] * n[1] / (double) (q * q);
      }
    }
    for (StrutFamily f : StrutFamily.values()) {
      int i = f.ordinal();
      assertThat(f.fourth()).isCloseTo(fourth[i] / count[i], within(1e-15));
      assertThat(f.mixed()).isCloseTo(mixed[i] / count[i], within(1e-15));
    }
  }

  /** The frame with equal diameters has 23 % of its slender struts along the edges. */
  @Test
  void cellsAreMixturesInTheSlenderLimit() {
    double x = 1e-4;
    double rho = Cells.SIMPLE_AND_BODY_CENTRED.firstOrderDensity(x);
    double edges = 6.0 / (6.0 + 8.0 * Math.sqrt(0.75));
    CubicStiffness mixture = new StrutMixture(edges, 0.0, 1.0 - edges).stretchLimit(rho);
    CubicStiffness cell = Cells.SIMPLE_AND_BODY_CENTRED.centreLine(x, 0.3);
    assertThat(cell.young100()).isCloseTo(mixture.young100(), within(1e-7 * cell.young100()));
    assertThat(cell.c44()).isCloseTo(mixture.c44(), within(1e-7 * cell.c44()));
    CubicStiffness octet = new StrutMixture(0.0, 1.0, 0.0).stretchLimit(1.0);
    assertThat(octet.young111()).isCloseTo(0.2, within(1e-15));
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThatThrownBy(() -> new StrutMixture(0.5, 0.6, 0.0))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("sum of the shares is 1.1");
    assertThatThrownBy(() -> new StrutMixture(-0.5, 1.5, 0.0)).hasMessageContaining("edges");
    assertThatThrownBy(() -> StrutMixture.isotropic(0.61)).hasMessageContaining("0 to 0.6");
    assertThatThrownBy(() -> new StrutMixture(1.0, 0.0, 0.0).stretchLimit(0.1))
        .hasMessageContaining("such struts must bend");
    assertThatThrownBy(() -> new StrutMixture(0.0, 0.0, 1.0).stretchLimit(0.1))
        .hasMessageContaining("such struts must bend");
    assertThatThrownBy(() -> StrutMixture.isotropic(0.3).stretchLimit(0.0))
        .hasMessageContaining("relative density");
    assertThat(StrutMixture.isotropic(0.6).toString())
        .isEqualTo("struts 40 % edges, 0 % face diagonals, 60 % space diagonals");
  }
}
