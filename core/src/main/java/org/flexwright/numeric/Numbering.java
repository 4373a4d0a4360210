package org.flexwright.numeric;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Numberings that do not depend on the caller's, or little: where an order of elimination has a
 * choice between equals it follows them.
 */
final class Numbering {

  private static final int LOOKS = 4;

  private Numbering() {}

  /** An order of renumbered nodes, in the numbers before. */
  static int[] composed(int[] numbering, int[] order) {
    int[] out = new int[order.length];
    for (int k = 0; k < order.length; k++) {
      out[k] = numbering[order[k]];
    }
    return out;
  }

  /** By place. */
  static int[] byPlace(int nodes, double[] at) {
    return IntStream.range(0, nodes)
        .boxed()
        .sorted(
            Comparator.<Integer>comparingDouble(i -> at[3 * i])
                .thenComparingDouble(i -> at[3 * i + 1])
                .thenComparingDouble(i -> at[3 * i + 2]))
        .mapToInt(i -> i)
        .toArray();
  }

  /**
   * By distance from a node at the rim, few neighbours first (Cuthill and McKee 1969, from memory).
   */
  static int[] byDistance(BlockPattern pattern) {
    int n = pattern.nodes();
    int[] order = new int[n];
    boolean[] seen = new boolean[n];
    int done = 0;
    for (int i = 0; i < n; i++) {
      if (seen[i]) {
        continue;
      }
      int start = i;
      int end = 0;
      for (int look = 0; look < LOOKS; look++) {
        boolean[] tried = seen.clone();
        end = spread(pattern, start, order, done, tried);
        start = order[end - 1];
      }
      end = spread(pattern, start, order, done, seen);
      done = end;
    }
    return order;
  }

  private static int spread(
      BlockPattern pattern, int start, int[] order, int from, boolean[] seen) {
    order[from] = start;
    seen[start] = true;
    int end = from + 1;
    for (int k = from; k < end; k++) {
      int node = order[k];
      int first = pattern.firstNeighbour(node);
      int last = pattern.firstNeighbour(node + 1);
      Integer[] around = new Integer[last - first];
      int count = 0;
      for (int a = first; a < last; a++) {
        int other = pattern.neighbour(a);
        if (!seen[other]) {
          seen[other] = true;
          around[count++] = other;
        }
      }
      Arrays.sort(around, 0, count, Comparator.comparingInt(i -> degree(pattern, i)));
      for (int a = 0; a < count; a++) {
        order[end++] = around[a];
      }
    }
    return end;
  }

  private static int degree(BlockPattern pattern, int node) {
    return pattern.firstNeighbour(node + 1) - pattern.firstNeighbour(node);
  }
}
