package org.flexwright.law;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The states in which a law is looked at: on ways from rest between uniaxial and equibiaxial
 * tension, to the end of the range of the law (to a stretch of {@link Stability#FARTHEST} at most),
 * and at random in it.
 */
final class LawStates {

  // second Hencky strain over the first, the largest one
  private static final double[] WAYS = {-0.5, -0.25, 0.0, 0.3, 0.7, 1.0};
  private static final double[] SHARES = {
    1e-3, 0.01, 0.03, 0.1, 0.2, 0.35, 0.5, 0.7, 0.85, 0.95, 0.99, 1.0
  };
  // at the very end rounding of a root or of 1/l^2 may be outside
  private static final double INSIDE = 1.0 - 1e-12;
  private static final int DENSE_WAYS = 12;
  private static final int DENSE_SHARES = 60;
  private static final int RANDOM = 2000;
  private static final long SEED = 1944;

  private final double low;
  private final double high;

  LawStates(StretchRange range) {
    // beyond, powers of the stretches differ by more digits than a number has
    high = Math.min(Math.log(range.high()), Math.log(Stability.FARTHEST));
    low = Math.max(Math.log(range.low()), -2.0 * Math.log(Stability.FARTHEST));
  }

  /** A few dozen states, each in one of the orders of its stretches. */
  List<double[]> few() {
    List<double[]> states = new ArrayList<>();
    states.add(new double[] {1.0, 1.0, 1.0});
    for (double way : WAYS) {
      for (double share : SHARES) {
        double[] l = on(way, share * end(way));
        states.add(turned(l, states.size()));
      }
    }
    return states;
  }

  /** A map of the range; with a limit on the largest Hencky strain, of the part below. */
  List<double[]> map(double limit) {
    List<double[]> states = new ArrayList<>();
    for (int i = 0; i <= DENSE_WAYS; i++) {
      double way = -0.5 + 1.5 * i / DENSE_WAYS;
      double end = Math.min(limit, end(way));
      for (int k = 1; k <= DENSE_SHARES; k++) {
        states.add(on(way, end * k / DENSE_SHARES));
      }
    }
    return states;
  }

  /** Random states of the range, the same ones each time. */
  List<double[]> random() {
    SplittableRandom random = new SplittableRandom(SEED);
    List<double[]> states = new ArrayList<>();
    while (states.size() < RANDOM) {
      double way = -0.5 + 1.5 * random.nextDouble();
      states.add(turned(on(way, random.nextDouble() * end(way)), random.nextInt(6)));
    }
    return states;
  }

  /** States from rest outwards on a way, far beyond the range, until a stretch is 10^4 times it. */
  List<List<double[]>> beyond() {
    List<List<double[]>> ways = new ArrayList<>();
    for (double way : WAYS) {
      List<double[]> states = new ArrayList<>();
      double end = end(way) + Math.log(1e4);
      for (int i = 0; i <= 400; i++) {
        states.add(on(way, end * i / 400));
      }
      ways.add(states);
    }
    return ways;
  }

  /** The largest Hencky strain on a way at which all stretches are in the range. */
  private double end(double way) {
    return INSIDE * Math.min(high, -low / (1.0 + way));
  }

  private static double[] on(double way, double strain) {
    return new double[] {Math.exp(strain), Math.exp(way * strain), Math.exp(-(1.0 + way) * strain)};
  }

  private static double[] turned(double[] l, int order) {
    return LawDifferences.ordered(l, LawDifferences.ORDERS[order % 6]);
  }
}
