package org.flexwright.shells.block;

import org.flexwright.grade.Grade;

/**
 * The modulus of a grade in a strain field that is mostly shear: the secant at the working strain,
 * but never above that at rest. A neo-Hookean rubber is linear in shear and its computed curves
 * hold its own geometry; the rise of its tension secant belongs to the tension test alone.
 */
final class Softening {

  private Softening() {}

  /** The modulus in pascals at a working strain, held at the end of the law. */
  static double modulus(Grade grade, double working) {
    double end = Math.log(Math.min(1e6, grade.law().range().high()));
    double at = grade.secantModulus(Math.min(Math.max(0.0, working), end)).pa();
    return Math.min(at, grade.modulusAtRest().pa());
  }
}
