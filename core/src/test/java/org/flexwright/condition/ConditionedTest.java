package org.flexwright.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.condition.ConditionTablesTest.SOURCE;
import static org.flexwright.condition.ConditionTablesTest.power;

import java.time.Duration;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.special.Erf;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawCheck;
import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlinPolynomial;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.Effort;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConditionedTest {

  private static final OgdenRoxburgh SOFTENING =
      OgdenRoxburgh.of(1.6, Pressure.mpa(0.3), 0.2, 1.15, SOURCE);

  static Stream<StrainEnergy> laws() {
    return Stream.of(
        NeoHookean.of(Pressure.mpa(0.4)),
        Gent.of(Pressure.mpa(0.27), 30),
        MooneyRivlinPolynomial.of(Pressure.mpa(0.2588), Pressure.mpa(-0.0449), Pressure.mpa(0)),
        Grade.polyurethane(ShoreA.of(85)).law());
  }

  @ParameterizedTest
  @MethodSource("laws")
  void keepsTheContract(StrainEnergy virgin) {
    for (double stretch : new double[] {0.6, 1.3, 1.7, 2.3}) {
      StrainEnergy law = Conditioned.to(stretch, Deformation.UNIAXIAL, SOFTENING).apply(virgin);
      LawCheck.Report report = LawCheck.of(law).report();
      assertThat(report.passed()).as(report.toString()).isTrue();
      assertThat(law.energy(1, 1, 1)).isCloseTo(0, within(1e-9));
      assertThat(law.shearModulus()).isLessThan(virgin.shearModulus());
    }
  }

  /** Softening takes no stability away: the scan ends no earlier than that of the virgin law. */
  @ParameterizedTest
  @MethodSource("laws")
  void isStableWhereTheVirginLawIs(StrainEnergy virgin) {
    if (virgin instanceof Gent) {
      return; // the scan runs beyond locking
    }
    StrainEnergy law = Conditioned.to(1.7, Deformation.PLANAR, SOFTENING).apply(virgin);
    assertThat(Stability.range(law).high())
        .isGreaterThanOrEqualTo(Stability.range(virgin).high() * (1 - 1e-8));
    assertThat(law.range()).isEqualTo(virgin.range());
  }

  /** The energy given back is the work of the softened stress, by trapezoids along the path. */
  @Test
  void energyIsTheWorkOfTheStress() {
    StrainEnergy virgin = NeoHookean.of(Pressure.mpa(0.4));
    StrainEnergy law = Conditioned.to(2, Deformation.EQUIBIAXIAL, SOFTENING).apply(virgin);
    double work = 0;
    int n = 20_000;
    double before = 0;
    for (int i = 1; i <= n; i++) {
      double l = 1 + 2.0 * i / n;
      double stress = Deformation.UNIAXIAL.nominalStress(law, l).pa();
      work += 0.5 * (before + stress) * 2.0 / n;
      before = stress;
    }
    double side = 1 / Math.sqrt(3);
    assertThat(work).isCloseTo(law.energy(3, side, side), within(1e-7 * work));
  }

  @Test
  void beyondTheLargestEnergyItIsVirgin() {
    StrainEnergy virgin = NeoHookean.of(Pressure.mpa(0.4));
    StrainEnergy law = Conditioned.to(1.5, Deformation.UNIAXIAL, SOFTENING).apply(virgin);
    for (double l : new double[] {1.51, 2, 4}) {
      assertThat(Deformation.UNIAXIAL.nominalStress(law, l).pa())
          .isEqualTo(Deformation.UNIAXIAL.nominalStress(virgin, l).pa());
    }
    double[] l = Deformation.UNIAXIAL.stretches(1.5);
    double largest = virgin.energy(l[0], l[1], l[2]);
    double[] far = Deformation.UNIAXIAL.stretches(3);
    double lost = virgin.energy(far[0], far[1], far[2]) - law.energy(far[0], far[1], far[2]);
    assertThat(lost).isCloseTo(SOFTENING.loss(Pressure.pa(largest)).pa(), within(1e-6));
    double share =
        Deformation.UNIAXIAL
            .nominalStress(law, 1.3)
            .ratioTo(Deformation.UNIAXIAL.nominalStress(virgin, 1.3));
    double[] at = Deformation.UNIAXIAL.stretches(1.3);
    double expected =
        SOFTENING.share(Pressure.pa(virgin.energy(at[0], at[1], at[2])), Pressure.pa(largest));
    assertThat(share).isCloseTo(expected, within(1e-12)).isLessThan(0.95);
    assertThat(SOFTENING.conditioned(virgin, Pressure.pa(0))).isSameAs(virgin);
  }

  @Property(seed = "72", tries = 2000)
  void sharesLieBetweenTheirBounds(
      @ForAll @DoubleRange(min = 1.01, max = 20) double r,
      @ForAll @DoubleRange(min = 0.01, max = 100) double m,
      @ForAll @DoubleRange(min = 0, max = 3) double beta,
      @ForAll @DoubleRange(min = 0, max = 1e3) double largest,
      @ForAll @DoubleRange(min = 0, max = 1.2) double part) {
    OgdenRoxburgh law = OgdenRoxburgh.of(r, Pressure.mpa(m), beta, 1, SOURCE);
    double share = law.share(Pressure.mpa(part * largest), Pressure.mpa(largest));
    assertThat(share).isBetween(1 - 1 / r, 1.0);
    assertThat(law.loss(Pressure.mpa(largest)).mpa()).isBetween(0.0, largest / r * (1 + 1e-12));
  }

  /** The series against the continued fraction of another library. */
  @Test
  void errorFunctionAgreesWithAnotherRoute() {
    for (double x = 0; x < 7; x += 0.003) {
      assertThat(ErrorFunction.at(x)).isCloseTo(Erf.erf(x), within(5e-15));
      double rise = (Erf.erf(x + 1e-5) - Erf.erf(x - 1e-5)) / 2e-5;
      assertThat(ErrorFunction.slope(x)).isCloseTo(rise, within(1e-9));
    }
    assertThat(ErrorFunction.at(Double.POSITIVE_INFINITY)).isEqualTo(1);
  }

  /** m is an energy of the material as tested: softening first, then time and temperature. */
  @Test
  void orderMattersAndSofteningComesFirst() {
    Grade grade = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(0.5)));
    Condition worked = Conditioned.to(1.8, Deformation.UNIAXIAL, SOFTENING);
    Held held = Held.of(Duration.ofDays(1), power(0.1)).reference(Duration.ofSeconds(1));
    double first = grade.under(worked).under(held).secantModulus(0.2).pa();
    assertThat(first)
        .isCloseTo(grade.under(worked).secantModulus(0.2).pa() * held.factor(), within(1e-6));
    double last = grade.under(held).under(worked).secantModulus(0.2).pa();
    assertThat(last / first).as("less energy, less softening").isGreaterThan(1.05);
    Grade soft = grade.under(worked);
    assertThat(Math.exp(2 * soft.factors(Length.mm(1)).sigma(Factor.MODULUS)))
        .isGreaterThanOrEqualTo(1.15);
    assertThat(soft.caveats()).hasSize(3);
    assertThat(soft.caveats().toString()).contains("(set)", "borne the stretch", "may stiffen");
    assertThat(soft.sources()).contains(SOURCE);
    assertThat(soft.law()).asString().contains("conditioned to");
  }

  @Test
  void nothingIsAllocated() {
    StrainEnergy law =
        Conditioned.to(2, Deformation.UNIAXIAL, SOFTENING).apply(NeoHookean.of(Pressure.mpa(0.4)));
    double[] g = new double[3];
    double[] h = new double[6];
    double[] l = {1.3};
    Effort effort =
        Effort.numberWithin(
            0,
            () -> {
              l[0] = l[0] > 1.6 ? 1.05 : l[0] + 0.001;
              double side = 1 / Math.sqrt(l[0]);
              law.gradient(l[0], side, side, g);
              law.hessian(l[0], side, side, h);
              return law.energy(l[0], side, side) + g[0] + h[0];
            });
    assertThat(effort.nanos()).isLessThan(50_000);
  }

  @Test
  void constantsThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> OgdenRoxburgh.of(1, Pressure.mpa(1), 0, 1, SOURCE))
        .hasMessageContaining("r of the softening is 1");
    assertThatThrownBy(() -> OgdenRoxburgh.of(2, Pressure.mpa(0), 0, 1, SOURCE))
        .hasMessageContaining("m of the softening");
    assertThatThrownBy(() -> Conditioned.to(0, Deformation.UNIAXIAL, SOFTENING))
        .hasMessageContaining("stretch of the cycles");
    assertThatThrownBy(
            () ->
                Conditioned.to(9, Deformation.UNIAXIAL, SOFTENING)
                    .apply(Gent.of(Pressure.mpa(1), 5)))
        .hasMessageContaining("one that the law can bear");
  }
}
