package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Pressure;

/**
 * The circulating formula between Shore D and Young's modulus.
 *
 * <p>S = 100 - 20 (-78.188 + sqrt(6113.36 + 781.88 E)) / E; inverted, E = (781.88 - 156.376 u) /
 * u^2 with u = (100 - S) / 20.
 *
 * <p>E Young's modulus in MPa; S reading in points of Shore D. The formula is the sharp cone of
 * {@link ContactRelation} with rounded constants (31.2752 in place of 31.2695), theory and no fit;
 * it is here because it is quoted, and is never counted beside the cone. 6113.36 is the rounded
 * square of 78.188; the exact square is used here, so that there and back closes.
 *
 * <p>Range 20 to 90 Shore D, where the scale is read.
 *
 * <p>Source: the inverse as coded in a public source, the forward form from memory.
 *
 * <pre>{@code
 * new ShoreDFormula().modulus(46)      // 49.34 MPa
 * }</pre>
 */
public record ShoreDFormula() implements HardnessRelation {

  private static final String NAME = "Shore D formula";
  private static final Source SOURCE =
      Source.read("circulating formula for Shore D, inverse as coded in one public source");
  private static final ValidityRange RANGE =
      new ValidityRange(
          NAME,
          "Shore D",
          Durometer.SHORE_D.range().low(),
          Durometer.SHORE_D.range().high(),
          "points",
          Durometer.SHORE_D.range().source());

  private static final double C = 781.88;
  private static final double HALF_B = 78.188;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return ShoreD.class;
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
    double s = HardnessRelation.requireOnScale("Shore D", points);
    double u = (100.0 - s) / 20.0;
    // 781.88 - 156.376 u, written so that nothing cancels near 0 points
    return Pressure.mpa(2.0 * HALF_B * (s / 20.0) / (u * u));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero
   */
  @Override
  public double points(Pressure modulus) {
    double e = OnScale.mpa(this, modulus);
    double u = C / (HALF_B + Math.sqrt(HALF_B * HALF_B + C * e));
    return OnScale.points(this, modulus, 20.0 * (e * u * u / (2.0 * HALF_B)));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
