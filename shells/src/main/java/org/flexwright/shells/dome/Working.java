package org.flexwright.shells.dome;

import org.flexwright.grade.Grade;

/** The secant modulus where the share of working over peak strain itself follows the wall. */
final class Working {

  private Working() {}

  /** The secant modulus in pascals at a working strain, held at the end of the law. */
  static double modulus(Grade grade, double strain) {
    double end = Math.log(Math.min(1e6, grade.law().range().high()));
    return grade.secantModulus(Math.min(Math.max(0.0, strain), end)).pa();
  }
}
