package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.flexwright.durability.LifeLaw;
import org.flexwright.durability.PowerLife;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.response.Lever;
import org.flexwright.response.Part;

/** Looks for the levers that turn a verdict into "meets". */
final class Advisor<P extends Part<P>> {

  private static final double TESTED_BAND = 2.0; // a life test repeats within a factor of 2
  private static final double SLACK = 1e-6; // keeps a figure on the safe side of its root
  private static final double[] RATIOS = {1.02, 1.05, 1.1, 1.2, 1.4, 2.0};

  private final Window<P> window;
  private final Question<P> question;
  private final Grade grade;
  private final boolean lifeOpen;

  Advisor(Window<P> window) {
    this.window = window;
    this.grade = window.grade();
    Question<P> asked = window.question();
    this.lifeOpen = lifeOpen(window);
    this.question = lifeOpen ? asked.survive(asked.survival().by(tested(window))) : asked;
  }

  List<Advice<P>> levers() {
    List<Advice<P>> levers = new ArrayList<>();
    if (lifeOpen) {
      levers.add(lifeTest(restIsSure()));
    }
    if (!restIsSure()) {
      knowledge(levers);
      size().ifPresent(levers::add);
      for (Lever<P> lever : question.part().levers()) {
        if (!lever.name().equals(question.lever().name())) {
          dimension(lever).ifPresent(levers::add);
        }
      }
      limit().ifPresent(levers::add);
    }
    // a life test comes first: no other lever can replace it
    levers.sort(
        Comparator.comparing((Advice<P> a) -> !a.name().equals(Factor.LIFE.toString()))
            .thenComparingDouble(Advice::change));
    return levers;
  }

  private static boolean lifeOpen(Window<?> window) {
    Survival demand = window.question().survival();
    return demand.cycles() > 1.0
        && demand.law().placeholder()
        && window.rows().stream()
            .flatMap(
                r ->
                    r.criteria().stream()
                        .map(c -> c.sureMargin(r.cholesky()) < 0.0 && c.placeholder()))
            .anyMatch(Boolean::booleanValue);
  }

  /** A life law as a test at the worst candidate's strain would give it, just long enough. */
  private static <P extends Part<P>> LifeLaw tested(Window<P> window) {
    Survival demand = window.question().survival();
    double strain = 0.0;
    double half = 0.0;
    for (Assessment<P> row : window.rows()) {
      if (row.refusal().isPresent() || row.verdict() == Verdict.FAILS) {
        continue;
      }
      for (CaseResult each : row.cases()) {
        strain = Math.max(strain, each.responses().get(0).strain().nominal());
        for (Criterion c : each.criteria()) {
          if (c.placeholder()) {
            double rest = c.narrowed(Factor.LIFE, 0.0).half(row.cholesky(), true);
            half = Math.max(half, Math.hypot(rest, Math.log(TESTED_BAND)));
          }
        }
      }
    }
    double k = -demand.law().logSlope(Math.max(strain, 1e-6));
    return PowerLife.measured(
        demand.cycles() * Math.exp(half + SLACK),
        Math.max(strain, 1e-6),
        k,
        TESTED_BAND,
        Source.assumption("life that a test would have to show"));
  }

  private boolean restIsSure() {
    return window.rows().stream().anyMatch(r -> r.sureMarginWithoutPlaceholders() >= 0.0);
  }

  private Advice<P> lifeTest(boolean enough) {
    PowerLife law = (PowerLife) question.survival().law();
    String figure = Text.number(law.cycles(), 2) + " cycles at " + Text.percent(law.strain());
    return new Advice<>(
        Advice.Kind.KNOWLEDGE,
        Factor.LIFE.toString(),
        figure,
        enough,
        0.0,
        "life is not decidable yet: "
            + Factor.LIFE.test()
            + "; it must show a median of "
            + figure
            + " peak strain"
            + (enough ? "" : "; the levers below come on top of it"),
        question,
        grade);
  }

  private void knowledge(List<Advice<P>> levers) {
    for (Factor f : new Factor[] {Factor.MODULUS, Factor.SIZE_BIAS, Factor.STRENGTH}) {
      Optional<Assessment<P>> best =
          window.rows().stream()
              .filter(r -> r.refusal().isEmpty())
              .max(Comparator.comparingDouble(r -> r.sureMarginWith(f, 0.0)));
      if (best.isPresent() && best.get().sureMarginWith(f, 0.0) > 0.0) {
        levers.add(knowledge(f, best.get()));
      }
    }
  }

  private Advice<P> knowledge(Factor factor, Assessment<P> row) {
    double times = boundary(0.0, 1.0, t -> row.sureMarginWith(factor, t) >= 0.0) * (1 - SLACK);
    double sigma = row.factors().sigma(factor) * times;
    double band = Math.exp(Factors.COVERAGE * sigma);
    PrintProcess process = grade.process();
    Length bias = process.bias().times(times);
    Grade known =
        switch (factor) {
          case MODULUS -> grade.measuredModulus(1.0, band);
          case SIZE_BIAS -> grade.measuredSizes(bias, process.scatter());
          default -> grade.known(factor, band);
        };
    String figure = factor == Factor.SIZE_BIAS ? "+/- " + bias : "x/ " + Text.number(band, 4);
    double now = Math.exp(Factors.COVERAGE * row.factors().sigma(factor));
    return new Advice<>(
        Advice.Kind.KNOWLEDGE,
        factor.toString(),
        figure,
        true,
        Math.log(now) - Math.log(band),
        "know the "
            + factor
            + " to "
            + figure
            + " (now x/ "
            + Text.number(now, 3)
            + ") and "
            + row.size()
            + " is sure: "
            + factor.test(),
        question,
        known);
  }

  /** A size between the realisable ones, where the sure window is. */
  private Optional<Advice<P>> size() {
    Window<P> again = lifeOpen ? question.answer(grade) : window;
    return again.sure().stream()
        .findFirst()
        .map(
            w -> {
              Length size = w.from().plus(w.to()).times(0.5);
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
            });
  }

  /** The nearest value of another dimension at which a realisable size is sure. */
  private Optional<Advice<P>> dimension(Lever<P> lever) {
    double now = lever.of(question.part()).m();
    double before = 1.0;
    for (double ratio : RATIOS) {
      for (double r : new double[] {ratio, 1.0 / ratio}) {
        if (opens(lever, now * r)) {
          double last = r > 1.0 ? before : 1.0 / before;
          double end = boundary(r, last, t -> opens(lever, now * t));
          return Optional.of(dimension(lever, now, end));
        }
      }
      before = ratio;
    }
    return Optional.empty();
  }

  private Advice<P> dimension(Lever<P> lever, double now, double ratio) {
    Length value = Length.m(now * ratio);
    Question<P> moved = question.about(lever.set(question.part(), value));
    return new Advice<>(
        Advice.Kind.DIMENSION,
        lever.name(),
        value.toString(),
        true,
        Math.abs(Math.log(ratio)),
        "with " + lever + " " + value + " (now " + Length.m(now) + ") a realisable size is sure",
        moved,
        grade);
  }

  private boolean opens(Lever<P> lever, double value) {
    try {
      Question<P> moved = question.about(lever.set(question.part(), Length.m(value)));
      Assessor<P> assessor = new Assessor<>(moved, grade);
      return window.candidates().stream()
          .anyMatch(c -> assessor.at(c.size()).verdict() == Verdict.MEETS);
    } catch (org.flexwright.InvalidInputException e) {
      return false; // a geometry that cannot exist opens nothing
    }
  }

  private Optional<Advice<P>> limit() {
    return window.rows().stream()
        .filter(r -> r.refusal().isEmpty())
        .filter(r -> r.sureMarginWithoutPlaceholders() > -Math.log(5.0))
        .max(Comparator.comparingDouble(Assessment::sureMarginWithoutPlaceholders))
        .map(
            row -> {
              double ratio = Math.exp(-row.sureMarginWithoutPlaceholders()) * (1.0 + SLACK);
              List<Target> wider = relax(row, ratio);
              return new Advice<>(
                  Advice.Kind.LIMIT,
                  "limit",
                  wider.toString(),
                  true,
                  Math.log(ratio),
                  "with the target widened to " + wider + " " + row.size() + " is sure",
                  question.targets(wider),
                  grade);
            });
  }

  /** An offset makes a limit move less than its margin; grow until the row is sure. */
  private List<Target> relax(Assessment<P> row, double ratio) {
    double r = ratio;
    for (int i = 0; i < 30; i++) {
      double by = r;
      List<Target> wider = question.targets().stream().map(t -> Limits.relaxed(t, by)).toList();
      Assessment<P> again = new Assessor<>(question.targets(wider), grade).at(row.size());
      double left = again.sureMargin();
      if (left >= 0.0) {
        return wider;
      }
      r *= Math.exp(-left) * (1.0 + SLACK);
    }
    return question.targets();
  }

  /** The end of the good side of a monotone condition, good at a and bad at b. */
  private static double boundary(double good, double bad, DoublePredicate holds) {
    if (holds.test(bad)) {
      return bad;
    }
    double a = good;
    double b = bad;
    for (int i = 0; i < 14; i++) {
      double mid = 0.5 * (a + b);
      if (holds.test(mid)) {
        a = mid;
      } else {
        b = mid;
      }
    }
    return a;
  }
}
