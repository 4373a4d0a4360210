package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;

/** The laws on the measured curves as lines of text. */
final class LawText {

  private final List<String> head;
  private final List<LawRow> rows;

  LawText(List<TestCurve> curves, FitComparison laws) {
    List<Deformation> modes = LawRow.modes(curves);
    head = LawRow.head(modes);
    rows = LawRow.of(laws, modes);
  }

  /** The figures, aligned; constants and remarks are too long for a line. */
  List<String> table() {
    List<List<String>> lines = new ArrayList<>();
    lines.add(narrow(head));
    rows.forEach(r -> lines.add(narrow(r.cells())));
    List<String> text = new ArrayList<>();
    for (List<String> line : lines) {
      StringBuilder row = new StringBuilder();
      for (int i = 0; i < line.size(); i++) {
        int column = i;
        int width = lines.stream().mapToInt(l -> l.get(column).length()).max().orElse(0);
        row.append(line.get(i)).append(" ".repeat(width - line.get(i).length() + 2));
      }
      text.add(row.toString().stripTrailing());
    }
    return text;
  }

  private static List<String> narrow(List<String> cells) {
    List<String> narrow = new ArrayList<>(cells);
    narrow.remove(cells.size() - 1);
    narrow.remove(1);
    return narrow;
  }

  /** Constants and remarks, a paragraph for each law. */
  List<String> paragraphs() {
    return rows.stream()
        .map(
            r ->
                r.family()
                    + ": "
                    + r.constants()
                    + (r.remarks().isEmpty() ? "" : " | " + r.remarks()))
        .toList();
  }
}
