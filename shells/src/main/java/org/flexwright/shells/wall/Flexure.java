package org.flexwright.shells.wall;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.util.FastMath;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;

/**
 * A wide incompressible block bent into a sector of a tube by moments alone, exact for any
 * isotropic law (Rivlin 1949). With x the wall times the angle over the length, the stretches of
 * the outer and the inner face are l and 1/l, l^2 - l^-2 = 2 x, and the moment over width and wall
 * squared is m = 1/x^2 times the integral of sinh(2 e) s(e) over the Hencky strain e from 0 to ln
 * l, s the true stress in plane strain. Derived from the radial balance ds_r = s dl/l.
 */
final class Flexure {

  private static final double[] S = new double[24];
  private static final double[] W = new double[24];

  static {
    var gauss = new GaussIntegratorFactory().legendre(24, 0.0, 1.0);
    for (int i = 0; i < S.length; i++) {
      S[i] = gauss.getPoint(i);
      W[i] = gauss.getWeight(i);
    }
  }

  private Flexure() {}

  /** Hencky strain of the outer face, asinh(x)/2. */
  static double outer(double x) {
    return 0.5 * FastMath.asinh(x);
  }

  /** Nominal strain of the outer face. */
  static double strain(double x) {
    return Math.expm1(outer(x));
  }

  /** Moment over width and wall squared, in pascals. */
  static double moment(StrainEnergy law, double x) {
    if (x < 1e-5) {
      return law.youngModulus() * x / 9.0; // E' x/12 with E' = 4 E/3
    }
    double end = outer(x);
    double sum = 0.0;
    for (int i = 0; i < S.length; i++) {
      double e = end * S[i];
      double stress = Deformation.PLANAR.trueStress(law, Math.exp(e)).pa();
      sum += W[i] * Math.sinh(2.0 * e) * stress;
    }
    return sum * end / (x * x);
  }
}
