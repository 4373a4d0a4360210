package org.flexwright.fit;

/** How a table of a test gives the deformation. */
public enum StrainMeasure {
  /** Deformed over reference length, l. */
  STRETCH,
  /** Change of length over reference length, e = l - 1. */
  ENGINEERING_STRAIN,
  /** Engineering strain in per cent, 100 (l - 1). */
  PER_CENT,
  /** Logarithmic strain, ln l. */
  HENCKY_STRAIN;

  /** The stretch of a value. */
  double stretch(double value) {
    return switch (this) {
      case STRETCH -> value;
      case ENGINEERING_STRAIN -> 1.0 + value;
      case PER_CENT -> 1.0 + 0.01 * value;
      case HENCKY_STRAIN -> Math.exp(value);
    };
  }
}
