package org.flexwright.law;

import java.util.Arrays;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;
import org.jspecify.annotations.Nullable;

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
  // on parts over which strain and stress together change by a factor of e: 1e-12 of the energy
  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(8);
  private static final double FARTHEST = 20.0;
  private static final double APART = 1.0 + 1e-9;

  private final double[] strain;
  private final double[] stress;
  private final double[] x; // ln strain
  private final double[][] piece; // ln stress from each point on, a cubic in ln strain
  private final double[] energyAt;
  private final double young;

  private HenckyCurve(double[] strain, double[] stress) {
    this.strain = strain;
    this.stress = stress;
    int n = strain.length;
    x = new double[n];
    double[] y = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = Math.log(strain[i]);
      y[i] = Math.log(stress[i]);
    }
    piece = pieces(x, y);
    young = stress[0] / strain[0];
    energyAt = new double[n];
    energyAt[0] = 0.5 * young * strain[0] * strain[0];
    for (int i = 1; i < n; i++) {
      energyAt[i] = energyAt[i - 1] + integral(i - 1, strain[i]);
    }
    Require.positive("modulus at rest of the stress curve", young, "Pa");
    Require.positive("energy under the stress curve", energyAt[n - 1], "Pa");
  }

  /**
   * The law through points of a uniaxial test, tension taken for compression too.
   *
   * @param strain Hencky strains ln l, above 0, at most 20 and rising, at least two, the first in
   *     the linear range
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
      Require.that(
          strain[i] <= FARTHEST,
          "strain of point " + (i + 1),
          strain[i],
          "at most " + Text.number(FARTHEST),
          "a Hencky strain is the logarithm of the stretch");
      if (i > 0) {
        Require.that(
            strain[i] > strain[i - 1] * APART && s[i] > s[i - 1],
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
    double[] scaled = stress.clone();
    for (int i = 0; i < scaled.length; i++) {
      scaled[i] *= factor;
    }
    return new HenckyCurve(strain, scaled);
  }

  /**
   * The strains of the points, from which and {@link #stresses} the same law can be made again.
   *
   * @return a fresh array of Hencky strains
   */
  public double[] strains() {
    return strain.clone();
  }

  /**
   * The true stresses of the points.
   *
   * @return a fresh array, one stress for each strain
   */
  public Pressure[] stresses() {
    Pressure[] of = new Pressure[stress.length];
    for (int i = 0; i < of.length; i++) {
      of[i] = Pressure.pa(stress[i]);
    }
    return of;
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
    if (strain <= this.strain[0]) {
      return young * strain;
    }
    double u = Math.log(strain);
    int i = interval(u);
    return Math.exp(value(piece[i], u - x[i]));
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
    if (strain <= this.strain[0]) {
      return young;
    }
    double u = Math.log(strain);
    int i = interval(u);
    return Math.exp(value(piece[i], u - x[i])) * slope(piece[i], u - x[i]) / strain;
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
    if (strain <= this.strain[0]) {
      return 0.5 * young * strain * strain;
    }
    int i = interval(Math.log(strain));
    return energyAt[i] + integral(i, strain);
  }

  /** The energy from a point to a strain before the next point, or beyond the last. */
  private double integral(int from, double to) {
    double[] c = piece[from];
    double end = Math.log(to) - x[from];
    if (from == x.length - 1) { // a power of the strain
      return (Math.exp(value(c, end)) * to - stress[from] * strain[from]) / (1.0 + c[1]);
    }
    int parts = 1 + (int) (end + Math.abs(value(c, end) - c[0]));
    double half = 0.5 * end / parts;
    double sum = 0.0;
    for (int k = 0; k < parts; k++) {
      double mid = (2 * k + 1) * half;
      for (int g = 0; g < GAUSS.getNumberOfPoints(); g++) {
        double t = mid + half * GAUSS.getPoint(g);
        sum += GAUSS.getWeight(g) * Math.exp(t + value(c, t));
      }
    }
    return sum * half * strain[from];
  }

  /** The point at or before a strain, by its logarithm; the last for what is not a number. */
  private int interval(double u) {
    int i = Arrays.binarySearch(x, u);
    return i >= 0 ? i : Math.max(0, -i - 2);
  }

  private static double value(double[] c, double t) {
    return c[0] + t * (c[1] + t * (c[2] + t * c[3]));
  }

  private static double slope(double[] c, double t) {
    return c[1] + t * (2.0 * c[2] + t * 3.0 * c[3]);
  }

  private static double[][] pieces(double[] x, double[] y) {
    int n = x.length - 1;
    double[] m = slopes(x, y);
    double[][] pieces = new double[n + 1][];
    for (int i = 0; i < n; i++) {
      double h = x[i + 1] - x[i];
      double d = (y[i + 1] - y[i]) / h;
      pieces[i] =
          new double[] {
            y[i], m[i], (3 * d - 2 * m[i] - m[i + 1]) / h, (m[i] + m[i + 1] - 2 * d) / (h * h)
          };
    }
    pieces[n] = new double[] {y[n], m[n], 0.0, 0.0};
    return pieces;
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
    slopes(l1, l2, l3, null, out);
  }

  @Override
  public void derivatives(double l1, double l2, double l3, double[] gradient, double[] hessian) {
    slopes(l1, l2, l3, gradient, hessian);
  }

  private void slopes(double l1, double l2, double l3, double @Nullable [] gradient, double[] out) {
    double a = Math.log(l1);
    double b = Math.log(l2);
    double c = Math.log(l3);
    double mean = (a + b + c) / 3.0;
    a -= mean;
    b -= mean;
    c -= mean;
    double e = equivalent(a, b, c);
    if (Double.isNaN(e)) { // a stretch that is 0, negative or not finite
      if (gradient != null) {
        Arrays.fill(gradient, 0, 3, Double.POSITIVE_INFINITY);
      }
      Arrays.fill(out, 0, 6, Double.POSITIVE_INFINITY);
      return;
    }
    double sec = young;
    double q = 0.0; // (f'' - f'/e)/e^2 times 4/9; zero in the linear start
    if (e > strain[0]) {
      double u = Math.log(e);
      int i = interval(u);
      sec = Math.exp(value(piece[i], u - x[i])) / e;
      q = 4.0 / 9.0 * sec * (slope(piece[i], u - x[i]) - 1.0) / (e * e);
    }
    double k = 2.0 / 3.0 * sec;
    if (gradient != null) {
      gradient[0] = k * a / l1;
      gradient[1] = k * b / l2;
      gradient[2] = k * c / l3;
    }
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
    return strain <= this.strain[0] ? young : stress(strain) / strain;
  }

  @Override
  public double shearModulus() {
    return young / 3.0;
  }

  @Override
  public StretchRange range() {
    double end = Math.exp(strain[strain.length - 1]);
    return new StretchRange(
        1.0 / end, end, "data of the stress curve", Source.derived("last point of the curve"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof HenckyCurve c
        && Arrays.equals(strain, c.strain)
        && Arrays.equals(stress, c.stress);
  }

  @Override
  public int hashCode() {
    return 31 * Arrays.hashCode(strain) + Arrays.hashCode(stress);
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
