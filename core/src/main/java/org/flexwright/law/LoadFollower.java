package org.flexwright.law;

import org.flexwright.InvalidInputException;
import org.flexwright.quantity.Pressure;

/**
 * Two nominal stresses that grow in proportion from rest, and the state that follows them.
 *
 * <p>Newton in the Hencky strains of both directions; a step of the load is halved until no strain
 * moves by more than 0.1, the iteration converges, dP_i/dl_j is positive definite half way and at
 * the end, and the stretches are in the range of the law.
 */
final class LoadFollower {

  private static final double MOVE = 0.1;
  private static final double LEAST_STEP = 1e-6;
  private static final double SAME = 1e-14;
  private static final int ITERATIONS = 12;
  private static final String GIVES_WAY = "the state gives way under dead loads";

  private final StretchRange range;
  private final BiaxialStretch.Stress load;
  private final StateStiffness state;
  private double e1;
  private double e2;
  private double next1;
  private double next2;
  private String loss = "";

  LoadFollower(StrainEnergy law, BiaxialStretch.Stress load) {
    this.load = load;
    range = law.range();
    state = new StateStiffness(law);
  }

  BiaxialStretch state() {
    double reached = 0.0;
    double step = 1.0;
    while (reached < 1.0) {
      double share = Math.min(1.0, reached + step);
      if (solve(share)) {
        e1 = next1;
        e2 = next2;
        reached = share;
        step *= 2.0;
      } else {
        step *= 0.5;
        if (step < LEAST_STEP) {
          throw lost(reached);
        }
      }
    }
    return new BiaxialStretch(Math.exp(e1), Math.exp(e2));
  }

  /** Whether the state at a share of the load is found beside the last one. */
  private boolean solve(double share) {
    double p1 = share * load.first().pa();
    double p2 = share * load.second().pa();
    next1 = e1;
    next2 = e2;
    for (int i = 0; i < ITERATIONS; i++) {
      at(next1, next2);
      // by the strains: dP_i/de_j = dP_i/dl_j l_j
      double a = state.tangent11() * Math.exp(next1);
      double b = state.tangent12() * Math.exp(next2);
      double c = state.tangent12() * Math.exp(next1);
      double d = state.tangent22() * Math.exp(next2);
      double r1 = p1 - state.nominal1();
      double r2 = p2 - state.nominal2();
      double determinant = a * d - b * c;
      double move1 = (d * r1 - b * r2) / determinant;
      double move2 = (a * r2 - c * r1) / determinant;
      next1 += move1;
      next2 += move2;
      if (!(Math.abs(next1 - e1) <= MOVE && Math.abs(next2 - e2) <= MOVE)) {
        loss = GIVES_WAY;
        return false;
      }
      if (Math.abs(move1) + Math.abs(move2) <= SAME * (1.0 + Math.abs(e1) + Math.abs(e2))) {
        return sound(0.5 * (e1 + next1), 0.5 * (e2 + next2)) && sound(next1, next2);
      }
    }
    // rounding may keep the last digit moving
    double last = Math.abs(state.nominal1() - p1) + Math.abs(state.nominal2() - p2);
    return last <= 1e-11 * (Math.abs(p1) + Math.abs(p2)) && sound(next1, next2);
  }

  private boolean sound(double x, double y) {
    at(x, y);
    double most = Math.exp(Math.max(Math.max(x, y), -x - y));
    double least = Math.exp(Math.min(Math.min(x, y), -x - y));
    if (!(most <= range.high() && least >= range.low())) {
      loss = "the state leaves the range of the law, " + range;
      return false;
    }
    loss = GIVES_WAY;
    return state.deadLoad() > 0.0;
  }

  private void at(double x, double y) {
    state.at(Math.exp(x), Math.exp(y), Math.exp(-x - y));
  }

  private InvalidInputException lost(double reached) {
    Pressure first = load.first().times(reached);
    Pressure second = load.second().times(reached);
    return new InvalidInputException(
        "nominal stresses",
        load.toString(),
        "up to "
            + new BiaxialStretch.Stress(first, second)
            + ", at "
            + new BiaxialStretch(Math.exp(e1), Math.exp(e2))
            + ", where "
            + loss,
        "ask for less load, or give the stretches");
  }
}
