package org.flexwright.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.flexwright.InvalidInputException;
import org.junit.jupiter.api.Test;

final class WorkingStrainTest {

  /** int |e|^3 dA / int e^2 dA over 0 to 1 with a weight. */
  private static double share(DoubleUnaryOperator strain, DoubleUnaryOperator weight) {
    int n = 200_000;
    double cubes = 0;
    double squares = 0;
    for (int i = 0; i < n; i++) {
      double x = (i + 0.5) / n;
      double e = strain.applyAsDouble(x);
      cubes += weight.applyAsDouble(x) * e * e * e;
      squares += weight.applyAsDouble(x) * e * e;
    }
    return cubes / squares;
  }

  @Test
  void sharesAreThoseOfTheIntegrals() {
    assertThat(WorkingStrain.RECTANGLE).isCloseTo(share(x -> x, x -> 1), within(1e-9));
    assertThat(WorkingStrain.LINEAR_MOMENT).isCloseTo(share(x -> x, x -> 1), within(1e-9));
    assertThat(WorkingStrain.CIRCLE)
        .isCloseTo(share(x -> x, x -> Math.sqrt(1 - x * x)), within(1e-7));
    // plane strain at constant volume: logarithms (e, 0, -e)
    assertThat(WorkingStrain.PLANE_STRAIN).isCloseTo(Math.sqrt(2.0 / 3.0 * 2.0), within(1e-15));
  }

  @Test
  void sharesMultiply() {
    WorkingStrain strip = WorkingStrain.bending(0.08).linearMoment().planeStrain();
    assertThat(strip.value()).isCloseTo(0.08 * 9 / 16 * 2 / Math.sqrt(3), within(1e-15));
    assertThat(WorkingStrain.roundBending(0.1).times(0.5).value())
        .isCloseTo(0.033953, within(1e-6));
    assertThatThrownBy(() -> WorkingStrain.bending(-0.1))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("strain is -0.075");
  }
}
