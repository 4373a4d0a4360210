package org.flexwright.decide;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.flexwright.evidence.Factor;

/** Standard normal points of a Sobol sequence, the same in every run: one column a deviate. */
final class Deviates {

  static final int COUNT = 2048;
  static final int DIMENSIONS = Factor.values().length + Criterion.MODELS;

  private static final double[][] POINTS = points();

  private Deviates() {}

  /** Fills u with the i-th point. */
  static double[] point(int i) {
    return POINTS[i];
  }

  private static double[][] points() {
    SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
    sobol.nextVector(); // the origin has no normal quantile
    NormalDistribution normal = new NormalDistribution(null, 0.0, 1.0);
    double[][] points = new double[COUNT][];
    for (int i = 0; i < COUNT; i++) {
      double[] v = sobol.nextVector();
      for (int k = 0; k < v.length; k++) {
        v[k] = normal.inverseCumulativeProbability(v[k]);
      }
      points[i] = v;
    }
    return points;
  }
}
