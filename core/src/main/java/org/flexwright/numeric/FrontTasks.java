package org.flexwright.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Who eliminates which front: subtrees in two bins that need nothing of each other, and the top,
 * which needs what both leave. The split depends on the plan alone.
 *
 * <p>Each bin keeps what its fronts leave on a stack; a subtree's last rest has a place of its own,
 * where the top finds it.
 */
final class FrontTasks {

  private static final int BINS = 2;
  private static final double LEAST = 2e6; // of work, worth a task
  private static final double EVEN = 0.52; // share of the larger bin that is good enough

  private final Fronts fronts;
  private final int size;
  private final List<Bin> bins = new ArrayList<>();
  private final Bin top;
  private final double[][] own; // rests of subtrees that the top takes up

  FrontTasks(Fronts fronts, int size) {
    this.fronts = fronts;
    this.size = size;
    own = new double[fronts.count][];
    int[] bin = split(fronts, size);
    for (int b = 0; b < BINS; b++) {
      Bin made = new Bin(members(bin, b), bin);
      if (made.fronts.length > 0) {
        bins.add(made);
      }
    }
    top = new Bin(members(bin, BINS), bin);
    for (int f = 0; f < fronts.count; f++) {
      if (handedOver(fronts, bin, f)) {
        int left = left(fronts, f, size);
        own[f] = new double[left * left];
      }
    }
  }

  List<Bin> bins() {
    return bins;
  }

  Bin top() {
    return top;
  }

  private static boolean handedOver(Fronts fronts, int[] bin, int f) {
    return fronts.parent[f] >= 0 && bin[fronts.parent[f]] != bin[f];
  }

  private static int left(Fronts fronts, int f, int size) {
    return (fronts.rows[f].length - (fronts.first[f + 1] - fronts.first[f])) * size;
  }

  private static int[] members(int[] bin, int of) {
    int[] found = new int[bin.length];
    int count = 0;
    for (int f = 0; f < bin.length; f++) {
      if (bin[f] == of) {
        found[count++] = f;
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** The bin of each front; the last one is the top. */
  private static int[] split(Fronts fronts, int size) {
    int n = fronts.count;
    double[] work = new double[n];
    for (int f = 0; f < n; f++) {
      double m = (double) fronts.rows[f].length * size;
      double p = (double) (fronts.first[f + 1] - fronts.first[f]) * size;
      work[f] += p * (m * m - m * p + p * p / 3.0);
      if (fronts.parent[f] >= 0) {
        work[fronts.parent[f]] += work[f];
      }
    }
    List<Integer> roots = new ArrayList<>();
    for (int f = 0; f < n; f++) {
      if (fronts.parent[f] < 0) {
        roots.add(f);
      }
    }
    int[] bin = new int[n];
    Arrays.fill(bin, -1);
    while (true) {
      roots.sort(
          (a, b) -> work[a] != work[b] ? Double.compare(work[b], work[a]) : Integer.compare(a, b));
      double[] load = new double[BINS];
      int[] into = new int[roots.size()];
      for (int k = 0; k < roots.size(); k++) {
        into[k] = load[0] <= load[1] ? 0 : 1;
        load[into[k]] += work[roots.get(k)];
      }
      double all = load[0] + load[1];
      int heaviest = roots.isEmpty() ? -1 : roots.get(0);
      boolean fine = Math.max(load[0], load[1]) <= EVEN * all;
      if (fine || heaviest < 0 || work[heaviest] < LEAST) {
        for (int k = 0; k < roots.size(); k++) {
          bin[roots.get(k)] = into[k];
        }
        break;
      }
      bin[heaviest] = BINS;
      roots.remove(0);
      for (int f = 0; f < n; f++) {
        if (fronts.parent[f] == heaviest) {
          roots.add(f);
        }
      }
    }
    for (int f = n - 1; f >= 0; f--) {
      if (bin[f] < 0) {
        bin[f] = bin[fronts.parent[f]];
      }
    }
    return bin;
  }

  /** Doubles of work space that a plan needs besides the factor. */
  static double entries(Fronts fronts, int size) {
    int[] bin = split(fronts, size);
    double sum = 0.0;
    for (int b = 0; b <= BINS; b++) {
      sum += deepest(fronts, members(bin, b), bin, size);
    }
    for (int f = 0; f < fronts.count; f++) {
      if (handedOver(fronts, bin, f)) {
        double left = left(fronts, f, size);
        sum += left * left;
      }
    }
    return sum;
  }

  /** The most that lies on the stack of a bin. */
  private static long deepest(Fronts fronts, int[] members, int[] bin, int size) {
    long[] below = new long[fronts.count]; // what the children of a front have on the stack
    long depth = 0;
    long deepest = 0;
    for (int f : members) {
      long left = left(fronts, f, size);
      long area = left * left;
      deepest = Math.max(deepest, depth + (handedOver(fronts, bin, f) ? 0 : area));
      depth -= below[f];
      if (!handedOver(fronts, bin, f)) {
        depth += area;
        if (fronts.parent[f] >= 0) {
          below[fronts.parent[f]] += area;
        }
      }
    }
    return deepest;
  }

  /** A share of the fronts, with its stack. */
  final class Bin {
    final int[] fronts;
    final FrontKernel kernel = new FrontKernel();
    private final double[] stack;
    private final int[] at; // of the rest of each front on the stack
    private final int[][] children;
    private final int[] map;
    private int depth;
    private double[] rest = new double[0];
    private int restAt;
    int negative;
    int free;

    Bin(int[] members, int[] bin) {
      fronts = members;
      Fronts plan = FrontTasks.this.fronts;
      stack = new double[(int) deepest(plan, members, bin, size)];
      at = new int[plan.count];
      map = new int[plan.order.length];
      children = new int[plan.count][];
      int[] counts = new int[plan.count];
      for (int p : plan.parent) {
        if (p >= 0) {
          counts[p]++;
        }
      }
      for (int f : members) {
        children[f] = new int[counts[f]];
        counts[f] = 0;
      }
      for (int f = 0; f < plan.count; f++) {
        int p = plan.parent[f];
        if (p >= 0 && children[p] != null) {
          children[p][counts[p]++] = f;
        }
      }
    }

    void begin() {
      depth = 0;
      negative = 0;
      free = -1;
      kernel.negative = 0;
    }

    double[] rest() {
      return rest;
    }

    int restAt() {
      return restAt;
    }

    /** Gathers a front: its columns of the matrix and what its children left. */
    void assemble(int f, BlockMatrix matrix, double[] factor, int start, double[] was) {
      Fronts plan = FrontTasks.this.fronts;
      int[] rows = plan.rows[f];
      int left = left(plan, f, size);
      if (own[f] != null) {
        rest = own[f];
        restAt = 0;
      } else {
        rest = stack;
        restAt = depth;
      }
      Arrays.fill(rest, restAt, restAt + left * left, 0.0);
      for (int r = 0; r < rows.length; r++) {
        map[rows[r]] = r;
      }
      for (int k = plan.first[f]; k < plan.first[f + 1]; k++) {
        scatter(k, plan, matrix, factor, start, rows.length, was);
      }
      for (int child : children[f]) {
        int leftOfChild = left(plan, child, size);
        double[] from = own[child] != null ? own[child] : stack;
        extend(
            plan, f, child, from, own[child] != null ? 0 : at[child], leftOfChild, factor, start);
      }
    }

    private void scatter(
        int k,
        Fronts plan,
        BlockMatrix matrix,
        double[] factor,
        int start,
        int height,
        double[] was) {
      int node = plan.order[k];
      int column = map[k];
      int m = height * size;
      int b = size * size;
      for (int c = 0; c < size; c++) {
        int to = start + (column * size + c) * m + column * size;
        for (int r = c; r < size; r++) {
          factor[to + r] = matrix.diagonal[node * b + r * size + c];
        }
        was[k * size + c] = Math.abs(matrix.diagonal[node * b + c * size + c]);
      }
      BlockPattern pattern = matrix.pattern();
      for (int a = pattern.firstNeighbour(node); a < pattern.firstNeighbour(node + 1); a++) {
        int other = pattern.neighbour(a);
        int row = plan.place[other];
        if (row < k) {
          continue;
        }
        int from = pattern.pair(node, other) * b;
        for (int c = 0; c < size; c++) {
          int to = start + (column * size + c) * m + map[row] * size;
          for (int r = 0; r < size; r++) {
            // the block's rows are those of the lower node
            factor[to + r] = matrix.beside[from + (node < other ? c * size + r : r * size + c)];
          }
        }
      }
    }

    private void extend(
        Fronts plan,
        int f,
        int child,
        double[] from,
        int fromAt,
        int leftOfChild,
        double[] factor,
        int start) {
      int[] rows = plan.rows[child];
      int skip = plan.first[child + 1] - plan.first[child];
      int own = plan.first[f + 1] - plan.first[f];
      int m = plan.rows[f].length * size;
      int left = left(plan, f, size);
      for (int c = skip; c < rows.length; c++) {
        int column = map[rows[c]];
        for (int s = 0; s < size; s++) {
          int source = fromAt + ((c - skip) * size + s) * leftOfChild;
          boolean inner = column < own;
          double[] into = inner ? factor : rest;
          int base =
              inner
                  ? start + (column * size + s) * m
                  : restAt + ((column - own) * size + s) * left - own * size;
          for (int r = c; r < rows.length; r++) {
            int to = base + map[rows[r]] * size;
            int at0 = source + (r - skip) * size;
            for (int t = r == c ? s : 0; t < size; t++) {
              into[to + t] += from[at0 + t];
            }
          }
        }
      }
    }

    /** Takes the children's rests off the stack and puts the front's own in their place. */
    void finish(int f) {
      Fronts plan = FrontTasks.this.fronts;
      int to = depth;
      for (int child : children[f]) {
        if (own[child] == null) {
          to = Math.min(to, at[child]);
        }
      }
      if (own[f] == null) {
        int left = left(plan, f, size);
        System.arraycopy(stack, restAt, stack, to, left * left);
        at[f] = to;
        depth = to + left * left;
      } else {
        depth = to;
      }
    }
  }
}
