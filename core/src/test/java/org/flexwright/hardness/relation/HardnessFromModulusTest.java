package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Estimate;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

class HardnessFromModulusTest {

  @Property(seed = "41", tries = 500)
  void thereAndBack(@ForAll @Scale(5) @DoubleRange(min = 0.6, max = 99.4) double points) {
    Pressure e = ModulusFromHardness.of(ShoreA.of(points)).spread().nominal();
    assertThat(HardnessFromModulus.shoreA(e).nominal().points()).isCloseTo(points, within(1e-8));
  }

  @Property(seed = "42", tries = 500)
  void answersForEveryModulus(@ForAll @Scale(5) @DoubleRange(min = 0.001, max = 1000) double mpa) {
    Estimate<ShoreA> s = HardnessFromModulus.shoreA(Pressure.mpa(mpa));
    assertThat(s.nominal().points()).isBetween(0.5, 99.5);
    assertThat(s.band()).isEqualTo(Estimate.Band.SPREAD_OF_RELATIONS);
  }

  // Gent at 60 is 3.60507 MPa and IRHD 60 is 3.47811 MPa, computed by a separate program
  @Test
  void bandHoldsEveryRelationInUse() {
    Estimate<ShoreA> s = HardnessFromModulus.shoreA(Pressure.mpa(3.60507));
    double probit = new IrhdProbit().points(Pressure.mpa(3.60507));
    double qi = QiJoyceBoyce2003.onShoreA().points(Pressure.mpa(3.60507));
    assertThat(s.high().points()).isCloseTo(probit, within(1e-9)).isGreaterThan(60);
    assertThat(s.low().points()).isCloseTo(qi, within(1e-9)).isCloseTo(50.94, within(0.01));
    assertThat(s.nominal().points()).isBetween(qi, 60.0);
  }

  // the chart takes 46 D to 95 A; Sneddon cone and radiused cone at 46 D bracket
  @Test
  void stiffMaterialGoesThroughShoreD() {
    Estimate<ShoreA> s =
        HardnessFromModulus.shoreA(Pressure.mpa(Math.cbrt(33.7635 * 41.2762 * 49.3277)));
    assertThat(s.nominal().points()).isCloseTo(95, within(1e-4));
    assertThat(HardnessFromModulus.shoreA(Pressure.mpa(49.3277)).low().points())
        .isCloseTo(95, within(1e-3));
    assertThat(HardnessFromModulus.shoreA(Pressure.mpa(33.7635)).high().points())
        .isCloseTo(95, within(1e-3));
  }

  @Test
  void beyondTheScaleItSaysSo() {
    Estimate<ShoreA> soft = HardnessFromModulus.shoreA(Pressure.kpa(50));
    assertThat(soft.nominal()).isEqualTo(ShoreA.of(0.5));
    assertThat(soft.caveats())
        .anyMatch(c -> c.message().startsWith("50 kPa is softer than scale A can tell"));
    Estimate<ShoreA> hard = HardnessFromModulus.shoreA(Pressure.mpa(500));
    assertThat(hard.nominal()).isEqualTo(ShoreA.of(99.5));
    assertThat(hard.caveats())
        .anyMatch(c -> c.message().startsWith("500 MPa is harder than scale A can tell"));
  }

  @Test
  void withoutAModulusThereIsNoAnswer() {
    for (double mpa : new double[] {0, -1}) {
      assertThatThrownBy(() -> HardnessFromModulus.shoreA(Pressure.mpa(mpa)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining("modulus is ")
          .hasMessageContaining("allowed is finite and above 0");
    }
  }
}
