package org.flexwright.shells.revolution;

/**
 * The faces of a deformed shell as smooth lines: quadratic B-splines over the face points of the
 * elements, which have a tangent everywhere, so that what slides along them feels no corner. They
 * leave the points by an eighth of the squared length of an element over the radius of bend.
 *
 * <p>A place on a line is j + t: t from 0 to 1 between the middles of the lines from point j to its
 * neighbours; towards an end the line goes straight on. A slot 2 i + (side + 1)/2 is a face point.
 * Work space; not thread-safe.
 */
final class FaceLine {

  private static final int MOST = 40;
  private static final double ENOUGH = 1e-13;

  private final ShellMesh mesh;
  private final FacePoint point;
  private final double[] r;
  private final double[] z;
  private final long[] placed;
  private double[] x = new double[0];
  private long state = 1L;

  // of the last projection
  double place;
  double gap;
  double nr; // outward normal
  double nz;
  double length; // of the tangent by t
  double bend; // second derivative by t, along the normal
  final double[] share = new double[3]; // of the points j - 1, j, j + 1
  final double[] slope = new double[3]; // of the shares by t

  FaceLine(ShellMesh mesh, FacePoint point) {
    this.mesh = mesh;
    this.point = point;
    r = new double[2 * mesh.elements()];
    z = new double[r.length];
    placed = new long[r.length];
  }

  static int slot(int element, int side) {
    return 2 * element + (side + 1) / 2;
  }

  static int element(int slot) {
    return slot / 2;
  }

  static int side(int slot) {
    return 2 * (slot % 2) - 1;
  }

  /** Goes to a state; points are placed when they are asked for. */
  void moved(double[] to) {
    x = to;
    state++;
  }

  double radius(int slot) {
    put(slot);
    return r[slot];
  }

  double height(int slot) {
    put(slot);
    return z[slot];
  }

  private void put(int slot) {
    if (placed[slot] != state) {
      point.at(mesh, element(slot), side(slot), x);
      r[slot] = point.r;
      z[slot] = point.z;
      placed[slot] = state;
    }
  }

  /**
   * Finds the place of a line nearest to a point, going along the line from another place.
   *
   * @return whether there is one within the line
   */
  boolean project(int of, double from, int side) {
    double pr = radius(of);
    double pz = height(of);
    double at = from;
    for (int i = 0; i < MOST; i++) {
      if (!(at >= 0.0 && at <= mesh.elements())) {
        return false;
      }
      double off = look(at, side, pr, pz);
      double stiff = length * length - gap * bend;
      if (!(stiff > 0.0)) {
        return false;
      }
      double step = Math.max(-1.0, Math.min(1.0, off * length / stiff));
      if (Math.abs(step) <= ENOUGH * at) {
        place = at;
        return true;
      }
      at += i < MOST / 4 ? step : 0.5 * step; // damped: the bend jumps between two spans
    }
    return false;
  }

  /** The middle one of the three points that a place hangs on. */
  int centre(double at) {
    return Math.max(1, Math.min((int) at, mesh.elements() - 2));
  }

  /** Fills the line's figures at a place; gives how far ahead along the tangent the point is. */
  private double look(double at, int side, double pr, double pz) {
    int j = centre(at);
    double t = at - j;
    double in = Math.max(0.0, Math.min(1.0, t));
    double out = t - in; // straight on beyond the outermost spans
    slope[0] = in - 1.0;
    slope[1] = 1.0 - 2.0 * in;
    slope[2] = in;
    share[0] = 0.5 * (1.0 - in) * (1.0 - in) + out * slope[0];
    share[1] = 0.5 + in * (1.0 - in) + out * slope[1];
    share[2] = 0.5 * in * in + out * slope[2];
    int a = slot(j - 1, side);
    int b = slot(j, side);
    int c = slot(j + 1, side);
    put(a);
    put(b);
    put(c);
    double cr = slope[0] * r[a] + slope[1] * r[b] + slope[2] * r[c];
    double cz = slope[0] * z[a] + slope[1] * z[b] + slope[2] * z[c];
    length = Math.sqrt(cr * cr + cz * cz);
    nr = -side * cz / length;
    nz = side * cr / length;
    bend = nr * (r[a] - 2.0 * r[b] + r[c]) + nz * (z[a] - 2.0 * z[b] + z[c]);
    bend = out == 0.0 ? bend : 0.0;
    double er = pr - share[0] * r[a] - share[1] * r[b] - share[2] * r[c];
    double ez = pz - share[0] * z[a] - share[1] * z[b] - share[2] * z[c];
    gap = nr * er + nz * ez;
    return (cr * er + cz * ez) / length;
  }
}
