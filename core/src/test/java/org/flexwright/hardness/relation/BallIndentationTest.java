package org.flexwright.hardness.relation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.flexwright.InvalidInputException;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.Reference;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

class BallIndentationTest {

  @Test
  void depthTable() {
    var rows = Reference.rows("hardness_ball.csv", 5);
    assertThat(rows).hasSize(18);
    for (String[] row : rows) {
      Length depth = Length.mm(Reference.number(row[0]));
      double scott = Reference.number(row[1]);
      assertThat(BallIndentation.modulus(depth).mpa()).isCloseTo(scott, within(1e-5 * scott));
      assertThat(BallIndentation.irhd(depth).points())
          .isCloseTo(Reference.number(row[2]), within(1e-3));
      assertThat(BallIndentation.depth(Pressure.mpa(scott)).mm())
          .isCloseTo(depth.mm(), within(1e-5));
    }
  }

  // the contact of Hertz between 0.30 N and 5.70 N: 4 per cent at 0.6 to 0.8 mm
  @Test
  void closeToHertzInTheMiddle() {
    for (String[] row : Reference.rows("hardness_ball.csv", 5)) {
      double mm = Reference.number(row[0]);
      double hertz =
          0.75
              * Math.pow(
                  (Math.pow(5.7, 2.0 / 3) - Math.pow(0.3, 2.0 / 3))
                      / mm
                      * Math.pow(0.75 / Math.sqrt(1.25), 2.0 / 3),
                  1.5);
      assertThat(hertz).isCloseTo(Reference.number(row[3]), within(1e-4 * hertz));
      if (mm > 0.55 && mm < 0.85) {
        assertThat(BallIndentation.modulus(Length.mm(mm)).mpa())
            .isCloseTo(hertz, within(0.04 * hertz));
      }
    }
  }

  @Test
  void valuesOfTheStandard() {
    assertThat(BallIndentation.modulus(Length.mm(1)).mpa()).isCloseTo(2.453, within(5e-4));
    assertThat(BallIndentation.irhd(Length.mm(1)).points()).isCloseTo(51.5, within(0.1));
    assertThat(BallIndentation.irhd(Length.mm(1))).isInstanceOf(Irhd.class);
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
