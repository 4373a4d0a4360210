package org.flexwright.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;

/** Which sizes of a lever can be made. */
final class Sizes<P extends Part<P>> {

  private static final int SPREAD = 9; // sizes tabulated where any size can be made
  private static final double SAME = 1e-9;
  private static final double NUDGE = 1.001;

  private final Question<P> question;
  private final Grade grade;

  Sizes(Question<P> question, Grade grade) {
    this.question = question;
    this.grade = grade;
  }

  /** The realisable sizes in the range; nothing if any size can be made. */
  Optional<List<Length>> listed() {
    List<Length> sizes = question.listedSizes();
    if (sizes.isEmpty()) {
      Feature.Kind kind = question.part().thinnest().kind();
      if (grade.process().anySize(kind) || !leverIsTheThinnestFeature()) {
        return Optional.empty();
      }
      sizes = grade.process().sizes(kind, question.from(), question.to());
    }
    return Optional.of(
        sizes.stream()
            .filter(s -> s.m() >= question.from().m() * (1 - SAME))
            .filter(s -> s.m() <= question.to().m() * (1 + SAME))
            .toList());
  }

  /** A process makes walls and struts in steps; a depth or a span it makes at any value. */
  private boolean leverIsTheThinnestFeature() {
    Length now = question.lever().of(question.part());
    try {
      Length moved = now.times(NUDGE);
      P part = question.lever().set(question.part(), moved);
      return same(question.part().thinnest().size(), now) && same(part.thinnest().size(), moved);
    } catch (InvalidInputException e) {
      return same(question.part().thinnest().size(), now); // at the edge of what can exist
    }
  }

  private static boolean same(Length a, Length b) {
    return Math.abs(a.m() - b.m()) <= SAME * b.m();
  }

  /** Sizes evenly spread in the logarithm, both ends exactly. */
  List<Length> even(int count) {
    List<Length> sizes = new ArrayList<>();
    double ratio = question.to().ratioTo(question.from());
    for (int i = 0; i < count - 1; i++) {
      sizes.add(question.from().times(Math.pow(ratio, i / (count - 1.0))));
    }
    sizes.add(question.to());
    return sizes;
  }

  /** Where any size can be made: evenly spread ones and the middles of the windows. */
  List<Length> spread(List<Interval> nominal, List<Interval> sure) {
    List<Length> sizes = even(SPREAD);
    nominal.forEach(w -> sizes.add(w.from().plus(w.to()).times(0.5)));
    sure.forEach(w -> sizes.add(w.from().plus(w.to()).times(0.5)));
    return sizes.stream().distinct().sorted().toList();
  }
}
