package org.flexwright.shells.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.BuildDirection;
import org.flexwright.quantity.Angle;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class PressedPlateTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(PressedPlateTest.class, "pressed_plate.csv");

  /** So slender that shear adds nothing. */
  private static final double A = 1e4;

  static Stream<ReferenceCase> pressures() {
    return TABLE.cases("pressed plate pressure");
  }

  static Stream<ReferenceCase> strains() {
    return TABLE.cases("pressed plate strain");
  }

  static Stream<ReferenceCase> volumes() {
    return TABLE.cases("pressed plate volume");
  }

  private static Response ask(PressedPlate.Rim rim, double nu, double w) {
    return PressedPlate.of(rim, mm(A), mm(1)).respond(Grades.linear(nu), LoadCase.toTravel(mm(w)));
  }

  private static Response ask(ReferenceCase c) {
    return ask(PressedPlate.Rim.valueOf(c.text("rim")), c.input("nu"), c.input("w"));
  }

  @ParameterizedTest
  @MethodSource("pressures")
  void pressureMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).load().nominal() / 1e6 * Math.pow(A, 4));
  }

  @ParameterizedTest
  @MethodSource("strains")
  void strainMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).strain().nominal() * A * A);
  }

  @ParameterizedTest
  @MethodSource("volumes")
  void volumeMeetsReference(ReferenceCase c) {
    TABLE.check(c, ask(c).path().last(Channel.VOLUME) / (Math.PI * A * A * 1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "CLAMPED, 0.5, 5, 416.05025",
    "SUPPORTED, 0.5, 1, 0.92457292",
    "SUPPORTED_SLIDING, 0.5, 1, 0.5034187",
    "CLAMPED, 0.3, 0.01, 9.7683855e-5"
  })
  void workIsTheEnergyOfBendingAndStretch(
      PressedPlate.Rim rim, double nu, double w, double energy) {
    // energies from the fields of a boundary-value solver; 16 trapezia are good to 1 %
    LoadPath path = ask(rim, nu, w).path();
    double sum = 0.0;
    for (int i = 1; i < path.size(); i++) {
      double mean = 0.5 * (path.value(Channel.PRESSURE, i) + path.value(Channel.PRESSURE, i - 1));
      sum += mean * (path.value(Channel.VOLUME, i) - path.value(Channel.VOLUME, i - 1));
    }
    double unit = Math.PI * 1e6 * 1e-9 / (A * A);
    assertThat(sum / unit / energy).isCloseTo(1.0, within(0.01));
  }

  @ParameterizedTest
  @EnumSource(PressedPlate.Rim.class)
  void stiffensAllAlong(PressedPlate.Rim rim) {
    // with edges held the load goes over to the cube of the travel: power 1 at rest, below 3 on
    double last = 0.0;
    for (double w = 0.01; w < 7.0; w += 0.3) {
      double p = ask(rim, 0.49, w).load().nominal() / w;
      assertThat(p).isGreaterThan(last);
      last = p;
    }
  }

  @ParameterizedTest
  @CsvSource({"CLAMPED, 1", "CLAMPED_SLIDING, 1", "SUPPORTED_SLIDING, 3.666666666666667"})
  void smallTravelIsThePlateWithShear(PressedPlate.Rim rim, double softer) {
    // Mindlin's plate, exact under even pressure; (5 + nu)/(1 + nu) at nu 0.5 where supported
    double nu = 0.5;
    for (double ratio : new double[] {0.01, 0.1, 0.2}) {
      PressedPlate plate = PressedPlate.of(rim, mm(20), mm(20 * ratio));
      Response r = plate.respond(Grades.linear(nu), LoadCase.toTravel(mm(1e-3)));
      double a = 0.02;
      double t = a * ratio;
      double d = 1e6 * t * t * t / (12 * (1 - nu * nu));
      double g = 1e6 / 3;
      double flexibility = softer * Math.pow(a, 4) / (64 * d) + a * a / (4 * 5.0 / 6.0 * g * t);
      assertThat(r.load().nominal() * flexibility).isCloseTo(1e-6, within(1e-6 * 1e-4));
    }
  }

  @Test
  void exponentsGoFromThreeToOne() {
    double bent = ask(PressedPlate.Rim.CLAMPED, 0.5, 0.01).load().exponents().of(Factor.SIZE_BIAS);
    double taut = ask(PressedPlate.Rim.CLAMPED, 0.5, 20).load().exponents().of(Factor.SIZE_BIAS);
    assertThat(bent).isCloseTo(3.0, within(0.01));
    assertThat(taut).isBetween(1.0, 1.1);
  }

  @Test
  void doesWhatEveryPartMust() {
    PartCase<PressedPlate> pressed =
        PartCase.of(
            "pressed plate",
            (s, d) ->
                PressedPlate.of(
                    d.oneOf(PressedPlate.Rim.values()), mm(20 * s), mm(d.between(0.3, 6) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.02, 8) * s)));
    PartHarness.check(pressed, Grades.rubber(), 21);
  }

  @Test
  void saysWhereItEnds() {
    PressedPlate plate = PressedPlate.of(PressedPlate.Rim.CLAMPED, mm(20), mm(0.1));
    Response r = plate.respond(Grades.rubber(), LoadCase.toTravel(mm(8)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.path().last(Channel.TRAVEL)).isCloseTo(5e-3, within(1e-12));
    assertThat(r.caveats().toString()).contains("travel / wall").contains("travel / radius");
    assertThat(plate.respond(Grades.rubber(), LoadCase.toTravel(mm(0.5))).caveats()).isEmpty();
    assertThatThrownBy(() -> plate.wall(mm(20))).hasMessageContaining("that is a block");
    assertThatThrownBy(() -> plate.respond(Grades.rubber(), LoadCase.toAngle(Angle.degrees(3))))
        .hasMessageContaining("load case");
    assertThat(plate).hasToString("clamped plate under pressure, radius 20 mm, wall 0.1 mm");
    assertThat(plate.printedVolume().mm3()).isCloseTo(Math.PI * 40, within(1e-6));
    assertThat(
            plate
                .build(BuildDirection.AXIS_LYING)
                .respond(Grades.rubber(), LoadCase.toTravel(mm(0.1)))
                .strainCrossesLayers())
        .isTrue();
  }
}
