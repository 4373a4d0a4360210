package org.flexwright.hardness.contact;

import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;

/**
 * A cone whose tip is rounded to a sphere that meets the flank without a kink.
 *
 * <p>d = a int_0^a f'(r) (a^2 - r^2)^(-1/2) dr, F = 2 E / (1 - nu^2) int_0^a r^2 f'(r) (a^2 -
 * r^2)^(-1/2) dr, with f' = r (R^2 - r^2)^(-1/2) up to r = R cos(alpha), where the sphere touches
 * the cone, and f' = cot(alpha) beyond. Both integrals are closed; the contact radius is found by
 * Newton steps that converge from one side, since d(a) is convex on the sphere and concave beyond.
 *
 * <p>F force; d depth; a radius of contact; f profile of the indenter; R radius of the tip; alpha
 * angle between axis and flank; E Young's modulus; nu Poisson's ratio.
 *
 * <p>Source: derived from the integrals of I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47.
 *
 * <pre>{@code
 * new RoundedCone(Length.mm(0.1), Angle.degrees(15)).contactRadius(Length.mm(1))      // 0.2208 mm
 * }</pre>
 *
 * @param tipRadius the radius of the tip, above 0 and at most 1 m
 * @param halfAngle the angle between axis and flank, 1 to 89 degrees
 */
public record RoundedCone(Length tipRadius, Angle halfAngle) implements Indenter {

  private static final int STEPS = 60;
  private static final double ROUND_OFF = 1e-15;

  /**
   * Refuses a shape that makes no sense.
   *
   * @param tipRadius the radius of the tip, above 0 and at most 1 m
   * @param halfAngle the angle between axis and flank, 1 to 89 degrees
   * @throws org.flexwright.InvalidInputException if an input is out of its bounds
   */
  public RoundedCone {
    Shape.radius("radius of the tip", tipRadius);
    Shape.halfAngle(halfAngle);
  }

  /** Lengths in m and the sine of the half angle. */
  private record Tip(double r, double sin, double edge, double cot) {

    static Tip of(RoundedCone cone) {
      double r = cone.tipRadius.m();
      double sin = Math.sin(cone.halfAngle.rad());
      double cos = Math.cos(cone.halfAngle.rad());
      return new Tip(r, sin, r * cos, cos / sin);
    }

    /**
     * The contact radius at a depth. On the sphere d(a) is convex and Newton's steps fall from
     * above; on the cone it is concave and they rise from below. They stop at the first step that
     * turns back, which is round-off.
     */
    double contact(double depth) {
      return depth <= edge * depthLog(edge) ? onSphere(depth) : onCone(depth);
    }

    private double onSphere(double depth) {
      double a = Math.min(edge, Math.sqrt(depth * r));
      for (int k = 0; k < STEPS; k++) {
        double log = depthLog(a);
        double step = (a * log - depth) / (log + a * r / ((r - a) * (r + a)));
        if (!(step > ROUND_OFF * a)) {
          break;
        }
        a -= step;
      }
      return a;
    }

    private double onCone(double depth) {
      // the asymptote: a sharp cone whose tip lies deeper by r (1 / sin - 1)
      double a = Math.max(edge, (depth + r * (1.0 / sin - 1.0)) * 2.0 / (cot * Math.PI));
      for (int k = 0; k < STEPS; k++) {
        double both = depthLog(a) + cot * Math.acos(edge / a);
        double w = Math.sqrt((a - edge) * (a + edge));
        double step = (depth - a * both) / (both + a / (r + a) + (cot * edge - w) / (r * sin + w));
        if (!(step > ROUND_OFF * a)) {
          break;
        }
        a += step;
      }
      return a;
    }

    double depth(double a) {
      double cone = a <= edge ? 0.0 : cot * Math.acos(edge / a);
      return a * (depthLog(a) + cone);
    }

    /** The integral of f' (a^2 - r^2)^(-1/2) over the spherical part. */
    private double depthLog(double a) {
      if (a <= edge) {
        return 0.5 * (Math.log1p(a / r) - Math.log1p(-a / r));
      }
      return Math.log((r + a) / (r * sin + Math.sqrt(a * a - edge * edge)));
    }

    /** The integral of r^2 f' (a^2 - r^2)^(-1/2), in m^2. */
    double forceArea(double a) {
      double x = a / r;
      if (x < 0.1 && a <= edge) {
        return 0.5 * r * r * shallow(x);
      }
      double log = depthLog(a);
      if (a <= edge) {
        return 0.5 * ((r * r + a * a) * log - r * a);
      }
      double w = Math.sqrt(a * a - edge * edge);
      double sphere = 0.5 * (r * sin * w - r * a + (r * r + a * a) * log);
      double cone = 0.5 * cot * (a * a * Math.acos(edge / a) + edge * w);
      return sphere + cone;
    }

    /** (1 + x^2) artanh(x) - x by its series, for small x, where the closed form cancels. */
    private static double shallow(double x) {
      double sum = 0.0;
      double power = x * x * x;
      for (int k = 1; k <= 9; k++) {
        sum += power * (1.0 / (2 * k - 1) + 1.0 / (2 * k + 1));
        power *= x * x;
      }
      return sum;
    }
  }

  @Override
  public Length contactRadius(Length depth) {
    return Length.m(Tip.of(this).contact(Shape.depth(depth)));
  }

  @Override
  public Length depthAt(Length contactRadius) {
    return Length.m(Tip.of(this).depth(Shape.contact(contactRadius)));
  }

  @Override
  public Area forceArea(Length depth) {
    Tip tip = Tip.of(this);
    return Area.m2(tip.forceArea(tip.contact(Shape.depth(depth))));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "cone of half angle " + halfAngle + ", tip rounded to " + tipRadius;
  }
}
