package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BiaxialStretchTest {

  private static final double[][] STATES = {
    {1, 1}, {1.3, 1.1}, {0.9, 0.8}, {1.2, 0.85}, {0.8, 1.3}
  };

  static Stream<StrainEnergy> laws() {
    return StabilityTest.laws();
  }

  /** Stresses and tangent against differences of w(l1, l2) = W(l1, l2, 1/(l1 l2)). */
  @ParameterizedTest
  @MethodSource("laws")
  void stressAndTangentAreDerivatives(StrainEnergy law) {
    double h = 1e-5;
    for (double[] l : STATES) {
      BiaxialStretch.Stress p = new BiaxialStretch(l[0], l[1]).nominalStress(law);
      BiaxialStretch.Stress s = new BiaxialStretch(l[0], l[1]).trueStress(law);
      BiaxialStretch.Tangent t = new BiaxialStretch(l[0], l[1]).nominalTangent(law);
      double e = law.youngModulus();
      double first = (energy(law, l[0] + h, l[1]) - energy(law, l[0] - h, l[1])) / (2 * h);
      double second = (energy(law, l[0], l[1] + h) - energy(law, l[0], l[1] - h)) / (2 * h);
      // differences of step 1e-5 err by 1e-10 w''' and 1e-11 w
      assertThat(p.first().pa()).isCloseTo(first, within(1e-6 * e));
      assertThat(p.second().pa()).isCloseTo(second, within(1e-6 * e));
      assertThat(s.first().pa()).isCloseTo(l[0] * first, within(1e-6 * e));
      assertThat(s.second().pa()).isCloseTo(l[1] * second, within(1e-6 * e));
      BiaxialStretch.Stress up = new BiaxialStretch(l[0] + h, l[1]).nominalStress(law);
      BiaxialStretch.Stress down = new BiaxialStretch(l[0] - h, l[1]).nominalStress(law);
      BiaxialStretch.Stress right = new BiaxialStretch(l[0], l[1] + h).nominalStress(law);
      BiaxialStretch.Stress left = new BiaxialStretch(l[0], l[1] - h).nominalStress(law);
      double within = 1e-5 * (e + Math.abs(t.first().pa()) + Math.abs(t.second().pa()));
      assertThat(t.first().pa()).isCloseTo(slope(up.first(), down.first(), h), within(within));
      assertThat(t.second().pa())
          .isCloseTo(slope(right.second(), left.second(), h), within(within));
      assertThat(t.cross().pa()).isCloseTo(slope(right.first(), left.first(), h), within(within));
      assertThat(t.cross().pa()).isCloseTo(slope(up.second(), down.second(), h), within(within));
    }
  }

  private static double slope(Pressure up, Pressure down, double h) {
    return (up.pa() - down.pa()) / (2 * h);
  }

  private static double energy(StrainEnergy law, double l1, double l2) {
    return law.energy(l1, l2, 1 / (l1 * l2));
  }

  /** The three test deformations are biaxial states. */
  @ParameterizedTest
  @MethodSource("laws")
  void agreesWithTheTestDeformations(StrainEnergy law) {
    for (Deformation mode : Deformation.values()) {
      for (double l : new double[] {0.8, 1, 1.3}) {
        double[] all = mode.stretches(l);
        BiaxialStretch.Stress p = new BiaxialStretch(l, all[1]).nominalStress(law);
        double e = law.youngModulus();
        assertThat(p.first().pa()).isCloseTo(mode.nominalStress(law, l).pa(), within(1e-12 * e));
        if (mode == Deformation.UNIAXIAL) {
          assertThat(p.second().pa()).isCloseTo(0, within(1e-12 * e));
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("laws")
  void theInverseFindsTheState(StrainEnergy law) {
    double[][] states = {{1, 1}, {1.15, 1.05}, {1.2, 0.92}, {0.9, 0.95}, {1.1, 1.1}, {0.85, 1.1}};
    for (double[] l : states) {
      BiaxialStretch state = new BiaxialStretch(l[0], l[1]);
      BiaxialStretch back = BiaxialStretch.under(law, state.nominalStress(law));
      assertThat(back.l1()).isCloseTo(l[0], within(1e-10));
      assertThat(back.l2()).isCloseTo(l[1], within(1e-10));
    }
  }

  /** Neo-Hookean under large loads: the stresses P_i/G = l_i - 1/(l_i l1^2 l2^2) are met. */
  @Test
  void followsLargeLoads() {
    StrainEnergy law = NeoHookean.of(Pressure.pa(1));
    double[][] loads = {{100, 5}, {-3, 20}, {25, 25}, {-100, -100}, {0, 7}, {-20, 0}};
    for (double[] p : loads) {
      BiaxialStretch s = BiaxialStretch.under(law, stress(p[0], p[1]));
      double thin = Math.pow(s.thickness(), 2);
      double size = Math.abs(p[0]) + Math.abs(p[1]);
      assertThat(s.l1() - thin / s.l1()).isCloseTo(p[0], within(1e-11 * size));
      assertThat(s.l2() - thin / s.l2()).isCloseTo(p[1], within(1e-11 * size));
    }
  }

  private static BiaxialStretch.Stress stress(double first, double second) {
    return new BiaxialStretch.Stress(Pressure.pa(first), Pressure.pa(second));
  }

  /**
   * Under equal pulls a sheet of Mooney-Rivlin gives way where 2 C10 (1 + l^-6) + C01 (6 l^-4 - 2
   * l^2) = 0; the load up to there has an answer, more has none.
   */
  @Test
  void refusesBeyondTheLossOfUniqueness() {
    StrainEnergy law = MooneyRivlin.of(Pressure.pa(0.16), Pressure.pa(0.04));
    double lost = 1;
    while (0.32 * (1 + Math.pow(lost, -6)) + 0.04 * (6 * Math.pow(lost, -4) - 2 * lost * lost)
        > 0) {
      lost += 1e-6;
    }
    assertThat(lost).isBetween(1.9, 2.2);
    Pressure top = new BiaxialStretch(lost, lost).nominalStress(law).first();
    double below = 0.999 * top.pa();
    BiaxialStretch near = BiaxialStretch.under(law, stress(below, below));
    assertThat(near.l1()).isCloseTo(near.l2(), within(1e-9)).isLessThan(lost);
    double above = 1.01 * top.pa();
    assertThatThrownBy(() -> BiaxialStretch.under(law, stress(above, above)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("gives way under dead loads")
        .hasMessageContaining("ask for less load");
  }

  @Test
  void refusesWhatTheLawCannotDo() {
    StrainEnergy law = Gent.of(Pressure.pa(1), 5);
    BiaxialStretch far = new BiaxialStretch(3, 3);
    assertThatThrownBy(() -> far.nominalStress(law))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("biaxial stretch is stretches 3 and 3");
    assertThatThrownBy(() -> far.trueStress(law)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> far.nominalTangent(law)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> BiaxialStretch.under(law, stress(1e4, 1e4)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("leaves the range of the law")
        .hasMessageContaining("95 % of locking");
    assertThatThrownBy(() -> new BiaxialStretch(0, 1)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> new BiaxialStretch(1, Double.NaN))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> new BiaxialStretch(1e200, 1e200))
        .isInstanceOf(InvalidInputException.class);
  }
}
