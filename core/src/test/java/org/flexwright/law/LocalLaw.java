package org.flexwright.law;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.flexwright.evidence.Source;

/**
 * Any derivatives whatever in one state of three distinct stretches: a quadratic function of the
 * sorted stretches about that state, isotropic since it sorts, for tests. G is put to 1.
 */
final class LocalLaw implements StrainEnergy {

  final double[] at;
  private final double[] slope;
  private final double[] curvature;

  private LocalLaw(double[] at, double[] slope, double[] curvature) {
    this.at = at;
    this.slope = slope;
    this.curvature = curvature;
  }

  /** Random derivatives that meet Baker and Ericksen's inequalities. */
  static LocalLaw random(SplittableRandom random) {
    double a = Math.exp(random.nextDouble(0.1, 0.8));
    double b = Math.exp(random.nextDouble(-0.05, 0.05));
    double[] at = {a, b, 1 / (a * b)};
    double[] slope = new double[3];
    double stress = 0;
    for (int i = 2; i >= 0; i--) {
      slope[i] = stress / at[i];
      stress += random.nextDouble(0.05, 2);
    }
    double[] curvature = random.doubles(6, -3, 5).toArray();
    return new LocalLaw(at, slope, curvature);
  }

  private double[] from(double l1, double l2, double l3) {
    double[] l = {l1, l2, l3};
    Arrays.sort(l);
    return new double[] {l[2] - at[0], l[1] - at[1], l[0] - at[2]};
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double[] d = from(l1, l2, l3);
    double[] h = curvature;
    return slope[0] * d[0]
        + slope[1] * d[1]
        + slope[2] * d[2]
        + 0.5 * (h[0] * d[0] * d[0] + h[1] * d[1] * d[1] + h[2] * d[2] * d[2])
        + h[3] * d[0] * d[1]
        + h[4] * d[0] * d[2]
        + h[5] * d[1] * d[2];
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    System.arraycopy(slope, 0, out, 0, 3);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    System.arraycopy(curvature, 0, out, 0, 6);
  }

  @Override
  public double shearModulus() {
    return 1;
  }

  @Override
  public StretchRange range() {
    return new StretchRange(0.1, 10, "of the test", Source.assumption("of the test"));
  }
}
