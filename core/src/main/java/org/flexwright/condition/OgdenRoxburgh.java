package org.flexwright.condition;

import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/**
 * Softening by a first cycle, the pseudo-elastic law of Ogden and Roxburgh: below the largest
 * energy borne so far the stress is a share of that of the virgin law.
 *
 * <p>Formulas: share eta = 1 - erf((Wm - W)/c)/r, c = m + beta Wm; energy given back F(W) = int_0^W
 * eta dW; loss of the cycle Wm - F(Wm) = (c/r)(x erf x + (exp(-x^2) - 1)/sqrt(pi)), x = Wm/c.
 * Symbols: W energy of the virgin law (Pa), Wm the largest so far (Pa), r above 1, m (Pa), beta.
 *
 * <p>Range: the constants belong to one material and to the strains they were fitted at. None are
 * open for polyurethane, so they are the user's. Cycles after the first lose nothing in this law.
 * What stays of the strain (set) is not in it.
 *
 * <p>Source: Ogden and Roxburgh 1999, Proc. R. Soc. A 455 (from memory); the form with beta read in
 * an encyclopedia copy; integrals derived.
 *
 * <p>JShell: {@code OgdenRoxburgh.of(2, mpa(0.5), 0.1, 1.1, source).loss(mpa(1))}
 *
 * @param r above 1: at least 1 - 1/r of the stress is left
 * @param m the energy over which the softening builds up, 1e-3 to 1e12 Pa
 * @param beta how this energy grows with the largest energy, 0 to 1e6
 * @param band how far the share may be off, at least 1
 * @param source where the constants come from
 */
public record OgdenRoxburgh(double r, Pressure m, double beta, double band, Source source) {

  /**
   * Refuses constants that make no sense.
   *
   * @param r above 1: at least 1 - 1/r of the stress is left
   * @param m the energy over which the softening builds up, 1e-3 to 1e12 Pa
   * @param beta how this energy grows with the largest energy, 0 to 1e6
   * @param band how far the share may be off, at least 1
   * @param source where the constants come from
   * @throws org.flexwright.InvalidInputException if one of them is out of its bounds
   */
  public OgdenRoxburgh {
    Require.that(r > 1.0 && Double.isFinite(r), "r of the softening", r, "finite and above 1", "");
    Require.between("m of the softening", m.pa(), 1e-3, 1e12, "Pa");
    Require.between("beta of the softening", beta, 0.0, 1e6, "");
    Require.between("band of the softening", band, 1.0, 100.0, "");
  }

  /**
   * From fitted constants.
   *
   * @param r above 1
   * @param m 1e-3 to 1e12 Pa
   * @param beta 0 to 1e6
   * @param band how far the share may be off, at least 1
   * @param source the test
   * @return the law
   * @throws org.flexwright.InvalidInputException if one of them is out of its bounds
   */
  public static OgdenRoxburgh of(double r, Pressure m, double beta, double band, Source source) {
    return new OgdenRoxburgh(r, m, beta, band, source);
  }

  /**
   * The share of the virgin stress that is left.
   *
   * @param energy the energy of the virgin law in the state asked for
   * @param largest the largest so far
   * @return eta, 1 from the largest energy on
   */
  public double share(Pressure energy, Pressure largest) {
    double end = largest(largest);
    double now = Require.notNegative("energy", energy.pa(), "Pa");
    return now >= end ? 1.0 : 1.0 - ErrorFunction.at((end - now) / width(end)) / r;
  }

  /**
   * The energy that the first cycle turns into heat: between the virgin curve up and the softened
   * one down.
   *
   * @param largest the energy at which it turns round
   * @return energy per reference volume, J/m3 as a pressure
   */
  public Pressure loss(Pressure largest) {
    double end = largest(largest);
    double c = width(end);
    return Pressure.pa(c / r * ErrorFunction.integral(end / c));
  }

  /**
   * A material conditioned by a first cycle: softened below the largest energy, virgin beyond. It
   * is stable wherever the virgin law is, since the energy given back is a convex rising function
   * of the virgin one.
   *
   * @param law the virgin law
   * @param largest the largest energy so far
   * @return the law of the conditioned material
   */
  public StrainEnergy conditioned(StrainEnergy law, Pressure largest) {
    double end = largest(largest);
    return end == 0.0 ? law : new SoftenedLaw(law, this, end);
  }

  private static double largest(Pressure largest) {
    return Require.notNegative("largest energy", largest.pa(), "Pa");
  }

  double width(double largest) {
    return m.pa() + beta * largest;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "softening, r "
        + Text.number(r)
        + ", m "
        + Text.number(m.mpa())
        + " MPa, beta "
        + Text.number(beta);
  }
}
