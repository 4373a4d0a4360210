package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

class ModulusFromHardnessTest {

  private static List<String> names(List<ModulusFromHardness.Row> rows) {
    return rows.stream().map(ModulusFromHardness.Row::relation).toList();
  }

  // 33.7635, 41.2762 and 49.3277 MPa computed by a separate program, mean by hand
  @Test
  void spreadAt95() {
    ModulusFromHardness m = ModulusFromHardness.of(ShoreA.of(95).plusMinus(3));
    assertThat(m.spread().band()).isEqualTo(Estimate.Band.SPREAD_OF_RELATIONS);
    assertThat(m.spread().low().mpa()).isCloseTo(33.7635, within(1e-4));
    assertThat(m.spread().high().mpa()).isCloseTo(49.3277, within(1e-4));
    assertThat(m.spread().nominal().mpa())
        .isCloseTo(Math.cbrt(33.7635 * 41.2762 * 49.3277), within(1e-3))
        .isCloseTo(41, within(0.1));
    assertThat(names(m.used()))
        .containsExactlyInAnyOrder(
            "Sneddon cone", "Radiused cone", "Qi, Joyce & Boyce 2003 on Shore D");
    assertThat(m.withReading().band()).isEqualTo(Estimate.Band.SPREAD_AND_READING);
    assertThat(m.withReading().nominal()).isEqualTo(m.spread().nominal());
    assertThat(m.withReading().low().mpa()).isBetween(25.0, 28.0);
    assertThat(m.withReading().high().mpa()).isBetween(72.0, 77.0);
    assertThat(names(m.leftOut()))
        .contains("Gent 1958", "IRHD probit", "Kunz & Studer 2006", "Shore D formula");
    assertThat(m.spread().caveats())
        .extracting(Caveat::toString)
        .anyMatch(c -> c.contains("left out: Gent 1958"));
  }

  // 3.60507, 3.47811 and 5.88437 MPa computed by a separate program
  @Test
  void rubberRelationsAt60() {
    ModulusFromHardness m = ModulusFromHardness.of(ShoreA.of(60));
    assertThat(m.spread().nominal().mpa())
        .isCloseTo(Math.cbrt(3.60507 * 3.47811 * 5.88437), within(1e-4));
    assertThat(m.spread().low().mpa()).isCloseTo(3.47811, within(1e-5));
    assertThat(m.spread().high().mpa()).isCloseTo(5.88437, within(1e-5));
    assertThat(m.withReading().low()).isEqualTo(m.spread().low());
    assertThat(m.withReading().high()).isEqualTo(m.spread().high());
    assertThat(m.used()).hasSize(3).allMatch(r -> Math.abs(r.share() - 1.0 / 3) < 1e-12);
  }

  // half the share to each group; six values computed by a separate program
  @Test
  void bothGroupsAt85() {
    ModulusFromHardness m = ModulusFromHardness.of(ShoreA.of(85));
    assertThat(m.spread().nominal().mpa())
        .isCloseTo(
            Math.pow(13.1822 * 12.2886 * 22.7615 * 22.9871 * 16.8194 * 20.4268, 1.0 / 6),
            within(1e-3));
    assertThat(m.used()).hasSize(6);
    assertThat(m.spread().caveats())
        .extracting(Caveat::toString)
        .contains("Gent 1958: Shore A is 85, the model is good for Shore A 20 to 80 points");
  }

  @Property(seed = "31")
  void everyReadingAnswers(
      @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.99) double points,
      @ForAll @Scale(5) @DoubleRange(min = 0, max = 60) double tolerance) {
    for (HardnessReading reading :
        List.of(
            new ShoreA(points, tolerance),
            new ShoreD(points, tolerance),
            new Irhd(points, tolerance))) {
      ModulusFromHardness m = ModulusFromHardness.of(reading);
      assertThat(m.spread().low().pa()).isFinite().isPositive();
      assertThat(m.withReading().low()).isLessThanOrEqualTo(m.spread().low());
      assertThat(m.withReading().high()).isGreaterThanOrEqualTo(m.spread().high());
      double shares = m.used().stream().mapToDouble(ModulusFromHardness.Row::share).sum();
      assertThat(shares).isCloseTo(1, within(1e-12));
      assertThat(m.table()).matches("[\\p{ASCII}]+").doesNotContain("NaN");
    }
  }

  @Test
  void extremeReadingsAnswer() {
    for (double points : new double[] {1e-9, Math.nextDown(100.0)}) {
      for (HardnessReading reading :
          List.of(ShoreA.of(points), ShoreD.of(points), Irhd.of(points))) {
        assertThat(ModulusFromHardness.of(reading).spread().nominal().pa()).isFinite();
      }
    }
  }

  @Test
  void nominalRisesWithoutSteps() {
    for (double a = 0.5; a < 99.5; a += 0.05) {
      double here = ModulusFromHardness.of(ShoreA.of(a)).spread().nominal().pa();
      double next = ModulusFromHardness.of(ShoreA.of(a + 0.05)).spread().nominal().pa();
      assertThat(next / here).as("at %s", a).isGreaterThan(1.0).isLessThan(1.02);
    }
    for (double d = 0.5; d < 99; d += 0.05) {
      double here = ModulusFromHardness.of(ShoreD.of(d)).spread().nominal().pa();
      double next = ModulusFromHardness.of(ShoreD.of(d + 0.05)).spread().nominal().pa();
      assertThat(next / here).as("at %s D", d).isGreaterThan(1.0).isLessThan(1.15);
    }
  }

  @Test
  void sameMaterialOnBothScales() {
    assertThat(ModulusFromHardness.of(ShoreD.of(46)).spread().nominal().mpa())
        .isCloseTo(ModulusFromHardness.of(ShoreA.of(95)).spread().nominal().mpa(), within(1e-9));
    assertThat(ModulusFromHardness.of(Irhd.of(60)).spread().nominal())
        .isEqualTo(ModulusFromHardness.of(ShoreA.of(60)).spread().nominal());
  }

  @Test
  void hardShoreDIsAnsweredWithAWarning() {
    ModulusFromHardness m = ModulusFromHardness.of(ShoreD.of(75).plusMinus(2));
    assertThat(names(m.leftOut()))
        .containsExactly("Shore D formula", "Moulded polyurethane, flexural");
    assertThat(m.spread().caveats())
        .extracting(Caveat::toString)
        .anyMatch(c -> c.contains("Shore D is 75, the model is good for Shore D up to 60 points"))
        .anyMatch(c -> c.contains("silent above 58 Shore D"));
  }

  @Test
  void irhdIsAnsweredByItsOwnDefinition() {
    ModulusFromHardness m = ModulusFromHardness.of(Irhd.of(92));
    assertThat(names(m.used())).containsExactly("IRHD probit");
    assertThat(m.spread().caveats()).hasSize(2);
  }

  @Test
  void yourOwnRelations() {
    ModulusFromHardness one = ModulusFromHardness.of(ShoreA.of(60), List.of(new Gent1958()));
    assertThat(one.spread().nominal().mpa()).isCloseTo(3.60507, within(1e-5));
    assertThat(one.leftOut()).isEmpty();
    ModulusFromHardness outside = ModulusFromHardness.of(ShoreA.of(97), List.of(new Gent1958()));
    assertThat(outside.spread().caveats()).isNotEmpty();
    ModulusFromHardness onD =
        ModulusFromHardness.of(ShoreA.of(50), List.of(ContactRelation.sharpConeOnD()));
    assertThat(onD.spread().nominal().mpa()).isCloseTo(4.84547, within(1e-5));
    assertThatThrownBy(() -> ModulusFromHardness.of(ShoreA.of(50), List.of()))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("list of hardness relations for 50 Shore A is empty");
    assertThatThrownBy(() -> ModulusFromHardness.of(ShoreD.of(70), List.of(new Gent1958())))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("add a relation on Shore D");
  }

  @Test
  void readableLines() {
    ModulusFromHardness m = ModulusFromHardness.of(ShoreA.of(95).plusMinus(3));
    assertThat(m.table().split("\n")).hasSize(16);
    assertThat(m.table()).contains("Radiused cone").contains("33.76 MPa").contains("33 %");
    assertThat(m.toString())
        .startsWith("modulus from 95 +- 3 Shore A: 40.96 MPa, relations 33.76 MPa to 49.33 MPa,");
    assertThat(m.spread().nominal()).isGreaterThan(Pressure.mpa(40));
  }

  // every value computed by a separate program
  @Test
  void disagreementAt95() {
    String table = ModulusFromHardness.of(ShoreA.of(95)).disagreement();
    List<String> lines = List.of(table.split("\n"));
    assertThat(lines).hasSize(2 + 13 + 1);
    assertThat(lines.get(0)).isEqualTo("What the relations say at 95 Shore A");
    assertThat(lines.get(2)).contains("Battermann", "16.89 MPa", "1.00", "out by 15", "READ");
    assertThat(lines.get(14)).contains("Moulded", "80.75 MPa", "4.78", " in ", "DERIVED");
    assertThat(table)
        .contains("Truncated cone")
        .endsWith("stiffest over softest: 4.78; of those in their range: 2.46");
    assertThat(ModulusFromHardness.of(ShoreA.of(5)).disagreement()).contains("none in its range");
  }

  @Property(seed = "32", tries = 200)
  void disagreementListsEveryRelation(
      @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.99) double points) {
    for (HardnessReading reading : List.of(ShoreA.of(points), ShoreD.of(points), Irhd.of(points))) {
      ModulusFromHardness m = ModulusFromHardness.of(reading);
      assertThat(m.disagreement()).matches("[\\p{ASCII}]+").doesNotContain("NaN");
      int asked = m.used().size() + m.leftOut().size();
      assertThat(m.disagreement().split("\n")).hasSize(asked + 3);
      m.used().forEach(r -> assertThat(r.outside()).isNotNegative());
    }
  }
}
