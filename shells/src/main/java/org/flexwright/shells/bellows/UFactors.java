package org.flexwright.shells.bellows;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Objects;
import org.apache.commons.math3.analysis.interpolation.BicubicInterpolatingFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;

/**
 * The factors of U convolutions over C1 = 2 rm/w and C2 = [12 (1 - nu^2)]^(1/4) rm/sqrt(Dm t), from
 * a table computed with a linear axisymmetric shell model.
 *
 * <p>1/Cf = 1/Cf0(C1) + C2^4 y(C1, C2), where Cf0 is the guided strip of the same meridian without
 * hoop stiffness (exact) and y is smooth; Cf of the real width is Cf (1 - c (w/Dm)^2). The strain
 * factor S, peak meridional strain over t e/w^2, is interpolated in w/Dm between its values at Dm/w
 * = 4 and 10. Outside the table its edge is used.
 */
final class UFactors {

  /** Bounds of the table. */
  static final double C1_LOW = 0.2;

  static final double C1_HIGH = 1.0;
  static final double C2_HIGH = 4.0;

  private static final double C2_LOW = 0.4;
  private static final double NARROW = 1.0 / 4.0;
  private static final double WIDE = 1.0 / 10.0;
  private static final UFactors TABLE = load();

  private final BicubicInterpolatingFunction logY;
  private final BicubicInterpolatingFunction width;
  private final BicubicInterpolatingFunction narrow;
  private final BicubicInterpolatingFunction wide;

  private UFactors(double[][] rows) {
    double[] c1 = Arrays.stream(rows).mapToDouble(r -> r[0]).distinct().toArray();
    double[] c2 = Arrays.stream(rows).mapToDouble(r -> r[1]).distinct().sorted().toArray();
    double[][][] f = new double[4][c1.length][c2.length];
    for (int i = 0; i < c1.length; i++) {
      for (int j = 0; j < c2.length; j++) {
        double[] row = rows[i * c2.length + j];
        f[0][i][j] = Math.log(row[2]);
        f[1][i][j] = row[3];
        f[2][i][j] = row[4];
        f[3][i][j] = row[5];
      }
    }
    logY = over(c1, c2, f[0]);
    width = over(c1, c2, f[1]);
    narrow = over(c1, c2, f[2]);
    wide = over(c1, c2, f[3]);
  }

  /** Bicubic pieces whose slopes at the nodes, borders included, are those of natural splines. */
  private static BicubicInterpolatingFunction over(double[] c1, double[] c2, double[][] f) {
    double[][] byC2 = slopes(c2, f);
    double[][] byC1 = transposed(slopes(c1, transposed(f)));
    return new BicubicInterpolatingFunction(c1, c2, f, byC1, byC2, slopes(c2, byC1));
  }

  private static double[][] slopes(double[] x, double[][] rows) {
    return Arrays.stream(rows)
        .map(row -> new SplineInterpolator().interpolate(x, row).polynomialSplineDerivative())
        .map(slope -> Arrays.stream(x).map(slope::value).toArray())
        .toArray(double[][]::new);
  }

  private static double[][] transposed(double[][] a) {
    double[][] t = new double[a[0].length][a.length];
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < t.length; j++) {
        t[j][i] = a[i][j];
      }
    }
    return t;
  }

  private static UFactors load() {
    String file = "u-convolution.csv";
    try (InputStream in = UFactors.class.getResourceAsStream(file)) {
      BufferedReader reader =
          new BufferedReader(
              new InputStreamReader(Objects.requireNonNull(in, file), StandardCharsets.US_ASCII));
      return new UFactors(
          reader
              .lines()
              .filter(l -> !l.startsWith("#") && !l.startsWith("c1"))
              .map(l -> Arrays.stream(l.split(",")).mapToDouble(Double::parseDouble).toArray())
              .toArray(double[][]::new));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The strip of a U meridian without hoop stiffness: Cf at C2 = 0. */
  static double strip(double c1) {
    double r = c1 / 2.0;
    double a = 0.5 - r;
    double leg = 2.0 * a * a * a / 3.0;
    double arcs = 2.0 * r * (a * a * Math.PI / 2.0 + 2.0 * a * r + r * r * Math.PI / 4.0);
    return 12.0 * (leg + arcs);
  }

  /** Cf of a thin wall. */
  static double stiffness(double c1, double c2, double depthOverDiameter) {
    double x = within(c1, C1_LOW, C1_HIGH);
    double y = within(c2, C2_LOW, C2_HIGH);
    double rise = Math.pow(c2, 4) * Math.exp(TABLE.logY.value(x, y));
    double wideCf = 1.0 / (1.0 / strip(c1) + rise);
    return wideCf * (1.0 - TABLE.width.value(x, y) * depthOverDiameter * depthOverDiameter);
  }

  /** S, the peak meridional strain over t e/w^2. */
  static double strain(double c1, double c2, double depthOverDiameter) {
    double x = within(c1, C1_LOW, C1_HIGH);
    double y = within(c2, C2_LOW, C2_HIGH);
    double s4 = TABLE.narrow.value(x, y);
    double s10 = TABLE.wide.value(x, y);
    return s10 + (s4 - s10) * (depthOverDiameter - WIDE) / (NARROW - WIDE);
  }

  private static double within(double value, double low, double high) {
    return Math.min(high, Math.max(low, value));
  }
}
