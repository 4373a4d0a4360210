package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.decide.Target;
import org.flexwright.response.Channel;

/** A limit of a target as a line across a plot. */
record TargetLine(String words, double value) {

  static List<TargetLine> of(Target target) {
    List<TargetLine> lines = new ArrayList<>();
    if (target instanceof Target.AtTravel t) {
      t.least().ifPresent(f -> lines.add(new TargetLine("least " + f, f.newtons())));
      t.most().ifPresent(f -> lines.add(new TargetLine("most " + f, f.newtons())));
    } else if (target instanceof Target.Hold h) {
      double most = h.supply().pa() / h.margin();
      lines.add(new TargetLine("most " + Channel.PRESSURE.show(most), most));
    }
    return lines;
  }
}
