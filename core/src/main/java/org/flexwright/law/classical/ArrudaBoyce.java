package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Arruda and Boyce, eight chains of rigid segments in a cube: W = mu N [x y + ln(x/sinh
 * x)], less its value at rest, with the inverse of Langevin's function taken exactly.
 *
 * <p>Symbols: y = sqrt(I1/(3 N)) the part of its length to which a chain is stretched, x with coth
 * x - 1/x = y, I1 = sum l_i^2, mu = n k T the modulus of the network (Pa), N the segments of a
 * chain; G = (mu/3) sqrt(N) x(1/sqrt(N)), a little above mu. dW/dI1 = mu x/(6 y).
 *
 * <p>Range: to 95 % of locking in the worst deformation, 2 l^2 + l^-4 - 3 = 0.95 (3 N - 3); stable
 * up to locking at I1 = 3 N. At locking and beyond energy and stress are infinite. The law knows no
 * I2: fitted to tension it is too soft in inflation. Vulcanised rubber has N of 20 to 30. Source:
 * Arruda and Boyce 1993, J. Mech. Phys. Solids 41 (from memory, checked).
 *
 * <p>JShell: {@code ArrudaBoyce.of(mpa(0.27), 26.5)}
 *
 * @param network mu, above 0
 * @param segments N, above 1
 */
public record ArrudaBoyce(Pressure network, double segments) implements StrainEnergy {

  private static final Source SOURCE =
      Source.memory("Arruda and Boyce 1993, J. Mech. Phys. Solids 41");

  /**
   * Refuses constants that make no sense.
   *
   * @param network mu, above 0
   * @param segments N, above 1
   * @throws org.flexwright.InvalidInputException if mu is not above 0 or N not above 1
   */
  public ArrudaBoyce {
    Require.positive("network modulus", network.pa(), "Pa");
    Require.positive("segments of a chain less 1", segments - 1.0, "");
  }

  /**
   * From both constants.
   *
   * @param network mu
   * @param segments N
   * @return the law
   */
  public static ArrudaBoyce of(Pressure network, double segments) {
    return new ArrudaBoyce(network, segments);
  }

  /** The part of its length to which a chain is stretched, 1 at locking. */
  private double part(double excess) {
    return Math.sqrt((3.0 + excess) / (3.0 * segments));
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double excess = Invariants.first(l1, l2, l3);
    double y = part(excess);
    return y < 1.0
        ? network.pa() * segments * InverseLangevin.work(part(0.0), y, excess / (3.0 * segments))
        : Double.POSITIVE_INFINITY;
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    Invariants.gradient(l1, l2, l3, first(part(Invariants.first(l1, l2, l3))), out);
  }

  /** dW/dI1. */
  private double first(double y) {
    return network.pa() / 6.0 * InverseLangevin.ratio(y);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double y = part(Invariants.first(l1, l2, l3));
    double ratio = InverseLangevin.ratio(y);
    double w11 = network.pa() / (18.0 * segments) * InverseLangevin.ratioSlope(ratio, y);
    Invariants.hessian(l1, l2, l3, network.pa() / 6.0 * ratio, w11, out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * first(part(0.0));
  }

  /**
   * The stretch above 1 at which the law locks.
   *
   * @param mode the deformation
   * @return the stretch at which the stress is infinite
   */
  public double lockingStretch(Deformation mode) {
    return Locking.stretch(mode, 3.0 * (segments - 1.0));
  }

  @Override
  public StretchRange range() {
    return Locking.range(Locking.SAFE * 3.0 * (segments - 1.0), "95 % of locking", SOURCE);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Arruda-Boyce law, network modulus "
        + Text.number(network.mpa())
        + " MPa, "
        + Text.number(segments)
        + " segments of a chain";
  }
}
