package org.flexwright.examples.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.flexwright.examples.brief.Briefs.Outcome;
import org.flexwright.examples.brief.input.Brief;
import org.flexwright.examples.brief.input.BriefReader;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** The scenario whose grade is known by measured curves and asked for in service. */
final class MeasuredBriefTest {

  private static final int FAMILIES = 14;
  private static final int POINTS = 24;

  /** Straight pieces of ln E to the mean of two grades at 70 degC, 12 of 47 degrees. */
  private static final double WARM =
      Math.exp(Math.log(Math.sqrt(62.12 / 137.9 * 51.71 / 68.88)) * 12.0 / 47.0);

  /** Time to the power -0.09, 8 h over the 10 s of a test. */
  private static final double HELD = Math.pow(2880.0, -0.09);

  @TempDir private static Path folder;
  private static Outcome outcome;
  private static Brief brief;

  @BeforeAll
  static void run() {
    outcome = Briefs.run(Briefs.measured(), folder.resolve("out"));
    brief = BriefReader.read(Briefs.measured());
  }

  @Test
  void curvesComeFromTheFileAndTheBrief() throws IOException {
    List<TestCurve> curves = brief.basis().curves();
    assertThat(curves.stream().map(TestCurve::mode))
        .containsExactly(Deformation.UNIAXIAL, Deformation.PLANAR, Deformation.EQUIBIAXIAL);
    List<String> rows =
        Files.readAllLines(Briefs.resource("invented-tension.csv")).stream().skip(2).toList();
    assertThat(curves.get(0).points()).hasSameSizeAs(rows);
    for (int i = 0; i < rows.size(); i++) {
      String[] cells = rows.get(i).split(",", -1);
      TestCurve.Point point = curves.get(0).points().get(i);
      assertThat(point.stretch())
          .isEqualTo(1.0 + Double.parseDouble(cells[0]) / 100.0, within(1e-12));
      assertThat(point.nominal().mpa()).isEqualTo(Double.parseDouble(cells[1]), within(1e-12));
    }
    assertThat(curves.get(1).points().get(5).stretch()).isEqualTo(1.4);
    assertThat(curves.get(2).points().get(5).nominal().mpa()).isEqualTo(3.51, within(1e-12));
  }

  @Test
  void gradeIsTheTensionCurveInService() {
    double strain = Math.log(1.1);
    double tested = 1.22 * 1.1 / strain; // the point at 10 % of the table
    assertThat(brief.grade().secantModulus(strain).mpa())
        .isEqualTo(tested * WARM * HELD, within(1e-9));
    assertThat(brief.grade().generic()).isFalse();
  }

  @Test
  void consoleSaysWhatTheGradeRestsOn() {
    assertThat(outcome.code()).as(outcome.text()).isZero();
    assertThat(outcome.text())
        .matches("[\\x20-\\x7e\\n]+")
        .contains("1. Grade: INVENTED", "2. Laws on the measured curves", "3. Neck")
        .contains("measured curve invented-tension.csv, uniaxial, 12 points, stretch 1.02 to 4")
        .contains(String.format(Locale.ROOT, "every stress x %.3f", WARM))
        .contains(String.format(Locale.ROOT, "held for 8 h: every stress x %.3f", HELD))
        .contains("rms uniaxial", "rms equibiaxial", "rms planar", "AICc", "stable to")
        .contains("laws.csv")
        .doesNotContain("Young's modulus from");
    assertThat(outcome.text().lines().filter(l -> l.matches("neo-Hookean +\\d.*MPa.*"))).hasSize(1);
  }

  @Test
  void htmlShowsTableAndPlot() throws Exception {
    String html = Files.readString(folder.resolve("out/report.html"));
    assertThat(html).doesNotContain("http:", "https:", "<script", "NaN", "Infinity");
    assertThat(html).contains("Laws on the measured curves", "<h2>Grade</h2>", "It rests on:");
    var document =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new InputSource(new StringReader(html)));
    assertThat(document.getElementsByTagName("h1").item(0).getTextContent()).contains("INVENTED");
    var plots = document.getElementsByTagName("svg");
    assertThat(plots.getLength()).isEqualTo(6);
    Element laws = (Element) plots.item(0);
    assertThat(laws.getElementsByTagName("circle").getLength()).isEqualTo(POINTS + 1);
    assertThat(laws.getElementsByTagName("clipPath").getLength()).isEqualTo(3);
    Element section = (Element) laws.getParentNode().getParentNode();
    assertThat(section.getElementsByTagName("tr").getLength()).isEqualTo(FAMILIES + 1);
  }

  @Test
  void jsonHoldsTheLaws() throws IOException {
    JsonNode json = Briefs.JSON.readTree(Files.readAllBytes(folder.resolve("out/answer.json")));
    assertThat(json.at("/grade").has("hardness")).isFalse();
    assertThat(json.at("/grade/restsOn")).hasSize(6);
    assertThat(json.at("/laws")).hasSize(FAMILIES);
    for (JsonNode law : json.at("/laws")) {
      if (law.at("/family").textValue().equals("neo-Hookean")) {
        double mu = law.at("/constants/0/value").doubleValue();
        assertThat(law.at("/constants/0/unit").textValue()).isEqualTo("Pa");
        for (JsonNode misfit : law.at("/misfits")) {
          Deformation mode =
              Deformation.valueOf(misfit.at("/mode").textValue().toUpperCase(Locale.ROOT));
          assertThat(misfit.at("/relativeRms/value").doubleValue())
              .isEqualTo(neoHookeanMisfit(mu, mode), within(1e-8));
        }
        return;
      }
    }
    throw new AssertionError("no neo-Hookean law");
  }

  /** By the stresses of the textbook: P = mu (l - l^-n), n 2, 3 and 5. */
  private static double neoHookeanMisfit(double mu, Deformation mode) {
    double power =
        switch (mode) {
          case UNIAXIAL -> 2.0;
          case PLANAR -> 3.0;
          case EQUIBIAXIAL -> 5.0;
        };
    double sum = 0.0;
    int n = 0;
    for (TestCurve curve : brief.basis().curves()) {
      for (TestCurve.Point p : curve.mode() == mode ? curve.points() : List.<TestCurve.Point>of()) {
        double law = mu * (p.stretch() - Math.pow(p.stretch(), -power));
        sum += Math.pow(law / p.nominal().pa() - 1.0, 2.0);
        n++;
      }
    }
    return Math.sqrt(sum / n);
  }

  @Test
  void tableOfLawsHasAlineForEachConstant() throws IOException {
    String text = Files.readString(folder.resolve("out/laws.csv"));
    assertThat(text).endsWith("\r\n").doesNotContain("NaN", "Infinity");
    List<String> lines = text.lines().toList();
    assertThat(lines.get(0))
        .startsWith("rank,family,constant,value,standard error,unit,at its bound,")
        .contains("rms planar [MPa],rms planar [%]");
    JsonNode json = Briefs.JSON.readTree(Files.readAllBytes(folder.resolve("out/answer.json")));
    List<String> wanted = new ArrayList<>();
    int rank = 1;
    for (JsonNode law : json.at("/laws")) {
      for (JsonNode constant : law.at("/constants")) {
        wanted.add(
            rank + "," + law.at("/family").textValue() + "," + constant.at("/name").textValue());
      }
      rank++;
    }
    assertThat(
            lines.stream().skip(1).map(l -> String.join(",", List.of(l.split(",")).subList(0, 3))))
        .containsExactlyElementsOf(wanted);
  }

  @Test
  void twoRunsWriteTheSame() throws IOException {
    Briefs.run(Briefs.measured(), folder.resolve("again"));
    try (Stream<Path> files = Files.list(folder.resolve("out"))) {
      for (Path file : files.toList()) {
        assertThat(folder.resolve("again").resolve(file.getFileName()))
            .hasSameBinaryContentAs(file);
      }
    }
  }
}
