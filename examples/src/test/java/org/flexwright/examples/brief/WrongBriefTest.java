package org.flexwright.examples.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flexwright.examples.brief.Briefs.Outcome;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wrong brief ends with one line that names the entry and what is allowed. */
final class WrongBriefTest {

  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {
        "/title | | title",
        "/extra | 1 | extra",
        "/parts | [] | parts",
        "/parts | {} | parts",
        "/parts | [7] | parts[0]",
        "/material/family | \"steel\" | material.family",
        "/material/hardness | \"95\" | material.hardness",
        "/material/hardness | \"150 Shore A\" | material.hardness",
        "/material/readingTolerance | \"-2 points\" | material.readingTolerance",
        "/material/readingTolerance | 2 | material.readingTolerance",
        "/printing/bead | \"0 mm\" | printing.bead",
        "/printing/walls | [\"0.3 mm\", \"0.3 mm\"] | printing.walls[1]",
        "/printing/walls | [\"0.3 mm\", 0.6] | printing.walls[1]",
        "/parts/0/kind | \"hinge\" | parts[0].kind",
        "/parts/0/name | \"finger\" | parts[1].name",
        "/parts/0/shape/pitch | \"17 mm\" | parts[0].shape.pitch",
        "/parts/0/shape/depth | \"40 mm\" | parts[0].shape.depth",
        "/parts/0/shape/convolutions | 2.5 | parts[0].shape.convolutions",
        "/parts/0/shape/meanRadius | null | parts[0].shape.meanRadius",
        "/parts/0/target/force/least | \"9 N\" | parts[0].target.force.least",
        "/parts/0/target/force | {} | parts[0].target.force",
        "/parts/0/target/force/most | \"8 kN m\" | parts[0].target.force.most",
        "/parts/0/target/travel | \"-6 mm\" | parts[0].target.travel",
        "/parts/0/range | {\"least\": \"2 mm\", \"most\": \"1 mm\"} | parts[0].range.least",
        "/parts/1/bore/diameter | \"22 furlong\" | parts[1].bore.diameter",
        "/parts/1/bore/diameter | \"21.5 mm\" | parts[1].bore.diameter",
        "/parts/1/bore/diameter | 22 | parts[1].bore.diameter",
        "/parts/1/bore/diameter | \"NaN mm\" | parts[1].bore.diameter",
        "/parts/1/bore/colour | \"red\" | parts[1].bore.colour",
        "/parts/1/bore/friction/wet | 0.9 | parts[1].bore.friction.wet",
        "/parts/1/target/margin | 0.5 | parts[1].target.margin",
        "/parts/1/target/supply | \"200 bananas\" | parts[1].target.supply",
        "/parts/2/cell/edges | [\"10 mm\", \"7 mm\"] | parts[2].cell.edges[1]",
        "/parts/2/faces/upper | \"glue\\nd\" | parts[2].faces.upper",
        "/parts/2/target/within | \"130 %\" | parts[2].target.within",
        "/parts/2/target/travel | \"25 mm\" | parts[2]",
        "/parts/2/cycles | \"many\" | parts[2].cycles",
        "/parts/2/wishes | [{\"force\": \"60 N\"}] | parts[2].wishes[0].within",
        "/measured | {\"modulus\": {\"ratio\": 1}} | measured.modulus.within"
      })
  void oneLineNamesTheEntry(String pointer, String value, String path) throws IOException {
    Path brief = folder.resolve("wrong.json");
    Files.writeString(brief, Briefs.with(pointer, value == null ? "" : value));
    refused(brief, path);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '\'',
      value = {"' '", "[]", "{", "{} {}", "{\"title\": 1, \"title\": 2}", "\"brief\""})
  void aFileThatIsNoBriefIsNamed(String text) throws IOException {
    Path brief = folder.resolve("wrong.json");
    Files.writeString(brief, text);
    refused(brief, "brief");
  }

  @Test
  void aMissingFileIsNamed() {
    refused(folder.resolve("none.json"), "brief file");
  }

  @Test
  void aFolderThatCannotBeWrittenIsNamed() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "");
    Outcome outcome = Briefs.run(Briefs.scenario(), file);
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.text().lines()).singleElement().asString().contains("file");
  }

  private void refused(Path brief, String path) {
    Outcome outcome = Briefs.run(brief, folder.resolve("out"));
    assertThat(outcome.code()).isEqualTo(2);
    assertThat(outcome.text().strip().lines())
        .as(outcome.text())
        .singleElement()
        .asString()
        .startsWith("Brief refused: " + path)
        .contains("; allowed is ")
        .matches("[\\x20-\\x7e]+");
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
