package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Gent and Thomas: W = C1 (I1 - 3) + C2 ln(I2/3).
 *
 * <p>Symbols: I1 = sum l_i^2, I2 = sum over pairs l_i^2 l_j^2, C1, C2 (Pa); G = 2 C1 + 2 C2/3. Both
 * constants not negative, which makes the law stable at every stretch, as both terms are convex in
 * the logarithmic strains. It does not stiffen again at large stretch. Source: Gent and Thomas
 * 1958, J. Polym. Sci. 28 (from memory, checked).
 *
 * <p>JShell: {@code GentThomas.of(mpa(0.163), mpa(0.0376))}
 *
 * @param c1 the first constant, not negative
 * @param c2 the second constant, not negative, not zero together with the first
 */
public record GentThomas(Pressure c1, Pressure c2) implements StrainEnergy {

  private static final StretchRange RANGE =
      new StretchRange(
          1e-3, 1e3, "stable everywhere", Source.derived("stable for constants not below 0"));

  /**
   * Refuses constants that make the law unstable.
   *
   * @param c1 the first constant, not negative
   * @param c2 the second constant, not negative, not zero together with the first
   * @throws org.flexwright.InvalidInputException if one constant is negative or both are zero
   */
  public GentThomas {
    Require.notNegative("C1", c1.pa(), "Pa");
    Require.notNegative("C2", c2.pa(), "Pa");
    Require.positive("C1 + C2", c1.pa() + c2.pa(), "Pa");
  }

  /**
   * From both constants.
   *
   * @param c1 the first constant
   * @param c2 the second constant
   * @return the law
   */
  public static GentThomas of(Pressure c1, Pressure c2) {
    return new GentThomas(c1, c2);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double second = Invariants.logOnePlus(Invariants.second(l1, l2, l3) / 3.0);
    return Invariants.sane(c1.pa() * Invariants.first(l1, l2, l3) + c2.pa() * second);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double i2 = 3.0 + Invariants.second(l1, l2, l3);
    Invariants.gradient(l1, l2, l3, c1.pa(), c2.pa() / i2, out);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double i2 = 3.0 + Invariants.second(l1, l2, l3);
    double w2 = c2.pa() / i2;
    Invariants.hessian(l1, l2, l3, c1.pa(), w2, 0.0, -w2 / i2, out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * c1.pa() + 2.0 / 3.0 * c2.pa();
  }

  @Override
  public StretchRange range() {
    return RANGE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Gent-Thomas law, C1 "
        + Text.number(c1.mpa())
        + " MPa, C2 "
        + Text.number(c2.mpa())
        + " MPa";
  }
}
