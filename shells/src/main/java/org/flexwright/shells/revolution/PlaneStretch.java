package org.flexwright.shells.revolution;

import org.flexwright.law.StrainEnergy;

/**
 * The energy of one layer of a shell of revolution by its meridian stretch u, hoop stretch v and
 * shear s, at constant volume, with first and second derivatives.
 *
 * <p>In the plane of the meridian the layer deforms by [u 0; s w] with w = 1/(u v). Sum and
 * difference of its principal stretches a, b are lengths: a + b = |(u + w, s)|, a - b = |(u - w,
 * s)|, so that their derivatives need no frame. A length turns at the rate one over itself; where a
 * and b meet, the difference of the stresses over that of the stretches is replaced by its limit.
 * Only the second derivatives divide by the difference, so that the limit, good to 1e-8, never
 * touches the balance of forces.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class PlaneStretch {

  private static final double MEETING = 1e-4;
  private static final double FAR = 0.8;

  private final StrainEnergy law;
  private final double[] g = new double[3];
  private final double[] h = new double[6];

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

  /** The energy, infinite where the law has none. */
  double energy(double meridian, double hoop, double shear, double across) {
    double sum = Math.hypot(meridian + across, shear);
    double a = 0.5 * (sum + Math.hypot(meridian - across, shear));
    return law.energy(a, hoop, across * meridian / a);
  }

  /**
   * All derivatives; not finite where the law has none.
   *
   * @param across the stretch through the wall at rest, w
   */
  void at(double meridian, double hoop, double shear, double across) {
    double sumX = meridian + across;
    double difX = meridian - across;
    double sum = Math.sqrt(sumX * sumX + shear * shear);
    double dif = Math.sqrt(difX * difX + shear * shear);
    double a = 0.5 * (sum + dif);
    // the difference loses digits only where one is many times the other
    double b = dif < FAR * sum ? 0.5 * (sum - dif) : across * meridian / a;
    law.derivatives(a, hoop, b, g, h);
    double bySum = 1.0 / sum;
    double byDif = dif > 0.0 ? 1.0 / dif : 0.0;
    double sc = sumX * bySum;
    double sn = shear * bySum;
    double dc = dif > 0.0 ? difX * byDif : 1.0;
    double dn = shear * byDif;
    // by sum and difference
    double ws = 0.5 * (g[0] + g[2]);
    double wd = 0.5 * (g[0] - g[2]);
    double wss = 0.25 * (h[0] + h[2]) + 0.5 * h[4];
    double wdd = 0.25 * (h[0] + h[2]) - 0.5 * h[4];
    double wsd = 0.25 * (h[0] - h[2]);
    double wsv = 0.5 * (h[3] + h[5]);
    double wdv = 0.5 * (h[3] - h[5]);
    double turnS = ws * bySum;
    double turnD = dif > MEETING * sum ? wd * byDif : wdd;
    // slopes of u + w, u - w and of w
    double wu = -across * across * hoop;
    double wv = -across * across * meridian;
    double xu = 1.0 + wu;
    double yu = 1.0 - wu;
    double su = sc * xu;
    double sv = sc * wv;
    double du = dc * yu;
    double dv = -dc * wv;
    double pu = -sn * xu;
    double pv = -sn * wv;
    double qu = -dn * yu;
    double qv = dn * wv;
    u = ws * su + wd * du;
    v = ws * sv + wd * dv + g[1];
    s = ws * sn + wd * dn;
    double au = wss * su + wsd * du;
    double bu = wsd * su + wdd * du;
    double av = wss * sv + wsd * dv + wsv;
    double bv = wsd * sv + wdd * dv + wdv;
    double push = ws * sc - wd * dc; // by w alone
    double bent = -2.0 * push * across; // times what is left of the second slopes of w
    uu = au * su + bu * du + turnS * pu * pu + turnD * qu * qu + bent * wu * hoop;
    uv = au * sv + bu * dv + wsv * su + wdv * du + turnS * pu * pv + turnD * qu * qv;
    uv += push * across * across;
    vv = av * sv + bv * dv + wsv * sv + wdv * dv + h[1] + turnS * pv * pv + turnD * qv * qv;
    vv += bent * wv * meridian;
    us = au * sn + bu * dn + turnS * pu * sc + turnD * qu * dc;
    vs = av * sn + bv * dn + turnS * pv * sc + turnD * qv * dc;
    ss = wss * sn * sn + 2.0 * wsd * sn * dn + wdd * dn * dn + turnS * sc * sc + turnD * dc * dc;
  }
}
