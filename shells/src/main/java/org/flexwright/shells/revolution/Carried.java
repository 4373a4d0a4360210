package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * Carries displacements from one mesh of a meridian to another: piece by piece, at equal shares of
 * its length, along straight lines between nodes.
 */
final class Carried {

  private Carried() {}

  /** The first node of each stretch of one piece, flexible or rigid, and the last node of all. */
  private static int[] stretches(ShellMesh mesh) {
    int n = mesh.elements();
    int[] at = new int[n + 1];
    int count = 0;
    for (int i = 0; i < n; i++) {
      if (i == 0 || mesh.piece[i] != mesh.piece[i - 1] || mesh.rigid[i] != mesh.rigid[i - 1]) {
        at[count++] = i;
      }
    }
    at[count++] = n;
    return Arrays.copyOf(at, count);
  }

  /** Whether two meshes are of the same pieces. */
  static boolean alike(ShellMesh a, ShellMesh b) {
    int[] p = stretches(a);
    int[] q = stretches(b);
    boolean same = p.length == q.length;
    for (int k = 0; k < p.length - 1 && same; k++) {
      same = a.piece[p[k]] == b.piece[q[k]] && a.rigid[p[k]] == b.rigid[q[k]];
    }
    return same;
  }

  /**
   * Adds a share of the displacements of a state to another state.
   *
   * @param from the mesh of the state
   * @param x the state
   * @param share what to multiply displacements with
   * @param to a mesh alike
   * @param out a state of that mesh
   */
  static void add(ShellMesh from, double[] x, double share, ShellMesh to, double[] out) {
    int[] p = stretches(from);
    int[] q = stretches(to);
    for (int k = 0; k < p.length - 1; k++) {
      double[] a = shares(from, p[k], p[k + 1]);
      double[] b = shares(to, q[k], q[k + 1]);
      int j = 0;
      for (int i = k == 0 ? 0 : 1; i < b.length; i++) {
        while (j < a.length - 2 && a[j + 1] < b[i]) {
          j++;
        }
        double part = (b[i] - a[j]) / (a[j + 1] - a[j]);
        int node = p[k] + j;
        for (int c = 0; c < 3; c++) {
          double u = x[3 * node + c] - rest(from, node, c);
          double v = x[3 * node + 3 + c] - rest(from, node + 1, c);
          out[3 * (q[k] + i) + c] += share * (u + part * (v - u));
        }
      }
    }
  }

  private static double rest(ShellMesh mesh, int node, int which) {
    return which == 0 ? mesh.radius[node] : which == 1 ? mesh.height[node] : 0.0;
  }

  /** Shares of the length of a stretch at its nodes, from 0 to 1. */
  private static double[] shares(ShellMesh mesh, int from, int to) {
    double[] at = new double[to - from + 1];
    for (int i = 1; i < at.length; i++) {
      at[i] = at[i - 1] + mesh.length[from + i - 1];
    }
    double all = at[at.length - 1];
    for (int i = 0; i < at.length; i++) {
      at[i] /= all;
    }
    at[at.length - 1] = 1.0;
    return at;
  }
}
