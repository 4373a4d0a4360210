package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;

/**
 * The rule of Battermann and Koehler for the shear modulus of rubber springs.
 *
 * <p>G = 0.086 MPa 1.045^S, E = 3 G.
 *
 * <p>G shear modulus; S reading in points of Shore A; E Young's modulus of an incompressible
 * rubber. Within 7 per cent of {@link Gent1958} between 50 and 80 points, 11 per cent below it at
 * 40, 15 at 30; far too soft above 90.
 *
 * <p>Range 30 to 80 Shore A.
 *
 * <p>Source: W. Battermann and R. Koehler, Elastomere Federung, elastische Lagerungen (1982), from
 * memory; the equation as coded in public sources.
 *
 * <pre>{@code
 * new BattermannKoehler1982().modulus(60)      // 3.619 MPa
 * }</pre>
 */
public record BattermannKoehler1982() implements HardnessRelation {

  private static final String NAME = "Battermann & Koehler 1982";
  private static final Source SOURCE =
      Source.read(
          "W. Battermann and R. Koehler, Elastomere Federung, elastische Lagerungen (1982): the"
              + " equation as coded in public sources");
  private static final ValidityRange RANGE =
      new ValidityRange(
          NAME,
          "Shore A",
          30.0,
          80.0,
          "points",
          Source.memory("usual range of the rule of Battermann and Koehler"));
  private static final double AT_ZERO = 3.0 * 0.086;
  private static final double LOG_RATIO = Math.log(1.045);

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
    return Pressure.mpa(AT_ZERO * Math.exp(LOG_RATIO * s));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException outside 0.258 to 21.0 MPa
   */
  @Override
  public double points(Pressure modulus) {
    double log = Math.log(OnScale.mpa(this, modulus) / AT_ZERO);
    return OnScale.points(this, modulus, log / LOG_RATIO);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
