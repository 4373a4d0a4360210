package org.flexwright.law.classical;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;
import org.flexwright.law.Deformation;
import org.flexwright.law.StretchRange;

/** The stretches at which a law that depends on I1 locks. */
final class Locking {

  /** The part of the way to locking that a law may be used to. */
  static final double SAFE = 0.95;

  private static final int ITERATIONS = 200;

  private Locking() {}

  /** The stretch above 1 at which I1 - 3 of a deformation reaches a value, 1 for 0 and below. */
  static double stretch(Deformation mode, double excess) {
    if (!(excess > 0.0)) {
      return 1.0;
    }
    if (Double.isInfinite(excess)) {
      return excess;
    }
    // I1 is above the largest squared stretch, so the root lies below this end; a hair more for
    // what
    // rounding takes from the square
    return new BrentSolver(1e-14, 1e-300)
        .solve(
            ITERATIONS,
            stretch -> {
              double[] l = mode.stretches(stretch);
              return Invariants.first(l[0], l[1], l[2]) - excess;
            },
            1.0,
            Math.sqrt(excess + 3.0) * (1.0 + 1e-15));
  }

  /** The range to a value of I1 - 3 in the worst deformation, which is inflation. */
  static StretchRange range(double excess, String reason, Source source) {
    double high = stretch(Deformation.EQUIBIAXIAL, excess);
    return new StretchRange(1.0 / (high * high), high, reason, source);
  }
}
