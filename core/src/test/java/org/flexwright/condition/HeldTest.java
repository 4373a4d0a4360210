package org.flexwright.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.condition.ConditionTablesTest.SERIES;
import static org.flexwright.condition.ConditionTablesTest.SOURCE;
import static org.flexwright.condition.ConditionTablesTest.power;
import static org.flexwright.condition.ConditionTablesTest.seconds;
import static org.flexwright.quantity.Length.mm;

import java.time.Duration;
import java.util.List;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Temperature;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

class HeldTest {

  private static final Temperature LAB = Temperature.celsius(23);
  private static final Temperature WARM = Temperature.celsius(60);
  private static final Duration SECOND = Duration.ofSeconds(1);

  private static final ArrheniusShift SHIFT =
      ArrheniusShift.of(
          Energy.joules(6e4), 0.2, Temperature.celsius(15), Temperature.celsius(70), SOURCE);

  private static final ClosedForm HINGE =
      ClosedForm.of("hinge", mm(0.8))
          .spring(t -> 5e5 * t * t * t)
          .strainSlope(t -> 80 * t)
          .working(0.65)
          .sources(SOURCE);

  private static Response ask(Grade grade) {
    return HINGE.respond(
        grade, LoadCase.toTravel(mm(1)), RunControl.none(), Checks.of("hinge", SOURCE));
  }

  private static double force(Grade grade) {
    return ask(grade).load().nominal();
  }

  @Test
  void forceAfterADayIsThatOfThePowerOfTime() {
    for (Grade grade :
        List.of(
            Grade.polyurethane(ShoreA.of(90)),
            Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(0.5))))) {
      Grade held = grade.under(Held.of(Duration.ofDays(1), power(0.1)).reference(SECOND));
      assertThat(force(held) / force(grade)).isCloseTo(Math.pow(86400, -0.1), within(1e-12));
      // n off by 0.02 over 86400 times, joined with the band of the grade as independent
      double own = 2 * grade.factors(mm(1)).sigma(Factor.MODULUS);
      double wide = 2 * held.factors(mm(1)).sigma(Factor.MODULUS);
      assertThat(wide).isCloseTo(Math.hypot(own, 0.02 * Math.log(86400)), within(1e-12));
      Response r = ask(held);
      double half = Math.log(r.load().high(held.factors(Length.m(1))) / r.load().nominal());
      assertThat(half).isGreaterThanOrEqualTo(0.999 * wide);
      assertThat(held.sources()).contains(SOURCE);
      assertThat(r.sources()).containsAll(held.sources());
      assertThat(r.caveats()).containsAll(held.caveats());
    }
  }

  @Test
  void timesOfTestsThatAreNotStatedWidenTheBand() {
    Held stated = Held.of(Duration.ofHours(1), power(0.1)).reference(Duration.ofSeconds(10));
    Held assumed = Held.of(Duration.ofHours(1), power(0.1));
    assertThat(assumed.factor()).isEqualTo(stated.factor());
    double known = 0.02 * Math.log(360);
    assertThat(Math.log(stated.band())).isCloseTo(known, within(1e-12));
    assertThat(Math.log(assumed.band()))
        .isCloseTo(Math.hypot(known, 0.1 * Math.log(6)), within(1e-12));
    assertThat(assumed.sources()).hasSize(2);
    assertThat(stated.sources()).hasSize(1);
  }

  @Test
  void aHoldBeyondTheTestSaysSo() {
    Held day = Held.of(Duration.ofDays(1), PowerRelaxation.polyurethane());
    assertThat(day.factor()).isCloseTo(Math.pow(8640, -0.09), within(1e-12));
    Caveat.Excursion out =
        day.caveats().stream().flatMap(c -> c.excursion().stream()).findAny().orElseThrow();
    assertThat(out.value()).isEqualTo(86400);
    assertThat(out.range().high()).isCloseTo(16.67, within(0.01));
    assertThat(day.caveats()).anyMatch(c -> c.message().contains("moist"));
    assertThat(Held.of(seconds(12), PowerRelaxation.polyurethane()).caveats()).hasSize(1);
    // the exponent from both ends of the published rates lies in the band
    double haid = Math.log(2.83) / Math.log(16 / 0.006);
    assertThat(haid).isBetween(0.13, 0.1325).isLessThan(0.09 + 0.04 + 0.0025);
    Grade held = Grade.polyurethane(ShoreA.of(90)).under(day);
    assertThat(held.caveats()).containsAll(day.caveats());
    assertThat(ask(held).caveats()).containsAll(day.caveats());
    assertThat(ask(held).sources()).containsAll(day.sources());
  }

  /** The hereditary integral by quadrature of g itself, a route without G. */
  @Test
  void rampsAgreeWithQuadrature() {
    IterativeLegendreGaussIntegrator gauss = new IterativeLegendreGaussIntegrator(20, 1e-12, 1e-14);
    for (Relaxation law : List.of(power(0.13), SERIES)) {
      for (double rise : new double[] {0.01, 1, 30}) {
        for (double time : new double[] {1.5 * rise, 100 * rise}) {
          double sum = gauss.integrate(100_000, u -> law.at(time - u) / rise, 0, rise);
          double closed = LoadHistory.ramp(seconds(rise)).stress(law, seconds(time));
          assertThat(closed / sum).isCloseTo(1.0, within(1e-8));
        }
        // at its end a ramp of a power law is 1/(1 - n) above a sudden strain of the same age
        double end = LoadHistory.ramp(seconds(rise)).stress(law, seconds(rise));
        assertThat(end).isGreaterThan(law.at(rise));
      }
    }
    double slow = LoadHistory.ramp(seconds(1e-4)).stress(SERIES, seconds(10));
    assertThat(slow).isCloseTo(LoadHistory.step().stress(SERIES, seconds(10)), within(1e-5));
  }

  /** A ramp of time T has the modulus of a sudden strain read at T (1-n)^(1/n). */
  @Test
  void rampHasTheModulusOfAnEarlierStep() {
    double n = 0.1;
    double end = LoadHistory.ramp(seconds(60)).stress(power(n), seconds(60));
    double earlier = 60 * Math.pow(1 - n, 1 / n);
    assertThat(earlier / 60).isCloseTo(0.35, within(0.002));
    assertThat(power(n).at(earlier)).isCloseTo(end, within(1e-12));
    Held fast = Held.of(seconds(60), power(n)).history(LoadHistory.ramp(seconds(60)));
    assertThat(fast.reference(seconds(earlier)).factor()).isCloseTo(1.0, within(1e-9));
  }

  @Test
  void historiesOfJumpsAddUp() {
    LoadHistory two = LoadHistory.step().then(seconds(5), 1).then(Duration.ZERO, 3);
    assertThat(two.stress(SERIES, seconds(5))).isEqualTo(SERIES.at(5));
    assertThat(two.stress(SERIES, seconds(9)))
        .isCloseTo(SERIES.at(9) + 2 * SERIES.at(4), within(1e-12));
    assertThat(two.stress(SERIES, Duration.ZERO)).isZero();
    assertThat(two).hasToString("load history 0 at 0 s, 1 at 0 s, 1 at 5 s, 3 at 5 s");
  }

  /** The sum of exponentials against the power itself, over exponents and times. */
  @Test
  void seriesOfThePowerStaysWithinItsError() {
    for (double n : new double[] {0.01, 0.05, 0.1, 0.13, 0.3, 0.5, 0.9}) {
      PronyRelaxation series = power(n).prony(seconds(0.01), seconds(1e4));
      double worst = 0;
      for (double decade = -2; decade <= 4; decade += 0.01) {
        double t = Math.pow(10, decade);
        worst = Math.max(worst, Math.abs(series.at(t) / Math.pow(t, -n) - 1));
      }
      assertThat(worst).isBetween(n / 20, n / 9);
      assertThat(series.terms()).hasSize(9);
      assertThat(series.caveats(0.01, 1e4)).isEmpty();
      assertThat(series.caveats(0.001, 1e5)).hasSize(2);
      assertThat(Math.log(series.band(1, 10)))
          .isCloseTo(Math.hypot(0.02 * Math.log(1e6), n / 9), within(1e-12));
    }
  }

  /**
   * Temperature first, then the hold by the relaxation at that temperature: time-temperature
   * superposition of the whole. With the relaxation of the laboratory it is another number, but for
   * a power law, whose decades are all alike.
   */
  @Test
  void temperatureThenHoldIsOneShift() {
    double a = Math.exp(SHIFT.log(LAB, WARM));
    assertThat(a).isLessThan(0.1);
    Grade grade = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(0.5)));
    for (Relaxation law : List.of(SERIES, power(0.1))) {
      Condition warm = AtTemperature.of(WARM, SHIFT.modulus(law, LAB, SECOND));
      Held hold = Held.of(seconds(20), SHIFT.shift(law, LAB, WARM)).reference(SECOND);
      double both = force(grade.under(warm).under(hold)) / force(grade);
      assertThat(both).isCloseTo(law.at(20 / a) / law.at(1), within(1e-11));
      assertThat(force(grade.under(hold).under(warm)) / force(grade))
          .isCloseTo(both, within(1e-11));
      double cold = force(grade.under(warm).under(Held.of(seconds(20), law).reference(SECOND)));
      double off = Math.abs(cold / force(grade) / both - 1);
      if (law == SERIES) {
        assertThat(off).isGreaterThan(0.01);
      } else {
        assertThat(off).isLessThan(1e-11);
      }
    }
  }

  /** The integral of a shifted relaxation is that of its own values. */
  @Test
  void shiftedRelaxationIsOne() {
    Relaxation warm = SHIFT.shift(SERIES, LAB, WARM);
    double sum =
        new IterativeLegendreGaussIntegrator(20, 1e-12, 1e-14)
            .integrate(10_000, warm::at, 1e-12, 7);
    assertThat(warm.integral(7)).isCloseTo(sum, within(1e-9));
    assertThat(warm.band(1, 20)).isGreaterThan(SERIES.band(1, 20));
    assertThat(SHIFT.shift(power(0.1), LAB, WARM).band(1, 20))
        .as("a power law does not notice an error of the shift")
        .isCloseTo(power(0.1).band(1, 20), within(1e-12));
    assertThat(warm.sources()).hasSize(2);
    assertThat(warm).hasToString("Prony series of 2 term(s), rest 0.6 at 60 degC");
    assertThat(SHIFT.shift(SERIES, LAB, Temperature.celsius(90)).caveats(2, 40))
        .as("the temperature, and both times that fall behind the series")
        .hasSize(3);
  }

  @Test
  void timesThatMakeNoSenseAreRefused() {
    assertThatThrownBy(() -> Held.of(Duration.ZERO, SERIES))
        .hasMessage("time under strain is 0 s, allowed is finite and above 0");
    assertThatThrownBy(() -> Held.of(SECOND, SERIES).reference(Duration.ofSeconds(-1)))
        .hasMessageContaining("reference time");
    LoadHistory letGo = LoadHistory.step().then(SECOND, 0);
    assertThatThrownBy(() -> Held.of(Duration.ofHours(1), SERIES).history(letGo))
        .hasMessageContaining("stress left at 3600 s")
        .hasMessageContaining("ask while it is loaded");
    assertThatThrownBy(() -> power(1.0)).hasMessageContaining("relaxation exponent");
    assertThatThrownBy(() -> power(Double.NaN)).hasMessageContaining("relaxation exponent");
    assertThatThrownBy(() -> PronyRelaxation.rest(0, 1, SOURCE)).hasMessageContaining("rest");
    assertThatThrownBy(() -> SERIES.at(0)).hasMessageContaining("time under strain");
    assertThatThrownBy(() -> LoadHistory.step().then(Duration.ofSeconds(-1), 1))
        .hasMessageContaining("time to the next level");
    assertThatThrownBy(() -> SERIES.measured(SECOND, seconds(0.5)))
        .hasMessageContaining("not after the last");
  }
}
