package org.flexwright.condition;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Temperature;
import org.junit.jupiter.api.Test;

/** Figures at which no number would be left. */
class ConditionEndsTest {

  private static final Source SOURCE = Source.assumption("test");

  /** A term is a duration: at least a nanosecond, at most what a long counts in seconds. */
  @Test
  void aSeriesOfDurations() {
    PowerRelaxation law = PowerRelaxation.polyurethane();
    Duration second = Duration.ofSeconds(1);
    assertThat(law.prony(Duration.ofNanos(10), second).terms())
        .allMatch(t -> t.time().compareTo(Duration.ZERO) > 0);
    assertThat(law.prony(second, Duration.ofSeconds(100_000_000_000_000_000L)).terms())
        .isNotEmpty();
    assertThatThrownBy(() -> law.prony(Duration.ofNanos(1), second))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> law.prony(second, Duration.ofSeconds(Long.MAX_VALUE)))
        .isInstanceOf(InvalidInputException.class);
  }

  @Test
  void aShiftBeyondAHundredDecadesIsRefused() {
    Temperature cold = Temperature.celsius(-200);
    Temperature hot = Temperature.celsius(900);
    ArrheniusShift shift = ArrheniusShift.of(Energy.joules(1e6), 0.5, cold, hot, SOURCE);
    Relaxation law = shift.shift(PowerRelaxation.polyurethane(), hot, cold);
    assertThatThrownBy(() -> law.integral(1)).hasMessageContaining("shift of time");
    assertThatThrownBy(() -> law.band(1, 2)).hasMessageContaining("shift of time");
    Duration time = Duration.ofSeconds(10);
    TemperatureLaw modulus = shift.modulus(PowerRelaxation.polyurethane(), hot, time);
    assertThatThrownBy(() -> modulus.ratio(hot, cold)).hasMessageContaining("shift of time");
  }

  @Test
  void constantsWithoutDigitsAreRefused() {
    for (double m : new double[] {1e-300, 1e300}) {
      assertThatThrownBy(() -> OgdenRoxburgh.of(2, Pressure.pa(m), 0.1, 1.1, SOURCE))
          .hasMessageContaining("m of the softening");
    }
    assertThatThrownBy(() -> OgdenRoxburgh.of(2, Pressure.mpa(1), 1e300, 1.1, SOURCE))
        .hasMessageContaining("beta of the softening");
    Duration second = Duration.ofSeconds(1);
    assertThatThrownBy(() -> PowerRelaxation.measured(0.1, 1e300, second, second, SOURCE))
        .hasMessageContaining("half band");
  }
}
