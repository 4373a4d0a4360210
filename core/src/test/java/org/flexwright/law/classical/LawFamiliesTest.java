package org.flexwright.law.classical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.flexwright.law.LawCheck;
import org.flexwright.law.LawFamily;
import org.flexwright.law.LawFamily.Constant;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class LawFamiliesTest {

  static Stream<LawFamily> families() {
    return Stream.concat(LawFamilies.ALL.stream(), Stream.of(LawFamilies.ogden(5)));
  }

  /** A point of the usual range, stresses for a shear modulus of 0.5 MPa. */
  private static double[] draw(LawFamily family, Random random) {
    return family.constants().stream()
        .mapToDouble(
            c -> {
              double part = random.nextInt(4) == 0 ? random.nextInt(2) : random.nextDouble();
              double value = c.usualLow() + part * (c.usualHigh() - c.usualLow());
              return c.kind() == Constant.Kind.STRESS ? Math.max(c.low(), 5e5 * value) : value;
            })
        .toArray();
  }

  @ParameterizedTest
  @MethodSource("families")
  void valuesAreTheInverse(LawFamily family) {
    Random random = new Random(11);
    for (int i = 0; i < 200; i++) {
      double[] values = draw(family, random);
      StrainEnergy law = family.law(values);
      double[] back = family.values(law).orElseThrow();
      assertThat(back).hasSize(values.length);
      for (int k = 0; k < back.length; k++) {
        boolean ogden = family.name().startsWith("Ogden");
        double rounding = ogden ? 2 * Math.ulp(values[k]) : 0.0;
        assertThat(back[k]).isCloseTo(values[k], within(rounding));
      }
    }
  }

  /** Contract and stability; Yeoh's range is its own to state. */
  @ParameterizedTest
  @MethodSource("families")
  void everyPointOfTheUsualRangeIsASoundLaw(LawFamily family) {
    Random random = new Random(12);
    for (int i = 0; i < 40; i++) {
      StrainEnergy law = family.law(draw(family, random));
      LawCheck.Report report = LawCheck.of(law).report();
      assertThat(report.passed()).as(report.toString()).isTrue();
    }
  }

  /** The corners of the bounds are laws too: a search may end there. */
  @ParameterizedTest
  @MethodSource("families")
  void cornersOfTheBoundsAreLaws(LawFamily family) {
    List<Constant> constants = family.constants();
    for (int corner = 0; corner < 1 << constants.size(); corner++) {
      double[] values = new double[constants.size()];
      for (int i = 0; i < values.length; i++) {
        Constant c = constants.get(i);
        double value = (corner >> i & 1) == 0 ? c.low() : c.high();
        values[i] = Double.isInfinite(value) ? Math.signum(value) * 1e9 : value;
      }
      StrainEnergy law = family.law(values);
      assertThat(law.shearModulus()).isPositive().isFinite();
      assertThat(law.energy(1, 1, 1)).isZero();
    }
  }

  @ParameterizedTest
  @MethodSource("families")
  void familyIsFoundByItsName(LawFamily family) {
    assertThat(LawFamilies.named(family.name())).contains(family);
    assertThat(family.name()).matches("[A-Za-z0-9-]+");
    assertThat(family.constants()).allMatch(c -> c.name().matches("[A-Za-z0-9]+"));
    assertThatThrownBy(() -> family.law(new double[9 + family.constants().size()]))
        .hasMessageContaining("constants of " + family.name());
  }

  @Test
  void otherNamesAndOtherLaws() {
    assertThat(LawFamilies.named("Ogden-0")).isEmpty();
    assertThat(LawFamilies.named("Ogden-12")).contains(LawFamilies.ogden(12));
    assertThat(LawFamilies.named("gent")).isEmpty();
    assertThatThrownBy(() -> LawFamilies.ogden(0)).hasMessageContaining("Ogden terms");
    StrainEnergy gent = Gent.of(Pressure.mpa(1), 50);
    assertThat(LawFamilies.ALL).filteredOn(f -> f.values(gent).isPresent()).hasSize(1);
    StrainEnergy five =
        MooneyRivlinPolynomial.of(Pressure.mpa(1), Pressure.mpa(1), Pressure.mpa(1))
            .squares(Pressure.mpa(1), Pressure.mpa(0));
    assertThat(LawFamilies.MOONEY_RIVLIN_3.values(five)).isEmpty();
    assertThat(LawFamilies.MOONEY_RIVLIN_5.values(five)).isPresent();
    assertThat(LawFamilies.ogden(3)).hasToString("Ogden-3[g1, alpha1, g2, alpha2, g3, alpha3]");
  }

  /** Ogden's set of 1972 in shares of its modulus 0.4225 MPa, by hand. */
  @Test
  void ogdenInShares() {
    Ogden law =
        Ogden.of(Pressure.mpa(0.63), 1.3).and(Pressure.mpa(0.0012), 5).and(Pressure.mpa(-0.01), -2);
    double[] values = LawFamilies.ogden(3).values(law).orElseThrow();
    double[] byHand = {409_500, 1.3, 3000, 5, 10_000, -2};
    for (int i = 0; i < 6; i++) {
      assertThat(values[i]).isCloseTo(byHand[i], within(1e-9 * Math.abs(byHand[i])));
    }
    assertThat(LawFamilies.ogden(2).values(law)).isEmpty();
  }
}
