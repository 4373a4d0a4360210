package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;

/**
 * How the stress of a held strain fades: the relaxation function g of quasi-linear viscoelasticity.
 *
 * <p>Formula: stress after a history of load s(t) = int g(t - u) d s_e/du du with s_e the stress of
 * the law without time; {@link LoadHistory} takes the integral. Symbols: t time (s), g(t) stress
 * left at t over the reference stress, G(t) = int_0^t g du (s). Only ratios of g count, so g need
 * not be 1 anywhere.
 *
 * <p>Range: that g does not depend on the strain is the assumption of the form; each law states the
 * times it was measured over. Open to users, and like {@link org.flexwright.law.StrainEnergy} on
 * bare numbers: times in seconds. Implementations are immutable and thread-safe, g is positive and
 * never rises.
 *
 * <p>Source: Fung, Biomechanics (from memory).
 *
 * <p>JShell: {@code PowerRelaxation.polyurethane().at(3600)}
 */
public interface Relaxation {

  /**
   * The stress left at a time.
   *
   * @param seconds the time since a sudden strain, above 0
   * @return g, above 0
   */
  double at(double seconds);

  /**
   * The integral of g from 0.
   *
   * @param seconds the time, not negative
   * @return G in seconds, zero at 0
   */
  double integral(double seconds);

  /**
   * How far g(to)/g(from) may be off: 1.2 means from 1/1.2 to 1.2 of it, about 95 % of cases.
   *
   * @param from the time at which the stress is known, in seconds
   * @param to the time at which it is asked for, in seconds
   * @return the end of the band, at least 1
   */
  double band(double from, double to);

  /**
   * What must be said when this law leads from one time to another.
   *
   * @param from the time at which the stress is known, in seconds
   * @param to the time at which it is asked for, in seconds
   * @return the caveats, those of the range of times among them
   */
  List<Caveat> caveats(double from, double to);

  /**
   * Where the law comes from.
   *
   * @return the sources, at least one
   */
  List<Source> sources();
}
