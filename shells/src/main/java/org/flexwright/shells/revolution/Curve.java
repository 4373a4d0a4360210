package org.flexwright.shells.revolution;

/** A smooth curve in the meridian plane, by its arc length. Immutable. */
interface Curve {

  /** Its length, above 0, in metres. */
  double length();

  /** The point at an arc length from 0 to the length. */
  Spot at(double s);

  /** The largest curvature, without sign. */
  double sharpest();

  /** Arc lengths inside where the curvature has a kink. */
  default double[] joints() {
    return new double[0];
  }

  /** A straight line. */
  record Line(double r, double z, double angle, double length) implements Curve {

    @Override
    public Spot at(double s) {
      return new Spot(r + s * Math.cos(angle), z + s * Math.sin(angle), angle, 0.0);
    }

    @Override
    public double sharpest() {
      return 0.0;
    }
  }

  /** A circular arc from a point, by its angle there and its curvature, positive to the left. */
  record Arc(double r, double z, double angle, double curvature, double length) implements Curve {

    @Override
    public Spot at(double s) {
      double turn = curvature * s;
      // the chord, which keeps its digits for flat arcs
      double half = 0.5 * turn;
      double chord = half == 0.0 ? s : 2.0 * Math.sin(half) / curvature;
      return new Spot(
          r + chord * Math.cos(angle + half),
          z + chord * Math.sin(angle + half),
          angle + turn,
          curvature);
    }

    @Override
    public double sharpest() {
      return Math.abs(curvature);
    }
  }
}
