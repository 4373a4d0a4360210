package org.flexwright.shells.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.evidence.Factor;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class TautMembraneTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(TautMembraneTest.class, "taut_membrane.csv");

  static Stream<ReferenceCase> constants() {
    return TABLE.cases("membrane constant");
  }

  static Stream<ReferenceCase> pressures() {
    return TABLE.cases("membrane pressure");
  }

  static Stream<ReferenceCase> strains() {
    return TABLE.cases("membrane strain");
  }

  static Stream<ReferenceCase> volumes() {
    return TABLE.cases("membrane volume");
  }

  /** Radius 1 m, wall 1 mm, E 1 MPa. */
  private static Response ask(ReferenceCase c) {
    return TautMembrane.of(CircularPlate.Rim.SUPPORTED, mm(1000), mm(1))
        .prestrain(c.input("e"))
        .respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(1000 * c.input("w"))));
  }

  @ParameterizedTest
  @MethodSource("constants")
  void constantMeetsReference(ReferenceCase c) {
    TABLE.check(c, c.input("w") / Math.cbrt(ask(c).load().nominal() / 1e3));
  }

  @ParameterizedTest
  @MethodSource("pressures")
  void pressureMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).load().nominal() / 1e3);
  }

  @ParameterizedTest
  @MethodSource("strains")
  void strainMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).strain().nominal());
  }

  @ParameterizedTest
  @MethodSource("volumes")
  void volumeMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).path().last(Channel.VOLUME) / (Math.PI * c.input("w")));
  }

  @ParameterizedTest
  @EnumSource(CircularPlate.Rim.class)
  void plateGoesOverIntoMembraneWithinTheBand(CircularPlate.Rim rim) {
    PressedPlate.Rim held =
        rim == CircularPlate.Rim.CLAMPED ? PressedPlate.Rim.CLAMPED : PressedPlate.Rim.SUPPORTED;
    double last = Double.POSITIVE_INFINITY;
    for (double nu : new double[] {0.3, 0.5}) {
      for (double w : new double[] {0.1, 0.3, 1, 2.5, 5, 10, 20, 40}) {
        LoadCase load = LoadCase.toTravel(mm(w));
        Response plate = PressedPlate.of(held, mm(1e4), mm(1)).respond(Grades.linear(nu), load);
        Response taut = TautMembrane.of(rim, mm(1e4), mm(1)).respond(Grades.linear(nu), load);
        double ratio = plate.load().nominal() / taut.load().nominal();
        assertThat(ratio)
            .as("load, nu " + nu + " w/t " + w)
            .isBetween(taut.load().modelLow(), taut.load().modelHigh());
        double strain = plate.strain().nominal() / taut.strain().nominal();
        if (w >= 5) {
          assertThat(taut.caveats()).isEmpty();
          assertThat(strain)
              .as("strain, nu " + nu + " w/t " + w)
              .isBetween(taut.strain().modelLow(), taut.strain().modelHigh());
        } else {
          assertThat(taut.caveats()).isNotEmpty();
        }
        last = ratio;
      }
      assertThat(last).isCloseTo(1.0, within(0.02));
    }
  }

  @Test
  void bandOfThePlateHoldsPressureThatTurnsWithTheWall() {
    // the plate's pressure stays along the axis, the membrane's turns: at w/a 0.2 by 2 %
    LoadCase load = LoadCase.toTravel(mm(20));
    for (double nu : new double[] {0.3, 0.5}) {
      Response plate =
          PressedPlate.of(PressedPlate.Rim.SUPPORTED, mm(100), mm(0.5))
              .respond(Grades.linear(nu), load);
      Response taut =
          TautMembrane.of(CircularPlate.Rim.SUPPORTED, mm(100), mm(0.5))
              .respond(Grades.linear(nu), load);
      double ratio = taut.load().nominal() / plate.load().nominal();
      assertThat(ratio).isBetween(1.005, plate.load().modelHigh());
    }
  }

  @Test
  void deepDomesStillAnswer() {
    // strains far beyond the range, but a state exists to the end of the path
    Response r =
        TautMembrane.of(CircularPlate.Rim.CLAMPED, mm(20), mm(0.2))
            .respond(Grades.rubber(), LoadCase.toTravel(mm(30)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.path().last(Channel.TRAVEL)).isCloseTo(12e-3, within(1e-12));
    assertThat(r.path().size()).isEqualTo(17);
    assertThat(r.caveats().toString()).contains("stretch");
  }

  @Test
  void loadFollowsTheWallAndStrainDoesNot() {
    Response r =
        TautMembrane.of(CircularPlate.Rim.CLAMPED, mm(20), mm(0.2))
            .respond(Grades.rubber(), LoadCase.toTravel(mm(1.5)));
    assertThat(r.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(1.0, within(1e-6));
    assertThat(r.strain().exponents().of(Factor.SIZE_BIAS)).isCloseTo(0.0, within(1e-6));
  }

  @Test
  void doesWhatEveryPartMust() {
    PartCase<TautMembrane> taut =
        PartCase.of(
            "taut membrane",
            (s, d) ->
                TautMembrane.of(
                        d.oneOf(CircularPlate.Rim.values()), mm(20 * s), mm(d.between(0.05, 1) * s))
                    .prestrain(d.oneOf(0.0, 0.0, 0.002, 0.02)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.3, 5) * s)));
    PartHarness.check(taut, Grades.rubber(), 24);
  }

  @Test
  void sayWhatIsWrong() {
    TautMembrane taut = TautMembrane.of(CircularPlate.Rim.CLAMPED, mm(30), mm(0.3));
    assertThatThrownBy(() -> taut.wall(mm(30))).hasMessageContaining("that is a block");
    assertThatThrownBy(() -> taut.prestrain(-0.1)).hasMessageContaining("prestrain");
    assertThat(taut).hasToString("clamped membrane, radius 30 mm, wall 0.3 mm");
    assertThat(taut.prestrain(0.01))
        .hasToString("clamped membrane, radius 30 mm, wall 0.3 mm, prestrain 0.01");
    assertThat(taut.printedVolume().mm3()).isCloseTo(Math.PI * 270, within(1e-6));
  }
}
