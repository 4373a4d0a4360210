package org.flexwright.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Random;
import org.flexwright.InvalidInputException;
import org.flexwright.law.classical.ExtendedTube;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlinPolynomial;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.law.classical.Yeoh;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Laws at the ends of their numbers and of their ranges. */
class LawEndsTest {

  private static Pressure mpa(double value) {
    return Pressure.mpa(value);
  }

  /** Ways between those that a scan of a few ways meets: Yeoh at 0.78 of the way, for one. */
  @Test
  void everyStateInsideARangeIsStable() {
    List<StrainEnergy> laws =
        List.of(
            Yeoh.of(mpa(0.2), mpa(-0.01885), mpa(0.0009342)),
            Yeoh.of(mpa(0.2), mpa(-0.005967), mpa(0.00008261)),
            MooneyRivlinPolynomial.of(mpa(0.201), mpa(-0.03887), mpa(0.01425))
                .squares(mpa(-0.009851), mpa(0.001591)),
            MooneyRivlinPolynomial.of(mpa(0.01313), mpa(0.01902), mpa(0.003919))
                .squares(mpa(-0.0007705), mpa(0.001939)),
            Ogden.of(mpa(2), 1.656).and(mpa(0.0007579), 6.225));
    Random random = new Random(7);
    for (StrainEnergy law : laws) {
      double end = Math.log(law.range().high()) * (1 - 1e-6);
      Stability stability = Stability.of(law);
      for (int i = 0; i < 20_000; i++) {
        double strain = end * Math.sqrt(random.nextDouble());
        double way = -0.5 + 1.5 * random.nextDouble();
        BiaxialStretch state = new BiaxialStretch(Math.exp(strain), Math.exp(way * strain));
        assertThat(stability.stiffness(state)).as("%s at %s", law, state).isPositive();
      }
    }
  }

  /**
   * With d_i = sum mu alpha l_i^alpha and d_1 far above the others the softest direction leaves the
   * first stretch alone: (d_2 + d_3)/2, to a share of (d_2 + d_3)/d_1.
   */
  @Test
  void aStiffnessFarBelowTheGreatestKeepsItsDigits() {
    Ogden law = Ogden.of(mpa(2), 1.656).and(mpa(0.0007579), 6.225);
    double l1 = 600;
    double l2 = 0.2;
    double l3 = 1 / (l1 * l2);
    double sum = 0;
    for (double l : new double[] {l2, l3}) {
      sum += 2 * 1.656 * Math.pow(l, 1.656) + 0.0007579 * 6.225 * Math.pow(l, 6.225);
    }
    double exact = 0.5 * sum * 1e6 / (2 * law.shearModulus());
    double found = Stability.of(law).stiffness(new BiaxialStretch(l1, l2));
    assertThat(found).isCloseTo(exact, within(1e-9 * exact));
  }

  @Test
  void locksFarOut() {
    for (double locking : new double[] {1e20, 1e150, 1e300}) {
      for (Deformation mode : List.of(Deformation.UNIAXIAL, Deformation.PLANAR)) {
        assertThat(Gent.of(mpa(1), locking).lockingStretch(mode))
            .isCloseTo(Math.sqrt(locking), withinPercentage(1e-9));
      }
    }
  }

  @Test
  void constantsWithoutDigitsAreRefused() {
    ExtendedTube tube = ExtendedTube.of(mpa(1), mpa(1));
    assertThatThrownBy(() -> tube.beta(1e-200)).hasMessageContaining("0.001 to 20");
    assertThatThrownBy(() -> tube.delta(1e-160)).hasMessageContaining("take 0");
    assertThat(tube.delta(1e-8).range().high()).isGreaterThan(1e7);
    HenckyCurve curve =
        HenckyCurve.through(new double[] {0.01, 0.4}, new Pressure[] {mpa(1), mpa(3)});
    HenckyCurve faint = curve.scaled(1e-200);
    assertThatThrownBy(() -> curve.scaled(1e305)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> faint.scaled(1e-200)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> NeoHookean.of(mpa(1)).scaled(1e304))
        .hasMessageContaining("shear modulus times the factor");
    assertThatThrownBy(() -> new StabilityMap("law", List.of(), List.of()))
        .isInstanceOf(InvalidInputException.class);
  }
}
