package org.flexwright.law.classical;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Gent, which stiffens without limit as the chains are stretched out: W = -(G Jm/2) ln(1
 * - (I1 - 3)/Jm).
 *
 * <p>Symbols: I1 = sum l_i^2, G shear modulus at rest (Pa), Jm the value of I1 - 3 at which the
 * material locks. Range: to 95 % of locking in the worst deformation, 2 l^2 + l^-4 - 3 = 0.95 Jm;
 * stable up to locking. At locking and beyond the energy is infinite and there is no stress.
 * Vulcanised rubber has Jm of 30 to 100. Source: Gent 1996, Rubber Chem. Technol. 69 (from memory,
 * checked).
 *
 * <p>JShell: {@code Gent.of(mpa(0.27), 85)}
 *
 * @param shear the shear modulus at rest, above 0
 * @param locking Jm, above 0
 */
public record Gent(Pressure shear, double locking) implements StrainEnergy {

  private static final double SAFE = 0.95;
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

  /** One minus (I1 - 3)/Jm: 1 at rest, 0 at locking. */
  private double left(double l1, double l2, double l3) {
    return 1.0 - (l1 * l1 + l2 * l2 + l3 * l3 - 3.0) / locking;
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double left = left(l1, l2, l3);
    return left > 0.0 ? -0.5 * shear.pa() * locking * Math.log(left) : Double.POSITIVE_INFINITY;
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double left = left(l1, l2, l3);
    double f = left > 0.0 ? shear.pa() / left : Double.POSITIVE_INFINITY;
    out[0] = f * l1;
    out[1] = f * l2;
    out[2] = f * l3;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double left = left(l1, l2, l3);
    double f = left > 0.0 ? shear.pa() / left : Double.POSITIVE_INFINITY;
    double k = left > 0.0 ? 2.0 * f / (locking * left) : Double.POSITIVE_INFINITY;
    out[0] = f + k * l1 * l1;
    out[1] = f + k * l2 * l2;
    out[2] = f + k * l3 * l3;
    out[3] = k * l1 * l2;
    out[4] = k * l1 * l3;
    out[5] = k * l2 * l3;
  }

  @Override
  public double shearModulus() {
    return shear.pa();
  }

  @Override
  public StretchRange range() {
    double most = SAFE * locking;
    double high =
        new BrentSolver(1e-14, 1e-14)
            .solve(
                200,
                l -> 2.0 * l * l + Math.pow(l, -4) - 3.0 - most,
                1.0,
                Math.sqrt(0.5 * most + 1.5));
    return new StretchRange(1.0 / (high * high), high, "95 % of locking", SOURCE);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Gent law, G " + Text.number(shear.mpa()) + " MPa, Jm " + Text.number(locking);
  }
}
