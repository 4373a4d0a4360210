package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;

/** Scans a lever, refines the ends of the windows, and tabulates the realisable sizes. */
final class Scan<P extends Part<P>> {

  private static final int POINTS = 33;
  private static final double ACCURACY = 1e-11; // of ln(size)
  private static final int MOST_EVALUATIONS = 60;
  private static final double GOLDEN = 0.5 * (Math.sqrt(5.0) - 1.0);
  private static final double NARROWEST = 1e-5; // of ln(size), narrower windows are no use
  private static final int SPREAD = 9; // sizes tabulated where any size can be made

  private final Question<P> question;
  private final Grade grade;
  private final Assessor<P> assessor;

  private Scan(Question<P> question, Grade grade) {
    this.question = question;
    this.grade = grade;
    this.assessor = new Assessor<>(question, grade);
  }

  static <P extends Part<P>> Window<P> run(
      Question<P> question, Grade grade, List<Window<P>> alternatives) {
    return new Scan<>(question, grade).window(alternatives);
  }

  private Window<P> window(List<Window<P>> alternatives) {
    List<Assessment<P>> samples = new ArrayList<>();
    double a = Math.log(question.from().m());
    double b = Math.log(question.to().m());
    for (int i = 0; i < POINTS; i++) {
      double size = i == POINTS - 1 ? question.to().m() : Math.exp(a + (b - a) * i / (POINTS - 1));
      samples.add(assessor.at(Length.m(i == 0 ? question.from().m() : size)));
    }
    List<Interval> nominal = intervals(samples, Assessment::nominalMargin);
    List<Interval> sure = intervals(samples, Assessment::sureMargin);
    List<Assessment<P>> rows = new ArrayList<>();
    for (Length size : realisable(nominal, sure)) {
      rows.add(assessor.at(size));
    }
    Set<Caveat> caveats = new LinkedHashSet<>(grade.caveats());
    for (Assessment<P> row : rows) {
      if (row.exists() && row.nominalMargin() >= 0.0) {
        row.cases().get(0).responses().forEach(r -> caveats.addAll(r.caveats()));
      }
    }
    return new Window<>(
        question,
        grade,
        nominal,
        sure,
        rows.stream().map(this::candidate).toList(),
        rows,
        samples,
        List.copyOf(caveats),
        assessor.responses(),
        alternatives);
  }

  private List<Length> realisable(List<Interval> nominal, List<Interval> sure) {
    List<Length> sizes = question.listedSizes();
    if (sizes.isEmpty()) {
      Feature.Kind kind = question.part().thinnest().kind();
      sizes = grade.process().sizes(kind, question.from(), question.to());
    }
    List<Length> inside =
        sizes.stream()
            .filter(s -> s.m() >= question.from().m() * (1 - 1e-9))
            .filter(s -> s.m() <= question.to().m() * (1 + 1e-9))
            .toList();
    return sizes.isEmpty() ? spread(nominal, sure) : inside;
  }

  /** Where any size can be made: evenly spread ones and the middles of the windows. */
  private List<Length> spread(List<Interval> nominal, List<Interval> sure) {
    List<Length> sizes = new ArrayList<>();
    double ratio = question.to().ratioTo(question.from());
    for (int i = 0; i < SPREAD; i++) {
      sizes.add(question.from().times(Math.pow(ratio, i / (SPREAD - 1.0))));
    }
    nominal.forEach(w -> sizes.add(w.from().plus(w.to()).times(0.5)));
    sure.forEach(w -> sizes.add(w.from().plus(w.to()).times(0.5)));
    return sizes.stream().distinct().sorted().toList();
  }

  private List<Interval> intervals(
      List<Assessment<P>> samples, ToDoubleFunction<Assessment<P>> margin) {
    List<Interval> found = new ArrayList<>();
    Length start = null;
    for (int i = 0; i < samples.size(); i++) {
      Length here = samples.get(i).size();
      boolean inside = margin.applyAsDouble(samples.get(i)) >= 0.0;
      if (inside && start == null) {
        start = i == 0 ? here : root(samples.get(i - 1).size(), here, margin);
      } else if (!inside && start != null) {
        found.add(new Interval(start, root(samples.get(i - 1).size(), here, margin)));
        start = null;
      } else if (!inside && i > 0 && i < samples.size() - 1) {
        narrow(samples, i, margin).ifPresent(found::add);
      }
    }
    if (start != null) {
      found.add(new Interval(start, samples.get(samples.size() - 1).size()));
    }
    return found;
  }

  /** A window narrower than the spacing shows as a peak of the margin just below zero. */
  private Optional<Interval> narrow(
      List<Assessment<P>> samples, int i, ToDoubleFunction<Assessment<P>> margin) {
    double before = margin.applyAsDouble(samples.get(i - 1));
    double here = margin.applyAsDouble(samples.get(i));
    double after = margin.applyAsDouble(samples.get(i + 1));
    // margins are nearly straight in ln(size): a peak cannot rise much more than its neighbours do
    double rise = Math.max(here - before, here - after);
    if (here < before || here < after || before >= 0.0 || after >= 0.0 || here + rise < 0.0) {
      return Optional.empty();
    }
    Length below = samples.get(i - 1).size();
    Length above = samples.get(i + 1).size();
    return peak(below, above, margin)
        .map(top -> new Interval(root(below, top, margin), root(top, above, margin)));
  }

  /** A size with a margin not below zero between two others, by golden section. */
  private Optional<Length> peak(
      Length below, Length above, ToDoubleFunction<Assessment<P>> margin) {
    double lo = Math.log(below.m());
    double hi = Math.log(above.m());
    double x1 = hi - GOLDEN * (hi - lo);
    double x2 = lo + GOLDEN * (hi - lo);
    double f1 = marginAt(x1, margin);
    double f2 = marginAt(x2, margin);
    while (hi - lo > NARROWEST) {
      if (Math.max(f1, f2) >= 0.0) {
        return Optional.of(Length.m(Math.exp(f1 >= f2 ? x1 : x2)));
      }
      if (f1 > f2) {
        hi = x2;
        x2 = x1;
        f2 = f1;
        x1 = hi - GOLDEN * (hi - lo);
        f1 = marginAt(x1, margin);
      } else {
        lo = x1;
        x1 = x2;
        f1 = f2;
        x2 = lo + GOLDEN * (hi - lo);
        f2 = marginAt(x2, margin);
      }
    }
    return Optional.empty();
  }

  private double marginAt(double logSize, ToDoubleFunction<Assessment<P>> margin) {
    return margin.applyAsDouble(assessor.at(Length.m(Math.exp(logSize))));
  }

  private Length root(Length a, Length b, ToDoubleFunction<Assessment<P>> margin) {
    double x =
        new BrentSolver(ACCURACY)
            .solve(MOST_EVALUATIONS, s -> marginAt(s, margin), Math.log(a.m()), Math.log(b.m()));
    return Length.m(Math.exp(x));
  }

  private Candidate candidate(Assessment<P> row) {
    P part = row.part().orElse(question.part());
    if (!row.exists()) {
      return Candidates.impossible(row);
    }
    double[] shares = row.probabilities();
    Response first = row.cases().get(0).responses().get(0);
    ScaledValue strain = first.strain();
    return new Candidate(
        row.size(),
        Candidates.banded(first.load(), row.factors()),
        Candidates.banded(strain, row.factors()),
        row.nominalMargin() >= 0.0,
        row.verdict(),
        shares[0],
        Arrays.stream(shares).min().orElse(0.0),
        row.binds(),
        Candidates.life(question.survival(), strain),
        part.printedVolume(),
        part.printedVolume().times(grade.density()),
        first.caveats());
  }
}
