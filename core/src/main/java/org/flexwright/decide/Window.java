package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.grade.Grade;
import org.flexwright.response.Part;

/**
 * The answer to a question: the window of sizes, nominal and sure, the realisable sizes with their
 * probability, what binds, and what would open it.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <P> the part
 */
public final class Window<P extends Part<P>> {

  private final Question<P> question;
  private final Grade grade;
  private final List<Interval> nominal;
  private final List<Interval> sure;
  private final List<Candidate> candidates;
  private final List<Assessment<P>> rows;
  private final List<Assessment<P>> samples;
  private final List<Caveat> caveats;
  private final int effort;
  private final List<Window<P>> alternatives;
  private final List<String> impossible;

  Window(
      Question<P> question,
      Grade grade,
      List<Interval> nominal,
      List<Interval> sure,
      List<Candidate> candidates,
      List<Assessment<P>> rows,
      List<Assessment<P>> samples,
      List<Caveat> caveats,
      int effort,
      List<Window<P>> alternatives,
      List<String> impossible) {
    this.question = question;
    this.grade = grade;
    this.nominal = List.copyOf(nominal);
    this.sure = List.copyOf(sure);
    this.candidates = List.copyOf(candidates);
    this.rows = List.copyOf(rows);
    this.samples = List.copyOf(samples);
    this.caveats = List.copyOf(caveats);
    this.effort = effort;
    this.alternatives = List.copyOf(alternatives);
    this.impossible = List.copyOf(impossible);
  }

  /**
   * The question that was asked.
   *
   * @return the question
   */
  public Question<P> question() {
    return question;
  }

  /**
   * The grade it was asked of.
   *
   * @return the grade
   */
  public Grade grade() {
    return grade;
  }

  /**
   * The sizes that meet with every factor at its median and are not below the smallest that prints,
   * whether the list of realisable sizes holds them or not.
   *
   * @return the intervals, rising, empty if none
   */
  public List<Interval> nominal() {
    return nominal;
  }

  /**
   * The sizes that meet over the whole band and at every extreme of service.
   *
   * @return the intervals, rising, inside the nominal ones
   */
  public List<Interval> sure() {
    return sure;
  }

  /**
   * The realisable sizes.
   *
   * @return one row for each, rising
   */
  public List<Candidate> candidates() {
    return candidates;
  }

  /**
   * The verdict: meets if one realisable size does; not decidable yet if none does but one may.
   *
   * @return the verdict of this window, without its alternatives
   */
  public Verdict verdict() {
    return candidates.stream()
        .map(Candidate::verdict)
        .min(Comparator.naturalOrder())
        .orElse(Verdict.FAILS);
  }

  /**
   * The size to take or to test first: the best verdict, then one that meets nominally, then the
   * highest probability at the worst of service, then the least mass.
   *
   * @return the row, or nothing if every size fails
   */
  public Optional<Candidate> best() {
    return candidates.stream()
        .filter(c -> c.verdict() != Verdict.FAILS)
        .min(
            Comparator.comparing(Candidate::verdict)
                .thenComparing(c -> !c.meetsNominally())
                .thenComparing(c -> -c.leastProbability())
                .thenComparing(Candidate::mass));
  }

  /**
   * The same question at the listed values of the second lever.
   *
   * @return the windows, in the order of the values
   */
  public List<Window<P>> alternatives() {
    return alternatives;
  }

  /**
   * The values of the second lever at which no part can exist.
   *
   * @return one sentence for each
   */
  public List<String> impossible() {
    return impossible;
  }

  /**
   * The window to work with: this one or the alternative with the better verdict, then the better
   * best candidate.
   *
   * @return the window
   */
  public Window<P> preferred() {
    List<Window<P>> all = new ArrayList<>(List.of(this));
    all.addAll(alternatives);
    return all.stream()
        .min(
            Comparator.comparing((Window<P> w) -> w.verdict())
                .thenComparing(w -> w.best().map(b -> !b.meetsNominally()).orElse(true))
                .thenComparing(w -> w.best().map(b -> -b.leastProbability()).orElse(1.0)))
        .orElse(this);
  }

  /**
   * Why no size meets even nominally: the two demands that contradict each other.
   *
   * @return the conflict in words, or nothing if the nominal window is not empty
   */
  public Optional<String> conflict() {
    return nominal.isEmpty() ? Optional.of(Conflict.of(samples)) : Optional.empty();
  }

  /**
   * What would turn the verdict into "meets", least change first: narrower knowledge and the test
   * print for it, another dimension, another size, another limit. Each was found by solving the
   * question with it. Computed anew at each call.
   *
   * @return the levers, empty if the verdict is "meets" already
   */
  public List<Advice<P>> levers() {
    return verdict() == Verdict.MEETS ? List.of() : new Advisor<>(this).levers();
  }

  /**
   * The reservations of the grade and of the sizes that meet nominally.
   *
   * @return the caveats, each once
   */
  public List<Caveat> caveats() {
    return caveats;
  }

  /**
   * How many responses were computed for this window.
   *
   * @return the count
   */
  public int effort() {
    return effort;
  }

  /**
   * The trade-off table: one line for each realisable size.
   *
   * @return the readable table
   */
  public String table() {
    return WindowTable.of(this);
  }

  /**
   * The load against the lever over the whole range asked, for plots.
   *
   * @return the points, rising in size; sizes at which no part exists are left out
   */
  public List<CurvePoint> curve() {
    List<CurvePoint> points = new ArrayList<>();
    for (Assessment<P> s : samples) {
      if (s.exists()) {
        points.add(
            new CurvePoint(
                s.size(),
                Candidates.banded(s.cases().get(0).responses().get(0).load(), s.factors())));
      }
    }
    return points;
  }

  List<Assessment<P>> rows() {
    return rows;
  }

  /** One readable line. */
  @Override
  public String toString() {
    String choice = best().map(b -> ", best " + b.size()).orElse("");
    return verdict() + choice + ", nominal " + nominal + ", sure " + sure;
  }
}
