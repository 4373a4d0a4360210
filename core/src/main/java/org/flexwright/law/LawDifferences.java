package org.flexwright.law;

/**
 * The derivatives of a law against differences of what they derive.
 *
 * <p>Fourth-order central differences with steps of 1e-2 to 1e-7 of a length d; of these the one
 * that agrees best counts, since a true derivative is met by some step and a wrong one by none. d
 * is the stretch itself, halved until the law is finite at l - d/2 and l + d/2: near locking it is
 * of the size of the distance to it. An error is taken over E, the value and what it derives over
 * d, which is what rounding in a difference grows with.
 */
final class LawDifferences {

  static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};
  // places of the second derivatives by rows and columns
  private static final int[][] PLACES = {{0, 3, 4}, {3, 1, 5}, {4, 5, 2}};
  private static final int STEPS = 6;

  private final StrainEnergy law;
  private final double young;

  LawDifferences(StrainEnergy law) {
    this.law = law;
    young = 3.0 * Math.abs(law.shearModulus());
  }

  private interface Of {
    double at(double[] l);
  }

  private double difference(Of f, double[] l, int i, double h) {
    return (8.0 * (f.at(moved(l, i, h)) - f.at(moved(l, i, -h)))
            - (f.at(moved(l, i, 2.0 * h)) - f.at(moved(l, i, -2.0 * h))))
        / (12.0 * h);
  }

  private static double[] moved(double[] l, int i, double h) {
    double[] k = l.clone();
    k[i] += h;
    return k;
  }

  private double error(Of f, double[] l, int i, double value, double scale) {
    double d = room(l, i);
    double all = young + Math.abs(value) + scale / d;
    double best = Double.POSITIVE_INFINITY;
    double step = 1e-2;
    for (int k = 0; k < STEPS; k++) {
      best = Math.min(best, Math.abs(difference(f, l, i, step * d) - value) / all);
      step *= 0.1;
    }
    return best;
  }

  /** A length in which the law is finite on both sides. */
  private double room(double[] l, int i) {
    double d = l[i];
    for (int k = 0; k < 40; k++) {
      double sum = energy(moved(l, i, 0.5 * d)) + energy(moved(l, i, -0.5 * d));
      if (Double.isFinite(sum)) {
        return d;
      }
      d *= 0.5;
    }
    return d;
  }

  private double energy(double[] l) {
    return law.energy(l[0], l[1], l[2]);
  }

  double gradientError(double[] l) {
    double[] g = gradient(l);
    double worst = 0.0;
    for (int i = 0; i < 3; i++) {
      worst = larger(worst, error(this::energy, l, i, g[i], Math.abs(energy(l))));
    }
    return worst;
  }

  double hessianError(double[] l) {
    double[] h = hessian(l);
    double[] g = gradient(l);
    double worst = 0.0;
    for (int i = 0; i < 3; i++) {
      int of = i;
      for (int j = 0; j < 3; j++) {
        double value = h[PLACES[i][j]];
        worst = larger(worst, error(k -> gradient(k)[of], l, j, value, Math.abs(g[i])));
      }
    }
    return worst;
  }

  /** The energy, the first and the second derivatives in all six orders of the stretches. */
  double orderError(double[] l) {
    double w = energy(l);
    double[] g = gradient(l);
    double[] h = hessian(l);
    double worst = 0.0;
    for (int[] order : ORDERS) {
      double[] k = ordered(l, order);
      worst = larger(worst, Math.abs(energy(k) - w) / (young + Math.abs(w)));
      double[] first = gradient(k);
      double[] second = hessian(k);
      for (int i = 0; i < 3; i++) {
        double at = g[order[i]];
        worst = larger(worst, Math.abs(first[i] - at) / (young + Math.abs(at)));
        for (int j = 0; j < 3; j++) {
          double here = h[PLACES[order[i]][order[j]]];
          double there = second[PLACES[i][j]];
          worst = larger(worst, Math.abs(there - here) / (young + Math.abs(here)));
        }
      }
    }
    return worst;
  }

  /** The scaled law against this one times the factor. */
  double scaledError(double[] l, StrainEnergy scaled, double factor) {
    LawDifferences other = new LawDifferences(scaled);
    double w = factor * energy(l);
    double worst = Math.abs(other.energy(l) - w) / (young + Math.abs(w));
    double[] g = gradient(l);
    double[] h = hessian(l);
    double[] first = other.gradient(l);
    double[] second = other.hessian(l);
    for (int i = 0; i < 3; i++) {
      worst = larger(worst, Math.abs(first[i] - factor * g[i]) / (young + Math.abs(g[i])));
    }
    for (int i = 0; i < 6; i++) {
      worst = larger(worst, Math.abs(second[i] - factor * h[i]) / (young + Math.abs(h[i])));
    }
    return larger(worst, Math.abs(scaled.shearModulus() / (factor * law.shearModulus()) - 1.0));
  }

  /** Both orders of derivatives at once against each for itself. */
  double togetherError(double[] l) {
    double[] first = new double[3];
    double[] second = new double[6];
    law.derivatives(l[0], l[1], l[2], first, second);
    double[] g = gradient(l);
    double[] h = hessian(l);
    double worst = 0.0;
    for (int i = 0; i < 3; i++) {
      worst = larger(worst, Math.abs(first[i] - g[i]) / (young + Math.abs(g[i])));
    }
    for (int i = 0; i < 6; i++) {
      worst = larger(worst, Math.abs(second[i] - h[i]) / (young + Math.abs(h[i])));
    }
    return worst;
  }

  boolean finite(double[] l) {
    double sum = energy(l);
    for (double each : gradient(l)) {
      sum += Math.abs(each);
    }
    for (double each : hessian(l)) {
      sum += Math.abs(each);
    }
    return Double.isFinite(sum);
  }

  /** Not a number counts as an error without bound. */
  static double larger(double worst, double error) {
    return Double.isNaN(error) ? Double.POSITIVE_INFINITY : Math.max(worst, error);
  }

  static double[] ordered(double[] l, int[] order) {
    return new double[] {l[order[0]], l[order[1]], l[order[2]]};
  }

  double[] gradient(double[] l) {
    double[] g = new double[3];
    law.gradient(l[0], l[1], l[2], g);
    return g;
  }

  private double[] hessian(double[] l) {
    double[] h = new double[6];
    law.hessian(l[0], l[1], l[2], h);
    return h;
  }
}
