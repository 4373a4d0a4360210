package org.flexwright.shells.bellows;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.Grades;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class BellowsTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(BellowsTest.class, "bellows.csv", "omega.csv");

  private static final Bellows NECK =
      Bellows.convolutions(5).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14)).wall(mm(0.9));

  static Stream<ReferenceCase> stiffness() {
    return TABLE.cases("U convolution stiffness");
  }

  static Stream<ReferenceCase> factor() {
    return TABLE.cases("U convolution factor Cf");
  }

  static Stream<ReferenceCase> strain() {
    return TABLE.cases("U convolution strain");
  }

  static Stream<ReferenceCase> toroidal() {
    return TABLE.cases("omega convolution stiffness");
  }

  /** One convolution of depth 10 mm in a material of 1 MPa. */
  private static double ofDepth(double dm, double rm, double t, double nu) {
    Bellows one =
        Bellows.convolutions(1)
            .meanRadius(mm(5 * dm))
            .depth(mm(10))
            .pitch(mm(40 * rm))
            .wall(mm(10 * t));
    return one.stiffness(Grades.linear(nu)).newtonsPerM() / 1e6 * 100 / (dm * t * t * t);
  }

  @ParameterizedTest
  @MethodSource("stiffness")
  void meetsShellComputation(ReferenceCase c) {
    double k = ofDepth(c.input("dm"), c.input("rm"), c.input("t"), c.input("nu"));
    TABLE.check(c, k);
  }

  @ParameterizedTest
  @MethodSource("factor")
  void meetsStandardFactor(ReferenceCase c) {
    TABLE.check(c, UFactors.stiffness(c.input("c1"), c.input("c2"), 0.1));
  }

  @ParameterizedTest
  @MethodSource("toroidal")
  void meetsToroidalFactor(ReferenceCase c) {
    double nu = 0.3;
    double plane = 1 - nu * nu;
    // Dm/r = 400 keeps the wall thin: t from C3
    double t = 2 * Math.sqrt(12 * plane) / (400 * c.input("c3"));
    OmegaBellows one = Bellows.omega(1).meanRadius(mm(200)).torus(mm(1)).wall(mm(t));
    Response r = one.respond(Grades.linear(nu), LoadCase.toTravel(mm(1e-4)));
    double k = r.load().nominal() / 1e-7 / 1e6 * 1e3;
    TABLE.check(c, k * 12 * plane / (400 * t * t * t));
  }

  @Test
  void stripWithoutHoopStiffnessIsTheLimit() {
    assertThat(UFactors.strip(1e-9)).isCloseTo(1.0, within(1e-6));
    // semicircle arcs alone: 12 x 2 x (1/2)^3 x pi/4
    assertThat(UFactors.strip(1.0)).isCloseTo(12 * 2 * 0.125 * Math.PI / 4, within(1e-12));
    for (double c1 = 0.2; c1 <= 1.0; c1 += 0.1) {
      for (double c2 = 0.5; c2 <= 4.0; c2 += 0.5) {
        assertThat(UFactors.stiffness(c1, c2, 0.0)).isLessThan(UFactors.strip(c1));
      }
    }
  }

  @Test
  void poissonRatioEntersByC2AndPlateModulus() {
    // 64 rows hold both; the change from 0.3 to 0.49 itself: within 0.3 % of 1.2755/1.0844
    double change = ofDepth(8, 0.25, 0.06, 0.49) / ofDepth(8, 0.25, 0.06, 0.3);
    assertThat(change).isCloseTo(1.2755 / 1.0844, within(0.003));
  }

  @ParameterizedTest
  @MethodSource("strain")
  void meetsPeakStrain(ReferenceCase c) {
    Bellows one =
        Bellows.convolutions(1)
            .meanRadius(mm(5 * c.input("dm")))
            .depth(mm(10))
            .pitch(mm(40 * c.input("rm")))
            .wall(mm(10 * c.input("t")));
    Response r = one.respond(Grades.linear(c.input("nu")), LoadCase.toTravel(mm(0.01)));
    TABLE.check(c, r.strain().nominal() * 10 / (c.input("t") * 0.01));
  }

  @Test
  void strainIsAtLeastTheBendingOfTheStandardFactor() {
    // bending strain 0.91 (5/3)/Cd at nu 0.3 and Dm/w 10 by another program; ours, for nu 0.49,
    // adds
    // stretching: never below, up to 29 % above at C1 0.9
    double[][] rows = {
      {0.3, 0.8, 1.576510},
      {0.5, 1.0, 1.826515},
      {0.7, 1.0, 2.243776},
      {0.9, 1.0, 2.589068},
      {0.7, 1.4, 1.538027},
      {0.5, 2.0, 0.902661},
      {0.9, 3.0, 0.574160}
    };
    for (double[] row : rows) {
      double bending = 0.91 * 5 / 3 / row[2];
      assertThat(UFactors.strain(row[0], row[1], 0.1) / bending).isBetween(0.99, 1.29);
    }
  }

  @Test
  void volumeOfSemicirclesIsExact() {
    Bellows b = NECK.depth(mm(7));
    // pitch = 2 depth: the meridian is two semicircles of radius 3.5 in each convolution
    double exact = 5 * 2 * Math.PI * 3.5 * 2 * Math.PI * 15 * 0.9;
    assertThat(b.printedVolume().mm3()).isCloseTo(exact, within(1e-9 * exact));
  }

  @Test
  void sayWhatIsWrong() {
    assertThatThrownBy(() -> NECK.pitch(mm(17)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "pitch is 17 mm, allowed is at most twice the depth, 16 mm; flat legs need root and"
                + " crest to fit into the depth: more depth or less pitch");
    assertThatThrownBy(() -> NECK.depth(mm(31))).hasMessageContaining("twice the mean radius");
    assertThatThrownBy(() -> NECK.wall(mm(7))).hasMessageContaining("solid");
    assertThatThrownBy(() -> NECK.wall(mm(0))).hasMessageContaining("wall is 0 m");
    assertThatThrownBy(() -> Bellows.convolutions(0)).hasMessageContaining("at least 1");
    assertThatThrownBy(() -> Bellows.convolutions(2).depth(mm(5)).wall(mm(1)))
        .hasMessage("mean radius is not given, allowed is a length; add meanRadius(...)");
    assertThatThrownBy(() -> Bellows.omega(2).meanRadius(mm(5)).wall(mm(1)))
        .hasMessageContaining("add torus(...)");
    assertThatThrownBy(() -> Bellows.omega(2).meanRadius(mm(5)).torus(mm(5)).wall(mm(1)))
        .hasMessageContaining("reach the axis");
    assertThatThrownBy(() -> Bellows.omega(2).meanRadius(mm(5)).torus(mm(1)).wall(mm(2)))
        .hasMessageContaining("solid");
    assertThatThrownBy(() -> NECK.respond(Grades.linear(0.49), LoadCase.toHold(Force.newtons(5))))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("load case is until it holds 5 N")
        .hasMessageContaining("toTravel");
  }

  @Test
  void caveatsNameWhatLeftItsRange() {
    Grade grade = Grades.polyurethane();
    assertThat(NECK.respond(grade, LoadCase.toTravel(mm(6))).caveats()).isEqualTo(grade.caveats());
    assertThat(NECK.wall(mm(1.3)).respond(grade, LoadCase.toTravel(mm(1))).caveats())
        .filteredOn(c -> !grade.caveats().contains(c))
        .singleElement()
        .hasToString(
            "U bellows: wall / depth is 0.1625, the model is good for wall / depth 0 to 0.15");
    assertThat(NECK.respond(grade, LoadCase.toTravel(mm(31))).caveats().toString())
        .contains("travel of a convolution / depth")
        .contains("gap of its flanks");
    assertThat(NECK.wall(mm(0.05)).respond(grade, LoadCase.toTravel(mm(1))).caveats().toString())
        .contains("C2");
    assertThat(NECK.pitch(mm(3)).respond(grade, LoadCase.toTravel(mm(1))).caveats().toString())
        .contains("C1");
  }

  @Test
  void layersLieAcrossTheMeridianOfAStandingBellows() {
    Grade grade = Grades.polyurethane();
    LoadCase load = LoadCase.toTravel(mm(6));
    assertThat(NECK.respond(grade, load).strainCrossesLayers()).isTrue();
    assertThat(NECK.build(BuildDirection.AXIS_LYING).respond(grade, load).strainCrossesLayers())
        .isFalse();
    assertThat(NECK.thinnest().kind()).isEqualTo(Feature.Kind.WALL);
  }

  @Test
  void convolutionsInSeriesShareTheTravel() {
    Grade grade = Grades.polyurethane();
    Response five = NECK.respond(grade, LoadCase.toTravel(mm(6)));
    Response ten = NECK.count(10).respond(grade, LoadCase.toTravel(mm(12)));
    assertThat(ten.load().nominal()).isCloseTo(five.load().nominal(), within(1e-9));
    assertThat(ten.strain().nominal()).isCloseTo(five.strain().nominal(), within(1e-12));
  }

  @Test
  void printOneLine() {
    assertThat(NECK)
        .hasToString(
            "bellows of 5 convolutions, mean radius 15 mm, depth 8 mm, pitch 14 mm, wall 0.9 mm,"
                + " axis up");
    assertThat(Bellows.omega(4).meanRadius(mm(20)).torus(mm(4)).wall(mm(0.6)).toString())
        .startsWith("bellows of 4 omega convolutions");
    assertThat(Bellows.convolutions(3)).hasToString("draft of a bellows of 3 convolutions");
    assertThat(Bellows.omega(3)).hasToString("draft of a bellows of 3 omega convolutions");
  }

  private static final double RADIUS = 15e-3;

  static Stream<ReferenceCase> turned() {
    return TABLE.cases("bent bellows");
  }

  @ParameterizedTest
  @MethodSource("turned")
  void turnedBellowsIsItsAxialSpringAtTheRadius(ReferenceCase c) {
    int count = (int) c.input("count");
    Grade grade = Grades.linear(0.5);
    Bellows folded =
        Bellows.convolutions(count).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14)).wall(mm(0.9));
    OmegaBellows round = Bellows.omega(count).meanRadius(mm(15)).torus(mm(1.5)).wall(mm(0.3));
    LoadCase turn = LoadCase.toAngle(Angle.rad(1e-3));
    double k = folded.stiffness(grade).newtonsPerM();
    TABLE.check(c, folded.respond(grade, turn).load().nominal() / 1e-3 / (4 * k * RADIUS * RADIUS));
    k = round.stiffness(grade).newtonsPerM();
    TABLE.check(c, round.respond(grade, turn).load().nominal() / 1e-3 / (4 * k * RADIUS * RADIUS));
    // the most opened place strains as the whole does at R a
    assertThat(folded.respond(grade, turn).strain().nominal())
        .isCloseTo(
            folded.respond(grade, LoadCase.toTravel(mm(0.015))).strain().nominal(), within(1e-12));
  }

  static Stream<ReferenceCase> squirm() {
    return TABLE.cases("column squirm");
  }

  @ParameterizedTest
  @MethodSource("squirm")
  void squirmIsEulersColumn(ReferenceCase c) {
    Grade grade = Grades.linear(0.5);
    Bellows b =
        Bellows.convolutions((int) c.input("count"))
            .meanRadius(mm(15))
            .depth(mm(8))
            .pitch(mm(14))
            .wall(mm(0.9));
    BellowsPressure p = BellowsPressure.of(b, grade);
    double length = 14e-3 * c.input("count");
    double unit = 2 * Math.PI * b.stiffness(grade).newtonsPerM() / length;
    TABLE.check(c, p.squirm(grade).pa() / unit);
    assertThat(p.thrust(Pressure.kpa(20)).newtons())
        .isCloseTo(20e3 * Math.PI * RADIUS * RADIUS, within(1e-9));
    // the thrust at squirm is the Euler load of a column of bending stiffness K R^2 L/2
    double euler = 4 * Math.PI * Math.PI * 0.5 * RADIUS * RADIUS * length;
    euler *= b.stiffness(grade).newtonsPerM() / (length * length);
    assertThat(p.thrust(p.squirm(grade)).newtons()).isCloseTo(euler, within(1e-9 * euler));
    OmegaBellows o = Bellows.omega(4).meanRadius(mm(15)).torus(mm(1.5)).wall(mm(0.3));
    assertThat(BellowsPressure.of(o, mm(40), grade).effectiveArea().mm2())
        .isCloseTo(Math.PI * 225, within(1e-9));
  }
}
