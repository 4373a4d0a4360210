package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * A mesh whose walls are set back where they are built into a solid, at an end or at a rigid
 * stretch: a solid keeps the wall from thinning and its cross section from warping at the edge,
 * which the clamp of shell theory does not, so the wall gives way as if it were clamped a little
 * inside.
 *
 * <p>The set-back is that of a long strip in bending, in plane strain at constant volume: M = E'
 * t^3/12 turn/(length - c t). From below, c = 0.0506 (64 pairs of the eigenfunctions of the strip,
 * least complementary energy); from above, 0.0510 (finite elements of displacement, corners
 * refined); both go to 0.0508. In stretching c = 0.1154. One value, that of bending, serves both:
 * what is left out, 0.065 of a wall, counts where a short wall is mainly stretched (see {@link
 * End#BUILT_IN}).
 *
 * <p>What lies outside the set-back, and the rigid stretches themselves, are left out of the
 * equations: at an end they go with it; in the middle one rigid element stands for them. Nodes and
 * elements keep their numbers: the first node that moves lies at the set-back.
 */
final class BuiltIn {

  /** Set-back over the wall. */
  static final double SET_BACK = 0.0508;

  private static final double MOST = 0.25; // of the flexible stretch
  private static final double SLIVER = 0.01; // of an element: too little to be one

  private final double[] rest; // of all nodes
  private final int[] nodeOf; // among all nodes, of each node that moves
  private final int[] elementOf;

  /** The part that gives way. */
  final ShellMesh moving;

  /** How the first end of that part is held. */
  final End first;

  /** How its last end is held. */
  final End last;

  /** A flexible stretch, its elements, and what is cut off the first and the last of them. */
  private record Run(int from, double cut, int to, double left) {

    int elements() {
      return to - from + 1;
    }
  }

  private BuiltIn(ShellMesh mesh, End first, End last) {
    int n = mesh.elements();
    this.first = mesh.rigid[0] ? End.BUILT_IN : first;
    this.last = mesh.rigid[n - 1] ? End.BUILT_IN : last;
    Run[] runs = runs(mesh);
    int nodes = 0;
    for (Run r : runs) {
      nodes += r.elements() + 1;
    }
    rest = mesh.rest();
    nodeOf = new int[nodes];
    elementOf = new int[nodes - 1];
    moving = part(mesh, runs);
  }

  /** A mesh with the set-back of those ends that are built in; an end on the axis is none. */
  static BuiltIn of(ShellMesh mesh, End first, End last) {
    return new BuiltIn(mesh, first, last);
  }

  private Run[] runs(ShellMesh mesh) {
    int n = mesh.elements();
    Run[] runs = new Run[n];
    int count = 0;
    int to;
    for (int from = 0; from < n; from = to) {
      to = from + 1;
      while (to < n && mesh.rigid[to] == mesh.rigid[from]) {
        to++;
      }
      if (!mesh.rigid[from]) {
        runs[count++] = run(mesh, from, to - 1);
      }
    }
    return Arrays.copyOf(runs, count);
  }

  private Run run(ShellMesh mesh, int start, int end) {
    int from = start;
    int to = end;
    double most = MOST * Arrays.stream(mesh.length, start, end + 1).sum();
    double cut = 0.0;
    boolean solid = start > 0 || first == End.BUILT_IN;
    if (solid && mesh.radius[start] > 0.0) {
      cut = Math.min(SET_BACK * mesh.sections[start].thickness(), most);
      while (cut > (1.0 - SLIVER) * mesh.length[from]) {
        cut -= mesh.length[from++];
      }
    }
    double left = 0.0;
    solid = end < mesh.elements() - 1 || last == End.BUILT_IN;
    if (solid && mesh.radius[end + 1] > 0.0) {
      left = Math.min(SET_BACK * mesh.sections[end].thickness(), most);
      while (left > (1.0 - SLIVER) * mesh.length[to]) {
        left -= mesh.length[to--];
      }
    }
    return new Run(from, Math.max(0.0, cut), to, Math.max(0.0, left));
  }

  /** The flexible stretches without what is cut off, rigid elements between them. */
  private ShellMesh part(ShellMesh mesh, Run[] runs) {
    int n = elementOf.length;
    double[] radius = new double[n + 1];
    double[] height = new double[n + 1];
    double[] start = new double[n];
    double[] end = new double[n];
    double[] wall = new double[n];
    int[] piece = new int[n];
    boolean[] rigid = new boolean[n];
    int e = 0;
    for (Run run : runs) {
      if (e > 0) {
        rigid[e] = true;
        wall[e] = mesh.sections[run.from()].thickness();
        piece[e] = mesh.piece[run.from() - 1];
        elementOf[e++] = run.from() - 1;
      }
      int begin = e;
      for (int i = run.from(); i <= run.to() + 1; i++) {
        nodeOf[e + i - run.from()] = i;
        radius[e + i - run.from()] = mesh.radius[i];
        height[e + i - run.from()] = mesh.height[i];
      }
      for (int i = run.from(); i <= run.to(); i++, e++) {
        double half = 0.5 * mesh.sections[i].curvature() * mesh.length[i];
        start[e] = mesh.angle[i] - half;
        end[e] = mesh.angle[i] + half;
        wall[e] = mesh.sections[i].thickness();
        piece[e] = mesh.piece[i];
        elementOf[e] = i;
      }
      double bend = mesh.sections[run.from()].curvature();
      double along = start[begin] + 0.5 * bend * run.cut();
      radius[begin] += run.cut() * Math.cos(along);
      height[begin] += run.cut() * Math.sin(along);
      start[begin] += bend * run.cut();
      bend = mesh.sections[run.to()].curvature();
      along = end[e - 1] - 0.5 * bend * run.left();
      radius[e] -= run.left() * Math.cos(along);
      height[e] -= run.left() * Math.sin(along);
      end[e - 1] -= bend * run.left();
    }
    return new ShellMesh(radius, height, start, end, wall, piece, mesh.drawn, rigid);
  }

  /** A peak with the number of its element among all. */
  ShellState.Peak numbered(ShellState.Peak peak) {
    return peak.at(elementOf[peak.element()]);
  }

  /** A nearest place with the number of its element among all. */
  Touch.Nearest numbered(Touch.Nearest nearest) {
    return nearest.at(elementOf[nearest.element()]);
  }

  /** The unknowns of the part that gives way, from those of all nodes. */
  double[] part(double[] whole) {
    double[] x = new double[3 * nodeOf.length];
    for (int k = 0; k < nodeOf.length; k++) {
      System.arraycopy(whole, 3 * nodeOf[k], x, 3 * k, 3);
    }
    return x;
  }

  /** The number among all nodes of one of those that move. */
  int node(int moving) {
    return nodeOf[moving];
  }

  /** The number among all elements of one of those that give way. */
  int element(int moving) {
    return elementOf[moving];
  }

  /** A state with the rigid parts put back, moved with the walls beside them. */
  double[] whole(double[] x) {
    double[] all = rest.clone();
    int k = 0;
    for (int i = 0; i < all.length / 3; i++) {
      while (k + 1 < nodeOf.length && nodeOf[k + 1] <= i) {
        k++;
      }
      if (nodeOf[k] == i) {
        System.arraycopy(x, 3 * k, all, 3 * i, 3);
      } else {
        all[3 * i + 1] += x[3 * k + 1] - moving.height[k];
      }
    }
    return all;
  }
}
