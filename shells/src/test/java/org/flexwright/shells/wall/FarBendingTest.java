package org.flexwright.shells.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.shells.Ode;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class FarBendingTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(FarBendingTest.class, "far_bending.csv");

  private static final StrainEnergy NEO = NeoHookean.of(Pressure.mpa(1));

  static Stream<ReferenceCase> forces() {
    return TABLE.cases("cantilever bent far");
  }

  static Stream<ReferenceCase> approaches() {
    return TABLE.cases("approach of the tip");
  }

  static Stream<ReferenceCase> roots() {
    return TABLE.cases("curvature of the root");
  }

  static Stream<ReferenceCase> hinges() {
    return TABLE.cases("hinge moment");
  }

  static Stream<ReferenceCase> blocks() {
    return TABLE.cases("bent block");
  }

  static Stream<ReferenceCase> ends() {
    return TABLE.cases("root of a hinge");
  }

  /** A thin cantilever, L 1 m, E'I = 1 N m2. */
  private static Response bent(double travel) {
    double t = 1e-3;
    double width = 12 * 0.75 / (1e6 * t * t * t);
    return Cantilever.of(mm(1000), mm(1000 * width), mm(1000 * t))
        .respond(Grades.linear(0.5), LoadCase.toTravel(mm(1000 * travel)));
  }

  @ParameterizedTest
  @MethodSource("forces")
  void cantileverMeetsReference(ReferenceCase c) {
    TABLE.check(c, bent(c.input("travel")).load().nominal());
  }

  @ParameterizedTest
  @MethodSource("approaches")
  void tipComesNear(ReferenceCase c) {
    TABLE.check(c, TipElastica.ofTravel(c.input("travel")).approach());
  }

  @ParameterizedTest
  @MethodSource("roots")
  void strainIsThatOfTheRoot(ReferenceCase c) {
    TABLE.check(c, bent(c.input("travel")).strain().nominal() * 2e3);
  }

  /** Force, root curvature and work share of a beam that stretches and shears; tip angle known. */
  private static double[] reissner(double angle, double force, double slender) {
    double axial = slender * slender / 12; // EI/(EA L^2), plane strain
    double shear = axial * 24 / 5; // (5/6) G against E' = 4 G
    return Ode.run(
        1,
        new double[] {angle, 0, 0, 0},
        (s, y, d) -> {
          double n = force * Math.sin(y[0]);
          double q = force * Math.cos(y[0]);
          double e = 1 + axial * n;
          double g = shear * q;
          d[0] = -y[1]; // from the tip to the root
          d[1] = e * q - g * n;
          d[2] = e * Math.sin(y[0]) + g * Math.cos(y[0]);
          d[3] = Math.abs(y[1] * y[1] * y[1]);
        });
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 20, 45, 70, 85, 88.5})
  void elasticaMeetsIntegration(double degrees) {
    TipElastica e = TipElastica.ofAngle(Math.toRadians(degrees));
    double force = Ode.root(f -> reissner(e.angle(), f, 0)[0], 0.9 * e.force(), 1.1 * e.force());
    double[] y = reissner(e.angle(), force, 0);
    assertThat(e.force() / force).isCloseTo(1, within(1e-7));
    assertThat(e.travel() / y[2]).isCloseTo(1, within(1e-7));
    assertThat(e.root() / y[1]).isCloseTo(1, within(1e-7));
    assertThat(TipElastica.ofTravel(e.travel()).angle()).isCloseTo(e.angle(), within(1e-11));
  }

  @ParameterizedTest
  @CsvSource({"0.1,5", "0.1,40", "0.1,64", "0.1,76", "0.05,40", "0.05,79", "0.05,84"})
  void bandHoldsStretchAndShear(double slender, double degrees) {
    double angle = Math.toRadians(degrees);
    double guess = TipElastica.ofAngle(angle).force();
    double force = Ode.root(f -> reissner(angle, f, slender)[0], 0.5 * guess, 1.5 * guess);
    double travel = reissner(angle, force, slender)[2];
    Response r =
        Cantilever.of(mm(10), mm(20), mm(10 * slender))
            .respond(Grades.linear(0.5), LoadCase.toTravel(mm(10 * travel)));
    double model = TipElastica.ofTravel(travel).force();
    assertThat(force / model).isBetween(r.load().modelLow(), r.load().modelHigh());
  }

  @Test
  void workingShareIsThatOfTheCurvature() {
    assertThat(TipElastica.ofAngle(1e-3).working()).isCloseTo(0.75, within(1e-6));
    TipElastica e = TipElastica.ofAngle(1.3);
    double[] y = reissner(1.3, e.force(), 0);
    // int k^2 ds = work of the elastica = int k dp
    double squares =
        new SimpsonIntegrator(1e-9, 1e-12, 3, 60)
            .integrate(
                10000000,
                v -> Math.sqrt(2 * e.force() * (Math.sin(1.3) - Math.sin(1.3 - v * v))) * 2 * v,
                0,
                Math.sqrt(1.3));
    assertThat(e.working()).isCloseTo(y[3] / squares / e.root(), within(1e-7));
  }

  @Test
  void smallTravelIsTheStrip() {
    LoadCase load = LoadCase.toTravel(mm(0.05));
    Response far = Cantilever.of(mm(20), mm(30), mm(1)).respond(Grades.polyurethane(), load);
    Response near =
        Strip.of(Strip.Ends.CANTILEVER, mm(20), mm(30), mm(1)).respond(Grades.polyurethane(), load);
    assertThat(far.load().nominal() / near.load().nominal()).isCloseTo(1, within(1e-4));
    assertThat(far.strain().nominal() / near.strain().nominal()).isCloseTo(1, within(1e-4));
  }

  @Test
  void pathEndsWhereTheTipLiesAlongTheForce() {
    Response r =
        Cantilever.of(mm(20), mm(30), mm(0.5))
            .respond(Grades.rubber(), LoadCase.toTravel(mm(19.9)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.caveats().toString()).contains("travel / length");
  }

  private static Response hinge(double slender, double nu, double angle, StrainEnergy law) {
    return LivingHinge.of(LivingHinge.Blocks.RIGID, mm(12), mm(100), mm(12 * slender))
        .respond(Grade.ofLaw("block", law).poisson(nu), LoadCase.toAngle(Angle.rad(angle)));
  }

  @ParameterizedTest
  @MethodSource("hinges")
  void hingeMeetsReference(ReferenceCase c) {
    double nu = c.input("nu");
    double t = c.input("slender");
    double bending = 3e6 / (1 - nu * nu) * 0.1 * Math.pow(12e-3 * t, 3) / 12;
    Response r = hinge(t, nu, c.input("angle"), NEO);
    TABLE.check(c, r.load().nominal() * 12e-3 / bending);
  }

  @ParameterizedTest
  @MethodSource("blocks")
  void blockMeetsRivlin(ReferenceCase c) {
    double x = c.input("x");
    TABLE.check(
        c, c.text("what").equals("strain") ? Flexure.strain(x) : Flexure.moment(NEO, x) / 1e6);
  }

  @ParameterizedTest
  @ValueSource(doubles = {1e-4, 0.02, 0.3, 0.9, 2})
  void momentIsTheSlopeOfTheEnergy(double x) {
    // energy of a block 1 long, 1 thick, bent to x: l^2 = 2 x r + 1/l_o^2 through the wall
    for (StrainEnergy law :
        new StrainEnergy[] {
          NEO, MooneyRivlin.of(Pressure.mpa(0.3), Pressure.mpa(0.1)), Grades.polyurethane().law()
        }) {
      double h = 0.01 * x;
      double slope = (energy(law, x + h) - energy(law, x - h)) / (2 * h);
      double tolerance = law instanceof NeoHookean || law instanceof MooneyRivlin ? 1e-4 : 0.02;
      assertThat(Flexure.moment(law, x) / slope).isCloseTo(1, within(tolerance));
    }
  }

  private static double energy(StrainEnergy law, double x) {
    double inner = Math.sqrt(1 + x * x) - x;
    int n = 20000;
    double sum = 0;
    for (int i = 0; i < n; i++) {
      double l = Math.sqrt(inner + 2 * x * (i + 0.5) / n);
      sum += law.energy(l, 1, 1 / l) / n;
    }
    return sum;
  }

  @ParameterizedTest
  @MethodSource("ends")
  void bandHoldsTheRoots(ReferenceCase c) {
    double slender = 0.25;
    LivingHinge.Blocks blocks = LivingHinge.Blocks.valueOf(c.text("blocks"));
    LivingHinge hinge = LivingHinge.of(blocks, mm(4), mm(30), mm(1));
    Response r = hinge.respond(Grades.linear(0.5), LoadCase.toAngle(Angle.rad(1e-3)));
    double length = 1e6 / 0.75 * 0.03 * 1e-9 / 12 * 1e-3 / r.load().nominal();
    TABLE.check(c, (length - 4e-3) / 1e-3);
    double ratio = length / (4e-3 + 1e-3 * c.published());
    assertThat(ratio).as("slender " + slender).isBetween(r.load().modelLow(), r.load().modelHigh());
    assertThat(ratio).isBetween(r.strain().modelLow(), r.strain().modelHigh());
  }

  @Test
  void sayWhatIsWrongAndWhatIsDoubtful() {
    Cantilever lip = Cantilever.of(mm(20), mm(10), mm(1));
    assertThatThrownBy(() -> lip.wall(mm(20))).hasMessageContaining("that is a block");
    assertThat(lip.respond(Grades.rubber(), LoadCase.toTravel(mm(5))).caveats().toString())
        .contains("narrower than long");
    assertThat(lip).hasToString("cantilever, length 20 mm, width 10 mm, wall 1 mm");
    assertThat(
            lip.build(BuildDirection.AXIS_UP)
                .respond(Grades.rubber(), LoadCase.toTravel(mm(5)))
                .strainCrossesLayers())
        .isTrue();
    LivingHinge hinge = LivingHinge.of(LivingHinge.Blocks.SAME, mm(1), mm(0.8), mm(1));
    assertThatThrownBy(() -> hinge.wall(mm(5))).hasMessageContaining("notch");
    assertThatThrownBy(() -> hinge.respond(Grades.rubber(), LoadCase.toTravel(mm(1))))
        .hasMessageContaining("toAngle");
    assertThat(
            hinge
                .length(mm(0.4))
                .respond(Grades.rubber(), LoadCase.toAngle(Angle.degrees(90)))
                .caveats()
                .toString())
        .contains("wall x angle / length")
        .contains("length / wall")
        .contains("round them");
    assertThat(
            hinge
                .respond(Grades.rubber(), LoadCase.toAngle(Angle.degrees(60)))
                .caveats()
                .toString())
        .contains("narrower");
    assertThat(hinge)
        .hasToString(
            "living hinge between blocks of its material, length 1 mm, width 0.8 mm, wall 1 mm");
  }
}
