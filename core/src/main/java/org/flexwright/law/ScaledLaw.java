package org.flexwright.law;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A law with every energy multiplied by the same number, its shape unchanged; what {@link
 * StrainEnergy#scaled} makes of a law that has no form of its own for it.
 *
 * @param of the law
 * @param factor the number, above 0
 */
public record ScaledLaw(StrainEnergy of, double factor) implements StrainEnergy {

  /**
   * Refuses a factor that leaves no law.
   *
   * @param of the law
   * @param factor the number, above 0
   * @throws org.flexwright.InvalidInputException if the factor is not above 0, or so far from 1
   *     that no modulus is left
   */
  public ScaledLaw {
    Require.positive("stress factor", factor, "");
    Require.positive("shear modulus times the factor", factor * of.shearModulus(), "Pa");
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return factor * of.energy(l1, l2, l3);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    of.gradient(l1, l2, l3, out);
    for (int i = 0; i < 3; i++) {
      out[i] *= factor;
    }
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    of.hessian(l1, l2, l3, out);
    for (int i = 0; i < 6; i++) {
      out[i] *= factor;
    }
  }

  @Override
  public void derivatives(double l1, double l2, double l3, double[] gradient, double[] hessian) {
    of.derivatives(l1, l2, l3, gradient, hessian);
    for (int i = 0; i < 3; i++) {
      gradient[i] *= factor;
    }
    for (int i = 0; i < 6; i++) {
      hessian[i] *= factor;
    }
  }

  @Override
  public double shearModulus() {
    return factor * of.shearModulus();
  }

  @Override
  public StrainEnergy scaled(double by) {
    return new ScaledLaw(of, factor * Require.positive("stress factor", by, ""));
  }

  @Override
  public StretchRange range() {
    return of.range();
  }

  @Override
  public String toString() {
    return of + ", times " + Text.number(factor);
  }
}
