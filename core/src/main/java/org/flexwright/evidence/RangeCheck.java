package org.flexwright.evidence;

import java.util.Optional;
import org.flexwright.internal.Text;

/**
 * One validity range of a model and where a case stands in it.
 *
 * <p>JShell: {@code part.respond(grade, load).ranges().forEach(System.out::println)}
 *
 * @param range the range
 * @param value the value of the case, in the unit of the range
 */
public record RangeCheck(ValidityRange range, double value) {

  /**
   * Whether the case lies inside, ends included.
   *
   * @return true if inside
   */
  public boolean inside() {
    return range.contains(value);
  }

  /**
   * How far out of range the case is: 0 inside; outside, |ln(value/end)| of the end that was
   * passed. 0.1 is about 10 % beyond. An end of 0 or below, which has no ratio, counts as 1.
   *
   * @return the distance, not negative, finite
   */
  public double excess() {
    if (inside()) {
      return 0.0;
    }
    double end = value < range.low() ? range.low() : range.high();
    if (end <= 0.0) {
      return 1.0;
    }
    double distance = Math.abs(Math.log(value / end));
    return Double.isFinite(distance) ? distance : 1.0;
  }

  /**
   * The caveat, if the case is outside.
   *
   * @return the caveat; nothing inside
   */
  public Optional<Caveat> caveat() {
    return range.check(value);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return range + ", here " + Text.number(value) + (inside() ? "" : ", OUTSIDE");
  }
}
