package org.flexwright.fit;

/** How a table of a test gives the stress. */
public enum StressMeasure {
  /** Force per reference area, P. */
  NOMINAL,
  /** Force per deformed area of the incompressible material, s = l P. */
  TRUE;

  /** The nominal stress of a value. */
  double nominal(double value, double stretch) {
    return this == NOMINAL ? value : value / stretch;
  }
}
