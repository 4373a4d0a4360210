package org.flexwright.shells.revolution;

/**
 * The notch factors of a filleted step of a wall: strain at the fillet over the nominal one at the
 * surface of the thin wall.
 *
 * <p>Formula: 1 + exp(a + n x + g x^2)/(1 + (c q^w/h)^k)^m, x = ln q. Symbols: q fillet radius over
 * the thin wall, h = (thick - thin)/thin, the others constants of the kind of load and of step. It
 * sums up plane finite elements of nine nodes at 72 shapes a kind, thin over thick 0.05 to 0.9, q
 * 0.1 to 2, converged to 0.3 % where checked, and misses them by 2 % at most. In plane bodies the
 * stress does not depend on Poisson's ratio (Michell 1899), so it holds at constant volume.
 *
 * @param a size
 * @param n slope over ln q
 * @param g curvature over ln q
 * @param c step at which the factor falls off
 * @param w how that grows with the fillet
 * @param k sharpness of the fall
 * @param m power of the fall
 */
record Fillet(double a, double n, double g, double c, double w, double k, double m) {

  static final double LEAST = 0.1; // of the thin wall
  static final double MOST = 2.0;
  static final double SHALLOW = 0.9; // thin over thick

  private static final Fillet TENSION_BOTH =
      new Fillet(-1.2714, -0.9489, -0.0599, 0.2442, -0.6675, 1.619, 0.2311);
  private static final Fillet BENDING_BOTH =
      new Fillet(-1.9179, -0.9170, -0.0446, 0.1270, -0.5379, 2.5102, 0.1134);
  private static final Fillet TENSION_ONE =
      new Fillet(-1.6363, -0.8685, -0.0675, 0.0051, -0.1919, 1.0563, 3.0);
  private static final Fillet BENDING_ONE =
      new Fillet(-1.5735, -0.9092, -0.0458, 0.1242, -0.5710, 3.5977, 0.0710);

  /**
   * The factor in tension through the middle of the thin wall.
   *
   * @param both whether both faces step, or one
   * @param radius fillet over thin wall, from {@link #LEAST}
   * @param step thick less thin wall over thin wall, infinite at a solid
   */
  static double tension(boolean both, double radius, double step) {
    return (both ? TENSION_BOTH : TENSION_ONE).at(radius, step);
  }

  /** The factor in bending of the thin wall. */
  static double bending(boolean both, double radius, double step) {
    return (both ? BENDING_BOTH : BENDING_ONE).at(radius, step);
  }

  private double at(double radius, double step) {
    double q = Math.min(radius, MOST);
    double x = Math.log(q);
    double fall = Math.pow(1.0 + Math.pow(c * Math.pow(q, w) / step, k), -m);
    return 1.0 + Math.exp(a + n * x + g * x * x) * fall;
  }
}
