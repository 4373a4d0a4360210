package org.flexwright.shells.tube;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The inextensible ring of mean radius 1 and bending stiffness 1 under two opposite loads P, far
 * from its first shape. With p the angle of the tangent from the load line and s the arc from the
 * side, p'' = -(P/2) sin p, p(0) = 0, p(pi/2) = pi/2. Substituting sin(p/2) = q sin v, with q sin
 * v_e = sin(pi/4): curvature K cos v, K pi/2 = I[1], P = (K sin v_e)^2, height over its first value
 * I[cos p]/K, width I[sin p]/K, I[g] the integral of 2 q g/cos(p/2) over v from 0 to v_e. v_e below
 * pi/2: curved under the load; above: bent inwards there. Pulled, sin and cos of v become sinh and
 * cosh and P is negative.
 *
 * @param loss what the diameter along the load loses over its first value; negative if pulled
 * @param load P R^2/(E I)
 * @param side curvature at the sides
 * @param top curvature under the load
 * @param width diameter across the load over its first value
 * @param working energy-weighted mean change of curvature over the largest
 */
record RingShape(double loss, double load, double side, double top, double width, double working) {

  private static final double QUARTER = 0.5 * Math.PI;
  private static final double MOST_PUSHED = 2.25;
  private static final double MOST_PULLED = -12.0;
  private static final double LINEAR = 1e-6; // below this loss the linear ring is as good
  private static final double AT_REST = ofEnd(1e-2).working;

  /** Where the ring lies flat under plates first: no curvature under the load. */
  static final RingShape FLAT = ofEnd(QUARTER);

  /** The largest gain along a pull over the diameter: nearly straight. */
  static final double FARTHEST_PULL = -ofEnd(MOST_PULLED).loss;

  /** Gauss points, good to 1e-12 of the integrals between the two ends. */
  private static final class Gauss {
    private static final int N = 48;
    private static final double[] S = new double[N];
    private static final double[] W = new double[N];

    static {
      var gauss = new GaussIntegratorFactory().legendre(N, 0.0, 1.0);
      for (int i = 0; i < N; i++) {
        S[i] = gauss.getPoint(i);
        W[i] = gauss.getWeight(i);
      }
    }
  }

  /** Largest change of curvature. */
  double bend() {
    return Math.max(Math.abs(side - 1.0), Math.abs(top - 1.0));
  }

  private static double sine(double v, boolean pushed) {
    return pushed ? Math.sin(v) : Math.sinh(v);
  }

  private static double cosine(double v, boolean pushed) {
    return pushed ? Math.cos(v) : Math.cosh(v);
  }

  /** The ring under two line loads with its last v: above 0 pushed, below 0 pulled. */
  static RingShape ofEnd(double last) {
    boolean pushed = last > 0.0;
    double end = Math.abs(last);
    double q = Math.sqrt(0.5) / sine(end, pushed);
    double one = 0.0;
    double cosines = 0.0;
    double sines = 0.0;
    for (int i = 0; i < Gauss.N; i++) {
      double half = q * sine(end * Gauss.S[i], pushed); // sin(p/2)
      double step = Gauss.W[i] * 2.0 * q * end;
      double arc = step / Math.sqrt(1.0 - half * half);
      one += arc;
      cosines += arc * (1.0 - 2.0 * half * half);
      sines += step * 2.0 * half;
    }
    double side = one / QUARTER;
    double root = side * sine(end, pushed);
    return new RingShape(
            1.0 - cosines / side,
            pushed ? root * root : -root * root,
            side,
            side * cosine(end, pushed),
            sines / side,
            0.0)
        .working(end, side, 0.0);
  }

  /** Completes a shape curved with the given curvature at the sides, the rest of it flat. */
  private RingShape working(double end, double curvature, double flat) {
    boolean pushed = load > 0.0;
    double q = Math.sqrt(0.5) / sine(end, pushed);
    double squares = flat;
    double cubes = flat;
    for (int i = 0; i < Gauss.N; i++) {
      double v = end * Gauss.S[i];
      double half = q * sine(v, pushed);
      double arc = Gauss.W[i] * 2.0 * q * end / Math.sqrt(1.0 - half * half) / curvature;
      double change = Math.abs(curvature * cosine(v, pushed) - 1.0);
      squares += arc * change * change;
      cubes += arc * change * change * change;
    }
    return new RingShape(loss, load, side, top, width, cubes / squares / bend());
  }

  /** Under two line loads, pushed by a loss from above 0 to below 1. */
  static RingShape pushed(double loss) {
    return loss < LINEAR ? linear(loss) : solve(loss, 1e-4, MOST_PUSHED);
  }

  /** Under two line loads, pulled by a gain from above 0 to {@link #FARTHEST_PULL}. */
  static RingShape pulled(double gain) {
    return gain < LINEAR ? linear(-gain) : solve(-gain, MOST_PULLED, -1e-4);
  }

  /**
   * Between flat plates, pressed by a loss from above 0 to below 1. Once flat, what is curved keeps
   * its shape and shrinks with the height, so P H^2 stays.
   */
  static RingShape between(double loss) {
    if (loss <= FLAT.loss) {
      return pushed(loss);
    }
    double shrink = (1.0 - FLAT.loss) / (1.0 - loss);
    double side = FLAT.side * shrink;
    double flat = QUARTER * (1.0 - 1.0 / shrink);
    double load = FLAT.load * shrink * shrink;
    double width = FLAT.width / shrink + flat;
    return new RingShape(loss, load, side, 0.0, width, 0.0).working(QUARTER, side, flat);
  }

  /** The linear ring: curvature P (1/2 - 1/pi) more at the sides, P/pi less under the load. */
  private static RingShape linear(double loss) {
    double load = 2.0 * loss / Ring.THIN_FLEXIBILITY;
    double side = 1.0 + load * (0.5 - 1.0 / Math.PI);
    double width = 1.0 + load * (1.0 / Math.PI - 0.25);
    return new RingShape(loss, load, side, 1.0 - load / Math.PI, width, AT_REST);
  }

  private static RingShape solve(double loss, double low, double high) {
    return ofEnd(new BrentSolver(1e-14, 1e-15).solve(200, v -> ofEnd(v).loss - loss, low, high));
  }
}
