package org.flexwright.condition;

import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * A law below the largest energy it has borne: F(W) with F' = eta, so gradient eta grad W and
 * second derivatives eta H + eta' grad W grad W. F is convex and rises, so it is stable where W is.
 */
public final class SoftenedLaw implements StrainEnergy {

  private final StrainEnergy virgin;
  private final OgdenRoxburgh softening;
  private final double largest;
  private final double width;
  private final double whole;
  private final double shear;

  SoftenedLaw(StrainEnergy virgin, OgdenRoxburgh softening, double largest) {
    this.virgin = virgin;
    this.softening = softening;
    this.largest = largest;
    width = softening.width(largest);
    whole = ErrorFunction.integral(largest / width);
    shear = virgin.shearModulus() * share(0.0);
  }

  /** {@return the law without softening} */
  public StrainEnergy virgin() {
    return virgin;
  }

  /** {@return the law of softening} */
  public OgdenRoxburgh softening() {
    return softening;
  }

  /** {@return the largest energy borne so far} */
  public Pressure largest() {
    return Pressure.pa(largest);
  }

  private double share(double w) {
    return w >= largest ? 1.0 : 1.0 - ErrorFunction.at((largest - w) / width) / softening.r();
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double w = virgin.energy(l1, l2, l3);
    double left = w >= largest ? 0.0 : ErrorFunction.integral((largest - w) / width);
    return w - width / softening.r() * (whole - left);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    virgin.gradient(l1, l2, l3, out);
    double w = virgin.energy(l1, l2, l3);
    if (w >= largest) {
      return;
    }
    double eta = share(w);
    out[0] *= eta;
    out[1] *= eta;
    out[2] *= eta;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double w = virgin.energy(l1, l2, l3);
    if (w >= largest) {
      virgin.hessian(l1, l2, l3, out);
      return;
    }
    // the first three of the six places serve the gradient: nothing is allocated
    virgin.gradient(l1, l2, l3, out);
    double a = out[0];
    double b = out[1];
    double c = out[2];
    virgin.hessian(l1, l2, l3, out);
    double eta = share(w);
    double x = (largest - w) / width;
    double rise = ErrorFunction.slope(x) / (width * softening.r());
    out[0] = eta * out[0] + rise * a * a;
    out[1] = eta * out[1] + rise * b * b;
    out[2] = eta * out[2] + rise * c * c;
    out[3] = eta * out[3] + rise * a * b;
    out[4] = eta * out[4] + rise * a * c;
    out[5] = eta * out[5] + rise * b * c;
  }

  @Override
  public double shearModulus() {
    return shear;
  }

  @Override
  public StretchRange range() {
    return virgin.range();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return virgin + ", conditioned to " + Text.number(largest * 1e-6) + " MPa, " + softening;
  }
}
