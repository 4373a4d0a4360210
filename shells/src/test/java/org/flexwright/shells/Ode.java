package org.flexwright.shells;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/** Initial value problems for tests that need a route of their own. */
public final class Ode {

  private Ode() {}

  /** Right-hand sides of a system. */
  @FunctionalInterface
  public interface Slopes {
    /** Writes dy/ds. */
    void at(double s, double[] y, double[] dy);
  }

  /** Integrates from s = 0. */
  public static double[] run(double to, double[] start, Slopes slopes) {
    FirstOrderDifferentialEquations system =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return start.length;
          }

          @Override
          public void computeDerivatives(double s, double[] y, double[] dy) {
            slopes.at(s, y, dy);
          }
        };
    double[] end = start.clone();
    new DormandPrince853Integrator(1e-12, to, 1e-11, 1e-11).integrate(system, 0.0, start, to, end);
    return end;
  }

  /** A root. */
  public static double root(
      org.apache.commons.math3.analysis.UnivariateFunction f, double low, double high) {
    return new BrentSolver(1e-13, 1e-13).solve(300, f, low, high);
  }
}
