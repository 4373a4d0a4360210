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
    return Text.table(lines);
  }

  private static String head(Channel channel) {
    return channel == Channel.PRESSURE ? "pressure needed" : channel.toString();
  }
}
