package org.flexwright.examples.brief.input;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.flexwright.decide.Question;
import org.flexwright.decide.Survival;
import org.flexwright.decide.Target;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/** Reads what every kind of part has: its name, target, wishes, life, sizes and comparison. */
final class PartFrame {

  private static final Length LEAST = Length.um(10.0);
  private static final Length MOST = Length.m(1.0);

  private final Entry entry;
  private final GradeReader known;
  private final String name;

  PartFrame(Entry entry, GradeReader known) {
    this.entry = entry;
    this.known = known;
    this.name = entry.text("name", "a name for the report");
  }

  <P extends Part<P>> PartQuestion<P> ask(P part, Lever<P> lever, Function<Entry, Target> targets) {
    return ask(part, lever, targets, Optional.empty(), List.of());
  }

  <P extends Part<P>> PartQuestion<P> ask(
      P part,
      Lever<P> lever,
      Function<Entry, Target> targets,
      Optional<Lever<P>> second,
      List<Length> others) {
    Question<P> frame = range(Question.of(part), lever).survive(survival());
    if (second.isPresent() && !others.isEmpty()) {
      frame = frame.or(second.get(), others);
    }
    Target target = targets.apply(entry.child("target"));
    List<Target> wishes = TargetReader.wishes(entry, targets);
    Optional<Length> rubber = Optional.empty();
    if (entry.has("feelsLike")) {
      Entry feel = entry.child("feelsLike");
      rubber = Optional.of(feel.length("rubberSize", LEAST, MOST));
      feel.end();
    }
    entry.end();
    return new PartQuestion<>(
        entry.path(), name, frame, target, wishes, second.filter(s -> !others.isEmpty()), rubber);
  }

  /** The listed sizes and, unless the brief says otherwise, the range that they span. */
  private <P extends Part<P>> Question<P> range(Question<P> question, Lever<P> lever) {
    Optional<List<Length>> sizes = known.sizes(question.part().thinnest().kind());
    Question<P> listed = question.sizes(sizes.orElse(List.of()));
    if (entry.has("range") || sizes.isEmpty()) {
      Entry range = entry.child("range");
      Length from = range.length("least", LEAST, MOST);
      Length to = range.length("most", LEAST, MOST);
      if (from.compareTo(to) >= 0) {
        throw BriefException.at(range.path("least"), "is " + from, "less than the most, " + to);
      }
      range.end();
      return listed.vary(lever, from, to);
    }
    Length least = Collections.min(sizes.get());
    Length most = Collections.max(sizes.get());
    return least.equals(most)
        ? listed.vary(lever, least.times(0.8), most.times(1.25))
        : listed.vary(lever, least, most);
  }

  private Survival survival() {
    if (!entry.has("cycles")) {
      return Survival.once();
    }
    double cycles = entry.number("cycles", 1.0, 1e10);
    return Survival.cycles(cycles).by(known.life());
  }
}
