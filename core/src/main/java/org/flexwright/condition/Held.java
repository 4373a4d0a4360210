package org.flexwright.condition;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;

/**
 * Strain held for a time, or reached in a given time: every stress of the law is multiplied by the
 * same number.
 *
 * <p>Formula: factor = s(t)/g(t_ref), s the stress of the history (a sudden one unless told
 * otherwise), so g(t)/g(t_ref) for a sudden strain. Symbols: t time since the start (s), t_ref time
 * to which the modulus of the grade belongs. A test that pulls at a constant rate for T has the
 * modulus of a sudden strain read at about 0.35 T (T (1-n)^(1/n), n 0.1).
 *
 * <p>Range: that of the relaxation; the same share at every strain. Moduli of datasheets come from
 * tests of 2 s (1 % at 0.006 1/s) to 60 s (1 % at 1 %/min); unless the time is stated it is taken
 * as 10 s, off by up to 6 times either way, which widens the band. Under a held load instead of a
 * held strain the modulus is higher by 1.6 % for n 0.1, see {@link PowerRelaxation}.
 *
 * <p>Caveats: those of the relaxation. Order: a condition acts on what the one before left. Scaling
 * commutes, but a warm part relaxes by the law at its temperature: after {@link AtTemperature} use
 * {@link TimeShift#shift}. Softening comes before it, see {@link Conditioned}.
 *
 * <p>Source: derived; the times of tests are common practice.
 *
 * <p>JShell: {@code grade.under(Held.of(java.time.Duration.ofDays(1),
 * PowerRelaxation.polyurethane())).modulusAt(0.05)}
 *
 * @param time the time since the start at which the part is asked, above 0
 * @param law the relaxation
 * @param history how it was loaded
 * @param reference the time to which the modulus of the grade belongs, above 0
 * @param spread how far that time may be off: 6 means a sixth to six times
 */
public record Held(
    Duration time, Relaxation law, LoadHistory history, Duration reference, double spread)
    implements Condition {

  private static final Duration USUAL = Duration.ofSeconds(10);
  private static final double USUAL_SPREAD = 6.0;
  // a part let go is left with rounding errors
  private static final double NOTHING = 1e-6;
  private static final Source TESTS =
      Source.commonPractice("moduli of datasheets are read 2 s to 60 s after the start of a test");

  /**
   * Refuses times that are none.
   *
   * @param time the time since the start at which the part is asked, above 0
   * @param law the relaxation
   * @param history how it was loaded
   * @param reference the time to which the modulus of the grade belongs, above 0
   * @param spread how far that time may be off: 6 means a sixth to six times
   * @throws org.flexwright.InvalidInputException if a time is not above 0, the spread below 1 or
   *     the part without load at that time
   */
  public Held {
    Times.positive("time under strain", time);
    Times.positive("reference time of the modulus", reference);
    Require.between("spread of the reference time", spread, 1.0, 1e6, "");
    double left = history.stress(law, time);
    Require.that(
        left > NOTHING * law.at(Times.seconds(reference)),
        "stress left at " + Times.show(time),
        left,
        "above 0",
        "ask while it is loaded");
  }

  /**
   * Strained at once and held.
   *
   * @param time how long
   * @param law the relaxation
   * @return the condition
   * @throws org.flexwright.InvalidInputException if the time is not above 0
   */
  public static Held of(Duration time, Relaxation law) {
    return new Held(time, law, LoadHistory.step(), USUAL, USUAL_SPREAD);
  }

  /**
   * This condition after another history.
   *
   * @param of how the part was loaded
   * @return the new condition
   * @throws org.flexwright.InvalidInputException if the part is without load at its time
   */
  public Held history(LoadHistory of) {
    return new Held(time, law, of, reference, spread);
  }

  /**
   * This condition for a grade whose modulus belongs to a known time.
   *
   * @param of the time after a sudden strain
   * @return the new condition
   * @throws org.flexwright.InvalidInputException if the time is not above 0
   */
  public Held reference(Duration of) {
    return new Held(time, law, history, of, 1.0);
  }

  /**
   * By which every stress is multiplied.
   *
   * @return the factor, above 0
   */
  public double factor() {
    return history.stress(law, time) / law.at(Times.seconds(reference));
  }

  @Override
  public StrainEnergy apply(StrainEnergy of) {
    return of.scaled(factor());
  }

  @Override
  public double band() {
    double ref = Times.seconds(reference);
    double here = law.at(ref);
    double off =
        Math.max(
            Math.abs(Math.log(law.at(ref / spread) / here)),
            Math.abs(Math.log(law.at(ref * spread) / here)));
    return Math.exp(Math.hypot(Math.log(law.band(ref, Times.seconds(time))), off));
  }

  @Override
  public List<Caveat> caveats() {
    return law.caveats(Times.seconds(reference), Times.seconds(time));
  }

  @Override
  public List<Source> sources() {
    List<Source> all = new ArrayList<>(law.sources());
    if (spread > 1.0) {
      all.add(TESTS);
    }
    return List.copyOf(all);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "held for " + Times.show(time) + " (" + law + ")";
  }
}
