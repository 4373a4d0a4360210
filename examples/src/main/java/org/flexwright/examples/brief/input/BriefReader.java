package org.flexwright.examples.brief.input;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Reads a design brief from a JSON file, strictly. */
public final class BriefReader {

  private static final int MOST_PARTS = 50;
  private static final long MOST_BYTES = 1_000_000L;
  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .build();

  private BriefReader() {}

  /**
   * Reads a brief.
   *
   * @param file the file, UTF-8
   * @return the brief
   * @throws BriefException if the file cannot be read or an entry is refused
   */
  public static Brief read(Path file) {
    return read(tree(file), new BesideBrief(folder(file)));
  }

  private static JsonNode tree(Path file) {
    String name = "brief file " + file;
    try {
      if (!Files.isRegularFile(file)) {
        throw BriefException.at(name, "is not there", "a JSON file");
      }
      if (Files.size(file) > MOST_BYTES) {
        throw BriefException.at(name, "is too large", "at most " + MOST_BYTES + " bytes");
      }
      JsonNode tree = MAPPER.readTree(Files.readAllBytes(file));
      if (tree.isMissingNode()) {
        throw BriefException.at(name, "is empty", "a JSON object");
      }
      return tree;
    } catch (JsonProcessingException e) {
      String where =
          e.getLocation() == null
              ? ""
              : " at line "
                  + e.getLocation().getLineNr()
                  + ", column "
                  + e.getLocation().getColumnNr();
      String why = e.getOriginalMessage().lines().findFirst().orElse("");
      throw BriefException.at(name, "is no JSON" + where + " (" + why + ")", "a JSON object");
    } catch (IOException e) {
      throw BriefException.at(name, "cannot be read (" + e.getMessage() + ")", "a readable file");
    }
  }

  private static Path folder(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return parent == null ? file.toAbsolutePath() : parent;
  }

  private static Brief read(JsonNode tree, BesideBrief beside) {
    Entry brief = Entry.root(tree);
    String title = brief.text("title", "a title for the report");
    String scenario = brief.text("scenario", "one or two sentences about the job");
    GradeReader known = GradeReader.of(brief, beside);
    List<PartQuestion<?>> parts = new ArrayList<>();
    for (Entry part : brief.objects("parts")) {
      PartQuestion<?> question = part.<PartQuestion<?>>make(() -> part(part, known));
      if (parts.stream().anyMatch(p -> p.name().equals(question.name()))) {
        throw BriefException.at(
            part.path("name"), "repeats \"" + question.name() + '"', "each name once");
      }
      parts.add(question);
    }
    if (parts.size() > MOST_PARTS) {
      throw BriefException.at("parts", "has " + parts.size(), "at most " + MOST_PARTS);
    }
    brief.end();
    return new Brief(title, scenario, known.basis(), known.grade(), parts);
  }

  private static PartQuestion<?> part(Entry part, GradeReader known) {
    return switch (part.oneOf("kind", "bellows", "sleeve", "pad")) {
      case "bellows" -> BellowsReader.read(part, known);
      case "sleeve" -> SleeveReader.read(part, known);
      default -> PadReader.read(part, known);
    };
  }
}
