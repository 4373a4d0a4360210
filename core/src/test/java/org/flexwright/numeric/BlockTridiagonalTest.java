package org.flexwright.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.junit.jupiter.api.Test;

/** Against the dense algebra of Commons Math. */
final class BlockTridiagonalTest {

  private static final int NODES = 9;

  private static BlockTridiagonal random(long seed, double shift) {
    Random random = new Random(seed);
    BlockTridiagonal matrix = new BlockTridiagonal(NODES);
    for (int i = 0; i + 1 < NODES; i++) {
      double[] k = new double[36];
      for (int e = 0; e < 36; e++) {
        k[e] = random.nextGaussian();
      }
      matrix.add(i, k);
    }
    for (int i = 0; i < NODES; i++) {
      for (int r = 0; r < 3; r++) {
        matrix.add(i, r, r, shift);
      }
    }
    return matrix;
  }

  private static RealMatrix dense(BlockTridiagonal matrix) {
    int n = 3 * NODES;
    double[][] rows = new double[n][n];
    for (int j = 0; j < n; j++) {
      double[] unit = new double[n];
      unit[j] = 1.0;
      matrix.times(unit, rows[j]);
    }
    return new Array2DRowRealMatrix(rows, false);
  }

  @Test
  void solvesAndCountsNegativeEigenvalues() {
    for (long seed = 0; seed < 60; seed++) {
      BlockTridiagonal matrix = random(seed, seed % 3 == 0 ? 8.0 : 0.5);
      RealMatrix dense = dense(matrix);
      assertThat(dense.subtract(dense.transpose()).getNorm()).isZero();
      double[] right = new Random(seed + 1000).doubles(3 * NODES).toArray();
      double[] exact =
          new LUDecomposition(dense).getSolver().solve(new ArrayRealVector(right)).toArray();
      assertThat(matrix.factor()).isTrue();
      double[] x = right.clone();
      matrix.solve(x);
      double scale = Arrays.stream(exact).map(Math::abs).max().orElseThrow();
      for (int i = 0; i < x.length; i++) {
        // no pivoting between blocks: some digits go on random indefinite matrices
        assertThat(x[i]).isCloseTo(exact[i], within(1e-8 * scale));
      }
      long negative =
          Arrays.stream(new EigenDecomposition(dense).getRealEigenvalues())
              .filter(v -> v < 0.0)
              .count();
      assertThat(matrix.negative()).isEqualTo((int) negative);
    }
  }

  @Test
  void aHeldUnknownStaysWhereItIs() {
    BlockTridiagonal matrix = random(4L, 8.0);
    matrix.hold(0, 1, 1.0);
    matrix.hold(5, 2, 1.0);
    assertThat(matrix.factor()).isTrue();
    double[] x = new Random(9L).doubles(3 * NODES).toArray();
    x[1] = 0.0;
    x[17] = 0.25;
    matrix.solve(x);
    assertThat(x[1]).isZero();
    assertThat(x[17]).isCloseTo(0.25, within(1e-15));
  }

  @Test
  void aMatrixOfZerosIsRefused() {
    assertThat(new BlockTridiagonal(3).factor()).isFalse();
  }
}
