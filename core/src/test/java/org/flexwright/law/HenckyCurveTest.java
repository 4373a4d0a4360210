package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.analysis.differentiation.DerivativeStructure;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class HenckyCurveTest {

  private static final double E0 = 0.01;
  private static final double E1 = 0.6;
  private static final double S0 = 0.6e6;
  private static final double S1 = 9e6;
  private static final HenckyCurve TWO =
      HenckyCurve.through(new double[] {E0, E1}, new Pressure[] {Pressure.pa(S0), Pressure.pa(S1)});
  private static final HenckyCurve FOUR =
      HenckyCurve.through(
          new double[] {0.01, Math.log(1.5), Math.log(2), Math.log(4)},
          new Pressure[] {
            Pressure.mpa(0.6888), Pressure.mpa(11.37), Pressure.mpa(18.06), Pressure.mpa(82.72)
          });

  /**
   * The stress of two points written again: ln s is the Hermite cubic with slope 1 at the first and
   * the chord at the second.
   */
  private static DerivativeStructure stress(DerivativeStructure e) {
    double h = Math.log(E1 / E0);
    double chord = Math.log(S1 / S0) / h;
    DerivativeStructure t = e.divide(E0).log().divide(h);
    DerivativeStructure t2 = t.multiply(t);
    DerivativeStructure t3 = t2.multiply(t);
    DerivativeStructure up = t2.multiply(3).subtract(t3.multiply(2));
    DerivativeStructure start = t3.subtract(t2.multiply(2)).add(t).multiply(h);
    DerivativeStructure end = t3.subtract(t2).multiply(h * chord);
    return up.multiply(Math.log(S1 / S0)).add(start).add(end).exp().multiply(S0);
  }

  /** The energy but for a constant, differentiated automatically; f' is the stress. */
  private static DerivativeStructure energy(double[] l) {
    DerivativeStructure[] h = new DerivativeStructure[3];
    for (int i = 0; i < 3; i++) {
      h[i] = new DerivativeStructure(3, 2, i, l[i]).log();
    }
    DerivativeStructure mean = h[0].add(h[1]).add(h[2]).divide(3);
    DerivativeStructure square = h[0].subtract(mean).pow(2);
    square = square.add(h[1].subtract(mean).pow(2)).add(h[2].subtract(mean).pow(2));
    square = square.multiply(2.0 / 3.0);
    if (Math.sqrt(square.getValue()) <= E0) {
      return square.multiply(0.5 * S0 / E0);
    }
    DerivativeStructure e = square.sqrt();
    DerivativeStructure s = stress(new DerivativeStructure(1, 1, 0, e.getValue()));
    return e.compose(0.0, s.getValue(), s.getPartialDerivative(1));
  }

  /**
   * Three, two, nearly two and no equal stretches, in the linear start, the curve, at constant
   * volume or not.
   */
  @ParameterizedTest
  @CsvSource({
    "1, 1, 1",
    "1.2, 1.2, 1.2",
    "1.000000001, 1, 1",
    "1.003, 0.9985, 0.9985",
    "1.3, 1.3, 0.5917159763313609",
    "1.3, 1.3000000013, 0.59171597",
    "1.3, 0.8770580193070293, 0.8770580193070293",
    "1.3, 0.87705802, 0.87705803",
    "0.8, 1.118033988749895, 1.118033988749895",
    "1.4, 1, 0.7142857142857143",
    "1.5, 1.1, 0.65"
  })
  void derivativesAgainstAutomaticDifferentiation(double a, double b, double c) {
    double[] l = {a, b, c};
    DerivativeStructure w = energy(l);
    double[] g = new double[3];
    double[] h = new double[6];
    TWO.gradient(a, b, c, g);
    TWO.hessian(a, b, c, h);
    int[][] second = {{0, 0}, {1, 1}, {2, 2}, {0, 1}, {0, 2}, {1, 2}};
    double young = S0 / E0;
    for (int i = 0; i < 3; i++) {
      int[] order = new int[3];
      order[i] = 1;
      assertThat(g[i]).isCloseTo(w.getPartialDerivative(order), within(1e-12 * young));
    }
    for (int k = 0; k < 6; k++) {
      int[] order = new int[3];
      order[second[k][0]]++;
      order[second[k][1]]++;
      assertThat(h[k]).isCloseTo(w.getPartialDerivative(order), within(1e-11 * young));
    }
  }

  /** Energy between and beyond the points, by a library quadrature of the stress to 1e-12. */
  @ParameterizedTest
  @CsvSource({"0.02", "0.4", "0.5", "0.69", "1.0", "1.3862943611", "2.0"})
  void energyIsTheIntegralOfTheStress(double end) {
    IterativeLegendreGaussIntegrator by = new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-3);
    double[] knots = {1e-9, 0.01, Math.log(1.5), Math.log(2), Math.log(4), 10};
    double sum = 0.0;
    for (int i = 1; i < knots.length && knots[i - 1] < end; i++) {
      sum += by.integrate(100_000, FOUR::stress, knots[i - 1], Math.min(end, knots[i]));
    }
    assertThat(FOUR.energy(end)).isCloseTo(sum, within(3e-12 * sum));
  }

  @Test
  void theEnergyOfSteepShortPiecesIsAsGood() {
    HenckyCurve steep =
        HenckyCurve.through(
            new double[] {0.1, 0.101, 0.2, 0.2002},
            new Pressure[] {
              Pressure.pa(1), Pressure.pa(30), Pressure.pa(30.0001), Pressure.pa(900)
            });
    IterativeLegendreGaussIntegrator by = new IterativeLegendreGaussIntegrator(20, 1e-13, 1e-3);
    double sum = 0.05;
    double[] knots = {0.1, 0.101, 0.2, 0.2002};
    for (int i = 1; i < 4; i++) {
      sum += by.integrate(100_000, steep::stress, knots[i - 1], knots[i]);
    }
    assertThat(steep.energy(0.2002)).isCloseTo(sum, within(1e-9 * sum));
  }

  @Test
  void whatIsNoStretchHasNoFiniteStress() {
    double[] out = new double[6];
    for (HenckyCurve law : new HenckyCurve[] {TWO, FOUR}) {
      law.gradient(Double.NaN, 1, 1, out);
      assertThat(out[0]).isInfinite();
      law.hessian(1, Double.NaN, 1, out);
      assertThat(out[1]).isInfinite();
      assertThat(law.energy(1, 1, Double.NaN)).isInfinite();
      assertThatThrownBy(() -> law.stress(Double.NaN)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> law.tangent(-1)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> law.secant(Double.NaN)).isInstanceOf(InvalidInputException.class);
    }
  }

  @Test
  void theSamePointsMakeTheSameLaw() {
    HenckyCurve scaled = FOUR.scaled(1.0 / 3.0);
    HenckyCurve again = HenckyCurve.through(scaled.strains(), scaled.stresses());
    assertThat(again).isEqualTo(scaled).hasSameHashCodeAs(scaled);
    double[] a = new double[6];
    double[] b = new double[6];
    scaled.hessian(1.7, 0.8, 0.7, a);
    again.hessian(1.7, 0.8, 0.7, b);
    assertThat(a).isEqualTo(b);
    assertThat(LawCheck.of(scaled).report().passed()).isTrue();
  }

  @Test
  void theRangeEndsAtTheLastPoint() {
    assertThat(FOUR.range().high()).isCloseTo(4.0, within(1e-14));
    assertThat(FOUR.range().low()).isCloseTo(0.25, within(1e-15));
  }

  @Test
  void pointsThatAreNoCurveAreRefused() {
    Pressure[] two = {Pressure.mpa(1), Pressure.mpa(2)};
    assertThatThrownBy(() -> HenckyCurve.through(new double[] {0.1, 50}, two))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("logarithm of the stretch");
    assertThatThrownBy(() -> HenckyCurve.through(new double[] {0.1, Math.nextUp(0.1)}, two))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("point 2");
  }
}
