package org.flexwright.shells.revolution;

import java.util.Arrays;
import org.apache.commons.math3.analysis.interpolation.HermiteInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.internal.Require;

/**
 * A curve given by any parameter, made to run by its arc length: Gauss quadrature over a fine
 * table, quintic Hermite polynomials back to the parameter. Immutable.
 */
final class Bow implements Curve {

  private static final int POINTS = 8;
  private static final double SLOWEST = 1e-6;

  /** A curve by a parameter. */
  interface Track {
    /** Radius, height, their first and their second derivatives. */
    double[] at(double u);
  }

  private final Track track;
  private final double[] knots; // arc length
  private final double[] angles; // unwrapped, at the knots
  private final PolynomialSplineFunction parameter;
  private final double[] joints;
  private final double sharpest;
  private final double first; // parameter
  private final double last;

  /**
   * A curve.
   *
   * @param track the curve by its parameter
   * @param table parameters from the start to the end, fine enough for a quintic between
   * @param each places of the table from one kink of the curvature to the next
   * @param heading the angle before it, to which the first angle is near
   */
  Bow(Track track, double[] table, int each, double heading) {
    this.track = track;
    first = table[0];
    last = table[table.length - 1];
    knots = new double[table.length];
    angles = new double[table.length];
    double[] speed = new double[table.length];
    PolynomialFunction[] back = new PolynomialFunction[table.length - 1];
    double most = 0.0;
    double[] before = track.at(table[0]);
    for (int i = 0; i < table.length; i++) {
      double[] d = track.at(table[i]);
      speed[i] = Math.hypot(d[2], d[3]);
      angles[i] = Spot.near(Math.atan2(d[3], d[2]), i == 0 ? heading : angles[i - 1]);
      most = Math.max(most, Math.abs(curvature(d)));
      if (i > 0) {
        double step = arc(table[i - 1], table[i]);
        knots[i] = knots[i - 1] + step;
        back[i - 1] = back(step, table[i - 1], before, table[i], d);
      }
      before = d;
    }
    joints = new double[(table.length - 2) / each];
    Arrays.setAll(joints, i -> knots[(i + 1) * each]);
    double mean = length() / (last - first);
    double slowest = Arrays.stream(speed).min().orElse(0.0);
    Require.that(
        slowest > SLOWEST * mean,
        "curve",
        "a curve with a cusp",
        "points that the curve passes in turn",
        "give points nearer to each other");
    parameter = new PolynomialSplineFunction(knots, back);
    sharpest = most;
  }

  /** The parameter by the arc length from one place of the table to the next. */
  private static PolynomialFunction back(
      double step, double u0, double[] from, double u1, double[] to) {
    HermiteInterpolator quintic = new HermiteInterpolator();
    quintic.addSamplePoint(0.0, alone(u0), slope(from), bend(from));
    quintic.addSamplePoint(step, alone(u1), slope(to), bend(to));
    return quintic.getPolynomials()[0];
  }

  private static double[] alone(double u) {
    return new double[] {u};
  }

  /** First derivative of the parameter by arc length. */
  private static double[] slope(double[] d) {
    return new double[] {1.0 / Math.hypot(d[2], d[3])};
  }

  /** Second derivative of the parameter by arc length. */
  private static double[] bend(double[] d) {
    double v2 = d[2] * d[2] + d[3] * d[3];
    return new double[] {-(d[2] * d[4] + d[3] * d[5]) / (v2 * v2)};
  }

  private static double curvature(double[] d) {
    double v = Math.hypot(d[2], d[3]);
    return (d[2] * d[5] - d[3] * d[4]) / (v * v * v);
  }

  private double arc(double from, double to) {
    double[] x = Gauss.points(POINTS);
    double[] w = Gauss.weights(POINTS);
    double half = 0.5 * (to - from);
    double sum = 0.0;
    for (int i = 0; i < POINTS; i++) {
      double[] d = track.at(from + half * (1.0 + x[i]));
      sum += w[i] * Math.hypot(d[2], d[3]);
    }
    return half * sum;
  }

  @Override
  public double length() {
    return knots[knots.length - 1];
  }

  @Override
  public Spot at(double s) {
    double inside = Math.min(Math.max(s, 0.0), length());
    double u = Math.min(Math.max(parameter.value(inside), first), last);
    double[] d = track.at(u);
    int i = Arrays.binarySearch(knots, inside);
    double near = angles[i >= 0 ? i : -i - 2];
    return new Spot(d[0], d[1], Spot.near(Math.atan2(d[3], d[2]), near), curvature(d));
  }

  @Override
  public double sharpest() {
    return sharpest;
  }

  @Override
  public double[] joints() {
    return joints.clone();
  }
}
