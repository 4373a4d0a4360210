package org.flexwright.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

final class ClosedFormTest {

  private static final Source SOURCE = Source.derived("a test");
  private static final Grade GRADE = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(1)));

  /** A snapping part: load over modulus t u (2 - u/t), largest at u = t, zero at u = 2 t. */
  private static final ClosedForm SNAP =
      ClosedForm.of("snap", mm(2))
          .load(Channel.FORCE, (t, u) -> t * u * (2.0 - u / t))
          .strain((t, u) -> 0.01 * u / t)
          .limit(t -> t)
          .sources(SOURCE);

  private static Response ask(ClosedForm form, LoadCase load) {
    return form.respond(GRADE, load, RunControl.none(), Checks.of("m", SOURCE));
  }

  @Test
  void limitMovesWithTheSize() {
    Response r = ask(SNAP, LoadCase.toLimit());
    assertThat(r.path().last(Channel.TRAVEL)).isEqualTo(2e-3);
    // E at the working strain of 0 is 3 G
    assertThat(r.load().nominal()).isCloseTo(3e6 * 4e-6, within(1e-9));
    assertThat(r.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(2.0, within(1e-6));
    assertThat(r.strain().nominal()).isCloseTo(0.01, within(1e-15));
    assertThat(r.strain().exponents().of(Factor.SIZE_BIAS)).isCloseTo(0.0, within(1e-6));
    Response fixed = ask(SNAP, LoadCase.toTravel(mm(1)));
    // d ln (2 t u - u^2) / d ln t = 2 t / (2 t - u)
    assertThat(fixed.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(4.0 / 3.0, within(1e-6));
  }

  @Test
  void pathEndsWhereTheLoadFallsToZeroAndSaysSo() {
    Response r = ask(SNAP, LoadCase.toTravel(mm(8)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.termination().why()).contains("snaps through");
    assertThat(r.path().last(Channel.TRAVEL)).isEqualTo(3.5e-3);
    assertThat(r.load().nominal()).isEqualTo(r.path().last(Channel.FORCE)).isPositive();
    Response until = ask(SNAP.until(t -> 0.5 * t, "walls touch"), LoadCase.toTravel(mm(8)));
    assertThat(until.termination().why()).isEqualTo("walls touch");
    assertThat(until.path().last(Channel.TRAVEL)).isEqualTo(1e-3);
    assertThatThrownBy(() -> ask(SNAP, LoadCase.toTravel(mm(80))))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("travel is 80 mm")
        .hasMessageContaining("a sixteenth");
  }

  @Test
  void turnsAndInflates() {
    ClosedForm hinge =
        ClosedForm.of("hinge", mm(1))
            .turned()
            .load(Channel.MOMENT, (t, a) -> t * t * t * a)
            .strainSlope(t -> 0.1)
            .sources(SOURCE);
    Response r = ask(hinge, LoadCase.toAngle(Angle.rad(0.5)));
    assertThat(r.path().last(Channel.ANGLE)).isEqualTo(0.5);
    assertThat(r.path().last(Channel.MOMENT)).isCloseTo(3e6 * 1e-9 * 0.5, within(1e-12));
    assertThatThrownBy(() -> ask(hinge, LoadCase.toTravel(mm(1))))
        .hasMessageContaining("allowed is an angle")
        .hasMessageContaining("LoadCase.toAngle");
    assertThatThrownBy(() -> ask(SNAP, LoadCase.toAngle(Angle.rad(1))))
        .hasMessageContaining("a travel or the limit");
    assertThatThrownBy(() -> ask(SNAP.limit(t -> Double.NaN), LoadCase.toLimit()))
        .hasMessageContaining("limit load is none");
    ClosedForm balloon =
        ClosedForm.of("balloon", mm(1))
            .loadOfLaw(Channel.PRESSURE, (t, u) -> 5e5 * t * u)
            .strain((t, u) -> 3.0)
            .volume((t, u) -> 1e-6 + u * u)
            .sources(SOURCE);
    Response b = ask(balloon, LoadCase.toTravel(mm(2)));
    assertThat(b.path().value(Channel.VOLUME, 0)).isEqualTo(1e-6);
    assertThat(b.path().last(Channel.VOLUME)).isCloseTo(5e-6, within(1e-18));
    assertThat(b.path().last(Channel.PRESSURE)).isCloseTo(1.0, within(1e-12));
    assertThat(b.caveats()).as("a law bears any strain of its range").isEmpty();
    assertThat(ask(hinge, LoadCase.toAngle(Angle.rad(1.5))).caveats()).hasSize(1);
  }

  @Test
  void secantModulusStopsWhereTheLawEnds() {
    Grade grade = GRADE;
    double end = Math.log(grade.law().range().high());
    ClosedForm wild = SNAP.strain((t, u) -> 10.0 * end).working(1.0);
    assertThat(ask(wild, LoadCase.toTravel(Length.mm(1))).load().nominal())
        .isCloseTo(grade.secantModulus(end).pa() * 3e-6, within(1e-3));
  }
}
