package org.flexwright.examples.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flexwright.examples.brief.Briefs.Outcome;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Wrong curves, datasheets and conditions end with one line that names the entry. */
final class WrongCurvesTest {

  private static final String TABLE = "material.curves[0].file";

  @TempDir private Path folder;
  private Path beside;

  @BeforeEach
  void table() throws IOException {
    beside = Files.createDirectory(folder.resolve("beside"));
    Files.copy(Briefs.resource("invented-tension.csv"), beside.resolve("invented-tension.csv"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "/material/curves | [] | material.curves",
        "/material/curves | 3 | material.curves",
        "/material/hardness | \"95 Shore A\" | material",
        "/material/datasheet | {} | material",
        "/material/name | | material.name",
        "/material/curves/0/mode | \"shear\" | material.curves[0].mode",
        "/material/curves/0/strain/column | \"strain\" | material.curves[0].file",
        "/material/curves/0/strain/column | 1 | material.curves[0].stress.column",
        "/material/curves/0/strain/column | | material.curves[0].strain.column",
        "/material/curves/0/strain/as | \"percent\" | material.curves[0].strain.as",
        "/material/curves/0/points | [] | material.curves[0].points",
        "/material/curves/1/stress/unit | \"bananas\" | material.curves[1].stress.unit",
        "/material/curves/1/stress/column | 2 | material.curves[1].stress.column",
        "/material/curves/1/name | \"INVENTED bulge\" | material.curves",
        "/material/curves/1/points | [] | material.curves[1].points",
        "/material/curves/1/points | [[1.1, 2], [1.2]] | material.curves[1].points[1]",
        "/material/curves/1/points | [[1.1, 2], [1.2, \"3\"]] | material.curves[1].points[1]",
        "/material/curves/1/points | [[1.1, 2], [1e999, 3]] | material.curves[1].points[1]",
        "/material/curves/1/points | [[1.1, 2], [1.1, 3]] | material.curves[1].points[1]",
        "/material/curves/1/points | [[-1, 2]] | material.curves[1].points[0]",
        "/material/curves/1/points | [[1.2, -2], [1.3, -3]] | material.curves",
        "/service | {} | service",
        "/service/warm | true | service.warm",
        "/service/held | {} | service.held.for",
        "/service/held/for | \"8 hours\" | service.held.for",
        "/service/held/for | \"-8 h\" | service.held.for",
        "/service/held/for | \"30 y\" | service.held.for",
        "/service/held/exponent | 0.05 | service.held.plusMinus",
        "/service/temperature/at | \"300 degC\" | service.temperature.at",
        "/service/temperature/at | \"40\" | service.temperature.at",
        "/service/temperature/points | [] | service.temperature.points",
        "/material/family | \"rubber\" | service.temperature.points"
      })
  void oneLineNamesTheEntry(String pointer, String value, String path) throws IOException {
    refused(Briefs.with(Briefs.measured(), pointer, value == null ? "" : value), path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "{} | material.datasheet",
        "{\"stresses\": []} | material.datasheet.stresses",
        "{\"tensile\": {\"modulus\": \"9 MPa\"}} | material.datasheet.tensile.strain",
        "{\"tensile\": {\"modulus\": \"9 MPa\", \"strain\": \"50 %\"}} |"
            + " material.datasheet.tensile.strain",
        "{\"stresses\": [{\"elongation\": \"50 %\", \"stress\": \"9 MPa\"},"
            + " {\"elongation\": \"100 %\", \"stress\": \"5 MPa\"}]} |"
            + " material.datasheet.stresses[1]",
        "{\"stresses\": [{\"elongation\": \"50 %\", \"stress\": \"9 MPa\"}],"
            + " \"hardness\": \"43\"} | material.datasheet.hardness",
        "{\"stresses\": [{\"elongation\": \"50 %\", \"stress\": \"9 MPa\"}],"
            + " \"density\": \"1 kg\"} | material.datasheet.density",
        "{\"strength\": {\"stress\": \"9 MPa\", \"elongation\": \"500 %\"}} | material.datasheet"
      })
  void wrongDatasheetsAreNamed(String sheet, String path) throws IOException {
    String material = "{\"family\": \"rubber\", \"name\": \"x\", \"datasheet\": " + sheet + "}";
    refused(Briefs.with(Briefs.scenario(), "/material", material), path);
  }

  @Test
  void aMaterialNeedsSomethingToRestOn() throws IOException {
    String material = "{\"family\": \"rubber\", \"name\": \"x\"}";
    Outcome outcome =
        refused(Briefs.with(Briefs.scenario(), "/material", material), "material.hardness");
    assertThat(outcome.text()).contains("or a datasheet or curves instead");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../secret.csv",
        "beside/../../secret.csv",
        "..",
        ".",
        "./invented-tension.csv",
        "sub/inside.csv",
        "sub",
        "..\\\\secret.csv",
        "none.csv",
        "a\\u0000b.csv",
        "link.csv",
        " "
      })
  void filesOutsideTheFolderAreRefused(String name) throws IOException {
    Path secret = Files.writeString(folder.resolve("secret.csv"), "strain,stress\nsecret,1\n");
    Files.createDirectory(beside.resolve("sub"));
    Files.writeString(beside.resolve("sub/inside.csv"), "secret");
    Files.createSymbolicLink(beside.resolve("link.csv"), secret);
    Outcome outcome = refused(namingFile('"' + name + '"'), TABLE);
    assertThat(outcome.text()).doesNotContain("secret,1").contains("in the folder of the brief");
  }

  @Test
  void anAbsolutePathIsRefused() throws IOException {
    Path inside = beside.resolve("invented-tension.csv").toAbsolutePath();
    refused(namingFile(Briefs.JSON.writeValueAsString(inside.toString())), TABLE);
  }

  private static String namingFile(String json) {
    return Briefs.with(Briefs.measured(), "/material/curves/0/file", json);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "strain_percent,stress_mpa\\n5,0.6\\n10,abc | line 3 of own.csv, column stress_mpa: \"abc\"",
        "strain_percent,stress_mpa\\n5,0.6\\n4,0.7\\n6,1 | line 4 of own.csv",
        "strain_percent,stress_mpa\\n5,0,6 | line 2 of own.csv",
        "strain_percent,stress_mpa | without a point",
        "strain_percent\\n5 | column",
        "# notes alone | without a point"
      })
  void aBadTableIsNamedByItsLine(String text, String words) throws IOException {
    Files.writeString(beside.resolve("own.csv"), text.replace("\\n", "\n"));
    Outcome outcome = refused(namingFile("\"own.csv\""), TABLE);
    assertThat(outcome.text()).contains(words);
  }

  @Test
  void hostileTablesAreRefused() throws IOException {
    Files.write(
        beside.resolve("own.csv"),
        "strain_percent,stress_mpa\n\u00e9".getBytes(StandardCharsets.ISO_8859_1));
    refused(namingFile("\"own.csv\""), TABLE);
    Files.writeString(beside.resolve("own.csv"), "x".repeat(2000));
    refused(namingFile("\"own.csv\""), TABLE);
    StringBuilder many = new StringBuilder("strain_percent,stress_mpa\n");
    for (int i = 1; i <= 1001; i++) {
      many.append(i).append(',').append(i).append('\n');
    }
    Files.writeString(beside.resolve("own.csv"), many);
    Outcome outcome = refused(namingFile("\"own.csv\""), "material.curves");
    assertThat(outcome.text()).contains("has 1013 points", "at most 1000 in all");
  }

  private Outcome refused(String brief, String path) throws IOException {
    Path file = Files.writeString(beside.resolve("wrong.json"), brief);
    Outcome outcome = Briefs.run(file, folder.resolve("out"));
    assertThat(outcome.code()).as(outcome.text()).isEqualTo(2);
    assertThat(outcome.text().strip().lines())
        .as(outcome.text())
        .singleElement()
        .asString()
        .startsWith("Brief refused: " + path + " ")
        .contains("; allowed is ")
        .matches("[\\x20-\\x7e]+");
    assertThat(folder.resolve("out")).doesNotExist();
    return outcome;
  }
}
