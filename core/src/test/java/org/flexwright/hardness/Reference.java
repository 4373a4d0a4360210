package org.flexwright.hardness;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Reads the reference tables of this package. */
public final class Reference {

  private Reference() {}

  /** The rows below the header of a table, cell by cell; the last column may hold commas. */
  public static List<String[]> rows(String file, int columns) {
    try (var in =
        new BufferedReader(
            new InputStreamReader(
                Objects.requireNonNull(
                    Reference.class.getResourceAsStream("/reference/" + file), file),
                StandardCharsets.UTF_8))) {
      return in.lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", columns))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The number in a cell. */
  public static double number(String cell) {
    return Double.parseDouble(cell);
  }
}
