package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** Curves of arcs, folds and splines. */
final class Shapes {

  private static final double ROUND = 1e-6;
  private static final double FLAT = 1e-9;
  private static final int PER_FOLD = 96;
  private static final int PER_KNOT = 48;
  private static final int FADED = 32; // knots; each takes off a factor of 2 + sqrt(3)

  private Shapes() {}

  /** The arc from a point and an angle to another point. */
  static Curve arc(Spot from, double toR, double toZ, String place) {
    double chord = from.distance(toR, toZ);
    double to = Math.atan2(toZ - from.z(), toR - from.r());
    double half = Spot.near(to - from.angle(), 0.0);
    Require.that(
        Math.abs(half) < Math.PI * (1.0 - ROUND),
        "end of " + place,
        "straight behind its start",
        "a point that an arc can reach",
        "begin in another direction");
    double curvature = 2.0 * Math.sin(half) / chord;
    double length = Math.abs(half) < FLAT ? chord : 2.0 * half / curvature;
    return new Curve.Arc(from.r(), from.z(), from.angle(), curvature, length);
  }

  /**
   * The arc about a centre to another point, the shorter way.
   *
   * @param from its start and the angle before it, NaN if there is none
   */
  static Curve arcAbout(Spot centre, Spot from, double toR, double toZ, String place) {
    double radius = centre.distance(from.r(), from.z());
    double other = centre.distance(toR, toZ);
    Require.that(
        Math.abs(radius - other) <= ROUND * radius && radius > 0.0,
        "end of " + place,
        Text.number(1e3 * other) + " mm from the centre of its arc",
        () -> "as far as its start, " + Text.number(1e3 * radius) + " mm",
        "move the centre or the end");
    double start = Math.atan2(from.z() - centre.z(), from.r() - centre.r());
    double turn = Spot.near(Math.atan2(toZ - centre.z(), toR - centre.r()) - start, 0.0);
    Require.that(
        Math.abs(turn) * radius > 0.0,
        "length of " + place,
        "0 m",
        "above 0",
        "leave the piece out");
    Require.that(
        Math.abs(turn) < Math.PI * (1.0 - ROUND),
        "turn of " + place,
        "half a turn",
        "less, since both ways are as short",
        "use two arcs, or a bend");
    double angle = start + Math.copySign(0.5 * Math.PI, turn);
    double first = Spot.near(angle, Double.isNaN(from.angle()) ? 0.0 : from.angle());
    double curvature = Math.signum(turn) / radius;
    return new Curve.Arc(from.r(), from.z(), first, curvature, Math.abs(turn) * radius);
  }

  /** Refuses folds that cannot be. */
  static void folds(double count, double depth, double pitch, String place) {
    Require.positive("folds of " + place, count, "");
    Require.that(
        Math.rint(2.0 * count) == 2.0 * count,
        "folds of " + place,
        count,
        "a whole number, or one and a half",
        "");
    Require.nonZero("depth of " + place, depth, "m");
    Require.nonZero("pitch of " + place, pitch, "m");
  }

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
    return new Bow(track, table, table.length, heading);
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
    // one image is symmetric as it is; with both ends on the axis the far ends of many images fade
    int images = (before && after) ? FADED : n - 1;
    int skip = before ? images : 0;
    int all = skip + n + (after ? images : 0);
    int round = 2 * (n - 1);
    double[] u = new double[all];
    double[] rs = new double[all];
    double[] zs = new double[all];
    for (int i = 0; i < all; i++) {
      int k = Math.floorMod(i - skip, round);
      int of = k < n ? k : round - k;
      // counted in points given, so that the far end of a single image is one of it too
      boolean image = (before && after) ? k >= n : (i < skip || i >= skip + n);
      rs[i] = image ? -r[of] : r[of];
      zs[i] = z[of];
      if (i > 0) {
        u[i] = u[i - 1] + Math.hypot(rs[i] - rs[i - 1], zs[i] - zs[i - 1]);
      }
    }
    UnivariateFunction[] functions = splines(u, rs, zs);
    double[] table = new double[PER_KNOT * (n - 1) + 1];
    for (int i = 0; i < table.length - 1; i++) {
      int k = skip + i / PER_KNOT;
      table[i] = u[k] + (u[k + 1] - u[k]) * (i % PER_KNOT) / PER_KNOT;
    }
    table[table.length - 1] = u[skip + n - 1];
    return new Bow(x -> values(functions, x), table, PER_KNOT, heading);
  }

  /** Both coordinates, their first and their second derivatives. */
  private static UnivariateFunction[] splines(double[] u, double[] rs, double[] zs) {
    UnivariateFunction[] functions = new UnivariateFunction[6];
    for (int c = 0; c < 2; c++) {
      PolynomialSplineFunction f = new SplineInterpolator().interpolate(u, c == 0 ? rs : zs);
      functions[c] = f;
      functions[c + 2] = f.polynomialSplineDerivative();
      functions[c + 4] = f.polynomialSplineDerivative().polynomialSplineDerivative();
    }
    return functions;
  }

  private static double[] values(UnivariateFunction[] of, double x) {
    double[] out = new double[of.length];
    for (int i = 0; i < out.length; i++) {
      out[i] = of[i].value(x);
    }
    return out;
  }
}
