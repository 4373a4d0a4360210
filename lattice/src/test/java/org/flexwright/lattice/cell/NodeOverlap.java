package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;

/**
 * Volumes of struts that meet, from the topology only.
 *
 * <p>Near a node the union belongs, in each direction, to the strut nearest in angle; strut k loses
 * the directions beyond its bisectors with the others. Radially the volume is r^3/(3 sin^3 theta);
 * from the bisector with strut m, at angle alpha, cot theta = cot(alpha/2) cos(phi - phi_m), so the
 * loss of strut k is r^3/3 times the integral over phi of the largest of these, if above 0.
 */
final class NodeOverlap {

  private static final int STEPS = 7200;

  private NodeOverlap() {}

  /** All directions in which struts leave a node. */
  static List<double[]> directions(Topology t, int node) {
    List<double[]> all = new ArrayList<>();
    for (Topology.Strut s : t.struts()) {
      double[] v = t.vector(s);
      double l = t.length(s);
      if (s.from() == node) {
        all.add(new double[] {v[0] / l, v[1] / l, v[2] / l});
      }
      if (s.to() == node) {
        all.add(new double[] {-v[0] / l, -v[1] / l, -v[2] / l});
      }
    }
    return all;
  }

  static double leastAngle(Topology t) {
    double least = Math.PI;
    for (int node = 0; node < t.nodes(); node++) {
      List<double[]> d = directions(t, node);
      for (int i = 0; i < d.size(); i++) {
        for (int j = 0; j < i; j++) {
          least = Math.min(least, Math.acos(Math.max(-1.0, dot(d.get(i), d.get(j)))));
        }
      }
    }
    return least;
  }

  /** Volume that all nodes of a cell of edge 1 lose, for struts of radius 1. */
  static double of(Topology t) {
    double sum = 0.0;
    for (int node = 0; node < t.nodes(); node++) {
      List<double[]> all = directions(t, node);
      for (double[] own : all) {
        sum += lost(own, all);
      }
    }
    return sum;
  }

  private static double lost(double[] own, List<double[]> all) {
    double[] a = Math.abs(own[0]) < 0.6 ? new double[] {1, 0, 0} : new double[] {0, 1, 0};
    double along = dot(a, own);
    for (int c = 0; c < 3; c++) {
      a[c] -= along * own[c];
    }
    double norm = Math.sqrt(dot(a, a));
    double[] u = {a[0] / norm, a[1] / norm, a[2] / norm};
    double[] w = cross(own, u);
    double sum = 0.0;
    for (int i = 0; i < STEPS; i++) {
      double phi = 2.0 * Math.PI * (i + 0.5) / STEPS;
      double most = 0.0;
      for (double[] other : all) {
        double cos = dot(own, other);
        if (other != own && cos > -0.999999) {
          // cot(alpha/2) cos(phi - phi_m) = (across . e_phi)/(1 - cos alpha)
          double across = Math.cos(phi) * dot(other, u) + Math.sin(phi) * dot(other, w);
          most = Math.max(most, across / (1.0 - cos));
        }
      }
      sum += most;
    }
    return sum * 2.0 * Math.PI / STEPS / 3.0;
  }

  /** Start and end of every strut that can touch the cell, one strut in six numbers. */
  static double[][] images(Topology t) {
    List<double[]> all = new ArrayList<>();
    for (Topology.Strut s : t.struts()) {
      double[] a = t.node(s.from());
      double[] v = t.vector(s);
      for (int k = 0; k < 125; k++) {
        int[] shift = {k / 25 - 2, k / 5 % 5 - 2, k % 5 - 2};
        double[] line = new double[6];
        boolean near = true;
        for (int c = 0; c < 3; c++) {
          line[c] = a[c] + shift[c];
          line[3 + c] = v[c];
          near &= Math.max(line[c], line[c] + v[c]) > -0.2;
          near &= Math.min(line[c], line[c] + v[c]) < 1.2;
        }
        if (near) {
          all.add(line);
        }
      }
    }
    return all.toArray(new double[0][]);
  }

  static boolean within(double[][] lines, double[] p, double radius) {
    for (double[] line : lines) {
      double[] v = {line[3], line[4], line[5]};
      double[] q = {p[0] - line[0], p[1] - line[1], p[2] - line[2]};
      double s = Math.max(0.0, Math.min(1.0, dot(q, v) / dot(v, v)));
      double sum = 0.0;
      for (int c = 0; c < 3; c++) {
        sum += (q[c] - s * v[c]) * (q[c] - s * v[c]);
      }
      if (sum < radius * radius) {
        return true;
      }
    }
    return false;
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
