package org.flexwright.examples.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.input.Brief;
import org.flexwright.examples.brief.input.BriefReader;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a grade may rest on, and the service it is asked in. */
final class GradeSourcesTest {

  private static final String SHEET =
      "{\"family\": \"polyurethane\", \"name\": \"invented sheet\", \"datasheet\": {"
          + "\"flexural\": {\"modulus\": \"60 MPa\", \"strain\": \"1 %\"},"
          + "\"stresses\": [{\"elongation\": \"50 %\", \"stress\": \"7 MPa\"},"
          + " {\"elongation\": \"100 %\", \"stress\": \"8.5 MPa\", \"within\": \"10 %\"},"
          + " {\"elongation\": \"300 %\", \"stress\": \"19 MPa\"}],"
          + "\"strength\": {\"stress\": \"45 MPa\", \"elongation\": \"500 %\"},"
          + "\"hardness\": \"43 Shore D\", \"readingTolerance\": \"2 points\","
          + "\"density\": \"1.1 g/cm3\"}}";

  @TempDir private Path folder;

  /** A brief beside a copy of the table that the scenario names. */
  private Brief read(Path base, String pointer, String value) throws IOException {
    Path table = folder.resolve("invented-tension.csv");
    Files.copy(Briefs.resource("invented-tension.csv"), table);
    Path file = folder.resolve("brief.json");
    Files.writeString(file, Briefs.with(base, pointer, value));
    return BriefReader.read(file);
  }

  @Test
  void aDatasheetIsMetAtItsFigures() throws IOException {
    Brief brief = read(Briefs.scenario(), "/material", SHEET);
    TestCurve.Point half =
        TestCurve.at(1.5, Deformation.UNIAXIAL.nominalStress(brief.grade().law(), 1.5));
    assertThat(half.nominal().mpa()).isEqualTo(7.0, within(1e-9));
    assertThat(brief.grade().secantModulus(0.01).mpa()).isEqualTo(60.0, within(1e-9));
    assertThat(brief.grade().strainAtBreak(false)).isEqualTo(5.0, within(1e-12));
    assertThat(brief.grade().density().kgPerM3()).isEqualTo(1100.0, within(1e-9));
    assertThat(brief.basis().words())
        .singleElement()
        .asString()
        .startsWith("datasheet of invented sheet: flexural modulus at 1 % 60 MPa, stress at 50 %");
    BriefAnswer answer = BriefAnswer.of(brief);
    assertThat(answer.laws()).isEmpty();
    assertThat(answer.relations()).isEmpty();
  }

  @Test
  void serviceActsOnAHardnessToo() throws IOException {
    double before = BriefReader.read(Briefs.scenario()).grade().secantModulus(0.05).mpa();
    Brief brief =
        read(
            Briefs.scenario(),
            "/service",
            "{\"held\": {\"for\": \"1 h\", \"exponent\": 0.05, \"plusMinus\": 0.01,"
                + " \"measuredFrom\": \"1 s\", \"measuredTo\": \"1 d\", \"knownAfter\": \"10 s\"},"
                + " \"temperature\": {\"at\": \"40 degC\", \"knownAt\": \"20 degC\","
                + " \"points\": [{\"at\": \"60 degC\", \"ratio\": 0.64, \"within\": \"10 %\"}]}}");
    double factor = 0.8 * Math.pow(360.0, -0.05); // half way in ln E; 1 h over 10 s
    assertThat(brief.grade().secantModulus(0.05).mpa()).isEqualTo(before * factor, within(1e-9));
    assertThat(brief.basis().words())
        .containsExactly(
            "hardness alone, 95 +- 2 Shore A",
            "service of all parts: at 40 degC, known at 20 degC: every stress x 0.800, known x/"
                + " 1.05",
            "service of all parts: held for 1 h: every stress x 0.745, known x/ 1.06");
    assertThat(BriefAnswer.of(brief).relations()).isPresent();
  }

  @Test
  void curvesOfOneFileMayBeManyAndWithoutHeader() throws IOException {
    Files.writeString(
        folder.resolve("all.csv"),
        "strip;UT;0.1;0.5\nstrip;UT;0.3;1.8\nsheet;PS;0.1;0.7\nsheet;PS;0.2;1.5\n");
    Brief brief =
        read(
            Briefs.measured(),
            "/material/curves",
            "[{\"file\": \"all.csv\", \"curveColumn\": 1, \"modeColumn\": 2,"
                + " \"strain\": {\"as\": \"hencky\", \"column\": 3},"
                + " \"stress\": {\"as\": \"true\", \"unit\": \"bar\", \"column\": 4}}]");
    assertThat(brief.basis().curves().stream().map(TestCurve::name))
        .containsExactly("strip", "sheet");
    TestCurve.Point point = brief.basis().curves().get(0).points().get(1);
    assertThat(point.stretch()).isEqualTo(Math.exp(0.3), within(1e-12));
    assertThat(point.nominal().kpa()).isEqualTo(180.0 / Math.exp(0.3), within(1e-9));
  }

  @Test
  void oneCurveIsSaidToBeUntested() throws IOException {
    Brief brief =
        read(
            Briefs.measured(),
            "/material/curves",
            "[{\"name\": \"strip\", \"mode\": \"uniaxial\", \"strain\": {\"as\": \"strain\"},"
                + " \"stress\": {\"as\": \"nominal\", \"unit\": \"kPa\"},"
                + " \"points\": [[0.1, 500], [0.5, 1700]]}]");
    assertThat(brief.basis().words())
        .startsWith(
            "measured curve strip, uniaxial, 2 points, stretch 1.1 to 1.5",
            "the parts work with the uniaxial stress curve; no curve tests it in other"
                + " deformations");
  }

  @Test
  void testPrintsCorrectAMeasuredCurve() throws IOException {
    double before = BriefReader.read(Briefs.measured()).grade().secantModulus(0.05).mpa();
    Brief brief =
        read(
            Briefs.measured(), "/measured", "{\"modulus\": {\"ratio\": 0.9, \"within\": \"8 %\"}}");
    assertThat(brief.grade().secantModulus(0.05).mpa()).isEqualTo(0.9 * before, within(1e-9));
    assertThat(brief.basis().words())
        .contains("test prints of the same process: every stress x 0.900, known x/ 1.08");
  }
}
