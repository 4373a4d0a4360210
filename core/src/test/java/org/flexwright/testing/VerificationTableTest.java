package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class VerificationTableTest {
  private static final String HEAD =
      "id,formula,quantity,inputs,published,tolerance,provenance,source";

  private static List<ReferenceCase> cases(String... rows) {
    List<String> lines = new java.util.ArrayList<>(List.of("# made for this test", HEAD));
    lines.addAll(List.of(rows));
    return ReferenceCase.read("made.csv", lines);
  }

  @Test
  void readsCaseWithQuotedCellAndInputs() {
    ReferenceCase c =
        cases("a,Square,\"area, mm2\",x_mm=1.5; kind=flat,2.25,digits,DERIVED,by hand").get(0);
    assertThat(c.quantity()).isEqualTo("area, mm2");
    assertThat(c.input("x_mm")).isEqualTo(1.5);
    assertThat(c.text("kind")).isEqualTo("flat");
    assertThat(c.published()).isEqualTo(2.25);
    assertThat(c.tolerance().bound()).isEqualTo(0.005);
  }

  @Test
  void faultyFilesAreRefusedWithTheirLine() {
    assertThatThrownBy(() -> cases("a,f,q,,1,digits,DERIVED"))
        .hasMessage("made.csv:3: 7 cells, must be 8");
    assertThatThrownBy(() -> cases("a,f,q,,1,digits,GUESS,s")).hasMessageStartingWith("made.csv:3");
    assertThatThrownBy(() -> cases("a,f,q,,\"1,5\",digits,DERIVED,s"))
        .hasMessage("made.csv:3: '1,5' is no decimal number");
    assertThatThrownBy(() -> cases("a,f,q,,1,about 3,DERIVED,s"))
        .hasMessageStartingWith("made.csv:3: tolerance");
    assertThatThrownBy(() -> cases("a,f,q,,0,rel 0.1,DERIVED,s"))
        .hasMessageContaining("absolute tolerance");
    assertThatThrownBy(() -> cases("a,f,q,x,1,digits,DERIVED,s"))
        .hasMessageContaining("name=value");
    assertThatThrownBy(() -> cases("a,f,q,,1,digits,DERIVED,s", "a,f,q,,1,digits,DERIVED,s"))
        .hasMessage("made.csv:4: id a stands twice");
    assertThatThrownBy(() -> cases("a,f,\"q,,1,digits,DERIVED,s")).hasMessageContaining("closed");
    assertThatThrownBy(() -> ReferenceCase.read("bare.csv", List.of(HEAD)))
        .hasMessageContaining("notes");
  }

  @Test
  void toleranceJudges(@TempDir Path folder) {
    List<ReferenceCase> all =
        cases(
            "digits,f,q,,2.25,digits,DERIVED,s",
            "rel,f,q,,200,rel 1e-3,DERIVED,s",
            "abs,f,q,,0,abs 0.1,DERIVED,s");
    VerificationTable table = new VerificationTable("T", folder, all);
    table.check(table.get("digits"), 2.2549);
    table.check(table.get("rel"), 200.19);
    table.check(table.get("abs"), -0.1);
    assertThatThrownBy(() -> table.check(table.get("digits"), 2.2551))
        .isInstanceOf(AssertionError.class)
        .hasMessageStartingWith("digits, q: computed 2.2551, published 2.25, error 5.10e-03");
    assertThatThrownBy(() -> table.check(table.get("rel"), 199.7))
        .isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> table.check(table.get("abs"), Double.NaN))
        .isInstanceOf(AssertionError.class);
  }

  @Test
  void reportFindsUncheckedCasesAndMemoryAlone(@TempDir Path root) throws IOException {
    Path folder = root.resolve("core").resolve("target").resolve("verification");
    VerificationTable table =
        new VerificationTable(
            "T",
            folder,
            cases(
                "a,Known,q,,1.5,digits,PUBLISHED,\"X, 1958, table 2\"",
                "b,Known,q,,2.5,digits,HANDBOOK_MEMORY,Y",
                "c,Recalled,q|r,,3.5,digits,HANDBOOK_MEMORY,Y"));
    table.check(table.get("a"), 1.5);
    table.check(table.get("b"), 2.5);
    table.check(table.get("b"), 2.51);
    table.write();
    assertThat(Files.readAllLines(folder.resolve("T.csv")))
        .contains("b,Known,q,Y,HANDBOOK_MEMORY,2.5,2.510000,1.00e-02,abs 0.05");
    VerificationReport report = VerificationReport.gather(root, "target");
    assertThat(report.faults())
        .containsExactly(
            "case c was never checked",
            "formula Recalled has one source: add a case by another route",
            "formula Recalled rests on memory alone: add a published or an independently derived"
                + " case");
    assertThat(report.markdown())
        .contains("3 cases of 2 formulas, 3 pairs of a formula and a source.")
        .contains("| published | 1 | 1 |")
        .contains("| named source, from memory | 2 | 2 |")
        .contains("| c | Recalled | q\\|r |");
  }
}
