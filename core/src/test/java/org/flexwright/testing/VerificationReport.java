package org.flexwright.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The rows of all verification tables as one readable table. Every case is checked; of each pair of
 * a formula and a source the table lists the three that used most of their tolerance.
 *
 * @param rows the rows, by module, test and case
 */
public record VerificationReport(List<Csv.Row> rows) {

  private static final int LISTED = 3;

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

  /**
   * Gives what is wrong: cases never checked, formulas that rest on memory alone or on one source.
   */
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
    Map<String, Set<String>> sources = new TreeMap<>();
    rows.forEach(
        row ->
            sources
                .computeIfAbsent(row.cell("formula"), f -> new TreeSet<>())
                .add(row.cell("source")));
    sources.forEach(
        (formula, of) -> {
          if (of.size() < 2) {
            faults.add("formula " + formula + " has one source: add a case by another route");
          }
        });
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
    Map<String, List<Csv.Row>> pairs = pairs();
    text.append(rows.size()).append(" cases of ").append(formulas.size()).append(" formulas, ");
    text.append(pairs.size()).append(" pairs of a formula and a source.\n\n");
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
    for (List<Csv.Row> pair : pairs.values()) {
      pair.stream()
          .sorted(Comparator.comparingDouble(VerificationReport::used).reversed())
          .limit(LISTED)
          .forEach(row -> text.append(line(cells(row, columns, pair.size()))));
    }
    return text.toString();
  }

  private Map<String, List<Csv.Row>> pairs() {
    Map<String, List<Csv.Row>> pairs = new LinkedHashMap<>();
    for (Csv.Row row : rows) {
      String pair = row.cell("formula") + "\n" + row.cell("source");
      pairs.computeIfAbsent(pair, p -> new ArrayList<>()).add(row);
    }
    return pairs;
  }

  private static List<String> cells(Csv.Row row, List<String> columns, int of) {
    List<String> cells = new ArrayList<>();
    for (String column : columns) {
      String cell = row.cell(column);
      if (column.equals("provenance")) {
        cells.add(words(Provenance.valueOf(cell)));
      } else if (column.equals("source") && of > LISTED) {
        cells.add(cell + " (" + of + " cases)");
      } else {
        cells.add(cell);
      }
    }
    return cells;
  }

  /** The share of its tolerance that a case used; a case never checked comes first. */
  private static double used(Csv.Row row) {
    if (row.cell("computed").isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    Tolerance tolerance = Tolerance.of(row.cell("tolerance"), row.cell("published"));
    double error = Numbers.parse(row.cell("error"));
    return error == 0.0 ? 0.0 : error / tolerance.bound();
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
