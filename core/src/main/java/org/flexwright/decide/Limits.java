package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.flexwright.InvalidInputException;
import org.flexwright.response.Channel;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;

/** The bounds that a target puts on the load of a response. */
final class Limits {

  private Limits() {}

  static List<Limit> of(Target target) {
    List<Limit> limits = new ArrayList<>();
    String name = target.channel().toString();
    target.least().ifPresent(f -> limits.add(new Limit(name, target.channel(), false, f)));
    target.most().ifPresent(f -> limits.add(new Limit(name, target.channel(), true, f)));
    return limits;
  }

  /** The load that a target judges, refused if the part answers with another kind of load. */
  static ScaledValue judged(Target target, Response r) {
    Channel answered = r.load().channel();
    if (answered != target.channel()) {
      throw new InvalidInputException(
          Part.LOAD_CASE,
          "a target on the " + target.channel(),
          "a target on the " + answered,
          "that is what this part answers with");
    }
    return r.load();
  }

  /** The target with its bounds moved outwards by a ratio of at least 1. */
  static Target relaxed(Target target, double ratio) {
    if (target instanceof Target.Hold h) {
      return new Target.Hold(h.force(), h.supply().times(ratio), h.margin());
    }
    return new Target.Loaded(
        target.channel(),
        times(target.least(), 1.0 / ratio),
        times(target.most(), ratio),
        target.load());
  }

  private static OptionalDouble times(OptionalDouble value, double ratio) {
    return value.isPresent() ? OptionalDouble.of(value.getAsDouble() * ratio) : value;
  }
}
