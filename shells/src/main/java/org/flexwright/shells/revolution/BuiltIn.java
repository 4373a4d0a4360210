package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * A mesh whose built-in ends are set back: a solid keeps the wall from thinning and its cross
 * section from warping at the edge, which the clamp of shell theory does not, so the wall gives way
 * as if it were clamped a little inside.
 *
 * <p>The set-back is that of a long strip in bending, in plane strain at constant volume: M = E'
 * t^3/12 turn/(length - c t). From below, c = 0.0506 (64 pairs of the eigenfunctions of the strip,
 * least complementary energy); from above, 0.0510 (finite elements of displacement, corners
 * refined); both go to 0.0508. In stretching c = 0.1154. One value, that of bending, serves both:
 * what is left out, 0.065 of a wall, counts where a short wall is mainly stretched (see {@link
 * End#BUILT_IN}).
 *
 * <p>What lies outside the set-back is rigid and goes with its end; it is left out of the
 * equations. Nodes and elements keep their numbers: the first node that moves lies at the set-back.
 */
final class BuiltIn {

  /** Set-back over the wall. */
  static final double SET_BACK = 0.0508;

  private static final double MOST = 0.25; // of the meridian
  private static final double SLIVER = 0.01; // of an element: too little to be one

  private final double[] below; // rest of the nodes before the first one that moves
  private final double[] above;

  /** The part that gives way. */
  final ShellMesh moving;

  private BuiltIn(ShellMesh mesh, int from, double cut, int to, double left) {
    double[] rest = mesh.rest();
    moving = part(mesh, from, Math.max(0.0, cut), to, Math.max(0.0, left));
    below = Arrays.copyOf(rest, 3 * from);
    above = Arrays.copyOfRange(rest, 3 * (to + 2), rest.length);
  }

  /** A mesh with the set-back of those ends that are built in; an end on the axis is none. */
  static BuiltIn of(ShellMesh mesh, End first, End last) {
    int to = mesh.elements() - 1;
    double most = MOST * Arrays.stream(mesh.length).sum();
    int from = 0;
    double cut = 0.0;
    if (first == End.BUILT_IN && mesh.radius[0] > 0.0) {
      cut = Math.min(SET_BACK * mesh.sections[0].thickness(), most);
      while (cut > (1.0 - SLIVER) * mesh.length[from]) {
        cut -= mesh.length[from++];
      }
    }
    double left = 0.0;
    if (last == End.BUILT_IN && mesh.radius[to + 1] > 0.0) {
      left = Math.min(SET_BACK * mesh.sections[to].thickness(), most);
      while (left > (1.0 - SLIVER) * mesh.length[to]) {
        left -= mesh.length[to--];
      }
    }
    return new BuiltIn(mesh, from, cut, to, left);
  }

  /** The elements from..to without a length at the start of the first and the end of the last. */
  private static ShellMesh part(ShellMesh mesh, int from, double cut, int to, double left) {
    int n = to - from + 1;
    double[] radius = Arrays.copyOfRange(mesh.radius, from, to + 2);
    double[] height = Arrays.copyOfRange(mesh.height, from, to + 2);
    double[] start = new double[n];
    double[] end = new double[n];
    double[] wall = new double[n];
    for (int i = 0; i < n; i++) {
      double half = 0.5 * mesh.sections[from + i].curvature() * mesh.length[from + i];
      start[i] = mesh.angle[from + i] - half;
      end[i] = mesh.angle[from + i] + half;
      wall[i] = mesh.sections[from + i].thickness();
    }
    double bend = mesh.sections[from].curvature();
    double along = start[0] + 0.5 * bend * cut;
    radius[0] += cut * Math.cos(along);
    height[0] += cut * Math.sin(along);
    start[0] += bend * cut;
    bend = mesh.sections[to].curvature();
    along = end[n - 1] - 0.5 * bend * left;
    radius[n] -= left * Math.cos(along);
    height[n] -= left * Math.sin(along);
    end[n - 1] -= bend * left;
    int[] piece = Arrays.copyOfRange(mesh.piece, from, to + 1);
    return new ShellMesh(radius, height, start, end, wall, piece, mesh.drawn);
  }

  /** How many nodes, and elements, there are before the first one that moves. */
  int before() {
    return below.length / 3;
  }

  /** A state with the rigid parts put back. */
  double[] whole(double[] x) {
    double[] all = Arrays.copyOf(below, below.length + x.length + above.length);
    System.arraycopy(x, 0, all, below.length, x.length);
    System.arraycopy(above, 0, all, below.length + x.length, above.length);
    double risen = x[x.length - 2] - moving.height[moving.nodes() - 1];
    for (int i = below.length + x.length + 1; i < all.length; i += 3) {
      all[i] += risen;
    }
    return all;
  }
}
