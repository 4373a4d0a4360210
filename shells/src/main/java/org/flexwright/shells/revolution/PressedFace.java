package org.flexwright.shells.revolution;

/**
 * Where a face of the wall stands for something that presses on it, with first and second slopes by
 * the stretch e, curvature k, radius r and sine q.
 *
 * <p>The usual share of shear, 5/6, goes with the work of a parabola of shear stress: what it calls
 * the place of the wall is the mean over the depth d weighted by 1 - (2 d/t)^2 (Reissner 1945). The
 * layers of a bent wall of constant volume lie d^2/2 times the change of curvature off where a
 * straight line would put them, so that this mean lies B = t^2/40 times that change off the middle,
 * and the face t^2/10 off the mean, not t^2/8. With the wall as thin as it is now:
 *
 * <pre>
 * B = t^2/40 ((k - K)/e + (q - Q)/r) (R/(e r))^2,   depth of the face = y - B
 * </pre>
 *
 * <p>The change of curvature is that by bending. A wall that swells without turning has no shear,
 * hence no other place than its middle.
 *
 * <p>Against the layer of constant volume under a pressure of the wave number s/t on one face (see
 * the test of this class): its deflection is that of a plate times 1 + 0.2 s^2 + 0.0305 s^4; with B
 * the wall gives 1 + 0.2 s^2 + 0.0308 s^4, without it 1 + 0.15 s^2 + 0.0365 s^4.
 *
 * <p>Domes with a wall of a tenth of the radius under a ball are within 1.1 % of a continuum up to
 * two walls of travel (2.4 % without B) and 1.8 % at a third of the radius.
 *
 * <p>Source: E. Reissner, J. Appl. Mech. 12 (1945) A69 (from memory); the layer computed in the
 * test.
 */
final class PressedFace {

  /** The mean's distance from the middle, by the square of the wall and the change of curvature. */
  static final double MEAN = 1.0 / 40.0;

  private static final int E = 0;
  private static final int K = 1;
  private static final int R = 2;
  private static final int Q = 3;

  private PressedFace() {}

  /**
   * Evaluates the face at a depth at rest; the wall then holds its place, slopes and curvatures.
   */
  static void at(
      WallSection wall,
      WallSection.Section rest,
      double depth,
      double e,
      double k,
      double r,
      double q) {
    wall.face(rest, depth, e, k, r, q);
    double bend = k - rest.curvature();
    double turn = q - rest.sine();
    double part = rest.thickness() * rest.radius() / (e * r);
    double d = MEAN * part * part / (e * r);
    double n = bend * r + turn * e; // B = d n, d going with 1/(e r)^3
    wall.depth -= d * n;
    double[] slope = wall.dy;
    slope[E] -= d * (turn - 3.0 * n / e);
    slope[K] -= d * r;
    slope[R] -= d * (bend - 3.0 * n / r);
    slope[Q] -= d * e;
    double[] curved = wall.depthCurved;
    curve(curved, E, E, d * (12.0 * n / e - 6.0 * turn) / e);
    curve(curved, E, K, -3.0 * d * r / e);
    curve(curved, E, R, d * (9.0 * n / (e * r) - 3.0 * turn / r - 3.0 * bend / e));
    curve(curved, E, Q, -2.0 * d);
    curve(curved, K, R, -2.0 * d);
    curve(curved, R, R, d * (12.0 * n / r - 6.0 * bend) / r);
    curve(curved, R, Q, -3.0 * d * e / r);
  }

  private static void curve(double[] curved, int a, int b, double by) {
    curved[4 * a + b] -= by;
    if (a != b) {
      curved[4 * b + a] -= by;
    }
  }
}
