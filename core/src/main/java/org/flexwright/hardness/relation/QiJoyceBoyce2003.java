package org.flexwright.hardness.relation;

import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Pressure;

/**
 * The logarithmic rule of Qi, Joyce and Boyce, from finite elements at large strain.
 *
 * <p>log10 E = 0.0235 S - 0.6403, with S the Shore A reading for 20 &lt; S &lt; 80, or S = Shore D
 * + 50 for 30 &lt; Shore D &lt; 85.
 *
 * <p>E Young's modulus of the neo-Hookean law in MPa; the logarithm is to base 10 (copies with base
 * e are wrong). One point is 5.4 per cent of modulus everywhere. On Shore A it lies 1.4 to 1.9
 * times above {@link Gent1958}; through Shore D it comes close to the modulus that moulded
 * thermoplastic polyurethane shows between 50 and 300 per cent strain. The authors lose the mapping
 * for materials that lock below a stretch of 5.
 *
 * <p>Source: H. J. Qi, K. Joyce and M. C. Boyce, Rubber Chem. Technol. 76 (2003) 419.
 *
 * <pre>{@code
 * QiJoyceBoyce2003.onShoreA().modulus(60)           // 5.884 MPa
 * QiJoyceBoyce2003.throughShoreD().modulus(46)      // 41.28 MPa
 * }</pre>
 *
 * @param scale the scale that is read, {@link ShoreA} or {@link ShoreD}
 */
public record QiJoyceBoyce2003(Class<? extends HardnessReading> scale) implements HardnessRelation {

  private static final double SLOPE = 0.0235;
  private static final double OFFSET = 0.6403;
  private static final double D_SHIFT = 50.0;
  private static final String ON_A = "Qi, Joyce & Boyce 2003 on Shore A";
  private static final String ON_D = "Qi, Joyce & Boyce 2003 on Shore D";
  private static final Source SOURCE =
      Source.read(
          "H. J. Qi, K. Joyce and M. C. Boyce, Rubber Chem. Technol. 76 (2003) 419: abstract, and"
              + " equation and ranges as quoted in public notes");
  private static final ValidityRange RANGE_A =
      new ValidityRange(ON_A, "Shore A", 20.0, 80.0, "points", SOURCE);
  private static final ValidityRange RANGE_D =
      new ValidityRange(ON_D, "Shore D", 30.0, 85.0, "points", SOURCE);

  /**
   * Refuses a scale for which the rule was not written.
   *
   * @param scale the scale that is read, {@link ShoreA} or {@link ShoreD}
   * @throws InvalidInputException for IRHD
   */
  public QiJoyceBoyce2003 {
    if (scale != ShoreA.class && scale != ShoreD.class) {
      throw new InvalidInputException(
          "scale of the rule of Qi, Joyce & Boyce",
          scale.getSimpleName(),
          "Shore A or Shore D",
          "convert the reading first");
    }
  }

  /**
   * The rule on Shore A.
   *
   * @return the relation, 20 to 80 Shore A
   */
  public static QiJoyceBoyce2003 onShoreA() {
    return new QiJoyceBoyce2003(ShoreA.class);
  }

  /**
   * The rule on Shore D, shifted by 50 points.
   *
   * @return the relation, 30 to 85 Shore D
   */
  public static QiJoyceBoyce2003 throughShoreD() {
    return new QiJoyceBoyce2003(ShoreD.class);
  }

  @Override
  public String name() {
    return scale == ShoreA.class ? ON_A : ON_D;
  }

  @Override
  public ValidityRange range() {
    return scale == ShoreA.class ? RANGE_A : RANGE_D;
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  private double shift() {
    return scale == ShoreA.class ? 0.0 : D_SHIFT;
  }

  /**
   * {@inheritDoc}
   *
   * @throws InvalidInputException if the reading is off the scale
   */
  @Override
  public Pressure modulus(double points) {
    double s = HardnessRelation.requireOnScale(range().input(), points) + shift();
    return Pressure.mpa(Math.pow(10.0, SLOPE * s - OFFSET));
  }

  /**
   * {@inheritDoc}
   *
   * @throws InvalidInputException outside 0.229 to 51.3 MPa on Shore A, 3.43 to 767 MPa on Shore D
   */
  @Override
  public double points(Pressure modulus) {
    double s = (Math.log10(OnScale.mpa(this, modulus)) + OFFSET) / SLOPE - shift();
    return OnScale.points(this, modulus, s);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
