package org.flexwright.hardness.relation;

import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * Young's modulus from Shore D by linear contact of a cone whose tip is rounded.
 *
 * <p>d = a int_0^a f'(r) (a^2 - r^2)^(-1/2) dr, F = 2 E / (1 - nu^2) int_0^a r^2 f'(r) (a^2 -
 * r^2)^(-1/2) dr, with f' = r (R^2 - r^2)^(-1/2) up to r = R cos(alpha), where the sphere touches
 * the cone, and f' = cot(alpha) beyond. Both integrals are closed; the contact radius is found by
 * Newton steps that converge from one side, since d(a) is convex on the sphere and concave beyond.
 *
 * <p>F spring force 44.45 N s; d depth 2.5 mm (1 - s); s = reading / 100; a radius of contact; f
 * profile of the indenter; R radius of the tip, 0.1 mm when new; alpha = 15 degrees; nu = 0.5.
 *
 * <p>Range 20 to 90 Shore D, where the scale is read. The modulus is 0.69 of the sharp cone at 45,
 * 0.49 at 75 Shore D. Between 60 and 90 Shore A it closes the chart between A and D within 20 per
 * cent of modulus, which the sharp cone does not. A worn tip: give its radius.
 *
 * <p>Source: derived from the integrals of I. N. Sneddon, Int. J. Eng. Sci. 3 (1965) 47.
 *
 * <pre>{@code
 * new RadiusedCone().modulus(46)                    // 33.76 MPa
 * new RadiusedCone(Length.mm(0.13)).modulus(46)     // read with a worn tip
 * }</pre>
 *
 * @param tipRadius the radius of the tip, above 0 and at most 1 mm
 */
public record RadiusedCone(Length tipRadius) implements HardnessRelation {

  private static final String NAME = "Radiused cone";
  private static final Source SOURCE =
      Source.derived(
          "linear contact of a cone with a rounded tip, integrals of I. N. Sneddon, Int. J. Eng."
              + " Sci. 3 (1965) 47, with the spring, angle and tip of type D");
  private static final ValidityRange RANGE =
      new ValidityRange(
          NAME,
          "Shore D",
          SneddonCone.RANGE_LOW,
          SneddonCone.RANGE_HIGH,
          "points",
          SneddonCone.RANGE_SOURCE);

  private static final double ALPHA = Durometer.SHORE_D.halfAngle().rad();
  private static final double SIN = Math.sin(ALPHA);
  private static final double COS = Math.cos(ALPHA);
  private static final double COT = COS / SIN;
  private static final double SPRING = Durometer.SHORE_D.springForce(100.0).newtons();
  private static final int STEPS = 60;
  private static final double ROUND_OFF = 1e-15;
  private static final double TRAVEL = Durometer.SHORE_D.extension().m();

  /** The indenter of a new instrument, tip radius 0.1 mm. */
  public RadiusedCone() {
    this(Durometer.SHORE_D.tipRadius());
  }

  /**
   * An indenter with a tip of known radius.
   *
   * @param tipRadius the radius of the tip, above 0 and at most 1 mm
   * @throws org.flexwright.InvalidInputException unless the radius is above 0 and at most 1 mm
   */
  public RadiusedCone {
    Require.positive("tip radius of the type D indenter", tipRadius.mm(), "mm");
    Require.between("tip radius of the type D indenter", tipRadius.mm(), 0.0, 1.0, "mm");
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return ShoreD.class;
  }

  @Override
  public ValidityRange range() {
    return RANGE;
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  @Override
  public Pressure modulus(double points) {
    double s = HardnessRelation.requireOnScale("Shore D", points);
    double depth = TRAVEL * ((100.0 - s) / 100.0);
    double force = SPRING * (s / 100.0);
    return Pressure.pa(0.75 * force / (2.0 * forceIntegral(contactRadius(depth))));
  }

  /**
   * The contact radius in m at a depth in m. On the sphere d(a) is convex and Newton's steps fall
   * from above; on the cone it is concave and they rise from below. They stop at the first step
   * that turns back, which is round-off.
   */
  private double contactRadius(double depth) {
    double r = tipRadius.m();
    double edge = r * COS;
    if (depth <= edge * depthLog(edge)) {
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
    // the asymptote: a sharp cone whose tip lies deeper by r (1 / sin - 1)
    double a = Math.max(edge, (depth + r * (1.0 / SIN - 1.0)) * 2.0 / (COT * Math.PI));
    for (int k = 0; k < STEPS; k++) {
      double both = depthLog(a) + COT * Math.acos(edge / a);
      double w = Math.sqrt((a - edge) * (a + edge));
      double step = (depth - a * both) / (both + a / (r + a) + (COT * edge - w) / (r * SIN + w));
      if (!(step > ROUND_OFF * a)) {
        break;
      }
      a += step;
    }
    return a;
  }

  /** The integral of f' (a^2 - r^2)^(-1/2) over the spherical part. */
  private double depthLog(double a) {
    double r = tipRadius.m();
    double edge = r * COS;
    if (a <= edge) {
      return 0.5 * (Math.log1p(a / r) - Math.log1p(-a / r));
    }
    return Math.log((r + a) / (r * SIN + Math.sqrt(a * a - edge * edge)));
  }

  /** The integral of r^2 f' (a^2 - r^2)^(-1/2), in m^2. */
  private double forceIntegral(double a) {
    double r = tipRadius.m();
    double edge = r * COS;
    double x = a / r;
    if (x < 0.1) {
      return 0.5 * r * r * shallow(x);
    }
    double log = depthLog(a);
    if (a <= edge) {
      return 0.5 * ((r * r + a * a) * log - r * a);
    }
    double w = Math.sqrt(a * a - edge * edge);
    double sphere = 0.5 * (r * SIN * w - r * a + (r * r + a * a) * log);
    double cone = 0.5 * COT * (a * a * Math.acos(edge / a) + edge * w);
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

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this) + ", tip radius " + tipRadius;
  }
}
