package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear or logarithmic axis of a plot.
 *
 * @param low value at the start
 * @param high value at the end
 * @param start place of the start on the page
 * @param end place of the end on the page
 * @param log whether it is logarithmic
 */
record Axis(double low, double high, double start, double end, boolean log) {

  private static final double MOST_LINEAR = 12.0; // beyond this ratio a linear axis hides the foot
  private static final double[] STEPS = {1.0, 2.0, 5.0, 10.0};

  /** An axis that shows all of the values, logarithmic if they differ much and are above 0. */
  static Axis over(double low, double high, double start, double end) {
    if (low > 0.0 && high / low > MOST_LINEAR) {
      return new Axis(low / 1.15, high * 1.15, start, end, true);
    }
    double room = 0.06 * (high - low);
    double foot = low >= 0.0 && low < 0.5 * high ? 0.0 : low - room;
    return new Axis(foot, high + room, start, end, false);
  }

  double at(double value) {
    double share =
        log ? Math.log(value / low) / Math.log(high / low) : (value - low) / (high - low);
    return start + share * (end - start);
  }

  boolean shows(double value) {
    return value >= low && value <= high;
  }

  /** Round values along the axis, about so many if it is linear. */
  List<Double> ticks(int about) {
    return log ? logTicks() : linearTicks(about);
  }

  private List<Double> linearTicks(int about) {
    double raw = (high - low) / about;
    double decade = Math.pow(10.0, Math.floor(Math.log10(raw)));
    double step = 10.0 * decade;
    for (double s : STEPS) {
      if (s * decade >= raw) {
        step = s * decade;
        break;
      }
    }
    List<Double> ticks = new ArrayList<>();
    for (long i = (long) Math.ceil(low / step); i * step <= high; i++) {
      ticks.add(i * step);
    }
    return ticks;
  }

  private List<Double> logTicks() {
    int first = (int) Math.floor(Math.log10(low));
    int last = (int) Math.ceil(Math.log10(high));
    boolean dense = Math.log10(high / low) <= 2.7;
    List<Double> ticks = new ArrayList<>();
    for (int k = first; k <= last; k++) {
      for (double s : dense ? new double[] {1.0, 2.0, 5.0} : new double[] {1.0}) {
        double value = s * Math.pow(10.0, k);
        if (shows(value)) {
          ticks.add(value);
        }
      }
    }
    return ticks;
  }
}
