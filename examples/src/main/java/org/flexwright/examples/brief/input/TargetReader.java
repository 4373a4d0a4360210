package org.flexwright.examples.brief.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.flexwright.decide.Target;
import org.flexwright.decide.Wish;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** Reads what a part shall do. */
final class TargetReader {

  private static final Force WEAKEST = Force.newtons(1e-6);
  private static final Force STRONGEST = Force.newtons(1e6);
  private static final Length SHORTEST = Length.um(1.0);
  private static final Length LONGEST = Length.m(1.0);
  private static final Pressure LEAST = Pressure.pa(1.0);
  private static final Pressure MOST = Pressure.mpa(100.0);

  private TargetReader() {}

  /** A force between limits, or near a value, at a travel. */
  static Target force(Entry target) {
    Wish<Force> wish;
    if (target.isText("force")) {
      Force force = target.force("force", WEAKEST, STRONGEST);
      double share = target.counted("within", "%", 0.1, 99.0) / 100.0;
      wish = Target.force().about(force, share);
    } else {
      Entry limits = target.child("force");
      wish = limits(limits);
      limits.end();
    }
    Length travel = target.length("travel", SHORTEST, LONGEST);
    target.end();
    return target.make(() -> wish.atTravel(travel));
  }

  private static Wish<Force> limits(Entry limits) {
    Optional<Force> least =
        limits.has("least")
            ? Optional.of(limits.force("least", WEAKEST, STRONGEST))
            : Optional.empty();
    Optional<Force> most =
        limits.has("most")
            ? Optional.of(limits.force("most", WEAKEST, STRONGEST))
            : Optional.empty();
    if (least.isEmpty() && most.isEmpty()) {
      throw BriefException.at(limits.path(), "has no limit", "a least or a most force, or both");
    }
    if (least.isPresent() && most.isPresent() && least.get().compareTo(most.get()) >= 0) {
      throw BriefException.at(
          limits.path("least"), "is " + least.get(), "less than the most, " + most.get());
    }
    Wish<Force> wish = Target.force();
    wish = least.isPresent() ? wish.atLeast(least.get()) : wish;
    return most.isPresent() ? wish.atMost(most.get()) : wish;
  }

  /** An axial force held at a supply. */
  static Target hold(Entry target) {
    Force hold = target.force("hold", WEAKEST, STRONGEST);
    Pressure supply = target.pressure("supply", LEAST, MOST);
    double margin = target.number("margin", 1.0, 100.0);
    target.end();
    return target.make(() -> Target.hold(hold).withSupply(supply, margin));
  }

  /** Further targets of the same kind, if the brief asks for them. */
  static List<Target> wishes(Entry part, Function<Entry, Target> reader) {
    List<Target> wishes = new ArrayList<>();
    if (part.has("wishes")) {
      part.objects("wishes").forEach(w -> wishes.add(reader.apply(w)));
    }
    return wishes;
  }
}
