package org.flexwright.law;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;

/**
 * How stable a law is: the least eigenvalue of its second derivative in two independent logarithmic
 * strains at constant volume, positive where the law is stable (Drucker, Hill).
 *
 * <p>Formula: W(e1, e2, -e1 - e2) with e_i = ln l_i; stable where its Hessian is positive definite.
 * Not thread-safe: it keeps work space. Source: Hill 1958, J. Mech. Phys. Solids 6 (from memory);
 * the scan is ours.
 *
 * <p>JShell: {@code Stability.range(MooneyRivlin.of(mpa(0.3), mpa(0.05)))}
 */
public final class Stability {

  /** The stretch to which a law is looked at. */
  public static final double FARTHEST = 20.0;

  private static final double STEP = 1.02;
  private static final int ITERATIONS = 200;

  private final StrainEnergy law;
  private final double[] g = new double[3];
  private final double[] h = new double[6];

  Stability(StrainEnergy law) {
    this.law = law;
  }

  /** The least eigenvalue in a state. */
  double least(double l1, double l2, double l3) {
    law.gradient(l1, l2, l3, g);
    law.hessian(l1, l2, l3, h);
    double d11 = h[0] * l1 * l1 + g[0] * l1;
    double d22 = h[1] * l2 * l2 + g[1] * l2;
    double d33 = h[2] * l3 * l3 + g[2] * l3;
    double d12 = h[3] * l1 * l2;
    double d13 = h[4] * l1 * l3;
    double d23 = h[5] * l2 * l3;
    double a = d11 - 2 * d13 + d33;
    double b = d22 - 2 * d23 + d33;
    double c = d12 - d13 - d23 + d33;
    return 0.5 * (a + b) - Math.hypot(0.5 * (a - b), c);
  }

  /**
   * The least stiffness of a law in one state: the least eigenvalue named above.
   *
   * @param law the law
   * @param l1 first principal stretch, above 0
   * @param l2 second principal stretch, above 0
   * @param l3 third principal stretch, above 0
   * @return the stiffness in pascals, above 0 where the law is stable; minus infinity where the law
   *     has no state
   */
  public static double leastStiffness(StrainEnergy law, double l1, double l2, double l3) {
    double least = new Stability(law).least(l1, l2, l3);
    return Double.isFinite(least) ? least : Double.NEGATIVE_INFINITY;
  }

  /** The stretch at which one deformation loses its stability, FARTHEST if none does before. */
  double limit(Deformation mode) {
    UnivariateFunction least =
        stretch -> {
          double[] l = mode.stretches(stretch);
          return least(l[0], l[1], l[2]);
        };
    for (double low = 1.0; low < FARTHEST; low *= STEP) {
      double high = Math.min(FARTHEST, low * STEP);
      if (!(least.value(high) > 0.0)) {
        return new BrentSolver(1e-13, 1e-12).solve(ITERATIONS, least, low, high);
      }
    }
    return FARTHEST;
  }

  /**
   * The stretches in which all three deformations are stable.
   *
   * @param law the law
   * @return the range, to a stretch of {@link #FARTHEST} at most
   */
  public static StretchRange range(StrainEnergy law) {
    Stability stability = new Stability(law);
    double high = FARTHEST;
    for (Deformation mode : Deformation.values()) {
      high = Math.min(high, stability.limit(mode));
    }
    // a hair inside: at the limit itself the least stiffness is zero
    high *= 1.0 - 1e-9;
    return new StretchRange(
        1.0 / (high * high),
        high,
        "stable in tension, shear and inflation",
        Source.derived("scan of the second derivative in logarithmic strains"));
  }
}
