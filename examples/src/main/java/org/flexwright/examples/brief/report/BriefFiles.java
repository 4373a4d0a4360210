package org.flexwright.examples.brief.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.answer.PartAnswer;

/** Writes all files of an answer into one folder. */
public final class BriefFiles {

  private BriefFiles() {}

  /**
   * Writes the report, the tables and the answer for programs.
   *
   * @param answer the answer
   * @param folder where to; made if it is not there
   * @return the text for the console, which names the files
   * @throws IOException if the folder cannot be written to
   */
  public static String write(BriefAnswer answer, Path folder) throws IOException {
    Files.createDirectories(folder);
    String version = version();
    List<String> files = new ArrayList<>();
    files.add(save(folder.resolve("report.html"), HtmlReport.of(answer, version)));
    files.add(save(folder.resolve("answer.json"), JsonReport.of(answer, version)));
    files.add(save(folder.resolve("summary.csv"), CsvReport.summary(answer)));
    if (answer.laws().isPresent()) {
      String laws = LawCsv.of(answer.brief().basis().curves(), answer.laws().get());
      files.add(save(folder.resolve("laws.csv"), laws));
    }
    int number = 1;
    for (PartAnswer<?> part : answer.parts()) {
      String name = "part-" + number++ + "-" + plain(part.asked().name()) + ".csv";
      files.add(save(folder.resolve(name), CsvReport.part(part)));
    }
    return ConsoleReport.of(answer, files);
  }

  private static String save(Path file, String text) throws IOException {
    Files.writeString(file, text, StandardCharsets.UTF_8);
    return file.toString();
  }

  /** A name as part of a file's name on any system. */
  private static String plain(String name) {
    String words = Say.ascii(name).toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String cut = words.substring(0, Math.min(40, words.length()));
    return cut.replaceAll("^-+|-+$", "");
  }

  private static String version() {
    Properties properties = new Properties();
    try (InputStream in =
        BriefFiles.class.getResourceAsStream("/org/flexwright/examples/version.properties")) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return properties.getProperty("version", "unknown");
  }
}
