package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Pressure;

/**
 * Young's modulus from Shore D by linear contact of a sharp cone.
 *
 * <p>F = (2 / pi) E / (1 - nu^2) tan(alpha) d^2, with the spring F = 44.45 N s and the depth d =
 * 2.5 mm (1 - s), hence E = 31.27 MPa s / (1 - s)^2.
 *
 * <p>F force of the spring; d depth; s = reading / 100; alpha = 15 degrees half angle of the type D
 * cone; nu = 0.5 Poisson's ratio.
 *
 * <p>Range 20 to 90 Shore D, where the scale is read. The strain under a cone is large, so linear
 * theory is a convention; it brackets from above what {@link RadiusedCone} brackets from below.
 * Above 60 Shore D moulded thermoplastic polyurethane is several times stiffer than any hardness
 * relation says.
 *
 * <p>Source: derived from I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47.
 *
 * <pre>{@code
 * new SneddonCone().modulus(46)      // 49.33 MPa
 * }</pre>
 */
public record SneddonCone() implements HardnessRelation {

  static final double RANGE_LOW = 20.0;
  static final double RANGE_HIGH = 90.0;
  static final Source RANGE_SOURCE =
      Source.memory("ASTM D2240, readings below 20 and above 90 Shore D are to be discarded");

  private static final String NAME = "Sneddon cone";
  private static final Source SOURCE =
      Source.derived(
          "linear contact of a cone, I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47, with the spring"
              + " and the angle of type D");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "Shore D", RANGE_LOW, RANGE_HIGH, "points", RANGE_SOURCE);

  /** E = K s / (1 - s)^2 in MPa. */
  private static final double K = coefficient();

  private static double coefficient() {
    double spring = Durometer.SHORE_D.springForce(100.0).newtons();
    double travel = Durometer.SHORE_D.extension().mm();
    double tangent = Math.tan(Durometer.SHORE_D.halfAngle().rad());
    return 0.75 * Math.PI * spring / (2.0 * tangent * travel * travel);
  }

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
    double v = (100.0 - s) / 100.0;
    return Pressure.mpa(K * (s / 100.0) / (v * v));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero
   */
  @Override
  public double points(Pressure modulus) {
    double e = OnScale.mpa(this, modulus);
    double v = 2.0 * K / (K + Math.sqrt(K * (K + 4.0 * e)));
    return OnScale.points(this, modulus, 100.0 * (e * v * v / K));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
