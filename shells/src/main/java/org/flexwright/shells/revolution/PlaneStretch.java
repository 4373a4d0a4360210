package org.flexwright.shells.revolution;

import org.flexwright.law.StrainEnergy;

/**
 * The energy of one layer of a shell of revolution by its meridian stretch u, hoop stretch v and
 * shear s, at constant volume, with first and second derivatives.
 *
 * <p>In the plane of the meridian the layer deforms by [u 0; s w] with w = 1/(u v); its principal
 * stretches a, b come from the singular values. Derivatives are taken in the principal frame, where
 * a change of the off-diagonal entries costs A = (a W_a - b W_b)/(a^2 - b^2) and B = (b W_a - a
 * W_b)/(a^2 - b^2); where a and b meet their limit is taken. Only the second derivatives use A and
 * B, so that the limit, good to 1e-8, never touches the balance of forces.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class PlaneStretch {

  private static final double MEETING = 1e-4;

  private final StrainEnergy law;
  private final double[] g = new double[3];
  private final double[] h = new double[6];

  // principal stretches and the four entries of each unit change in their frame
  private double a;
  private double b;
  private double cu;
  private double su;
  private double cv;
  private double sv;

  double energy;
  double u;
  double v;
  double s;
  double uu;
  double uv;
  double vv;
  double us;
  double vs;
  double ss;

  PlaneStretch(StrainEnergy law) {
    this.law = law;
  }

  /** Energy and all derivatives; the energy is infinite where the law has none. */
  void at(double meridian, double hoop, double shear) {
    double w = 1.0 / (meridian * hoop);
    split(meridian, shear, w);
    energy = law.energy(a, hoop, b);
    law.gradient(a, hoop, b, g);
    law.hessian(a, hoop, b, h);
    double wa = g[0];
    double wb = g[2];
    // entries of the unit changes of 11, 21 and 22 in the principal frame
    double x11 = cu * cv;
    double x12 = -cu * sv;
    double x21 = -su * cv;
    double x22 = su * sv;
    double y11 = su * cv;
    double y12 = -su * sv;
    double y21 = cu * cv;
    double y22 = -cu * sv;
    double z11 = su * sv;
    double z12 = su * cv;
    double z21 = cu * sv;
    double z22 = cu * cv;
    double away = (a - b) * (a + b);
    double twist;
    double turn;
    if (Math.abs(a - b) > MEETING * (a + b)) {
      twist = (a * wa - b * wb) / away;
      turn = (b * wa - a * wb) / away;
    } else {
      double sum = a + b;
      twist = (wa + wb + a * h[0] + b * h[2] - sum * h[4]) / (2.0 * sum);
      turn = (b * h[0] + a * h[2] - sum * h[4] - wa - wb) / (2.0 * sum);
    }
    double p22 = wa * z11 + wb * z22;
    double h11 = pair(x11, x12, x21, x22, x11, x12, x21, x22, twist, turn);
    double h13 = pair(x11, x12, x21, x22, z11, z12, z21, z22, twist, turn);
    double h33 = pair(z11, z12, z21, z22, z11, z12, z21, z22, twist, turn);
    double h12 = pair(x11, x12, x21, x22, y11, y12, y21, y22, twist, turn);
    double h23 = pair(y11, y12, y21, y22, z11, z12, z21, z22, twist, turn);
    double h22 = pair(y11, y12, y21, y22, y11, y12, y21, y22, twist, turn);
    double t1 = h[3] * x11 + h[5] * x22;
    double t2 = h[3] * y11 + h[5] * y22;
    double t3 = h[3] * z11 + h[5] * z22;
    double wu = -w / meridian;
    double wv = -w / hoop;
    u = wa * x11 + wb * x22 + p22 * wu;
    v = g[1] + p22 * wv;
    s = wa * y11 + wb * y22;
    uu = h11 + 2.0 * h13 * wu + h33 * wu * wu + p22 * 2.0 * w / (meridian * meridian);
    uv = t1 + h13 * wv + t3 * wu + h33 * wu * wv + p22 * w / (meridian * hoop);
    vv = h[1] + 2.0 * t3 * wv + h33 * wv * wv + p22 * 2.0 * w / (hoop * hoop);
    us = h12 + h23 * wu;
    vs = t2 + h23 * wv;
    ss = h22;
  }

  /** The energy alone. */
  double energyAt(double meridian, double hoop, double shear) {
    split(meridian, shear, 1.0 / (meridian * hoop));
    return law.energy(a, hoop, b);
  }

  private double pair(
      double p11,
      double p12,
      double p21,
      double p22,
      double q11,
      double q12,
      double q21,
      double q22,
      double twist,
      double turn) {
    return h[0] * p11 * q11
        + h[4] * (p11 * q22 + p22 * q11)
        + h[2] * p22 * q22
        + twist * (p12 * q12 + p21 * q21)
        + turn * (p12 * q21 + p21 * q12);
  }

  /** Singular values and frames of [p 0; s t]. */
  private void split(double p, double sh, double t) {
    if (sh == 0.0) {
      a = p;
      b = t;
      cu = 1.0;
      su = 0.0;
      cv = 1.0;
      sv = 0.0;
      return;
    }
    double e = 0.5 * (p + t);
    double d = 0.5 * (p - t);
    double k = 0.5 * sh;
    double q = Math.sqrt(e * e + k * k);
    double m = Math.sqrt(d * d + k * k);
    a = q + m;
    b = q - m;
    // half angles of the turning part (e, k) and of the stretching part (d, k)
    double c2 = Math.sqrt(0.5 * (1.0 + e / q));
    double s2 = 0.5 * k / (q * c2);
    double c1;
    double s1;
    if (d >= 0.0) {
      c1 = Math.sqrt(0.5 * (1.0 + d / m));
      s1 = 0.5 * k / (m * c1);
    } else {
      s1 = Math.copySign(Math.sqrt(0.5 * (1.0 - d / m)), k);
      c1 = 0.5 * k / (m * s1);
    }
    cu = c1 * c2 - s1 * s2;
    su = s1 * c2 + c1 * s2;
    cv = c1 * c2 + s1 * s2;
    sv = s1 * c2 - c1 * s2;
  }
}
