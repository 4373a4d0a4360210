package org.flexwright.shells.inflate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.Grades;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

final class SleeveTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(SleeveTest.class, "inflate.csv");

  private static final int CELLS = 800;
  private static final Sleeve FINGER =
      Sleeve.outside(mm(21.4))
          .span(mm(30))
          .wall(mm(0.6))
          .into(Bore.of(mm(22)).tolerance(mm(0.2)).friction(0.4, 0.1));

  static Stream<ReferenceCase> tubes() {
    return TABLE.cases("thick tube inflation");
  }

  @ParameterizedTest
  @MethodSource("tubes")
  void meetsGreenAndZerna(ReferenceCase c) {
    double k = c.input("k");
    double half = 0.5e6 / (1 + k);
    Pressure p =
        ThickTube.pressure(
            MooneyRivlin.of(Pressure.pa(half), Pressure.pa(k * half)),
            mm(10 * c.input("ratio")),
            mm(10),
            c.input("stretch"),
            c.input("axial"));
    TABLE.check(c, p.mpa());
  }

  @Test
  void meetsWorkedCheck() {
    ReferenceCase touch = TABLE.get("sleeve-touch");
    Length a = mm(touch.input("a"));
    Length b = mm(touch.input("b"));
    Length bore = mm(touch.input("bore"));
    NeoHookean law = NeoHookean.of(Pressure.mpa(touch.input("g")));
    double stretch = ThickTube.grow(a, b, bore, 1.0);
    assertThat(stretch).isCloseTo(1.299038, within(5e-7));
    Pressure p = ThickTube.pressure(law, a, b, stretch, 1.0);
    TABLE.check(touch, p.mpa());
    ReferenceCase grip = TABLE.get("sleeve-grip");
    // a very long sleeve: the ends do not count, force over contact length
    Sleeve sleeve =
        Sleeve.outside(b.times(2))
            .span(mm(1e4))
            .wall(b.minus(a))
            .into(Bore.of(bore.times(2)).friction(grip.input("mu"), grip.input("mu")));
    Grade grade = Grade.ofLaw("neo", law).poisson(0.5);
    double per = 6.0670;
    double force = per * 9990;
    for (int i = 0; i < 20; i++) { // the force whose pressure is that of the check
      double need = sleeve.respond(grade, LoadCase.toHold(Force.newtons(force))).load().nominal();
      force *= (grip.input("p") * 1e6 - p.pa()) / (need - p.pa());
    }
    TABLE.check(grip, force / sleeve.contact(grade, Force.newtons(force)).mm());
  }

  @Test
  void tubeHasNoTroubleAtRest() {
    NeoHookean law = NeoHookean.of(Pressure.mpa(1));
    // p = 2 G (l - 1) (1 - A^2/B^2) for small strains of an incompressible tube in plane strain
    double p = ThickTube.pressure(law, mm(8), mm(10), 1 + 1e-7, 1.0).pa();
    assertThat(p).isCloseTo(2e6 * 1e-7 * (1 - 0.64), within(1e-6));
    assertThat(ThickTube.pressure(law, mm(8), mm(10), 1.0, 1.0).pa()).isCloseTo(0.0, within(1e-9));
    assertThat(ThickTube.pressure(law, mm(8), mm(10), 0.9, 1.0).pa()).isNegative();
    assertThatThrownBy(() -> ThickTube.pressure(law, mm(10), mm(8), 1.1, 1.0))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("outer radius is 8 mm");
    assertThatThrownBy(() -> ThickTube.grow(mm(8), mm(10), mm(5), 1.0))
        .hasMessageContaining("keeps its volume");
  }

  /**
   * The cylinder held in length against a rigid bore by finite differences and an active set: an
   * independent route to touch pressure, contact length and end curvature.
   */
  @ParameterizedTest
  @CsvSource({"6, 0.49", "9.5, 0.49", "14.75, 0.49", "14.75, 0.3", "22, 0.5"})
  void endsMeetFiniteDifferences(double length, double nu) {
    HeldEnds ends = new HeldEnds(length, nu);
    HeldCylinder numeric = new HeldCylinder(length, nu, CELLS);
    double[] free = numeric.free(1.0);
    assertThat(1.0 / free[CELLS / 2]).isCloseTo(ends.touch(), within(1e-3 * ends.touch()));
    for (double part : new double[] {0.5, 0.75, 0.92}) {
      double layer = part * ends.longestFree();
      double pressure = ends.pressure(layer);
      double contact = numeric.contact(pressure);
      assertThat(contact).isCloseTo(ends.contact(layer), within(0.006 * length));
      double[] w = numeric.pressed(pressure);
      double h = length / CELLS;
      double curvature = 2 * w[1] / (h * h);
      assertThat(curvature).isCloseTo(ends.curvature(layer), within(0.03 * curvature));
    }
  }

  @Test
  void shortLayersJoinTheBeamWithoutFoundation() {
    HeldEnds ends = new HeldEnds(3.0, 0.49);
    assertThat(ends.pressure(0.0501))
        .isCloseTo(ends.pressure(0.0499), within(0.017 * ends.pressure(0.05)));
    double slope =
        Math.log(ends.pressure(0.0501) / ends.pressure(0.0499)) / Math.log(501.0 / 499.0);
    assertThat(slope).isCloseTo(-4.0, within(0.01));
    assertThat(ends.curvature(0.0501) * 0.0501 * 0.0501).isCloseTo(12.0, within(1e-4));
    for (double x : new double[] {0.0499, 0.0501}) {
      assertThat(HeldEnds.middle(x) / Math.pow(x, 4) * 96).isCloseTo(1.0, within(1e-4));
      assertThat(HeldEnds.mean(x) / Math.pow(x, 4) * 180).isCloseTo(1.0, within(1e-4));
      assertThat(HeldEnds.endCurvature(x) / (x * x) * 6).isCloseTo(1.0, within(1e-4));
    }
    assertThat(HeldEnds.middle(2 * Math.PI)).isCloseTo(1 + 1 / Math.cosh(Math.PI), within(1e-12));
    assertThat(HeldEnds.middle(1e4)).isEqualTo(1.0);
  }

  @Test
  void pressureSplitsIntoTubeAndContact() {
    Grade grade = Grades.polyurethane();
    Force five = Force.newtons(5);
    Response r = FINGER.respond(grade, LoadCase.toHold(five));
    double contact = FINGER.contact(grade, five).m();
    double pressed = 5.0 / (0.4 * Math.PI * 0.022 * contact);
    double tube =
        ThickTube.pressure(
                grade.law(), mm(10.1), mm(10.7), ThickTube.grow(mm(10.1), mm(10.7), mm(11), 1), 1)
            .pa();
    assertThat(r.load().nominal()).isCloseTo(tube + pressed, within(1e-6 * tube));
    // the offset is F dp/dF: a little below the contact pressure
    double step = 1e-4;
    double up = FINGER.respond(grade, LoadCase.toHold(five.times(1 + step))).load().nominal();
    double down = FINGER.respond(grade, LoadCase.toHold(five.times(1 - step))).load().nominal();
    assertThat(r.load().offset()).isCloseTo((up - down) / (2 * step), within(1e-5 * pressed));
    assertThat(r.load().offset()).isBetween(0.85 * pressed, pressed);
    assertThat(r.load().exponents().of(Factor.MODULUS)).isEqualTo(1.0);
    assertThat(r.path().last(Channel.PRESSURE)).isEqualTo(r.load().nominal());
    assertThat(FINGER.touch(grade).pa()).isLessThan(r.load().nominal());
  }

  @Test
  void shortSpansNeedMuchMore() {
    Grade grade = Grades.polyurethane();
    LoadCase hold = LoadCase.toHold(Force.newtons(5));
    double last = 0.0;
    for (double span : new double[] {60, 30, 15, 8, 4}) {
      Response r = FINGER.span(mm(span)).respond(grade, hold);
      assertThat(r.load().nominal()).isGreaterThan(last);
      last = r.load().nominal();
    }
    assertThat(FINGER.span(mm(4)).respond(grade, hold).caveats().toString())
        .contains("span in decay lengths")
        .contains("contact / span");
  }

  @Test
  void serviceIsWidestAndNarrowestBoreWithLowFriction() {
    assertThat(FINGER.serviceExtremes())
        .extracting(s -> s.bore().diameter().toString())
        .containsExactly("22.2 mm", "21.8 mm");
    assertThat(FINGER.serviceExtremes()).allMatch(s -> s.bore().friction() == 0.1);
    assertThat(FINGER.serviceExtremes().get(0).serviceExtremes()).hasSize(2);
  }

  @Test
  void sayWhatIsWrong() {
    assertThatThrownBy(() -> FINGER.into(Bore.of(mm(21.5)).tolerance(mm(0.2))))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "narrowest bore is 21.3 mm, allowed is above the outside of the sleeve, 21.4 mm; the part"
                + " would not go in: take a smaller outside or a tighter tolerance");
    assertThatThrownBy(() -> FINGER.wall(mm(10.7))).hasMessageContaining("nothing would be left");
    assertThatThrownBy(() -> Sleeve.outside(mm(20)).span(mm(5)).into(Bore.of(mm(22))))
        .hasMessageContaining("add wall(...)");
    assertThatThrownBy(() -> Bore.of(mm(22)).friction(0.1, 0.4))
        .hasMessageContaining("usual (dry) value first");
    assertThatThrownBy(() -> Bore.of(mm(22)).tolerance(mm(22)))
        .hasMessageContaining("below the diameter");
    assertThatThrownBy(() -> FINGER.respond(Grades.rubber(), LoadCase.toTravel(mm(1))))
        .hasMessageContaining("toHold");
  }

  @Test
  void layersLieInTheHoopOfAStandingSleeve() {
    LoadCase hold = LoadCase.toHold(Force.newtons(5));
    Grade grade = Grades.rubber();
    assertThat(FINGER.respond(grade, hold).strainCrossesLayers()).isFalse();
    assertThat(FINGER.build(BuildDirection.AXIS_LYING).respond(grade, hold).strainCrossesLayers())
        .isTrue();
    assertThat(FINGER.thinnest()).isEqualTo(new Feature(Feature.Kind.AIRTIGHT_WALL, mm(0.6)));
  }

  @Test
  void printOneLine() {
    assertThat(FINGER.toString())
        .startsWith("sleeve, outside 21.4 mm, span 30 mm, wall 0.6 mm, into bore 22 mm +- 0.2 mm");
    assertThat(Sleeve.outside(mm(20))).hasToString("draft of a sleeve, outside 20 mm");
  }
}
