package org.flexwright.shells.dome;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Stiffness;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A spherical wall pressed in at its top by a fingertip, from the first dent to a deep dimple.
 *
 * <p>Formula: F = k w s(y) m, k = (4/sqrt 3) E t^2/[R sqrt(1 - nu^2)] (Reissner), y = sqrt(1 -
 * nu^2) w/t; s, the secant over the first stiffness, is a table of a shallow-shell computation, 1
 * at rest and 0.70 y^(-1/2) for deep mirror dimples (1.6249 E t^2.5 w^0.5/[R (1 - nu^2)^0.75]),
 * which it nears slowly: 6 % below at w/t 20. m = [1 - 0.538 (t/R)^0.74] [1 + 0.29 (c/l)^1.75/(1 +
 * 0.7 y^2)] for the whole dome and for the patch. Peak tensile strain, inside below the patch,
 * (t/R) {0.477 P ln[1 + 3.43 (l/c)^2]/2 + 0.9 y^2/(y^2 + 3)} / [(1 - nu^2)/0.75]^(1/2), P = 2.309 y
 * s m. Symbols: R radius of the middle of the wall, t wall, c patch radius, w travel (m), l =
 * sqrt(R t)/[12 (1 - nu^2)]^(1/4).
 *
 * <p>Range: R/t 20 to 200, w/t to 10, where real walls leave the round dimple for a polygon; w/R to
 * 0.3; patch 0.15 l to l; strain to 0.15; a rim at least 3 l away is taken for granted. Caveats
 * outside; the path ends at y = 20. Band: full hemispheres by finite elements (R/t 20, 50 and 100,
 * nu 0.3 and 0.49) are within 3.5 % for w/t from 2, but softer at the first dent, by up to 7 t/R,
 * which may be shear at the point of their load: low end 0.96 - 7 (t/R)/(1 + 1.2 y^2), high end
 * 1.05. Strain 0.75 to 1.25.
 *
 * <p>Source: Reissner 1946, J. Math. Phys. 25; Pogorelov 1967 (from memory); curve computed. Built
 * axis up, the strain at the top lies in the layers.
 *
 * <p>JShell: {@code PressedDome.of(mm(20), mm(0.8), mm(2)).respond(grade,
 * LoadCase.toTravel(mm(1)))}
 *
 * @param radius radius of the middle of the wall
 * @param wall thickness
 * @param patch radius of the pressed patch
 * @param build how it stands in the printer
 */
public record PressedDome(Length radius, Length wall, Length patch, BuildDirection build)
    implements Part<PressedDome> {

  /** The wall thickness. */
  public static final Lever<PressedDome> WALL =
      Lever.of("wall", PressedDome::wall, PressedDome::wall);

  /** The radius. */
  public static final Lever<PressedDome> RADIUS =
      Lever.of("radius", PressedDome::radius, PressedDome::radius);

  private static final String NAME = "pressed dome";
  private static final Source FORM =
      Source.memory("Reissner 1946, J. Math. Phys. 25; Pogorelov 1967");
  private static final Source COMPUTED =
      Source.derived("nonlinear shallow-shell collocation; hemispheres by finite elements");
  private static final double FIRST = 4.0 / Math.sqrt(3.0);
  private static final double DEEPEST = 20.0;
  private static final double[] Y = {
    0, 0.054, 0.189, 0.459, 0.899, 1.3, 1.7, 2.6, 3.5, 5.2, 7, 8.7, 13, 17.4
  };
  private static final double[] S = {
    1, 0.9776, 0.9105, 0.7886, 0.6283, 0.5209, 0.4441, 0.3428, 0.2925, 0.2472, 0.2223, 0.2061,
    0.1777, 0.1578
  };
  private static final PolynomialSplineFunction SECANT = secant();

  private static PolynomialSplineFunction secant() {
    double[] x = new double[Y.length];
    double[] log = new double[Y.length];
    for (int i = 0; i < Y.length; i++) {
      x[i] = Math.log1p(Y[i]);
      log[i] = Math.log(S[i]);
    }
    return new SplineInterpolator().interpolate(x, log);
  }

  /**
   * Refuses a dome that makes no sense.
   *
   * @param radius radius of the middle of the wall
   * @param wall thickness
   * @param patch radius of the pressed patch
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall or the
   *     patch is not below the radius
   */
  public PressedDome {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.positive("patch radius", patch.m(), "m");
    Require.that(
        wall.m() < radius.m(),
        "wall",
        wall,
        () -> "below the radius, " + radius,
        "that is a solid ball");
    Require.that(
        patch.m() < radius.m(),
        "patch radius",
        patch,
        () -> "below the radius, " + radius,
        "a fingertip is smaller than the dome");
  }

  /**
   * A dome, its axis up in the printer.
   *
   * @param radius radius of the middle of the wall
   * @param wall thickness
   * @param patch radius of the pressed patch
   * @return the dome
   */
  public static PressedDome of(Length radius, Length wall, Length patch) {
    return new PressedDome(radius, wall, patch, BuildDirection.AXIS_UP);
  }

  /**
   * This dome with another radius.
   *
   * @param of the radius
   * @return the new dome
   */
  public PressedDome radius(Length of) {
    return new PressedDome(of, wall, patch, build);
  }

  /**
   * This dome with another wall, on the same middle.
   *
   * @param of the wall
   * @return the new dome
   */
  public PressedDome wall(Length of) {
    return new PressedDome(radius, of, patch, build);
  }

  /**
   * This dome pressed on another patch.
   *
   * @param of radius of the patch
   * @return the new dome
   */
  public PressedDome patch(Length of) {
    return new PressedDome(radius, wall, of, build);
  }

  /**
   * This dome built another way.
   *
   * @param of how it stands in the printer
   * @return the new dome
   */
  public PressedDome build(BuildDirection of) {
    return new PressedDome(radius, wall, patch, of);
  }

  /**
   * The stiffness for the smallest travel.
   *
   * @param grade the material
   * @return force over travel at rest
   */
  public Stiffness stiffness(Grade grade) {
    double t = wall.m();
    double e = grade.modulusAtRest().pa();
    double nu = grade.poisson();
    double whole = e * t * t / (radius.m() * plane(nu)) * FIRST;
    return Stiffness.newtonsPerM(whole * whole(t) * spread(t, nu, 0.0));
  }

  /**
   * The stiffness for the smallest travel of a dome under pressure. Formula: k(0) (pi/2) sqrt(T^2 -
   * 1)/artanh(sqrt(1 - 1/T^2)), T = p/p_cl; below T = 1 the same with arccos. Source: Vella,
   * Ajdari, Vaziri and Boudaoud 2012, J. R. Soc. Interface 9 (from memory, checked by a Hankel
   * integral).
   *
   * @param grade the material
   * @param inside pressure inside over outside; negative if it pushes in
   * @return force over travel; zero at and beyond the classical collapse pressure
   */
  public Stiffness stiffness(Grade grade, Pressure inside) {
    double tau = inside.ratioTo(classicalPressure(grade));
    return stiffness(grade).times(tau <= -1.0 ? 0.0 : pressed(tau));
  }

  /** k/k(0) at a pressure over the classical one, above -1. */
  static double pressed(double tau) {
    double square = tau * tau - 1.0;
    if (Math.abs(square) < 1e-6 && tau > 0.0) {
      return 0.5 * Math.PI * (1.0 + square / 6.0);
    }
    if (tau > 1.0) {
      double x = Math.sqrt(1.0 - 1.0 / (tau * tau));
      return 0.5 * Math.PI * Math.sqrt(square) / (0.5 * Math.log((1.0 + x) / (1.0 - x)));
    }
    return 0.5 * Math.PI * Math.sqrt(-square) / Math.acos(tau);
  }

  /**
   * The pressure from outside at which a perfect sphere collapses: 2 E t^2/[R^2 sqrt(3 (1 -
   * nu^2))]. Real ones fail far below, see {@link #designPressure}. Source: Zoelly 1915 (from
   * memory).
   *
   * @param grade the material
   * @return the pressure
   */
  public Pressure classicalPressure(Grade grade) {
    double slender = wall.ratioTo(radius);
    return grade
        .modulusAtRest()
        .times(2.0 * slender * slender / (Math.sqrt(3.0) * plane(grade.poisson())));
  }

  /**
   * The pressure from outside that a hemisphere may be trusted with: the classical one times 0.14 +
   * 3.2/L^2, L = [12 (1 - nu^2)]^(1/4) sqrt(2 R/t). Source: NASA SP-8032, 1969 (from memory).
   *
   * @param grade the material
   * @return the pressure, before any factor of safety
   */
  public Pressure designPressure(Grade grade) {
    double square = 2.0 * Math.sqrt(12.0) * plane(grade.poisson()) * radius.ratioTo(wall);
    return classicalPressure(grade).times(ClampedCap.knockDown(square));
  }

  private static double plane(double nu) {
    return Math.sqrt(1.0 - nu * nu);
  }

  private double whole(double t) {
    return 1.0 - 0.538 * Math.pow(t / radius.m(), 0.74);
  }

  private double decay(double t, double nu) {
    return Math.sqrt(radius.m() * t / (Math.sqrt(12.0) * plane(nu)));
  }

  private double spread(double t, double nu, double y) {
    double wide = Math.min(1.2, patch.m() / decay(t, nu));
    return 1.0 + 0.29 * Math.pow(wide, 1.75) / (1.0 + 0.7 * y * y);
  }

  /** F R (1 - nu^2)/(E t^3). */
  private double reduced(double t, double nu, double u) {
    double y = plane(nu) * u / t;
    double last = Y[Y.length - 1];
    double s = Math.exp(SECANT.value(Math.log1p(Math.min(y, last))));
    double deep = y > last ? Math.sqrt(last / y) : 1.0;
    return FIRST * y * s * deep * whole(t) * spread(t, nu, y);
  }

  private double strain(double t, double nu, double u) {
    double y = plane(nu) * u / t;
    double ratio = decay(t, nu) / patch.m();
    double under = 0.477 * reduced(t, nu, u) * 0.5 * Math.log1p(3.43 * ratio * ratio);
    double turned = 0.9 * y * y / (y * y + 3.0);
    return t / radius.m() * (under + turned) * Math.sqrt(0.75) / plane(nu);
  }

  /** Working strain over peak strain, from the same computation within 20 %. */
  private double share(double t, double nu, double u) {
    double y = plane(nu) * u / t;
    return Math.min(1.0, 0.85 * Math.pow(patch.m() / decay(t, nu), 0.3)) / (1.0 + 0.04 * y);
  }

  private double force(Grade grade, double t, double u) {
    double nu = grade.poisson();
    double modulus = Working.modulus(grade, share(t, nu, u) * strain(t, nu, u));
    return modulus * reduced(t, nu, u) * t * t * t / (radius.m() * (1.0 - nu * nu));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double travel = load instanceof LoadCase.ToTravel to ? to.travel().m() : 0.0;
    double y = plane(nu) * travel / wall.m();
    double low = 0.96 - 7.0 * wall.ratioTo(radius) / (1.0 + 1.2 * y * y);
    return ClosedForm.of(NAME, wall)
        .loadOfLaw(Channel.FORCE, (t, u) -> force(grade, t, u))
        .strain((t, u) -> strain(t, nu, u))
        .until(t -> DEEPEST * t / plane(nu), "the computed curve of the dimple ends there")
        .bands(new ClosedForm.Band(Math.max(0.3, low), 1.05), new ClosedForm.Band(0.75, 1.25))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(FORM, COMPUTED)
        .respond(grade, load, run, reservations(nu, travel));
  }

  private Checks reservations(double nu, double travel) {
    return Checks.of(NAME, COMPUTED)
        .check("radius / wall", 20.0, 200.0, radius.ratioTo(wall))
        .check("travel / wall", 0.0, 10.0, travel / wall.m())
        .check("travel / radius", 0.0, 0.3, travel / radius.m())
        .check("peak strain", 0.0, 0.15, strain(wall.m(), nu, travel))
        .check("patch radius / decay length", 0.15, 1.0, patch.m() / decay(wall.m(), nu));
  }

  @Override
  public List<Lever<PressedDome>> levers() {
    return List.of(WALL, RADIUS);
  }

  /** The volume of a hemisphere. */
  @Override
  public Volume printedVolume() {
    return wall.times(radius.times(radius)).times(2.0 * Math.PI);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "dome, radius " + radius + ", wall " + wall + ", pressed on a patch of " + patch;
  }
}
