package org.flexwright.shells.revolution;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;

/**
 * Something rigid and frictionless that a shell of revolution may press against, itself a body of
 * revolution about the same axis.
 *
 * <p>The gap is the distance of a point from the obstacle, negative inside it. JShell: {@code
 * Obstacle.bore(mm(11))}
 */
public sealed interface Obstacle {

  /**
   * Gap, its slopes by radius and height, and its curvatures rr, rz, zz.
   *
   * @param r distance from the axis, metres
   * @param z height, metres
   * @param out six places
   */
  void gap(double r, double z, double[] out);

  /**
   * The wall of a bore around the shell, a cylinder or a cone.
   *
   * @param radius at height 0
   * @param widening half the cone's angle, positive if the bore widens upwards
   */
  record Bore(Length radius, Angle widening) implements Obstacle {

    /**
     * Refuses a bore without opening.
     *
     * @param radius at height 0, above 0
     * @param widening half the cone's angle, less than a quarter turn either way
     */
    public Bore {
      Require.positive("radius of the bore", radius.m(), "m");
      Require.between("widening of the bore", widening.degrees(), -80.0, 80.0, "deg");
    }

    @Override
    public void gap(double r, double z, double[] out) {
      double c = Math.cos(widening.rad());
      double s = Math.sin(widening.rad());
      out[0] = (radius.m() - r) * c + z * s;
      out[1] = -c;
      out[2] = s;
      out[3] = 0.0;
      out[4] = 0.0;
      out[5] = 0.0;
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "bore of radius " + radius + ", widening " + widening;
    }
  }

  /**
   * A flat plate across the axis.
   *
   * @param height of its face
   * @param above whether the plate is above the shell
   */
  record Plate(Length height, boolean above) implements Obstacle {

    @Override
    public void gap(double r, double z, double[] out) {
      double sign = above ? 1.0 : -1.0;
      out[0] = sign * (height.m() - z);
      out[1] = 0.0;
      out[2] = -sign;
      out[3] = 0.0;
      out[4] = 0.0;
      out[5] = 0.0;
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "plate " + (above ? "above" : "below") + " at " + height;
    }
  }

  /**
   * A ball on the axis, for instance a fingertip.
   *
   * @param radius of the ball
   * @param height of its centre
   */
  record Ball(Length radius, Length height) implements Obstacle {

    /**
     * Refuses a ball that is none.
     *
     * @param radius of the ball, above 0
     * @param height of its centre
     */
    public Ball {
      Require.positive("radius of the ball", radius.m(), "m");
    }

    @Override
    public void gap(double r, double z, double[] out) {
      double dz = z - height.m();
      double d = Math.max(Math.hypot(r, dz), 1e-9 * radius.m());
      out[0] = d - radius.m();
      out[1] = r / d;
      out[2] = dz / d;
      out[3] = dz * dz / (d * d * d);
      out[4] = -r * dz / (d * d * d);
      out[5] = r * r / (d * d * d);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "ball of radius " + radius + " at " + height;
    }
  }

  /**
   * A cylindrical bore.
   *
   * @param radius its radius
   * @return the obstacle
   */
  static Obstacle bore(Length radius) {
    return new Bore(radius, Angle.rad(0.0));
  }

  /**
   * A plate above the shell.
   *
   * @param height of its lower face
   * @return the obstacle
   */
  static Obstacle plateAbove(Length height) {
    return new Plate(height, true);
  }

  /**
   * A plate below the shell.
   *
   * @param height of its upper face
   * @return the obstacle
   */
  static Obstacle plateBelow(Length height) {
    return new Plate(height, false);
  }

  /**
   * A ball on the axis.
   *
   * @param radius of the ball
   * @param height of its centre
   * @return the obstacle
   */
  static Obstacle ball(Length radius, Length height) {
    return new Ball(radius, height);
  }
}
