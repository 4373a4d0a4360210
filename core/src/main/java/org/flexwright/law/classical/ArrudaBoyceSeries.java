package org.flexwright.law.classical;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The series of five terms of the law of Arruda and Boyce: W = mu sum C_i (I1^i - 3^i)/N^(i-1) with
 * C = 1/2, 1/20, 11/1050, 19/7000, 519/673750.
 *
 * <p>Symbols: I1 = sum l_i^2, mu = n k T the modulus of the network (Pa), N the segments of a
 * chain; G = mu (1 + 3/(5 N) + 99/(175 N^2) + 513/(875 N^3) + 42039/(67375 N^4)).
 *
 * <p>Range: to chains at 70 % of their length in the worst deformation, 2 l^2 + l^-4 = 1.47 N,
 * where the series is 2.4 % softer than {@link ArrudaBoyce}; beyond, it does not lock. With N =
 * 26.5 its tension is 0.26 % low at a stretch of 5, 1.7 % at 6, 8.5 % at 7. Take the exact law
 * unless a source gives constants for the series. Stable at every stretch. Source: Arruda and Boyce
 * 1993, J. Mech. Phys. Solids 41 (from memory, checked).
 *
 * <p>JShell: {@code ArrudaBoyceSeries.of(mpa(0.27), 26.5)}
 *
 * @param network mu, above 0
 * @param segments N, above 1
 */
public record ArrudaBoyceSeries(Pressure network, double segments) implements StrainEnergy {

  private static final double[] C = {
    1.0 / 2.0, 1.0 / 20.0, 11.0 / 1050.0, 19.0 / 7000.0, 519.0 / 673750.0
  };
  private static final double CLOSE = 0.7;
  private static final Source SOURCE =
      Source.derived("series against the exact law, 2.4 % at 70 % of the length");

  /**
   * Refuses constants that make no sense.
   *
   * @param network mu, above 0
   * @param segments N, above 1
   * @throws org.flexwright.InvalidInputException if mu is not above 0 or N not above 1
   */
  public ArrudaBoyceSeries {
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
  public static ArrudaBoyceSeries of(Pressure network, double segments) {
    return new ArrudaBoyceSeries(network, segments);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double excess = Invariants.first(l1, l2, l3);
    double t = (3.0 + excess) / segments;
    double t0 = 3.0 / segments;
    double sum = 0.0;
    double power = 1.0; // t0^i
    double mixed = 1.0; // (t^(i+1) - t0^(i+1))/(t - t0)
    for (double c : C) {
      sum += c * mixed;
      power *= t0;
      mixed = mixed * t + power;
    }
    return Invariants.sane(network.pa() * excess * sum);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    Invariants.gradient(l1, l2, l3, first(Invariants.first(l1, l2, l3)), out);
  }

  /** dW/dI1. */
  private double first(double excess) {
    double t = (3.0 + excess) / segments;
    double sum = 0.0;
    for (int i = C.length; i > 0; i--) {
      sum = sum * t + i * C[i - 1];
    }
    return network.pa() * sum;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double excess = Invariants.first(l1, l2, l3);
    double t = (3.0 + excess) / segments;
    double sum = 0.0;
    for (int i = C.length; i > 1; i--) {
      sum = sum * t + i * (i - 1) * C[i - 1];
    }
    Invariants.hessian(l1, l2, l3, first(excess), network.pa() / segments * sum, out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * first(0.0);
  }

  @Override
  public StretchRange range() {
    double excess = 3.0 * (CLOSE * CLOSE * segments - 1.0);
    return Locking.range(excess, "series within 2.4 % of the exact law", SOURCE);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Arruda-Boyce series of 5 terms, network modulus "
        + Text.number(network.mpa())
        + " MPa, "
        + Text.number(segments)
        + " segments of a chain";
  }
}
