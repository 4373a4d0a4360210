package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RelationsTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(RelationsTest.class, "/reference/hardness_relations.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  static Stream<HardnessRelation> all() {
    return Relations.all().stream();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    HardnessRelation relation =
        all().filter(r -> r.name().equals(c.formula())).findFirst().orElseThrow();
    double points = c.input("points");
    TABLE.check(c, relation.modulus(points).mpa());
    double bound = c.tolerance().bound() / (c.tolerance().relative() ? 1.0 : c.published());
    double inPoints = bound / relation.logSlope(points);
    assertThat(relation.points(Pressure.mpa(c.published())))
        .isCloseTo(points, within(1.1 * inPoints + 1e-9));
  }

  @Test
  void everyRelationHasTwoReferenceValues() {
    for (HardnessRelation relation : Relations.all()) {
      assertThat(TABLE.cases(relation.name())).as(relation.name()).hasSizeGreaterThan(1);
    }
    assertThat(Relations.all()).containsAll(Relations.independent()).hasSize(13);
  }

  @Property(seed = "21")
  void modulusRisesAndInverts(
      @ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.9) double points) {
    for (HardnessRelation relation : Relations.all()) {
      Pressure here = relation.modulus(points);
      assertThat(here.pa()).as(relation.name()).isPositive();
      assertThat(relation.modulus(points + 0.02)).as(relation.name()).isGreaterThan(here);
      assertThat(relation.points(here)).as(relation.name()).isCloseTo(points, within(1e-8));
      assertThat(relation.logSlope(points)).as(relation.name()).isPositive();
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void extremeLegalReadingsStayFinite(HardnessRelation relation) {
    for (double points : new double[] {Double.MIN_NORMAL, 1e-9, 1e-4, Math.nextDown(100.0)}) {
      assertThat(relation.modulus(points).pa()).isFinite().isNotNegative();
    }
    assertThat(relation.modulus(1e-9).pa()).isPositive();
  }

  @ParameterizedTest
  @MethodSource("all")
  void readingsOffTheScaleAreRefused(HardnessRelation relation) {
    for (double points : new double[] {0, 100, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThatThrownBy(() -> relation.modulus(points))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageContaining(" reading is ")
          .hasMessageContaining("above 0 and below 100 points");
      assertThatThrownBy(() -> relation.logSlope(points)).isInstanceOf(InvalidInputException.class);
    }
    for (double mpa : new double[] {0, -1}) {
      assertThatThrownBy(() -> relation.points(Pressure.mpa(mpa)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("modulus for " + relation.name());
    }
  }

  @ParameterizedTest
  @MethodSource("all")
  void saysWhatItIs(HardnessRelation relation) {
    assertThat(relation.toString())
        .startsWith(relation.name())
        .contains(relation.range().toString())
        .matches("\\p{ASCII}+");
    assertThat(relation.range().model()).isEqualTo(relation.name());
    assertThat(relation.source().text()).isNotBlank();
  }

  @Test
  void moduliWithoutAReadingAreRefused() {
    assertThatThrownBy(() -> new Gent1958().points(Pressure.mpa(0.1)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "modulus for Gent 1958 is 100 kPa, allowed is a modulus that has a reading strictly"
                + " between 0 and 100 points; use a relation on a softer or a harder scale");
    assertThatThrownBy(() -> QiJoyceBoyce2003.onShoreA().points(Pressure.mpa(60)))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> new QiJoyceBoyce2003(Irhd.class))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("allowed is Shore A or Shore D");
  }

  // S = 100 - 20 (-78.188 + sqrt(6113.36 + 781.88 E)) / E, the printed forward form
  @Test
  void printedForwardFormOfTheShoreDFormula() {
    for (double e : new double[] {10, 49.3367, 100, 300}) {
      double printed = 100 - 20 * (-78.188 + Math.sqrt(6113.36 + 781.88 * e)) / e;
      assertThat(new ShoreDFormula().points(Pressure.mpa(e))).isCloseTo(printed, within(1e-4));
    }
  }

  // d ln E / dS = a1/(a0 + a1 S) + 1/(100 - S), differentiated by hand; and 0.110 at 90
  @Test
  void sensitivityOfGent() {
    HardnessRelation gent = new Gent1958();
    assertThat(gent.logSlope(90)).isCloseTo(0.110, within(0.001));
    for (double s : new double[] {1, 20, 60, 95, 99}) {
      double exact = 7.62336 / (56 + 7.62336 * s) + 1 / (100 - s);
      assertThat(gent.logSlope(s)).isCloseTo(exact, within(1e-9 * exact + 1e-10));
    }
    assertThat(QiJoyceBoyce2003.throughShoreD().logSlope(46))
        .isCloseTo(0.0235 * Math.log(10), within(1e-9));
  }

  private record Exponential() implements HardnessRelation {
    @Override
    public String name() {
      return "exponential";
    }

    @Override
    public Class<? extends HardnessReading> scale() {
      return ShoreA.class;
    }

    @Override
    public ValidityRange range() {
      return new ValidityRange(name(), "Shore A", 60, 95, "points", source());
    }

    @Override
    public Source source() {
      return Source.assumption("made for this test");
    }

    @Override
    public Pressure modulus(double points) {
      return Pressure.mpa(
          0.2 * Math.exp(0.05 * HardnessRelation.requireOnScale("Shore A", points)));
    }
  }

  @Test
  void usersRelationInvertsBySolving() {
    HardnessRelation own = new Exponential();
    assertThat(own.points(Pressure.mpa(0.2 * Math.exp(3)))).isCloseTo(60, within(1e-9));
    assertThat(own.logSlope(60)).isCloseTo(0.05, within(1e-10));
    assertThat(own.points(own.modulus(1e-6))).isCloseTo(1e-6, within(1e-12));
    assertThat(own.points(own.modulus(100.0 - 1e-6))).isCloseTo(100.0, within(1e-5));
    assertThatThrownBy(() -> own.points(Pressure.mpa(100)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining(
            "modulus for exponential is 100 MPa, allowed is 200 kPa to 29.68 MPa");
  }
}
