package org.flexwright.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A strict reader and writer of comma-separated text.
 *
 * <p>Lines that start with {@code #} are notes and may stand anywhere; the first other line names
 * the columns. A cell with a comma or a quote is quoted, a quote in it is doubled, and no cell goes
 * over a line's end.
 */
public final class Csv {
  /**
   * One record.
   *
   * @param line its line in the file, from 1
   * @param cells its cells by column
   */
  public record Row(int line, Map<String, String> cells) {

    /** Gives the cell of a column. */
    public String cell(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException("line " + line + ": no column " + column);
      }
      return cell;
    }
  }

  /**
   * What a file holds.
   *
   * @param notes its note lines without the leading mark
   * @param rows its records
   */
  public record Content(List<String> notes, List<Row> rows) {}

  private Csv() {}

  /** Reads text that must have exactly the given columns, in this order. */
  public static Content read(String file, List<String> lines, List<String> columns) {
    List<String> notes = new ArrayList<>();
    List<Row> rows = new ArrayList<>();
    boolean named = false;
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      String where = file + ":" + (i + 1) + ": ";
      if (line.startsWith("#")) {
        notes.add(line.substring(1).strip());
        continue;
      }
      if (line.isBlank()) {
        throw new IllegalArgumentException(where + "blank line");
      }
      List<String> cells = split(where, line);
      if (!named) {
        if (!cells.equals(columns)) {
          throw new IllegalArgumentException(
              where + "columns are " + cells + ", must be " + columns);
        }
        named = true;
        continue;
      }
      if (cells.size() != columns.size()) {
        throw new IllegalArgumentException(
            where + cells.size() + " cells, must be " + columns.size());
      }
      Map<String, String> row = new LinkedHashMap<>();
      for (int k = 0; k < columns.size(); k++) {
        row.put(columns.get(k), cells.get(k));
      }
      rows.add(new Row(i + 1, row));
    }
    if (!named) {
      throw new IllegalArgumentException(file + ": no line with the columns " + columns);
    }
    return new Content(List.copyOf(notes), List.copyOf(rows));
  }

  /** Writes one line, without its end. */
  public static String line(List<String> cells) {
    List<String> quoted = new ArrayList<>();
    for (String cell : cells) {
      if (cell.indexOf('\n') >= 0 || cell.indexOf('\r') >= 0) {
        throw new IllegalArgumentException("a cell has a line's end: " + cell);
      }
      boolean plain = cell.indexOf(',') < 0 && cell.indexOf('"') < 0 && !cell.startsWith("#");
      quoted.add(plain ? cell : '"' + cell.replace("\"", "\"\"") + '"');
    }
    return String.join(",", quoted);
  }

  private static List<String> split(String where, String line) {
    List<String> cells = new ArrayList<>();
    int at = 0;
    while (true) {
      StringBuilder cell = new StringBuilder();
      if (at < line.length() && line.charAt(at) == '"') {
        at = quoted(where, line, at + 1, cell);
        if (at < line.length() && line.charAt(at) != ',') {
          throw new IllegalArgumentException(where + "text after a closing quote");
        }
      } else {
        int end = line.indexOf(',', at);
        cell.append(line, at, end < 0 ? line.length() : end);
        if (cell.indexOf("\"") >= 0) {
          throw new IllegalArgumentException(where + "quote inside the plain cell " + cell);
        }
        at += cell.length();
      }
      cells.add(cell.toString().strip());
      if (at >= line.length()) {
        return cells;
      }
      at++;
    }
  }

  private static int quoted(String where, String line, int from, StringBuilder cell) {
    int at = from;
    while (at < line.length()) {
      char c = line.charAt(at++);
      if (c != '"') {
        cell.append(c);
      } else if (at < line.length() && line.charAt(at) == '"') {
        cell.append('"');
        at++;
      } else {
        return at;
      }
    }
    throw new IllegalArgumentException(where + "quote not closed");
  }
}
