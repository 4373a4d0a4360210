package org.flexwright.hardness.relation;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.quantity.Pressure;

/**
 * The definition of the international rubber hardness degree as a normal integral.
 *
 * <p>IRHD = 100 Phi((log10 M - 0.364) / 0.7).
 *
 * <p>M Young's modulus at small strain in MPa; Phi the standard normal integral. 50 IRHD is 2.312
 * MPa; the slope there is 57 degrees per decade of modulus.
 *
 * <p>Range 30 to 95 IRHD. The printed table of the standard was not seen: trust half a degree.
 *
 * <p>Source: ISO 48-2 and BS 903-A26, from memory. See {@link IrhdMethod} for the reading from a
 * depth.
 *
 * <pre>{@code
 * new IrhdProbit().modulus(60)      // 3.478 MPa
 * }</pre>
 */
public record IrhdProbit() implements HardnessRelation {

  private static final String NAME = "IRHD probit";
  private static final Source SOURCE =
      Source.memory("ISO 48-2 and BS 903-A26, mid-point 0.364, 57 degrees per decade");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "IRHD", 30.0, 95.0, "points", SOURCE);
  private static final double MIDDLE = 0.364;
  private static final double SIGMA = 0.7;

  /** Nearer to the stops the quantile is not resolved and the modulus stays. */
  private static final double LEAST = 1e-14;

  // immutable; the generator is never drawn from
  private static final NormalDistribution NORMAL = new NormalDistribution(null, 0.0, 1.0);

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return Irhd.class;
  }

  @Override
  public ValidityRange range() {
    return RANGE;
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  @Override
  public Pressure modulus(double points) {
    double p = HardnessRelation.requireOnScale("IRHD", points) / 100.0;
    double within = Math.max(LEAST, Math.min(p, 1.0 - LEAST));
    double z = NORMAL.inverseCumulativeProbability(within);
    return Pressure.mpa(Math.pow(10.0, MIDDLE + SIGMA * z));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero or is so extreme
   *     that the reading is 0 or 100
   */
  @Override
  public double points(Pressure modulus) {
    double z = (Math.log10(OnScale.mpa(this, modulus)) - MIDDLE) / SIGMA;
    return OnScale.points(this, modulus, 100.0 * NORMAL.cumulativeProbability(z));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
