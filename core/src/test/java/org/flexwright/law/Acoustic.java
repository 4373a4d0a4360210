package org.flexwright.law;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/** The acoustic form of an incompressible law by brute force over directions. */
final class Acoustic {

  private Acoustic() {}

  /** The least of A_piqj n_p n_q m_i m_j over unit normals n on a grid and unit slips m. */
  static double least(StrainEnergy law, double l1, double l2, int grid) {
    double[][][][] a = stiffness(law, new double[] {l1, l2, 1 / (l1 * l2)});
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= grid; i++) {
      double tilt = 0.5 * Math.PI * i / grid;
      for (int k = 0; k <= grid; k++) {
        double turn = 0.5 * Math.PI * k / grid;
        double[] n = {
          Math.sin(tilt) * Math.cos(turn), Math.sin(tilt) * Math.sin(turn), Math.cos(tilt)
        };
        double[] u = {
          Math.cos(tilt) * Math.cos(turn), Math.cos(tilt) * Math.sin(turn), -Math.sin(tilt)
        };
        double[] v = {-Math.sin(turn), Math.cos(turn), 0};
        double uu = form(a, n, u, u);
        double vv = form(a, n, v, v);
        double uv = 0.5 * (form(a, n, u, v) + form(a, n, v, u));
        least = Math.min(least, 0.5 * (uu + vv) - Math.hypot(0.5 * (uu - vv), uv));
      }
    }
    return least;
  }

  /** The same for normals and slips that both lie in one of the three principal planes. */
  static double leastInPlanes(StrainEnergy law, double l1, double l2, int grid) {
    double[][][][] a = stiffness(law, new double[] {l1, l2, 1 / (l1 * l2)});
    double least = Double.POSITIVE_INFINITY;
    for (int plane = 0; plane < 3; plane++) {
      for (int k = 0; k <= grid; k++) {
        double turn = 0.5 * Math.PI * k / grid;
        double[] n = new double[3];
        double[] m = new double[3];
        n[plane] = Math.cos(turn);
        n[(plane + 1) % 3] = Math.sin(turn);
        m[plane] = -Math.sin(turn);
        m[(plane + 1) % 3] = Math.cos(turn);
        least = Math.min(least, form(a, n, m, m));
      }
    }
    return least;
  }

  private static double form(double[][][][] a, double[] n, double[] m, double[] o) {
    double sum = 0;
    for (int p = 0; p < 3; p++) {
      for (int i = 0; i < 3; i++) {
        for (int q = 0; q < 3; q++) {
          for (int j = 0; j < 3; j++) {
            sum += a[p][i][q][j] * n[p] * n[q] * m[i] * o[j];
          }
        }
      }
    }
    return sum;
  }

  /**
   * The tangent stiffness d2W/dF_ip dF_jq pushed forward, by second differences of the energy of
   * the singular values of F: no formula for the shear terms is needed.
   */
  private static double[][][][] stiffness(StrainEnergy law, double[] l) {
    double[][][][] a = new double[3][3][3][3];
    double h = 1e-4;
    double[][] f = {{l[0], 0, 0}, {0, l[1], 0}, {0, 0, l[2]}};
    for (int i = 0; i < 3; i++) {
      for (int p = 0; p < 3; p++) {
        for (int j = 0; j < 3; j++) {
          for (int q = 0; q < 3; q++) {
            boolean zero = !((i == p && j == q) || (i == j && p == q) || (i == q && j == p));
            if (zero) {
              continue; // by symmetry of the principal axes
            }
            // d2W/dF_ip dF_jq, then times l_p l_q
            double second =
                (energy(law, f, i, p, h * l[p], j, q, h * l[q])
                        - energy(law, f, i, p, h * l[p], j, q, -h * l[q])
                        - energy(law, f, i, p, -h * l[p], j, q, h * l[q])
                        + energy(law, f, i, p, -h * l[p], j, q, -h * l[q]))
                    / (4 * h * h);
            a[p][i][q][j] = second;
          }
        }
      }
    }
    return a;
  }

  private static double energy(
      StrainEnergy law, double[][] f, int i, int p, double d, int j, int q, double e) {
    double[][] g = {f[0].clone(), f[1].clone(), f[2].clone()};
    g[i][p] += d;
    g[j][q] += e;
    double[] stretches =
        new SingularValueDecomposition(new Array2DRowRealMatrix(g)).getSingularValues();
    return law.energy(stretches[0], stretches[1], stretches[2]);
  }
}
