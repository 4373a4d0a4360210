package org.flexwright.decide;

import java.util.OptionalDouble;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Moment;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;

/**
 * What a part shall do. Made by {@link #force()}, {@link #pressure()}, {@link #moment()} and {@link
 * #hold}.
 */
public sealed interface Target {

  /**
   * The load case that this target looks at.
   *
   * @return the load case
   */
  LoadCase load();

  /**
   * The load that it judges.
   *
   * @return force, pressure or moment
   */
  Channel channel();

  /**
   * The least load allowed.
   *
   * @return the limit in SI, if any
   */
  OptionalDouble least();

  /**
   * The greatest load allowed.
   *
   * @return the limit in SI, if any
   */
  OptionalDouble most();

  /**
   * A target on a force: {@code Target.force().between(newtons(3), newtons(8)).atTravel(mm(6))}.
   *
   * @return the start of the sentence
   */
  static Wish<Force> force() {
    return Wish.on(Channel.FORCE, Force::newtons);
  }

  /**
   * A target on a pressure: {@code Target.pressure().atMost(kpa(30)).atTravel(mm(5))}.
   *
   * @return the start of the sentence
   */
  static Wish<Pressure> pressure() {
    return Wish.on(Channel.PRESSURE, Pressure::pa);
  }

  /**
   * A target on a moment: {@code
   * Target.moment().atMost(newtonMillimetres(5)).atAngle(degrees(90))}.
   *
   * @return the start of the sentence
   */
  static Wish<Moment> moment() {
    return Wish.on(Channel.MOMENT, Moment::newtonMetres);
  }

  /**
   * A target on the axial force that an inflated part holds in its bore: {@code
   * Target.hold(newtons(5)).withSupply(kpa(200), 1.2)}.
   *
   * @param force the force to hold, above 0
   * @return the start of the sentence
   */
  static HoldWish hold(Force force) {
    return new HoldWish(force);
  }

  /**
   * A holding wish without its supply.
   *
   * @param force the force to hold
   */
  record HoldWish(Force force) {

    /**
     * The gauge pressure that the supply has, and the margin to keep; completes the target.
     *
     * @param supply the gauge pressure of the supply, above 0
     * @param margin supply over needed pressure that must remain, at least 1
     * @return the target
     */
    public Target withSupply(Pressure supply, double margin) {
      return new Hold(force, supply, margin);
    }
  }

  /**
   * A load between limits at the end of a load case.
   *
   * @param channel which load
   * @param least the least load in SI, if any
   * @param most the greatest load in SI, if any
   * @param load where it is judged
   */
  record Loaded(Channel channel, OptionalDouble least, OptionalDouble most, LoadCase load)
      implements Target {

    /**
     * Refuses a target without a limit, or with limits that contradict each other.
     *
     * @param channel which load
     * @param least the least load in SI, if any
     * @param most the greatest load in SI, if any
     * @param load where it is judged
     */
    public Loaded {
      Require.that(
          least.isPresent() || most.isPresent(),
          channel + " target",
          "without a limit",
          "a least or a greatest " + channel,
          "call atLeast, atMost or between");
      least.ifPresent(f -> Require.positive("least " + channel, f, channel.unit()));
      most.ifPresent(f -> Require.positive("greatest " + channel, f, channel.unit()));
      if (least.isPresent() && most.isPresent()) {
        Require.that(
            least.getAsDouble() < most.getAsDouble(),
            "least " + channel,
            channel.show(least.getAsDouble()),
            "below the greatest " + channel + " " + channel.show(most.getAsDouble()),
            "swap the limits");
      }
    }

    /** One readable line. */
    @Override
    public String toString() {
      String words = channel.toString();
      if (least.isPresent() && most.isPresent()) {
        words +=
            " " + channel.show(least.getAsDouble()) + " to " + channel.show(most.getAsDouble());
      } else if (least.isPresent()) {
        words += " at least " + channel.show(least.getAsDouble());
      } else {
        words += " at most " + channel.show(most.orElseThrow());
      }
      return words + where();
    }

    private String where() {
      if (load instanceof LoadCase.ToTravel to) {
        return " at " + to.travel();
      }
      return load instanceof LoadCase.ToAngle to ? " at " + to.angle() : " at the limit";
    }
  }

  /**
   * An axial force held in a bore at a pressure that the supply has.
   *
   * @param force the force to hold
   * @param supply the gauge pressure of the supply
   * @param margin supply over needed pressure that must remain
   */
  record Hold(Force force, Pressure supply, double margin) implements Target {

    /**
     * Refuses figures that make no sense.
     *
     * @param force the force to hold
     * @param supply the gauge pressure of the supply
     * @param margin supply over needed pressure that must remain
     */
    public Hold {
      Require.positive("holding force", force.newtons(), "N");
      Require.positive("supply pressure", supply.pa(), "Pa");
      Require.between("margin of the supply", margin, 1.0, 100.0, "");
    }

    @Override
    public LoadCase load() {
      return LoadCase.toHold(force);
    }

    @Override
    public Channel channel() {
      return Channel.PRESSURE;
    }

    @Override
    public OptionalDouble least() {
      return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble most() {
      return OptionalDouble.of(supply.pa() / margin);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "hold " + force + " at a supply of " + supply + ", margin " + Text.number(margin);
    }
  }
}
