package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The extended tube law of Kaliske and Heinrich, a network with chains held in tubes by their
 * neighbours: W = Gc/2 [(1 - d^2) D/(1 - d^2 D) + ln(1 - d^2 D)] + 2 Ge/b^2 (l1^-b + l2^-b + l3^-b
 * - 3) with D = I1 - 3.
 *
 * <p>Symbols: I1 = sum l_i^2, Gc modulus of the crosslinks (Pa), Ge modulus of the tubes (Pa), b =
 * beta the release of the tubes, d = delta how short the chains are; G = Gc (1 - 2 d^2) + Ge. The
 * first term makes the law lock at D = 1/d^2. Of the laws here it follows Treloar's three curves of
 * 1944 best. Start from both moduli, then set {@link #beta} and {@link #delta}.
 *
 * <p>Range: to 95 % of locking in the worst deformation, 2 l^2 + l^-4 - 3 = 0.95/d^2, everywhere
 * for d = 0; stable up to locking, as both terms are convex in the logarithmic strains. At locking
 * and beyond energy and stress are infinite. The authors take beta from 0 to 1. Source: Kaliske and
 * Heinrich 1999, Rubber Chem. Technol. 72 (form read in the manual of an open finite-element
 * library; modulus checked).
 *
 * <p>JShell: {@code ExtendedTube.of(mpa(0.1867), mpa(0.2169)).beta(0.2).delta(0.09693)}
 *
 * @param crosslinks Gc, not negative
 * @param tubes Ge, not negative, not zero together with Gc
 * @param beta the release of the tubes, 0.001 to 20
 * @param delta how short the chains are, from 0 to below sqrt(1/2)
 */
public record ExtendedTube(Pressure crosslinks, Pressure tubes, double beta, double delta)
    implements StrainEnergy {

  private static final double USUAL_BETA = 0.2;
  private static final double USUAL_DELTA = 0.1;
  private static final double MOST_DELTA = 0.7071;
  // the slopes of the second term go as 1/beta and cancel: below, they would lose their digits
  private static final double LEAST_BETA = 1e-3;
  private static final double MOST_BETA = 20.0;
  // locks at a stretch of 1e8: nothing of the chains is left to tell it from 0
  private static final double LEAST_DELTA = 1e-8;
  private static final Source SOURCE =
      Source.memory("Kaliske and Heinrich 1999, Rubber Chem. Technol. 72");
  private static final StretchRange EVERYWHERE =
      new StretchRange(1e-3, 1e3, "stable everywhere", Source.derived("no locking for delta 0"));

  /**
   * Refuses constants that make the law unstable.
   *
   * @param crosslinks Gc, not negative
   * @param tubes Ge, not negative, not zero together with Gc
   * @param beta the release of the tubes, 0.001 to 20
   * @param delta how short the chains are, from 0 to below sqrt(1/2)
   * @throws org.flexwright.InvalidInputException if a modulus is negative or both are zero, beta is
   *     outside 0.001 to 20 or delta outside 0 to 0.7071
   */
  public ExtendedTube {
    Require.notNegative("modulus Gc of the crosslinks", crosslinks.pa(), "Pa");
    Require.notNegative("modulus Ge of the tubes", tubes.pa(), "Pa");
    Require.positive("Gc + Ge", crosslinks.pa() + tubes.pa(), "Pa");
    Require.between("beta", beta, LEAST_BETA, MOST_BETA, "");
    Require.between("delta", delta, 0.0, MOST_DELTA, "");
    Require.that(
        delta == 0.0 || delta >= LEAST_DELTA, "delta", delta, "0, or 1e-8 to 0.7071", "take 0");
  }

  /**
   * From both moduli, with beta 0.2 and delta 0.1 as found for vulcanised natural rubber.
   *
   * @param crosslinks Gc
   * @param tubes Ge
   * @return the law
   */
  public static ExtendedTube of(Pressure crosslinks, Pressure tubes) {
    return new ExtendedTube(crosslinks, tubes, USUAL_BETA, USUAL_DELTA);
  }

  /**
   * This law with another release of the tubes.
   *
   * @param value beta, 0.001 to 20
   * @return the new law
   */
  public ExtendedTube beta(double value) {
    return new ExtendedTube(crosslinks, tubes, value, delta);
  }

  /**
   * This law with chains of another length.
   *
   * @param value delta, from 0 to below sqrt(1/2)
   * @return the new law
   */
  public ExtendedTube delta(double value) {
    return new ExtendedTube(crosslinks, tubes, beta, value);
  }

  /** One minus d^2 D: 1 at rest, plus 0 at locking and beyond. */
  private double left(double excess) {
    double left = 1.0 - delta * delta * excess;
    return left > 0.0 ? left : 0.0;
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double excess = Invariants.first(l1, l2, l3);
    double left = left(excess);
    if (left == 0.0) {
      return Double.POSITIVE_INFINITY;
    }
    double d2 = delta * delta;
    double chains = (1.0 - d2) * excess / left + Invariants.logOnePlus(-d2 * excess);
    double held =
        Invariants.grown(-beta * Math.log(l1))
            + Invariants.grown(-beta * Math.log(l2))
            + Invariants.grown(-beta * Math.log(l3));
    return Invariants.sane(
        0.5 * crosslinks.pa() * chains + 2.0 * tubes.pa() / (beta * beta) * held);
  }

  /** dW/dI1 of the first term. */
  private double first(double excess, double left) {
    double d2 = delta * delta;
    return 0.5 * crosslinks.pa() * (1.0 - 2.0 * d2 + d2 * d2 * excess) / (left * left);
  }

  /** Minus l^(-b - 1) 2 Ge/b, the slope of the second term. */
  private double held(double stretch) {
    return -2.0 * tubes.pa() / beta * Math.exp(-beta * Math.log(stretch)) / stretch;
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double excess = Invariants.first(l1, l2, l3);
    Invariants.gradient(l1, l2, l3, first(excess, left(excess)), out);
    out[0] = Invariants.sane(out[0] + held(l1));
    out[1] = Invariants.sane(out[1] + held(l2));
    out[2] = Invariants.sane(out[2] + held(l3));
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double excess = Invariants.first(l1, l2, l3);
    double left = left(excess);
    double w1 = first(excess, left);
    double d2 = delta * delta;
    double w11 = d2 * (0.5 * crosslinks.pa() * d2 / (left * left) + 2.0 * w1 / left);
    Invariants.hessian(l1, l2, l3, w1, w11, out);
    out[0] = Invariants.sane(out[0] - (1.0 + beta) * held(l1) / l1);
    out[1] = Invariants.sane(out[1] - (1.0 + beta) * held(l2) / l2);
    out[2] = Invariants.sane(out[2] - (1.0 + beta) * held(l3) / l3);
  }

  @Override
  public double shearModulus() {
    return crosslinks.pa() * (1.0 - 2.0 * delta * delta) + tubes.pa();
  }

  /**
   * The stretch above 1 at which the law locks.
   *
   * @param mode the deformation
   * @return the stretch at which the stress is infinite, infinite itself for delta 0
   */
  public double lockingStretch(Deformation mode) {
    return Locking.stretch(mode, 1.0 / (delta * delta));
  }

  @Override
  public StretchRange range() {
    return delta == 0.0
        ? EVERYWHERE
        : Locking.range(Locking.SAFE / (delta * delta), "95 % of locking", SOURCE);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "extended tube law, Gc "
        + Text.number(crosslinks.mpa())
        + " MPa, Ge "
        + Text.number(tubes.mpa())
        + " MPa, beta "
        + Text.number(beta)
        + ", delta "
        + Text.number(delta);
  }
}
