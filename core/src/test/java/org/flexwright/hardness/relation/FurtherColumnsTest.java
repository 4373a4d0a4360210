package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What two relations say besides Young's modulus. */
class FurtherColumnsTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(FurtherColumnsTest.class, "columns.csv");

  private static final LindleyTable LINDLEY = new LindleyTable();
  private static final MouldedPolyurethane MOULDED = new MouldedPolyurethane();

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    double points = c.input("points");
    TABLE.check(
        c,
        switch (c.quantity()) {
          case "factor" -> LINDLEY.compressionFactor(points);
          case "stress in MPa" -> MOULDED.stressAt100(points).mpa();
          default -> LINDLEY.shearModulus(points).mpa();
        });
  }

  // filled compounds from 50 IRHD on: E0 / G of the table is no longer 3
  @Test
  void fillerSoftensBetweenTheTwoTests() {
    for (double points = 30; points <= 75; points += 5) {
      double ratio = LINDLEY.modulus(points).ratioTo(LINDLEY.shearModulus(points));
      assertThat(ratio).isBetween(points < 55 ? 3.0 : 4.0, points < 55 ? 3.45 : 4.3);
    }
  }

  @Test
  void columnsAreMonotoneAndStayFinite() {
    for (double s = 0.5; s < 99; s += 0.5) {
      assertThat(LINDLEY.shearModulus(s + 0.5)).isGreaterThan(LINDLEY.shearModulus(s));
      assertThat(LINDLEY.compressionFactor(s + 0.5))
          .isLessThanOrEqualTo(LINDLEY.compressionFactor(s))
          .isBetween(0.52, 0.93);
      assertThat(MOULDED.stressAt100(s + 0.5)).isGreaterThan(MOULDED.stressAt100(s));
      double ratio = MOULDED.modulus(s).ratioTo(MOULDED.stressAt100(s));
      assertThat(s < 30 || s > 55 ? 5 : ratio).isBetween(5.0, 10.0);
    }
  }

  @Test
  void readingsOffTheScaleAreRefused() {
    for (double points : new double[] {0, 100, -1, Double.NaN}) {
      assertThatThrownBy(() -> LINDLEY.shearModulus(points))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> LINDLEY.compressionFactor(points))
          .isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> MOULDED.stressAt100(points))
          .isInstanceOf(InvalidInputException.class);
    }
  }
}
