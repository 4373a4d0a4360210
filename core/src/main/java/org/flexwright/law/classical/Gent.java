package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Gent, which stiffens without limit as the chains are stretched out: W = -(G Jm/2) ln(1
 * - (I1 - 3)/Jm).
 *
 * <p>Symbols: I1 = sum l_i^2, G shear modulus at rest (Pa), Jm the value of I1 - 3 at which the
 * material locks. Range: to 95 % of locking in the worst deformation, 2 l^2 + l^-4 - 3 = 0.95 Jm;
 * stable up to locking. At locking and beyond energy and stress are infinite. Vulcanised rubber has
 * Jm of 30 to 100. Source: Gent 1996, Rubber Chem. Technol. 69 (from memory, checked).
 *
 * <p>JShell: {@code Gent.of(mpa(0.27), 85)}
 *
 * @param shear the shear modulus at rest, above 0
 * @param locking Jm, above 0
 */
public record Gent(Pressure shear, double locking) implements StrainEnergy {

  private static final Source SOURCE = Source.memory("Gent 1996, Rubber Chem. Technol. 69");

  /**
   * Refuses constants that make no sense.
   *
   * @param shear the shear modulus at rest, above 0
   * @param locking Jm, above 0
   * @throws org.flexwright.InvalidInputException if one of them is not above 0
   */
  public Gent {
    Require.positive("shear modulus", shear.pa(), "Pa");
    Require.positive("locking Jm", locking, "");
  }

  /**
   * From both constants.
   *
   * @param shear the shear modulus at rest
   * @param locking Jm
   * @return the law
   */
  public static Gent of(Pressure shear, double locking) {
    return new Gent(shear, locking);
  }

  /** One minus (I1 - 3)/Jm: 1 at rest, plus 0 at locking and beyond. */
  static double left(double locking, double excess) {
    double left = 1.0 - excess / locking;
    return left > 0.0 ? left : 0.0;
  }

  /** The energy at a value of I1 - 3. */
  static double energyAt(double shear, double locking, double excess) {
    double part = excess / locking;
    return part < 1.0
        ? -0.5 * shear * locking * Invariants.logOnePlus(-part)
        : Double.POSITIVE_INFINITY;
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return energyAt(shear.pa(), locking, Invariants.first(l1, l2, l3));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double left = left(locking, Invariants.first(l1, l2, l3));
    Invariants.gradient(l1, l2, l3, 0.5 * shear.pa() / left, out);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double left = left(locking, Invariants.first(l1, l2, l3));
    double w1 = 0.5 * shear.pa() / left;
    Invariants.hessian(l1, l2, l3, w1, w1 / (locking * left), out);
  }

  @Override
  public double shearModulus() {
    return shear.pa();
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
    return "Gent law, G " + Text.number(shear.mpa()) + " MPa, Jm " + Text.number(locking);
  }
}
