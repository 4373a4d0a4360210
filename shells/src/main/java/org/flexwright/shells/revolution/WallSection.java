package org.flexwright.shells.revolution;

import org.flexwright.law.StrainEnergy;

/**
 * The energy of a wall per length of meridian and per radian, by the five strains of its
 * mid-surface, with first and second derivatives.
 *
 * <p>Strains, in the order of the derivatives: stretch e across the director, curvature k = f',
 * radius r, sine q = sin f of the director's angle f, shear g along the director.
 *
 * <p>A layer at reference depth d moves to depth y such that each part of the wall keeps its
 * volume: int_0^y (e - t k)(r - t q) dt = int_0^d (1 - t K)(R - t Q) dt, a cubic in y. Its
 * stretches are u = (e - y k)/(1 - d K), v = (r - y q)/(R - d Q) and g/(1 - d K). Gauss points
 * through the wall keep the metric (1 - d K)(R - d Q).
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class WallSection {

  static final int STRAINS = 5;
  private static final int E = 0;
  private static final int K = 1;
  private static final int R = 2;
  private static final int Q = 3;
  private static final int G = 4;
  private static final int MOST = 30;
  private static final double ENOUGH = 1e-6;
  private static final double CLOSE = 1e-8;

  private final PlaneStretch layer;
  private final Layers rest;

  // slopes and curvatures of a face's depth by e, k, r, q
  private final double[] gyy = new double[4];
  final double[] dy = new double[4];
  final double[] depthCurved = new double[16];
  double depth;

  final double[] first = new double[STRAINS];
  final double[] second = new double[STRAINS * STRAINS];
  private final double[] ys;
  private final double[] us;
  private final double[] vs;
  private final double[] js;

  WallSection(StrainEnergy law, Layers rest) {
    layer = new PlaneStretch(law);
    this.rest = rest;
    ys = new double[rest.count];
    us = new double[rest.count];
    vs = new double[rest.count];
    js = new double[rest.count];
  }

  /**
   * Evaluates the section of an element.
   *
   * <p>Depth is a fifth variable of the layer, bound to the four strains by its volume; the second
   * derivatives are those of the energy less the bound times its multiplier. Only the upper half of
   * the second derivatives is filled. One long method on purpose: its sums stay in registers.
   *
   * @return whether the section can exist and the law gives it an energy
   */
  boolean at(int element, double e, double k, double r, double q, double g) {
    double fe = 0.0;
    double fk = 0.0;
    double fr = 0.0;
    double fq = 0.0;
    double fg = 0.0;
    double ee = 0.0;
    double ek = 0.0;
    double er = 0.0;
    double eq = 0.0;
    double eg = 0.0;
    double kk = 0.0;
    double kr = 0.0;
    double kq = 0.0;
    double kg = 0.0;
    double rr = 0.0;
    double rq = 0.0;
    double rg = 0.0;
    double qq = 0.0;
    double qg = 0.0;
    double gg = 0.0;
    if (!settle(element, e, k, r, q)) {
      return false;
    }
    PlaneStretch l = layer;
    int n = rest.count;
    for (int g0 = 0; g0 < n; g0++) {
      int i = element * n + g0;
      double y = ys[g0];
      double eu = us[g0];
      double rv = vs[g0];
      double pu = rest.along[i];
      double pv = rest.around[i];
      double j = js[g0];
      l.at(eu * pu, rv * pv, g * pu, j * rest.metric[i]);
      double weight = rest.weight[i];
      double wu = weight * l.u * pu;
      double wv = weight * l.v * pv;
      double wuu = weight * l.uu * pu * pu;
      double wuv = weight * l.uv * pu * pv;
      double wvv = weight * l.vv * pv * pv;
      double half = 0.5 * y * y;
      double third = y * y * y * (1.0 / 3.0);
      // slopes of the depth
      double ye = -(r * y - q * half) * j;
      double yk = -(q * third - r * half) * j;
      double yr = -(e * y - k * half) * j;
      double yq = -(k * third - e * half) * j;
      // slopes of e - y k and r - y q
      double ue = 1.0 - k * ye;
      double uk = -y - k * yk;
      double ur = -k * yr;
      double uq = -k * yq;
      double ve = -q * ye;
      double vk = -q * yk;
      double vr = 1.0 - q * yr;
      double vq = -y - q * yq;
      fe += wu * ue + wv * ve;
      fk += wu * uk + wv * vk;
      fr += wu * ur + wv * vr;
      fq += wu * uq + wv * vq;
      fg += weight * l.s * pu;
      // multiplier of the bound, and half of what its curvature adds by each strain
      double m = (wu * k + wv * q) * j;
      double bend = -0.5 * m * (k * rv + q * eu);
      double ze = m * rv + bend * ye;
      double zk = -m * y * rv + bend * yk - wu;
      double zr = m * eu + bend * yr;
      double zq = -m * y * eu + bend * yq - wv;
      double ae = wuu * ue + wuv * ve;
      double be = wuv * ue + wvv * ve;
      ee += ae * ue + be * ve + 2.0 * ze * ye;
      ek += ae * uk + be * vk + ze * yk + zk * ye;
      er += ae * ur + be * vr + ze * yr + zr * ye + m * y;
      eq += ae * uq + be * vq + ze * yq + zq * ye - m * half;
      double ak = wuu * uk + wuv * vk;
      double bk = wuv * uk + wvv * vk;
      kk += ak * uk + bk * vk + 2.0 * zk * yk;
      kr += ak * ur + bk * vr + zk * yr + zr * yk - m * half;
      kq += ak * uq + bk * vq + zk * yq + zq * yk + m * third;
      double ar = wuu * ur + wuv * vr;
      double br = wuv * ur + wvv * vr;
      rr += ar * ur + br * vr + 2.0 * zr * yr;
      rq += ar * uq + br * vq + zr * yq + zq * yr;
      double aq = wuu * uq + wuv * vq;
      double bq = wuv * uq + wvv * vq;
      qq += aq * uq + bq * vq + 2.0 * zq * yq;
      double wus = weight * l.us * pu * pu;
      double wvs = weight * l.vs * pv * pu;
      eg += wus * ue + wvs * ve;
      kg += wus * uk + wvs * vk;
      rg += wus * ur + wvs * vr;
      qg += wus * uq + wvs * vq;
      gg += weight * l.ss * pu * pu;
    }
    first[E] = fe;
    first[K] = fk;
    first[R] = fr;
    first[Q] = fq;
    first[G] = fg;
    double[] s = second;
    s[0] = ee;
    s[1] = ek;
    s[2] = er;
    s[3] = eq;
    s[4] = eg;
    s[6] = kk;
    s[7] = kr;
    s[8] = kq;
    s[9] = kg;
    s[12] = rr;
    s[13] = rq;
    s[14] = rg;
    s[18] = qq;
    s[19] = qg;
    s[24] = gg;
    return Math.abs(fe) + Math.abs(fr) + Math.abs(ee) + Math.abs(rr) + Math.abs(gg)
        < Double.MAX_VALUE;
  }

  /** The energy of the section of an element; infinite where it cannot exist. */
  double energy(int element, double e, double k, double r, double q, double g) {
    if (!settle(element, e, k, r, q)) {
      return Double.POSITIVE_INFINITY;
    }
    double sum = 0.0;
    for (int n = 0; n < rest.count; n++) {
      int i = element * rest.count + n;
      double p = rest.along[i];
      double w = js[n] * rest.metric[i];
      sum += rest.weight[i] * layer.energy(us[n] * p, vs[n] * rest.around[i], g * p, w);
    }
    return sum;
  }

  private boolean settle(int element, double e, double k, double r, double q) {
    double c0 = e * r;
    double c1 = 0.5 * (e * q + k * r);
    double c2 = k * q / 3.0;
    double start = 1.0 / c0;
    double curve = c1 * start;
    double cube = 2.0 * curve * curve - c2 * start;
    boolean fine = true;
    int n = rest.count;
    for (int g = 0; g < n; g++) {
      double volume = rest.volume[element * n + g];
      double x = volume * start;
      double y = x * (1.0 + x * (curve + x * cube));
      double eu = e - y * k;
      double rv = r - y * q;
      for (int pass = 0; pass < MOST; pass++) {
        double inverse = 1.0 / (eu * rv);
        double step = (y * (c0 - y * (c1 - y * c2)) - volume) * inverse;
        y -= step * (1.0 - 0.5 * step * (k * rv + q * eu) * inverse);
        eu = e - y * k;
        rv = r - y * q;
        if (Math.abs(step) <= ENOUGH * Math.abs(y)) {
          break; // cubic: the error left is below the last digit
        }
      }
      ys[g] = y;
      us[g] = eu;
      vs[g] = rv;
      js[g] = 1.0 / (eu * rv);
      fine &= eu > 0.0 && rv > 0.0;
    }
    return fine;
  }

  /** The depth of a layer that keeps the volume between it and the mid-surface. */
  private static double depth(double volume, double e, double k, double r, double q) {
    double c0 = e * r;
    double c1 = 0.5 * (e * q + k * r);
    double c2 = k * q / 3.0;
    double y = volume / c0;
    for (int i = 0; i < MOST; i++) {
      double step = (y * (c0 - y * (c1 - y * c2)) - volume) / ((e - y * k) * (r - y * q));
      y -= step;
      if (Math.abs(step) <= CLOSE * Math.abs(y)) {
        return y; // quadratic: the error left is below the last digit
      }
    }
    return y;
  }

  private void depthSlopes(double y, double eu, double rv, double e, double k, double r, double q) {
    double half = 0.5 * y * y;
    double third = y * y * y / 3.0;
    double j = 1.0 / (eu * rv);
    dy[E] = -(r * y - q * half) * j;
    dy[K] = -(q * third - r * half) * j;
    dy[R] = -(e * y - k * half) * j;
    dy[Q] = -(k * third - e * half) * j;
    gyy[E] = rv;
    gyy[K] = -y * rv;
    gyy[R] = eu;
    gyy[Q] = -y * eu;
  }

  /** Second derivative of the volume by the depth. */
  private static double bend(double eu, double rv, double k, double q) {
    return -(k * rv + q * eu);
  }

  /** Second derivative of the depth by two strains, j one over the slope of the volume by y. */
  private double depthCurvature(int a, int b, double y, double bend, double j) {
    double cross = gyy[a] * dy[b] + gyy[b] * dy[a] + bend * dy[a] * dy[b] + mixed(a, b, y);
    return -cross * j;
  }

  /** Second derivative of the volume by two strains at fixed depth. */
  private static double mixed(int a, int b, double y) {
    if (a == E && b == R) {
      return y;
    }
    if ((a == E && b == Q) || (a == K && b == R)) {
      return -0.5 * y * y;
    }
    if (a == K && b == Q) {
      return y * y * y / 3.0;
    }
    return 0.0;
  }

  /** Depth of a layer with its slopes and curvatures by e, k, r, q. */
  void face(Section of, double d, double e, double k, double r, double q) {
    double y = depth(of.volume(d), e, k, r, q);
    double eu = e - y * k;
    double rv = r - y * q;
    depthSlopes(y, eu, rv, e, k, r, q);
    depth = y;
    double j = 1.0 / (eu * rv);
    double bend = bend(eu, rv, k, q);
    for (int a = 0; a < 4; a++) {
      for (int b = a; b < 4; b++) {
        double curved = depthCurvature(a, b, y, bend, j);
        depthCurved[4 * a + b] = curved;
        depthCurved[4 * b + a] = curved;
      }
    }
  }

  /** Depth, meridian stretch and hoop stretch of a layer, for output. */
  static void layerAt(Section of, double d, double e, double k, double r, double q, double[] out) {
    double y = depth(of.volume(d), e, k, r, q);
    out[0] = y;
    out[1] = (e - y * k) / (1.0 - d * of.curvature());
    out[2] = (r - y * q) / (of.radius() - d * of.sine());
  }

  /**
   * The wall at rest.
   *
   * @param thickness wall thickness
   * @param curvature of the mid-surface along the meridian, K
   * @param radius R
   * @param sine of the director's angle, Q
   */
  record Section(double thickness, double curvature, double radius, double sine) {

    /** Volume per length and radian between the mid-surface and a depth. */
    double volume(double d) {
      return d * (radius - d * (0.5 * (sine + curvature * radius) - d * curvature * sine / 3.0));
    }
  }
}
