package org.flexwright.decide;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;

/**
 * A closed interval of sizes.
 *
 * @param from the lower end
 * @param to the upper end, not below the lower
 */
public record Interval(Length from, Length to) {

  /**
   * Refuses ends out of order.
   *
   * @param from the lower end
   * @param to the upper end, not below the lower
   */
  public Interval {
    Require.that(from.compareTo(to) <= 0, "interval", from + " to " + to, "ends in order", "");
  }

  /**
   * Whether a size lies inside, ends included.
   *
   * @param size the size
   * @return true if inside
   */
  public boolean contains(Length size) {
    return size.compareTo(from) >= 0 && size.compareTo(to) <= 0;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return from + " to " + to;
  }
}
