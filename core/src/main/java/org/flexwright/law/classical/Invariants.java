package org.flexwright.law.classical;

/**
 * The two invariants of a law in principal stretches, and the chain rule from its derivatives by
 * them to those by the stretches.
 *
 * <p>Symbols: J1 = I1 - 3 = sum (2 e_i + e_i^2) with e_i = l_i - 1, J2 = I2 - 3 = 2 J1 + sum over
 * pairs (l_i^2 - 1)(l_j^2 - 1). A double near 1 less 1 is exact, and so is the sum of these, hence
 * J1 and J2 keep all digits near rest, where I1 - 3 loses them. w1 = dW/dI1, w2 = dW/dI2, w11, w12,
 * w22 the second derivatives.
 *
 * <p>Whatever is not a number (a sum of opposite infinities, a stretch that is not a number) comes
 * out as plus infinity.
 */
final class Invariants {

  // below it 1 - q and e^t - 1 would lose a digit
  private static final double NEAR = 0.1;

  private Invariants() {}

  /** I1 - 3. */
  static double first(double l1, double l2, double l3) {
    double a = l1 - 1.0;
    double b = l2 - 1.0;
    double c = l3 - 1.0;
    return 2.0 * (a + b + c) + a * a + b * b + c * c;
  }

  /** I2 - 3. */
  static double second(double l1, double l2, double l3) {
    double a = (l1 - 1.0) * (l1 + 1.0);
    double b = (l2 - 1.0) * (l2 + 1.0);
    double c = (l3 - 1.0) * (l3 + 1.0);
    return 2.0 * first(l1, l2, l3) + a * b + b * c + c * a;
  }

  /** First derivatives of W(I1). */
  static void gradient(double l1, double l2, double l3, double w1, double[] out) {
    out[0] = sane(2.0 * l1 * w1);
    out[1] = sane(2.0 * l2 * w1);
    out[2] = sane(2.0 * l3 * w1);
  }

  /** First derivatives of W(I1, I2). */
  static void gradient(double l1, double l2, double l3, double w1, double w2, double[] out) {
    double a = l1 * l1;
    double b = l2 * l2;
    double c = l3 * l3;
    out[0] = sane(2.0 * l1 * (w1 + w2 * (b + c)));
    out[1] = sane(2.0 * l2 * (w1 + w2 * (a + c)));
    out[2] = sane(2.0 * l3 * (w1 + w2 * (a + b)));
  }

  /** Second derivatives of W(I1). */
  static void hessian(double l1, double l2, double l3, double w1, double w11, double[] out) {
    double f = 2.0 * w1;
    double k = 4.0 * w11;
    out[0] = sane(f + k * l1 * l1);
    out[1] = sane(f + k * l2 * l2);
    out[2] = sane(f + k * l3 * l3);
    out[3] = sane(k * l1 * l2);
    out[4] = sane(k * l1 * l3);
    out[5] = sane(k * l2 * l3);
  }

  /** Second derivatives of f(I1) + g(I2), which has no mixed one. */
  static void hessian(
      double l1, double l2, double l3, double w1, double w2, double w11, double w22, double[] out) {
    hessian(l1, l2, l3, w1, w2, w11, 0.0, w22, out);
  }

  /** Second derivatives of W(I1, I2). */
  static void hessian(
      double l1,
      double l2,
      double l3,
      double w1,
      double w2,
      double w11,
      double w12,
      double w22,
      double[] out) {
    double a = l1 * l1;
    double b = l2 * l2;
    double c = l3 * l3;
    double p = b + c;
    double q = a + c;
    double r = a + b;
    out[0] = sane(2.0 * (w1 + w2 * p) + 4.0 * a * (w11 + p * (2.0 * w12 + w22 * p)));
    out[1] = sane(2.0 * (w1 + w2 * q) + 4.0 * b * (w11 + q * (2.0 * w12 + w22 * q)));
    out[2] = sane(2.0 * (w1 + w2 * r) + 4.0 * c * (w11 + r * (2.0 * w12 + w22 * r)));
    out[3] = sane(4.0 * l1 * l2 * (w2 + w11 + w12 * (p + q) + w22 * p * q));
    out[4] = sane(4.0 * l1 * l3 * (w2 + w11 + w12 * (p + r) + w22 * p * r));
    out[5] = sane(4.0 * l2 * l3 * (w2 + w11 + w12 * (q + r) + w22 * q * r));
  }

  /** The value, plus infinity for what is not a number. */
  static double sane(double value) {
    return Double.isNaN(value) ? Double.POSITIVE_INFINITY : value;
  }

  /** ln(1 + q) without loss near 0. */
  static double logOnePlus(double q) {
    return Math.abs(q) < NEAR ? Math.log1p(q) : Math.log(1.0 + q);
  }

  /** e^t - 1 without loss near 0. */
  static double grown(double t) {
    return Math.abs(t) < NEAR ? Math.expm1(t) : Math.exp(t) - 1.0;
  }
}
