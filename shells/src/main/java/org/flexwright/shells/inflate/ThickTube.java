package org.flexwright.shells.inflate;

import java.util.function.DoubleUnaryOperator;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * Inflation of an incompressible thick tube at a fixed axial stretch, for any law.
 *
 * <p>Formula: a ring at reference radius R moves to r = sqrt(a^2 + (R^2 - A^2)/lz); p = int_A^B
 * W'(l)/(r lz) dR with l = r/R and W'(l) = d/dl W(l, lz, 1/(l lz)) = W1 - W3/(l^2 lz). This is the
 * integral int W'(l)/(l^2 lz - 1) dl of Green and Zerna with the radius as variable, which has no
 * 0/0 at l^2 lz = 1. Symbols: A, B reference inner and outer radius, a bore radius (m), lz axial
 * stretch, p pressure inside over outside (Pa).
 *
 * <p>Range: any stretch the law allows (see {@link StrainEnergy#range}); quadrature to 1e-10.
 * Source: Green and Zerna 1954, Theoretical Elasticity (from memory, checked).
 *
 * <p>JShell: {@code ThickTube.pressure(NeoHookean.of(mpa(0.3)), mm(8), mm(10), 1.299, 1)}
 */
public final class ThickTube {

  private static final double TOLERANCE = 1e-11;
  private static final int DEEPEST = 24;
  // five Gauss points
  private static final double[] X = {
    -0.9061798459386640, -0.5384693101056831, 0.0, 0.5384693101056831, 0.9061798459386640
  };
  private static final double[] W = {
    0.2369268850561891,
    0.4786286704993665,
    0.5688888888888889,
    0.4786286704993665,
    0.2369268850561891
  };

  private ThickTube() {}

  /**
   * The pressure that stretches the bore.
   *
   * @param law the law
   * @param inner reference inner radius, above 0
   * @param outer reference outer radius, above the inner
   * @param boreStretch deformed over reference inner radius, above 0
   * @param axialStretch axial stretch, above 0; 1 for a held length
   * @return the pressure, negative if the bore shrinks
   * @throws org.flexwright.InvalidInputException if the sizes make no tube or the tube would turn
   *     inside out
   */
  public static Pressure pressure(
      StrainEnergy law, Length inner, Length outer, double boreStretch, double axialStretch) {
    check(inner, outer, boreStretch, axialStretch);
    return Pressure.pa(pressure(law, inner.m(), outer.m(), boreStretch, axialStretch));
  }

  /**
   * The bore stretch at which the outside has reached a radius.
   *
   * @param inner reference inner radius, above 0
   * @param outer reference outer radius, above the inner
   * @param outside deformed outer radius, above 0
   * @param axialStretch axial stretch, above 0
   * @return deformed over reference inner radius
   * @throws org.flexwright.InvalidInputException if no bore would be left
   */
  public static double grow(Length inner, Length outer, Length outside, double axialStretch) {
    check(inner, outer, 1.0, axialStretch);
    Require.positive("deformed outer radius", outside.m(), "m");
    double a = inner.m();
    double b = outer.m();
    double square = outside.m() * outside.m() - (b - a) * (b + a) / axialStretch;
    Require.that(
        square > 0.0,
        "deformed outer radius",
        outside,
        "above that of a tube without bore",
        "the wall keeps its volume: take a larger radius or a thinner wall");
    return Math.sqrt(square) / a;
  }

  private static void check(Length inner, Length outer, double boreStretch, double axialStretch) {
    Require.positive("inner radius", inner.m(), "m");
    Require.that(
        outer.m() > inner.m(),
        "outer radius",
        outer,
        () -> "above the inner radius, " + inner,
        "swap the radii or check the wall");
    Require.positive("bore stretch", boreStretch, "");
    Require.positive("axial stretch", axialStretch, "");
  }

  static double pressure(
      StrainEnergy law, double inner, double outer, double boreStretch, double axialStretch) {
    double a = inner * boreStretch;
    double[] g = new double[3];
    DoubleUnaryOperator f =
        radius -> {
          double r = Math.sqrt(a * a + (radius - inner) * (radius + inner) / axialStretch);
          double l = r / radius;
          double thin = 1.0 / (l * axialStretch);
          law.gradient(l, axialStretch, thin, g);
          return (g[0] - g[2] * thin / l) / (r * axialStretch);
        };
    return through(f, inner, outer, 0.0);
  }

  /** Integral through the wall, to 1e-11 of itself or to an error that does not matter. */
  static double through(DoubleUnaryOperator f, double inner, double outer, double floor) {
    double whole = gauss(f, inner, outer);
    return refine(f, inner, outer, whole, Math.abs(whole) * TOLERANCE + floor, 0);
  }

  private static double gauss(DoubleUnaryOperator f, double from, double to) {
    double mid = 0.5 * (from + to);
    double half = 0.5 * (to - from);
    double sum = 0.0;
    for (int i = 0; i < X.length; i++) {
      sum += W[i] * f.applyAsDouble(mid + half * X[i]);
    }
    return half * sum;
  }

  private static double refine(
      DoubleUnaryOperator f, double from, double to, double whole, double error, int depth) {
    double mid = 0.5 * (from + to);
    double left = gauss(f, from, mid);
    double right = gauss(f, mid, to);
    if (depth >= DEEPEST || Math.abs(left + right - whole) <= error) {
      return left + right;
    }
    return refine(f, from, mid, left, error, depth + 1)
        + refine(f, mid, to, right, error, depth + 1);
  }
}
