package org.flexwright.durability;

import org.flexwright.evidence.Source;

/**
 * Life against peak strain. Open to users: bring the law of your own fatigue tests.
 *
 * <p>Scatter of the life is part of the law: cycles = median x exp(s z), z standard normal.
 */
public interface LifeLaw {

  /**
   * The median life.
   *
   * @param peakStrain largest tensile strain of the cycle, above 0
   * @return cycles, above 0, infinity below an endurance limit
   */
  double medianCycles(double peakStrain);

  /**
   * d ln(cycles) / d ln(strain) at a strain, negative.
   *
   * @param peakStrain largest tensile strain of the cycle, above 0
   * @return the slope
   */
  double logSlope(double peakStrain);

  /**
   * The standard deviation of ln(cycles).
   *
   * @return the scatter
   */
  double logSigma();

  /**
   * Whether the law is a generic default: such a law may leave a question open but never fails a
   * part.
   *
   * @return true for a default
   */
  boolean placeholder();

  /**
   * Where the law comes from.
   *
   * @return the source
   */
  Source source();

  /**
   * The placeholder used when nothing is known: 100 000 cycles at 15 % peak strain, life falling
   * with the fourth power of strain, a factor of 20 either way.
   *
   * @return the law
   */
  static LifeLaw generic() {
    return PowerLife.GENERIC;
  }
}
