package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;

/**
 * Gent's relation between Shore A and Young's modulus of unfilled rubber.
 *
 * <p>E = 0.0981 (56 + 7.62336 S) / (0.137505 (254 - 2.54 S)).
 *
 * <p>E Young's modulus at small strain in MPa; S reading in points of Shore A. It is linear contact
 * of a flat-ended cylinder (of the mean diameter of the type A cone, 1.03 mm, as we infer from the
 * constants) pressed by the spring of the durometer.
 *
 * <p>Range 20 to 80 Shore A. The author finds elastic theory good above 60, equal to the empirical
 * law from 40 to 60, poor below 35 to 40. One point is 4 per cent of modulus at 60, 11 at 90, 21 at
 * 95. Soft platinum silicones measure 0.3 to 0.5 of it.
 *
 * <p>Source: A. N. Gent, Rubber Chem. Technol. 31 (1958) 896.
 *
 * <pre>{@code
 * new Gent1958().modulus(60)      // 3.605 MPa
 * }</pre>
 */
public record Gent1958() implements HardnessRelation {

  private static final String NAME = "Gent 1958";
  private static final Source SOURCE =
      Source.read(
          "A. N. Gent, Rubber Chem. Technol. 31 (1958) 896: abstract, and the equation as coded in"
              + " two public sources");
  private static final ValidityRange RANGE =
      new ValidityRange(
          NAME,
          "Shore A",
          20.0,
          80.0,
          "points",
          Source.memory("usual range of Gent's relation, Rubber Chem. Technol. 31 (1958) 896"));

  // E = P (A0 + A1 S) / (Q (B0 - B1 S)), from kgf and inch in the paper
  private static final double P = 0.0981;
  private static final double A0 = 56.0;
  private static final double A1 = 7.62336;
  private static final double Q = 0.137505;
  private static final double B1 = 2.54;

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return ShoreA.class;
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
    double s = HardnessRelation.requireOnScale("Shore A", points);
    return Pressure.mpa(P * (A0 + A1 * s) / (Q * B1 * (100.0 - s)));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException below 0.157 MPa, the modulus at 0 points
   */
  @Override
  public double points(Pressure modulus) {
    double e = OnScale.mpa(this, modulus) * Q * B1 / P;
    return OnScale.points(this, modulus, (100.0 * e - A0) / (e + A1));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
