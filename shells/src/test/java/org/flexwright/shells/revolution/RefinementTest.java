package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.function.IntToDoubleFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Errors fall with the square of the element, near rest and far from it. */
final class RefinementTest {

  static Stream<Named<IntToDoubleFunction>> bodies() {
    return Stream.of(
        Named.of("clamped plate", n -> LinearBodies.pressedPlate(true, 1e-3, n)),
        Named.of("bellows", n -> LinearBodies.bellows(4.0, 0.25, 0.06, n)),
        Named.of("dome under a ring", n -> LinearBodies.pushedDome(200.0, 0.1, 4 * n)),
        Named.of("plate far bent", n -> LargeBodies.plate(true, 100.0, 0.01, n)),
        Named.of("thick balloon", n -> LargeBodies.sphere(0.5, 1.5, n)),
        Named.of("disc spring", n -> LargeBodies.discSpring(10.0, 3.0, n, 0.5)[0]),
        Named.of("snap of a cap", n -> LargeBodies.cap(4.0, 4000.0, n)));
  }

  @ParameterizedTest
  @MethodSource("bodies")
  void rateIsTwo(IntToDoubleFunction body) {
    assertThat(Runs.rate(40, body)).isBetween(1.8, 2.2);
  }
}
