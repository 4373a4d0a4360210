package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;

/**
 * The relation of Kunz and Studer between Shore A and Young's modulus.
 *
 * <p>E = (1 - nu^2) / (2 R C3) (C1 + C2 S) / (100 - S).
 *
 * <p>E Young's modulus at small strain; S reading in points of Shore A; nu = 0.5 Poisson's ratio; R
 * = 0.395 mm radius of the flat of the indenter; C1 = 0.549 N, C2 = 0.07516 N spring of the
 * durometer; C3 = 0.025 mm travel per point. It is linear contact of a flat-ended cylinder of the
 * radius of the flat. The real cone widens as it sinks, so the relation lies above {@link
 * Gent1958}, which is the same law on the mean radius (by a third at 60 points).
 *
 * <p>Range 40 to 90 Shore A.
 *
 * <p>Source: J. Kunz and M. Studer, Kunststoffe (2006), from memory; the same as the flat punch of
 * Boussinesq with the spring of {@link org.flexwright.hardness.Durometer#SHORE_A} within 0.2 per
 * cent.
 *
 * <pre>{@code
 * new KunzStuder2006().modulus(50)      // 3.271 MPa
 * }</pre>
 */
public record KunzStuder2006() implements HardnessRelation {

  private static final String NAME = "Kunz & Studer 2006";
  private static final Source SOURCE =
      Source.memory(
          "J. Kunz and M. Studer, Determining the modulus from Shore A, Kunststoffe 2006");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "Shore A", 40.0, 90.0, "points", SOURCE);

  private static final double C1 = 0.549;
  private static final double C2 = 0.07516;
  // (1 - nu^2) / (2 R C3), in 1/mm^2
  private static final double FACTOR = 0.75 / (2.0 * 0.395 * 0.025);

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
    return Pressure.mpa(FACTOR * (C1 + C2 * s) / (100.0 - s));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException below 0.208 MPa, the modulus at 0 points
   */
  @Override
  public double points(Pressure modulus) {
    double e = OnScale.mpa(this, modulus) / FACTOR;
    return OnScale.points(this, modulus, (100.0 * e - C1) / (e + C2));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
