package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/** Curves of folds and splines. */
final class Shapes {

  private static final int PER_FOLD = 128;
  private static final int PER_KNOT = 32;

  private Shapes() {}

  /** Sine folds from a root at (r, z), along the axis. */
  static Curve sine(double r, double z, double count, double depth, double pitch, double heading) {
    double half = 0.5 * depth;
    double wave = 2.0 * Math.PI / Math.abs(pitch);
    double way = Math.signum(pitch);
    Bow.Track track =
        u -> {
          double sin = Math.sin(wave * u);
          double cos = Math.cos(wave * u);
          return new double[] {
            r + half * (1.0 - cos),
            z + way * u,
            half * wave * sin,
            way,
            half * wave * wave * cos,
            0.0
          };
        };
    int steps = (int) Math.ceil(PER_FOLD * count);
    double[] table = new double[steps + 1];
    for (int i = 0; i <= steps; i++) {
      table[i] = count * Math.abs(pitch) * i / steps;
    }
    return new Bow(track, table, heading);
  }

  /** Half convolutions from the inside of a root, all rounds alike. */
  static List<Curve> convolutions(Spot from, long halves, double round, double leg, double bend) {
    List<Curve> made = new ArrayList<>();
    double quarter = 0.5 * Math.PI * round;
    Spot at = from;
    for (long i = 0; i < halves; i++) {
      double first = i % 2 == 0 ? bend : -bend;
      at = add(made, new Curve.Arc(at.r(), at.z(), at.angle(), first, quarter));
      if (leg > 0.0) {
        at = add(made, new Curve.Line(at.r(), at.z(), at.angle(), leg));
      }
      at = add(made, new Curve.Arc(at.r(), at.z(), at.angle(), -first, quarter));
    }
    return made;
  }

  private static Spot add(List<Curve> to, Curve curve) {
    to.add(curve);
    return curve.at(curve.length());
  }

  /**
   * The natural cubic spline through points by the length of its chords; on the axis it is
   * continued as its mirror image, so that it crosses the axis squarely.
   */
  static Curve spline(double[] r, double[] z, double heading) {
    int n = r.length;
    boolean before = r[0] == 0.0;
    boolean after = r[n - 1] == 0.0;
    int skip = before ? n - 1 : 0;
    int all = n + skip + (after ? n - 1 : 0);
    double[] u = new double[all];
    double[] rs = new double[all];
    double[] zs = new double[all];
    for (int i = 0; i < all; i++) {
      int k = i - skip;
      int from = k < 0 ? -k : k < n ? k : 2 * n - 2 - k;
      rs[i] = k < 0 || k >= n ? -r[from] : r[from];
      zs[i] = z[from];
      if (i > 0) {
        u[i] = u[i - 1] + Math.hypot(rs[i] - rs[i - 1], zs[i] - zs[i - 1]);
      }
    }
    UnivariateFunction[] of = new UnivariateFunction[6];
    for (int c = 0; c < 2; c++) {
      PolynomialSplineFunction f = new SplineInterpolator().interpolate(u, c == 0 ? rs : zs);
      of[c] = f;
      of[c + 2] = f.polynomialSplineDerivative();
      of[c + 4] = f.polynomialSplineDerivative().polynomialSplineDerivative();
    }
    double[] table = new double[PER_KNOT * (n - 1) + 1];
    for (int i = 0; i < table.length - 1; i++) {
      int k = skip + i / PER_KNOT;
      table[i] = u[k] + (u[k + 1] - u[k]) * (i % PER_KNOT) / PER_KNOT;
    }
    table[table.length - 1] = u[skip + n - 1];
    return new Bow(x -> values(of, x), table, heading);
  }

  private static double[] values(UnivariateFunction[] of, double x) {
    double[] out = new double[of.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = of[i].value(x);
    }
    return out;
  }
}
