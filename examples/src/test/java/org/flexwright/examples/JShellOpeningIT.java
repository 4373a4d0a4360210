package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.flexwright.testing.BuildFolders;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Opens JShell by the command of the README. */
final class JShellOpeningIT {

  @Test
  void jshellOpensWithClassPathAndImports(@TempDir Path folder) throws IOException {
    Path script = folder.resolve("script.jsh");
    // The tool's exit code says nothing about errors, so look for what a good session prints.
    Files.writeString(script, "System.out.println(\"opened \" + 6 * 7)\n/list -start\n/exit\n");
    Path jar = BuildFolders.target("flexwright-all.jar").toAbsolutePath();
    ProcessRun run =
        ProcessRun.of(
            "jshell",
            List.of(
                "--class-path",
                BuildFolders.root().relativize(jar).toString(),
                "--startup",
                "DEFAULT",
                "--startup",
                "examples/jshell/flexwright.jsh",
                script.toString()));
    assertThat(run.output()).contains("opened 42").doesNotContain("Error", "error:", "|  ");
    List<String> imports =
        Files.readAllLines(Path.of("jshell", "flexwright.jsh")).stream()
            .filter(line -> line.startsWith("import "))
            .toList();
    assertThat(imports).isNotEmpty().allSatisfy(line -> assertThat(run.output()).contains(line));
    assertThat(run.exit()).isZero();
  }
}
