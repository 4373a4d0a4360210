package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Yeoh: W = C10 J + C20 J^2 + C30 J^3 with J = I1 - 3.
 *
 * <p>Symbols: I1 = sum l_i^2, C10, C20, C30 (Pa), G = 2 C10. For rubber C20 is usually negative,
 * about a hundredth of C10, and C30 positive: the modulus falls, then rises again.
 *
 * <p>Range: everywhere if no constant is negative; else the stretches in which tension, shear and
 * inflation are stable, found by a scan to a stretch of 20. The law knows no I2: fitted to tension
 * it is too soft in inflation. Source: Yeoh 1993, Rubber Chem. Technol. 66 (from memory, checked).
 *
 * <p>JShell: {@code Yeoh.of(mpa(0.176), mpa(-0.00188), mpa(0.0000463))}
 *
 * @param c10 the constant of J, above 0
 * @param c20 the constant of J^2
 * @param c30 the constant of J^3
 */
public record Yeoh(Pressure c10, Pressure c20, Pressure c30) implements StrainEnergy {

  private static final StretchRange EVERYWHERE =
      new StretchRange(
          1e-3, 1e3, "stable everywhere", Source.derived("stable for constants not below 0"));

  /**
   * Refuses constants without stiffness at rest.
   *
   * @param c10 the constant of J, above 0
   * @param c20 the constant of J^2
   * @param c30 the constant of J^3
   * @throws org.flexwright.InvalidInputException if C10 is not above 0
   */
  public Yeoh {
    Require.positive("C10", c10.pa(), "Pa");
  }

  /**
   * From the three constants.
   *
   * @param c10 the constant of J
   * @param c20 the constant of J^2
   * @param c30 the constant of J^3
   * @return the law
   */
  public static Yeoh of(Pressure c10, Pressure c20, Pressure c30) {
    return new Yeoh(c10, c20, c30);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double j = Invariants.first(l1, l2, l3);
    return Invariants.sane(j * (c10.pa() + j * (c20.pa() + j * c30.pa())));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    Invariants.gradient(l1, l2, l3, first(Invariants.first(l1, l2, l3)), out);
  }

  /** dW/dI1. */
  private double first(double j) {
    return c10.pa() + j * (2.0 * c20.pa() + j * 3.0 * c30.pa());
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double j = Invariants.first(l1, l2, l3);
    Invariants.hessian(l1, l2, l3, first(j), 2.0 * c20.pa() + 6.0 * c30.pa() * j, out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * c10.pa();
  }

  @Override
  public StretchRange range() {
    return c20.pa() >= 0.0 && c30.pa() >= 0.0 ? EVERYWHERE : Stability.range(this);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Yeoh law, C10 "
        + Text.number(c10.mpa())
        + ", C20 "
        + Text.number(c20.mpa())
        + ", C30 "
        + Text.number(c30.mpa())
        + " MPa";
  }
}
