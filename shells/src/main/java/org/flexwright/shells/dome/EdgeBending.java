package org.flexwright.shells.dome;

/**
 * Edge bending of a long cylinder or of a sphere near the edge of its hemisphere, with E = 1 and p
 * = 1; per length of edge. Outward force H and moment M that opens the edge: travel a H + b M, turn
 * b H + c M, with a = 2 R L/t, b = 2 L^2/t, c = 4 L^3/(R t), L = [3 (1 - nu^2)]^(1/4) sqrt(R/t)
 * (Geckeler 1926; a cylinder has the same three). For a dome whose edge lies at an angle A from its
 * axis a has sin^2 A and b sin A.
 *
 * @param radius R in metres
 * @param wall t in metres
 * @param poisson nu
 * @param steep L
 * @param free travel of the edge left free, over R^2/t
 */
record EdgeBending(double radius, double wall, double poisson, double steep, double free) {

  static EdgeBending of(double radius, double wall, double poisson, double free) {
    double steep = Math.sqrt(Math.sqrt(3.0 * (1.0 - poisson * poisson)) * radius / wall);
    return new EdgeBending(radius, wall, poisson, steep, free);
  }

  /** Travel by force. */
  double byForce(double angle) {
    double sine = Math.sin(angle);
    return 2.0 * radius * steep * sine * sine / wall;
  }

  /** Turn by force, and travel by moment. */
  double cross(double angle) {
    return 2.0 * steep * steep * Math.sin(angle) / wall;
  }

  /** Turn by moment. */
  double byMoment() {
    return 4.0 * Math.pow(steep, 3) / (radius * wall);
  }

  /** Force on the first and moment at the joint of two walls that meet with one tangent. */
  static double[] join(EdgeBending one, EdgeBending other) {
    double right = 0.5 * Math.PI;
    double a = one.byForce(right) + other.byForce(right);
    double b = one.cross(right) - other.cross(right);
    double c = one.byMoment() + other.byMoment();
    double gap = other.membrane() - one.membrane();
    double force = gap / (a - b * b / c);
    return new double[] {force, -b / c * force};
  }

  private double membrane() {
    return free * radius * radius / wall;
  }

  /** Outward travel at s = L x/R. */
  double travel(double s, double force, double moment) {
    double e = Math.exp(-s);
    double beta = steep / radius;
    double shape = force * Math.cos(s) + beta * moment * (Math.cos(s) - Math.sin(s));
    return membrane() + 2.0 * radius * steep / wall * e * shape;
  }

  /** Bending strain of the surface at s, without sign. */
  double bending(double s, double force, double moment) {
    double beta = steep / radius;
    double plate = wall * wall * wall / (12.0 * (1.0 - poisson * poisson));
    double shape = force * Math.sin(s) + beta * moment * (Math.cos(s) + Math.sin(s));
    return 0.5 * wall * Math.abs(Math.exp(-s) * shape) / (beta * plate);
  }

  /** The larger of the hoop and the axial surface strain at s. */
  double strain(double s, double force, double moment) {
    double hoop = travel(s, force, moment) / radius;
    double axial = 0.5 * radius / wall * (1.0 - poisson * poisson) - poisson * hoop;
    return Math.max(hoop, axial + bending(s, force, moment));
  }
}
