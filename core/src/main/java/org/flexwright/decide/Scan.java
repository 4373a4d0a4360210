package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
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

  private final Question<P> question;
  private final Grade grade;
  private final Assessor<P> assessor;
  private final Sizes<P> sizes;

  private Scan(Question<P> question, Grade grade) {
    this.question = question;
    this.grade = grade;
    this.assessor = new Assessor<>(question, grade);
    this.sizes = new Sizes<>(question, grade);
  }

  static <P extends Part<P>> Window<P> run(
      Question<P> question, Grade grade, List<Window<P>> alternatives, List<String> impossible) {
    return new Scan<>(question, grade).window(alternatives, impossible);
  }

  private Window<P> window(List<Window<P>> alternatives, List<String> impossible) {
    Optional<List<Length>> listed = sizes.listed();
    NavigableMap<Length, Assessment<P>> grid = new TreeMap<>();
    for (Length size : sizes.even(POINTS)) {
      grid.put(size, assessor.at(size));
    }
    // listed sizes are part of the scan: a window may be no wider than one of them
    listed.orElse(List.of()).forEach(s -> grid.computeIfAbsent(s, assessor::at));
    List<Assessment<P>> samples = List.copyOf(grid.values());
    List<Interval> nominal = intervals(samples, Assessment::nominalMargin);
    List<Interval> sure = intervals(samples, Assessment::sureMargin);
    List<Assessment<P>> rows = new ArrayList<>();
    for (Length size : listed.orElseGet(() -> sizes.spread(nominal, sure))) {
      Assessment<P> known = grid.get(size);
      rows.add(known == null ? assessor.at(size) : known);
    }
    Set<Caveat> caveats = new LinkedHashSet<>(grade.caveats());
    for (Assessment<P> row : rows) {
      if (row.exists() && row.nominalMargin() >= 0.0) {
        caveats.addAll(Candidates.caveats(row));
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
        alternatives,
        impossible);
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
      } else if (!inside) {
        narrow(samples, i, margin).ifPresent(found::add);
      }
    }
    if (start != null) {
      found.add(new Interval(start, samples.get(samples.size() - 1).size()));
    }
    return found;
  }

  /**
   * A window narrower than the spacing shows as a peak of the margin just below zero; at an end of
   * the range the peak may lie in the last spacing.
   */
  private Optional<Interval> narrow(
      List<Assessment<P>> samples, int i, ToDoubleFunction<Assessment<P>> margin) {
    int left = Math.max(0, i - 1);
    int right = Math.min(samples.size() - 1, i + 1);
    double before = margin.applyAsDouble(samples.get(left));
    double here = margin.applyAsDouble(samples.get(i));
    double after = margin.applyAsDouble(samples.get(right));
    if (here < before || here < after || Math.max(before, after) >= 0.0) {
      return Optional.empty();
    }
    if (here + rise(samples, i, margin) < 0.0) {
      return Optional.empty();
    }
    Length below = samples.get(left).size();
    Length above = samples.get(right).size();
    return peak(below, above, margin)
        .map(top -> new Interval(root(below, top, margin), root(top, above, margin)));
  }

  /**
   * How much a peak beside a sample can rise: margins are nearly straight in ln(size), so no more
   * than the steepest slope nearby over the wider spacing.
   */
  private static <P> double rise(
      List<Assessment<P>> samples, int i, ToDoubleFunction<Assessment<P>> margin) {
    double slope = 0.0;
    double spacing = 0.0;
    for (int k = Math.max(1, i - 1); k <= Math.min(samples.size() - 1, i + 2); k++) {
      Assessment<P> a = samples.get(k - 1);
      Assessment<P> b = samples.get(k);
      double step = Math.log(b.size().ratioTo(a.size()));
      slope = Math.max(slope, Math.abs(margin.applyAsDouble(b) - margin.applyAsDouble(a)) / step);
      spacing = Math.max(spacing, step);
    }
    return slope * spacing;
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
    List<Response> responses = row.cases().get(0).responses();
    ScaledValue strain = Candidates.largestStrain(responses);
    return new Candidate(
        row.size(),
        Candidates.banded(responses.get(0).load(), row.factors()),
        Candidates.banded(strain, row.factors()),
        row.nominalMargin() >= 0.0,
        row.verdict(),
        shares[0],
        Arrays.stream(shares).min().orElse(0.0),
        row.binds(),
        Candidates.life(question.survival(), strain),
        part.printedVolume(),
        part.printedVolume().times(grade.density()),
        List.copyOf(Candidates.caveats(row)));
  }
}
