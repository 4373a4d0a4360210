package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.response.Channel;

/** The bounds that a target puts on the load of a response. */
final class Limits {

  private Limits() {}

  static List<Limit> of(Target target) {
    List<Limit> limits = new ArrayList<>();
    if (target instanceof Target.AtTravel t) {
      t.least().ifPresent(f -> limits.add(new Limit("force", Channel.FORCE, false, f.newtons())));
      t.most().ifPresent(f -> limits.add(new Limit("force", Channel.FORCE, true, f.newtons())));
    } else if (target instanceof Target.Hold h) {
      limits.add(new Limit("pressure", Channel.PRESSURE, true, h.supply().pa() / h.margin()));
    }
    return limits;
  }

  /** The target with its bounds moved outwards by a ratio of at least 1. */
  static Target relaxed(Target target, double ratio) {
    if (target instanceof Target.AtTravel t) {
      return new Target.AtTravel(
          t.least().map(f -> f.times(1.0 / ratio)), t.most().map(f -> f.times(ratio)), t.travel());
    }
    Target.Hold h = (Target.Hold) target;
    return new Target.Hold(h.force(), h.supply().times(ratio), h.margin());
  }
}
