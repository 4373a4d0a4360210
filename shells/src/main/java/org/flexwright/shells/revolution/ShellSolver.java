package org.flexwright.shells.revolution;

/**
 * Finds states of balance of a shell by Newton's method with one condition more for the load
 * factor.
 *
 * <p>Work space of one path; not thread-safe.
 */
final class ShellSolver {

  private static final int MOST = 30;
  private static final double NEAR = 1e-8; // the next step would be below the last digit

  private final ShellModel model;
  private final Loading loading;
  private final int[] held;
  private final double size;
  private final double[] right;
  private final double[] along;
  private final double[] trial;

  final double[] x;
  double factor;
  int iterations;

  ShellSolver(ShellModel model, Loading loading, int[] held) {
    this.model = model;
    this.loading = loading;
    this.held = held;
    x = model.mesh.rest();
    right = new double[x.length];
    along = new double[x.length];
    trial = new double[x.length];
    double most = 0.0;
    for (int i = 0; i < model.mesh.nodes(); i++) {
      most = Math.max(most, Math.max(model.mesh.radius[i], Math.abs(model.mesh.height[i])));
    }
    size = most;
  }

  /** The controlled value in the present state. */
  double value(Control control) {
    if (control instanceof Control.Unknown u) {
      return x[u.at()];
    }
    return control instanceof Control.Volume ? model.volume : factor;
  }

  /**
   * Goes to a value of the control.
   *
   * @return whether the state was found; if not, the state is as before
   */
  boolean solve(Control control, double target) {
    double[] start = x.clone();
    double before = factor;
    double last = Double.POSITIVE_INFINITY;
    for (int i = 0; i < MOST; i++) {
      if (!evaluate()) {
        break;
      }
      iterations++;
      double step = step(control, target);
      if (!(step < Double.POSITIVE_INFINITY)) {
        break;
      }
      if (step < NEAR) {
        return evaluate();
      }
      if (step > 1e3 * last && i > 5) {
        break;
      }
      last = step;
    }
    System.arraycopy(start, 0, x, 0, x.length);
    factor = before;
    evaluate();
    return false;
  }

  /** Evaluates the present state with tangent and factors. */
  boolean evaluate() {
    if (!model.at(x, loading.standing() + factor * loading.pressure())) {
      return false;
    }
    double stiff = 1.0;
    for (int h : held) {
      model.tangent.hold(h / 3, h % 3, stiff);
    }
    return model.tangent.factor();
  }

  /** Force left over, the negative of the slope of the potential. */
  private void residual(double[] out) {
    double p = loading.standing() + factor * loading.pressure();
    for (int i = 0; i < out.length; i++) {
      out[i] =
          -model.force[i]
              + p * model.swept[i]
              + loading.held()[i]
              + factor * loading.force()[i];
    }
    for (int h : held) {
      out[h] = 0.0;
    }
  }

  private void pattern(double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = loading.pressure() * model.swept[i] + loading.force()[i];
    }
    for (int h : held) {
      out[h] = 0.0;
    }
  }

  /** One Newton step; gives its largest part over the size of the shell. */
  private double step(Control control, double target) {
    residual(right);
    pattern(along);
    model.tangent.solve(right);
    model.tangent.solve(along);
    double df;
    if (control instanceof Control.Unknown u) {
      df = (target - x[u.at()] - right[u.at()]) / along[u.at()];
    } else if (control instanceof Control.Volume) {
      double a = 0.0;
      double b = 0.0;
      for (int i = 0; i < x.length; i++) {
        a += model.swept[i] * right[i];
        b += model.swept[i] * along[i];
      }
      df = (target - model.volume - a) / b;
    } else {
      df = target - factor;
    }
    double most = 0.0;
    for (int i = 0; i < x.length; i++) {
      double d = right[i] + df * along[i];
      trial[i] = d;
      most = Math.max(most, Math.abs(d) / (i % 3 == 2 ? 1.0 : size));
    }
    double share = most > 0.2 ? 0.2 / most : 1.0;
    for (int i = 0; i < x.length; i++) {
      x[i] += share * trial[i];
    }
    factor += share * df;
    return most;
  }
}
