package org.flexwright.examples.brief.report;

import java.util.List;
import java.util.stream.Collectors;

/** A comma-separated table by RFC 4180: quoted where needed, lines ended by CR LF. */
final class Csv {

  private final StringBuilder text = new StringBuilder();

  Csv line(List<String> cells) {
    text.append(cells.stream().map(Csv::cell).collect(Collectors.joining(","))).append("\r\n");
    return this;
  }

  private static String cell(String words) {
    boolean plain = words.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
    return plain ? words : '"' + words.replace("\"", "\"\"") + '"';
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
