package org.flexwright.shells.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Source;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

final class WallTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(WallTest.class, "wall.csv");

  static Stream<ReferenceCase> plates() {
    return TABLE.cases("round plate");
  }

  static Stream<ReferenceCase> strips() {
    return TABLE.cases("strip stiffness");
  }

  static Stream<ReferenceCase> strains() {
    return TABLE.cases("strip strain");
  }

  private static Response tiny(ReferenceCase c) {
    Strip.Ends ends = Strip.Ends.valueOf(c.text("ends"));
    return Strip.of(ends, mm(100), mm(200), mm(1))
        .respond(Grades.linear(0.5), LoadCase.toTravel(mm(0.01)));
  }

  @ParameterizedTest
  @MethodSource("strips")
  void stripMeetsVirtualForces(ReferenceCase c) {
    double bending = 1e6 / 0.75 * 0.2 * 1e-9 / 12;
    TABLE.check(c, tiny(c).load().nominal() / 1e-5 * 1e-3 / bending);
  }

  @ParameterizedTest
  @MethodSource("strains")
  void stripStrainMeetsVirtualForces(ReferenceCase c) {
    TABLE.check(c, tiny(c).strain().nominal() * 1e4 / 0.01);
  }

  @ParameterizedTest
  @MethodSource("plates")
  void plateMeetsReference(ReferenceCase c) {
    double nu = c.input("nu");
    CircularPlate plate =
        CircularPlate.of(
            CircularPlate.Rim.valueOf(c.text("rim")), mm(100), mm(100 * c.input("c")), mm(1));
    Response r = plate.respond(Grades.linear(nu), LoadCase.toTravel(mm(1e-3)));
    double d = 1e6 * 1e-9 / (12 * (1 - nu * nu));
    TABLE.check(c, 1e-6 / r.load().nominal() * d / 0.01);
  }

  @ParameterizedTest
  @EnumSource(CircularPlate.Rim.class)
  void fieldOfThePlateBelongsToItsDeflection(CircularPlate.Rim rim) {
    // the slope, integrated from the rim, must give the closed form of the deflection
    double nu = 0.4;
    double c = 0.3;
    PlateField field = new PlateField(c, rim, nu);
    int n = 200000;
    double w = 0.0;
    for (int i = 0; i < n; i++) {
      double r = (i + 0.5) / n;
      w += field.slopeOverRadius(r) * r / n;
    }
    CircularPlate plate = CircularPlate.of(rim, mm(10), mm(3), mm(0.1));
    assertThat(w).isCloseTo(plate.flexibility(nu), within(1e-9));
    double h = 1e-5;
    for (double r : new double[] {0.1, 0.29, 0.31, 0.9}) {
      double slope =
          (field.slopeOverRadius(r + h) * (r + h) - field.slopeOverRadius(r - h) * (r - h))
              / (2 * h);
      assertThat(field.radial(r)).isCloseTo(slope, within(1e-8));
    }
    double edge = field.radial(1.0) + nu * field.slopeOverRadius(1.0);
    if (rim == CircularPlate.Rim.SUPPORTED) {
      assertThat(edge).isCloseTo(0.0, within(1e-14));
    } else {
      assertThat(field.slopeOverRadius(1.0)).isCloseTo(0.0, within(1e-15));
      // edge moment -P/(4 pi) (1 - c^2/2)
      assertThat(edge).isCloseTo(-(1 - 0.5 * c * c) / (4 * Math.PI), within(1e-14));
      // centre (1 + nu) P/(4 pi) [ln(a/c) + c^2/4]
      assertThat((1 + nu) * field.radial(0.0))
          .isCloseTo((1 + nu) / (4 * Math.PI) * (-Math.log(c) + c * c / 4), within(1e-14));
    }
    assertThat(field.working()).isBetween(0.3, 2.0);
  }

  @Test
  void stopKeepsTheStatesSoFar() {
    RunControl stop =
        new RunControl() {
          private double done;

          @Override
          public void progress(Progress p) {
            done = p.fraction();
          }

          @Override
          public boolean stopRequested() {
            return done >= 0.25;
          }
        };
    Response r =
        Strip.of(Strip.Ends.GUIDED, mm(20), mm(30), mm(1))
            .respond(Grades.rubber(), LoadCase.toTravel(mm(1)), stop);
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.STOPPED);
    assertThat(r.path().size()).isEqualTo(5);
    assertThat(r.load().nominal()).isEqualTo(r.path().last(org.flexwright.response.Channel.FORCE));
  }

  private static Response ask(ClosedForm form) {
    Checks checks = Checks.of("hinge", Source.derived("a test"));
    return form.respond(Grades.linear(0.49), LoadCase.toTravel(mm(1)), RunControl.none(), checks);
  }

  @Test
  void wallsInSeriesAverageTheirSizes() {
    ClosedForm one =
        ClosedForm.of("hinge", mm(1))
            .spring(t -> 1e6 * t * t * t)
            .strainSlope(t -> 50 * t)
            .working(0.65);
    Response single = ask(one);
    Response four = ask(one.alike(4));
    assertThat(single.load().exponents().of(Factor.SIZE_SCATTER)).isCloseTo(3, within(1e-6));
    assertThat(single.strain().exponents().of(Factor.SIZE_SCATTER)).isCloseTo(1, within(1e-6));
    assertThat(four.load().exponents().of(Factor.SIZE_SCATTER)).isCloseTo(1.5, within(1e-6));
    assertThat(four.strain().exponents().of(Factor.SIZE_SCATTER)).isCloseTo(1 - 2.25, within(1e-6));
    assertThat(four.load().exponents().of(Factor.SIZE_BIAS)).isCloseTo(3, within(1e-6));
    assertThat(one).hasToString("closed form of hinge, force by travel, size 1 mm");
  }

  @Test
  void sayWhatIsWrongAndWhatIsDoubtful() {
    Strip strip = Strip.of(Strip.Ends.BUILT_IN, mm(20), mm(10), mm(2));
    assertThatThrownBy(() -> strip.wall(mm(20))).hasMessageContaining("that is a block");
    assertThat(strip.respond(Grades.rubber(), LoadCase.toTravel(mm(1))).caveats().toString())
        .contains("bending length")
        .contains("narrower than long")
        .contains("travel / wall");
    assertThat(
            Strip.of(Strip.Ends.CANTILEVER, mm(20), mm(30), mm(1))
                .respond(Grades.rubber(), LoadCase.toTravel(mm(4)))
                .caveats()
                .toString())
        .contains("travel / length");
    CircularPlate plate = CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(20), mm(4), mm(1.2));
    assertThatThrownBy(() -> plate.patch(mm(20))).hasMessageContaining("within the rim");
    assertThatThrownBy(() -> plate.wall(mm(20))).hasMessageContaining("that is a block");
    assertThat(plate.respond(Grades.rubber(), LoadCase.toTravel(mm(0.5))).caveats()).isEmpty();
    Response much = plate.respond(Grades.rubber(), LoadCase.toTravel(mm(1.2)));
    assertThat(much.caveats()).singleElement().asString().contains("travel / wall is 1");
    assertThat(much.load().modelHigh()).isCloseTo(1.6, within(1e-12));
    assertThat(plate).hasToString("clamped round plate, radius 20 mm, patch 4 mm, wall 1.2 mm");
    assertThat(strip).hasToString("built-in strip, length 20 mm, width 10 mm, wall 2 mm");
    assertThat(plate.printedVolume().mm3()).isCloseTo(Math.PI * 400 * 1.2, within(1e-6));
  }
}
