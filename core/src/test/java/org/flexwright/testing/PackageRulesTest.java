package org.flexwright.testing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class PackageRulesTest {

  @Test
  void breachOfOrderIsFoundInClassesAndImports(@TempDir Path folder) throws IOException {
    Path sources = folder.resolve("src");
    Path low = source(sources, "low", "Low", "public class Low { org.flexwright.high.High up; }");
    Path high = source(sources, "high", "High", "public class High { }");
    Path side =
        source(sources, "side", "Side", "import org.flexwright.high.High;\npublic class Side { }");
    Path classes = Files.createDirectories(folder.resolve("classes"));
    int code =
        ToolProvider.getSystemJavaCompiler()
            .run(
                null,
                null,
                null,
                "-d",
                classes.toString(),
                low.toString(),
                high.toString(),
                side.toString());
    assertThat(code).isZero();
    PackageRules rules = PackageRules.of(classes, sources);
    assertThat(rules.breaches("", List.of("low", "side", "high")))
        .containsExactly(
            "org.flexwright.low uses org.flexwright.high, which comes after it",
            "org.flexwright.side uses org.flexwright.high, which comes after it");
    assertThat(rules.breaches("", List.of("high", "low")))
        .containsExactly(
            "org.flexwright.side is not in the order of packages: give it its place there");
    assertThat(rules.breaches("", List.of("high", "low", "side"))).isEmpty();
  }

  private static Path source(Path top, String name, String type, String body) throws IOException {
    Path folder = Files.createDirectories(top.resolve("org/flexwright").resolve(name));
    String text = "package org.flexwright." + name + ";\n" + body + "\n";
    return Files.writeString(folder.resolve(type + ".java"), text);
  }
}
