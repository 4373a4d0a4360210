package org.flexwright.law.classical;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The Mooney-Rivlin polynomial of up to five constants: W = C10 J1 + C01 J2 + C20 J1^2 + C11 J1 J2
 * + C02 J2^2.
 *
 * <p>Symbols: J1 = I1 - 3, J2 = I2 - 3, I1 = sum l_i^2, I2 = sum over pairs l_i^2 l_j^2; G = 2 (C10
 * + C01). <b>Convention:</b> the three-constant law here has C11 as its third; some sources take
 * C20. Constants may be negative as fits give them; the range is where tension, shear and inflation
 * are stable, found by a scan to a stretch of 20. For two constants not below 0 see {@link
 * MooneyRivlin}. Source: Rivlin and Saunders 1951, Phil. Trans. A 243 (from memory, checked).
 *
 * <p>JShell: {@code MooneyRivlinPolynomial.of(mpa(0.15), mpa(0.02), mpa(0.001))}
 *
 * @param c10 the constant of J1
 * @param c01 the constant of J2
 * @param c20 the constant of J1^2
 * @param c11 the constant of J1 J2
 * @param c02 the constant of J2^2
 */
public record MooneyRivlinPolynomial(
    Pressure c10, Pressure c01, Pressure c20, Pressure c11, Pressure c02) implements StrainEnergy {

  /**
   * Refuses constants without stiffness at rest.
   *
   * @param c10 the constant of J1
   * @param c01 the constant of J2
   * @param c20 the constant of J1^2
   * @param c11 the constant of J1 J2
   * @param c02 the constant of J2^2
   * @throws org.flexwright.InvalidInputException if C10 + C01 is not above 0
   */
  public MooneyRivlinPolynomial {
    Require.positive("C10 + C01", c10.pa() + c01.pa(), "Pa");
  }

  /**
   * The law of three constants.
   *
   * @param c10 the constant of J1
   * @param c01 the constant of J2
   * @param c11 the constant of J1 J2
   * @return the law
   */
  public static MooneyRivlinPolynomial of(Pressure c10, Pressure c01, Pressure c11) {
    return new MooneyRivlinPolynomial(c10, c01, Pressure.pa(0.0), c11, Pressure.pa(0.0));
  }

  /**
   * This law with the constants of the squares, which makes five.
   *
   * @param ofFirst C20, of J1^2
   * @param ofSecond C02, of J2^2
   * @return the new law
   */
  public MooneyRivlinPolynomial squares(Pressure ofFirst, Pressure ofSecond) {
    return new MooneyRivlinPolynomial(c10, c01, ofFirst, c11, ofSecond);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double j1 = Invariants.first(l1, l2, l3);
    double j2 = Invariants.second(l1, l2, l3);
    return Invariants.sane(
        (c10.pa() + c20.pa() * j1 + c11.pa() * j2) * j1 + (c01.pa() + c02.pa() * j2) * j2);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double j1 = Invariants.first(l1, l2, l3);
    double j2 = Invariants.second(l1, l2, l3);
    Invariants.gradient(l1, l2, l3, first(j1, j2), second(j1, j2), out);
  }

  /** dW/dI1. */
  private double first(double j1, double j2) {
    return c10.pa() + 2.0 * c20.pa() * j1 + c11.pa() * j2;
  }

  /** dW/dI2. */
  private double second(double j1, double j2) {
    return c01.pa() + c11.pa() * j1 + 2.0 * c02.pa() * j2;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double j1 = Invariants.first(l1, l2, l3);
    double j2 = Invariants.second(l1, l2, l3);
    Invariants.hessian(
        l1, l2, l3, first(j1, j2), second(j1, j2), 2.0 * c20.pa(), c11.pa(), 2.0 * c02.pa(), out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * (c10.pa() + c01.pa());
  }

  @Override
  public StretchRange range() {
    return Stability.range(this);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Mooney-Rivlin polynomial, C10 "
        + Text.number(c10.mpa())
        + ", C01 "
        + Text.number(c01.mpa())
        + ", C20 "
        + Text.number(c20.mpa())
        + ", C11 "
        + Text.number(c11.mpa())
        + ", C02 "
        + Text.number(c02.mpa())
        + " MPa";
  }
}
