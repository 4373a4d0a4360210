package org.flexwright.evidence;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects the range checks and the notes of one case of one model while its response is made.
 *
 * <p>Every range that was looked at is kept, inside or outside, so that a user can see how near the
 * border a case is; those outside become caveats. Not thread-safe: make one for each response.
 *
 * <p>JShell: {@code Checks.of("plate", source).check("wall / radius", 0, 0.1, 0.2).caveats()}
 */
public final class Checks {

  private final String model;
  private final Source source;
  private final List<RangeCheck> ranges = new ArrayList<>();
  private final List<Caveat> notes = new ArrayList<>();

  private Checks(String model, Source source) {
    this.model = model;
    this.source = source;
  }

  /**
   * Starts the checks of a case.
   *
   * @param model the model, as messages name it
   * @param source who says where it ends, unless a check names another
   * @return empty checks
   */
  public static Checks of(String model, Source source) {
    return new Checks(model, source);
  }

  /**
   * Checks one bare number of the case.
   *
   * @param input what is bounded
   * @param low the lower end, minus infinity if none
   * @param high the upper end, infinity if none
   * @param value the value of the case
   * @return these checks
   */
  public Checks check(String input, double low, double high, double value) {
    return check(new ValidityRange(model, input, low, high, "", source), value);
  }

  /**
   * Checks the case against a range of another model or with a unit.
   *
   * @param range the range
   * @param value the value, in the unit of the range
   * @return these checks
   */
  public Checks check(ValidityRange range, double value) {
    ranges.add(new RangeCheck(range, value));
    return this;
  }

  /**
   * Adds a reservation that is not about a range.
   *
   * @param message one sentence a person can act on
   * @return these checks
   */
  public Checks note(String message) {
    return note(Caveat.note(model, message, source));
  }

  /**
   * Adds a reservation.
   *
   * @param caveat the caveat
   * @return these checks
   */
  public Checks note(Caveat caveat) {
    notes.add(caveat);
    return this;
  }

  /**
   * All ranges looked at, in order.
   *
   * @return an immutable list
   */
  public List<RangeCheck> ranges() {
    return List.copyOf(ranges);
  }

  /**
   * The caveats: of ranges that were left, then the notes.
   *
   * @return an immutable list
   */
  public List<Caveat> caveats() {
    List<Caveat> all = new ArrayList<>();
    ranges.forEach(r -> r.caveat().ifPresent(all::add));
    all.addAll(notes);
    return List.copyOf(all);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return model + ", " + ranges.size() + " ranges, " + caveats().size() + " caveat(s)";
  }
}
