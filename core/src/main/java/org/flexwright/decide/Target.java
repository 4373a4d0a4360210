package org.flexwright.decide;

import java.util.Optional;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;

/** What a part shall do. Made by {@link #force()} and {@link #hold}. */
public sealed interface Target {

  /**
   * The load case that this target looks at.
   *
   * @return the load case
   */
  LoadCase load();

  /**
   * A target on the force at a travel: {@code Target.force().between(newtons(3),
   * newtons(8)).atTravel(mm(6))}.
   *
   * @return the start of the sentence
   */
  static ForceWish force() {
    return new ForceWish(Optional.empty(), Optional.empty());
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
   * A force wish without its travel.
   *
   * @param least the least force, if any
   * @param most the greatest force, if any
   */
  record ForceWish(Optional<Force> least, Optional<Force> most) {

    /**
     * At least this force.
     *
     * @param force the limit
     * @return the wish
     */
    public ForceWish atLeast(Force force) {
      return new ForceWish(Optional.of(force), most);
    }

    /**
     * At most this force.
     *
     * @param force the limit
     * @return the wish
     */
    public ForceWish atMost(Force force) {
      return new ForceWish(least, Optional.of(force));
    }

    /**
     * Between two forces.
     *
     * @param low the least force
     * @param high the greatest force
     * @return the wish
     */
    public ForceWish between(Force low, Force high) {
      return atLeast(low).atMost(high);
    }

    /**
     * Near a force.
     *
     * @param force the wanted force
     * @param tolerance share either way: 0.3 is 30 %, above 0, below 1
     * @return the wish
     */
    public ForceWish about(Force force, double tolerance) {
      Require.that(
          tolerance > 0.0 && tolerance < 1.0,
          "tolerance of the force",
          Text.number(tolerance),
          "above 0 and below 1",
          "0.3 means 30 % either way");
      return between(force.times(1.0 - tolerance), force.times(1.0 + tolerance));
    }

    /**
     * The travel at which the force is wanted; completes the target.
     *
     * @param travel the travel, above 0
     * @return the target
     * @throws org.flexwright.InvalidInputException if no limit was named or the limits contradict
     *     each other
     */
    public Target atTravel(Length travel) {
      return new AtTravel(least, most, travel);
    }
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
   * A force between limits at a travel.
   *
   * @param least the least force, if any
   * @param most the greatest force, if any
   * @param travel the travel
   */
  record AtTravel(Optional<Force> least, Optional<Force> most, Length travel) implements Target {

    /**
     * Refuses a target without a limit, or with limits that contradict each other.
     *
     * @param least the least force, if any
     * @param most the greatest force, if any
     * @param travel the travel
     */
    public AtTravel {
      Require.that(
          least.isPresent() || most.isPresent(),
          "force target",
          "without a limit",
          "a least or a greatest force",
          "call atLeast, atMost or between");
      least.ifPresent(f -> Require.positive("least force", f.newtons(), "N"));
      most.ifPresent(f -> Require.positive("greatest force", f.newtons(), "N"));
      Require.positive("travel", travel.m(), "m");
      if (least.isPresent() && most.isPresent()) {
        Require.that(
            least.get().compareTo(most.get()) < 0,
            "least force",
            least.get(),
            "below the greatest force " + most.get(),
            "swap the limits");
      }
    }

    @Override
    public LoadCase load() {
      return LoadCase.toTravel(travel);
    }

    /** One readable line. */
    @Override
    public String toString() {
      String words;
      if (least.isPresent() && most.isPresent()) {
        words = "force " + least.get() + " to " + most.get();
      } else {
        words =
            least
                .map(f -> "force at least " + f)
                .orElseGet(() -> "force at most " + most.map(Force::toString).orElse(""));
      }
      return words + " at " + travel;
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

    /** One readable line. */
    @Override
    public String toString() {
      return "hold " + force + " at a supply of " + supply + ", margin " + Text.number(margin);
    }
  }
}
