package org.flexwright.hardness.relation;

import org.apache.commons.math3.special.Erf;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.quantity.Pressure;

/**
 * The error-function form of the relation between Shore A and Young's modulus.
 *
 * <p>S = 100 erf(3.186e-4 E^(1/2)).
 *
 * <p>S reading in points of Shore A; E Young's modulus in Pa. Within 9 per cent of {@link Gent1958}
 * between 50 and 75 points, 20 per cent below it at 40, 36 at 30.
 *
 * <p>Range 30 to 80 Shore A.
 *
 * <p>Source: a fit that encyclopedias quote beside Gent's relation, author not known; as coded in
 * one public source that names BS 903.
 *
 * <pre>{@code
 * new ErrorFunctionFit().modulus(60)      // 3.489 MPa
 * }</pre>
 */
public record ErrorFunctionFit() implements HardnessRelation {

  private static final String NAME = "Error-function fit";
  private static final Source SOURCE =
      Source.read(
          "error-function fit quoted beside Gent's relation, author not known, as coded in one"
              + " public source");
  private static final ValidityRange RANGE =
      new ValidityRange(
          NAME,
          "Shore A",
          30.0,
          80.0,
          "points",
          Source.memory("usual range of the error-function fit"));
  private static final double PER_ROOT_PASCAL = 3.186e-4;

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
    double root = Erf.erfInv(s / 100.0) / PER_ROOT_PASCAL;
    return Pressure.pa(root * root);
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero, or above 300
   *     MPa, where the reading is 100
   */
  @Override
  public double points(Pressure modulus) {
    OnScale.mpa(this, modulus);
    double root = Math.sqrt(modulus.pa());
    return OnScale.points(this, modulus, 100.0 * Erf.erf(PER_ROOT_PASCAL * root));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
