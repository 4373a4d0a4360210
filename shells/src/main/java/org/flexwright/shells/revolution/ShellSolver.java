package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Finds states of balance of a shell by Newton's method with one condition more for the load
 * factor.
 *
 * <p>Work space of one path; not thread-safe.
 */
final class ShellSolver {

  private static final int MOST = 25;
  private static final double NEAR = 1e-8; // quadratic: the next step would be below the last digit
  private static final double SMALL = 1e-3; // of the size: the square rules
  private static final double LAST_DIGIT = 1e-15;
  private static final double CLOSE = 1e-4; // of the thinnest wall: gap left at a pressed face
  private static final int SHORTER = 8;
  private static final double ENOUGH = 0.8;
  private static final double LONGEST = 0.2; // of the size of the shell, in one Newton step

  private final ShellModel model;
  private final Links links;
  private Loading loading;
  private int[] held;
  private final double size;
  private final double[] right;
  private final double[] along;
  private final double[] row; // slope of the controlled value
  private final double[] marked; // where an arc starts
  private final double[] direction; // of the arc
  private final double[] ahead; // unit way a step sets out
  private final double[] moved; // by the last step
  private double movedFactor;
  private double drive; // work of the forces left over along the last step

  final double[] x;
  double factor;
  int iterations;

  ShellSolver(ShellModel model, Loading loading, int[] held) {
    this.model = model;
    links = new Links(model.mesh);
    this.loading = loading;
    this.held = with(held);
    x = model.mesh.rest();
    right = new double[x.length];
    along = new double[x.length];
    row = new double[x.length];
    marked = x.clone();
    direction = new double[x.length];
    ahead = new double[x.length];
    moved = new double[x.length];
    size = model.mesh.size();
  }

  /** Goes on under another loading from the present state. */
  void load(Loading by, double from, int... holding) {
    loading = by;
    factor = from;
    held = with(holding);
  }

  private int[] with(int[] holding) {
    return IntStream.concat(IntStream.of(holding), IntStream.of(links.held())).toArray();
  }

  ShellModel model() {
    return model;
  }

  /** The controlled value in the present state. */
  double value(Control control) {
    if (control instanceof Control.Unknown u) {
      return x[u.at()];
    }
    if (control instanceof Control.Volume) {
      return model.volume;
    }
    if (control instanceof Control.Arc) {
      double sum = 0.0;
      for (int i = 0; i < x.length; i++) {
        sum += direction[i] * (x[i] - marked[i]);
      }
      return sum;
    }
    return factor;
  }

  /**
   * Goes to a value of the control.
   *
   * @return whether the state was found; if not, the state is left anywhere: restore it
   */
  boolean solve(Control control, double target) {
    for (int i = 0; i <= MOST && newton(control, target); i++) {
      double left = model.update(x);
      if (left <= CLOSE * model.mesh.thinnest()) {
        return exists();
      }
      if (left == Double.POSITIVE_INFINITY) {
        return false; // through itself
      }
    }
    return false;
  }

  /** Whether the law gives the state an energy; its derivatives alone do not tell. */
  private boolean exists() {
    return model.energy(x) < Double.POSITIVE_INFINITY;
  }

  private boolean newton(Control control, double target) {
    double last = Double.POSITIVE_INFINITY;
    boolean at = at();
    for (int i = 0; i < MOST; i++) {
      if (!at || !model.factor(held, links)) {
        return false;
      }
      iterations++;
      double step = step(control, target);
      if (!(step < Double.POSITIVE_INFINITY) || step > 1e3 * last) {
        return false;
      }
      // quadratic: the next step would be about step^3/last^2
      if (step < NEAR || (last < SMALL && step * step * step < LAST_DIGIT * last * last)) {
        return evaluate();
      }
      last = step;
      at = at();
      if (i > 0 && model.touches()) {
        at = shorten(at);
      }
    }
    return false;
  }

  /**
   * Goes back along the last step until the forces no longer push back along it harder than they
   * drove it: full steps can swing for ever between sets of points that touch.
   */
  private boolean shorten(boolean there) {
    boolean at = there;
    double share = 1.0;
    for (int i = 0; i < SHORTER; i++) {
      double back = Double.NEGATIVE_INFINITY;
      if (at) {
        residual(along);
        back = dot(along, moved);
      }
      if (drive <= 0.0 || back >= -ENOUGH * drive) {
        return at;
      }
      double to = share * Math.max(0.1, Math.min(0.5, drive / (drive - back)));
      for (int u = 0; u < x.length; u++) {
        x[u] += (to - share) * moved[u];
      }
      factor += (to - share) * movedFactor;
      share = to;
      at = at();
    }
    return at;
  }

  /** Evaluates the present state; gives whether it can exist. */
  private boolean at() {
    model.head = loading.headAt(factor);
    return model.at(x, pressure());
  }

  /** Evaluates the present state with tangent and factors. */
  boolean evaluate() {
    return at() && model.factor(held, links);
  }

  double pressure() {
    return loading.pressureAt(factor);
  }

  /** Force left over, the negative of the slope of the potential. */
  private void residual(double[] out) {
    double p = pressure();
    for (int i = 0; i < out.length; i++) {
      out[i] = p * model.swept[i] + model.head * model.wetted[i] - model.force[i];
    }
    loading.addForces(factor, out);
    free(out);
  }

  /** How the forces grow with the load factor. */
  private void pattern(double[] out) {
    for (int i = 0; i < out.length; i++) {
      out[i] = loading.perFactor() * model.swept[i] + loading.headPerFactor() * model.wetted[i];
    }
    loading.addPattern(out);
    free(out);
  }

  /** How the unknowns grow with the load factor. */
  private void solveAlong() {
    pattern(along);
    model.solve(along);
    links.drop(along);
  }

  private void free(double[] out) {
    for (int h : held) {
      out[h] = 0.0;
    }
  }

  /** One Newton step; gives its largest part over the size of the shell. */
  private double step(Control control, double target) {
    residual(right);
    System.arraycopy(right, 0, moved, 0, right.length);
    links.close(x, right);
    model.solve(right);
    links.drop(right);
    solveAlong();
    double df;
    if (control instanceof Control.Load) {
      df = target - factor;
    } else {
      slope(control);
      df = (target - value(control) - dot(row, right)) / dot(row, along);
    }
    double most = 0.0;
    for (int i = 0; i < x.length; i++) {
      right[i] += df * along[i];
      most = Math.max(most, Math.abs(right[i]) / scale(i));
    }
    double share = most > LONGEST ? LONGEST / most : 1.0;
    drive = share * dot(moved, right);
    for (int i = 0; i < x.length; i++) {
      moved[i] = share * right[i];
      x[i] += moved[i];
    }
    movedFactor = share * df;
    factor += movedFactor;
    return most;
  }

  private double scale(int i) {
    return i % 3 == 2 ? 1.0 : size;
  }

  private void slope(Control control) {
    if (control instanceof Control.Unknown u) {
      Arrays.fill(row, 0.0);
      row[u.at()] = 1.0;
    } else if (control instanceof Control.Volume) {
      System.arraycopy(model.swept, 0, row, 0, row.length);
    } else {
      System.arraycopy(direction, 0, row, 0, row.length);
    }
  }

  private static double dot(double[] a, double[] b) {
    double sum = 0.0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /**
   * How the load factor goes with a controlled value at the present, evaluated state.
   *
   * @return d factor / d value, zero at a limit point of the load
   */
  double rate(Control control) {
    solveAlong();
    slope(control);
    return 1.0 / dot(row, along);
  }

  /**
   * How a controlled value grows along the arc marked, at the present, evaluated state.
   *
   * @return d value / d arc, zero where the value turns round
   */
  double growth(Control control) {
    solveAlong();
    slope(new Control.Arc());
    double arc = dot(row, along);
    if (control instanceof Control.Load) {
      return 1.0 / arc;
    }
    slope(control);
    return dot(row, along) / arc;
  }

  /** How fast the shell moves with a controlled value at the present, evaluated state. */
  double speed(Control control) {
    solveAlong();
    double sum = 0.0;
    for (int i = 0; i < x.length; i++) {
      double s = along[i] / scale(i);
      sum += s * s;
    }
    if (control instanceof Control.Load) {
      return Math.sqrt(sum);
    }
    slope(control);
    return Math.sqrt(sum) / Math.abs(dot(row, along));
  }

  /** Marks the way a step of a controlled value sets out from the present, evaluated state. */
  void aim(Control control, double step) {
    along(control, step, ahead);
  }

  private void along(Control control, double step, double[] out) {
    solveAlong();
    slope(control);
    double by = Math.copySign(1.0, dot(row, along) * step);
    double sum = 0.0;
    for (int i = 0; i < x.length; i++) {
      out[i] = by * along[i] / scale(i);
      sum += out[i] * out[i];
    }
    for (int i = 0; i < x.length; i++) {
      out[i] /= Math.sqrt(sum);
    }
  }

  /** The cosine of the way from a state to the way set out or arriving, whichever is less. */
  double aligned(Control control, double[] from, double step) {
    double start = 0.0;
    double end = 0.0;
    along(control, step, right);
    for (int i = 0; i < x.length; i++) {
      double way = (x[i] - from[i]) / scale(i);
      start += way * ahead[i];
      end += way * right[i];
    }
    return Math.min(start, end) / distance(from);
  }

  /** How far the present state is from another. */
  double distance(double[] other) {
    double sum = 0.0;
    for (int i = 0; i < x.length; i++) {
      double s = (x[i] - other[i]) / scale(i);
      sum += s * s;
    }
    return Math.sqrt(sum);
  }

  /**
   * Marks the present, evaluated state as the start of an arc, its direction that of the path,
   * pointing on from the arc before if there was one.
   *
   * @param onward whether the direction shall agree with the arc before
   */
  void mark(boolean onward) {
    solveAlong();
    double length = 0.0;
    double same = 0.0;
    for (int i = 0; i < x.length; i++) {
      double s = along[i] / scale(i);
      length += s * s;
      same += along[i] * direction[i];
    }
    double by = 1.0 / Math.sqrt(length);
    if (onward && same < 0.0) {
      by = -by;
    }
    for (int i = 0; i < x.length; i++) {
      direction[i] = by * along[i] / (scale(i) * scale(i));
      marked[i] = x[i];
    }
  }

  /** Turns the direction of the arc round. */
  void turnRound() {
    for (int i = 0; i < direction.length; i++) {
      direction[i] = -direction[i];
    }
  }

  /**
   * Whether the present, evaluated state is stable while a value is controlled: no negative
   * eigenvalue is left among the displacements that keep the value.
   */
  boolean stable(Control control) {
    return negatives(control) == 0;
  }

  /**
   * How many negative eigenvalues the tangent of the present, evaluated state has among the
   * displacements that keep a controlled value.
   */
  int negatives(Control control) {
    int negative = model.negative() - links.count();
    if (control instanceof Control.Load || negative == 0) {
      return negative;
    }
    return rate(control) < 0.0 ? negative - 1 : negative;
  }
}
