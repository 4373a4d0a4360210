package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of {@link Gent} with a term of the second invariant: W = -(mu Jm/2) ln(1 - (I1 - 3)/Jm) +
 * C2 ln(I2/3).
 *
 * <p>Symbols: I1 = sum l_i^2, I2 = sum over pairs l_i^2 l_j^2, mu the modulus of the first term
 * (Pa), Jm the value of I1 - 3 at which the material locks, C2 the constant of the second term
 * (Pa); G = mu + 2 C2/3. Of the laws of three constants here it follows Treloar's three curves of
 * 1944 best.
 *
 * <p>Range: to 95 % of locking in the worst deformation, 2 l^2 + l^-4 - 3 = 0.95 Jm; stable up to
 * locking, as both terms are convex in the logarithmic strains. At locking and beyond energy and
 * stress are infinite. Source: Pucci and Saccomandi 2002, Rubber Chem. Technol. 75 (from memory);
 * second term of Gent and Thomas 1958, J. Polym. Sci. 28 (from memory).
 *
 * <p>JShell: {@code GentGent.of(mpa(0.246), 79.9, mpa(0.291))}
 *
 * @param mu the modulus of the first term, above 0
 * @param locking Jm, above 0
 * @param c2 the constant of the second term, not negative
 */
public record GentGent(Pressure mu, double locking, Pressure c2) implements StrainEnergy {

  private static final Source SOURCE =
      Source.memory("Pucci and Saccomandi 2002, Rubber Chem. Technol. 75");

  /**
   * Refuses constants that make the law unstable.
   *
   * @param mu the modulus of the first term, above 0
   * @param locking Jm, above 0
   * @param c2 the constant of the second term, not negative
   * @throws org.flexwright.InvalidInputException if mu or Jm is not above 0 or C2 is negative
   */
  public GentGent {
    Require.positive("modulus mu", mu.pa(), "Pa");
    Require.positive("locking Jm", locking, "");
    Require.notNegative("C2", c2.pa(), "Pa");
  }

  /**
   * From the three constants.
   *
   * @param mu the modulus of the first term
   * @param locking Jm
   * @param c2 the constant of the second term
   * @return the law
   */
  public static GentGent of(Pressure mu, double locking, Pressure c2) {
    return new GentGent(mu, locking, c2);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double second = Invariants.logOnePlus(Invariants.second(l1, l2, l3) / 3.0);
    return Invariants.sane(
        Gent.energyAt(mu.pa(), locking, Invariants.first(l1, l2, l3)) + c2.pa() * second);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double i2 = 3.0 + Invariants.second(l1, l2, l3);
    double left = Gent.left(locking, Invariants.first(l1, l2, l3));
    Invariants.gradient(l1, l2, l3, 0.5 * mu.pa() / left, c2.pa() / i2, out);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double i2 = 3.0 + Invariants.second(l1, l2, l3);
    double left = Gent.left(locking, Invariants.first(l1, l2, l3));
    double w1 = 0.5 * mu.pa() / left;
    double w2 = c2.pa() / i2;
    Invariants.hessian(l1, l2, l3, w1, w2, w1 / (locking * left), -w2 / i2, out);
  }

  @Override
  public double shearModulus() {
    return mu.pa() + 2.0 / 3.0 * c2.pa();
  }

  /**
   * The stretch above 1 at which the law locks.
   *
   * @param mode the deformation
   * @return the stretch at which the stress is infinite
   */
  public double lockingStretch(Deformation mode) {
    return Locking.stretch(mode, locking);
  }

  @Override
  public StretchRange range() {
    return Locking.range(Locking.SAFE * locking, "95 % of locking", SOURCE);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Gent-Gent law, mu "
        + Text.number(mu.mpa())
        + " MPa, Jm "
        + Text.number(locking)
        + ", C2 "
        + Text.number(c2.mpa())
        + " MPa";
  }
}
