package org.flexwright.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.condition.ConditionTablesTest.SERIES;
import static org.flexwright.condition.ConditionTablesTest.SOURCE;
import static org.flexwright.condition.ConditionTablesTest.power;

import java.time.Duration;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Temperature;
import org.junit.jupiter.api.Test;

class AtTemperatureTest {

  private static final Temperature LAB = Temperature.celsius(23);

  private static Temperature celsius(double t) {
    return Temperature.celsius(t);
  }

  private static ArrheniusShift arrhenius(double kilojoules) {
    return ArrheniusShift.of(
        Energy.joules(1e3 * kilojoules), 0.2, celsius(15), celsius(70), SOURCE);
  }

  @Test
  void stiffnessAtSixtyDegrees() {
    Grade grade = Grade.polyurethane(ShoreA.of(90));
    TemperatureTable table = TemperatureTable.polyurethane();
    Grade warm = grade.under(AtTemperature.of(celsius(60), table));
    for (double strain : new double[] {0.0, 0.05, 0.5}) {
      assertThat(warm.secantModulus(strain).ratioTo(grade.secantModulus(strain)))
          .isCloseTo(table.ratio(LAB, celsius(60)), within(1e-12));
    }
    double own = grade.factors(Length.mm(1)).sigma(Factor.MODULUS);
    double added = Math.log(table.band(LAB, celsius(60))) / 2;
    assertThat(added).isCloseTo(0.5 * 37.0 / 47.0 * Math.log(1.66653), within(1e-5));
    assertThat(warm.factors(Length.mm(1)).sigma(Factor.MODULUS))
        .isCloseTo(Math.hypot(own, added), within(1e-12));
    assertThat(warm.sources()).containsAll(table.sources());
    assertThat(warm.caveats()).anyMatch(c -> c.message().contains("strain at break"));
  }

  /** The default band holds both grades at each temperature, at both ends of the table. */
  @Test
  void theDefaultHoldsItsOwnSheets() {
    TemperatureTable table = TemperatureTable.polyurethane();
    double[][] sheets = {
      {70, 51.71 / 68.88}, {70, 62.12 / 137.9}, {-30, 59.0 / 26.9}, {-30, 1206.58 / 137.9}
    };
    for (double[] sheet : sheets) {
      double band = table.band(LAB, celsius(sheet[0]));
      double off = Math.abs(Math.log(sheet[1] / table.ratio(LAB, celsius(sheet[0]))));
      assertThat(off).isCloseTo(0.5 * Math.log(band), within(1e-9));
    }
    assertThat(table.ratio(LAB, celsius(70)) * table.band(LAB, celsius(70))).isLessThan(1);
  }

  @Test
  void beyondItsEndsItKeepsThemAndSaysSo() {
    TemperatureTable table = TemperatureTable.polyurethane();
    AtTemperature hot = AtTemperature.of(celsius(110), table);
    Caveat.Excursion out = hot.caveats().get(0).excursion().orElseThrow();
    assertThat(out.value()).isCloseTo(110, within(1e-9));
    assertThat(out.range().high()).isCloseTo(70, within(1e-9));
    assertThat(table.ratio(LAB, celsius(110))).isEqualTo(table.ratio(LAB, celsius(70)));
    assertThat(AtTemperature.of(celsius(50), table).caveats())
        .allMatch(c -> c.excursion().isEmpty());
    assertThat(arrhenius(60).log(LAB, celsius(90))).isEqualTo(arrhenius(60).log(LAB, celsius(70)));
    // far below the pole of the formula, at absolute zero
    WlfShift wlf = WlfShift.universal(celsius(-35));
    assertThat(wlf.log(LAB, Temperature.kelvin(0))).isEqualTo(wlf.log(LAB, celsius(-35)));
    TemperatureLaw law = wlf.modulus(power(0.1), LAB, Duration.ofSeconds(1));
    assertThat(law.caveats(LAB, Temperature.kelvin(0)).get(0).excursion()).isPresent();
    assertThat(law.ratio(LAB, Temperature.kelvin(0))).isFinite().isGreaterThan(1);
  }

  @Property(seed = "71", tries = 2000)
  void theTableIsMonotoneAndClosesRound(
      @ForAll @DoubleRange(min = -60, max = 120) double from,
      @ForAll @DoubleRange(min = -60, max = 120) double to) {
    for (TemperatureLaw law :
        new TemperatureLaw[] {
          TemperatureTable.polyurethane(),
          arrhenius(60).modulus(SERIES, LAB, Duration.ofSeconds(5)),
          WlfShift.universal(celsius(-35)).modulus(power(0.1), LAB, Duration.ofSeconds(5))
        }) {
      double ratio = law.ratio(celsius(from), celsius(to));
      assertThat(ratio).isFinite().isPositive();
      if (to > from) {
        assertThat(ratio).isLessThanOrEqualTo(1 + 1e-12);
      }
      assertThat(ratio * law.ratio(celsius(to), celsius(from))).isCloseTo(1, within(1e-9));
      assertThat(law.band(celsius(from), celsius(to))).isFinite().isGreaterThanOrEqualTo(1);
      assertThat(law.band(celsius(from), celsius(from))).isEqualTo(1);
    }
  }

  /** ln E of a power law falls with n ln a_T, and so does its error. */
  @Test
  void shiftOfAPowerLawIsAnExponent() {
    double log = arrhenius(60).log(LAB, celsius(60));
    TemperatureLaw law = arrhenius(60).modulus(power(0.1), LAB, Duration.ofSeconds(7));
    assertThat(Math.log(law.ratio(LAB, celsius(60)))).isCloseTo(0.1 * log, within(1e-12));
    assertThat(Math.log(law.band(LAB, celsius(60))))
        .isCloseTo(Math.hypot(0.2 * 0.1 * log, 0.02 * log), within(1e-12));
    assertThat(law.sources()).hasSize(2);
  }

  @Test
  void tablesOfTheUser() {
    TemperatureTable table =
        TemperatureTable.of(LAB, SOURCE).point(celsius(60), 0.7, 1.1).point(celsius(0), 1.4, 1.2);
    assertThat(table.ratio(celsius(0), celsius(60))).isCloseTo(0.5, within(1e-12));
    assertThat(table.band(celsius(0), celsius(60))).isCloseTo(1.32, within(1e-12));
    assertThat(table.band(celsius(60), celsius(60))).isEqualTo(1);
    assertThat(table).hasToString("modulus at [0 degC, 23 degC, 60 degC]");
    assertThat(AtTemperature.of(celsius(60), table).reference(celsius(0)).band())
        .isCloseTo(1.32, within(1e-12));
    TemperatureTable bare = TemperatureTable.of(LAB, SOURCE);
    assertThat(bare.ratio(LAB, celsius(60))).isEqualTo(1);
    assertThat(bare.caveats(LAB, celsius(60))).hasSize(1);
    assertThatThrownBy(() -> table.point(celsius(60), 0.8, 1))
        .hasMessageContaining("temperature of a point is 60 degC");
    assertThatThrownBy(() -> table.point(celsius(70), -0.8, 1)).hasMessageContaining("ratio");
    assertThatThrownBy(() -> WlfShift.universal(celsius(-35)).range(celsius(-90), celsius(0)))
        .hasMessageContaining("lowest temperature of the WLF shift");
    assertThatThrownBy(() -> arrhenius(-1)).hasMessageContaining("activation energy");
  }
}
