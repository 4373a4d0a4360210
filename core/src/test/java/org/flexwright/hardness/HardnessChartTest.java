package org.flexwright.hardness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.flexwright.InvalidInputException;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HardnessChartTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(HardnessChartTest.class, "/reference/hardness_chart.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    double value =
        switch (c.text("to")) {
          case "D" -> HardnessChart.toShoreD(ShoreA.of(c.input("shore_a"))).points();
          case "A" -> HardnessChart.toShoreA(ShoreD.of(c.input("shore_d"))).points();
          case "A from OO" -> HardnessChart.toShoreA(oo(c.input("shore_oo"))).points();
          default -> HardnessChart.toShoreOo(ShoreA.of(c.input("shore_a"))).points();
        };
    TABLE.check(c, value); // entries of the chart have no tolerance
  }

  private static DurometerReading oo(double points) {
    return DurometerReading.of(Durometer.SHORE_OO, points);
  }

  @Property(seed = "11")
  void thereAndBack(@ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.99) double a) {
    ShoreD d = HardnessChart.toShoreD(ShoreA.of(a));
    assertThat(HardnessChart.toShoreA(d).points()).isCloseTo(a, within(1e-10));
  }

  @Property(seed = "12")
  void rises(@ForAll @Scale(5) @DoubleRange(min = 0.01, max = 99.9) double a) {
    assertThat(HardnessChart.toShoreD(ShoreA.of(a + 0.05)).points())
        .isGreaterThan(HardnessChart.toShoreD(ShoreA.of(a)).points());
  }

  @Test
  void toleranceCoversBothEnds() {
    ShoreD d = HardnessChart.toShoreD(ShoreA.of(95).plusMinus(5));
    // 90 A is 39 D (7 points below); the upper end is clamped half a point inside, under 58 D
    assertThat(d.points()).isEqualTo(46.0);
    assertThat(d.tolerance()).isGreaterThan(7.0).isLessThan(12.0);
    ShoreD narrow = HardnessChart.toShoreD(ShoreA.of(85).plusMinus(5));
    assertThat(narrow).isEqualTo(new ShoreD(33, 6));
    ShoreA back = HardnessChart.toShoreA(ShoreD.of(33).plusMinus(6));
    // 27 D lies between 75 A (25 D) and 80 A (29 D), 39 D is 90 A: the lower half is larger
    assertThat(back.points()).isEqualTo(85.0);
    assertThat(back.tolerance()).isBetween(5.0, 10.0);
  }

  @Test
  void offTheChart() {
    assertThat(HardnessChart.check(ShoreA.of(60))).isEmpty();
    assertThat(HardnessChart.check(ShoreA.of(29)).orElseThrow().message())
        .isEqualTo("Shore A is 29, the model is good for Shore A 30 to 100 points");
    assertThat(HardnessChart.toShoreD(ShoreA.of(10)).points()).isCloseTo(2.0, within(1e-12));
    assertThat(HardnessChart.check(ShoreD.of(5))).isPresent();
    assertThat(HardnessChart.check(ShoreD.of(6))).isEmpty();
    assertThat(HardnessChart.check(Irhd.of(81))).isPresent();
    assertThat(HardnessChart.check(Irhd.of(80))).isEmpty();
    assertThatThrownBy(() -> HardnessChart.toShoreA(ShoreD.of(58)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessage(
            "Shore D reading to convert is 58 points, allowed is below 58 points, which is 100"
                + " Shore A; stay on Shore D, scale A has ended there");
    assertThatThrownBy(() -> HardnessChart.toShoreOo(ShoreA.of(4)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("allowed is 5 to 80 points");
  }

  @Test
  void wideReadingsStayOnTheScale() {
    assertThat(HardnessChart.toShoreA(ShoreD.of(57).plusMinus(20)).points()).isLessThan(100.0);
    assertThat(HardnessChart.toShoreA(Irhd.of(60).plusMinus(2))).isEqualTo(new ShoreA(60, 2));
    assertThat(HardnessChart.toIrhd(ShoreA.of(60).plusMinus(2))).isEqualTo(new Irhd(60, 2));
    assertThat(HardnessChart.range().low()).isEqualTo(30.0);
    assertThat(HardnessChart.irhdRange().high()).isEqualTo(80.0);
    assertThat(HardnessChart.source().toString()).contains("comparison chart");
    assertThat(HardnessChart.topOfShoreD()).isEqualTo(58.0);
  }

  @Property(seed = "13")
  void thereAndBackOverShoreOo(@ForAll @DoubleRange(min = 5, max = 80) double a) {
    DurometerReading there = HardnessChart.toShoreOo(ShoreA.of(a));
    assertThat(HardnessChart.toShoreA(there).points()).isCloseTo(a, within(1e-10));
  }

  // the pairs that miss the chart most, and the copies of it that were read
  @Test
  void scatterCoversThePairsThatWereRead() {
    double[][] pairs = {{96, 45}, {95, 45}, {95, 46}, {70, 22}};
    for (double[] pair : pairs) {
      ShoreD d = HardnessChart.toShoreDWithScatter(ShoreA.of(pair[0]));
      assertThat(pair[1]).isBetween(d.points() - d.tolerance() - 0.1, d.high());
      ShoreA a = HardnessChart.toShoreAWithScatter(ShoreD.of(pair[1]));
      assertThat(pair[0]).isBetween(a.low(), a.high());
    }
  }

  @Test
  void scatterWidensTheToleranceAndKeepsThePoints() {
    ShoreA reading = ShoreA.of(85).plusMinus(5);
    ShoreD plain = HardnessChart.toShoreD(reading);
    ShoreD wide = HardnessChart.toShoreDWithScatter(reading);
    assertThat(wide.points()).isEqualTo(plain.points());
    assertThat(wide.tolerance()).isCloseTo(Math.hypot(6, 3), within(1e-12));
    assertThat(HardnessChart.toShoreDWithScatter(ShoreA.of(50)).tolerance())
        .isCloseTo(12 * 3.0 / 20, within(1e-12));
    ShoreA back = HardnessChart.toShoreAWithScatter(ShoreD.of(46));
    assertThat(back.points()).isEqualTo(95);
    assertThat(back.tolerance()).isBetween(1.0, 3.0);
    assertThat(HardnessChart.toShoreOoWithScatter(ShoreA.of(60)).tolerance()).isEqualTo(4);
    assertThat(HardnessChart.toShoreOoWithScatter(ShoreA.of(10)).tolerance()).isEqualTo(8);
    assertThat(HardnessChart.toShoreAWithScatter(oo(80)).tolerance())
        .isGreaterThan(HardnessChart.toShoreA(oo(80).plusMinus(1)).tolerance());
    assertThat(HardnessChart.scatterSource().toString()).contains("derived");
  }

  // where linear contact of both indenters puts the other scale
  @Test
  void scatterIsWhatLinearContactMisses() {
    LinearContact a = LinearContact.of(Durometer.SHORE_A);
    LinearContact d = LinearContact.of(Durometer.SHORE_D);
    LinearContact oo = LinearContact.of(Durometer.SHORE_OO);
    for (double points = 60; points <= 90; points += 5) {
      ShoreD chart = HardnessChart.toShoreDWithScatter(ShoreA.of(points));
      assertThat(d.points(a.modulus(points)))
          .isCloseTo(chart.points(), within(chart.tolerance() + 0.5));
    }
    for (double points = 5; points <= 80; points += 5) {
      DurometerReading chart = HardnessChart.toShoreOoWithScatter(ShoreA.of(points));
      assertThat(oo.points(a.modulus(points)))
          .as("%s A", points)
          .isCloseTo(chart.points(), within(chart.tolerance()));
    }
  }

  @Test
  void offTheColumnOfShoreOo() {
    assertThatThrownBy(() -> HardnessChart.toShoreA(oo(44)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("allowed is 45 to 98 points");
    DurometerReading other = DurometerReading.of(Durometer.SHORE_O, 60);
    assertThatThrownBy(() -> HardnessChart.toShoreA(other))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("allowed is a reading of a type OO durometer");
  }
}
