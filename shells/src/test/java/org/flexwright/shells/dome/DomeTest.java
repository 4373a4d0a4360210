package org.flexwright.shells.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.flexwright.grade.BuildDirection;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class DomeTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(DomeTest.class, "dome.csv");

  static Stream<ReferenceCase> first() {
    return TABLE.cases("dome first stiffness");
  }

  static Stream<ReferenceCase> dimples() {
    return TABLE.cases("dome dimple force");
  }

  static Stream<ReferenceCase> pressed() {
    return TABLE.cases("pressurised dome");
  }

  static Stream<ReferenceCase> snaps() {
    return TABLE.cases("clamped cap snap");
  }

  static Stream<ReferenceCase> paths() {
    return TABLE.cases("clamped cap path");
  }

  static Stream<ReferenceCase> spheres() {
    return TABLE.cases("sphere collapse pressure");
  }

  static Stream<ReferenceCase> discs() {
    return Stream.concat(
        TABLE.cases("conical disc"), TABLE.cases("conical disc formula with plate modulus"));
  }

  static Stream<ReferenceCase> edges() {
    return TABLE.cases("edge bending");
  }

  static Stream<ReferenceCase> joints() {
    return TABLE.cases("junction of cylinder and hemisphere");
  }

  static Stream<ReferenceCase> jointStrains() {
    return TABLE.cases("junction peak strain");
  }

  /** A dome of wall 1 mm under a point. */
  private static PressedDome pointed(double slender) {
    return PressedDome.of(mm(slender), mm(1), mm(1e-3));
  }

  @ParameterizedTest
  @MethodSource("first")
  void firstStiffness(ReferenceCase c) {
    double nu = c.input("nu");
    double rt = c.input("rt");
    double k = pointed(rt).stiffness(Grades.linear(nu)).newtonsPerM() / 1e6 * rt / 1e-3;
    TABLE.check(c, k * Math.sqrt(1 - nu * nu));
  }

  @ParameterizedTest
  @MethodSource("dimples")
  void dimpleForce(ReferenceCase c) {
    double rt = c.input("rt");
    Response r =
        pointed(rt).respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(c.input("w"))));
    TABLE.check(c, r.load().nominal() * rt * 1e-3 / (1e6 * 1e-9));
  }

  @ParameterizedTest
  @CsvSource({
    "20,0.3,0.25,0.3869388", "20,0.49,1,1.310643", "20,0.49,2,2.012094",
    "50,0.3,0.5,0.8429897", "50,0.49,1,1.523734", "100,0.49,0.25,0.5421532",
    "100,0.3,1,1.42519", "100,0.49,10,5.372814", "20,0.49,10,5.03731"
  })
  void hemispheresLieInTheBand(double rt, double nu, double w, double force) {
    Response r = pointed(rt).respond(Grades.linear(nu), LoadCase.toTravel(mm(w)));
    // F R/(E t^3) with E 1 MPa, t 1 mm, R rt mm: F = value/rt newtons
    double ratio = force / rt / r.load().nominal();
    assertThat(ratio).isBetween(r.load().modelLow(), r.load().modelHigh());
  }

  @ParameterizedTest
  @CsvSource({
    // c/l, y, F R (1 - nu^2)/(E t^3), peak strain R/t: collocation, nu 0.5, even patch
    "0.15,0.48,0.8806,1.11",
    "0.15,2.6,2.0639,3.523",
    "0.15,9.1,4.2703,5.519",
    "0.3,0.48,0.8983,0.831",
    "0.3,2.6,2.0724,2.85",
    "0.3,9.1,4.2774,4.178",
    "0.6,1.0,1.4753,1.14",
    "0.6,5.1,2.9561,2.698",
    "1.0,1.0,1.6196,0.845",
    "1.0,9.1,4.3098,2.281"
  })
  void patchesMeetTheShallowShell(double patch, double y, double force, double strain) {
    double rt = 1e5; // the limit of shallow-shell theory
    double decay = Math.sqrt(rt / 3.0);
    PressedDome dome = PressedDome.of(mm(rt), mm(1), mm(patch * decay));
    double w = y / Math.sqrt(0.75);
    Response r = dome.respond(Grades.linear(0.5), LoadCase.toTravel(mm(w)));
    assertThat(r.load().nominal() * rt * 0.75 / force).isCloseTo(1.0, within(0.03));
    assertThat(strain / (r.strain().nominal() * rt))
        .isBetween(r.strain().modelLow(), r.strain().modelHigh());
  }

  @ParameterizedTest
  @MethodSource("pressed")
  void pressureStiffens(ReferenceCase c) {
    double tau = c.input("tau");
    TABLE.check(c, PressedDome.pressed(tau));
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.8, -0.3, 0.0, 0.6, 0.9999999, 1.0, 1.00001, 3.0})
  void pressureStiffensAsTheHankelIntegral(double tau) {
    // flexibility of a point load: int x dx/(x^4 + 2 tau x^2 + 1), pi/4 at tau = 0; x = tan
    double flexibility =
        new SimpsonIntegrator(1e-10, 1e-12, 8, 40)
            .integrate(
                10_000_000,
                a -> {
                  double s = Math.pow(Math.sin(a), 2);
                  double o = Math.pow(Math.cos(a), 2);
                  return Math.sin(a) * Math.cos(a) / (s * s + 2 * tau * s * o + o * o);
                },
                0,
                Math.PI / 2);
    assertThat(PressedDome.pressed(tau) * flexibility / (Math.PI / 4)).isCloseTo(1.0, within(1e-6));
  }

  @ParameterizedTest
  @MethodSource("spheres")
  void perfectSphere(ReferenceCase c) {
    Pressure p = pointed(100).classicalPressure(Grades.linear(c.input("nu")));
    TABLE.check(c, p.mpa() * 1e4);
  }

  @Test
  void knockDownLiesBelowThePerfectCap() {
    // NASA SP-8032 is from memory alone: it serves as a low end, never as the nominal value
    for (double lambda = 3.5; lambda < 6; lambda += 0.25) {
      CapPaths perfect = new CapPaths(lambda, 0.3);
      double ratio = perfect.pressure(perfect.snap()) / perfect.classical();
      assertThat(perfect.knockDown()).isLessThan(ratio).isGreaterThan(0.2);
    }
    assertThat(ClampedCap.knockDown(100)).isCloseTo(0.172, within(1e-12));
    assertThat(ClampedCap.knockDown(1)).isEqualTo(1.0);
  }

  /** A cap of wall 1 mm on a rim of 50 mm. */
  private static ClampedCap cap(double lambda, double nu) {
    double r = 2500 * Math.sqrt(12 * (1 - nu * nu)) / (lambda * lambda);
    return ClampedCap.of(mm(50), mm(r), mm(1));
  }

  @ParameterizedTest
  @MethodSource("snaps")
  void capsSnap(ReferenceCase c) {
    double nu = c.input("nu");
    double lambda = c.input("lambda");
    ClampedCap cap = cap(lambda, nu);
    assertThat(cap.shallowness(Grades.linear(nu))).isCloseTo(lambda, within(1e-9));
    Response r = cap.respond(Grades.linear(nu), LoadCase.toLimit());
    TABLE.check(c, r.load().nominal() / cap.classicalPressure(Grades.linear(nu)).pa());
  }

  @ParameterizedTest
  @MethodSource("paths")
  void capsThatDoNotSnap(ReferenceCase c) {
    double nu = c.input("nu");
    Response r =
        cap(c.input("lambda"), nu).respond(Grades.linear(nu), LoadCase.toTravel(mm(c.input("y"))));
    TABLE.check(c, r.load().nominal() / 1e6 * Math.pow(50, 4));
  }

  @Test
  void shallowCapsNeverGiveWayAndSteepOnesEndTheirPath() {
    for (double nu : new double[] {0.3, 0.4, 0.5}) {
      assertThatThrownBy(() -> cap(3.0, nu).respond(Grades.linear(nu), LoadCase.toLimit()))
          .hasMessageContaining("limit load is none");
      assertThat(cap(3.5, nu).respond(Grades.linear(nu), LoadCase.toLimit()).load().nominal())
          .isPositive();
    }
    Response past = cap(4.0, 0.5).respond(Grades.linear(0.5), LoadCase.toTravel(mm(1.2)));
    assertThat(past.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(past.termination().toString()).contains("snaps through");
    Response limit = cap(4.0, 0.5).respond(Grades.linear(0.5), LoadCase.toLimit());
    assertThat(past.load().nominal() / limit.load().nominal()).isCloseTo(1.0, within(1e-9));
    assertThat(cap(7.0, 0.5).respond(Grades.linear(0.5), LoadCase.toLimit()).caveats().toString())
        .contains("buckles unevenly");
    // the knock-down is the low end
    double low = limit.load().nominal() * limit.load().modelLow();
    double classical = cap(4.0, 0.5).classicalPressure(Grades.linear(0.5)).pa();
    assertThat(low / classical).isCloseTo(0.14 + 3.2 / 16, within(1e-9));
  }

  @Test
  void pathRisesToItsSnap() {
    // collocation: lambda 4.75, nu 0.5, p/p_cl 0.56508 at y 0.5, 0.66318 at 0.8589
    ClampedCap cap = cap(4.75, 0.5);
    double classical = cap.classicalPressure(Grades.linear(0.5)).pa();
    Response half = cap.respond(Grades.linear(0.5), LoadCase.toTravel(mm(0.5)));
    assertThat(half.load().nominal() / classical).isCloseTo(0.56508, within(0.02));
    Response limit = cap.respond(Grades.linear(0.5), LoadCase.toLimit());
    assertThat(limit.load().nominal() / classical).isCloseTo(0.66318, within(0.01));
    assertThat(limit.path().last(Channel.TRAVEL) * 1e3).isCloseTo(0.859, within(0.03));
  }

  @Test
  void flatCapIsTheClampedPlate() {
    CircularPlate plate = CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(50), mm(49.9999), mm(1));
    double force = plate.respond(Grades.linear(0.45), LoadCase.toTravel(mm(1e-3))).load().nominal();
    double pressure =
        cap(1e-3, 0.45).respond(Grades.linear(0.45), LoadCase.toTravel(mm(1e-3))).load().nominal();
    assertThat(pressure * Math.PI * 2500e-6 / force).isCloseTo(1.0, within(1e-3));
  }

  @ParameterizedTest
  @MethodSource("discs")
  void discForce(ReferenceCase c) {
    ConicalDisc disc =
        ConicalDisc.of(mm(c.input("de")), mm(c.input("di")), mm(c.input("t")), mm(c.input("h")))
            .plateModulus(c.formula().contains("plate"));
    Response r = disc.respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(c.input("s"))));
    TABLE.check(c, r.load().nominal());
  }

  @ParameterizedTest
  @CsvSource({"40,20,1,1.5,1.2", "40,32,1,2.5,1", "40,10,0.8,1,1.2", "30,15,1,0,0.5"})
  void workIsTheEnergyOfTheTurningSection(double de, double di, double t, double h, double s) {
    ConicalDisc disc = ConicalDisc.of(mm(de), mm(di), mm(t), mm(h));
    Response r = disc.respond(Grades.linear(0.5), LoadCase.toTravel(mm(s)));
    double[] x = r.path().values(Channel.TRAVEL);
    double[] f = r.path().values(Channel.FORCE);
    double work = 0;
    for (int i = 1; i < x.length; i++) {
      work += 0.5 * (f[i] + f[i - 1]) * (x[i] - x[i - 1]);
    }
    // hoop strain of a section turned about its neutral ring, no other stress; exact turns
    double a = de / 2;
    double b = di / 2;
    double ring = (a - b) / Math.log(a / b);
    double cone = h / (a - b);
    double turn = s / (a - b);
    int n = 400;
    double energy = 0;
    double peak = 0;
    for (int i = 0; i < n; i++) {
      double rr = b + (a - b) * (i + 0.5) / n;
      for (int j = 0; j < n; j++) {
        double z = t * ((j + 0.5) / n - 0.5);
        double move = (rr - ring) * turn * (cone - 0.5 * turn) + z * turn;
        double e = move / rr;
        peak = Math.max(peak, e);
        energy += 0.5 * e * e * 2 * Math.PI * rr * (a - b) * t / n / n;
      }
    }
    // trapezia 0.5 %; the formula takes the bending part with the membrane's constant, which is
    // 0.8 % less at d = 2 and 3.1 % less at d = 4
    assertThat(work * 1e3 / energy).isCloseTo(1.0, within(de / di > 3 ? 0.035 : 0.012));
    assertThat(r.strain().nominal()).isGreaterThanOrEqualTo(peak * 0.999);
  }

  @Test
  void steepDiscsSnapAndStay() {
    ConicalDisc steep = ConicalDisc.of(mm(40), mm(20), mm(1), mm(3));
    assertThat(steep.bistable()).isTrue();
    Response past = steep.respond(Grades.linear(0.5), LoadCase.toTravel(mm(4.5)));
    assertThat(past.termination().toString()).contains("snaps through");
    Response limit = steep.respond(Grades.linear(0.5), LoadCase.toLimit());
    double most = 0;
    for (int i = 1; i < 400; i++) {
      most =
          Math.max(
              most,
              steep.respond(Grades.linear(0.5), LoadCase.toTravel(mm(i * 0.01))).load().nominal());
    }
    assertThat(limit.load().nominal() / most).isBetween(1.0, 1.0001);
    // finite elements, nu 0.49: 0.0226 N at 1 MPa is the largest on a grid of s/h 0.2
    assertThat(limit.load().nominal()).isCloseTo(0.0226, within(0.0226 * 0.08));
    assertThatThrownBy(() -> steep.height(mm(1.3)).respond(Grades.linear(0.5), LoadCase.toLimit()))
        .hasMessageContaining("limit load is none");
    assertThat(steep.height(mm(2)).bistable()).isFalse();
    assertThat(steep.build(BuildDirection.AXIS_LYING).build()).isEqualTo(BuildDirection.AXIS_LYING);
  }

  @ParameterizedTest
  @MethodSource("edges")
  void edgesBend(ReferenceCase c) {
    EdgeBending edge = EdgeBending.of(c.input("rt"), 1.0, c.input("nu"), 1.0);
    double angle = Math.toRadians(c.input("angle"));
    TABLE.check(
        c,
        switch (c.text("kind")) {
          case "aH" -> edge.byForce(angle);
          case "bH" -> edge.cross(angle);
          default -> edge.byMoment();
        });
  }

  @ParameterizedTest
  @MethodSource("joints")
  void junctionStress(ReferenceCase c) {
    double nu = 0.3;
    double slender = 50;
    EdgeBending cylinder = EdgeBending.of(slender, 1, nu, 1 - nu / 2);
    EdgeBending dome = EdgeBending.of(slender, 1, nu, (1 - nu) / 2);
    double[] edge = EdgeBending.join(cylinder, dome);
    assertThat(edge[0]).isCloseTo(-slender / (8 * cylinder.steep()), within(1e-9));
    assertThat(edge[1]).isCloseTo(0.0, within(1e-12));
    double most = 0;
    for (double s = 0; s < 6; s += 0.01) {
      double bent = cylinder.bending(s, edge[0], edge[1]) / (1 - nu * nu);
      double axial = 0.5 * slender + bent;
      double hoop = cylinder.travel(s, edge[0], edge[1]) / slender + nu * 0.5 * slender + nu * bent;
      most = Math.max(most, c.text("part").equals("axial") ? axial : hoop);
    }
    TABLE.check(c, most / slender);
  }

  @ParameterizedTest
  @MethodSource("jointStrains")
  void junctionStrain(ReferenceCase c) {
    DomedCylinder part =
        DomedCylinder.of(mm(c.input("rt")), mm(300), mm(1)).domeShare(c.input("share"));
    TABLE.check(c, part.peak(1e-3, c.input("nu")));
  }

  @Test
  void vesselStoresTheWorkOfItsPressure() {
    // membrane energy of cylinder and domes, without the junction
    double nu = 0.5;
    DomedCylinder part = DomedCylinder.of(mm(20), mm(200), mm(1));
    Response r = part.respond(Grades.linear(nu), LoadCase.toTravel(mm(0.1)));
    double p = r.load().nominal();
    double work = 0.5 * p * r.path().last(Channel.VOLUME);
    double stress = p * 20;
    double cylinder = stress * stress * (1 + 0.25 - nu) / 2e6 * 2 * Math.PI * 0.02 * 0.2 * 1e-3;
    double domes = stress * stress / 4 * 2 * (1 - nu) / 2e6 * 4 * Math.PI * 4e-4 * 1e-3;
    assertThat(work / (cylinder + domes)).isCloseTo(1.0, within(1e-6));
  }

  @Test
  void sayWhatTheyAreAndRefuseWhatTheyAreNot() {
    PressedDome dome = PressedDome.of(mm(20), mm(0.8), mm(2));
    assertThat(dome).hasToString("dome, radius 20 mm, wall 0.8 mm, pressed on a patch of 2 mm");
    assertThatThrownBy(() -> dome.wall(mm(20))).hasMessageContaining("solid ball");
    assertThatThrownBy(() -> dome.patch(mm(20))).hasMessageContaining("fingertip");
    assertThat(dome.respond(Grades.rubber(), LoadCase.toTravel(mm(2))).caveats()).isEmpty();
    Pressure out = dome.classicalPressure(Grades.rubber()).times(-1);
    assertThat(dome.stiffness(Grades.rubber(), out).newtonsPerM()).isZero();
    assertThat(dome.designPressure(Grades.rubber()).pa()).isLessThan(-0.2 * out.pa());
    ClampedCap cap = ClampedCap.of(mm(15), mm(40), mm(0.6));
    assertThat(cap).hasToString("clamped cap, rim radius 15 mm, radius 40 mm, wall 0.6 mm");
    assertThatThrownBy(() -> cap.rim(mm(41))).hasMessageContaining("hemisphere");
    assertThatThrownBy(() -> cap.wall(mm(15))).hasMessageContaining("block");
    ConicalDisc disc = ConicalDisc.of(mm(40), mm(20), mm(1), mm(1.5));
    assertThat(disc).hasToString("conical disc 40 mm / 20 mm, wall 1 mm, height 1.5 mm");
    assertThatThrownBy(() -> disc.inner(mm(40))).hasMessageContaining("ring of material");
    DomedCylinder vessel = DomedCylinder.of(mm(20), mm(80), mm(1));
    assertThat(vessel).hasToString("domed cylinder, radius 20 mm, length 80 mm, wall 1 mm");
    assertThatThrownBy(() -> vessel.wall(mm(20))).hasMessageContaining("no hollow part");
    assertThat(vessel.respond(Grades.rubber(), LoadCase.toTravel(mm(0.4))).caveats()).isEmpty();
  }
}
