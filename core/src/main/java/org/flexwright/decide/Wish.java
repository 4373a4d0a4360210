package org.flexwright.decide;

import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;

/**
 * A wish on a load that does not say yet where it is judged; see {@link Target}.
 *
 * <p>Immutable and thread-safe.
 *
 * @param <Q> force, pressure or moment
 */
public final class Wish<Q> {

  private final Channel channel;
  private final ToDoubleFunction<Q> si;
  private final OptionalDouble least;
  private final OptionalDouble most;

  private Wish(Channel channel, ToDoubleFunction<Q> si, OptionalDouble least, OptionalDouble most) {
    this.channel = channel;
    this.si = si;
    this.least = least;
    this.most = most;
  }

  static <Q> Wish<Q> on(Channel channel, ToDoubleFunction<Q> si) {
    return new Wish<>(channel, si, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * At least this load.
   *
   * @param load the limit
   * @return the wish
   */
  public Wish<Q> atLeast(Q load) {
    return new Wish<>(channel, si, OptionalDouble.of(si.applyAsDouble(load)), most);
  }

  /**
   * At most this load.
   *
   * @param load the limit
   * @return the wish
   */
  public Wish<Q> atMost(Q load) {
    return new Wish<>(channel, si, least, OptionalDouble.of(si.applyAsDouble(load)));
  }

  /**
   * Between two loads.
   *
   * @param low the least load
   * @param high the greatest load
   * @return the wish
   */
  public Wish<Q> between(Q low, Q high) {
    return atLeast(low).atMost(high);
  }

  /**
   * Near a load.
   *
   * @param load the wanted load
   * @param tolerance share either way: 0.3 is 30 %, above 0, below 1
   * @return the wish
   */
  public Wish<Q> about(Q load, double tolerance) {
    Require.that(
        tolerance > 0.0 && tolerance < 1.0,
        "tolerance of the " + channel,
        Text.number(tolerance),
        "above 0 and below 1",
        "0.3 means 30 % either way");
    double wanted = si.applyAsDouble(load);
    return new Wish<>(
        channel,
        si,
        OptionalDouble.of(wanted * (1.0 - tolerance)),
        OptionalDouble.of(wanted * (1.0 + tolerance)));
  }

  /**
   * The travel at which the load is wanted; completes the target.
   *
   * @param travel the travel, above 0
   * @return the target
   * @throws org.flexwright.InvalidInputException if no limit was named or the limits contradict
   *     each other
   */
  public Target atTravel(Length travel) {
    return at(LoadCase.toTravel(travel));
  }

  /**
   * The angle at which the load is wanted; completes the target.
   *
   * @param angle the angle, above 0
   * @return the target
   * @throws org.flexwright.InvalidInputException if no limit was named or the limits contradict
   *     each other
   */
  public Target atAngle(Angle angle) {
    return at(LoadCase.toAngle(angle));
  }

  /**
   * Wanted of the load at which the part gives way; completes the target.
   *
   * @return the target
   * @throws org.flexwright.InvalidInputException if no limit was named or the limits contradict
   *     each other
   */
  public Target atLimit() {
    return at(LoadCase.toLimit());
  }

  private Target at(LoadCase load) {
    return new Target.Loaded(channel, least, most, load);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "wish on the " + channel;
  }
}
