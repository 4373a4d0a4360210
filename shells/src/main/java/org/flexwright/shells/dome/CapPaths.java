package org.flexwright.shells.dome;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Paths of clamped shallow caps over their shallowness L and Poisson's ratio: p a^4 (1 - nu^2)/(E
 * t^4) = c1 y + c2 y^2 + c3 y^3 + c4 y^4 with y travel over wall, from a table computed with a
 * nonlinear shallow-shell collocation; splines in L, a parabola through nu 0.3, 0.4 and 0.5. Beyond
 * L = 5.25 the path over the classical pressure keeps its shape and rises until the snap has
 * reached 0.775, where caps buckle unevenly.
 */
final class CapPaths {

  static final double DEEP = 5.25;

  private static final int COLUMNS = 6;
  private static final double STEP = 0.02;
  private static final double MOST = 1.3;
  private static final double UNEVEN = 0.775;
  private static final double RISE = 0.35; // per unit of L, about the slope before it
  private static final PolynomialSplineFunction[][] TABLE = load();

  private final double lambda;
  private final double nu;
  private final double[] c = new double[COLUMNS];
  private final double wide;

  CapPaths(double lambda, double nu) {
    this.lambda = lambda;
    this.nu = nu;
    double at = Math.min(lambda, DEEP);
    for (int k = 0; k < COLUMNS; k++) {
      double low = TABLE[0][k].value(at);
      double mid = TABLE[1][k].value(at);
      double high = TABLE[2][k].value(at);
      double x = (nu - 0.4) / 0.1;
      c[k] = mid + 0.5 * x * (high - low) + 0.5 * x * x * (high - 2.0 * mid + low);
    }
    wide = lambda <= DEEP ? 1.0 : beyond();
  }

  private double beyond() {
    double most = UNEVEN * classical(DEEP) / polynomial(snap());
    double rise = Math.max(1.0, Math.min(most, 1.0 + RISE * (lambda - DEEP)));
    return Math.pow(lambda / DEEP, 4) * rise;
  }

  private static PolynomialSplineFunction[][] load() {
    String file = "clamped-cap.csv";
    try (InputStream in = CapPaths.class.getResourceAsStream(file)) {
      BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(Objects.requireNonNull(in, file), StandardCharsets.US_ASCII));
      double[][] rows =
          reader
              .lines()
              .filter(l -> !l.startsWith("#") && !l.startsWith("nu"))
              .map(l -> Arrays.stream(l.split(",")).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new);
      double[] ratios = {0.3, 0.4, 0.5};
      return Arrays.stream(ratios)
          .mapToObj(r -> Arrays.stream(rows).filter(w -> w[0] == r).toArray(double[][]::new))
          .map(CapPaths::splines)
          .toArray(PolynomialSplineFunction[][]::new);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PolynomialSplineFunction[] splines(double[][] rows) {
    double[] x = Arrays.stream(rows).mapToDouble(w -> w[1]).toArray();
    PolynomialSplineFunction[] all = new PolynomialSplineFunction[COLUMNS];
    for (int k = 0; k < COLUMNS; k++) {
      int column = k + 2;
      double[] y = Arrays.stream(rows).mapToDouble(w -> w[column]).toArray();
      all[k] = new SplineInterpolator().interpolate(x, y);
    }
    return all;
  }

  /** The pressure over E t^4/[(1 - nu^2) a^4] at travel y over wall. */
  double pressure(double y) {
    return wide * polynomial(y);
  }

  private double polynomial(double y) {
    return y * (c[0] + y * (c[1] + y * (c[2] + y * c[3])));
  }

  private double slope(double y) {
    return c[0] + y * (2.0 * c[1] + y * (3.0 * c[2] + y * 4.0 * c[3]));
  }

  /** The classical pressure of the sphere in the same measure. */
  double classical() {
    return classical(lambda);
  }

  private double classical(double at) {
    return Math.pow(at, 4) / (6.0 * Math.sqrt(3.0 * (1.0 - nu * nu)));
  }

  /** The knock-down of the design rule for spheres. */
  double knockDown() {
    return ClampedCap.knockDown(lambda * lambda);
  }

  /** Travel over wall at the snap; not a number if there is none. */
  double snap() {
    double y = STEP;
    while (y < MOST && slope(y) > 0.0) {
      y += STEP;
    }
    return y >= MOST
        ? Double.NaN
        : new BrentSolver(1e-14, 1e-14).solve(200, this::slope, y - STEP, y);
  }

  /** Peak tensile strain of small travel over (t/a)^2 y. */
  double strain() {
    return c[4];
  }

  /** Working strain over peak strain. */
  double working() {
    return c[5] / c[4];
  }
}
