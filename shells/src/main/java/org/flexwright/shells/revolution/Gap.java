package org.flexwright.shells.revolution;

/** How far a point is from an obstacle, negative inside it, with first and second slopes. */
final class Gap {

  private Gap() {}

  /** Gap, its slopes by radius and height, and its curvatures rr, rz, zz. */
  static void of(Obstacle obstacle, double r, double z, double[] out) {
    if (obstacle instanceof Obstacle.Bore bore) {
      bore(bore, r, z, out);
    } else if (obstacle instanceof Obstacle.Plate plate) {
      plate(plate, z, out);
    } else if (obstacle instanceof Obstacle.Ball ball) {
      ball(ball, r, z, out);
    }
  }

  private static void bore(Obstacle.Bore bore, double r, double z, double[] out) {
    double c = Math.cos(bore.widening().rad());
    double s = Math.sin(bore.widening().rad());
    out[0] = (bore.radius().m() - r) * c + z * s;
    out[1] = -c;
    out[2] = s;
    out[3] = 0.0;
    out[4] = 0.0;
    out[5] = 0.0;
  }

  private static void plate(Obstacle.Plate plate, double z, double[] out) {
    double sign = plate.above() ? 1.0 : -1.0;
    out[0] = sign * (plate.height().m() - z);
    out[1] = 0.0;
    out[2] = -sign;
    out[3] = 0.0;
    out[4] = 0.0;
    out[5] = 0.0;
  }

  private static void ball(Obstacle.Ball ball, double r, double z, double[] out) {
    double dz = z - ball.height().m();
    double d = Math.max(Math.hypot(r, dz), 1e-9 * ball.radius().m());
    out[0] = d - ball.radius().m();
    out[1] = r / d;
    out[2] = dz / d;
    out[3] = dz * dz / (d * d * d);
    out[4] = -r * dz / (d * d * d);
    out[5] = r * r / (d * d * d);
  }
}
