package org.flexwright.durability;

import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A straight line in the log-log plane: N = N_ref (e_ref / e)^k.
 *
 * <p>Symbols: N cycles, e peak tensile strain, k exponent. With a flaw growing as the beta-th power
 * of tearing energy and energy as the square of strain, k = 2 beta (Gent, Lindley and Thomas 1964,
 * from memory); beta 2 for rubbers that crystallise under strain.
 *
 * @param cycles life at the reference strain, above 0
 * @param strain the reference strain, above 0
 * @param exponent k, above 0
 * @param band end of the whole band of the life: 3 means from a third to three times
 * @param placeholder whether this is a generic default
 * @param source where it comes from
 */
public record PowerLife(
    double cycles, double strain, double exponent, double band, boolean placeholder, Source source)
    implements LifeLaw {

  static final PowerLife GENERIC =
      new PowerLife(
          1e5,
          0.15,
          4.0,
          20.0,
          true,
          Source.assumption("placeholder until a print of this grade has been cycled"));

  /**
   * Refuses figures that make no sense.
   *
   * @param cycles life at the reference strain, above 0
   * @param strain the reference strain, above 0
   * @param exponent k, above 0
   * @param band end of the whole band of the life: 3 means from a third to three times
   * @param placeholder whether this is a generic default
   * @param source where it comes from
   * @throws org.flexwright.InvalidInputException if a figure is not above 0 or the band below 1
   */
  public PowerLife {
    Require.positive("cycles", cycles, "");
    Require.positive("reference strain", strain, "");
    Require.positive("life exponent", exponent, "");
    Require.between("band of the life", band, 1.0, 1e4, "");
  }

  /**
   * A law measured on prints.
   *
   * @param cycles median life at the tested strain
   * @param strain the tested peak strain
   * @param exponent the exponent k
   * @param band end of the whole band
   * @param source the test
   * @return the law
   */
  public static PowerLife measured(
      double cycles, double strain, double exponent, double band, Source source) {
    return new PowerLife(cycles, strain, exponent, band, false, source);
  }

  @Override
  public double medianCycles(double peakStrain) {
    Require.positive("peak strain", peakStrain, "");
    return cycles * Math.pow(strain / peakStrain, exponent);
  }

  @Override
  public double logSlope(double peakStrain) {
    return -exponent;
  }

  @Override
  public double logSigma() {
    return Math.log(band) / Factors.COVERAGE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return Text.number(cycles)
        + " cycles at "
        + Text.percent(strain)
        + " peak strain, exponent "
        + Text.number(exponent)
        + ", x/ "
        + Text.number(band)
        + (placeholder ? ", placeholder" : "");
  }
}
