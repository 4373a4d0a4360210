package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.decide.Survival;
import org.flexwright.decide.Verdict;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Fillets of stepped walls against plane bars and whole sleeves. */
final class JunctionTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(JunctionTest.class, "junction.csv");

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(1.0));
  private static final double SMALL = 1e-4;

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReference(ReferenceCase c) {
    double fillet = Double.parseDouble(c.inputs().get("fillet"));
    String sleeve = c.inputs().get("sleeve");
    if (sleeve != null) {
      Junction j = pulled(sleeve, SMALL).junctions(mm(fillet)).get(0);
      TABLE.check(c, j.notch().orElseThrow().strain() / SMALL);
    } else {
      double step = 1.0 / Double.parseDouble(c.inputs().get("ratio")) - 1.0;
      boolean both = "both".equals(c.inputs().get("faces"));
      boolean tension = "tension".equals(c.inputs().get("load"));
      TABLE.check(
          c, tension ? Fillet.tension(both, fillet, step) : Fillet.bending(both, fillet, step));
    }
  }

  private static Length mm(double of) {
    return Length.mm(of);
  }

  private static Meridian stepped(DrawnFace face) {
    double r = 20.0 + face.middle(); // of the drawn line: the thin wall's middle is at 20
    return Meridian.from(mm(r), mm(0))
        .lineTo(mm(r), mm(20))
        .named("thin")
        .lineTo(mm(r), mm(45))
        .named("thick")
        .drawn(face)
        .wall("thin", mm(1))
        .wall(mm(2));
  }

  /** A sleeve pulled by strain E t at its free end. */
  private static ShellState pulled(String what, double strain) {
    RevolvedShell shell =
        what.equals("SOLID")
            ? RevolvedShell.of(
                Meridian.from(mm(20), mm(0))
                    .lineTo(mm(20), mm(20))
                    .drawn(DrawnFace.MIDDLE)
                    .wall(mm(1)))
            : RevolvedShell.of(stepped(DrawnFace.valueOf(what))).last(End.GUIDED);
    Force pull = Force.newtons(-strain * 3e6 * 1e-3 * 2.0 * Math.PI * 0.02);
    return shell.first(End.FREE).run(LAW, Drive.force(pull).steps(1)).last();
  }

  private static ShellState stretched(double mm) {
    return RevolvedShell.of(stepped(DrawnFace.OUTER))
        .run(LAW, Drive.travel(mm(-mm)).steps(4))
        .last();
  }

  @Test
  void aSteppedSleeveHasThreeJunctions() {
    List<Junction> all = stretched(4.0).junctions(mm(0.5));
    assertThat(all)
        .extracting(Junction::step)
        .containsExactly(Junction.Step.BOTH, Junction.Step.INNER, Junction.Step.BOTH);
    assertThat(all)
        .extracting(j -> j.thick().map(Length::mm).orElse(0.0))
        .containsExactly(0.0, 2.0, 0.0);
    Junction step = all.get(1);
    assertThat(step.thin().mm()).isCloseTo(1.0, within(1e-12));
    assertThat(step.inner()).isTrue();
    assertThat(step.at().piece()).isEqualTo(1);
    // the smooth step is as long as the thick wall, half of it on the thin side
    assertThat(step.at().height().mm()).isBetween(18.0, 22.0);
    assertThat(step.nominal()).isEqualTo(step.at().inner().meridianStretch() - 1.0);
    assertThat(step.notch().orElseThrow().strain()).isGreaterThan(step.nominal());
    assertThat(step.caveats().toString()).contains("large strain");
    assertThat(step.toString()).contains("1 mm to 2 mm, step inner");
  }

  @Test
  void aFilletOfTwoWallsStrainsLessThanOneOfHalfAWall() {
    ShellState s = stretched(2.0);
    double sharp = s.junctions(mm(0.5)).get(1).notch().orElseThrow().strain();
    Junction wide = s.junctions(mm(2.0)).get(1);
    assertThat(wide.notch().orElseThrow().strain()).isBetween(wide.nominal(), 0.95 * sharp);
    Junction wider = s.junctions(mm(3.0)).get(1);
    assertThat(wider.notch()).isEqualTo(wide.notch());
    assertThat(wider.caveats()).anyMatch(c -> c.excursion().isPresent());
  }

  @Test
  void aSharpCornerHasNoStrainToGive() {
    Junction j = stretched(2.0).junctions(mm(0.0)).get(1);
    Grade grade = Grade.ofLaw("x", LAW).strainAtBreak(4.0);
    assertThat(j.notch()).isEmpty();
    assertThat(j.caveats()).anyMatch(c -> c.excursion().isPresent());
    assertThat(j.caveats().toString()).contains("round the corner");
    assertThat(j.survives(Survival.once(), grade, BuildDirection.AXIS_UP))
        .isEqualTo(Verdict.NOT_DECIDABLE);
    Grade brittle = grade.strainAtBreak(0.02);
    assertThat(j.survives(Survival.once(), brittle, BuildDirection.AXIS_UP))
        .isEqualTo(Verdict.FAILS);
    assertThatThrownBy(() -> stretched(1.0).junctions(mm(-1)))
        .isInstanceOf(InvalidInputException.class);
  }

  @Test
  void aGradeIsJudgedByTheLocalStrain() {
    Junction j = stretched(2.0).junctions(mm(0.5)).get(1);
    double strain = j.notch().orElseThrow().strain();
    Grade grade = Grade.ofLaw("x", LAW);
    Survival once = new Survival(1.0, Survival.once().law(), 1.0);
    BuildDirection lying = BuildDirection.AXIS_LYING;
    assertThat(j.crossesLayers(BuildDirection.AXIS_UP)).isTrue();
    assertThat(j.crossesLayers(lying)).isFalse();
    assertThat(j.survives(once, grade.strainAtBreak(20.0 * strain), lying))
        .isEqualTo(Verdict.MEETS);
    assertThat(j.survives(once, grade.strainAtBreak(strain), lying))
        .isEqualTo(Verdict.NOT_DECIDABLE);
    assertThat(j.survives(once, grade.strainAtBreak(0.05 * strain), lying))
        .isEqualTo(Verdict.FAILS);
    // the placeholder life law never condemns
    assertThat(j.survives(Survival.cycles(1e9), grade.strainAtBreak(20.0 * strain), lying))
        .isEqualTo(Verdict.NOT_DECIDABLE);
  }

  @Test
  void rigidStretchesAndFreeEnds() {
    Meridian rigid = stepped(DrawnFace.OUTER).rigid("thick");
    Drive pull = Drive.travel(mm(-1)).steps(2);
    List<Junction> all = RevolvedShell.of(rigid).run(LAW, pull).last().junctions(mm(0.5));
    assertThat(all)
        .extracting(Junction::step)
        .containsExactly(Junction.Step.BOTH, Junction.Step.INNER);
    Meridian plain = stepped(DrawnFace.OUTER).wall("thin", mm(2)).rigid("thick");
    all = RevolvedShell.of(plain).first(End.GUIDED).run(LAW, pull).last().junctions(mm(0.5));
    assertThat(all).hasSize(1);
    assertThat(all.get(0).step()).isEqualTo(Junction.Step.BOTH);
    assertThat(all.get(0).caveats().toString()).contains("shows no step");
    ShellState rest = RevolvedShell.of(plain).run(LAW, pull).states().get(0);
    assertThat(rest.junctions(mm(1)).get(0).notch().orElseThrow().strain()).isZero();
  }
}
