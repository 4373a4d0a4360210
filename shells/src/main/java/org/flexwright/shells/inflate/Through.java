package org.flexwright.shells.inflate;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/** Integrals through a round wall, in the logarithm of the reference radius. */
final class Through {

  // 20 points: 1e-12 down to a bore of a tenth of the outside
  private static final GaussIntegrator RULE = new GaussIntegratorFactory().legendre(20);

  private Through() {}

  /** Integral of f(R) dR from the inner to the outer radius. */
  static double wall(DoubleUnaryOperator f, double inner, double outer) {
    double half = 0.5 * Math.log1p((outer - inner) / inner);
    double sum = 0.0;
    for (int i = 0; i < RULE.getNumberOfPoints(); i++) {
      double radius = inner * Math.exp(half * (1.0 + RULE.getPoint(i)));
      sum += RULE.getWeight(i) * radius * f.applyAsDouble(radius);
    }
    return half * sum;
  }
}
