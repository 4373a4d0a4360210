package org.flexwright.shells.dome;

/**
 * Hoop strain of the section of a conical disc that turns as a whole about its neutral ring c = (a
 * - b)/ln(a/b): e = [(r - c) f (A - f/2) + z f]/r, with A the angle of the cone and f the turn.
 *
 * @param outer a in metres
 * @param inner b in metres
 * @param wall t in metres
 * @param height of the cone in metres
 */
record DiscSection(double outer, double inner, double wall, double height) {

  private static final int ACROSS = 24;
  private static final int THROUGH = 12;

  private double ring() {
    return (outer - inner) / Math.log(outer / inner);
  }

  private double cone() {
    return height / (outer - inner);
  }

  private double turn(double travel) {
    return travel / (outer - inner);
  }

  /** The largest tensile strain up to a travel, at the face of the rim or of the bore. */
  double peak(double travel) {
    double c = ring();
    double turn = turn(travel);
    double cone = cone();
    // the rim grows until the disc is flat, its face until a little later
    double most = Math.min(turn, cone + 0.5 * wall / (outer - c));
    double rim = ((outer - c) * most * (cone - 0.5 * most) + 0.5 * wall * most) / outer;
    double bore = ((c - inner) * turn * (0.5 * turn - cone) + 0.5 * wall * turn) / inner;
    return Math.max(rim, bore);
  }

  /** The energy-weighted mean of the size of the strain. */
  double working(double travel) {
    double turn = turn(travel);
    double flat = turn * (cone() - 0.5 * turn);
    double c = ring();
    double cubes = 0.0;
    double squares = 0.0;
    for (int i = 0; i < ACROSS; i++) {
      double r = inner + (outer - inner) * (i + 0.5) / ACROSS;
      for (int j = 0; j < THROUGH; j++) {
        double z = wall * ((j + 0.5) / THROUGH - 0.5);
        double e = Math.abs((r - c) * flat + z * turn) / r;
        squares += e * e * r;
        cubes += e * e * e * r;
      }
    }
    return squares > 0.0 ? cubes / squares : 0.0;
  }
}
