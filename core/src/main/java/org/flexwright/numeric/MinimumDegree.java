package org.flexwright.numeric;

import java.util.Arrays;

/**
 * An order of elimination that takes the node with the fewest neighbours next, as it is after the
 * eliminations before. Nodes with the same neighbours go together; what an eliminated node has
 * joined is kept as one clique, and a clique inside another one is forgotten.
 *
 * <p>The degree of a node is the sum over its cliques and its own neighbours, a bound from above.
 * Source: Amestoy, Davis and Duff 1996, An approximate minimum degree ordering algorithm (from
 * memory).
 */
final class MinimumDegree {

  private final int n;
  private final int[][] nodes; // plain neighbours of each node, weeded out as cliques cover them
  private final int[] nodeCount;
  private final int[][] cliques; // cliques of each node
  private final int[] cliqueCount;
  private final int[][] members; // of the clique that an eliminated node became
  private final int[] weight; // nodes that go together; 0 for one that goes with another
  private final int[] degree;
  private final boolean[] gone;
  private final int[] mark;
  private final int[] outside; // of each clique, the weight not in the newest one
  private final int[] seen;
  private final int[] next; // lists by degree
  private final int[] previous;
  private final int[] head;
  private final int[][] joined; // nodes that go with another one
  private int stamp;
  private int lowest;

  private MinimumDegree(BlockPattern pattern) {
    n = pattern.nodes();
    nodes = new int[n][];
    nodeCount = new int[n];
    cliques = new int[n][];
    cliqueCount = new int[n];
    members = new int[n][];
    weight = new int[n];
    degree = new int[n];
    gone = new boolean[n];
    mark = new int[n];
    outside = new int[n];
    seen = new int[n];
    next = new int[n];
    previous = new int[n];
    head = new int[n + 1];
    joined = new int[n][];
    Arrays.fill(head, -1);
    Arrays.fill(weight, 1);
    for (int i = n - 1; i >= 0; i--) {
      int from = pattern.firstNeighbour(i);
      int count = pattern.firstNeighbour(i + 1) - from;
      nodes[i] = new int[count];
      for (int k = 0; k < count; k++) {
        nodes[i][k] = pattern.neighbour(from + k);
      }
      nodeCount[i] = count;
      cliques[i] = new int[2];
      degree[i] = count;
      enter(i);
    }
  }

  /** The nodes in their order of elimination. */
  static int[] order(BlockPattern pattern) {
    return new MinimumDegree(pattern).run();
  }

  private int[] run() {
    int[] order = new int[n];
    int done = 0;
    while (done < n) {
      int pivot = smallest();
      leave(pivot);
      int[] reached = reach(pivot);
      members[pivot] = reached;
      gone[pivot] = true;
      done = put(pivot, order, done);
      update(pivot, reached);
    }
    return order;
  }

  private int put(int node, int[] order, int at) {
    order[at] = node;
    int done = at + 1;
    if (joined[node] != null) {
      for (int other : joined[node]) {
        done = put(other, order, done);
      }
    }
    return done;
  }

  private int smallest() {
    while (head[lowest] < 0) {
      lowest++;
    }
    return head[lowest];
  }

  private void enter(int i) {
    int d = Math.max(0, Math.min(degree[i], n - 1));
    next[i] = head[d];
    previous[i] = -1;
    if (head[d] >= 0) {
      previous[head[d]] = i;
    }
    head[d] = i;
    degree[i] = d;
    lowest = Math.min(lowest, d);
  }

  private void leave(int i) {
    if (previous[i] >= 0) {
      next[previous[i]] = next[i];
    } else {
      head[degree[i]] = next[i];
    }
    if (next[i] >= 0) {
      previous[next[i]] = previous[i];
    }
  }

  /** The nodes that the elimination of a pivot joins; its cliques are used up. */
  private int[] reach(int pivot) {
    stamp++;
    mark[pivot] = stamp;
    int[] found = new int[degree[pivot] + 1];
    int count = 0;
    for (int k = 0; k < nodeCount[pivot]; k++) {
      int i = nodes[pivot][k];
      if (live(i) && mark[i] != stamp) {
        mark[i] = stamp;
        found = grown(found, count);
        found[count++] = i;
      }
    }
    for (int k = 0; k < cliqueCount[pivot]; k++) {
      int c = cliques[pivot][k];
      int[] of = members[c];
      if (of == null) {
        continue;
      }
      for (int i : of) {
        if (live(i) && mark[i] != stamp) {
          mark[i] = stamp;
          found = grown(found, count);
          found[count++] = i;
        }
      }
      members[c] = null;
    }
    return Arrays.copyOf(found, count);
  }

  private static int[] grown(int[] a, int count) {
    return count < a.length ? a : Arrays.copyOf(a, 2 * count + 4);
  }

  private boolean live(int i) {
    return !gone[i] && weight[i] > 0;
  }

  /** Cliques, neighbours and degrees of the nodes around a pivot. */
  private void update(int pivot, int[] reached) {
    int whole = 0;
    for (int i : reached) {
      whole += weight[i];
    }
    weigh(reached);
    int reach = stamp;
    for (int i : reached) {
      leave(i);
      int sum = 0;
      int kept = 0;
      for (int k = 0; k < cliqueCount[i]; k++) {
        int c = cliques[i][k];
        if (members[c] == null) {
          continue;
        }
        if (outside[c] == 0) { // all of it is in the new clique
          members[c] = null;
          continue;
        }
        sum += outside[c];
        cliques[i][kept++] = c;
      }
      cliques[i] = grown(cliques[i], kept);
      cliques[i][kept++] = pivot;
      cliqueCount[i] = kept;
      int plain = 0;
      for (int k = 0; k < nodeCount[i]; k++) {
        int j = nodes[i][k];
        if (live(j) && mark[j] != reach) {
          nodes[i][plain++] = j;
          sum += weight[j];
        }
      }
      nodeCount[i] = plain;
      degree[i] = sum + whole - weight[i];
    }
    unite(reached);
    for (int i : reached) {
      if (weight[i] > 0) {
        enter(i);
      }
    }
  }

  /** For each clique around, the weight of its nodes that are not in the newest one. */
  private void weigh(int[] reached) {
    for (int i : reached) {
      for (int k = 0; k < cliqueCount[i]; k++) {
        int c = cliques[i][k];
        if (members[c] == null) {
          continue;
        }
        if (seen[c] != stamp) {
          seen[c] = stamp;
          int sum = 0;
          for (int m : members[c]) {
            sum += live(m) ? weight[m] : 0;
          }
          outside[c] = sum;
        }
        outside[c] -= weight[i];
      }
    }
  }

  /** Nodes of the newest clique with the same neighbours and cliques go together from now on. */
  private void unite(int[] reached) {
    long[] keys = new long[reached.length];
    for (int k = 0; k < reached.length; k++) {
      int i = reached[k];
      long sum = 0;
      for (int c = 0; c < cliqueCount[i]; c++) {
        sum += 7L * cliques[i][c] + 1;
      }
      for (int j = 0; j < nodeCount[i]; j++) {
        sum += 31L * nodes[i][j] + 5;
      }
      keys[k] = (sum & 0x7fffffffL) << 32 | k;
    }
    Arrays.sort(keys);
    for (int a = 0; a < keys.length; a++) {
      int i = reached[(int) keys[a]];
      if (weight[i] == 0) {
        continue;
      }
      for (int b = a + 1; b < keys.length && keys[a] >> 32 == keys[b] >> 32; b++) {
        int j = reached[(int) keys[b]];
        if (weight[j] > 0 && alike(i, j)) {
          degree[i] -= weight[j];
          weight[i] += weight[j];
          weight[j] = 0;
          int[] with = joined[i] == null ? new int[0] : joined[i];
          joined[i] = Arrays.copyOf(with, with.length + 1);
          joined[i][with.length] = j;
        }
      }
    }
  }

  private boolean alike(int i, int j) {
    if (cliqueCount[i] != cliqueCount[j] || nodeCount[i] != nodeCount[j]) {
      return false;
    }
    int mine = ++stamp;
    for (int k = 0; k < cliqueCount[i]; k++) {
      seen[cliques[i][k]] = mine;
    }
    for (int k = 0; k < nodeCount[i]; k++) {
      mark[nodes[i][k]] = mine;
    }
    boolean same = true;
    for (int k = 0; k < cliqueCount[j]; k++) {
      same &= seen[cliques[j][k]] == mine;
    }
    for (int k = 0; k < nodeCount[j]; k++) {
      same &= mark[nodes[j][k]] == mine;
    }
    return same;
  }
}
