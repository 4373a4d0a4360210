package org.flexwright.examples.steps;

import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * A law of the user's own: W = G/(2 b) (exp(b (I1 - 3)) - 1), which stiffens fast, for soft tissue
 * and very soft elastomers. Source: Demiray 1972, J. Biomech. 5 (from memory, derivatives checked).
 */
record ExponentialLaw(Pressure shear, double b) implements StrainEnergy {

  private double slope(double l1, double l2, double l3) { // 2 dW/dI1
    return shear.pa() * Math.exp(b * (l1 * l1 + l2 * l2 + l3 * l3 - 3.0));
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return shear.pa() / (2.0 * b) * Math.expm1(b * (l1 * l1 + l2 * l2 + l3 * l3 - 3.0));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double f = slope(l1, l2, l3);
    out[0] = f * l1;
    out[1] = f * l2;
    out[2] = f * l3;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double f = slope(l1, l2, l3);
    out[0] = f * (1.0 + 2.0 * b * l1 * l1);
    out[1] = f * (1.0 + 2.0 * b * l2 * l2);
    out[2] = f * (1.0 + 2.0 * b * l3 * l3);
    out[3] = f * 2.0 * b * l1 * l2;
    out[4] = f * 2.0 * b * l1 * l3;
    out[5] = f * 2.0 * b * l2 * l3;
  }

  @Override
  public double shearModulus() {
    return shear.pa();
  }

  @Override
  public StretchRange range() {
    return Stability.range(this);
  }
}
