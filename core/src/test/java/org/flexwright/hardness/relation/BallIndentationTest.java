package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class BallIndentationTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(BallIndentationTest.class, "/reference/hardness_ball.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    Length depth = Length.mm(c.input("depth_mm"));
    boolean irhd = c.quantity().equals("IRHD");
    TABLE.check(
        c, irhd ? BallIndentation.irhd(depth).points() : BallIndentation.modulus(depth).mpa());
    Pressure there = BallIndentation.modulus(depth);
    assertThat(BallIndentation.depth(there).mm()).isCloseTo(depth.mm(), within(1e-12));
  }

  @Test
  void midPointAndTheOtherConstant() {
    assertThat(new IrhdProbit().points(Pressure.mpa(2.31206))).isCloseTo(50, within(1e-4));
    // constant in micrometres
    assertThat(5.4 / (0.00017 * Math.pow(1.25, 0.65) * Math.pow(1000, 1.35)))
        .isCloseTo(BallIndentation.modulus(Length.mm(1)).mpa(), within(0.005));
  }

  @Test
  void outsideTheMethod() {
    assertThat(BallIndentation.check(Length.mm(1))).isEmpty();
    assertThat(BallIndentation.check(Length.mm(2.5))).isPresent();
    assertThat(BallIndentation.range().high()).isEqualTo(2.0);
    assertThat(BallIndentation.source().toString()).contains("memory");
    for (double mm : new double[] {0, -1, 5.1}) {
      assertThatThrownBy(() -> BallIndentation.modulus(Length.mm(mm)))
          .isInstanceOf(InvalidInputException.class)
          .hasMessageStartingWith("depth of the ball is ");
    }
    assertThatThrownBy(() -> BallIndentation.depth(Pressure.pa(0)))
        .isInstanceOf(InvalidInputException.class);
  }
}
