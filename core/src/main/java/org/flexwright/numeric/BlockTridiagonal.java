package org.flexwright.numeric;

import java.util.Arrays;
import org.flexwright.internal.Require;

/**
 * A symmetric matrix of 3 x 3 blocks on the diagonal and beside it: a chain of nodes with three
 * unknowns each. Factored as L D L^T by blocks; the signs of D tell the inertia.
 *
 * <p>A chain of n nodes costs O(n); nothing is allocated after construction. Not thread-safe.
 * Source: block elimination, textbook (Golub and Van Loan, Matrix Computations; from memory).
 */
public final class BlockTridiagonal {

  private static final int B = 3;
  private static final int BB = 9;

  private final int nodes;
  private final double[] diagonal; // row by row, both halves kept
  private final double[] beside; // block (i, i + 1), row by row
  private final double[] inverse; // inverses of the pivot blocks
  private final double[] factor; // inverse of pivot i times block (i, i + 1)
  private final double[] pivot = new double[BB];
  private int negative;

  /**
   * A matrix of zeros.
   *
   * @param nodes the number of nodes, at least 1
   */
  public BlockTridiagonal(int nodes) {
    this.nodes = Require.atLeast("nodes of a chain", nodes, 1);
    diagonal = new double[BB * nodes];
    beside = new double[BB * nodes];
    inverse = new double[BB * nodes];
    factor = new double[BB * nodes];
  }

  /** Sets every entry to zero. */
  public void clear() {
    Arrays.fill(diagonal, 0.0);
    Arrays.fill(beside, 0.0);
  }

  /**
   * Adds a 6 x 6 matrix of the nodes i and i + 1, only its upper half read.
   *
   * @param i the first node
   * @param k the matrix, row by row
   */
  public void add(int i, double[] k) {
    int d = BB * i;
    int e = d + BB;
    for (int r = 0; r < B; r++) {
      for (int c = r; c < B; c++) {
        double a = k[6 * r + c];
        double b = k[6 * (r + B) + c + B];
        diagonal[d + B * r + c] += a;
        diagonal[e + B * r + c] += b;
        if (c != r) {
          diagonal[d + B * c + r] += a;
          diagonal[e + B * c + r] += b;
        }
      }
      for (int c = 0; c < B; c++) {
        beside[d + B * r + c] += k[6 * r + c + B];
      }
    }
  }

  /**
   * Adds to one entry of a diagonal block and to its mirror image.
   *
   * @param i the node
   * @param r the row in the block
   * @param c the column in the block
   * @param value what to add
   */
  public void add(int i, int r, int c, double value) {
    diagonal[BB * i + B * r + c] += value;
    if (r != c) {
      diagonal[BB * i + B * c + r] += value;
    }
  }

  /**
   * Holds one unknown: its row and column become those of the unit matrix times a scale.
   *
   * @param i the node
   * @param r the unknown in the node
   * @param scale the diagonal entry, above 0
   */
  public void hold(int i, int r, double scale) {
    int d = BB * i;
    for (int c = 0; c < B; c++) {
      diagonal[d + B * r + c] = 0.0;
      diagonal[d + B * c + r] = 0.0;
      beside[d + B * r + c] = 0.0;
      if (i > 0) {
        beside[d - BB + B * c + r] = 0.0;
      }
    }
    diagonal[d + B * r + r] = scale;
  }

  /**
   * Multiplies the matrix with a vector.
   *
   * @param x the vector
   * @param out the product
   */
  public void times(double[] x, double[] out) {
    for (int i = 0; i < nodes; i++) {
      for (int r = 0; r < B; r++) {
        double sum = 0.0;
        for (int c = 0; c < B; c++) {
          sum += diagonal[BB * i + B * r + c] * x[B * i + c];
          if (i + 1 < nodes) {
            sum += beside[BB * i + B * r + c] * x[B * (i + 1) + c];
          }
          if (i > 0) {
            sum += beside[BB * (i - 1) + B * c + r] * x[B * (i - 1) + c];
          }
        }
        out[B * i + r] = sum;
      }
    }
  }

  /**
   * Factors the matrix; the matrix itself is kept. A pivot block that is singular to the last digit
   * is given the stiffness of that digit.
   *
   * @return whether every pivot block could be inverted
   */
  public boolean factor() {
    negative = 0;
    double[] p = pivot;
    for (int i = 0; i < nodes; i++) {
      int d = BB * i;
      System.arraycopy(diagonal, d, p, 0, BB);
      if (i > 0) {
        subtract(d - BB, p);
      }
      if (!invert(p, d)) {
        return false;
      }
      if (i + 1 < nodes) {
        multiply(d);
      }
    }
    return true;
  }

  /** Pivot block less U^T F of the node before. */
  private void subtract(int before, double[] p) {
    for (int r = 0; r < B; r++) {
      for (int c = r; c < B; c++) {
        double s =
            beside[before + r] * factor[before + c]
                + beside[before + B + r] * factor[before + B + c]
                + beside[before + 2 * B + r] * factor[before + 2 * B + c];
        p[B * r + c] -= s;
        if (r != c) {
          p[B * c + r] = p[B * r + c];
        }
      }
    }
  }

  private boolean invert(double[] p, int d) {
    if (inverted(p, d)) {
      return true;
    }
    // singular to the last digit, as a chain that nothing holds yet: what rounding would leave
    double least = Math.ulp(Math.abs(p[0]) + Math.abs(p[4]) + Math.abs(p[8]));
    p[0] += least;
    p[4] += least;
    p[8] += least;
    return inverted(p, d);
  }

  private boolean inverted(double[] p, int d) {
    double c00 = p[4] * p[8] - p[5] * p[5];
    double c01 = p[2] * p[5] - p[1] * p[8];
    double c02 = p[1] * p[5] - p[2] * p[4];
    double det = p[0] * c00 + p[1] * c01 + p[2] * c02;
    if (!(Math.abs(det) > 0.0) || Double.isInfinite(det)) {
      return false;
    }
    double minor = p[0] * p[4] - p[1] * p[1];
    count(p[0], minor, det);
    double f = 1.0 / det;
    inverse[d] = c00 * f;
    inverse[d + 1] = c01 * f;
    inverse[d + 2] = c02 * f;
    inverse[d + 3] = inverse[d + 1];
    inverse[d + 4] = (p[0] * p[8] - p[2] * p[2]) * f;
    inverse[d + 5] = (p[1] * p[2] - p[0] * p[5]) * f;
    inverse[d + 6] = inverse[d + 2];
    inverse[d + 7] = inverse[d + 5];
    inverse[d + 8] = minor * f;
    return !Double.isNaN(inverse[d]);
  }

  /** Sign changes along the leading minors are the negative eigenvalues (Jacobi). */
  private void count(double first, double second, double third) {
    int changes = 0;
    double last = 1.0;
    for (int k = 0; k < B; k++) {
      double m = k == 0 ? first : k == 1 ? second : third;
      // a zero minor between others of unlike signs is passed either way with the same count
      double sign = m == 0.0 ? -last : m;
      if (sign * last < 0.0) {
        changes++;
      }
      last = Math.signum(sign);
    }
    negative += changes;
  }

  private void multiply(int d) {
    for (int r = 0; r < B; r++) {
      for (int c = 0; c < B; c++) {
        factor[d + B * r + c] =
            inverse[d + B * r] * beside[d + c]
                + inverse[d + B * r + 1] * beside[d + B + c]
                + inverse[d + B * r + 2] * beside[d + 2 * B + c];
      }
    }
  }

  /**
   * The negative eigenvalues of the matrix factored last.
   *
   * @return how many
   */
  public int negative() {
    return negative;
  }

  /**
   * Solves with the factors.
   *
   * @param x the right side, replaced by the solution
   */
  public void solve(double[] x) {
    for (int i = 1; i < nodes; i++) {
      int u = BB * (i - 1);
      int a = B * (i - 1);
      for (int r = 0; r < B; r++) {
        x[a + B + r] -=
            factor[u + r] * x[a] + factor[u + B + r] * x[a + 1] + factor[u + 2 * B + r] * x[a + 2];
      }
    }
    for (int i = nodes - 1; i >= 0; i--) {
      int d = BB * i;
      int a = B * i;
      double x0 = x[a];
      double x1 = x[a + 1];
      double x2 = x[a + 2];
      for (int r = 0; r < B; r++) {
        double v =
            inverse[d + B * r] * x0 + inverse[d + B * r + 1] * x1 + inverse[d + B * r + 2] * x2;
        if (i + 1 < nodes) {
          v -=
              factor[d + B * r] * x[a + B]
                  + factor[d + B * r + 1] * x[a + B + 1]
                  + factor[d + B * r + 2] * x[a + B + 2];
        }
        x[a + r] = v;
      }
    }
  }
}
