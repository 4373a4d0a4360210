package org.flexwright.numeric;

import java.util.Arrays;
import org.flexwright.internal.Require;

/**
 * Which nodes of a mesh are joined: the pattern of a symmetric matrix of square blocks, one on the
 * diagonal for each node, one beside it for each pair of joined nodes.
 *
 * <p>Immutable and thread-safe.
 */
public final class BlockPattern {

  private final int nodes;
  private final int size;
  private final int[] start; // of the pairs of each node with nodes of larger number
  private final int[] other; // the larger node of each pair, in growing order
  private final int[] around; // start of the neighbours of each node
  private final int[] neighbour;

  private BlockPattern(
      int nodes, int size, int[] start, int[] other, int[] around, int[] neighbour) {
    this.nodes = nodes;
    this.size = size;
    this.start = start;
    this.other = other;
    this.around = around;
    this.neighbour = neighbour;
  }

  /**
   * A pattern from pairs.
   *
   * @param nodes the number of nodes, at least 1
   * @param size unknowns of a node, at least 1
   * @param from one node of each pair
   * @param to the other; a pair may come twice and either way round
   * @return the pattern
   */
  public static BlockPattern of(int nodes, int size, int[] from, int[] to) {
    Require.atLeast("nodes", nodes, 1);
    Require.atLeast("unknowns of a node", size, 1);
    long[] pairs = new long[from.length];
    int count = 0;
    for (int k = 0; k < from.length; k++) {
      int low = Math.min(from[k], to[k]);
      int high = Math.max(from[k], to[k]);
      Require.between("node of a pair", low, 0, nodes - 1.0, "");
      Require.between("node of a pair", high, 0, nodes - 1.0, "");
      if (low != high) {
        pairs[count++] = (long) low << 32 | high;
      }
    }
    Arrays.sort(pairs, 0, count);
    int[] start = new int[nodes + 1];
    int[] other = new int[count];
    int[] degree = new int[nodes];
    int kept = 0;
    for (int k = 0; k < count; k++) {
      if (k == 0 || pairs[k] != pairs[k - 1]) {
        int low = (int) (pairs[k] >>> 32);
        int high = (int) pairs[k];
        other[kept++] = high;
        start[low + 1] = kept;
        degree[low]++;
        degree[high]++;
      }
    }
    for (int i = 0; i < nodes; i++) {
      start[i + 1] = Math.max(start[i + 1], start[i]);
    }
    return of(nodes, size, start, Arrays.copyOf(other, kept), degree);
  }

  private static BlockPattern of(int nodes, int size, int[] start, int[] other, int[] degree) {
    int[] around = new int[nodes + 1];
    for (int i = 0; i < nodes; i++) {
      around[i + 1] = around[i] + degree[i];
    }
    int[] next = Arrays.copyOf(around, nodes);
    int[] neighbour = new int[2 * other.length];
    for (int i = 0; i < nodes; i++) {
      for (int k = start[i]; k < start[i + 1]; k++) {
        neighbour[next[i]++] = other[k];
        neighbour[next[other[k]]++] = i;
      }
    }
    return new BlockPattern(nodes, size, start, other, around, neighbour);
  }

  /**
   * The number of nodes.
   *
   * @return how many
   */
  public int nodes() {
    return nodes;
  }

  /**
   * Unknowns of a node.
   *
   * @return how many
   */
  public int size() {
    return size;
  }

  /**
   * The number of joined pairs.
   *
   * @return how many
   */
  public int pairs() {
    return other.length;
  }

  /**
   * The number of a pair.
   *
   * @param a one node
   * @param b another node
   * @return its number, from 0
   * @throws org.flexwright.InvalidInputException if the two are not joined
   */
  public int pair(int a, int b) {
    int low = Math.min(a, b);
    int high = Math.max(a, b);
    int at = Arrays.binarySearch(other, start[low], start[low + 1], high);
    Require.that(at >= 0, "pair", a + " and " + b, "joined nodes", "put the pair into the pattern");
    return at;
  }

  int firstPair(int node) {
    return start[node];
  }

  int otherOf(int pair) {
    return other[pair];
  }

  int firstNeighbour(int node) {
    return around[node];
  }

  int neighbour(int at) {
    return neighbour[at];
  }

  /** The pattern among some of the nodes, renumbered in their order. */
  BlockPattern among(int[] some, int count, int[] number) {
    for (int i = 0; i < count; i++) {
      number[some[i]] = i;
    }
    int[] from = new int[degrees(some, count)];
    int[] to = new int[from.length];
    int k = 0;
    for (int i = 0; i < count; i++) {
      for (int a = around[some[i]]; a < around[some[i] + 1]; a++) {
        int j = number[neighbour[a]];
        if (j > i && j < count && some[j] == neighbour[a]) {
          from[k] = i;
          to[k++] = j;
        }
      }
    }
    return of(count, size, Arrays.copyOf(from, k), Arrays.copyOf(to, k));
  }

  private int degrees(int[] some, int count) {
    int sum = 0;
    for (int i = 0; i < count; i++) {
      sum += around[some[i] + 1] - around[some[i]];
    }
    return sum;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return nodes + " nodes of " + size + " unknowns, " + other.length + " pairs";
  }
}
