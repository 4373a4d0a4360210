package org.flexwright.numeric;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * An order of elimination by cutting the mesh in two, again and again, at the middle of its longest
 * side: first both halves, last the nodes between them. Good for bodies that are truly
 * three-dimensional. Small rests are left to {@link MinimumDegree}.
 *
 * <p>Source: George 1973, Nested dissection of a regular finite element mesh (from memory).
 */
final class NestedDissection {

  private static final int SMALL = 200;

  private final BlockPattern pattern;
  private final double[] at; // three coordinates of each node
  private final int[] side;
  private final int[] number;
  private final int[] order;
  private int done;

  private NestedDissection(BlockPattern pattern, double[] at) {
    this.pattern = pattern;
    this.at = at;
    side = new int[pattern.nodes()];
    number = new int[pattern.nodes()];
    order = new int[pattern.nodes()];
  }

  /** The nodes in their order of elimination. */
  static int[] order(BlockPattern pattern, double[] coordinates) {
    NestedDissection run = new NestedDissection(pattern, coordinates);
    run.cut(IntStream.range(0, pattern.nodes()).toArray());
    return run.order;
  }

  private void cut(int[] nodes) {
    if (nodes.length <= SMALL) {
      BlockPattern part = pattern.among(nodes, nodes.length, number);
      for (int k : MinimumDegree.order(part)) {
        order[done++] = nodes[k];
      }
      return;
    }
    int axis = longest(nodes);
    Integer[] sorted = Arrays.stream(nodes).boxed().toArray(Integer[]::new);
    Arrays.sort(
        sorted,
        Comparator.<Integer>comparingDouble(i -> at[3 * i + axis])
            .thenComparingDouble(i -> at[3 * i + (axis + 1) % 3])
            .thenComparingDouble(i -> at[3 * i + (axis + 2) % 3])
            .thenComparingInt(i -> i));
    int half = level(sorted, axis);
    for (int k = 0; k < sorted.length; k++) {
      side[sorted[k]] = k < half ? 1 : 2;
    }
    // the nodes of the first half that touch the second part the two
    int[] first = new int[half];
    int[] between = new int[half];
    int a = 0;
    int b = 0;
    for (int k = 0; k < half; k++) {
      int i = sorted[k];
      boolean touches = false;
      for (int n = pattern.firstNeighbour(i); n < pattern.firstNeighbour(i + 1); n++) {
        touches |= side[pattern.neighbour(n)] == 2;
      }
      if (touches) {
        between[b++] = i;
      } else {
        first[a++] = i;
      }
    }
    int[] second = new int[sorted.length - half];
    for (int k = half; k < sorted.length; k++) {
      second[k - half] = sorted[k];
    }
    for (int i : nodes) {
      side[i] = 0;
    }
    cut(Arrays.copyOf(first, a));
    cut(second);
    for (int k = 0; k < b; k++) {
      order[done++] = between[k];
    }
  }

  /** The middle, moved to the nearest step of the coordinate if there is one nearby. */
  private int level(Integer[] sorted, int axis) {
    int middle = sorted.length / 2;
    int reach = sorted.length / 8;
    for (int k = 0; k <= reach; k++) {
      if (step(sorted, middle - k, axis)) {
        return middle - k;
      }
      if (step(sorted, middle + k, axis)) {
        return middle + k;
      }
    }
    return middle;
  }

  private boolean step(Integer[] sorted, int k, int axis) {
    return at[3 * sorted[k] + axis] > at[3 * sorted[k - 1] + axis];
  }

  private int longest(int[] nodes) {
    int axis = 0;
    double most = -1.0;
    for (int a = 0; a < 3; a++) {
      double low = Double.POSITIVE_INFINITY;
      double high = Double.NEGATIVE_INFINITY;
      for (int i : nodes) {
        low = Math.min(low, at[3 * i + a]);
        high = Math.max(high, at[3 * i + a]);
      }
      if (high - low > most * (1.0 + 1e-9)) {
        most = high - low;
        axis = a;
      }
    }
    return axis;
  }
}
