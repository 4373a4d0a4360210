package org.flexwright.law;

/**
 * Three measures of the stiffness of a law in one state, each 1 at rest. Work space for one thread:
 * set the state, then ask.
 */
final class StateStiffness {

  private static final double ROOT12 = Math.sqrt(12.0);
  // nearer than this two stretches count as equal: the difference quotient would lose its digits
  private static final double EQUAL = 1e-5;

  private final StrainEnergy law;
  private final double shear;
  private final double[] l = new double[3];
  private final double[] g = new double[3];
  private final double[] h = new double[6];
  // second derivative on the plane of constant volume: both diagonals and the rest
  private double a;
  private double b;
  private double c;
  private double determinant;

  StateStiffness(StrainEnergy law) {
    this.law = law;
    shear = law.shearModulus();
  }

  StateStiffness at(double l1, double l2, double l3) {
    l[0] = l1;
    l[1] = l2;
    l[2] = l3;
    law.gradient(l1, l2, l3, g);
    law.hessian(l1, l2, l3, h);
    return this;
  }

  /**
   * Drucker and Hill: the least eigenvalue of the second derivative by the Hencky strains on the
   * plane of constant volume, over 2 G. In an orthonormal base of the plane, so that the order of
   * the stretches does not count.
   */
  double drucker() {
    project();
    double half = 0.5 * (a + b) + Math.hypot(0.5 * (a - b), c);
    // the difference of half the trace and the root would lose the digits of a small one
    return (half > 0.0 ? determinant / half : least(a, b, c)) / (2.0 * shear);
  }

  /** Zero where {@link #drucker} first is, but smooth where the two eigenvalues cross. */
  double smoothDrucker() {
    project();
    return a + b > 0.0 ? determinant / ((a + b) * shear) : least(a, b, c) / (2.0 * shear);
  }

  private void project() {
    double d11 = h[0] * l[0] * l[0] + g[0] * l[0];
    double d22 = h[1] * l[1] * l[1] + g[1] * l[1];
    double d33 = h[2] * l[2] * l[2] + g[2] * l[2];
    double d12 = h[3] * l[0] * l[1];
    double d13 = h[4] * l[0] * l[2];
    double d23 = h[5] * l[1] * l[2];
    a = 0.5 * (d11 + d22) - d12;
    b = (d11 + d22 + 4.0 * d33 + 2.0 * d12 - 4.0 * (d13 + d23)) / 6.0;
    c = (d11 - d22 - 2.0 * (d13 - d23)) / ROOT12;
    // a b - c^2 by minors: sums of positive numbers where no second derivative is mixed
    determinant =
        (minor(d11, d22, d33, d12, d13, d23)
                + minor(d22, d33, d11, d23, d12, d13)
                + minor(d33, d11, d22, d13, d23, d12))
            / 3.0;
  }

  /** The minor of i, j and the cofactor of i, j twice, of a symmetric matrix. */
  private static double minor(double ii, double jj, double kk, double ij, double ik, double jk) {
    return ii * jj - ij * ij + 2.0 * (ik * jk - ij * kk);
  }

  /** The least eigenvalue of dP_i/dl_j of two loaded directions, over 2 G. */
  double deadLoad() {
    return least(tangent11(), tangent22(), tangent12()) / (2.0 * shear);
  }

  double tangent11() {
    double s = -l[2] / l[0];
    return h[0] + 2.0 * s * h[4] + s * s * h[2] - 2.0 * s / l[0] * g[2];
  }

  double tangent22() {
    double s = -l[2] / l[1];
    return h[1] + 2.0 * s * h[5] + s * s * h[2] - 2.0 * s / l[1] * g[2];
  }

  double tangent12() {
    double s = -l[2] / l[0];
    double t = -l[2] / l[1];
    return h[3] + s * h[5] + t * h[4] + s * t * h[2] + l[2] / (l[0] * l[1]) * g[2];
  }

  double nominal1() {
    return g[0] - l[2] / l[0] * g[2];
  }

  double nominal2() {
    return g[1] - l[2] / l[1] * g[2];
  }

  static double least(double a, double b, double c) {
    return 0.5 * (a + b) - Math.hypot(0.5 * (a - b), c);
  }

  /**
   * Strong ellipticity: the least of the numbers that must all be above 0, over their values at
   * rest. See {@link Stability} for the formula.
   */
  double elliptic() {
    double g12 = quotient(0, 1, h[3]);
    double g13 = quotient(0, 2, h[4]);
    double g23 = quotient(1, 2, h[5]);
    // l_i^2 times the quotient: the three shear stiffnesses with the lesser stretch
    double worst = g12 * Math.pow(Math.min(l[0], l[1]), 2);
    worst = Math.min(worst, g13 * Math.pow(Math.min(l[0], l[2]), 2));
    worst = Math.min(worst, g23 * Math.pow(Math.min(l[1], l[2]), 2));
    double a11 = l[0] * l[0] * h[0];
    double a22 = l[1] * l[1] * h[1];
    double a33 = l[2] * l[2] * h[2];
    // with the same sign of y_i y_j, and with opposite signs
    double with12 = mixed(0, 1, h[3], g12);
    double with13 = mixed(0, 2, h[4], g13);
    double with23 = mixed(1, 2, h[5], g23);
    double shear12 = g12 * l[0] * l[1];
    double shear13 = g13 * l[0] * l[2];
    double shear23 = g23 * l[1] * l[2];
    double p12 = a11 + a22 - 2.0 * (with12 - shear12);
    double p13 = a11 + a33 - 2.0 * (with13 - shear13);
    double p23 = a22 + a33 - 2.0 * (with23 - shear23);
    worst = Math.min(worst, 0.25 * Math.min(p12, Math.min(p13, p23)));
    if (worst > 0.0) {
      double one = with23 + shear23 + a11 - (with12 - shear12) - (with13 - shear13);
      double two = with13 + shear13 + a22 - (with12 - shear12) - (with23 - shear23);
      double three = with12 + shear12 + a33 - (with13 - shear13) - (with23 - shear23);
      worst = Math.min(worst, 0.125 * (one + Math.sqrt(p12 * p13)));
      worst = Math.min(worst, 0.125 * (two + Math.sqrt(p12 * p23)));
      worst = Math.min(worst, 0.125 * (three + Math.sqrt(p13 * p23)));
    }
    return worst / shear;
  }

  /** (l_i W_i - l_j W_j)/(l_i^2 - l_j^2), with its limit for equal stretches. */
  private double quotient(int i, int j, double cross) {
    double sum = l[i] + l[j];
    double difference = l[i] - l[j];
    if (Math.abs(difference) > EQUAL * sum) {
      return (l[i] * g[i] - l[j] * g[j]) / (difference * sum);
    }
    return (g[i] + g[j] + l[i] * h[i] + l[j] * h[j] - sum * cross) / (2.0 * sum);
  }

  /** A_iijj + A_ijji of the tangent stiffness, symmetric in i and j. */
  private double mixed(int i, int j, double cross, double quotient) {
    double other = 0.5 * ((l[i] * l[i] + l[j] * l[j]) * quotient - l[i] * g[i] - l[j] * g[j]);
    return l[i] * l[j] * cross + other;
  }
}
