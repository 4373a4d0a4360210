package org.flexwright.examples.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
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

  /**
   * By hand: strain 3 t d/(2 L^2) = 0.0225, of it 9/16, secant of G exp(b (I1 - 3)) (l^2 - 1/l)
   * there 1.20798 MPa, times b d t^3/(4 L^3).
   */
  @Test
  void step05() throws IOException {
    assertThat(Step05LawOfYourOwn.run(out)).isEqualTo(6.115408, within(1e-6));
    for (String file : List.of("ExponentialLaw", "Step05LawOfYourOwn")) {
      Path source = Path.of("src/main/java/org/flexwright/examples/steps").resolve(file + ".java");
      assertThat(Files.readAllLines(source)).as("lines of %s", file).hasSizeLessThan(60);
    }
  }
}
