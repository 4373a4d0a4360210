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
    List<Criterion> counted = criteria.stream().filter(c -> !c.placeholder()).toList();
    double[][] slopes = new double[counted.size()][];
    for (int k = 0; k < slopes.length; k++) {
      slopes[k] = counted.get(k).independentSlope(cholesky);
    }
    int met = 0;
    for (int i = 0; i < Deviates.COUNT; i++) {
      double[] point = Deviates.point(i);
      boolean meets = true;
      for (int k = 0; k < slopes.length && meets; k++) {
        meets = counted.get(k).margin(slopes[k], point) >= 0.0;
      }
      if (meets) {
        met++;
      }
    }
    return (double) met / Deviates.COUNT;
  }
}
