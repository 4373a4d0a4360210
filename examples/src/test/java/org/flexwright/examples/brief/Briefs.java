package org.flexwright.examples.brief;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.flexwright.testing.BuildFolders;

/** The scenario file, changed or not, and what the main job says to it. */
final class Briefs {

  static final ObjectMapper JSON = new ObjectMapper();

  private Briefs() {}

  /**
   * How a run ended.
   *
   * @param code the exit code
   * @param text what it printed
   */
  record Outcome(int code, String text) {}

  static Path scenario() {
    return resource("bottling-line.json");
  }

  /** The scenario with measured curves and conditions of service. */
  static Path measured() {
    return resource("bottling-line-curves.json");
  }

  static Path resource(String name) {
    return BuildFolders.root()
        .resolve("examples/src/main/resources/org/flexwright/examples/brief")
        .resolve(name);
  }

  static Outcome run(Path brief, Path folder) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    int code = DesignBrief.run(new String[] {brief.toString(), folder.toString()}, out);
    return new Outcome(code, bytes.toString(StandardCharsets.UTF_8));
  }

  /** The scenario with one entry replaced, or taken out if the new value is empty. */
  static String with(String pointer, String value) {
    return with(scenario(), pointer, value);
  }

  static String with(Path brief, String pointer, String value) {
    try {
      JsonNode tree = JSON.readTree(Files.readAllBytes(brief));
      int cut = pointer.lastIndexOf('/');
      ObjectNode parent = (ObjectNode) tree.at(pointer.substring(0, cut));
      String name = pointer.substring(cut + 1);
      if (value.isEmpty()) {
        parent.remove(name);
      } else {
        parent.set(name, JSON.readTree(value));
      }
      return JSON.writeValueAsString(tree);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
