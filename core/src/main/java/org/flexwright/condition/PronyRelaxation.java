package org.flexwright.condition;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * Relaxation by a sum of exponentials with a rest that never relaxes, the Prony series.
 *
 * <p>Formulas: g = g_inf + sum g_i exp(-t/tau_i); G = g_inf t + sum g_i tau_i (1 - exp(-t/tau_i)).
 * Symbols: t time (s), tau_i relaxation times (s), g_inf and g_i shares of the reference stress,
 * whatever it is.
 *
 * <p>Range: from the shortest relaxation time to the longest unless {@link #measured} says
 * otherwise; outside it g is flat, which no test has shown. Band: the user's, for any ratio.
 * Caveats: times outside the range.
 *
 * <p>Source: derived (Maxwell elements in parallel); the constants are the user's.
 *
 * <p>JShell: {@code PronyRelaxation.rest(0.6, 1.05, source).term(0.4,
 * java.time.Duration.ofSeconds(10)).at(60)}
 */
public final class PronyRelaxation implements Relaxation {

  /**
   * One term.
   *
   * @param share g_i
   * @param time tau_i
   */
  public record Term(double share, Duration time) {}

  private static final String NAME = "Prony series";

  private final double rest;
  private final double[] weight;
  private final double[] tau;
  private final double band;
  private final ValidityRange times;
  private final List<Caveat> notes;
  private final Source source;

  PronyRelaxation(
      double rest,
      double[] weight,
      double[] tau,
      double band,
      ValidityRange times,
      List<Caveat> notes,
      Source source) {
    this.rest = rest;
    this.weight = weight;
    this.tau = tau;
    this.band = band;
    this.times = times;
    this.notes = notes;
    this.source = source;
  }

  /**
   * Starts a series with what never relaxes.
   *
   * @param rest g_inf, above 0: an elastomer is a solid
   * @param band how far a ratio of two values of g may be off, at least 1
   * @param source where the constants come from
   * @return the series, without a term yet
   * @throws org.flexwright.InvalidInputException if the rest is not above 0 or the band below 1
   */
  public static PronyRelaxation rest(double rest, double band, Source source) {
    Require.positive("rest of a Prony series", rest, "");
    Require.between("band of a Prony series", band, 1.0, 100.0, "");
    ValidityRange all = Times.range(NAME, 0.0, Double.POSITIVE_INFINITY, source);
    return new PronyRelaxation(rest, new double[0], new double[0], band, all, List.of(), source);
  }

  /**
   * This series with one more term; its range of times becomes that of its relaxation times.
   *
   * @param share g_i, above 0
   * @param time tau_i, above 0
   * @return the new series
   * @throws org.flexwright.InvalidInputException if one of them is not above 0
   */
  public PronyRelaxation term(double share, Duration time) {
    int n = tau.length;
    double[] w = Arrays.copyOf(weight, n + 1);
    double[] t = Arrays.copyOf(tau, n + 1);
    w[n] = Require.positive("share of a Prony term", share, "");
    t[n] = Times.positive("relaxation time", time);
    double low = Arrays.stream(t).min().orElseThrow();
    double high = Arrays.stream(t).max().orElseThrow();
    ValidityRange span = Times.range(NAME, low, high, source);
    return new PronyRelaxation(rest, w, t, band, span, notes, source);
  }

  /**
   * This series with the times it was measured over.
   *
   * @param from the first time
   * @param to the last time
   * @return the new series
   * @throws org.flexwright.InvalidInputException if the times do not rise or are not positive
   */
  public PronyRelaxation measured(Duration from, Duration to) {
    ValidityRange span = Times.range(NAME, from, to, source);
    return new PronyRelaxation(rest, weight, tau, band, span, notes, source);
  }

  /**
   * What never relaxes.
   *
   * @return g_inf
   */
  public double rest() {
    return rest;
  }

  /**
   * The terms in their order.
   *
   * @return a fresh list
   */
  public List<Term> terms() {
    List<Term> all = new ArrayList<>();
    for (int i = 0; i < tau.length; i++) {
      all.add(new Term(weight[i], Times.duration(tau[i])));
    }
    return all;
  }

  @Override
  public double at(double seconds) {
    Require.positive("time under strain", seconds, "s");
    double sum = rest;
    for (int i = 0; i < tau.length; i++) {
      sum += weight[i] * Math.exp(-seconds / tau[i]);
    }
    return sum;
  }

  @Override
  public double integral(double seconds) {
    Require.notNegative("time under strain", seconds, "s");
    double sum = rest * seconds;
    for (int i = 0; i < tau.length; i++) {
      sum -= weight[i] * tau[i] * Math.expm1(-seconds / tau[i]);
    }
    return sum;
  }

  @Override
  public double band(double from, double to) {
    Times.check(from, to);
    return from == to ? 1.0 : band;
  }

  @Override
  public List<Caveat> caveats(double from, double to) {
    List<Caveat> all = new ArrayList<>(Times.outside(times, from, to));
    all.addAll(notes);
    return List.copyOf(all);
  }

  @Override
  public List<Source> sources() {
    return List.of(source);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Prony series of " + tau.length + " term(s), rest " + Text.number(rest);
  }
}
