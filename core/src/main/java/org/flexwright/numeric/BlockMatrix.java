package org.flexwright.numeric;

import java.util.Arrays;

/**
 * The values of a symmetric matrix of square blocks, on a {@link BlockPattern}.
 *
 * <p>Nothing is allocated after construction. Not thread-safe.
 */
public final class BlockMatrix {

  private final BlockPattern pattern;
  private final int size;
  private final int block;
  final double[] diagonal; // row by row, both halves kept
  final double[] beside; // block (low, high) of each pair, row by row

  /**
   * A matrix of zeros.
   *
   * @param pattern which blocks there are
   */
  public BlockMatrix(BlockPattern pattern) {
    this.pattern = pattern;
    size = pattern.size();
    block = size * size;
    diagonal = new double[pattern.nodes() * block];
    beside = new double[pattern.pairs() * block];
  }

  /**
   * Which blocks there are.
   *
   * @return the pattern
   */
  public BlockPattern pattern() {
    return pattern;
  }

  /** Sets every entry to zero. */
  public void clear() {
    Arrays.fill(diagonal, 0.0);
    Arrays.fill(beside, 0.0);
  }

  /**
   * Adds to the block of one node.
   *
   * @param node the node
   * @param k the block, row by row, symmetric
   */
  public void add(int node, double[] k) {
    int at = node * block;
    for (int i = 0; i < block; i++) {
      diagonal[at + i] += k[i];
    }
  }

  /**
   * Adds the matrix of a bar between two joined nodes.
   *
   * @param a its first node
   * @param b its second node, another one
   * @param pair the number of the pair, see {@link BlockPattern#pair}
   * @param k the matrix of both nodes, row by row, symmetric
   */
  public void add(int a, int b, int pair, double[] k) {
    int n = 2 * size;
    int low = a < b ? 0 : size;
    int high = size - low;
    int at = pair * block;
    for (int r = 0; r < size; r++) {
      for (int c = 0; c < size; c++) {
        diagonal[a * block + r * size + c] += k[r * n + c];
        diagonal[b * block + r * size + c] += k[(r + size) * n + c + size];
        beside[at + r * size + c] += k[(r + low) * n + c + high];
      }
    }
  }

  /**
   * Holds one unknown: its row and column become those of the unit matrix times a scale.
   *
   * @param node the node
   * @param of the unknown in the node
   * @param scale the diagonal entry, above 0
   */
  public void hold(int node, int of, double scale) {
    int d = node * block;
    for (int c = 0; c < size; c++) {
      diagonal[d + of * size + c] = 0.0;
      diagonal[d + c * size + of] = 0.0;
    }
    for (int k = pattern.firstNeighbour(node); k < pattern.firstNeighbour(node + 1); k++) {
      int other = pattern.neighbour(k);
      int at = pattern.pair(node, other) * block;
      for (int c = 0; c < size; c++) {
        beside[at + (node < other ? of * size + c : c * size + of)] = 0.0;
      }
    }
    diagonal[d + of * size + of] = scale;
  }

  /**
   * Multiplies the matrix with a vector.
   *
   * @param x the vector, node by node
   * @param out the product
   */
  public void times(double[] x, double[] out) {
    for (int i = 0; i < pattern.nodes(); i++) {
      for (int r = 0; r < size; r++) {
        double sum = 0.0;
        for (int c = 0; c < size; c++) {
          sum += diagonal[i * block + r * size + c] * x[i * size + c];
        }
        out[i * size + r] = sum;
      }
    }
    for (int i = 0; i < pattern.nodes(); i++) {
      for (int k = pattern.firstPair(i); k < pattern.firstPair(i + 1); k++) {
        int j = pattern.otherOf(k);
        for (int r = 0; r < size; r++) {
          double sum = 0.0;
          for (int c = 0; c < size; c++) {
            double v = beside[k * block + r * size + c];
            sum += v * x[j * size + c];
            out[j * size + c] += v * x[i * size + r];
          }
          out[i * size + r] += sum;
        }
      }
    }
  }

  /** The largest sum of sizes in a row. */
  double norm() {
    double[] sum = new double[pattern.nodes() * size];
    for (int i = 0; i < pattern.nodes(); i++) {
      for (int r = 0; r < size; r++) {
        for (int c = 0; c < size; c++) {
          sum[i * size + r] += Math.abs(diagonal[i * block + r * size + c]);
        }
      }
      for (int k = pattern.firstPair(i); k < pattern.firstPair(i + 1); k++) {
        int j = pattern.otherOf(k);
        for (int r = 0; r < size; r++) {
          for (int c = 0; c < size; c++) {
            double v = Math.abs(beside[k * block + r * size + c]);
            sum[i * size + r] += v;
            sum[j * size + c] += v;
          }
        }
      }
    }
    return Arrays.stream(sum).max().orElse(0.0);
  }
}
