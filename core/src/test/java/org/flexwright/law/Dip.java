package org.flexwright.law;

import org.flexwright.evidence.Source;

/**
 * A law of x = I1 - 3 whose slope W1 has a bell-shaped dip at x = 2, which makes it unstable over a
 * short piece only, for tests. G is 1 Pa.
 */
record Dip() implements StrainEnergy {

  private static final double AT = 2.0;
  private static final double WIDE = 1.5;
  private static final double DEEP = 0.5525;

  private static double bell(double x) {
    double u = (x - AT) / WIDE;
    return Math.exp(-u * u);
  }

  private static double first(double x) {
    return 0.5 - 0.5 * DEEP * bell(x);
  }

  private static double second(double x) {
    return DEEP * (x - AT) / (WIDE * WIDE) * bell(x);
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    throw new UnsupportedOperationException("not asked for");
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double f = 2 * first(l1 * l1 + l2 * l2 + l3 * l3 - 3);
    out[0] = f * l1;
    out[1] = f * l2;
    out[2] = f * l3;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double x = l1 * l1 + l2 * l2 + l3 * l3 - 3;
    double f = 2 * first(x);
    double s = 4 * second(x);
    out[0] = f + s * l1 * l1;
    out[1] = f + s * l2 * l2;
    out[2] = f + s * l3 * l3;
    out[3] = s * l1 * l2;
    out[4] = s * l1 * l3;
    out[5] = s * l2 * l3;
  }

  @Override
  public double shearModulus() {
    return 1;
  }

  @Override
  public StretchRange range() {
    return new StretchRange(0.5, 2, "of the test", Source.assumption("of the test"));
  }
}
