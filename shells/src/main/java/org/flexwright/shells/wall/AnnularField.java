package org.flexwright.shells.wall;

/**
 * Bending of a ring-shaped plate, outer radius 1, inner radius b, D = 1, under a load of 1: along
 * the inner edge in all, or per area. Slope s = -dw/dr = A r + B/r + particular: the line load
 * gives -r (2 ln r - 1)/(8 pi), the pressure -r^3/16 + b^2 r (2 ln r - 1)/8 (no shear at the inner
 * edge). A and B from the edges.
 */
final class AnnularField {

  private static final int STEPS = 400;

  private final double inner;
  private final double poisson;
  private final double cubic;
  private final double log;
  private final double line;
  private final double pole;

  AnnularField(double inner, boolean clamped, boolean guided, boolean pressed, double poisson) {
    this.inner = inner;
    this.poisson = poisson;
    cubic = pressed ? -1.0 / 16.0 : 0.0;
    log = pressed ? inner * inner / 8.0 : -1.0 / (8.0 * Math.PI);
    double b2 = inner * inner;
    double l1 = row(clamped, 1.0);
    double p1 = row(clamped, -1.0);
    double r1 = -right(clamped, 1.0);
    double l2 = row(guided, 1.0);
    double p2 = row(guided, -1.0) / b2;
    double r2 = -right(guided, inner);
    double determinant = l1 * p2 - p1 * l2;
    line = (r1 * p2 - p1 * r2) / determinant;
    pole = (l1 * r2 - l2 * r1) / determinant;
  }

  /** What A r or B/r brings to slope over r, or to the moment: 1 or 1 + nu, 1 or -(1 - nu). */
  private double row(boolean fixed, double sign) {
    return fixed ? 1.0 : sign + poisson;
  }

  private double right(boolean fixed, double r) {
    return fixed ? particular(r) : particularRadial(r) + poisson * particular(r);
  }

  private double particular(double r) {
    return cubic * r * r + log * (2.0 * Math.log(r) - 1.0);
  }

  private double particularRadial(double r) {
    return 3.0 * cubic * r * r + log * (2.0 * Math.log(r) + 1.0);
  }

  double slopeOverRadius(double r) {
    return line + pole / (r * r) + particular(r);
  }

  double radial(double r) {
    return line - pole / (r * r) + particularRadial(r);
  }

  /** Deflection of the inner edge over the outer: the slope integrated. */
  double travel() {
    double b2 = inner * inner;
    double ln = Math.log(inner);
    // int r (2 ln r - 1) dr = r^2 ln r - r^2
    return 0.5 * line * (1.0 - b2)
        - pole * ln
        + 0.25 * cubic * (1.0 - b2 * b2)
        + log * (-1.0 - b2 * ln + b2);
  }

  /** The shear force integrated over the radius. */
  double shear() {
    return -2.0 * cubic * (2.0 - 2.0 * inner * inner) + 4.0 * log * Math.log(inner);
  }

  /** The largest curvature. */
  double peak() {
    double most = 0.0;
    for (int i = 0; i <= STEPS; i++) {
      double r = inner + (1.0 - inner) * i / STEPS;
      most = Math.max(most, Math.max(Math.abs(radial(r)), Math.abs(slopeOverRadius(r))));
    }
    return most;
  }

  /** Energy-weighted equivalent curvature over the largest curvature. */
  double working() {
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < STEPS; i++) {
      double r = inner + (1.0 - inner) * (i + 0.5) / STEPS;
      double a = radial(r);
      double b = slopeOverRadius(r);
      double square = 4.0 / 3.0 * (a * a + a * b + b * b);
      squares += square * r;
      cubes += square * Math.sqrt(square) * r;
    }
    return cubes / squares / peak();
  }
}
