package org.flexwright.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.run.RunControl;
import org.jspecify.annotations.Nullable;

/**
 * Factors L D L^T of a symmetric sparse matrix of blocks, positive definite or not, by fronts
 * (multifrontal), with the signs of D for the inertia.
 *
 * <p>The order of elimination is chosen inside, on the nodes, and the numbering of the caller does
 * not matter: by minimum degree, or by nested dissection if places are given and it is the cheaper
 * one. It is found once; {@link #factor} is then called for each matrix of the same pattern. The
 * order of all sums is fixed, so that the result is the same to the last digit on every run and
 * with any number of threads. Pivots are not exchanged: a matrix that is singular is told with the
 * unknown that nothing holds, see {@link #freeUnknown}.
 *
 * <p>Memory is known before it is taken, see {@link #bytes}; more than the caller's limit is
 * refused. Not thread-safe.
 *
 * <p>Source: Duff and Reid 1983, The multifrontal solution of indefinite sparse symmetric linear
 * equations (from memory).
 */
public final class SparseLdl {

  private static final int SWEEPS = 2; // of refinement
  private static final int GUESSES = 5; // of the condition
  private static final int ARRAY = Integer.MAX_VALUE - 8;

  private final BlockPattern pattern;
  private final Fronts fronts;
  private final FrontTasks tasks;
  private final int size;
  private final double[] factor;
  private final int[] start; // of each front in the factor
  private final double[] d;
  private final double[] was;
  private final double[] permuted;
  private final double[] gathered;
  private final double[] rest;
  private final double[] moved;
  private int negative;
  private int free = -1; // place and unknown

  private SparseLdl(BlockPattern pattern, Fronts fronts) {
    this.pattern = pattern;
    this.fronts = fronts;
    size = pattern.size();
    factor = new double[(int) fronts.entries];
    start = new int[fronts.count + 1];
    for (int f = 0; f < fronts.count; f++) {
      int own = fronts.first[f + 1] - fronts.first[f];
      start[f + 1] = start[f] + own * size * fronts.rows[f].length * size;
    }
    int n = pattern.nodes() * size;
    d = new double[n];
    was = new double[n];
    permuted = new double[n];
    rest = new double[n];
    moved = new double[n];
    gathered = new double[fronts.widest * size];
    tasks = new FrontTasks(fronts, size);
  }

  /**
   * Plans the factors of all matrices of a pattern.
   *
   * @param pattern which blocks there are
   * @param run its memory limit counts
   * @return the factors, of nothing yet
   * @throws org.flexwright.InvalidInputException if the factors need more memory than the limit
   */
  public static SparseLdl of(BlockPattern pattern, RunControl run) {
    return of(pattern, null, run);
  }

  /**
   * The same with the places of the nodes, which may give a better order.
   *
   * @param pattern which blocks there are
   * @param places three coordinates of each node
   * @param run its memory limit counts
   * @return the factors, of nothing yet
   * @throws org.flexwright.InvalidInputException if the factors need more memory than the limit
   */
  public static SparseLdl of(BlockPattern pattern, double @Nullable [] places, RunControl run) {
    if (places == null) {
      return planned(pattern, new Fronts(pattern, degrees(pattern)), run);
    }
    Require.atLeast("coordinates", places.length, 3 * pattern.nodes());
    int[] sorted = Numbering.byPlace(pattern.nodes(), places);
    int[] order = degrees(pattern.among(sorted, sorted.length, new int[sorted.length]));
    Fronts fronts = new Fronts(pattern, Numbering.composed(sorted, order));
    Fronts other = new Fronts(pattern, NestedDissection.order(pattern, places));
    return planned(pattern, other.flops < fronts.flops ? other : fronts, run);
  }

  private static int[] degrees(BlockPattern pattern) {
    int[] numbering = Numbering.byDistance(pattern);
    BlockPattern renumbered = pattern.among(numbering, numbering.length, new int[numbering.length]);
    return Numbering.composed(numbering, MinimumDegree.order(renumbered));
  }

  private static SparseLdl planned(BlockPattern pattern, Fronts fronts, RunControl run) {
    double bytes = bytes(pattern, fronts);
    double most = Math.min((double) run.memoryLimitBytes(), 8.0 * ARRAY);
    Require.that(
        bytes <= most && fronts.entries <= ARRAY,
        "memory of the factors",
        Text.number(bytes / 1e6) + " MB",
        () -> "at most " + Text.number(most / 1e6) + " MB",
        "take fewer nodes, lend more memory, or solve by conjugate gradients");
    return new SparseLdl(pattern, fronts);
  }

  private static double bytes(BlockPattern pattern, Fronts fronts) {
    double work = FrontTasks.entries(fronts, pattern.size());
    return 8.0 * (fronts.entries + work + 5.0 * pattern.nodes() * pattern.size());
  }

  /**
   * Entries of the factor L, with the zeros that merged fronts hold.
   *
   * @return how many
   */
  public long fill() {
    return fronts.entries;
  }

  /**
   * Multiplications and additions of one factorisation.
   *
   * @return how many
   */
  public double work() {
    return fronts.flops;
  }

  /**
   * Memory of factors and work space.
   *
   * @return bytes
   */
  public long bytes() {
    return (long) bytes(pattern, fronts);
  }

  /**
   * Factors a matrix.
   *
   * @param matrix one of the pattern planned for
   * @param run its executor is used if it lends one; the result is the same
   * @return whether it is regular; if not, {@link #freeUnknown} names what nothing holds
   */
  public boolean factor(BlockMatrix matrix, RunControl run) {
    Require.that(
        matrix.pattern() == pattern,
        "matrix",
        matrix.pattern(),
        "one of the pattern that was planned for",
        "plan anew for another pattern");
    Arrays.fill(factor, 0.0);
    negative = 0;
    free = -1;
    List<FrontTasks.Bin> bins = tasks.bins();
    if (run.executor().isPresent() && bins.size() > 1) {
      List<CompletableFuture<Void>> waiting = new ArrayList<>();
      for (FrontTasks.Bin bin : bins.subList(1, bins.size())) {
        waiting.add(CompletableFuture.runAsync(() -> eliminate(bin, matrix), run.executor().get()));
      }
      eliminate(bins.get(0), matrix);
      try {
        waiting.forEach(CompletableFuture::join);
      } catch (CompletionException e) {
        throw e.getCause() instanceof RuntimeException r ? r : e;
      }
    } else {
      bins.forEach(bin -> eliminate(bin, matrix));
    }
    eliminate(tasks.top(), matrix);
    for (FrontTasks.Bin bin : bins) {
      count(bin);
    }
    count(tasks.top());
    return free < 0;
  }

  private void count(FrontTasks.Bin bin) {
    negative += bin.negative;
    if (bin.free >= 0 && (free < 0 || bin.free < free)) {
      free = bin.free;
    }
  }

  private void eliminate(FrontTasks.Bin bin, BlockMatrix matrix) {
    bin.begin();
    for (int f : bin.fronts) {
      int rows = fronts.rows[f].length * size;
      int own = (fronts.first[f + 1] - fronts.first[f]) * size;
      int from = fronts.first[f] * size;
      bin.assemble(f, matrix, factor, start[f], was);
      bin.kernel.factor(factor, start[f], rows, own, d, from, was, from);
      if (bin.kernel.free >= 0 && bin.free < 0) {
        bin.free = from + bin.kernel.free;
      }
      int left = rows - own;
      if (left > 0) {
        bin.kernel.subtract(
            bin.rest(), bin.restAt(), left, left, left, factor, start[f] + own, rows, own, d, from);
      }
      bin.finish(f);
    }
    bin.negative = bin.kernel.negative;
  }

  /**
   * The negative eigenvalues of the matrix factored last.
   *
   * @return how many; of a singular matrix, those of what is held
   */
  public int negative() {
    return negative;
  }

  /**
   * The unknown that moves most in a motion that nothing holds, of a matrix found singular.
   *
   * @return node times the unknowns of a node plus the unknown, or nothing if it was regular
   */
  public OptionalInt freeUnknown() {
    if (free < 0) {
      return OptionalInt.empty();
    }
    // the motion: L^T x = unit vector at the missing pivot
    Arrays.fill(permuted, 0.0);
    permuted[free] = 1.0;
    back(permuted);
    int most = free;
    for (int i = 0; i < permuted.length; i++) {
      if (Math.abs(permuted[i]) > Math.abs(permuted[most]) * (1.0 + 1e-9)) {
        most = i;
      }
    }
    return OptionalInt.of(fronts.order[most / size] * size + most % size);
  }

  /**
   * Solves with the factors.
   *
   * @param x the right side, node by node, replaced by the solution
   */
  public void solve(double[] x) {
    for (int k = 0; k < fronts.order.length; k++) {
      System.arraycopy(x, fronts.order[k] * size, permuted, k * size, size);
    }
    forward(permuted);
    for (int i = 0; i < d.length; i++) {
      permuted[i] /= d[i];
    }
    back(permuted);
    for (int k = 0; k < fronts.order.length; k++) {
      System.arraycopy(permuted, k * size, x, fronts.order[k] * size, size);
    }
  }

  /**
   * Solves and refines with the matrix itself.
   *
   * @param matrix the matrix factored last
   * @param right the right side, kept
   * @param x receives the solution
   */
  public void solve(BlockMatrix matrix, double[] right, double[] x) {
    System.arraycopy(right, 0, x, 0, x.length);
    solve(x);
    for (int sweep = 0; sweep < SWEEPS; sweep++) {
      matrix.times(x, rest);
      for (int i = 0; i < rest.length; i++) {
        rest[i] = right[i] - rest[i];
      }
      solve(rest);
      for (int i = 0; i < x.length; i++) {
        x[i] += rest[i];
      }
    }
  }

  private void forward(double[] x) {
    for (int f = 0; f < fronts.count; f++) {
      int m = gather(f, x);
      int own = (fronts.first[f + 1] - fronts.first[f]) * size;
      double[] v = gathered;
      for (int k = 0; k < own; k++) {
        int at = start[f] + k * m;
        double by = v[k];
        for (int i = k + 1; i < m; i++) {
          v[i] -= by * factor[at + i];
        }
      }
      for (int r = 0; r < fronts.rows[f].length; r++) {
        System.arraycopy(v, r * size, x, fronts.rows[f][r] * size, size);
      }
    }
  }

  private void back(double[] x) {
    for (int f = fronts.count - 1; f >= 0; f--) {
      int m = gather(f, x);
      int own = (fronts.first[f + 1] - fronts.first[f]) * size;
      double[] v = gathered;
      for (int k = own - 1; k >= 0; k--) {
        int at = start[f] + k * m;
        double sum = 0.0;
        for (int i = k + 1; i < m; i++) {
          sum += factor[at + i] * v[i];
        }
        v[k] -= sum;
      }
      System.arraycopy(v, 0, x, fronts.first[f] * size, own);
    }
  }

  private int gather(int f, double[] x) {
    int[] rows = fronts.rows[f];
    for (int r = 0; r < rows.length; r++) {
      System.arraycopy(x, rows[r] * size, gathered, r * size, size);
    }
    return rows.length * size;
  }

  /**
   * An estimate of the condition in the norm of row sums, mostly right within a factor of 3.
   *
   * @param matrix the matrix factored last
   * @return norm times norm of the inverse, a bound from below; infinite if it is singular
   */
  public double condition(BlockMatrix matrix) {
    if (free >= 0) {
      return Double.POSITIVE_INFINITY;
    }
    // Hager 1984: climbs to a corner of the unit ball that the inverse stretches most
    Arrays.fill(moved, 1.0 / moved.length);
    double best = 0.0;
    int corner = -1;
    for (int guess = 0; guess < GUESSES; guess++) {
      solve(moved);
      double norm = 0.0;
      for (int i = 0; i < moved.length; i++) {
        norm += Math.abs(moved[i]);
        moved[i] = moved[i] < 0.0 ? -1.0 : 1.0;
      }
      if (norm <= best) {
        break;
      }
      best = norm;
      solve(moved);
      int most = 0;
      for (int i = 0; i < moved.length; i++) {
        most = Math.abs(moved[i]) > Math.abs(moved[most]) ? i : most;
      }
      if (most == corner) {
        break;
      }
      corner = most;
      Arrays.fill(moved, 0.0);
      moved[corner] = 1.0;
    }
    return best * matrix.norm();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "factors of " + pattern + ", " + fronts.count + " fronts, " + fill() + " entries";
  }
}
