package org.flexwright.shells.wall;

/**
 * Bending of a circular plate of radius 1 and D = 1 under a load of 1 spread over a central patch
 * of radius c. Slope psi = -dw/dr: A r/2 - r^3/(16 pi c^2) on the patch, a r/2 - r (2 ln r - 1)/(8
 * pi) + b/r outside; A, a, b from continuity at c and the rim. Curvatures psi' and psi/r.
 */
final class PlateField {

  private static final double EIGHT_PI = 8.0 * Math.PI;
  private static final int STEPS = 400;

  private final double patch;
  private final double inside;
  private final double outside;
  private final double line;

  PlateField(double patch, CircularPlate.Rim rim, double poisson) {
    this.patch = patch;
    line = -patch * patch / (2.0 * EIGHT_PI);
    double edge = 1.0 / EIGHT_PI + line;
    outside =
        rim == CircularPlate.Rim.CLAMPED
            ? -2.0 * edge
            : 2.0 * (1.0 - poisson) / (1.0 + poisson) * edge;
    inside = outside + (2.0 - 4.0 * Math.log(patch)) / EIGHT_PI;
  }

  double slopeOverRadius(double r) {
    return r <= patch
        ? 0.5 * inside - 0.5 * r * r / (EIGHT_PI * patch * patch)
        : 0.5 * outside - (2.0 * Math.log(r) - 1.0) / EIGHT_PI + line / (r * r);
  }

  double radial(double r) {
    return r <= patch
        ? 0.5 * inside - 1.5 * r * r / (EIGHT_PI * patch * patch)
        : 0.5 * outside - (2.0 * Math.log(r) + 1.0) / EIGHT_PI - line / (r * r);
  }

  /** The largest curvature, at the centre or at the rim. */
  double peak() {
    return Math.max(0.5 * inside, Math.abs(radial(1.0)));
  }

  /** Energy-weighted equivalent curvature over the largest curvature. */
  double working() {
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < STEPS; i++) {
      double r = (i + 0.5) / STEPS;
      double a = radial(r);
      double b = slopeOverRadius(r);
      double square = 4.0 / 3.0 * (a * a + a * b + b * b);
      squares += square * r;
      cubes += square * Math.sqrt(square) * r;
    }
    return cubes / squares / peak();
  }
}
