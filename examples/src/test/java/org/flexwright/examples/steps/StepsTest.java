package org.flexwright.examples.steps;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.flexwright.fit.CurveFormat;
import org.flexwright.fit.TestCurve;
import org.flexwright.testing.BuildFolders;
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
    shorterThanSixty("ExponentialLaw", "Step05LawOfYourOwn");
  }

  /**
   * Published: 0.5673 MPa (Steinmann, Hossain and Possart 2012), from points of two decimals. By
   * hand: plain least squares of a law linear in mu, sum P x / sum x^2 with x = l - l^-2; planar
   * stress mu (l - l^-3).
   */
  @Test
  void step06() throws IOException {
    Printed printed = new Printed();
    double mu = Step06LawsOnOneCurve.run(printed.stream());
    double px = 0.0;
    double xx = 0.0;
    for (TestCurve.Point p : TreloarCurves.UNIAXIAL.points()) {
      double x = p.stretch() - Math.pow(p.stretch(), -2.0);
      px += p.nominal().mpa() * x;
      xx += x * x;
    }
    assertThat(mu).isEqualTo(0.5673, within(2e-4)).isEqualTo(px / xx, within(1e-8));
    String planar =
        String.format(Locale.ROOT, "neo-Hookean %.2f MPa", mu * (2.4 - Math.pow(2.4, -3.0)));
    assertThat(printed.text()).contains("760 kPa at 2.4", planar, "Gent         mu 0.2451");
    assertThat(printed.text().lines().toList().get(1)).startsWith("Gent ");
    shorterThanSixty("Step06LawsOnOneCurve", "TreloarCurves");
  }

  @Test
  void treloarsPointsAreThoseOfTheReference() throws IOException {
    Path file = BuildFolders.root().resolve("core/src/test/resources/reference/treloar_1944.csv");
    List<TestCurve> read =
        CurveFormat.named("stretch", "nominal_stress_mpa").modeColumn("mode").read(file);
    assertThat(read.stream().map(TestCurve::points))
        .containsExactly(
            TreloarCurves.UNIAXIAL.points(),
            TreloarCurves.PLANAR.points(),
            TreloarCurves.EQUIBIAXIAL.points());
  }

  /**
   * By hand: ln of the two grades' mean ratio at 70 degC, 17 of the 47 degrees up to there; 8640
   * times the 10 s of a test to the power -0.09. The lip is straight in the modulus.
   */
  @Test
  void step07() throws IOException {
    double warm = Math.log(Math.sqrt(62.12 / 137.9 * 51.71 / 68.88)) * 17.0 / 47.0;
    double left = 100.0 * Math.exp(warm) * Math.pow(8640.0, -0.09);
    Printed printed = new Printed();
    assertThat(Step07GradeInService.run(printed.stream())).isEqualTo(left, within(1e-9));
    assertThat(left).isEqualTo(36.0, within(0.5));
    assertThat(printed.text()).contains("as tested", "in service", "time under strain is 86400");
    shorterThanSixty("Step07GradeInService");
  }

  private static void shorterThanSixty(String... names) throws IOException {
    for (String file : names) {
      Path source = Path.of("src/main/java/org/flexwright/examples/steps").resolve(file + ".java");
      assertThat(Files.readAllLines(source)).as("lines of %s", file).hasSizeLessThan(60);
    }
  }

  /** What a step prints. */
  private static final class Printed {
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    PrintStream stream() {
      return new PrintStream(bytes, true, StandardCharsets.UTF_8);
    }

    String text() {
      return bytes.toString(StandardCharsets.UTF_8);
    }
  }
}
