package org.flexwright.shells.revolution;

import java.util.Arrays;
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
  private static final double ENOUGH = 1e-8;

  private final PlaneStretch layer;
  private final double[] points;
  private final double[] weights;

  // first derivatives of y, u, v by e, k, r, q and second ones of y by pairs
  private final double[] gy = new double[4];
  private final double[] gyy = new double[4];
  final double[] dy = new double[4];
  final double[] depthCurved = new double[16];
  double depth;
  private final double[] du = new double[4];
  private final double[] dv = new double[4];

  final double[] first = new double[STRAINS];
  final double[] second = new double[STRAINS * STRAINS];
  double energy;

  WallSection(StrainEnergy law, int layers) {
    layer = new PlaneStretch(law);
    points = Gauss.points(layers);
    weights = Gauss.weights(layers);
  }

  /**
   * Evaluates a section.
   *
   * @return whether the section can exist and the law gives it an energy
   */
  boolean at(Section of, double e, double k, double r, double q, double g) {
    energy = 0.0;
    Arrays.fill(first, 0.0);
    Arrays.fill(second, 0.0);
    double half = 0.5 * of.thickness();
    for (int i = 0; i < points.length; i++) {
      double d = half * points[i];
      double y = depth(of.volume(d), d, e, k, r, q, of.radius());
      double eu = e - y * k;
      double rv = r - y * q;
      if (!(eu > 0.0 && rv > 0.0)) {
        return false;
      }
      double c1 = 1.0 - d * of.curvature();
      double c2 = of.radius() - d * of.sine();
      layer.at(eu / c1, rv / c2, g / c1);
      if (!(Math.abs(layer.energy) < Double.MAX_VALUE)) {
        return false;
      }
      double weight = half * weights[i] * c1 * c2;
      energy += weight * layer.energy;
      depthSlopes(y, eu, rv, e, k, r, q);
      addFirst(weight, y, k, q, c1, c2);
      addSecond(weight, y, eu, rv, k, q, c1, c2);
    }
    for (int i = 0; i < STRAINS; i++) {
      for (int j = 0; j < i; j++) {
        second[STRAINS * i + j] = second[STRAINS * j + i];
      }
    }
    return true;
  }

  /** The depth of a layer that keeps the volume between it and the mid-surface. */
  private static double depth(
      double volume, double d, double e, double k, double r, double q, double radius) {
    double y = d * radius / (e * r);
    double c0 = e * r;
    double c1 = 0.5 * (e * q + k * r);
    double c2 = k * q / 3.0;
    for (int i = 0; i < MOST; i++) {
      double value = y * (c0 - y * (c1 - y * c2)) - volume;
      double step = value / ((e - y * k) * (r - y * q));
      y -= step;
      if (Math.abs(step) <= ENOUGH * Math.abs(d)) {
        return y; // quadratic: the error left is below the last digit
      }
    }
    return y;
  }

  private void depthSlopes(double y, double eu, double rv, double e, double k, double r, double q) {
    double half = 0.5 * y * y;
    double third = y * y * y / 3.0;
    double j = 1.0 / (eu * rv);
    gy[E] = r * y - q * half;
    gy[K] = q * third - r * half;
    gy[R] = e * y - k * half;
    gy[Q] = k * third - e * half;
    gyy[E] = rv;
    gyy[K] = -y * rv;
    gyy[R] = eu;
    gyy[Q] = -y * eu;
    for (int i = 0; i < 4; i++) {
      dy[i] = -gy[i] * j;
    }
  }

  private void addFirst(double weight, double y, double k, double q, double c1, double c2) {
    for (int i = 0; i < 4; i++) {
      du[i] = -k * dy[i] / c1;
      dv[i] = -q * dy[i] / c2;
    }
    du[E] += 1.0 / c1;
    du[K] -= y / c1;
    dv[R] += 1.0 / c2;
    dv[Q] -= y / c2;
    double wu = weight * layer.u;
    double wv = weight * layer.v;
    for (int i = 0; i < 4; i++) {
      first[i] += wu * du[i] + wv * dv[i];
    }
    first[G] += weight * layer.s / c1;
  }

  private void addSecond(
      double weight, double y, double eu, double rv, double k, double q, double c1, double c2) {
    double j = 1.0 / (eu * rv);
    double bend = bend(eu, rv, k, q);
    double uu = weight * layer.uu;
    double uv = weight * layer.uv;
    double vv = weight * layer.vv;
    double wu = weight * layer.u / c1;
    double wv = weight * layer.v / c2;
    double both = wu * k + wv * q;
    for (int a = 0; a < 4; a++) {
      for (int b = a; b < 4; b++) {
        double yab = depthCurvature(a, b, y, bend, j);
        double s = uu * du[a] * du[b] + uv * (du[a] * dv[b] + du[b] * dv[a]) + vv * dv[a] * dv[b];
        s -= both * yab;
        if (a == K) {
          s -= wu * dy[b];
        }
        if (b == K) {
          s -= wu * dy[a];
        }
        if (a == Q) {
          s -= wv * dy[b];
        }
        if (b == Q) {
          s -= wv * dy[a];
        }
        second[STRAINS * a + b] += s;
      }
      double gs = weight / c1;
      second[STRAINS * a + G] += gs * (layer.us * du[a] + layer.vs * dv[a]);
    }
    second[STRAINS * G + G] += weight / (c1 * c1) * layer.ss;
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
    double y = depth(of.volume(d), d, e, k, r, q, of.radius());
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
    double y = depth(of.volume(d), d, e, k, r, q, of.radius());
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
