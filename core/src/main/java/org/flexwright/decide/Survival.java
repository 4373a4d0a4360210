package org.flexwright.decide;

import org.flexwright.durability.LifeLaw;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * How long the part must last.
 *
 * @param cycles how often the load comes, at least 1
 * @param law life against strain
 * @param safety strain at break over the largest strain that is allowed even once; 3 by default
 *     (common practice)
 */
public record Survival(double cycles, LifeLaw law, double safety) {

  /** The static safety factor used unless another is named; common practice. */
  public static final double SAFETY = 3.0;

  /**
   * Refuses figures that make no sense.
   *
   * @param cycles how often the load comes, at least 1
   * @param law life against strain
   * @param safety strain at break over the largest strain that is allowed even once; 3 by default
   *     (common practice)
   */
  public Survival {
    Require.between("cycles", cycles, 1.0, 1e12, "");
    Require.between("safety factor on the strain at break", safety, 1.0, 100.0, "");
  }

  /**
   * So many cycles by the placeholder life law.
   *
   * @param cycles the count, at least 1
   * @return the demand
   */
  public static Survival cycles(double cycles) {
    return new Survival(cycles, LifeLaw.generic(), SAFETY);
  }

  /**
   * Only the load itself, once.
   *
   * @return the demand
   */
  public static Survival once() {
    return cycles(1.0);
  }

  /**
   * This demand by another life law.
   *
   * @param of the law
   * @return the new demand
   */
  public Survival by(LifeLaw of) {
    return new Survival(cycles, of, safety);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return cycles <= 1.0 ? "the load once" : Text.number(cycles) + " cycles";
  }
}
