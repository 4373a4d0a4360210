package org.flexwright.finder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.Grade;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

final class CatalogueTest {

  private static final Source SOURCE = Source.derived("a test");
  private static final Grade GRADE = Grade.ofLaw("rubber", NeoHookean.of(Pressure.mpa(1)));

  /** A spring good for walls up to a share of its length. */
  private static Analysis spring(String name, double most) {
    return new Analysis(
        name,
        Shape.STRIP,
        java.util.Set.of(Dimension.WALL, Dimension.LENGTH, Dimension.TRAVEL),
        false,
        (thing, grade) -> respond(name, most, thing, grade));
  }

  private static Response respond(String name, double most, Described thing, Grade grade) {
    double slender = thing.get(Dimension.WALL).ratioTo(thing.get(Dimension.LENGTH));
    return ClosedForm.of(name, thing.get(Dimension.WALL))
        .spring(t -> t)
        .strainSlope(t -> 0.1)
        .sources(SOURCE)
        .respond(
            grade,
            LoadCase.toTravel(thing.get(Dimension.TRAVEL)),
            RunControl.none(),
            Checks.of(name, SOURCE).check("wall / length", 0.0, most, slender));
  }

  private static final Catalogue BOTH =
      Catalogue.of(List.of(spring("slender", 0.05), spring("stocky", 0.2)));
  private static final Described STRIP =
      Described.as(Shape.STRIP).with(Dimension.WALL, mm(1)).with(Dimension.TRAVEL, mm(2));

  @Test
  void bestFitComesFirstAndSaysHowFarTheOthersAreOut() {
    Described thing = STRIP.with(Dimension.LENGTH, mm(10));
    List<Finding> found = BOTH.find(thing, GRADE);
    assertThat(found).extracting(f -> f.analysis().name()).containsExactly("stocky", "slender");
    assertThat(found.get(0).excess()).isZero();
    assertThat(found.get(1).excess()).isCloseTo(Math.log(2), within(1e-12));
    assertThat(found.get(1).caveats()).hasSize(1);
    assertThat(found.get(1).ranges()).hasSize(3);
    assertThat(found.get(0).sources()).containsExactly(SOURCE);
    assertThat(BOTH.table(thing, GRADE))
        .contains(
            "stocky    force", "in range", "100 % beyond", "wall / length 0 to 0.05, here 0.1");
  }

  @Test
  void saysWhatIsMissingAndWhatMakesNoSense() {
    assertThat(BOTH.find(STRIP, GRADE))
        .allMatch(f -> !f.applies() && f.reason().orElseThrow().equals("needs length"));
    assertThat(BOTH.table(STRIP, GRADE)).contains("needs length");
    assertThat(BOTH.find(Described.as(Shape.TUBE), GRADE)).isEmpty();
    Analysis hinge =
        new Analysis(
            "hinge",
            Shape.STRIP,
            java.util.Set.of(),
            true,
            (t, g) -> {
              throw new InvalidInputException("hinge", "bad", "good", "");
            });
    Catalogue one = Catalogue.of(List.of(hinge));
    assertThat(one.find(STRIP, GRADE).get(0)).hasToString("hinge: needs angle");
    assertThat(one.find(STRIP.turnedTo(Angle.degrees(5)), GRADE).get(0).toString())
        .startsWith("hinge: hinge is bad, allowed is good");
    assertThat(BOTH.and(one).analyses()).hasSize(3);
    assertThatThrownBy(() -> one.and(one)).hasMessageContaining("a name used once");
    assertThatThrownBy(() -> STRIP.get(Dimension.CELL)).hasMessageContaining("describe it");
    assertThatThrownBy(() -> STRIP.with(Dimension.CELL, mm(0))).hasMessageContaining("above 0");
    assertThatThrownBy(() -> STRIP.count(0)).hasMessageContaining("at least 1");
    assertThat(STRIP.count(3)).hasToString("3 x strip, wall 1 mm, travel 2 mm");
  }

  @Test
  void distanceFromARangeIsARatio() {
    ValidityRange range = new ValidityRange("m", "x", 0.1, 10, "", SOURCE);
    assertThat(new RangeCheck(range, 10).excess()).isZero();
    assertThat(new RangeCheck(range, 20).excess()).isCloseTo(Math.log(2), within(1e-12));
    assertThat(new RangeCheck(range, 0.05).excess()).isCloseTo(Math.log(2), within(1e-12));
    assertThat(new RangeCheck(range, -1).excess()).isEqualTo(1.0);
    assertThat(new RangeCheck(range, 20)).hasToString("x 0.1 to 10, here 20, OUTSIDE");
  }
}
