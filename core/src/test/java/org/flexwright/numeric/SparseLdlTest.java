package org.flexwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.flexwright.InvalidInputException;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Factors against dense algebra, inertia against eigenvalues, fill against the numbering. */
final class SparseLdlTest {

  private static final RunControl RUN = RunControl.none();

  /** A mesh: nodes with places, pairs. */
  private static final class Mesh {
    final int nodes;
    final int[] from;
    final int[] to;
    final double[] at;

    Mesh(int nodes, int[] from, int[] to, double[] at) {
      this.nodes = nodes;
      this.from = from;
      this.to = to;
      this.at = at;
    }

    BlockPattern pattern(int size) {
      return BlockPattern.of(nodes, size, from, to);
    }

    Mesh shuffled(long seed) {
      List<Integer> number = new ArrayList<>(IntStream.range(0, nodes).boxed().toList());
      Collections.shuffle(number, new Random(seed));
      double[] moved = new double[at.length];
      for (int i = 0; i < nodes; i++) {
        System.arraycopy(at, 3 * i, moved, 3 * number.get(i), 3);
      }
      return new Mesh(
          nodes,
          IntStream.of(from).map(number::get).toArray(),
          IntStream.of(to).map(number::get).toArray(),
          moved);
    }
  }

  /** A block of cubes with struts along the edges and one diagonal of each. */
  private static Mesh grid(int nx, int ny, int nz) {
    List<int[]> pairs = new ArrayList<>();
    double[] at = new double[3 * nx * ny * nz];
    for (int i = 0; i < nx; i++) {
      for (int j = 0; j < ny; j++) {
        for (int k = 0; k < nz; k++) {
          int n = (i * ny + j) * nz + k;
          at[3 * n] = i;
          at[3 * n + 1] = j;
          at[3 * n + 2] = k;
          for (int[] d : new int[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}, {1, 1, 1}}) {
            if (i + d[0] < nx && j + d[1] < ny && k + d[2] < nz) {
              pairs.add(new int[] {n, ((i + d[0]) * ny + j + d[1]) * nz + k + d[2]});
            }
          }
        }
      }
    }
    return new Mesh(
        nx * ny * nz,
        pairs.stream().mapToInt(p -> p[0]).toArray(),
        pairs.stream().mapToInt(p -> p[1]).toArray(),
        at);
  }

  /** Random symmetric blocks; a shift makes the matrix definite or not. */
  private static BlockMatrix random(BlockPattern pattern, int[][] pairs, double shift, long seed) {
    Random random = new Random(seed);
    int b = pattern.size();
    BlockMatrix matrix = new BlockMatrix(pattern);
    for (int[] p : pairs) {
      double[] k = new double[4 * b * b];
      double[][] g = new double[2 * b][2 * b];
      for (double[] row : g) {
        for (int c = 0; c < row.length; c++) {
          row[c] = random.nextGaussian();
        }
      }
      RealMatrix m = new Array2DRowRealMatrix(g);
      double[][] product = m.multiply(m.transpose()).getData();
      for (int r = 0; r < 2 * b; r++) {
        for (int c = 0; c < 2 * b; c++) {
          k[r * 2 * b + c] = product[r][c];
        }
      }
      matrix.add(p[0], p[1], pattern.pair(p[0], p[1]), k);
    }
    for (int i = 0; i < pattern.nodes(); i++) {
      double[] k = new double[b * b];
      for (int r = 0; r < b; r++) {
        k[r * b + r] = shift;
      }
      matrix.add(i, k);
    }
    return matrix;
  }

  private static BlockMatrix random(Mesh mesh, int size, double shift, long seed) {
    BlockPattern pattern = mesh.pattern(size);
    int[][] pairs = new int[mesh.from.length][];
    for (int k = 0; k < pairs.length; k++) {
      pairs[k] = new int[] {mesh.from[k], mesh.to[k]};
    }
    return random(pattern, pairs, shift, seed);
  }

  private static RealMatrix dense(BlockMatrix matrix) {
    int n = matrix.pattern().nodes() * matrix.pattern().size();
    RealMatrix out = new Array2DRowRealMatrix(n, n);
    double[] unit = new double[n];
    double[] column = new double[n];
    for (int j = 0; j < n; j++) {
      unit[j] = 1.0;
      matrix.times(unit, column);
      out.setColumn(j, column);
      unit[j] = 0.0;
    }
    return out;
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 6})
  void meetsDenseAlgebra(int size) {
    for (double shift : new double[] {0.5, -3.0}) {
      Mesh mesh = grid(4, 3, 3).shuffled(size);
      BlockMatrix matrix = random(mesh, size, shift, 7L + size);
      RealMatrix dense = dense(matrix);
      assertThat(dense.subtract(dense.transpose()).getNorm()).isZero();
      for (boolean placed : new boolean[] {true, false}) {
        SparseLdl ldl = SparseLdl.of(matrix.pattern(), placed ? mesh.at : null, RUN);
        assertThat(ldl.factor(matrix, RUN)).isTrue();
        double[] right = new Random(3).doubles(dense.getRowDimension()).toArray();
        double[] x = new double[right.length];
        ldl.solve(matrix, right, x);
        double[] want =
            new LUDecomposition(dense).getSolver().solve(new ArrayRealVector(right)).toArray();
        double scale = new ArrayRealVector(want).getLInfNorm();
        for (int i = 0; i < x.length; i++) {
          assertThat(x[i]).isCloseTo(want[i], within(1e-12 * scale * (shift > 0 ? 1 : 100)));
        }
        double[] eigen = new EigenDecomposition(dense).getRealEigenvalues();
        long below = java.util.Arrays.stream(eigen).filter(v -> v < 0.0).count();
        assertThat((long) ldl.negative()).isEqualTo(below);
        double inverse = new LUDecomposition(dense).getSolver().getInverse().getNorm();
        assertThat(ldl.condition(matrix))
            .isBetween(0.3 * inverse * dense.getNorm(), 1.0001 * inverse * dense.getNorm());
      }
    }
  }

  @Test
  void theNumberingDoesNotMatter() {
    for (Mesh mesh : List.of(grid(20, 20, 4), grid(9, 9, 9))) {
      for (boolean placed : new boolean[] {true, false}) {
        long first = SparseLdl.of(mesh.pattern(6), placed ? mesh.at : null, RUN).fill();
        for (long seed = 1; seed < 6; seed++) {
          Mesh other = mesh.shuffled(seed);
          long fill = SparseLdl.of(other.pattern(6), placed ? other.at : null, RUN).fill();
          assertThat((double) fill / first).isBetween(0.9, 1.1);
        }
      }
    }
  }

  @Test
  void placesSaveWorkInThreeDimensions() {
    Mesh mesh = grid(14, 14, 14).shuffled(1L);
    // only the edges of the cubes
    int[] kept =
        IntStream.range(0, mesh.from.length)
            .filter(
                k -> {
                  double sum = 0.0;
                  for (int c = 0; c < 3; c++) {
                    sum += Math.abs(mesh.at[3 * mesh.from[k] + c] - mesh.at[3 * mesh.to[k] + c]);
                  }
                  return sum < 1.5;
                })
            .toArray();
    BlockPattern pattern =
        BlockPattern.of(
            mesh.nodes,
            6,
            IntStream.of(kept).map(k -> mesh.from[k]).toArray(),
            IntStream.of(kept).map(k -> mesh.to[k]).toArray());
    double degree = SparseLdl.of(pattern, RUN).work();
    assertThat(SparseLdl.of(pattern, mesh.at, RUN).work()).isLessThan(0.99 * degree);
  }

  /** A control that lends threads. */
  private record Lent(Executor pool) implements RunControl {
    @Override
    public void progress(Progress progress) {}

    @Override
    public boolean stopRequested() {
      return false;
    }

    @Override
    public Optional<Executor> executor() {
      return Optional.of(pool);
    }
  }

  @Test
  void threadsChangeNoDigit() {
    Mesh mesh = grid(10, 10, 5);
    BlockMatrix matrix = random(mesh, 6, -1.0, 5L);
    double[] one = new Random(3).doubles(6L * mesh.nodes).toArray();
    double[] two = one.clone();
    SparseLdl ldl = SparseLdl.of(matrix.pattern(), mesh.at, RUN);
    assertThat(ldl.factor(matrix, RUN)).isTrue();
    int negative = ldl.negative();
    ldl.solve(one);
    ExecutorService pool = Executors.newFixedThreadPool(2);
    try {
      assertThat(ldl.factor(matrix, new Lent(pool))).isTrue();
    } finally {
      pool.shutdown();
    }
    ldl.solve(two);
    assertThat(two).isEqualTo(one);
    assertThat(ldl.negative()).isEqualTo(negative);
  }

  @Test
  void namesWhatNothingHolds() {
    // a chain of springs along one unknown; the others are held, one node has none of it
    Mesh mesh = grid(5, 1, 1);
    BlockPattern pattern = mesh.pattern(3);
    BlockMatrix matrix = new BlockMatrix(pattern);
    for (int i = 0; i + 1 < 5; i++) {
      double[] k = new double[36];
      for (int c = 0; c < 3; c++) {
        double s = c == 1 && i == 3 ? 0.0 : 1.0;
        k[c * 6 + c] = s;
        k[(c + 3) * 6 + c + 3] = s;
        k[c * 6 + c + 3] = -s;
        k[(c + 3) * 6 + c] = -s;
      }
      matrix.add(i, i + 1, pattern.pair(i, i + 1), k);
    }
    for (int c = 0; c < 3; c++) {
      matrix.hold(0, c, 1.0);
    }
    SparseLdl ldl = SparseLdl.of(pattern, RUN);
    assertThat(ldl.factor(matrix, RUN)).isFalse();
    assertThat(ldl.freeUnknown()).hasValue(4 * 3 + 1);
    assertThat(ldl.condition(matrix)).isInfinite();
    matrix.hold(4, 1, 1.0);
    assertThat(ldl.factor(matrix, RUN)).isTrue();
    assertThat(ldl.freeUnknown()).isEmpty();
  }

  @Test
  void refusesMoreMemoryThanLent() {
    BlockPattern pattern = grid(10, 10, 10).pattern(6);
    RunControl poor =
        new RunControl() {
          @Override
          public void progress(Progress progress) {}

          @Override
          public boolean stopRequested() {
            return false;
          }

          @Override
          public long memoryLimitBytes() {
            return 1_000_000;
          }
        };
    assertThatThrownBy(() -> SparseLdl.of(pattern, poor))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("memory of the factors")
        .hasMessageContaining("MB");
  }
}
