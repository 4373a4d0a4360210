package org.flexwright.shells.block;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A rubber bush: a tube of rubber bonded to a rigid pin inside and a rigid ring outside, the pin
 * pushed sideways, pushed along or turned.
 *
 * <p>Formula, per length: sideways Ks + (Kl - Ks) (1 - tanh(x)/x), x = L/(A + B), between a short
 * bush Ks = 80 pi G S/[25 S ln(B/A) - 9 (B^2 - A^2)] (plane stress) and a long one Kl = 4 pi G S/[S
 * ln(B/A) - (B^2 - A^2)] (plane strain); the step between them is the pressure of a thin layer that
 * is pressed round and out of the ends. Along 2 pi G/ln(B/A); turning 4 pi G/(1/A^2 - 1/B^2). Peak
 * tensile strain at the pin: sideways the largest principal strain around it in the middle of the
 * length, otherwise half the shear u/(A ln(B/A)) or 2 phi/(1 - A^2/B^2), at finite size. Symbols: A
 * inner, B outer radius, L length (m), S = A^2 + B^2, G = E/3 (Pa).
 *
 * <p>Range: B/A 1.25 to 3; sideways to L = 4 (A + B), where rubber that gives in volume makes it
 * softer, and travel to a fifth of the gap; along and turning from L = B - A; peak shear to 0.5.
 * Caveats outside. Band: sideways a finite-element computation with the first harmonic gives 0.93
 * to 1.05 of the load for B/A 1.25 to 3 and L/(B - A) 0.1 to 16; the band is 0.92 to 1.06. Along
 * and turning 0.95 to 1.03 (free ends). Strain 0.8 to 1.6, a judgement: ends and edges are sharp.
 *
 * <p>Source: Adkins and Gent 1954; Horton, Gover and Tupholme 2000 (from memory), derived anew.
 * Built axis up, sideways and turning strains lie in the layers, those along cross them.
 *
 * <p>JShell: {@code RubberBush.of(RubberBush.Motion.TORSION, mm(4), mm(8), mm(10))}
 *
 * @param motion how the pin moves
 * @param inner radius of the pin
 * @param outer radius of the ring
 * @param length of the rubber along the axis
 * @param build how it stands in the printer
 */
public record RubberBush(
    Motion motion, Length inner, Length outer, Length length, BuildDirection build)
    implements Part<RubberBush> {

  /** How the pin of a bush moves. */
  public enum Motion {
    /** Across the axis. */
    SIDEWAYS,
    /** Along the axis. */
    AXIAL,
    /** About the axis; asked for an angle, answered with a moment. */
    TORSION
  }

  /** The outer radius, on the same pin. */
  public static final Lever<RubberBush> OUTER =
      Lever.of("outer radius", RubberBush::outer, RubberBush::outer);

  /** The gap between pin and ring, on the same pin. */
  public static final Lever<RubberBush> GAP = Lever.of("gap", RubberBush::gap, RubberBush::gap);

  /** The length. */
  public static final Lever<RubberBush> LENGTH =
      Lever.of("length", RubberBush::length, RubberBush::length);

  private static final String NAME = "rubber bush";
  private static final double LONG = 1.0; // 3 - 4 nu
  private static final double SHORT = 5.0 / 3.0; // (3 - nu)/(1 + nu)
  private static final Source FORM =
      Source.memory("Adkins and Gent 1954; Horton, Gover and Tupholme 2000");
  private static final Source DERIVED =
      Source.derived("plane elasticity of a bonded annulus; shear of coaxial cylinders");

  /**
   * Refuses a bush that makes no sense.
   *
   * @param motion how the pin moves
   * @param inner radius of the pin
   * @param outer radius of the ring
   * @param length of the rubber along the axis
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the pin fills the
   *     ring
   */
  public RubberBush {
    Require.positive("inner radius", inner.m(), "m");
    Require.positive("outer radius", outer.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.that(
        outer.m() > inner.m(),
        "outer radius",
        outer,
        () -> "above the inner, " + inner,
        "leave room for rubber");
  }

  /**
   * A bush, its axis up in the printer.
   *
   * @param motion how the pin moves
   * @param inner radius of the pin
   * @param outer radius of the ring
   * @param length of the rubber along the axis
   * @return the bush
   */
  public static RubberBush of(Motion motion, Length inner, Length outer, Length length) {
    return new RubberBush(motion, inner, outer, length, BuildDirection.AXIS_UP);
  }

  /**
   * This bush moved another way.
   *
   * @param of how the pin moves
   * @return the new bush
   */
  public RubberBush motion(Motion of) {
    return new RubberBush(of, inner, outer, length, build);
  }

  /**
   * This bush on another pin.
   *
   * @param of the radius
   * @return the new bush
   */
  public RubberBush inner(Length of) {
    return new RubberBush(motion, of, outer, length, build);
  }

  /**
   * This bush in another ring.
   *
   * @param of the radius
   * @return the new bush
   */
  public RubberBush outer(Length of) {
    return new RubberBush(motion, inner, of, length, build);
  }

  /**
   * The gap that the rubber fills.
   *
   * @return outer less inner radius
   */
  public Length gap() {
    return outer.minus(inner);
  }

  /**
   * This bush with another gap, on the same pin.
   *
   * @param of outer less inner radius, above 0
   * @return the new bush
   */
  public RubberBush gap(Length of) {
    return outer(inner.plus(of));
  }

  /**
   * This bush with another length.
   *
   * @param of the length
   * @return the new bush
   */
  public RubberBush length(Length of) {
    return new RubberBush(motion, inner, outer, of, build);
  }

  /**
   * This bush built another way.
   *
   * @param of how it stands in the printer
   * @return the new bush
   */
  public RubberBush build(BuildDirection of) {
    return new RubberBush(motion, inner, outer, length, of);
  }

  /** Stiffness per length over E: force over travel, or moment over angle. */
  private double stiffness(double b) {
    double a = inner.m();
    double log = Math.log(b / a);
    return switch (motion) {
          case SIDEWAYS -> sideways(length.m() / (a + b), a, b);
          case AXIAL -> 2.0 * Math.PI / log;
          case TORSION -> 4.0 * Math.PI * a * a * b * b / ((b - a) * (b + a));
        }
        / 3.0;
  }

  /** Sideways stiffness per length over G; x = 0 is a short bush, infinity a long one. */
  static double sideways(double x, double a, double b) {
    double low = plane(SHORT, a, b);
    double share = x < 1e-4 ? 0.0 : 1.0 - Math.tanh(x) / x;
    return low + (plane(LONG, a, b) - low) * share;
  }

  private static double plane(double c, double a, double b) {
    double s = a * a + b * b;
    double rest = c * c * s * Math.log(b / a) - (b - a) * (b + a);
    return 2.0 * Math.PI * c * (1.0 + c) * s / rest;
  }

  /** Peak tensile strain at the pin. */
  private double strain(double b, double u) {
    double a = inner.m();
    return switch (motion) {
      case SIDEWAYS -> {
        double free = 1.0 / Math.cosh(Math.min(50.0, length.m() / (a + b)));
        yield finite(u * (free * peak(SHORT, a, b) + (1.0 - free) * peak(LONG, a, b)));
      }
      case AXIAL -> finite(0.5 * u / (a * Math.log(b / a)));
      case TORSION -> finite(u * b * b / ((b - a) * (b + a)));
    };
  }

  /** Nominal strain of a simple shear whose half is given. */
  private static double finite(double half) {
    return Math.sqrt(1.0 + half * half) + half - 1.0;
  }

  /**
   * The largest principal strain at the pin per travel. The displacement is u_r = (M + N) cos, u_t
   * = (M - N) sin with M = c p r^2 - q - s/r^2, N = 2 c q ln r - 2 p r^2 + n, M = 0 on both rigid
   * faces, p = q/(c S), s = -c p A^2 B^2. At the pin only the radial strain (M' + N') cos and the
   * shear (M' - N') sin are left.
   */
  static double peak(double c, double a, double b) {
    double p = 1.0 / (c * (a * a + b * b));
    double dm = 2.0 * c * p * (a * a - b * b) / a;
    double dn = 2.0 * c / a - 4.0 * p * a;
    double travel = 2.0 * c * Math.log(b / a) - 2.0 * p * (b * b - a * a);
    double radial = Math.abs(dm + dn) / travel;
    double shear = Math.abs(dm - dn) / travel;
    double rest = shear * shear - radial * radial;
    return rest <= radial * radial ? radial : 0.5 * shear * shear / Math.sqrt(rest);
  }

  /** Working strain over peak strain: 2/sqrt(3) of half a shear, less what falls off outward. */
  private double working(double b) {
    double x = inner.m() / b;
    return 2.0
        / Math.sqrt(3.0)
        * switch (motion) {
          case TORSION -> 0.5 * (1.0 + x * x);
          default -> (1.0 - x) / -Math.log(x);
        };
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double a = inner.m();
    double l = length.m();
    boolean across = motion == Motion.SIDEWAYS;
    ClosedForm form =
        ClosedForm.of(NAME, gap())
            .loadOfLaw(
                motion == Motion.TORSION ? Channel.MOMENT : Channel.FORCE,
                (t, u) ->
                    Softening.modulus(grade, working(a + t) * strain(a + t, u))
                        * stiffness(a + t)
                        * l
                        * u)
            .strain((t, u) -> strain(a + t, u))
            .bands(
                new ClosedForm.Band(across ? 0.92 : 0.95, across ? 1.06 : 1.03),
                new ClosedForm.Band(0.8, 1.6))
            .crossesLayers((build == BuildDirection.AXIS_UP) == (motion == Motion.AXIAL))
            .sources(FORM, DERIVED);
    form = motion == Motion.TORSION ? form.turned() : form;
    return form.respond(grade, load, run, reservations(form.end(load)));
  }

  private Checks reservations(double end) {
    Checks checks =
        Checks.of(NAME, DERIVED).check("outer / inner radius", 1.25, 3.0, outer.ratioTo(inner));
    if (motion == Motion.SIDEWAYS) {
      checks.check("length / sum of the radii", 0.0, 4.0, length.ratioTo(inner.plus(outer)));
      checks.check("travel / gap", 0.0, 0.2, end / gap().m());
    } else {
      checks.check("length / gap", 1.0, Double.POSITIVE_INFINITY, length.ratioTo(gap()));
    }
    return checks.check("peak shear", 0.0, 0.5, 2.0 * strain(outer.m(), end));
  }

  @Override
  public List<Lever<RubberBush>> levers() {
    return List.of(GAP, OUTER, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return length.times(outer.times(outer).minus(inner.times(inner))).times(Math.PI);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, gap());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "bush, inner radius "
        + inner
        + ", outer radius "
        + outer
        + ", length "
        + length
        + ", "
        + switch (motion) {
          case SIDEWAYS -> "sideways";
          case AXIAL -> "along";
          case TORSION -> "turning";
        };
  }
}
