package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;
import org.flexwright.durability.LifeLaw;
import org.flexwright.durability.PowerLife;
import org.flexwright.evidence.Exponents;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;
import org.flexwright.response.ScaledValue;

/** Knowledge as a lever: what a test print must tell for a row to be sure. */
final class TestPrints<P extends Part<P>> {

  /** Keeps a figure on the safe side of its root. */
  static final double SLACK = 1e-6;

  private static final double TESTED_BAND = 2.0; // a life test repeats within a factor of 2
  private static final double LEAST_STRAIN = 1e-6;

  private final Question<P> question;
  private final Grade grade;
  private final List<Assessment<P>> rows;
  private final boolean lifeOpen;

  TestPrints(Question<P> asked, Grade grade, List<Assessment<P>> rows) {
    this.grade = grade;
    this.lifeOpen = asked.survival().cycles() > 1.0 && rows.stream().anyMatch(TestPrints::lifeOpen);
    if (lifeOpen) {
      this.question = asked.survive(asked.survival().by(tested(asked.survival(), rows)));
      Assessor<P> assessor = new Assessor<>(question, grade);
      this.rows = rows.stream().map(r -> assessor.at(r.size())).toList();
    } else {
      this.question = asked;
      this.rows = rows;
    }
  }

  /** The question, with a life law just long enough where life is held open by a placeholder. */
  Question<P> question() {
    return question;
  }

  /** The rows as that question sees them. */
  List<Assessment<P>> rows() {
    return rows;
  }

  private static boolean lifeOpen(Assessment<?> row) {
    return row.criteria().stream()
        .anyMatch(c -> c.placeholder() && c.sureMargin(row.cholesky()) < 0.0);
  }

  /** A life law as a test at the largest strain of the rows would give it, just long enough. */
  private static <P> LifeLaw tested(Survival demand, List<Assessment<P>> rows) {
    double strain = LEAST_STRAIN;
    double half = 0.0;
    for (Assessment<P> row : rows) {
      for (CaseResult each : row.cases()) {
        strain = Math.max(strain, Candidates.largestStrain(each.responses()).nominal());
        for (Criterion c : each.criteria()) {
          if (c.placeholder()) {
            double rest = c.narrowed(Factor.LIFE, 0.0).half(row.cholesky(), true);
            double scatter = Factors.COVERAGE * row.factors().sigma(Factor.LIFE);
            double life = Math.hypot(Math.log(TESTED_BAND), scatter);
            half = Math.max(half, Math.hypot(rest, life));
          }
        }
      }
    }
    return PowerLife.measured(
        demand.cycles() * Math.exp(half + SLACK),
        strain,
        -demand.law().logSlope(strain),
        TESTED_BAND,
        Source.assumption("life that a test would have to show"));
  }

  /** The life test, if a placeholder holds the life open. */
  Optional<Advice<P>> life(boolean enough) {
    if (!lifeOpen) {
      return Optional.empty();
    }
    PowerLife law = (PowerLife) question.survival().law();
    String figure = Text.number(law.cycles(), 2) + " cycles at " + Text.percent(law.strain());
    return Optional.of(
        new Advice<>(
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
            grade));
  }

  /** The factors and the part test that make a row sure. */
  List<Advice<P>> levers() {
    List<Advice<P>> levers = new ArrayList<>();
    for (Factor f : new Factor[] {Factor.MODULUS, Factor.SIZE_BIAS, Factor.STRENGTH}) {
      rows.stream()
          .max(Comparator.comparingDouble(r -> r.sureMarginWith(c -> c.narrowed(f, 0.0))))
          .filter(r -> r.sureMarginWith(c -> c.narrowed(f, 0.0)) > 0.0)
          .ifPresent(r -> levers.add(factor(f, r)));
    }
    rows.stream()
        .max(Comparator.comparingDouble(r -> r.sureMarginWith(c -> c.tested(0.0))))
        .filter(r -> r.sureMarginWith(c -> c.tested(0.0)) > 0.0)
        .ifPresent(r -> levers.add(part(r)));
    return levers;
  }

  private Advice<P> factor(Factor factor, Assessment<P> row) {
    double times =
        boundary(0.0, 1.0, t -> row.sureMarginWith(c -> c.narrowed(factor, t)) >= 0.0)
            * (1 - SLACK);
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

  /** One printed part under its load tells modulus, size bias and model error together. */
  private Advice<P> part(Assessment<P> row) {
    double times =
        boundary(0.0, 1.0, t -> row.sureMarginWith(c -> c.tested(t)) >= 0.0) * (1 - SLACK);
    PrintProcess process = grade.process();
    ScaledValue load = row.cases().get(0).responses().get(0).load();
    Exponents n = load.exponents();
    Exponents told =
        Exponents.none()
            .with(Factor.MODULUS, n.of(Factor.MODULUS))
            .with(Factor.SIZE_BIAS, n.of(Factor.SIZE_BIAS));
    double now = Factors.COVERAGE * row.factors().sigmaOf(told);
    double model = Math.log(Math.max(load.modelHigh(), 1.0 / load.modelLow()));
    // a measurement errs alike to both sides, so the narrower side of the model counts
    double narrow = Math.log(Math.min(load.modelHigh(), 1.0 / load.modelLow()));
    String figure = "x/ " + Text.number(Math.exp(times * Math.hypot(now, narrow)), 4);
    return new Advice<>(
        Advice.Kind.KNOWLEDGE,
        "load of the part",
        figure,
        true,
        (1.0 - times) * Math.hypot(now, model),
        "print the part at "
            + row.size()
            + " and measure its "
            + load.channel()
            + ": known to "
            + figure
            + " where it is predicted, "
            + row.size()
            + " is sure",
        question.modelKnown(times),
        grade
            .measuredModulus(
                1.0, Math.exp(times * Factors.COVERAGE * row.factors().sigma(Factor.MODULUS)))
            .measuredSizes(process.bias().times(times), process.scatter()));
  }

  /** The end of the good side of a monotone condition, good at the first, bad at the second. */
  static double boundary(double good, double bad, DoublePredicate holds) {
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
