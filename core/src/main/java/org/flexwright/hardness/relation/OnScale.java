package org.flexwright.hardness.relation;

import org.flexwright.hardness.HardnessRelation;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Pressure;

/** Checks shared by the relations that invert in closed form. */
final class OnScale {

  private OnScale() {}

  /** The modulus in MPa, above zero. */
  static double mpa(HardnessRelation relation, Pressure modulus) {
    return Require.positive("modulus for " + relation.name(), modulus.mpa(), "MPa");
  }

  /** The points that a closed inverse gave, if they are on the scale. */
  static double points(HardnessRelation relation, Pressure modulus, double points) {
    Require.that(
        points > 0.0 && points < 100.0,
        "modulus for " + relation.name(),
        modulus,
        "a modulus that has a reading strictly between 0 and 100 points",
        "use a relation on a softer or a harder scale");
    return points;
  }
}
