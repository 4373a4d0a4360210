package org.flexwright.shells.inflate;

/**
 * The linear theory of a cylinder built in at both ends and held in length, under pressure: a beam
 * on an elastic foundation, free or pressed against a rigid bore.
 *
 * <p>D w'''' + (E t/R^2) w = p - nu N/R, w = w' = 0 at the ends, with N = nu E t wm/[(1 - nu^2) R]
 * the axial tension that the held length gives (wm mean of w). Lengths in units of 1/b, b = [3 (1 -
 * nu^2)]^(1/4)/sqrt(R t); deflections over the gap; pressures over that of the long tube which just
 * closes the gap, q = (1 - nu^2) rho + nu^2 wm/gap.
 */
final class HeldEnds {

  private final double length;
  private final double nu2;

  /**
   * A sleeve.
   *
   * @param length b L
   * @param poisson nu
   */
  HeldEnds(double length, double poisson) {
    this.length = length;
    this.nu2 = poisson * poisson;
  }

  /** Deflection of the middle over that without ends and without held length, 1 - 2 [..]/(..). */
  static double middle(double length) {
    double h = 0.5 * length;
    // divided by sinh of the whole length, e^-h kept explicit so that long sleeves do not overflow
    double e = Math.exp(-h);
    double cosh = 0.5 * (1.0 + e * e);
    double sinh = 0.5 * (1.0 - e * e);
    double below = 0.5 * (1.0 - Math.pow(e, 4)) + e * e * Math.sin(length);
    if (length < 0.05) {
      return Math.pow(length, 4) / 96.0;
    }
    return 1.0 - 2.0 * e * (cosh * Math.sin(h) + sinh * Math.cos(h)) / below;
  }

  /** Mean deflection over that without ends. */
  static double mean(double length) {
    if (length < 0.05) {
      return Math.pow(length, 4) / 180.0;
    }
    double e = Math.exp(-length);
    double up = 0.5 * (1.0 + e * e) - e * Math.cos(length);
    double below = 0.5 * (1.0 - e * e) + e * Math.sin(length);
    return 1.0 - 2.0 / length * up / below;
  }

  /** Curvature at the ends in units of 2 b^2 times the deflection without ends. */
  static double endCurvature(double length) {
    if (length < 0.05) {
      return length * length / 6.0;
    }
    double e = Math.exp(-length);
    double half = 0.5 * (1.0 - e * e);
    return (half - e * Math.sin(length)) / (half + e * Math.sin(length));
  }

  /** Pressure at which the middle touches, over that of the long tube. */
  double touch() {
    return (1.0 - nu2 + nu2 * mean(length)) / middle(length);
  }

  /** Curvature at the ends when the middle touches, in b^2 gap. */
  double touchCurvature() {
    return 2.0 * endCurvature(length) / middle(length);
  }

  /** The longest free layer: half the sleeve, or that of a contact without pressure. */
  double longestFree() {
    return Math.min(0.5 * length, Math.PI * (1.0 - 1e-9));
  }

  /** The pressure, over that of the long tube, that leaves free layers of this length. */
  double pressure(double free) {
    Layer layer = new Layer(free);
    double missing = 2.0 / length * (free - layer.area);
    return (1.0 - nu2) * layer.rho + nu2 * (1.0 - missing);
  }

  /** Curvature at the ends, in b^2 gap, with free layers of this length. */
  double curvature(double free) {
    return new Layer(free).curvature;
  }

  /** Contact length in units of 1/b. */
  double contact(double free) {
    return length - 2.0 * free;
  }

  /**
   * One free layer between the built-in end (w = w' = 0) and the edge of the contact (w = gap, w' =
   * w'' = 0), by Krylov's functions from the edge: w = rho + (1 - rho) K1 + 4 (1 - rho)
   * K4(free)/K3( free) K4.
   */
  private static final class Layer {
    /** Local pressure over the foundation's at the gap, above 1. */
    final double rho;

    /** Integral of the deflection. */
    final double area;

    final double curvature;

    Layer(double x) {
      if (x < 0.05) { // a beam without foundation, exact to x^4
        rho = 18.0 / Math.pow(x, 4);
        area = 0.6 * x;
        curvature = 12.0 / (x * x);
        return;
      }
      double ch = Math.cosh(x);
      double sh = Math.sinh(x);
      double c = Math.cos(x);
      double s = Math.sin(x);
      double k1 = ch * c;
      double k2 = 0.5 * (ch * s + sh * c);
      double k3 = 0.5 * sh * s;
      double k4 = 0.25 * (ch * s - sh * c);
      double h = k1 + 4.0 * k4 * k4 / k3;
      rho = h / (h - 1.0);
      double c4 = 4.0 * (1.0 - rho) * k4 / k3;
      area = rho * x + (1.0 - rho) * k2 + 0.25 * c4 * (1.0 - k1);
      curvature = (1.0 - rho) * -4.0 * k3 + c4 * k2;
    }
  }
}
