package org.flexwright.law;

import org.flexwright.evidence.Source;

/** W = c1 x + c2 x^2 + c3 x^3 with x = I1 - 3, for tests; constants in pascals. */
record FirstInvariant(double c1, double c2, double c3) implements StrainEnergy {

  double first(double i1) {
    double x = i1 - 3;
    return c1 + 2 * c2 * x + 3 * c3 * x * x;
  }

  double second(double i1) {
    return 2 * c2 + 6 * c3 * (i1 - 3);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double x = l1 * l1 + l2 * l2 + l3 * l3 - 3;
    return x * (c1 + x * (c2 + x * c3));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double f = 2 * first(l1 * l1 + l2 * l2 + l3 * l3);
    out[0] = f * l1;
    out[1] = f * l2;
    out[2] = f * l3;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double f = 2 * first(l1 * l1 + l2 * l2 + l3 * l3);
    double s = 4 * second(l1 * l1 + l2 * l2 + l3 * l3);
    out[0] = f + s * l1 * l1;
    out[1] = f + s * l2 * l2;
    out[2] = f + s * l3 * l3;
    out[3] = s * l1 * l2;
    out[4] = s * l1 * l3;
    out[5] = s * l2 * l3;
  }

  @Override
  public double shearModulus() {
    return 2 * c1;
  }

  @Override
  public StretchRange range() {
    return new StretchRange(0.5, 2, "of the test", Source.assumption("of the test"));
  }
}
