package org.flexwright.hardness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Force;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class ReadingsTest {

  @ParameterizedTest
  @ValueSource(
      doubles = {
        0.0,
        -0.0,
        100.0,
        -3.0,
        101.0,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
      })
  void readingsOffTheScaleAreRefused(double points) {
    assertThatThrownBy(() -> ShoreA.of(points))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("Shore A reading is ")
        .hasMessageContaining("points, allowed is above 0 and below 100 points; ")
        .hasMessageContaining("use a softer or a harder scale");
    assertThatThrownBy(() -> ShoreD.of(points)).hasMessageStartingWith("Shore D reading is ");
    assertThatThrownBy(() -> Irhd.of(points)).hasMessageStartingWith("IRHD reading is ");
  }

  @ParameterizedTest
  @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
  void tolerancesThatMakeNoSenseAreRefused(double tolerance) {
    assertThatThrownBy(() -> ShoreA.of(60).plusMinus(tolerance))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageStartingWith("Shore A tolerance is ")
        .hasMessageContaining("points, allowed is finite and not below 0");
    assertThatThrownBy(() -> ShoreD.of(60).plusMinus(tolerance))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> Irhd.of(60).plusMinus(tolerance))
        .isInstanceOf(InvalidInputException.class);
  }

  @Test
  void messageNamesTheValue() {
    assertThatThrownBy(() -> ShoreA.of(Double.NaN)).hasMessageContaining("is NaN points");
    assertThatThrownBy(() -> ShoreA.of(120)).hasMessageContaining("is 120 points");
  }

  @Test
  void withersKeepTheOtherPart() {
    assertThat(ShoreA.of(95).plusMinus(3).points(90)).isEqualTo(new ShoreA(90, 3));
    assertThat(ShoreD.of(46).plusMinus(2).points(40)).isEqualTo(new ShoreD(40, 2));
    assertThat(Irhd.of(60).plusMinus(2).points(50)).isEqualTo(new Irhd(50, 2));
    assertThat(ShoreA.of(60).tolerance()).isZero();
  }

  @Test
  void bandStaysInsideTheScale() {
    HardnessReading wide = ShoreA.of(95).plusMinus(30);
    assertThat(wide.low()).isEqualTo(65.0);
    assertThat(wide.high()).isEqualTo(99.5);
    assertThat(ShoreA.of(10).plusMinus(30).low()).isEqualTo(0.5);
    HardnessReading hard = ShoreA.of(99.9).plusMinus(3);
    assertThat(hard.high()).isEqualTo(99.9);
    assertThat(ShoreD.of(0.2).plusMinus(1).low()).isEqualTo(0.2);
  }

  @Test
  void orderedByPointsThenTolerance() {
    assertThat(ShoreA.of(60)).isLessThan(ShoreA.of(61)).isLessThan(new ShoreA(60, 1));
    assertThat(ShoreD.of(60)).isEqualByComparingTo(new ShoreD(60, 0));
    assertThat(Irhd.of(60)).isGreaterThan(Irhd.of(59)).isLessThan(new Irhd(60, 1));
    assertThat(ShoreD.of(60)).isLessThan(new ShoreD(60, 1));
  }

  @Test
  void oneReadableLine() {
    assertThat(ShoreA.of(95).plusMinus(3)).hasToString("95 +- 3 Shore A");
    assertThat(ShoreD.of(46.5)).hasToString("46.5 Shore D");
    assertThat(Irhd.of(60)).hasToString("60 IRHD");
    assertThat(Durometer.SHORE_A)
        .hasToString("Shore A durometer, 0.55 N to 8.05 N, extension 2.5 mm");
  }

  @Test
  void readingOfAnyType() {
    DurometerReading soft = DurometerReading.of(Durometer.SHORE_OO, 50).plusMinus(3);
    assertThat(soft).hasToString("50 +- 3 Shore OO");
    assertThat(soft.low()).isEqualTo(47);
    assertThat(soft.plusMinus(80).high()).isEqualTo(99.5);
    for (double points : new double[] {0, 100, Double.NaN}) {
      assertThatThrownBy(() -> DurometerReading.of(Durometer.SHORE_E, points))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("Shore E reading is ");
    }
    assertThatThrownBy(() -> soft.plusMinus(-1)).isInstanceOf(InvalidInputException.class);
  }

  @Test
  void readingsOfDifferentTimesDoNotCompare() {
    assertThat(ReadingTime.AT_ONCE.comparedWith(ReadingTime.AT_ONCE)).isEmpty();
    assertThat(ReadingTime.AFTER_15_S.comparedWith(ReadingTime.AT_ONCE))
        .isEqualTo(ReadingTime.AT_ONCE.comparedWith(ReadingTime.AFTER_15_S));
    assertThat(ReadingTime.AT_ONCE.comparedWith(ReadingTime.AFTER_3_S).orElseThrow().message())
        .startsWith("after 3 s a reading is lower than after 1 s");
    assertThat(ReadingTime.AFTER_15_S.seconds()).isEqualTo(15);
    assertThat(ReadingTime.AFTER_15_S).hasToString("read after 15 s");
  }

  // spring: ASTM D2240, from memory (the preload of 56 gf read in a second text)
  @Test
  void springOfTheStandard() {
    assertThat(Durometer.SHORE_A.springForce(0).newtons()).isEqualTo(0.55);
    assertThat(Durometer.SHORE_A.springForce(100).newtons()).isEqualTo(8.05);
    assertThat(Durometer.SHORE_D.springForce(0).newtons()).isZero();
    assertThat(Durometer.SHORE_D.springForce(100).newtons()).isEqualTo(44.45);
    assertThat(Durometer.SHORE_A.leastThickness().mm()).isEqualTo(6);
    assertThat(Durometer.SHORE_M.leastThickness().mm()).isEqualTo(1.5);
    assertThat(Durometer.SHORE_D.source().toString()).contains("D2240").contains("memory");
  }

  // total force at 100 points as the standard lists it, from memory
  @Test
  void fullForceOfEveryType() {
    Map<Durometer, Double> full =
        Map.of(
            Durometer.SHORE_B, 8.05,
            Durometer.SHORE_C, 44.45,
            Durometer.SHORE_DO, 44.45,
            Durometer.SHORE_O, 8.05,
            Durometer.SHORE_OO, 1.111,
            Durometer.SHORE_OOO, 1.111,
            Durometer.SHORE_OOO_S, 1.932,
            Durometer.SHORE_E, 8.05,
            Durometer.SHORE_M, 0.764,
            Durometer.SHORE_AO, 8.05);
    full.forEach(
        (type, n) -> assertThat(type.springForce(100).newtons()).isCloseTo(n, within(1e-9)));
  }

  @ParameterizedTest
  @EnumSource(Durometer.class)
  void depthAndReadingAreInverse(Durometer type) {
    assertThat(type.indentation(0)).isEqualTo(type.extension());
    assertThat(type.indentation(100).mm()).isZero();
    for (double h = 0; h <= 100; h += 2.5) {
      assertThat(type.points(type.indentation(h))).isCloseTo(h, within(1e-12));
      assertThat(type.points(type.springForce(h))).isCloseTo(h, within(1e-12));
    }
    assertThatThrownBy(() -> type.points(type.extension().times(1.04)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("indentation is ")
        .hasMessageContaining("allowed is 0 to " + type.extension());
    assertThatThrownBy(() -> type.points(Force.newtons(50)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("spring force is 50 N, allowed is ");
    assertThatThrownBy(() -> type.springForce(Double.NaN))
        .isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> type.indentation(-1)).isInstanceOf(InvalidInputException.class);
  }
}
