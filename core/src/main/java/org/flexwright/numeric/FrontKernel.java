package org.flexwright.numeric;

/**
 * Dense work of a front, column by column: the factors L D L^T of the columns it eliminates and
 * what they take off the rest.
 *
 * <p>Loops run down columns, which the compiler turns into vector instructions. Work space; not
 * thread-safe.
 */
final class FrontKernel {

  private static final int DEEP = 6; // columns taken at once
  private static final int BLOCK = 48;
  private static final int TILE = 128;
  private static final double NOTHING = 1e-13; // of what a pivot was before elimination

  private final double[] packed = new double[BLOCK * TILE];
  int negative;
  int free; // first column without a pivot, or -1

  /**
   * Factors the first p columns of m rows.
   *
   * @param a the columns, of m rows each, from a0 on
   * @param was sizes that the pivots had before elimination
   */
  void factor(double[] a, int a0, int m, int p, double[] d, int d0, double[] was, int was0) {
    free = -1;
    for (int k = 0; k < p; k += BLOCK) {
      int end = Math.min(p, k + BLOCK);
      for (int j = k; j < end; j += DEEP) {
        int stop = Math.min(end, j + DEEP);
        columns(a, a0, m, j, stop, d, d0, was, was0);
        if (stop < end) {
          int c = a0 + stop * m + stop;
          subtract(a, c, m, m - stop, end - stop, a, a0 + j * m + stop, m, stop - j, d, d0 + j);
        }
      }
      if (end < p) {
        int c = a0 + end * m + end;
        subtract(a, c, m, m - end, p - end, a, a0 + k * m + end, m, end - k, d, d0 + k);
      }
    }
  }

  /** A few columns, each for itself. */
  private void columns(
      double[] a, int a0, int m, int from, int to, double[] d, int d0, double[] was, int was0) {
    for (int j = from; j < to; j++) {
      int at = a0 + j * m;
      for (int k = from; k < j; k++) {
        int left = a0 + k * m;
        double by = d[d0 + k] * a[left + j];
        for (int i = j; i < m; i++) {
          a[at + i] -= by * a[left + i];
        }
      }
      double pivot = a[at + j];
      if (!(Math.abs(pivot) > NOTHING * was[was0 + j])) {
        if (free < 0) {
          free = j;
        }
        pivot = Math.max(was[was0 + j], Double.MIN_NORMAL);
      } else if (pivot < 0.0) {
        negative++;
      }
      d[d0 + j] = pivot;
      double by = 1.0 / pivot;
      for (int i = j + 1; i < m; i++) {
        a[at + i] *= by;
      }
    }
  }

  /**
   * Takes L D L^T off the lower part of n rows and q columns: c(i, j) -= sum_k l(i, k) d(k) l(j,
   * k), i at least j.
   */
  void subtract(
      double[] c,
      int c0,
      int rowsOfC,
      int n,
      int q,
      double[] l,
      int l0,
      int rowsOfL,
      int deep,
      double[] d,
      int d0) {
    for (int done = 0; done < deep; done += BLOCK) {
      int now = Math.min(BLOCK, deep - done);
      for (int r = 0; r < n; r += TILE) {
        int high = Math.min(n, r + TILE);
        for (int k = 0; k < now; k++) {
          System.arraycopy(l, l0 + (done + k) * rowsOfL + r, packed, k * TILE, high - r);
        }
        int last = Math.min(q, high);
        for (int j = 0; j < last; j++) {
          int low = Math.max(r, j);
          column(
              c,
              c0 + j * rowsOfC + low,
              high - low,
              low - r,
              l,
              l0 + done * rowsOfL + j,
              rowsOfL,
              now,
              d,
              d0 + done);
        }
      }
    }
  }

  private void column(
      double[] c,
      int at,
      int n,
      int skip,
      double[] l,
      int row,
      int rowsOfL,
      int deep,
      double[] d,
      int d0) {
    int k = 0;
    for (; k + DEEP <= deep; k += DEEP) {
      int e = row + k * rowsOfL;
      double a0 = d[d0 + k] * l[e];
      double a1 = d[d0 + k + 1] * l[e + rowsOfL];
      double a2 = d[d0 + k + 2] * l[e + 2 * rowsOfL];
      double a3 = d[d0 + k + 3] * l[e + 3 * rowsOfL];
      double a4 = d[d0 + k + 4] * l[e + 4 * rowsOfL];
      double a5 = d[d0 + k + 5] * l[e + 5 * rowsOfL];
      six(c, at, n, packed, k * TILE + skip, a0, a1, a2, a3, a4, a5);
    }
    for (; k < deep; k++) {
      double by = d[d0 + k] * l[row + k * rowsOfL];
      int p = k * TILE + skip;
      for (int i = 0; i < n; i++) {
        c[at + i] -= by * packed[p + i];
      }
    }
  }

  private static void six(
      double[] c,
      int at,
      int n,
      double[] p,
      int p0,
      double a0,
      double a1,
      double a2,
      double a3,
      double a4,
      double a5) {
    int p1 = p0 + TILE;
    int p2 = p1 + TILE;
    int p3 = p2 + TILE;
    int p4 = p3 + TILE;
    int p5 = p4 + TILE;
    for (int i = 0; i < n; i++) {
      c[at + i] -=
          a0 * p[p0 + i]
              + a1 * p[p1 + i]
              + a2 * p[p2 + i]
              + a3 * p[p3 + i]
              + a4 * p[p4 + i]
              + a5 * p[p5 + i];
    }
  }
}
