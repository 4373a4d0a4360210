package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.flexwright.testing.BuildFolders;
import org.flexwright.testing.VerificationReport;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Gathers the rows of all verification tables, once the tests of all modules have run. */
@Tag("report")
final class VerificationReportIT {

  @Test
  void everyCaseIsCheckedAndNoFormulaRestsOnMemoryAlone() throws IOException {
    Path root = BuildFolders.root();
    VerificationReport report = VerificationReport.gather(root, BuildFolders.targetName());
    Path file = root.resolve(BuildFolders.targetName()).resolve("verification.md");
    Files.createDirectories(file.getParent());
    Files.writeString(file, report.markdown());
    assertThat(report.faults()).isEmpty();
    // the counts above the table, which README repeats
    List<String> summary =
        report.markdown().lines().skip(2).takeWhile(line -> !line.startsWith("| case")).toList();
    assertThat(root.resolve("README.md")).content().contains(String.join("\n", summary).strip());
  }
}
