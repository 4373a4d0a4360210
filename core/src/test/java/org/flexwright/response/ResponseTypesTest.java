package org.flexwright.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

class ResponseTypesTest {

  private static LoadPath path() {
    return LoadPath.of(1, Channel.TRAVEL, Channel.FORCE)
        .add(0, 0)
        .add(1e-3, 3)
        .add(2e-3, 2)
        .end(Termination.completed());
  }

  @Test
  void aPathKeepsItsStates() {
    LoadPath path = path();
    assertThat(path.size()).isEqualTo(3);
    assertThat(path.last(Channel.FORCE)).isEqualTo(2);
    assertThat(path.peak(Channel.FORCE)).isEqualTo(3);
    assertThat(path.value(Channel.TRAVEL, 1)).isEqualTo(1e-3);
    assertThat(path.channels()).containsExactly(Channel.TRAVEL, Channel.FORCE);
    path.values(Channel.FORCE)[0] = 99;
    assertThat(path.value(Channel.FORCE, 0)).isZero();
    assertThat(path).hasToString("3 states to travel 2 mm, force 2 N");
  }

  @Test
  void aPathThatStoppedSaysSo() {
    LoadPath path = LoadPath.of(1, Channel.FORCE).add(1).end(Termination.stopped("1 of 4 steps"));
    assertThat(path.toString()).contains("STOPPED").contains("1 of 4 steps");
  }

  @Test
  void badStatesAreRefused() {
    assertThatThrownBy(() -> LoadPath.of(1, Channel.FORCE).add(Double.NaN))
        .hasMessage("force is NaN N, allowed is a finite number");
    assertThatThrownBy(() -> LoadPath.of(1, Channel.FORCE).add(1, 2))
        .hasMessageContaining("values of a state");
    assertThatThrownBy(() -> LoadPath.of(1, Channel.FORCE).end(Termination.completed()))
        .hasMessageContaining("states of a path is 0");
    assertThatThrownBy(() -> path().value(Channel.FORCE, 3)).hasMessageContaining("0 to 2");
    assertThatThrownBy(() -> path().last(Channel.PRESSURE))
        .hasMessageContaining("channel is pressure")
        .hasMessageContaining("did not record it");
    assertThatThrownBy(() -> LoadCase.toTravel(Length.mm(0))).hasMessageContaining("travel is 0 m");
    assertThatThrownBy(() -> LoadCase.toHold(Force.newtons(-5)))
        .hasMessageContaining("holding force is -5 N");
  }

  @Test
  void aScaledValueMovesWithItsFactors() {
    Exponents n = Exponents.none().with(Factor.MODULUS, 1).with(Factor.SIZE_BIAS, 3);
    ScaledValue v = new ScaledValue(Channel.PRESSURE, 150e3, 30e3, n, 0.9, 1.2);
    assertThat(v.at(Factor.MODULUS, 1.1)).isCloseTo(30e3 + 120e3 * 1.1, within(1e-6));
    assertThat(v.at(Factor.SIZE_BIAS, 1.1)).isCloseTo(30e3 + 120e3 * 1.331, within(1e-6));
    assertThat(v.at(Factor.LIFE, 7)).isEqualTo(150e3);
    Factors none = Factors.none();
    assertThat(v.high(none)).isCloseTo(30e3 + 120e3 * 1.2, within(1e-6));
    assertThat(v.low(none)).isCloseTo(30e3 + 120e3 * 0.9, within(1e-6));
    Factors f = none.withBand(Factor.MODULUS, 1.3);
    double half = Math.hypot(Math.log(1.3), Math.log(1.2));
    assertThat(v.high(f)).isCloseTo(30e3 + 120e3 * Math.exp(half), within(1e-6));
  }

  @Test
  void scaledValuesThatMakeNoSenseAreRefused() {
    Exponents n = Exponents.none();
    assertThatThrownBy(() -> new ScaledValue(Channel.FORCE, 1, 2, n, 1, 1))
        .hasMessageContaining("above its offset");
    assertThatThrownBy(() -> ScaledValue.of(Channel.FORCE, 1, n).model(1.1, 1.2))
        .hasMessageContaining("low end of the model band is 1.1, allowed is at most 1");
    assertThatThrownBy(() -> ScaledValue.of(Channel.FORCE, Double.NaN, n))
        .hasMessageContaining("force is NaN");
  }

  @Test
  void theLogSlopeOfAPowerIsItsExponent() {
    assertThat(LogSlope.at(x -> 7 * Math.pow(x, 2.7), 0.3e-3)).isCloseTo(2.7, within(1e-9));
    // d ln(e^x)/d ln x = x
    assertThat(LogSlope.at(Math::exp, 1.7)).isCloseTo(1.7, within(1e-7));
  }
}
