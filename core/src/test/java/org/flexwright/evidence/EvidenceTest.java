package org.flexwright.evidence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

class EvidenceTest {

  private static final Source SOURCE = Source.read("a text");

  @Test
  void aValueInsideItsRangeRaisesNothing() {
    ValidityRange range = new ValidityRange("model", "Shore A", 20, 80, "", SOURCE);
    assertThat(range.check(20)).isEmpty();
    assertThat(range.check(80)).isEmpty();
    assertThat(range).hasToString("Shore A 20 to 80");
  }

  @Test
  void aValueOutsideItsRangeNamesModelInputValueAndRange() {
    ValidityRange range = new ValidityRange("model", "Shore A", 20, 80, "", SOURCE);
    Caveat caveat = range.check(95).orElseThrow();
    assertThat(caveat).hasToString("model: Shore A is 95, the model is good for Shore A 20 to 80");
    assertThat(caveat.excursion()).contains(new Caveat.Excursion(95, range));
    assertThat(caveat.source()).isEqualTo(SOURCE);
  }

  @Test
  void rangesMayBeOpen() {
    double none = Double.POSITIVE_INFINITY;
    assertThat(new ValidityRange("m", "strain", -none, 0.1, "", SOURCE))
        .hasToString("strain up to 0.1");
    assertThat(new ValidityRange("m", "cells", 4, none, "", SOURCE)).hasToString("cells from 4");
    assertThatThrownBy(() -> new ValidityRange("m", "cells", 4, 3, "", SOURCE))
        .hasMessageContaining("range of cells");
  }

  @Test
  void anEstimateKeepsItsOrderAndItsLists() {
    List<Source> sources = new ArrayList<>(List.of(SOURCE));
    Estimate<Pressure> e =
        new Estimate<>(
            Pressure.mpa(1),
            Pressure.mpa(2),
            Pressure.mpa(3),
            Estimate.Band.SPREAD_OF_RELATIONS,
            sources,
            List.of());
    sources.clear();
    assertThat(e.sources()).containsExactly(SOURCE);
    assertThat(e).hasToString("2 MPa (1 MPa to 3 MPa, spread of the relations)");
    assertThatThrownBy(
            () ->
                new Estimate<>(
                    Pressure.mpa(3),
                    Pressure.mpa(2),
                    Pressure.mpa(4),
                    Estimate.Band.BRACKET,
                    List.of(),
                    List.of()))
        .hasMessageContaining("low <= nominal <= high");
  }

  @Test
  void sourcesSayHowTheyWereUsed() {
    assertThat(Source.read("x")).hasToString("x");
    assertThat(Source.memory("x")).hasToString("x (from memory)");
    assertThat(Source.commonPractice("x")).hasToString("x (common practice)");
    assertThat(Source.assumption("x")).hasToString("x (assumption)");
    assertThat(Source.derived("x")).hasToString("x (derived)");
  }

  @Test
  void scatterOfAProductFollowsTheCovariance() {
    // ln r = n1 ln f1 + n2 ln f2: variance n1^2 s1^2 + n2^2 s2^2 + 2 n1 n2 rho s1 s2
    Factors f =
        Factors.none()
            .with(Factor.MODULUS, 0.2)
            .with(Factor.SIZE_BIAS, 0.05)
            .correlated(Factor.MODULUS, Factor.SIZE_BIAS, -0.5);
    Exponents n = Exponents.none().with(Factor.MODULUS, 1).with(Factor.SIZE_BIAS, 3);
    assertThat(f.sigmaOf(n)).isCloseTo(Math.sqrt(0.04 + 0.0225 - 0.03), within(1e-15));
    assertThat(f.covariance(Factor.SIZE_BIAS, Factor.MODULUS)).isCloseTo(-0.005, within(1e-15));
    double[][] l = f.choleskyOfCorrelation();
    assertThat(l[1][0]).isCloseTo(-0.5, within(1e-15));
    assertThat(l[1][1]).isCloseTo(Math.sqrt(0.75), within(1e-15));
  }

  @Test
  void aBandIsTwoStandardDeviations() {
    Factors f = Factors.none().withBand(Factor.MODULUS, 1.25);
    assertThat(Math.exp(2 * f.sigma(Factor.MODULUS))).isCloseTo(1.25, within(1e-14));
    assertThat(f).hasToString("modulus x/1.25");
    assertThat(Factors.none()).hasToString("no uncertainty");
  }

  @Test
  void factorsThatContradictEachOtherAreRefused() {
    Factors f =
        Factors.none()
            .correlated(Factor.MODULUS, Factor.SIZE_BIAS, 0.6)
            .correlated(Factor.MODULUS, Factor.STRENGTH, 0.6);
    assertThatThrownBy(() -> f.correlated(Factor.SIZE_BIAS, Factor.STRENGTH, -0.9))
        .hasMessageContaining("a positive definite set");
    assertThatThrownBy(() -> f.correlated(Factor.MODULUS, Factor.MODULUS, 0.1))
        .hasMessageContaining("two different factors");
    assertThatThrownBy(() -> Factors.none().with(Factor.LIFE, -0.1))
        .hasMessageContaining("scatter of the life is -0.1, allowed is 0 to 3");
    assertThatThrownBy(() -> Factors.none().withBand(Factor.LIFE, 0.9))
        .hasMessageContaining("band of the life");
  }
}
