package org.flexwright.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The plan of a factorisation: the order of elimination, cut into fronts. A front eliminates some
 * neighbouring nodes at once and hands what is left on to its parent.
 *
 * <p>Nodes are numbered by their place in the order here. Immutable by agreement.
 */
final class Fronts {

  // zeros that a merged front may hold, by share: narrow fronts (in nodes) gain most by merging
  private static final int NARROW = 3;
  private static final int MIDDLING = 8;
  private static final double NARROW_PADDING = 0.5;
  private static final double MIDDLING_PADDING = 0.1;
  private static final double PADDING = 0.02;

  final int[] order; // node of each place
  final int[] place; // place of each node
  final int count;
  final int[] first; // first place that each front eliminates, and the end
  final int[] parent; // front, or -1
  final int[][] rows; // places of each front, those it eliminates first
  final long entries; // of the factor, padding with it
  final double flops;
  final int widest; // nodes of the largest front

  Fronts(BlockPattern pattern, int[] eliminated) {
    int n = pattern.nodes();
    int[] before = inverse(eliminated);
    int[] tree = tree(pattern, eliminated, before);
    order = new int[n];
    int[] post = postorder(tree);
    for (int k = 0; k < n; k++) {
      order[k] = eliminated[post[k]];
    }
    place = inverse(order);
    int[] up = tree(pattern, order, place);
    int[][] columns = columns(pattern, up);
    List<int[][]> fronts = merged(fundamental(columns, up));
    count = fronts.size();
    first = new int[count + 1];
    parent = new int[count];
    rows = new int[count][];
    int[] owner = new int[n];
    for (int f = 0; f < count; f++) {
      first[f] = fronts.get(f)[0][0];
      rows[f] = fronts.get(f)[1];
      Arrays.fill(owner, first[f], first[f] + fronts.get(f)[0][1], f);
    }
    first[count] = n;
    long sum = 0;
    double work = 0.0;
    int wide = 0;
    double b = pattern.size();
    for (int f = 0; f < count; f++) {
      int own = first[f + 1] - first[f];
      parent[f] = own == rows[f].length ? -1 : owner[rows[f][own]];
      wide = Math.max(wide, rows[f].length);
      sum += (long) own * rows[f].length;
      double m = b * rows[f].length;
      double p = b * own;
      work += p * (m * m - m * p + p * p / 3.0);
    }
    entries = sum * pattern.size() * pattern.size();
    flops = work;
    widest = wide;
  }

  private static int[] inverse(int[] order) {
    int[] place = new int[order.length];
    for (int k = 0; k < order.length; k++) {
      place[order[k]] = k;
    }
    return place;
  }

  /** The parent of each place: the first one that it changes. Liu's method, paths shortened. */
  private static int[] tree(BlockPattern pattern, int[] order, int[] place) {
    int n = order.length;
    int[] parent = new int[n];
    int[] ancestor = new int[n];
    for (int k = 0; k < n; k++) {
      parent[k] = -1;
      ancestor[k] = -1;
      int node = order[k];
      for (int a = pattern.firstNeighbour(node); a < pattern.firstNeighbour(node + 1); a++) {
        int i = place[pattern.neighbour(a)];
        while (i < k && i >= 0) {
          int next = ancestor[i];
          ancestor[i] = k;
          if (next < 0) {
            parent[i] = k;
            break;
          }
          i = next;
        }
      }
    }
    return parent;
  }

  /** Children before parents, the heaviest child last. */
  private static int[] postorder(int[] parent) {
    int n = parent.length;
    int[] weight = new int[n];
    for (int k = 0; k < n; k++) {
      weight[k]++;
      if (parent[k] >= 0) {
        weight[parent[k]] += weight[k];
      }
    }
    int[] child = new int[n + 1];
    int[] sibling = new int[n];
    Arrays.fill(child, -1);
    for (int k = 0; k < n; k++) {
      int p = parent[k] < 0 ? n : parent[k];
      int before = -1;
      int at = child[p];
      while (at >= 0 && weight[at] <= weight[k]) {
        before = at;
        at = sibling[at];
      }
      sibling[k] = at;
      if (before < 0) {
        child[p] = k;
      } else {
        sibling[before] = k;
      }
    }
    int[] post = new int[n];
    int[] stack = new int[n + 1];
    int depth = 0;
    int done = 0;
    for (int root = child[n]; root >= 0; root = sibling[root]) {
      stack[depth++] = root;
      while (depth > 0) {
        int top = stack[depth - 1];
        if (child[top] >= 0) {
          stack[depth++] = child[top];
          child[top] = sibling[child[top]];
        } else {
          post[done++] = top;
          depth--;
        }
      }
    }
    return post;
  }

  /** For each place the later places that it changes, sorted. */
  private int[][] columns(BlockPattern pattern, int[] up) {
    int n = order.length;
    int[][] columns = new int[n][];
    int[] mark = new int[n];
    int[] found = new int[n];
    int[] child = new int[n];
    int[] sibling = new int[n];
    Arrays.fill(child, -1);
    Arrays.fill(mark, -1);
    for (int k = 0; k < n; k++) {
      int size = 0;
      mark[k] = k;
      int node = order[k];
      for (int a = pattern.firstNeighbour(node); a < pattern.firstNeighbour(node + 1); a++) {
        int i = place[pattern.neighbour(a)];
        if (i > k && mark[i] != k) {
          mark[i] = k;
          found[size++] = i;
        }
      }
      for (int c = child[k]; c >= 0; c = sibling[c]) {
        for (int i : columns[c]) {
          if (mark[i] != k) {
            mark[i] = k;
            found[size++] = i;
          }
        }
      }
      columns[k] = Arrays.copyOf(found, size);
      Arrays.sort(columns[k]);
      if (up[k] >= 0) {
        sibling[k] = child[up[k]];
        child[up[k]] = k;
      }
    }
    return columns;
  }

  /** Fronts of places with the same rows below: first place and width, rows. */
  private static List<int[][]> fundamental(int[][] columns, int[] up) {
    List<int[][]> fronts = new ArrayList<>();
    int from = 0;
    for (int k = 0; k < columns.length; k++) {
      boolean goesOn =
          k + 1 < columns.length
              && up[k] == k + 1
              && columns[k].length == columns[k + 1].length + 1;
      if (!goesOn) {
        int own = k + 1 - from;
        int[] rows = new int[own + columns[k].length];
        for (int i = 0; i < own; i++) {
          rows[i] = from + i;
        }
        System.arraycopy(columns[k], 0, rows, own, columns[k].length);
        fronts.add(new int[][] {{from, own}, rows});
        from = k + 1;
      }
    }
    return fronts;
  }

  /** Joins a front with the one right before it, its last child, where few zeros come in. */
  private static List<int[][]> merged(List<int[][]> fronts) {
    List<int[][]> done = new ArrayList<>();
    List<long[]> zeros = new ArrayList<>();
    for (int[][] front : fronts) {
      int[][] now = front;
      long empty = 0;
      while (!done.isEmpty()) {
        int[][] child = done.get(done.size() - 1);
        int own = child[0][1];
        boolean last = child[1].length > own && child[1][own] < now[0][0] + now[0][1];
        if (!last) {
          break;
        }
        int width = own + now[0][1];
        int height = own + now[1].length;
        long added = (long) own * (height - child[1].length);
        long all = zeros.get(done.size() - 1)[0] + empty + added;
        double share = (double) all / ((long) width * height);
        if (share > padding(width)) {
          break;
        }
        int[] rows = new int[height];
        for (int i = 0; i < own; i++) {
          rows[i] = child[0][0] + i;
        }
        System.arraycopy(now[1], 0, rows, own, now[1].length);
        now = new int[][] {{child[0][0], width}, rows};
        empty = all;
        done.remove(done.size() - 1);
        zeros.remove(zeros.size() - 1);
      }
      done.add(now);
      zeros.add(new long[] {empty});
    }
    return done;
  }

  private static double padding(int width) {
    if (width <= NARROW) {
      return NARROW_PADDING;
    }
    return width <= MIDDLING ? MIDDLING_PADDING : PADDING;
  }
}
