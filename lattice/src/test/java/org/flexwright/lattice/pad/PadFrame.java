package org.flexwright.lattice.pad;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.UnitCell;

/**
 * A frame of a whole pad, one Timoshenko strut per edge, solved by conjugate gradients without any
 * matrix: another program and another solver than the ones behind the table.
 *
 * <p>A strut stores, with m the unit vector along it, du the difference of the end displacements
 * and p, q the end rotations: stretch EA/L (du m)^2/2; twist GJ/L ((q - p) m)^2/2; bending by the
 * two moment modes of a beam, antisymmetric 3 EI/(L (1 + shear)) |g|^2 2 with g = (p + q)/2 - (m x
 * du)/L, symmetric EI/L |(q - p) across m|^2/2.
 */
final class PadFrame {

  private final List<double[]> nodes = new ArrayList<>();
  private final List<int[]> struts = new ArrayList<>();
  private final double length;
  private final double x;
  private final double poisson;
  private final int across;
  private final int high;

  PadFrame(UnitCell cell, int across, int high, double x, double poisson) {
    this.x = x;
    this.poisson = poisson;
    this.across = across;
    this.high = high;
    length = cell.strutOverCell();
    for (int i = 0; i <= 4 * across; i++) {
      for (int j = 0; j <= 4 * across; j++) {
        for (int k = 0; k <= 4 * high; k++) {
          if (isNode(cell, i, j, k)) {
            nodes.add(new double[] {i / 4.0, j / 4.0, k / 4.0});
          }
        }
      }
    }
    for (int a = 0; a < nodes.size(); a++) {
      for (int b = a + 1; b < nodes.size(); b++) {
        if (nodes.get(b)[0] - nodes.get(a)[0] > 1.0) {
          break; // nodes are in order of their first coordinate
        }
        if (Math.abs(distance(a, b) - length) < 1e-9) {
          struts.add(new int[] {a, b});
        }
      }
    }
  }

  private static boolean isNode(UnitCell cell, int i, int j, int k) {
    if (cell == Cells.BODY_CENTRED) {
      boolean corner = i % 4 == 0 && j % 4 == 0 && k % 4 == 0;
      return corner || (i % 4 == 2 && j % 4 == 2 && k % 4 == 2);
    }
    int odd = i % 2 + j % 2 + k % 2;
    boolean zero = i % 4 == 0 || j % 4 == 0 || k % 4 == 0;
    boolean two = i % 4 == 2 || j % 4 == 2 || k % 4 == 2;
    return odd == 1 && zero && two;
  }

  private double distance(int a, int b) {
    double s = 0.0;
    for (int c = 0; c < 3; c++) {
      s += Math.pow(nodes.get(a)[c] - nodes.get(b)[c], 2);
    }
    return Math.sqrt(s);
  }

  int struts() {
    return struts.size();
  }

  /** Force over footprint and strain, over the modulus of the solid, both faces held. */
  double modulus() {
    int n = 6 * nodes.size();
    boolean[] held = new boolean[n];
    double[] u = new double[n];
    for (int a = 0; a < nodes.size(); a++) {
      double z = nodes.get(a)[2];
      if (z == 0.0 || z == high) {
        for (int c = 0; c < 6; c++) {
          held[6 * a + c] = true;
        }
        u[6 * a + 2] = z == 0.0 ? 0.0 : -1.0;
      }
    }
    double[] scale = diagonal(n);
    double[] r = forces(u);
    double[] p = new double[n];
    double rz = 0.0;
    for (int i = 0; i < n; i++) {
      r[i] = held[i] ? 0.0 : -r[i];
      p[i] = r[i] / scale[i];
      rz += r[i] * p[i];
    }
    double first = rz;
    for (int it = 0; it < 60_000 && rz > 1e-20 * first; it++) {
      double[] q = forces(p);
      double pq = 0.0;
      for (int i = 0; i < n; i++) {
        q[i] = held[i] ? 0.0 : q[i];
        pq += p[i] * q[i];
      }
      double step = rz / pq;
      double next = 0.0;
      for (int i = 0; i < n; i++) {
        u[i] += step * p[i];
        r[i] -= step * q[i];
        next += r[i] * r[i] / scale[i];
      }
      double turn = next / rz;
      rz = next;
      for (int i = 0; i < n; i++) {
        p[i] = r[i] / scale[i] + turn * p[i];
      }
    }
    double[] f = forces(u);
    double total = 0.0;
    for (int a = 0; a < nodes.size(); a++) {
      total -= nodes.get(a)[2] == high ? f[6 * a + 2] : 0.0;
    }
    return total / (across * across) * high;
  }

  private double[] diagonal(int n) {
    double[] d = new double[n];
    double i = Math.PI * Math.pow(x * length, 4) / 64.0;
    double area = Math.PI * Math.pow(x * length, 2) / 4.0;
    for (int[] s : struts) {
      for (int end : s) {
        for (int c = 0; c < 3; c++) {
          d[6 * end + c] += area / length / 3.0;
          d[6 * end + 3 + c] += 3.0 * i / length;
        }
      }
    }
    return d;
  }

  private double[] forces(double[] u) {
    double[] f = new double[u.length];
    double d = x * length;
    double area = Math.PI * d * d / 4.0;
    double i = Math.PI * Math.pow(d, 4) / 64.0;
    double g = 0.5 / (1.0 + poisson);
    double kappa = 6.0 * (1.0 + poisson) / (7.0 + 6.0 * poisson);
    double shear = 12.0 * i / (kappa * g * area * length * length);
    double stretch = area / length;
    double twist = 2.0 * g * i / length;
    double sway = 12.0 * i / (length * (1.0 + shear));
    double bend = i / length;
    for (int[] s : struts) {
      int a = 6 * s[0];
      int b = 6 * s[1];
      double[] m = new double[3];
      double along = 0.0;
      double turn = 0.0;
      for (int c = 0; c < 3; c++) {
        m[c] = (nodes.get(s[1])[c] - nodes.get(s[0])[c]) / length;
        along += m[c] * (u[b + c] - u[a + c]);
        turn += m[c] * (u[b + 3 + c] - u[a + 3 + c]);
      }
      double[] chord =
          cross(m, new double[] {u[b] - u[a], u[b + 1] - u[a + 1], u[b + 2] - u[a + 2]});
      double mean = 0.0;
      for (int c = 0; c < 3; c++) {
        mean += m[c] * 0.5 * (u[a + 3 + c] + u[b + 3 + c]);
      }
      double[] sways = new double[3];
      for (int c = 0; c < 3; c++) {
        double rotation = 0.5 * (u[a + 3 + c] + u[b + 3 + c]) - mean * m[c];
        sways[c] = sway * (rotation - chord[c] / length);
        double bends = bend * (u[b + 3 + c] - u[a + 3 + c] - turn * m[c]) + twist * turn * m[c];
        f[b + 3 + c] += bends + 0.5 * sways[c];
        f[a + 3 + c] += -bends + 0.5 * sways[c];
      }
      double[] push =
          cross(m, sways); // du . (m x v) = v . (du x m), so the chord's force is m x sways
      for (int c = 0; c < 3; c++) {
        double force = stretch * along * m[c] + push[c] / length;
        f[b + c] += force;
        f[a + c] -= force;
      }
    }
    return f;
  }

  private static double[] cross(double[] a, double[] b) {
    return new double[] {
      a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]
    };
  }
}
