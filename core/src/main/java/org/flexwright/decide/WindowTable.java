package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.internal.Text;
import org.flexwright.response.Channel;

/** The trade-off table as text, columns aligned. */
final class WindowTable {

  private WindowTable() {}

  static String of(Window<?> window) {
    List<String[]> lines = new ArrayList<>();
    String load =
        window.candidates().isEmpty()
            ? "load"
            : head(window.candidates().get(window.candidates().size() - 1).load().channel());
    lines.add(
        new String[] {
          window.question().lever().name(),
          load,
          "band",
          "P(meets)",
          "worst",
          "strain",
          "life",
          "volume",
          "mass",
          "verdict",
          "binds"
        });
    for (Candidate c : window.candidates()) {
      lines.add(
          new String[] {
            c.size().toString(),
            c.load().channel().show(c.load().nominal()),
            c.load().channel().show(c.load().low())
                + " .. "
                + c.load().channel().show(c.load().high()),
            Text.percent(c.probability()),
            Text.percent(c.leastProbability()),
            c.strain().channel().show(c.strain().nominal()),
            c.life(),
            c.printedVolume().toString(),
            c.mass().toString(),
            c.verdict().toString(),
            c.binds()
          });
    }
    return align(lines);
  }

  private static String head(Channel channel) {
    return channel == Channel.PRESSURE ? "pressure needed" : channel.toString();
  }

  private static String align(List<String[]> lines) {
    int columns = lines.get(0).length;
    int[] width = new int[columns];
    for (String[] line : lines) {
      for (int i = 0; i < columns; i++) {
        width[i] = Math.max(width[i], line[i].length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (String[] line : lines) {
      StringBuilder row = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        row.append(line[i]).append(" ".repeat(width[i] - line[i].length() + 2));
      }
      text.append(row.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }
}
