package org.flexwright.shells.inflate;

import java.util.List;
import org.flexwright.shells.revolution.Touch;

/**
 * The part of a contact that seals best: the largest mean pressure over the length of two walls,
 * two walls at either edge of the contact left out. There a shell gives a line load, which it
 * spreads over an element; a continuum presses harder there than inside, but less than the line
 * load. A contact shorter than six walls leaves out less, one shorter than two counts as two long.
 *
 * @param pressure the mean pressure, zero without a contact
 * @param element one in the middle of it
 */
record Band(double pressure, int element) {

  private static final double WALLS = 2.0;

  static Band best(List<Touch.Patch> patches) {
    Band best = new Band(0.0, 0);
    int from = 0;
    for (int i = 1; i <= patches.size(); i++) {
      boolean goesOn =
          i < patches.size() && patches.get(i).element() == patches.get(i - 1).element() + 1;
      if (!goesOn) {
        Band here = run(patches.subList(from, i));
        best = here.pressure > best.pressure ? here : best;
        from = i;
      }
    }
    return best;
  }

  /** The best of one run of touching elements. */
  private static Band run(List<Touch.Patch> run) {
    int n = run.size();
    double[] at = new double[n + 1];
    double[] sum = new double[n + 1];
    for (int i = 0; i < n; i++) {
      double length = run.get(i).length().m();
      at[i + 1] = at[i] + length;
      sum[i + 1] = sum[i] + length * run.get(i).pressure().pa();
    }
    double low = WALLS * run.get(0).wall().m();
    double high = WALLS * run.get(n - 1).wall().m();
    double band = Math.min(low, high);
    double share = Math.max(0.0, Math.min(1.0, (at[n] - band) / (low + high)));
    double from = share * low;
    double to = at[n] - share * high;
    Band best = mean(run, at, sum, from, from + band);
    for (double edge : at) { // the mean is largest with an end of the band at an edge
      if (edge > from && edge + band <= to) {
        best = larger(best, mean(run, at, sum, edge, edge + band));
      }
      if (edge - band > from && edge <= to) {
        best = larger(best, mean(run, at, sum, edge - band, edge));
      }
    }
    return larger(best, mean(run, at, sum, to - band, to));
  }

  private static Band larger(Band a, Band b) {
    return b.pressure > a.pressure ? b : a;
  }

  private static Band mean(
      List<Touch.Patch> run, double[] at, double[] sum, double from, double to) {
    double pressure = (value(at, sum, to) - value(at, sum, from)) / (to - from);
    int middle = Math.min(run.size() - 1, piece(at, 0.5 * (from + to)));
    return new Band(pressure, run.get(middle).element());
  }

  private static int piece(double[] at, double x) {
    int i = 0;
    while (i < at.length - 2 && at[i + 1] < x) {
      i++;
    }
    return i;
  }

  /** The sum up to a place, level outside. */
  private static double value(double[] at, double[] sum, double x) {
    int last = at.length - 1;
    if (x <= 0.0) {
      return 0.0;
    }
    if (x >= at[last]) {
      return sum[last];
    }
    int i = piece(at, x);
    return sum[i] + (sum[i + 1] - sum[i]) * (x - at[i]) / (at[i + 1] - at[i]);
  }
}
