package org.flexwright.shells.wall;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The inextensible cantilever of length 1 and bending stiffness 1 under a dead end force f across
 * it, by the angle a of its tip: curvature^2 = 2 f (sin a - sin p), sqrt(f) = I[1], travel = I[sin
 * p]/I[1], with I[g] the integral of g/sqrt(2 (sin a - sin p)) over p from 0 to a.
 *
 * @param angle the tip angle
 * @param force f, force times length squared over bending stiffness
 * @param travel travel across over the length
 * @param approach what the tip loses along the length, over the length
 * @param root the curvature at the root
 * @param working energy-weighted mean curvature over that of the root
 */
record TipElastica(
    double angle, double force, double travel, double approach, double root, double working) {

  /** The largest tip angle: the force grows beyond all bounds at a right angle. */
  static final double MOST = Math.toRadians(89.0);

  // 32 Gauss points after p = a (1 - s^2): 1e-13 of the integrals up to 89 degrees
  private static final double[] S = new double[32];
  private static final double[] W = new double[32];

  static {
    var gauss = new GaussIntegratorFactory().legendre(32, 0.0, 1.0);
    for (int i = 0; i < 32; i++) {
      S[i] = gauss.getPoint(i);
      W[i] = gauss.getWeight(i);
    }
  }

  /** The state with a tip angle from above 0 to {@link #MOST}. */
  static TipElastica ofAngle(double a) {
    double one = 0.0;
    double up = 0.0;
    double along = 0.0;
    double squares = 0.0;
    double cubes = 0.0;
    for (int i = 0; i < S.length; i++) {
      double half = 0.5 * a * S[i] * S[i];
      double p = a - 2.0 * half;
      double drop = 4.0 * Math.cos(a - half) * Math.sin(half); // 2 (sin a - sin p)
      double dp = 2.0 * a * S[i] * W[i];
      double ds = dp / Math.sqrt(drop);
      one += ds;
      up += ds * Math.sin(p);
      along += ds * 2.0 * Math.sin(0.5 * p) * Math.sin(0.5 * p);
      squares += dp * Math.sqrt(drop);
      cubes += dp * drop;
    }
    double top = Math.sqrt(2.0 * Math.sin(a));
    return new TipElastica(a, one * one, up / one, along / one, one * top, cubes / (squares * top));
  }

  /** The state with a travel from above 0 to that of {@link #MOST}. */
  static TipElastica ofTravel(double travel) {
    // angle over travel is 3/2 at rest and grows to 1.76 at the end
    double high = Math.min(1.9, MOST / travel);
    double q =
        new BrentSolver(1e-14, 1e-14)
            .solve(100, r -> ofAngle(r * travel).travel / travel - 1.0, 1.49, high);
    return ofAngle(q * travel);
  }
}
