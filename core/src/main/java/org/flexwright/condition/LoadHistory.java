package org.flexwright.condition;

import java.time.Duration;
import java.util.Arrays;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * How a part was loaded over time, in straight pieces: at once, by a ramp, held, let go again.
 *
 * <p>Formula: the level L is the stress of the law without time over its final value; the stress
 * with time, over the same, is s(t) = int g(t - u) dL/du du = sum over the pieces of their slope
 * times G(t - start) - G(t - end), and g(t - u) times the height of each jump. Exact for every
 * {@link Relaxation}. Symbols: see there.
 *
 * <p>Range: a straight piece in stress is one in strain where the law is straight; else cut it into
 * more pieces. At the very moment of a jump the stress is that before it. Before the start it is 0.
 *
 * <p>Source: the superposition of Boltzmann, derived.
 *
 * <p>JShell: {@code LoadHistory.ramp(java.time.Duration.ofSeconds(5)).stress(
 * PowerRelaxation.polyurethane(), java.time.Duration.ofHours(1))}
 */
public final class LoadHistory {

  private final double[] time;
  private final double[] level;

  private LoadHistory(double[] time, double[] level) {
    this.time = time;
    this.level = level;
  }

  /**
   * Loaded at once at time 0, then held.
   *
   * @return the history
   */
  public static LoadHistory step() {
    return new LoadHistory(new double[] {0.0, 0.0}, new double[] {0.0, 1.0});
  }

  /**
   * Loaded at a constant rate from time 0, then held.
   *
   * @param rise how long the load rises, above 0
   * @return the history
   * @throws org.flexwright.InvalidInputException if the time is not above 0
   */
  public static LoadHistory ramp(Duration rise) {
    double t = Times.positive("time of a ramp", rise);
    return new LoadHistory(new double[] {0.0, t}, new double[] {0.0, 1.0});
  }

  /**
   * This history going on in a straight line to another level, then held.
   *
   * @param later how long after the last point the level is reached; zero for a jump
   * @param to the level: 0 is unloaded, 1 the full load
   * @return the new history
   * @throws org.flexwright.InvalidInputException if the time is negative or the level not finite
   */
  public LoadHistory then(Duration later, double to) {
    int n = time.length;
    double[] t = Arrays.copyOf(time, n + 1);
    double[] l = Arrays.copyOf(level, n + 1);
    t[n] = time[n - 1] + Require.notNegative("time to the next level", Times.seconds(later), "s");
    l[n] = Require.finite("level of the load", to, "");
    return new LoadHistory(t, l);
  }

  /**
   * The stress at a time, over the final stress of the law without time, with g as it is.
   *
   * @param law the relaxation
   * @param when the time since the start
   * @return s, of the size of g
   */
  public double stress(Relaxation law, Duration when) {
    double now = Times.seconds(when);
    double sum = 0.0;
    for (int i = 1; i < time.length && time[i - 1] < now; i++) {
      double change = level[i] - level[i - 1];
      double length = time[i] - time[i - 1];
      if (change == 0.0) {
        continue;
      }
      if (length == 0.0) {
        sum += change * law.at(now - time[i]);
      } else {
        double left = law.integral(Math.max(0.0, now - time[i]));
        sum += change / length * (law.integral(now - time[i - 1]) - left);
      }
    }
    return sum;
  }

  /** One readable line. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder("load history");
    for (int i = 0; i < time.length; i++) {
      line.append(i == 0 ? " " : ", ")
          .append(Text.number(level[i]))
          .append(" at ")
          .append(Text.number(time[i]))
          .append(" s");
    }
    return line.toString();
  }
}
