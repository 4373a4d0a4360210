package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * A symmetric matrix stored by rows from the first entry that is not zero to the diagonal, for a
 * chain of nodes some of which touch others far along the chain. Factored as L D L^T; the signs of
 * D tell the inertia (Sylvester).
 *
 * <p>Not thread-safe. Source: envelope elimination, textbook (George and Liu 1981, Computer
 * Solution of Large Sparse Positive Definite Systems; from memory).
 */
final class Envelope {

  private static final int B = 3;

  private final int size;
  private final int[] from; // first column of each row
  private final int[] start; // where column 0 of a row would be
  private final double[] pivot;
  private double[] values = new double[0];
  private int negative;

  Envelope(int nodes) {
    size = B * nodes;
    from = new int[size];
    start = new int[size];
    pivot = new double[size];
  }

  /** Takes the shape of a chain without couplings. */
  void reset() {
    for (int i = 0; i < size; i++) {
      from[i] = B * Math.max(0, i / B - 1);
    }
  }

  /** Makes room for couplings of rows with a column before them. */
  void couple(int row, int rows, int column) {
    for (int i = row; i < row + rows; i++) {
      from[i] = Math.min(from[i], column);
    }
  }

  /** Sets all entries of the shape to zero; to be called before entries are added. */
  void clear() {
    int count = 0;
    for (int i = 0; i < size; i++) {
      start[i] = count - from[i];
      count += i - from[i] + 1;
    }
    if (values.length < count) {
      values = new double[count + count / 4];
    } else {
      Arrays.fill(values, 0, count, 0.0);
    }
  }

  /** Adds to the entry of a row and a column, in either order, and to its mirror image. */
  void add(int row, int column, double value) {
    values[row >= column ? start[row] + column : start[column] + row] += value;
  }

  /** Adds the 6 x 6 matrix of the nodes i and i + 1, only its upper half read. */
  void add(int i, double[] k) {
    for (int r = 0; r < 2 * B; r++) {
      for (int c = r; c < 2 * B; c++) {
        values[start[B * i + c] + B * i + r] += k[2 * B * r + c];
      }
    }
  }

  /** Holds one unknown: its row and column become those of the unit matrix. */
  void hold(int at) {
    Arrays.fill(values, start[at] + from[at], start[at] + at, 0.0);
    values[start[at] + at] = 1.0;
    for (int i = at + 1; i < size; i++) {
      if (from[i] <= at) {
        values[start[i] + at] = 0.0;
      }
    }
  }

  /** Multiplies the matrix, not yet factored, with a vector. */
  void times(double[] x, double[] out) {
    Arrays.fill(out, 0.0);
    for (int i = 0; i < size; i++) {
      for (int j = from[i]; j < i; j++) {
        out[i] += values[start[i] + j] * x[j];
        out[j] += values[start[i] + j] * x[i];
      }
      out[i] += values[start[i] + i] * x[i];
    }
  }

  /**
   * Factors the matrix in its place.
   *
   * @return whether no pivot was zero
   */
  boolean factor() {
    negative = 0;
    for (int i = 0; i < size; i++) {
      int row = start[i];
      for (int j = from[i]; j < i; j++) {
        values[row + j] -= dot(row, start[j], Math.max(from[i], from[j]), j);
      }
      double d = values[row + i];
      for (int j = from[i]; j < i; j++) {
        double w = values[row + j];
        double l = w / pivot[j];
        values[row + j] = l;
        d -= w * l;
      }
      if (!(Math.abs(d) > 0.0) || Double.isInfinite(d)) {
        return false;
      }
      pivot[i] = d;
      if (d < 0.0) {
        negative++;
      }
    }
    return true;
  }

  private double dot(int a, int b, int low, int high) {
    double even = 0.0;
    double odd = 0.0;
    int k = low;
    for (; k + 1 < high; k += 2) {
      even += values[a + k] * values[b + k];
      odd += values[a + k + 1] * values[b + k + 1];
    }
    return k < high ? even + odd + values[a + k] * values[b + k] : even + odd;
  }

  /** The negative eigenvalues of the matrix factored last. */
  int negative() {
    return negative;
  }

  /** Solves with the factors; the right side is replaced by the solution. */
  void solve(double[] x) {
    for (int i = 0; i < size; i++) {
      double sum = x[i];
      for (int j = from[i]; j < i; j++) {
        sum -= values[start[i] + j] * x[j];
      }
      x[i] = sum;
    }
    for (int i = 0; i < size; i++) {
      x[i] /= pivot[i];
    }
    for (int i = size - 1; i >= 0; i--) {
      for (int j = from[i]; j < i; j++) {
        x[j] -= values[start[i] + j] * x[i];
      }
    }
  }
}
