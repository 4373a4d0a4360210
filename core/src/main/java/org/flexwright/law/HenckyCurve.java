package org.flexwright.law;

import java.util.Arrays;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * The law of a grade known by one stress curve: W = f(e_eq) with f' the true stress of a uniaxial
 * test.
 *
 * <p>Symbols: h_i = ln l_i less their mean, e_eq = sqrt(2/3 sum h_i^2) (equal to the Hencky strain
 * in a uniaxial test), s(e) true stress (Pa) through the given points. The curve between the points
 * is a choice, stated here: ln s is a monotone piecewise cubic in ln e (slopes after Fritsch and
 * Butland 1984); below the first point the material is linear, beyond the last the curve goes on
 * with its end slope. Since s rises with e, f is convex and increasing, hence W is convex in the
 * logarithmic strains: stable in the sense of Hill on every path by construction. For a stretch
 * that is 0, negative or not finite energy and derivatives are infinite.
 *
 * <p>That one curve serves every state of stretch is an assumption until a biaxial test confirms
 * it.
 *
 * <p>JShell: {@code HenckyCurve.through(new double[] {0.01, 0.4}, new Pressure[] {mpa(0.8),
 * mpa(13)})}
 */
public final class HenckyCurve implements StrainEnergy {

  private static final String STRAIN = "equivalent strain";
  private static final double REST = 1e-12;
  // four Gauss points on each of eight parts of an interval: 1e-13 of the energy on our curves
  private static final double[] GAUSS_X = {
    -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
  };
  private static final double[] GAUSS_W = {
    0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
  };
  private static final int PARTS = 8;

  private final double[] x; // ln strain
  private final double[] y; // ln stress
  private final double[] m; // slopes dy/dx
  private final double[] energyAt;
  private final double young;

  private HenckyCurve(double[] strain, double[] stress) {
    int n = strain.length;
    x = new double[n];
    y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = Math.log(strain[i]);
      y[i] = Math.log(stress[i]);
    }
    m = slopes(x, y);
    young = stress[0] / strain[0];
    energyAt = new double[n];
    energyAt[0] = 0.5 * young * strain[0] * strain[0];
    for (int i = 1; i < n; i++) {
      energyAt[i] = energyAt[i - 1] + integral(strain[i - 1], strain[i]);
    }
  }

  /**
   * The law through points of a uniaxial test, tension taken for compression too.
   *
   * @param strain Hencky strains ln l, above 0 and rising, at least two, the first in the linear
   *     range
   * @param stress true stresses at these strains, above 0 and rising
   * @return the law
   * @throws org.flexwright.InvalidInputException if the points do not rise
   */
  public static HenckyCurve through(double[] strain, Pressure[] stress) {
    Require.that(
        strain.length == stress.length && strain.length >= 2,
        "points of the stress curve",
        strain.length + " strains and " + stress.length + " stresses",
        "two points or more, as many strains as stresses",
        "");
    double[] s = new double[stress.length];
    for (int i = 0; i < s.length; i++) {
      s[i] = Require.positive("stress of point " + (i + 1), stress[i].pa(), "Pa");
      Require.positive("strain of point " + (i + 1), strain[i], "");
      if (i > 0) {
        Require.that(
            strain[i] > strain[i - 1] && s[i] > s[i - 1],
            "point " + (i + 1) + " of the stress curve",
            Text.number(s[i]) + " Pa at " + Text.number(strain[i]),
            "strain and stress above those of the point before",
            "check the order and the units of the points");
      }
    }
    return new HenckyCurve(strain.clone(), s);
  }

  @Override
  public HenckyCurve scaled(double factor) {
    Require.positive("stress factor", factor, "");
    double[] strain = new double[x.length];
    double[] stress = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      strain[i] = Math.exp(x[i]);
      stress[i] = Math.exp(y[i]) * factor;
    }
    return new HenckyCurve(strain, stress);
  }

  /**
   * The true stress of the curve.
   *
   * @param strain equivalent Hencky strain, not negative
   * @return f' in pascals
   * @throws org.flexwright.InvalidInputException if the strain is negative or not finite
   */
  public double stress(double strain) {
    Require.notNegative(STRAIN, strain, "");
    double u = Math.log(strain);
    return u <= x[0] ? young * strain : Math.exp(logStress(u));
  }

  /**
   * The slope of the curve.
   *
   * @param strain equivalent Hencky strain, not negative
   * @return f'' in pascals
   * @throws org.flexwright.InvalidInputException if the strain is negative or not finite
   */
  public double tangent(double strain) {
    Require.notNegative(STRAIN, strain, "");
    double u = Math.log(strain);
    return u <= x[0] ? young : Math.exp(logStress(u)) * logSlope(u) / strain;
  }

  /**
   * The energy under the curve.
   *
   * @param strain equivalent Hencky strain, not negative
   * @return f in pascals
   * @throws org.flexwright.InvalidInputException if the strain is negative or not finite
   */
  public double energy(double strain) {
    Require.notNegative(STRAIN, strain, "");
    double first = Math.exp(x[0]);
    if (strain <= first) {
      return 0.5 * young * strain * strain;
    }
    int i = interval(Math.log(strain));
    return energyAt[i] + integral(Math.exp(x[i]), strain);
  }

  private double integral(double from, double to) {
    double sum = 0.0;
    double a = Math.log(from);
    double half = 0.5 * (Math.log(to) - a) / PARTS;
    for (int k = 0; k < PARTS; k++) {
      double mid = a + (2 * k + 1) * half;
      for (int g = 0; g < GAUSS_X.length; g++) {
        double u = mid + half * GAUSS_X[g];
        sum += GAUSS_W[g] * half * Math.exp(u + logStress(u));
      }
    }
    return sum;
  }

  private int interval(double u) {
    int i = Arrays.binarySearch(x, u);
    return i >= 0 ? i : Math.max(0, -i - 2);
  }

  private double logStress(double u) {
    int n = x.length - 1;
    if (u >= x[n]) {
      return y[n] + m[n] * (u - x[n]);
    }
    int i = interval(u);
    double h = x[i + 1] - x[i];
    double t = (u - x[i]) / h;
    double d = y[i + 1] - y[i];
    return y[i]
        + t
            * (h * m[i]
                + t * (3 * d - h * (2 * m[i] + m[i + 1]) + t * (h * (m[i] + m[i + 1]) - 2 * d)));
  }

  private double logSlope(double u) {
    int n = x.length - 1;
    if (u >= x[n]) {
      return m[n];
    }
    int i = interval(u);
    double h = x[i + 1] - x[i];
    double t = (u - x[i]) / h;
    double d = y[i + 1] - y[i];
    return m[i]
        + t * (2 * (3 * d / h - 2 * m[i] - m[i + 1]) + t * 3 * (m[i] + m[i + 1] - 2 * d / h));
  }

  private static double[] slopes(double[] x, double[] y) {
    int n = x.length;
    double[] d = new double[n - 1];
    for (int i = 0; i < n - 1; i++) {
      d[i] = (y[i + 1] - y[i]) / (x[i + 1] - x[i]);
    }
    double[] m = new double[n];
    // slope 1 joins the linear start; three times the chord keeps the piece monotone
    m[0] = Math.min(1.0, 3.0 * d[0]);
    m[n - 1] = d[n - 2];
    for (int i = 1; i < n - 1; i++) {
      double h0 = x[i] - x[i - 1];
      double h1 = x[i + 1] - x[i];
      double w = (h0 + 2 * h1) / (3 * (h0 + h1));
      m[i] = d[i - 1] * d[i] / (w * d[i] + (1 - w) * d[i - 1]);
    }
    return m;
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double a = Math.log(l1);
    double b = Math.log(l2);
    double c = Math.log(l3);
    double mean = (a + b + c) / 3.0;
    double e = equivalent(a - mean, b - mean, c - mean);
    return Double.isNaN(e) ? Double.POSITIVE_INFINITY : energy(e);
  }

  private static double equivalent(double a, double b, double c) {
    return Math.sqrt(2.0 / 3.0 * (a * a + b * b + c * c));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    double a = Math.log(l1);
    double b = Math.log(l2);
    double c = Math.log(l3);
    double mean = (a + b + c) / 3.0;
    a -= mean;
    b -= mean;
    c -= mean;
    double e = equivalent(a, b, c);
    if (Double.isNaN(e)) { // a stretch that is 0, negative or not finite
      Arrays.fill(out, 0, 3, Double.POSITIVE_INFINITY);
      return;
    }
    double k = 2.0 / 3.0 * secant(e);
    out[0] = k * a / l1;
    out[1] = k * b / l2;
    out[2] = k * c / l3;
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    double a = Math.log(l1);
    double b = Math.log(l2);
    double c = Math.log(l3);
    double mean = (a + b + c) / 3.0;
    a -= mean;
    b -= mean;
    c -= mean;
    double e = equivalent(a, b, c);
    if (Double.isNaN(e)) {
      Arrays.fill(out, 0, 6, Double.POSITIVE_INFINITY);
      return;
    }
    double sec = secant(e);
    double k = 2.0 / 3.0 * sec;
    double q = e < REST ? 0.0 : 4.0 / 9.0 * (tangent(e) - sec) / (e * e);
    double on = 2.0 / 3.0 * k;
    double off = -k / 3.0;
    // twice divided: the square of a tiny stretch would be 0
    out[0] = (on + q * a * a - k * a) / l1 / l1;
    out[1] = (on + q * b * b - k * b) / l2 / l2;
    out[2] = (on + q * c * c - k * c) / l3 / l3;
    out[3] = (off + q * a * b) / l1 / l2;
    out[4] = (off + q * a * c) / l1 / l3;
    out[5] = (off + q * b * c) / l2 / l3;
  }

  /**
   * The secant of the curve, stress over strain; the modulus that a closed form uses.
   *
   * @param strain equivalent Hencky strain, not negative
   * @return the secant modulus in pascals
   * @throws org.flexwright.InvalidInputException if the strain is negative or not finite
   */
  public double secant(double strain) {
    Require.notNegative(STRAIN, strain, "");
    return strain <= Math.exp(x[0]) ? young : stress(strain) / strain;
  }

  @Override
  public double shearModulus() {
    return young / 3.0;
  }

  @Override
  public StretchRange range() {
    double end = Math.exp(Math.exp(x[x.length - 1]));
    return new StretchRange(
        1.0 / end, end, "data of the stress curve", Source.derived("last point of the curve"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HenckyCurve c && Arrays.equals(x, c.x) && Arrays.equals(y, c.y);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(x) + Arrays.hashCode(y);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Hencky-strain law of one stress curve, secant "
        + Text.number(young * 1e-6)
        + " MPa at rest, "
        + Text.number(secant(0.1) * 1e-6)
        + " MPa at 10 %";
  }
}
