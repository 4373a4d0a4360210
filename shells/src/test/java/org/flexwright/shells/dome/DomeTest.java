package org.flexwright.shells.dome;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class DomeTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(DomeTest.class, "dome.csv");

  private static final double E = 1e6; // of the linear grade

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReference(ReferenceCase c) {
    TABLE.check(c, computed(c));
  }

  private static double computed(ReferenceCase c) {
    return switch (c.formula()) {
      case "conical disc", "conical disc, hoop held" -> disc(c);
      case "K1 of a disc" -> ConicalDisc.k1(c.input("d"));
      case "limit of a conical disc" ->
          ConicalDisc.of(mm(40), mm(20), mm(c.input("h")), mm(1))
                  .respond(Grades.linear(0.5), LoadCase.toLimit())
                  .path()
                  .last(Channel.TRAVEL)
              * 1e3;
      case "dome under a point, small" -> dome(c, 1e-3) * 1e3 * root(c);
      case "dome under a point, deep" -> dome(c, c.input("w"));
      case "ridge constant" -> PressedDome.curve(1e12) / 1e6 / Math.pow(12.0, 0.75);
      case "stiffening of a blown dome" -> stiffening(c.input("tau"));
      case "snap of a cap" -> SnapCap.share(c.input("lambda"));
      case "classical sphere" ->
          SnapCap.classical(Grades.linear(c.input("nu")), mm(c.input("ratio")), mm(1)).pa() / E;
      case "edge of a dome" -> edge(c);
      case "junction of tube and dome" ->
          c.text("kind").equals("axial")
              ? DomedTube.axialPeak(c.input("nu"))
              : DomedTube.hoopPeak(c.input("nu"));
      default -> throw new IllegalArgumentException(c.formula());
    };
  }

  private static double root(ReferenceCase c) {
    return Math.sqrt(1 - c.input("nu") * c.input("nu"));
  }

  private static double disc(ReferenceCase c) {
    ConicalDisc d =
        ConicalDisc.of(mm(c.input("de")), mm(c.input("di")), mm(c.input("h")), mm(c.input("t")));
    if (c.formula().endsWith("held")) {
      d = d.hoop(ConicalDisc.Hoop.HELD);
    }
    Response r =
        d.respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(c.input("s") * c.input("h"))));
    return r.load().nominal() / E * 1e6;
  }

  /** F R/(E t^3) at a travel in walls. */
  private static double dome(ReferenceCase c, double travel) {
    Response r =
        PressedDome.of(mm(c.input("ratio")), mm(1))
            .respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(travel)));
    return r.load().nominal() * c.input("ratio") * 1e-3 / (E * 1e-9);
  }

  private static double stiffening(double tau) {
    Grade grade = Grades.linear(0.5);
    PressedDome dome = PressedDome.of(mm(50), mm(1));
    Pressure classical = SnapCap.classical(grade, mm(50), mm(1));
    return dome.stiffening(grade, classical.times(tau));
  }

  private static double edge(ReferenceCase c) {
    double ratio = c.input("ratio");
    double nu = c.input("nu");
    DomeEdge dome = DomeEdge.of(mm(ratio), Angle.degrees(c.input("angle")), mm(1));
    Response r = dome.respond(Grades.linear(nu), LoadCase.toTravel(mm(0.01)));
    double line =
        r.load().nominal()
            / (2 * Math.PI * ratio * 1e-3 * Math.sin(Math.toRadians(c.input("angle"))));
    double lambda = Math.pow(3 * (1 - nu * nu), 0.25) * Math.sqrt(ratio);
    return 1e-5 * E * 1e-3 / (ratio * 1e-3 * line * lambda);
  }

  static Stream<PartCase<?>> parts() {
    return Stream.of(
        PartCase.of(
                "narrow conical disc",
                (s, d) ->
                    ConicalDisc.of(
                            mm(40 * s),
                            mm(d.between(25, 34) * s),
                            mm(d.between(0.3, 3) * s),
                            mm(d.between(0.6, 2) * s))
                        .hoop(d.oneOf(ConicalDisc.Hoop.values())),
                (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 3) * s)))
            .mayFall()
            .energy(DomeTest::hoopEnergy),
        PartCase.of(
                "conical disc",
                (s, d) ->
                    ConicalDisc.of(
                            mm(40 * s),
                            mm(d.between(8, 36) * s),
                            mm(d.between(0.3, 3) * s),
                            mm(d.between(0.6, 2) * s))
                        .hoop(d.oneOf(ConicalDisc.Hoop.values())),
                (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 3) * s)))
            .mayFall(),
        PartCase.of(
            "pressed dome",
            (s, d) -> PressedDome.of(mm(30 * s), mm(d.between(0.2, 2.5) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 14) * s))),
        PartCase.of(
            "snapping cap",
            (s, d) ->
                SnapCap.of(mm(40 * s), mm(d.between(13, 24) * s), mm(d.between(0.5, 0.8) * s)),
            (s, d) -> LoadCase.toLimit()),
        PartCase.of(
            "contracting cap",
            (s, d) -> SnapCap.of(mm(40 * s), mm(d.between(5, 24) * s), mm(d.between(0.5, 3) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.001, 0.1) * s))),
        PartCase.of(
            "edge of a dome",
            (s, d) ->
                DomeEdge.of(
                    mm(30 * s), Angle.degrees(d.between(20, 90)), mm(d.between(0.3, 3) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.01, 1) * s))),
        PartCase.of(
            "domed tube",
            (s, d) -> DomedTube.of(mm(40 * s), mm(d.between(5, 90) * s), mm(d.between(0.5, 4) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 3) * s))));
  }

  /** Hoop energy of the turned section with the secant modulus of the end, by the midpoint rule. */
  private static double hoopEnergy(ConicalDisc d, Grade grade, LoadCase load) {
    double s = ((LoadCase.ToTravel) load).travel().m();
    double a = 0.5 * d.outer().m();
    double b = 0.5 * d.inner().m();
    double t = d.wall().m();
    double c = (a - b) / Math.log(a / b);
    double turn = s / (a - b);
    double rise = d.height().m() / (a - b) - 0.5 * turn;
    double sum = 0.0;
    int n = 2000;
    for (int i = 0; i < n; i++) {
      double r = b + (a - b) * (i + 0.5) / n;
      double stretch = turn * (r - c) * rise;
      sum += (stretch * stretch * t + turn * turn * t * t * t / 12) / r * (a - b) / n;
    }
    double plate = d.hoop() == ConicalDisc.Hoop.HELD ? 1 - grade.poisson() * grade.poisson() : 1.0;
    return Math.PI * grade.modulusAtRest().pa() * sum / plate;
  }

  @ParameterizedTest
  @MethodSource("parts")
  void doesWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, c.energy() == null ? Grades.rubber() : Grades.linear(0.5), 31);
  }

  @Test
  void bistableDiscSnapsAndSaysSo() {
    ConicalDisc disc = ConicalDisc.of(mm(40), mm(20), mm(3.2), mm(1));
    Response r = disc.respond(Grades.rubber(), LoadCase.toTravel(mm(5)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.termination().why()).contains("snaps through");
    Response limit = disc.respond(Grades.rubber(), LoadCase.toLimit());
    assertThat(limit.load().nominal()).isGreaterThan(r.load().nominal());
    assertThatThrownBy(() -> disc.height(mm(1.4)).respond(Grades.rubber(), LoadCase.toLimit()))
        .hasMessageContaining("limit load is none");
    assertThatThrownBy(
            () -> SnapCap.of(mm(40), mm(6), mm(1)).respond(Grades.rubber(), LoadCase.toLimit()))
        .hasMessageContaining("limit load is none");
  }

  @Test
  void deepeningCapSnapsSideways() {
    Response deep =
        SnapCap.of(mm(40), mm(19), mm(0.5)).respond(Grades.rubber(), LoadCase.toLimit());
    assertThat(deep.caveats().toString()).contains("depth in decay lengths");
    assertThat(SnapCap.share(7.0)).isEqualTo(0.78);
    assertThat(SnapCap.share(3.29)).isNaN();
    assertThat(SnapCap.of(mm(40), mm(12), mm(0.8)).depth(Grades.linear(0.5)))
        .isCloseTo(Math.sqrt(3) * 12 / Math.sqrt(32), within(1e-12));
  }

  @Test
  void domeIsStifferThanThePlateItFlattensTo() {
    // a cap one decay length wide, clamped, is nearly a plate: the pressed dome (without end) is
    // within a factor of two of a clamped plate of radius 3 l, from neither side far
    double t = 1;
    double r = 100;
    double l = Math.sqrt(r * t / 3.0); // nu = 0.5: sqrt(12 (1 - nu^2)) = 3
    Response dome =
        PressedDome.of(mm(r), mm(t)).respond(Grades.linear(0.5), LoadCase.toTravel(mm(1e-3)));
    // on an elastic foundation k = Et/R^2 the plate under a point gives 8 D/l^2; the clamped plate
    // 16 pi D/a^2, equal at a = sqrt(2 pi) l
    Length equal = mm(Math.sqrt(2 * Math.PI) * l);
    Response plate =
        CircularPlate.of(CircularPlate.Rim.CLAMPED, equal, mm(0.01 * l), mm(t))
            .respond(Grades.linear(0.5), LoadCase.toTravel(mm(1e-3)));
    assertThat(dome.load().nominal() / plate.load().nominal()).isCloseTo(1.0, within(0.02));
  }

  @Test
  void flatDiscIsNearTheBendingOfARing() {
    // h = 0: 4 E t^3 s/(K1 De^2) against a ring of narrow section, E t^3 ln(d) 2 pi/12/(a - b)^2
    for (double inner : new double[] {36, 30, 20}) {
      Response r =
          ConicalDisc.of(mm(40), mm(inner), mm(1e-6), mm(0.1))
              .respond(Grades.linear(0.5), LoadCase.toTravel(mm(1e-3)));
      double width = (20 - 0.5 * inner) * 1e-3;
      double ring = E * 1e-12 * Math.log(40 / inner) * 2 * Math.PI / 12 / (width * width) * 1e-6;
      assertThat(r.load().nominal() / ring).isCloseTo(1.0, within(0.01));
    }
  }

  @Test
  void turnOfAnEdgeIsGeckelers() {
    DomeEdge dome = DomeEdge.of(mm(100), Angle.degrees(90), mm(1));
    // turn by H over spread by H: L/(R sin A)
    double lambda = Math.pow(3 * 0.75, 0.25) * 10;
    assertThat(dome.turn(Grades.linear(0.5), mm(0.1)).rad())
        .isCloseTo(lambda * 0.1 / 100, within(1e-12));
  }
}
