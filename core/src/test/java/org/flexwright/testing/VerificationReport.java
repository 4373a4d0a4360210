package org.flexwright.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The rows of all verification tables as one readable table.
 *
 * @param rows the rows, by module, test and case
 */
public record VerificationReport(List<Csv.Row> rows) {

  /** Reads the rows that the tests of every module below a folder have written. */
  public static VerificationReport gather(Path root, String target) throws IOException {
    List<Csv.Row> rows = new ArrayList<>();
    List<Path> folders;
    try (Stream<Path> modules = Files.list(root)) {
      folders = modules.map(m -> m.resolve(target).resolve("verification")).sorted().toList();
    }
    for (Path folder : folders) {
      if (!Files.isDirectory(folder)) {
        continue;
      }
      List<Path> files;
      try (Stream<Path> all = Files.list(folder)) {
        files = all.filter(f -> f.toString().endsWith(".csv")).sorted().toList();
      }
      for (Path file : files) {
        List<String> lines = Files.readAllLines(file);
        rows.addAll(Csv.read(file.toString(), lines, VerificationTable.COLUMNS).rows());
      }
    }
    return new VerificationReport(List.copyOf(rows));
  }

  /** Gives what is wrong: cases never checked and formulas that rest on memory alone. */
  public List<String> faults() {
    List<String> faults = new ArrayList<>();
    Map<String, Set<Provenance>> grounds = new TreeMap<>();
    for (Csv.Row row : rows) {
      if (row.cell("computed").isEmpty()) {
        faults.add("case " + row.cell("case") + " was never checked");
      }
      grounds
          .computeIfAbsent(row.cell("formula"), f -> EnumSet.noneOf(Provenance.class))
          .add(Provenance.valueOf(row.cell("provenance")));
    }
    grounds.forEach(
        (formula, ground) -> {
          if (ground.equals(EnumSet.of(Provenance.HANDBOOK_MEMORY))) {
            faults.add(
                "formula "
                    + formula
                    + " rests on memory alone: add a published or an independently derived case");
          }
        });
    return faults;
  }

  /** Gives the table as Markdown, counts first. */
  public String markdown() {
    StringBuilder text = new StringBuilder("# Verification\n\n");
    Set<String> formulas = new TreeSet<>();
    rows.forEach(row -> formulas.add(row.cell("formula")));
    text.append(rows.size()).append(" cases of ").append(formulas.size()).append(" formulas.\n\n");
    text.append("| provenance | cases | formulas |\n|---|---|---|\n");
    for (Provenance provenance : Provenance.values()) {
      List<Csv.Row> some =
          rows.stream().filter(r -> r.cell("provenance").equals(provenance.name())).toList();
      long touched = some.stream().map(r -> r.cell("formula")).distinct().count();
      text.append(line(List.of(words(provenance), "" + some.size(), "" + touched)));
    }
    List<String> columns =
        List.of(
            "case",
            "formula",
            "quantity",
            "source",
            "provenance",
            "published",
            "computed",
            "error",
            "tolerance");
    text.append('\n').append(line(columns)).append("|---".repeat(columns.size())).append("|\n");
    for (Csv.Row row : rows) {
      List<String> cells = new ArrayList<>();
      for (String column : columns) {
        String cell = row.cell(column);
        cells.add(column.equals("provenance") ? words(Provenance.valueOf(cell)) : cell);
      }
      text.append(line(cells));
    }
    return text.toString();
  }

  private static String words(Provenance provenance) {
    return switch (provenance) {
      case PUBLISHED -> "published";
      case DERIVED -> "derived independently";
      case TRADE -> "common practice";
      case HANDBOOK_MEMORY -> "named source, from memory";
    };
  }

  private static String line(List<String> cells) {
    List<String> escaped = cells.stream().map(c -> c.replace("|", "\\|")).toList();
    return "| " + String.join(" | ", escaped) + " |\n";
  }
}
