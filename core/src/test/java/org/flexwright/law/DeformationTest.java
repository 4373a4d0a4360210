package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DeformationTest {

  static Stream<StrainEnergy> laws() {
    return StabilityTest.laws();
  }

  /**
   * Stresses against five-point differences of the energy along the path, tangents against those of
   * the stress. Differences of step 1e-3 l err by 1e-12 f5/f1, below 1e-8 for these laws.
   */
  @ParameterizedTest
  @MethodSource("laws")
  void stressAndTangentAreDerivatives(StrainEnergy law) {
    for (Deformation mode : Deformation.values()) {
      for (double l : new double[] {0.75, 0.9, 0.999, 1.0, 1.001, 1.15, 1.4}) {
        double h = 1e-3 * l;
        double energy =
            (8 * (energy(law, mode, l + h) - energy(law, mode, l - h))
                    - (energy(law, mode, l + 2 * h) - energy(law, mode, l - 2 * h)))
                / (12 * h);
        double share = mode == Deformation.EQUIBIAXIAL ? 0.5 : 1.0;
        double scale = law.youngModulus() + Math.abs(energy);
        double p = mode.nominalStress(law, l).pa();
        assertThat(p).isCloseTo(share * energy, within(1e-7 * scale));
        assertThat(mode.trueStress(law, l).pa()).isCloseTo(l * p, within(1e-12 * scale));
        double k = 1e-5 * l;
        double slope =
            (mode.nominalStress(law, l + k).pa() - mode.nominalStress(law, l - k).pa()) / (2 * k);
        double rise =
            (mode.trueStress(law, l + k).pa() - mode.trueStress(law, l - k).pa()) / (2 * k);
        assertThat(mode.nominalTangent(law, l).pa())
            .isCloseTo(slope, within(1e-6 * (scale + Math.abs(slope))));
        assertThat(mode.trueTangent(law, l).pa())
            .isCloseTo(rise, within(1e-6 * (scale + Math.abs(rise))));
      }
    }
  }

  private static double energy(StrainEnergy law, Deformation mode, double stretch) {
    double[] l = mode.stretches(stretch);
    return law.energy(l[0], l[1], l[2]);
  }

  /** Slopes at rest: 3 G, 6 G and 4 G by linear elasticity. */
  @ParameterizedTest
  @MethodSource("laws")
  void tangentsAtRestAreThoseOfLinearElasticity(StrainEnergy law) {
    double g = law.shearModulus();
    assertThat(Deformation.UNIAXIAL.nominalTangent(law, 1).pa() / g).isCloseTo(3, within(1e-9));
    assertThat(Deformation.EQUIBIAXIAL.trueTangent(law, 1).pa() / g).isCloseTo(6, within(1e-9));
    assertThat(Deformation.PLANAR.nominalTangent(law, 1).pa() / g).isCloseTo(4, within(1e-9));
  }

  /** Closed form of the neo-Hookean law: G (1 + n l^-(n+1)), n = 2, 5, 3. */
  @Test
  void tangentsOfNeoHookeanByHand() {
    StrainEnergy law = NeoHookean.of(Pressure.pa(1));
    double[] n = {2, 5, 3};
    for (Deformation mode : Deformation.values()) {
      for (double l : new double[] {0.2, 0.7, 1, 2, 5}) {
        double power = n[mode.ordinal()];
        double byHand = 1 + power * Math.pow(l, -power - 1);
        assertThat(mode.nominalTangent(law, l).pa()).isCloseTo(byHand, within(1e-12 * byHand));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("laws")
  void theInverseFindsTheStretch(StrainEnergy law) {
    for (Deformation mode : Deformation.values()) {
      StretchRange unique = mode.unique(law);
      assertThat(unique.low()).isLessThan(1);
      assertThat(unique.high()).isGreaterThan(1);
      double before = Double.NEGATIVE_INFINITY;
      for (int i = 0; i <= 20; i++) {
        double l = unique.low() * Math.pow(unique.high() / unique.low(), i / 20.0);
        Pressure p = mode.nominalStress(law, l);
        assertThat(p.pa()).isGreaterThan(before);
        before = p.pa();
        if (i > 0 && i < 20) {
          // back in the stress, since near a turning point the stretch has half the digits
          double back = mode.stretch(law, p);
          assertThat(mode.nominalStress(law, back).pa())
              .isCloseTo(p.pa(), within(1e-11 * (law.youngModulus() + Math.abs(p.pa()))));
          assertThat(back).isCloseTo(l, within(1e-6 * l));
        }
      }
      assertThat(mode.stretch(law, Pressure.pa(0))).isEqualTo(1);
    }
  }

  /** MR with a negative C01 in its wide range: the equibiaxial nominal stress has a maximum. */
  @Test
  void theInverseEndsWhereTheStressTurns() {
    StrainEnergy law = new WideRange(StabilityTest.MR_A);
    StretchRange unique = Deformation.EQUIBIAXIAL.unique(law);
    // P/2 = C10 (l - l^-5) + C01 (l^3 - l^-3): a maximum, by a golden-section-free scan
    double best = 1;
    double most = 0;
    for (double l = 1; l < 2.4; l += 1e-6) {
      double p = 0.2588 * (l - Math.pow(l, -5)) - 0.0449 * (l * l * l - Math.pow(l, -3));
      if (p > most) {
        most = p;
        best = l;
      }
    }
    assertThat(unique.high()).isCloseTo(best, within(2e-5));
    assertThat(unique.reason()).endsWith("above: the nominal stress turns");
    Pressure top = Pressure.mpa(2 * most);
    assertThat(Deformation.EQUIBIAXIAL.stretch(law, top.times(0.999))).isLessThan(best);
    assertThatThrownBy(() -> Deformation.EQUIBIAXIAL.stretch(law, top.times(1.001)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("nominal stress, equibiaxial is")
        .hasMessageContaining("the nominal stress turns")
        .hasMessageContaining("ask for the stress at a stretch");
  }

  @Test
  void lockingIsRefusedByName() {
    StrainEnergy law = Gent.of(Pressure.pa(1), 5);
    for (Deformation mode : Deformation.values()) {
      for (double l : new double[] {4, 10, 1e160}) {
        for (Runnable ask :
            List.<Runnable>of(
                () -> mode.nominalStress(law, l),
                () -> mode.trueStress(law, l),
                () -> mode.nominalTangent(law, l),
                () -> mode.trueTangent(law, l))) {
          assertThatThrownBy(ask::run)
              .isInstanceOf(InvalidInputException.class)
              .hasMessageContaining("stretch is")
              .hasMessageContaining("95 % of locking");
        }
      }
      assertThatThrownBy(() -> mode.stretch(law, Pressure.mpa(1)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("range of the law");
    }
    // a law whose range goes on behind its locking
    StrainEnergy late = new WideRange(law);
    StretchRange unique = Deformation.UNIAXIAL.unique(late);
    assertThat(unique.reason()).endsWith("above: locking");
    // l^2 + 2/l - 3 = 5
    assertThat(unique.high() * unique.high() + 2 / unique.high()).isCloseTo(8, within(1e-9));
    double far = Deformation.UNIAXIAL.stretch(late, Pressure.pa(1e6));
    assertThat(Deformation.UNIAXIAL.nominalStress(late, far).pa()).isCloseTo(1e6, within(1.0));
  }

  /** A law with a range that promises too much. */
  record WideRange(StrainEnergy of) implements StrainEnergy {

    @Override
    public double energy(double l1, double l2, double l3) {
      return of.energy(l1, l2, l3);
    }

    @Override
    public void gradient(double l1, double l2, double l3, double[] out) {
      of.gradient(l1, l2, l3, out);
    }

    @Override
    public void hessian(double l1, double l2, double l3, double[] out) {
      of.hessian(l1, l2, l3, out);
    }

    @Override
    public double shearModulus() {
      return of.shearModulus();
    }

    @Override
    public StretchRange range() {
      return new StretchRange(0.01, 100, "promised", of.range().source());
    }
  }
}
