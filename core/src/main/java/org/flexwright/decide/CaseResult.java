package org.flexwright.decide;

import java.util.List;
import org.flexwright.response.Response;

/** The demands on one state of service: nominal, or one extreme. */
record CaseResult(List<Response> responses, List<Criterion> criteria) {

  /** Least headroom at the median, placeholders left out since they never condemn. */
  double nominalMargin() {
    double least = Criterion.HOPELESS;
    for (Criterion c : criteria) {
      if (!c.placeholder()) {
        least = Math.min(least, c.headroom());
      }
    }
    return least;
  }

  double sureMargin(double[][] cholesky) {
    double least = Criterion.HOPELESS;
    for (Criterion c : criteria) {
      least = Math.min(least, c.sureMargin(cholesky));
    }
    return least;
  }

  /** The share of cases that meet every demand that is not a placeholder. */
  double probability(double[][] cholesky) {
    int n = cholesky.length;
    double[] z = new double[n];
    double[] u = new double[Criterion.MODELS];
    int met = 0;
    for (int k = 0; k < Deviates.COUNT; k++) {
      double[] point = Deviates.point(k);
      for (int i = 0; i < n; i++) {
        double sum = 0.0;
        for (int j = 0; j <= i; j++) {
          sum += cholesky[i][j] * point[j];
        }
        z[i] = sum;
      }
      System.arraycopy(point, n, u, 0, u.length);
      if (meets(z, u)) {
        met++;
      }
    }
    return (double) met / Deviates.COUNT;
  }

  private boolean meets(double[] z, double[] u) {
    for (Criterion c : criteria) {
      if (!c.placeholder() && c.margin(z, u) < 0.0) {
        return false;
      }
    }
    return true;
  }
}
