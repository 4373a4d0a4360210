package org.flexwright.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.flexwright.testing.BuildFolders;
import org.junit.jupiter.api.Test;

/** Feeds the Java blocks of the README to one JShell session, line by line as a reader would. */
final class ReadmeTest {
  /** The README has at least this many Java blocks. */
  private static final int FEWEST_BLOCKS = 7;

  @Test
  void everyJavaBlockRunsAsPrinted() throws IOException {
    List<Block> blocks = blocks(BuildFolders.root().resolve("README.md"));
    assertThat(blocks).hasSizeGreaterThanOrEqualTo(FEWEST_BLOCKS);
    try (Session session = new Session()) {
      session.feed("flexwright.jsh", 0, Files.readAllLines(Path.of("jshell", "flexwright.jsh")));
      for (Block block : blocks) {
        session.feed("README.md", block.line(), block.lines());
      }
    }
  }

  private record Block(int line, List<String> lines) {}

  private static List<Block> blocks(Path file) throws IOException {
    List<Block> blocks = new ArrayList<>();
    List<String> open = null;
    int start = 0;
    List<String> lines = Files.readAllLines(file);
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (open == null && line.strip().equals("```java")) {
        open = new ArrayList<>();
        start = i + 1;
      } else if (open != null && line.strip().equals("```")) {
        blocks.add(new Block(start, open));
        open = null;
      } else if (open != null) {
        open.add(line);
      }
    }
    assertThat(open).as("block open at the end of " + file).isNull();
    return blocks;
  }
}
