package org.flexwright.condition;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.special.Gamma;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * Relaxation by a power of time: E(t) = E1 (t / 1 s)^-n, the law of many elastomers over decades.
 *
 * <p>Formulas: g = t^-n; G = t^(1-n)/(1-n); after a ramp of constant rate that takes T the stress
 * over the strain is E1 T^-n/(1-n); creep compliance J(t) E1 = t^n sin(pi n)/(pi n), exact from
 * E(s) J(s) = 1/s^2. So a held load gives the same modulus as a held strain up to sin(pi n)/(pi n),
 * 1.6 % for n 0.1. Symbols: t time (s), n exponent, E1 modulus at 1 s.
 *
 * <p>Range: the times it was measured over; g has no end at short or long times, which no material
 * follows. Band: E(t) off by (t/t0)^dn from a time t0 where it is known, dn how far n may be off.
 * Caveats: times outside the range; for polyurethane, moisture.
 *
 * <p>Source: the linear viscoelastic relations are derived; exponents of printed polyurethane see
 * {@link #polyurethane}.
 *
 * <p>JShell: {@code PowerRelaxation.measured(0.1, 0.01, java.time.Duration.ofSeconds(1),
 * java.time.Duration.ofDays(1), source).creep(java.time.Duration.ofHours(1))}
 *
 * @param exponent n, above 0 and below 1
 * @param plusMinus half the band of n, 0 to 1
 * @param times the times it was measured over, in seconds
 * @param notes what must be said whenever it is used
 * @param source where n comes from
 */
public record PowerRelaxation(
    double exponent, double plusMinus, ValidityRange times, List<Caveat> notes, Source source)
    implements Relaxation {

  private static final String NAME = "power relaxation";
  private static final Source HAID =
      Source.read(
          "Haid, Duncan, Hart & Foster 2022, 14th dvs symposium: four printed polyurethanes, modulus"
              + " up to 183 % higher at 16 1/s than at 0.006 1/s, exponent at most 0.132");
  // strains of a tenth at these rates
  private static final double FIRST = 0.1 / 16.0;
  private static final double LAST = 0.1 / 0.006;
  private static final double SHORTEST = 1e-8;
  private static final double LONGEST = 1e17;
  // of a sum with one term a decade, by comparison with the power itself for n 0.01 to 0.9
  private static final double SERIES_ERROR = 1.0 / 9.0;

  /**
   * Refuses exponents that are no relaxation.
   *
   * @param exponent n, above 0 and below 1
   * @param plusMinus half the band of n, 0 to 1
   * @param times the times it was measured over, in seconds
   * @param notes what must be said whenever it is used
   * @param source where n comes from
   * @throws org.flexwright.InvalidInputException if n or its band is outside 0 to 1
   */
  public PowerRelaxation {
    Require.that(
        exponent > 0.0 && exponent < 1.0,
        "relaxation exponent",
        Text.number(exponent),
        "above 0 and below 1",
        "elastomers have 0.01 to 0.15");
    Require.between("half band of the relaxation exponent", plusMinus, 0.0, 1.0, "");
    notes = List.copyOf(notes);
  }

  /**
   * A law measured by the user.
   *
   * @param exponent n, above 0 and below 1
   * @param plusMinus half the band of n
   * @param from the first time of the test
   * @param to the last time of the test
   * @param source the test
   * @return the law
   * @throws org.flexwright.InvalidInputException if n is outside 0 to 1 or the times do not rise
   */
  public static PowerRelaxation measured(
      double exponent, double plusMinus, Duration from, Duration to, Source source) {
    return new PowerRelaxation(
        exponent, plusMinus, Times.range(NAME, from, to, source), List.of(), source);
  }

  /**
   * Printed polyurethane of 24 to 247 MPa: n 0.09 with a half band of 0.04. The upper end is
   * measured over rates (a strain of a tenth in 0.006 s to 17 s), the lower end a judgement; a hold
   * longer than that is an extrapolation and says so.
   *
   * @return the law
   */
  public static PowerRelaxation polyurethane() {
    return new PowerRelaxation(
        0.09,
        0.04,
        Times.range(NAME, FIRST, LAST, HAID),
        List.of(
            Caveat.note(
                NAME,
                "moist or warm polyurethane creeps by another law, with a logarithmic term: dry it"
                    + " or measure it",
                Source.read("Polymers 15 (2023) 3770, creep at 15 to 35 degC"))),
        HAID);
  }

  @Override
  public double at(double seconds) {
    Require.positive("time under strain", seconds, "s");
    return Math.pow(seconds, -exponent);
  }

  @Override
  public double integral(double seconds) {
    Require.notNegative("time under strain", seconds, "s");
    return Math.pow(seconds, 1.0 - exponent) / (1.0 - exponent);
  }

  /**
   * The creep under a constant stress: strain over the strain that this stress gives by E1.
   *
   * @param held how long the stress has been held, above 0
   * @return J(t) E1
   */
  public double creep(Duration held) {
    double x = Math.PI * exponent;
    return Math.pow(Times.positive("time under load", held), exponent) * Math.sin(x) / x;
  }

  /**
   * The same law as a sum of exponentials, one a decade from a tenth of the first time to ten times
   * the last. From the Gamma integral t^-n = int tau^-n exp(-t/tau) d ln(tau)/Gamma(n): weights
   * tau^-n ln 10/Gamma(n), and beyond the longest tau the rest of the integral, (tau sqrt
   * 10)^-n/Gamma(1 + n), as what never relaxes. Between both times it is off by less than n/9: 0.8
   * % for n 0.1.
   *
   * @param from the first time it is wanted for, at least 10 ns
   * @param to the last time it is wanted for, at most 1e17 s
   * @return the series, its band that of this law over the whole span and of the conversion
   * @throws org.flexwright.InvalidInputException if the times do not rise or are not within these
   */
  public PronyRelaxation prony(Duration from, Duration to) {
    ValidityRange span = Times.range("series of a power law", from, to, source);
    // a decade beyond either end must still be a duration
    Require.between("first time of the series", span.low(), SHORTEST, LONGEST, "s");
    Require.between("last time of the series", span.high(), SHORTEST, LONGEST, "s");
    int low = (int) Math.floor(Math.log10(span.low()) + 1e-9) - 1;
    int high = (int) Math.ceil(Math.log10(span.high()) - 1e-9) + 1;
    double[] tau = new double[high - low + 1];
    double[] weight = new double[tau.length];
    double scale = Math.log(10.0) / Gamma.gamma(exponent);
    for (int i = 0; i < tau.length; i++) {
      tau[i] = Math.pow(10.0, low + i);
      weight[i] = scale * Math.pow(tau[i], -exponent);
    }
    double rest = Math.pow(Math.pow(10.0, high + 0.5), -exponent) / Gamma.gamma(1.0 + exponent);
    double band =
        Math.exp(Math.hypot(Math.log(band(span.low(), span.high())), SERIES_ERROR * exponent));
    return new PronyRelaxation(rest, weight, tau, band, span, notes, source);
  }

  @Override
  public double band(double from, double to) {
    Times.check(from, to);
    return Math.exp(plusMinus * Math.abs(Math.log(to / from)));
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
    return "relaxation by time ^-" + Text.number(exponent) + " +/- " + Text.number(plusMinus);
  }
}
