package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.decide.Target;
import org.flexwright.response.Channel;

/** A limit of a target as a line across a plot. */
record TargetLine(String words, double value) {

  static List<TargetLine> of(Target target) {
    List<TargetLine> lines = new ArrayList<>();
    Channel channel = target.channel();
    target.least().ifPresent(f -> lines.add(new TargetLine("least " + channel.show(f), f)));
    target.most().ifPresent(f -> lines.add(new TargetLine("most " + channel.show(f), f)));
    return lines;
  }
}
