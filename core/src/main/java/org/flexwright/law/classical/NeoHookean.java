package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The neo-Hookean law, W = G/2 (l1^2 + l2^2 + l3^2 - 3).
 *
 * <p>Symbols: G shear modulus at rest (Pa). Stable at every stretch. Real vulcanised rubber follows
 * it to about 50 % in tension; polyurethane does not (use the grade's own curve). Source: Treloar,
 * The Physics of Rubber Elasticity (from memory).
 *
 * <p>JShell: {@code NeoHookean.of(mpa(0.4))}
 *
 * @param shear the shear modulus at rest, above 0
 */
public record NeoHookean(Pressure shear) implements StrainEnergy {

  private static final StretchRange RANGE =
      new StretchRange(
          1e-3, 1e3, "stable everywhere", Source.derived("positive definite for G above 0"));

  /**
   * Refuses a modulus that is not positive.
   *
   * @param shear the shear modulus at rest, above 0
   * @throws org.flexwright.InvalidInputException if the modulus is zero or negative
   */
  public NeoHookean {
    org.flexwright.internal.Require.positive("shear modulus", shear.pa(), "Pa");
  }

  /**
   * From the shear modulus.
   *
   * @param shear the shear modulus at rest
   * @return the law
   */
  public static NeoHookean of(Pressure shear) {
    return new NeoHookean(shear);
  }

  /**
   * From Young's modulus, G = E/3.
   *
   * @param young Young's modulus at rest
   * @return the law
   */
  public static NeoHookean ofYoung(Pressure young) {
    return new NeoHookean(young.times(1.0 / 3.0));
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return Invariants.sane(0.5 * shear.pa() * Invariants.first(l1, l2, l3));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double g = shear.pa();
    out[0] = Invariants.sane(g * l1);
    out[1] = Invariants.sane(g * l2);
    out[2] = Invariants.sane(g * l3);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double g = shear.pa();
    out[0] = g;
    out[1] = g;
    out[2] = g;
    out[3] = 0.0;
    out[4] = 0.0;
    out[5] = 0.0;
  }

  @Override
  public double shearModulus() {
    return shear.pa();
  }

  @Override
  public StretchRange range() {
    return RANGE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "neo-Hookean law, G " + Text.number(shear.mpa()) + " MPa";
  }
}
