package org.flexwright.testing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * One value that the library must meet.
 *
 * @param id its name, unique in its file
 * @param formula the formula, relation or method under test
 * @param quantity what the value is, with its unit
 * @param inputs named inputs as written
 * @param printed the published value as printed
 * @param tolerance how near the computed value must be
 * @param provenance where the published value comes from
 * @param source the source: author, year, table or equation, or how it was computed
 */
public record ReferenceCase(
    String id,
    String formula,
    String quantity,
    Map<String, String> inputs,
    String printed,
    Tolerance tolerance,
    Provenance provenance,
    String source) {

  /** The columns of a file of cases. */
  static final List<String> COLUMNS =
      List.of(
          "id", "formula", "quantity", "inputs", "published", "tolerance", "provenance", "source");

  /** Copies the inputs, in their order. */
  public ReferenceCase {
    inputs = Collections.unmodifiableMap(new LinkedHashMap<>(inputs));
  }

  /** Reads the cases of a file that lies beside the given class on the class path. */
  public static List<ReferenceCase> read(Class<?> beside, String file) {
    try (InputStream in = beside.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException("no " + file + " beside " + beside.getName());
      }
      BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      return read(file, reader.lines().toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static List<ReferenceCase> read(String file, List<String> lines) {
    Csv.Content content = Csv.read(file, lines, COLUMNS);
    if (content.notes().isEmpty()) {
      throw new IllegalArgumentException(file + ": no notes on where the values come from");
    }
    List<ReferenceCase> cases = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Csv.Row row : content.rows()) {
      try {
        ReferenceCase one = of(row);
        if (!ids.add(one.id())) {
          throw new IllegalArgumentException("id " + one.id() + " stands twice");
        }
        cases.add(one);
      } catch (IllegalArgumentException e) {
        throw new IllegalArgumentException(file + ":" + row.line() + ": " + e.getMessage(), e);
      }
    }
    return List.copyOf(cases);
  }

  private static ReferenceCase of(Csv.Row row) {
    for (String column : COLUMNS) {
      if (row.cell(column).isEmpty() && !column.equals("inputs")) {
        throw new IllegalArgumentException("empty " + column);
      }
    }
    Map<String, String> inputs = new LinkedHashMap<>();
    for (String input : row.cell("inputs").split(";", -1)) {
      int sign = input.indexOf('=');
      if (input.isBlank() && row.cell("inputs").isEmpty()) {
        continue;
      }
      if (sign < 1 || inputs.containsKey(input.substring(0, sign).strip())) {
        throw new IllegalArgumentException("input '" + input.strip() + "', must be name=value");
      }
      inputs.put(input.substring(0, sign).strip(), input.substring(sign + 1).strip());
    }
    String printed = row.cell("published");
    double published = Numbers.parse(printed);
    Tolerance tolerance = Tolerance.of(row.cell("tolerance"), printed);
    if (tolerance.relative() && published == 0) {
      throw new IllegalArgumentException("a published zero needs an absolute tolerance");
    }
    return new ReferenceCase(
        row.cell("id"),
        row.cell("formula"),
        row.cell("quantity"),
        inputs,
        printed,
        tolerance,
        Provenance.valueOf(row.cell("provenance")),
        row.cell("source"));
  }

  /** Gives the published value. */
  public double published() {
    return Numbers.parse(printed);
  }

  /** Gives a numeric input. */
  public double input(String name) {
    return Numbers.parse(text(name));
  }

  /** Gives an input as written. */
  public String text(String name) {
    String value = inputs.get(name);
    if (value == null) {
      throw new IllegalArgumentException(id + " has no input " + name + ", only " + inputs);
    }
    return value;
  }

  @Override
  public String toString() {
    return id;
  }
}
