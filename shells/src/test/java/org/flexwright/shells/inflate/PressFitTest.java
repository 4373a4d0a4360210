package org.flexwright.shells.inflate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.Grades;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Press fits, and the margins of seals. */
final class PressFitTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(PressFitTest.class, "fit.csv");

  private static final Grade SOFT = Grade.ofLaw("soft", NeoHookean.of(Pressure.mpa(0.5)));

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    TABLE.check(
        c,
        switch (c.formula()) {
          case "press fit pressure" -> {
            double stretch = c.input("stretch");
            PressFit fit = PressFit.of(mm(20), mm(10 * (c.input("ratio") - 1)), mm(40));
            LoadCase load = LoadCase.toTravel(mm(10 * (stretch - 1)));
            yield fit.respond(SOFT, load).load().nominal() / 0.5e6;
          }
          case "press fit retention" ->
              PressFit.of(mm(c.input("bore")), mm(c.input("wall")), mm(c.input("length")))
                  .retention(SOFT, mm(c.input("u")), c.input("mu"))
                  .newtons();
          default -> {
            SealMargins m =
                SealMargins.of(
                    Bore.of(mm(24)).friction(c.input("friction"), 0.1),
                    Pressure.mpa(c.input("contact")),
                    mm(c.input("length")),
                    Pressure.mpa(c.input("medium")));
            yield c.quantity().startsWith("leak")
                ? m.leak()
                : (c.quantity().startsWith("holding") ? m.holding() : m.blowOut()).newtons();
          }
        });
  }

  /** The wall keeps its volume; where more wall stops helping is a root of Lame's formula. */
  @Test
  void wallsThatStayRoundAndWallsThatHelp() {
    PressFit fit = PressFit.of(mm(6), mm(2), mm(12));
    assertThat(fit.swelling(mm(0.4)).mm()).isCloseTo(0.2497619, within(1e-7));
    // 2 A^2/[(A + t)(2 A + t)] = 0.2: t = A (sqrt(41) - 3)/2
    assertThat(fit.usefulWall(SOFT, mm(1e-4), 0.2).mm()).isCloseTo(3 * 1.7015621, within(2e-3));
    assertThat(fit.wall(mm(20)).swelling(mm(0.4)).mm()).isLessThan(0.06);
    assertThat(fit.usefulWall(SOFT, mm(0.4), 0.1).m())
        .isGreaterThan(fit.usefulWall(SOFT, mm(0.4), 0.2).m());
  }

  /** A boss free to shorten on its stem is the other end of the band. */
  @Test
  void bandHoldsTheBossThatMayShorten() {
    for (double wall : new double[] {0.1, 0.5, 1, 3}) {
      for (double u : new double[] {1e-3, 0.1, 0.3, 0.5}) {
        for (Grade grade : new Grade[] {SOFT, Grades.rubber()}) {
          TubeWall tube = new TubeWall(grade.law(), 1, 1 + wall);
          double axial = tube.axial(TubeEnds.OPEN, z -> 1 + u);
          double free = tube.pressure(1 + u, axial);
          Response held =
              PressFit.of(mm(2000), mm(1000 * wall), mm(4000))
                  .respond(grade, LoadCase.toTravel(mm(1000 * u)));
          assertThat(free / held.load().nominal())
              .isBetween(held.load().modelLow(), held.load().modelHigh());
          if (u == 1e-3) { // linear: 1/(1 + A^2/(3 B^2))
            double k = 1 / ((1 + wall) * (1 + wall));
            assertThat(free / held.load().nominal()).isCloseTo(1 / (1 + k / 3), within(1e-3));
          }
        }
      }
    }
  }

  @Test
  void sleeveKnowsItsMargins() {
    Sleeve finger =
        Sleeve.outside(mm(21.4))
            .span(mm(30))
            .wall(mm(0.6))
            .into(Bore.of(mm(22)).friction(0.4, 0.1));
    Force ten = Force.newtons(10);
    SealMargins m = finger.seal(Grades.rubber(), ten, Pressure.kpa(5));
    // it holds what it is inflated to hold
    assertThat(m.holding().newtons()).isCloseTo(10, within(1e-6));
    assertThat(m.hold()).isCloseTo(10 / (Math.PI * 0.011 * 0.011 * 5000), within(1e-6));
    double contact = 10 / (0.4 * Math.PI * 0.022 * finger.contact(Grades.rubber(), ten).m());
    assertThat(m.leak()).isCloseTo(contact / 5000, within(1e-6));
    assertThat(m.usual()).isTrue();
    assertThat(finger.seal(Grades.rubber(), ten, Pressure.kpa(20)).usual()).isFalse();
    assertThat(m.toString()).contains("leak margin").contains("blow-out margin");
    assertThatThrownBy(() -> finger.seal(Grades.rubber(), ten, Pressure.kpa(0)))
        .hasMessageContaining("pressure of the medium");
  }

  private static double energy(PressFit part, Grade grade, LoadCase load) {
    double a = 0.5 * part.bore().m();
    double b = a + part.wall().m();
    double grown = a + ((LoadCase.ToTravel) load).travel().m();
    StrainEnergy law = grade.law();
    int n = 400;
    double sum = 0;
    for (int i = 0; i < n; i++) { // midpoints of even areas
      double square = a * a + (i + 0.5) / n * (b * b - a * a);
      double l = Math.sqrt((grown * grown - a * a + square) / square);
      sum += law.energy(l, 1, 1 / l);
    }
    return sum / n * Math.PI * (b * b - a * a) * part.length().m();
  }

  @Test
  void doesWhatEveryPartMust() {
    PartCase<PressFit> c =
        PartCase.of(
                "press fit",
                (s, d) -> {
                  d.between(1, 2); // the first number hardly changes from seed to seed
                  return PressFit.of(
                      mm(6 * s), mm(d.between(0.5, 8) * s), mm(d.between(4, 20) * s));
                },
                (s, d) -> {
                  d.between(1, 2);
                  return LoadCase.toTravel(mm(d.between(0.05, 3) * s));
                })
            .energy(PressFitTest::energy);
    PartHarness.check(c, Grades.rubber(), 51);
  }

  @Test
  void sayWhatIsWrong() {
    assertThatThrownBy(() -> PressFit.of(mm(6), mm(0), mm(12))).hasMessageContaining("wall");
    PressFit fit = PressFit.of(mm(6), mm(2), mm(12));
    assertThatThrownBy(() -> fit.retention(SOFT, mm(0.4), 0)).hasMessageContaining("friction");
    assertThatThrownBy(() -> fit.usefulWall(SOFT, mm(0.4), 1)).hasMessageContaining("share");
    Response r = fit.build(BuildDirection.AXIS_LYING).respond(SOFT, LoadCase.toTravel(mm(0.4)));
    assertThat(r.strainCrossesLayers()).isTrue();
    assertThat(r.caveats().toString()).contains("barb");
    assertThat(fit).hasToString("press fit, bore 6 mm, wall 2 mm, length 12 mm");
  }
}
