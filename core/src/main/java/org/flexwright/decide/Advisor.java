package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Factor;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/** Looks for the levers that turn a verdict into "meets". */
final class Advisor<P extends Part<P>> {

  private static final double STRIP_BAND = 1.1; // what a strip test tells, common practice
  private static final double[] RATIOS = {1.005, 1.01, 1.015, 1.03, 1.06, 1.12, 1.25, 1.6, 2.0};
  private static final double BAND_RELIEF = Math.log(1.3);
  private static final double WIDEST = Math.log(5.0); // wider limits are no advice

  private final Window<P> window;
  private final Grade grade;
  private final List<Assessment<P>> rows;
  private final TestPrints<P> tests;
  private final Question<P> question;

  Advisor(Window<P> window) {
    this.window = window;
    this.grade = window.grade();
    // the sizes in the table stay the same, also where any size can be made
    List<Length> sizes = window.candidates().stream().map(Candidate::size).toList();
    this.tests = new TestPrints<>(window.question().sizes(sizes), grade, worthwhile(window));
    this.question = tests.question();
    this.rows = tests.rows();
  }

  /** The rows that meet nominally; where none does, the one that comes nearest. */
  private static <P extends Part<P>> List<Assessment<P>> worthwhile(Window<P> window) {
    List<Assessment<P>> printable =
        window.rows().stream().filter(r -> r.refusal().isEmpty()).toList();
    List<Assessment<P>> nominal = printable.stream().filter(r -> r.nominalMargin() >= 0.0).toList();
    return nominal.isEmpty()
        ? printable.stream()
            .max(Comparator.comparingDouble(Assessment::sureMarginWithoutPlaceholders))
            .stream()
            .toList()
        : nominal;
  }

  List<Advice<P>> levers() {
    List<Advice<P>> levers = new ArrayList<>();
    boolean restIsSure = rows.stream().anyMatch(r -> r.sureMargin() >= 0.0);
    tests.life(restIsSure).ifPresent(levers::add);
    if (!restIsSure) {
      levers.addAll(tests.levers());
      Grade strip = grade.measuredModulus(1.0, STRIP_BAND);
      boolean fits = bandFits(grade);
      // where the strip alone is enough, no dimension needs to move with it
      boolean fitsWithStrip = bandFits(strip) && !alone(strip);
      if (fits) {
        size().ifPresent(levers::add);
      }
      for (Lever<P> lever : question.part().levers()) {
        if (!lever.name().equals(question.lever().name())) {
          Optional<Advice<P>> move = fits ? dimension(lever, grade, "") : Optional.empty();
          if (move.isEmpty() && fitsWithStrip) {
            move = dimension(lever, strip, " and a strip tested to x/ 1.1");
          }
          move.ifPresent(levers::add);
        }
      }
      limit().ifPresent(levers::add);
    }
    levers.removeIf(a -> a.enough() && !confirmed(a));
    // a life test comes first, no other lever can replace it; a wider limit is a last resort
    levers.sort(
        Comparator.comparing((Advice<P> a) -> !a.name().equals(Factor.LIFE.toString()))
            .thenComparing(a -> a.kind() == Advice.Kind.LIMIT)
            .thenComparingDouble(Advice::change));
    return levers;
  }

  /** A lever is advised only if a size is sure with it. */
  private boolean confirmed(Advice<P> advice) {
    Assessor<P> assessor = new Assessor<>(advice.question(), advice.grade());
    return advice.question().listedSizes().stream().anyMatch(assessor::sure);
  }

  /** Whether a better known grade makes a row sure without anything else. */
  private boolean alone(Grade known) {
    Assessor<P> assessor = new Assessor<>(question, known);
    return rows.stream().anyMatch(r -> assessor.sure(r.size()));
  }

  /** A size between the realisable ones, where the sure window is. */
  private Optional<Advice<P>> size() {
    return question.single().answer(grade).sure().stream()
        .findFirst()
        .map(w -> size(w.from().plus(w.to()).times(0.5)));
  }

  private Advice<P> size(Length size) {
    double change =
        window.candidates().stream()
            .mapToDouble(c -> Math.abs(Math.log(size.ratioTo(c.size()))))
            .min()
            .orElse(1.0);
    return new Advice<>(
        Advice.Kind.SIZE,
        question.lever().name(),
        size.toString(),
        true,
        change,
        "a "
            + question.lever()
            + " of "
            + size
            + " would be sure, but it is not among the realisable sizes",
        question.sizes(List.of(size)),
        grade);
  }

  /** The nearest value of another dimension at which a realisable size is sure. */
  private Optional<Advice<P>> dimension(Lever<P> lever, Grade in, String besides) {
    double now = lever.of(question.part()).m();
    double before = 1.0;
    for (double ratio : RATIOS) {
      for (double r : new double[] {ratio, 1.0 / ratio}) {
        if (opens(lever, in, now * r)) {
          double last = r > 1.0 ? before : 1.0 / before;
          double end = TestPrints.boundary(r, last, t -> opens(lever, in, now * t));
          return Optional.of(dimension(lever, in, besides, now, end));
        }
      }
      before = ratio;
    }
    return Optional.empty();
  }

  private Advice<P> dimension(Lever<P> lever, Grade in, String besides, double now, double ratio) {
    Length value = Length.m(now * ratio);
    Question<P> moved = question.about(lever.set(question.part(), value));
    return new Advice<>(
        Advice.Kind.DIMENSION,
        lever.name(),
        value.toString(),
        true,
        Math.abs(Math.log(ratio)),
        "with "
            + lever
            + " "
            + value
            + " (now "
            + Length.m(now)
            + ")"
            + besides
            + " a realisable size is sure",
        moved,
        in);
  }

  /**
   * Whether the band can fit between the limits at all: a dimension moves the load, it narrows the
   * band only a little, through the relative size error.
   */
  private boolean bandFits(Grade in) {
    Assessor<P> assessor = new Assessor<>(question, in);
    return rows.stream().anyMatch(r -> assessor.at(r.size()).slack() > -BAND_RELIEF);
  }

  private boolean opens(Lever<P> lever, Grade in, double value) {
    try {
      Question<P> moved = question.about(lever.set(question.part(), Length.m(value)));
      Assessor<P> assessor = new Assessor<>(moved, in);
      return window.candidates().stream().anyMatch(c -> assessor.sure(c.size()));
    } catch (InvalidInputException e) {
      return false; // a geometry that cannot exist opens nothing
    }
  }

  private Optional<Advice<P>> limit() {
    return rows.stream()
        .filter(r -> r.sureMarginWithoutPlaceholders() > -WIDEST)
        .max(Comparator.comparingDouble(Assessment::sureMarginWithoutPlaceholders))
        .flatMap(row -> widened(row).map(wider -> limit(row, wider)));
  }

  private Advice<P> limit(Assessment<P> row, List<Target> wider) {
    String words = String.join(" and ", wider.stream().map(Target::toString).toList());
    return new Advice<>(
        Advice.Kind.LIMIT,
        "limit",
        words,
        true,
        -row.sureMarginWithoutPlaceholders(),
        "with the target widened to " + words + ", " + row.size() + " is sure",
        question.targets(wider),
        grade);
  }

  /** An offset makes a limit move less than its margin; grow until the row is sure. */
  private Optional<List<Target>> widened(Assessment<P> row) {
    double ratio = Math.exp(-row.sureMarginWithoutPlaceholders()) * (1.0 + TestPrints.SLACK);
    for (int i = 0; i < 30; i++) {
      double by = ratio;
      List<Target> wider = question.targets().stream().map(t -> Limits.relaxed(t, by)).toList();
      double left = new Assessor<>(question.targets(wider), grade).at(row.size()).sureMargin();
      if (left >= 0.0) {
        return Optional.of(wider);
      }
      ratio *= Math.exp(-left) * (1.0 + TestPrints.SLACK);
    }
    return Optional.empty();
  }
}
