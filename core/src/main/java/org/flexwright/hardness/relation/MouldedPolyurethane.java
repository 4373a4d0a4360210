package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Pressure;

/**
 * Flexural modulus and stress at 100 per cent of moulded thermoplastic polyurethane over Shore D.
 *
 * <p>log10 E = 0.02851 S + 0.5957, log10 M100 = 0.01709 S + 0.2345.
 *
 * <p>E flexural modulus at about 1 per cent strain in MPa; M100 engineering stress at a strain of
 * 100 per cent in MPa; S reading in points of Shore D. E is 5 to 10 times M100, so no single
 * modulus serves bending and large stretch. A print can be softer.
 *
 * <p>Range 30 to 55 Shore D: six grades, scatter x1.18. M100: fifteen grades, 29 to 76 Shore D,
 * scatter x1.11. Sheets at 75 Shore D say 1300 to 2000 MPa, far above the line.
 *
 * <p>One family of materials: not one of the {@link Relations#independent} witnesses.
 *
 * <p>Source: own least-squares fits to property sheets that were read; grades given on Shore A
 * taken through {@link org.flexwright.hardness.HardnessChart}.
 *
 * <pre>{@code
 * new MouldedPolyurethane().modulus(46)          // 80.75 MPa
 * new MouldedPolyurethane().stressAt100(46)      // 10.49 MPa
 * }</pre>
 */
public record MouldedPolyurethane() implements HardnessRelation {

  private static final String NAME = "Moulded polyurethane, flexural";
  private static final Source SOURCE =
      Source.derived("own fits to property sheets of moulded thermoplastic polyurethanes");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "Shore D", 30.0, 55.0, "points", SOURCE);

  private static final double SLOPE = 0.02851;
  private static final double OFFSET = 0.5957;
  private static final double M100_SLOPE = 0.01709;
  private static final double M100_OFFSET = 0.2345;

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
    return Pressure.mpa(Math.pow(10.0, SLOPE * s + OFFSET));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException outside 3.94 MPa to 2.8 GPa
   */
  @Override
  public double points(Pressure modulus) {
    double log = Math.log10(OnScale.mpa(this, modulus));
    return OnScale.points(this, modulus, (log - OFFSET) / SLOPE);
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  @Override
  public double logSlope(double points) {
    HardnessRelation.requireOnScale("Shore D", points);
    return SLOPE * Math.log(10.0);
  }

  /**
   * The engineering stress at a strain of 100 per cent.
   *
   * @param points the reading, strictly between 0 and 100 points of Shore D
   * @return the stress
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  public Pressure stressAt100(double points) {
    double s = HardnessRelation.requireOnScale("Shore D", points);
    return Pressure.mpa(Math.pow(10.0, M100_SLOPE * s + M100_OFFSET));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
