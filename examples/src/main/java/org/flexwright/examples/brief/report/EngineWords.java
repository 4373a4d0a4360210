package org.flexwright.examples.brief.report;

import java.util.List;
import java.util.Locale;
import org.flexwright.examples.brief.answer.OnEngine;
import org.flexwright.response.Channel;
import org.flexwright.shells.solved.Solved;

/** Words and figures of engine and closed form side by side. */
final class EngineWords {

  static final String ABOUT =
      "load and strain of this part are those of the engine of shells of revolution, at finite"
          + " strain between solid ends; its closed form is the check beside it.";

  static final List<String> HEAD =
      List.of("size", "engine", "closed form", "ratio", "strain", "closed form");

  private EngineWords() {}

  static List<String> cells(OnEngine.Row row) {
    Solved.Comparison both = row.both();
    return List.of(
        row.size().toString(),
        both.channel().show(both.engine()),
        both.channel().show(both.closed()),
        ratio(both),
        Channel.STRAIN.show(both.engineStrain()),
        Channel.STRAIN.show(both.closedStrain()));
  }

  static String ratio(Solved.Comparison both) {
    return Say.fixed(both.ratio(), 3);
  }

  /** Cells in columns of plain text. */
  static String row(List<String> cells) {
    StringBuilder line = new StringBuilder();
    cells.forEach(c -> line.append(String.format(Locale.ROOT, "%-13s", c)));
    return line.toString().stripTrailing();
  }
}
