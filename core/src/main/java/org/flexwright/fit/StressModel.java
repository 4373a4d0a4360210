package org.flexwright.fit;

import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;

/**
 * A family on the points of a fit: residuals and their derivatives by the constants. The constants
 * are scaled, stresses in shear moduli of the data. Not thread-safe: it keeps work space.
 */
final class StressModel {

  private static final double HAIR = 1e-9;
  private static final double FORWARD = 1e-7;
  private static final double CENTRAL = 1e-5;
  private static final double LEAST_STEP = 1e-2;
  private static final double LINEAR = 1e-8;

  final LawFamily family;
  final FitData data;
  final int size;
  final double[] low;
  final double[] high;
  final List<LawFamily.Constant> constants;
  private final double[] unit;
  private final double[] work = new double[3];
  private final double[] at;
  private final double[] up;
  private final double[] down;
  private boolean linear;

  StressModel(LawFamily family, FitData data, boolean bounded) {
    this.family = family;
    this.data = data;
    constants = family.constants();
    size = constants.size();
    low = new double[size];
    high = new double[size];
    unit = new double[size];
    at = new double[data.size];
    up = new double[data.size];
    down = new double[data.size];
    for (int i = 0; i < size; i++) {
      LawFamily.Constant constant = constants.get(i);
      unit[i] = constant.kind() == LawFamily.Constant.Kind.STRESS ? data.shear : 1.0;
      low[i] = bounded ? constant.low() / unit[i] : Double.NEGATIVE_INFINITY;
      high[i] = bounded ? constant.high() / unit[i] : Double.POSITIVE_INFINITY;
    }
  }

  boolean stress(int i) {
    return constants.get(i).kind() == LawFamily.Constant.Kind.STRESS;
  }

  double unit(int i) {
    return unit[i];
  }

  boolean linear() {
    return linear;
  }

  /** The constants in pascals and plain numbers. */
  double[] values(double[] x) {
    double[] values = new double[size];
    for (int i = 0; i < size; i++) {
      values[i] = x[i] * unit[i];
    }
    return values;
  }

  double clamp(int i, double value) {
    return Math.max(low[i], Math.min(high[i], value));
  }

  /** The weighted residuals; false if there is no such law, or none of these stretches. */
  boolean residuals(double[] x, double[] out) {
    if (!stresses(x, out)) {
      return false;
    }
    data.residuals(out);
    return true;
  }

  private boolean stresses(double[] x, double[] out) {
    StrainEnergy law;
    try {
      law = family.law(values(x));
    } catch (InvalidInputException refused) {
      return false;
    }
    return data.stresses(law, work, out);
  }

  /** Moves bounds at which the family has no law a hair inside; from a state that has one. */
  void probeBounds(double[] inside) {
    for (int i = 0; i < size; i++) {
      double[] x = inside.clone();
      x[i] = low[i];
      if (Double.isFinite(low[i]) && !stresses(x, up)) {
        low[i] += HAIR * Math.max(1.0, Math.abs(low[i]));
      }
      x[i] = high[i];
      if (Double.isFinite(high[i]) && !stresses(x, up)) {
        high[i] -= HAIR * Math.max(1.0, Math.abs(high[i]));
      }
    }
  }

  /** The derivatives of the residuals by the constants, a column for each index. */
  void jacobian(double[] x, int[] columns, boolean fine, double[][] out) {
    stresses(x, at);
    for (int c = 0; c < columns.length; c++) {
      derivative(x, columns[c], fine, c, out);
    }
  }

  private void derivative(double[] x, int i, boolean fine, int column, double[][] out) {
    double keep = x[i];
    double scale = Math.max(Math.abs(keep), LEAST_STEP);
    boolean exact = linear && stress(i);
    double h = (exact ? LEAST_STEP : fine ? CENTRAL : FORWARD) * scale;
    x[i] = keep + h;
    boolean above = keep + h <= high[i] && stresses(x, up);
    double top = above ? x[i] : keep;
    x[i] = keep - h;
    boolean both = (fine && !exact) || !above;
    boolean below = both && keep - h >= low[i] && stresses(x, down);
    double bottom = below ? x[i] : keep;
    x[i] = keep;
    double[] a = above ? up : at;
    double[] b = below ? down : at;
    for (int k = 0; k < data.size; k++) {
      out[k][column] = top == bottom ? 0.0 : (a[k] - b[k]) / (top - bottom) * data.weight(k);
    }
  }

  /**
   * Finds out whether the stress is a sum over the stress constants, each times a curve of its own.
   */
  void probeLinear(double[] base) {
    linear = false;
    if (!stresses(base, at)) {
      return;
    }
    double[] sum = at.clone();
    double[] all = base.clone();
    double[] homogeneous = new double[data.size];
    int number = 0;
    for (int i = 0; i < size; i++) {
      if (!stress(i)) {
        continue;
      }
      double step = (0.3 + 0.1 * number++) * step(i);
      double[] x = base.clone();
      x[i] += step;
      all[i] += step;
      if (!stresses(x, up)) {
        return;
      }
      for (int k = 0; k < data.size; k++) {
        sum[k] += up[k] - at[k];
        homogeneous[k] += (up[k] - at[k]) * base[i] / step;
      }
    }
    linear = number > 0 && stresses(all, up) && near(sum, up) && near(homogeneous, at);
  }

  private boolean near(double[] a, double[] b) {
    for (int k = 0; k < data.size; k++) {
      if (!(Math.abs(a[k] - b[k]) <= LINEAR * (Math.abs(b[k]) + data.shear))) {
        return false;
      }
    }
    return true;
  }

  /** A step of a stress constant that a family is likely to allow. */
  double step(int i) {
    LawFamily.Constant constant = constants.get(i);
    return constant.usualHigh() - constant.usualLow();
  }

  /**
   * The weighted stresses of the stress constants at one each, in columns; false if there are none.
   */
  boolean basis(double[] base, int[] columns, double[][] out) {
    if (!stresses(base, at)) {
      return false;
    }
    for (int c = 0; c < columns.length; c++) {
      double step = step(columns[c]);
      double[] x = base.clone();
      x[columns[c]] += step;
      if (!stresses(x, up)) {
        return false;
      }
      for (int k = 0; k < data.size; k++) {
        out[k][c] = (up[k] - at[k]) / step * data.weight(k);
      }
    }
    return true;
  }
}
