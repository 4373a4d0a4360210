package org.flexwright.condition;

import java.time.Duration;
import java.util.stream.Stream;
import org.flexwright.evidence.Source;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Temperature;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ConditionTablesTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(ConditionTablesTest.class, "/reference/conditions.csv");

  static final Source SOURCE = Source.derived("a test");

  static final PronyRelaxation SERIES =
      PronyRelaxation.rest(0.6, 1.05, SOURCE)
          .term(0.3, Duration.ofSeconds(2))
          .term(0.1, Duration.ofSeconds(40));

  static PowerRelaxation power(double n) {
    return PowerRelaxation.measured(n, 0.02, Duration.ofMillis(1), Duration.ofDays(30), SOURCE);
  }

  static Duration seconds(double value) {
    return Duration.ofNanos(Math.round(1e9 * value));
  }

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    double value =
        switch (c.formula()) {
          case "power relaxation" ->
              Held.of(seconds(c.input("to")), power(c.input("n")))
                  .reference(seconds(c.input("from")))
                  .factor();
          case "ramp, power law" -> ramp(c).stress(power(c.input("n")), time(c));
          case "ramp, Prony series" -> ramp(c).stress(SERIES, time(c));
          case "creep of a power law" -> power(c.input("n")).creep(time(c));
          case "Prony series of a power law" -> prony(c);
          case "load history" ->
              LoadHistory.ramp(seconds(5))
                  .then(seconds(15), 1.0)
                  .then(seconds(2), 0.0)
                  .stress(c.text("law").equals("power") ? power(c.input("n")) : SERIES, time(c));
          case "Arrhenius shift" ->
              ArrheniusShift.of(
                      Energy.joules(1e3 * c.input("kJ")),
                      0.1,
                      Temperature.celsius(0),
                      Temperature.celsius(80),
                      SOURCE)
                  .log(celsius(c, "from"), celsius(c, "to"));
          case "WLF shift" ->
              WlfShift.universal(celsius(c, "Tg")).log(celsius(c, "from"), celsius(c, "to"));
          case "modulus by temperature" ->
              TemperatureTable.polyurethane().ratio(Temperature.celsius(23), celsius(c, "to"));
          default -> softening(c);
        };
    TABLE.check(c, value);
  }

  private static LoadHistory ramp(ReferenceCase c) {
    return LoadHistory.ramp(seconds(c.input("rise")));
  }

  private static Duration time(ReferenceCase c) {
    return seconds(c.input("time"));
  }

  private static Temperature celsius(ReferenceCase c, String name) {
    return Temperature.celsius(c.input(name));
  }

  private static double prony(ReferenceCase c) {
    PronyRelaxation series =
        power(c.input("n")).prony(Duration.ofMillis(10), Duration.ofSeconds(10_000));
    if (c.inputs().containsKey("time")) {
      return series.at(c.input("time"));
    }
    if (c.text("tau").equals("inf")) {
      return series.rest();
    }
    return series.terms().stream()
        .filter(t -> t.time().equals(seconds(c.input("tau"))))
        .findAny()
        .orElseThrow()
        .share();
  }

  private static double softening(ReferenceCase c) {
    OgdenRoxburgh law =
        OgdenRoxburgh.of(c.input("r"), Pressure.mpa(c.input("m")), c.input("beta"), 1.1, SOURCE);
    Pressure largest = Pressure.mpa(c.input("Wm"));
    if (c.formula().equals("Ogden-Roxburgh loss")) {
      return law.loss(largest).mpa();
    }
    if (c.formula().equals("Ogden-Roxburgh share")) {
      return law.share(Pressure.mpa(c.input("W")), largest);
    }
    if (!c.formula().equals("Ogden-Roxburgh energy")) {
      throw new IllegalArgumentException(c.formula());
    }
    // the stretch at which a neo-Hookean law of 1 MPa has the virgin energy W
    StrainEnergy virgin = NeoHookean.of(Pressure.mpa(1));
    double l = stretchOf(c.input("W"));
    double[] state = Deformation.UNIAXIAL.stretches(l);
    return law.conditioned(virgin, largest).energy(state[0], state[1], state[2]) / 1e6;
  }

  private static double stretchOf(double energy) {
    double low = 1.0;
    double high = 3.0;
    for (int i = 0; i < 60; i++) {
      double mid = 0.5 * (low + high);
      if (0.5 * (mid * mid + 2 / mid - 3) < energy) {
        low = mid;
      } else {
        high = mid;
      }
    }
    return low;
  }
}
