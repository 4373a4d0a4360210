package org.flexwright.shells.revolution;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Points and weights through the wall, on -1 to 1. */
final class Gauss {

  private Gauss() {}

  static double[] points(int count) {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(count);
    double[] x = new double[count];
    for (int i = 0; i < count; i++) {
      x[i] = rule.getPoint(i);
    }
    return x;
  }

  static double[] weights(int count) {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(count);
    double[] w = new double[count];
    for (int i = 0; i < count; i++) {
      w[i] = rule.getWeight(i);
    }
    return w;
  }
}
