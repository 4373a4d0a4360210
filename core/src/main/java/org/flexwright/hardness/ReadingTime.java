package org.flexwright.hardness;

import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;

/**
 * How long after the foot has touched the reading is taken. Elastomers creep, so a later reading is
 * lower, and two readings compare only at the same time.
 *
 * <p>Thermoplastic polyurethane falls 2 to 5 points between 1 s and 15 s; vulcanised rubber less.
 * At 95 Shore A three points are a factor of 1.5 in modulus.
 *
 * <p>Source: 15 s in ISO 7619-1 for thermoplastics, read; the other times and the fall from memory.
 *
 * <pre>{@code
 * ReadingTime.AT_ONCE.comparedWith(ReadingTime.AFTER_15_S)      // a caveat
 * }</pre>
 */
public enum ReadingTime {
  /** Within 1 s, the default of ASTM D2240. */
  AT_ONCE(1),
  /** After 3 s, vulcanised rubber by ISO 7619-1. */
  AFTER_3_S(3),
  /** After 15 s, thermoplastic rubber by ISO 7619-1. */
  AFTER_15_S(15);

  private static final Source FALL =
      Source.memory("polyurethane falls 2 to 5 points between 1 s and 15 s");

  private final int seconds;

  ReadingTime(int seconds) {
    this.seconds = seconds;
  }

  /**
   * The time.
   *
   * @return seconds after first contact
   */
  public int seconds() {
    return seconds;
  }

  /**
   * The caveat for comparing a reading of this time with one of another.
   *
   * @param other the time of the other reading
   * @return the caveat, nothing at equal times
   */
  public Optional<Caveat> comparedWith(ReadingTime other) {
    if (this == other) {
      return Optional.empty();
    }
    ReadingTime late = compareTo(other) > 0 ? this : other;
    ReadingTime early = late == this ? other : this;
    return Optional.of(
        Caveat.note(
            "time of the hardness reading",
            "after "
                + late.seconds
                + " s a reading is lower than after "
                + early.seconds
                + " s, by 2 to 5 points of polyurethane between 1 s and 15 s: compare readings of"
                + " the same time",
            FALL));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "read after " + seconds + " s";
  }
}
