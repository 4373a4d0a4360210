package org.flexwright.examples.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Each step gives the number that its header promises. */
final class StepsTest {

  private final PrintStream out =
      new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);

  @Test
  void step01() {
    assertThat(Step01HardnessToModulus.run(out)).isEqualTo(40.96, within(0.005));
  }

  @Test
  void step02() {
    assertThat(Step02WallAndFeel.run(out)).isEqualTo(0.6, within(1e-12));
  }

  @Test
  void step03() {
    assertThat(Step03PartOfYourOwn.run(out)).isEqualTo(1.5, within(1e-12));
  }

  @Test
  void step04() {
    assertThat(Step04NarrowAndAskAgain.run(out)).isGreaterThan(99.0);
  }
}
