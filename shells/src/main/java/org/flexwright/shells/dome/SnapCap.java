package org.flexwright.shells.dome;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A shallow spherical cap with a clamped rim under outer pressure, until it snaps through.
 *
 * <p>Formula: L = [12 (1 - nu^2)]^(1/4) a/sqrt(R t) says how deep the cap is in decay lengths.
 * Below 3.3 it only yields (no limit). From 3.5 to 5.5 it snaps at the pressure of the axisymmetric
 * limit point, p/p_cl 0.599, 0.564, 0.573, 0.616, 0.746 at L 3.5, 4, 4.5, 5, 5.5 (computed,
 * shallow-shell equations); deeper caps snap sideways near 0.78 p_cl. p_cl = 2 E t^2/(R^2 sqrt(3 (1
 * - nu^2))) is that of the whole sphere (Zoelly 1915). Travel: the even contraction (1 - nu) p
 * R^2/(2 E t); the middle of a shallow cap moves more. Peak tensile strain: across the wall.
 *
 * <p>Symbols: a radius of the rim, R radius of the middle of the wall, t wall (m).
 *
 * <p>Band: from the knock-down 0.14 + 3.2/L^2 of NASA SP-8032 to 1.05. Range: a/R to 0.5, t/R to
 * 0.05, L 3.3 to 5.5; beyond, the sideways mode rules and a caveat is due. Source: Budiansky 1959,
 * Huang 1964, NASA SP-8032 (from memory); limit points derived.
 *
 * <p>JShell: {@code SnapCap.of(mm(40), mm(12), mm(0.8)).respond(grade, LoadCase.toLimit())}
 *
 * @param radius radius of the middle of the wall
 * @param rim radius of the clamped rim, below the radius
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record SnapCap(Length radius, Length rim, Length wall, BuildDirection build)
    implements Part<SnapCap> {

  /** The wall thickness. */
  public static final Lever<SnapCap> WALL = Lever.of("wall", SnapCap::wall, SnapCap::wall);

  /** The radius of the rim. */
  public static final Lever<SnapCap> RIM = Lever.of("rim radius", SnapCap::rim, SnapCap::rim);

  private static final String NAME = "snapping cap";
  private static final double FIRST = 3.3;
  private static final double DEEP = 5.5;
  private static final double SIDEWAYS = 0.78;
  private static final PolynomialSplineFunction LIMIT =
      new AkimaSplineInterpolator()
          .interpolate(
              new double[] {3.5, 4.0, 4.5, 5.0, 5.5, 6.0},
              new double[] {0.5990, 0.5638, 0.5729, 0.6163, 0.7463, 0.9726});
  private static final Source BUDIANSKY =
      Source.memory("Budiansky 1959; Huang 1964 for the sideways mode; limit points computed");
  private static final Source MARGIN =
      Source.memory("NASA SP-8032: buckling of thin-walled doubly curved shells");

  /**
   * Refuses a cap that makes no sense.
   *
   * @param radius radius of the middle of the wall
   * @param rim radius of the clamped rim, below the radius
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the rim or the wall
   *     is not below the radius
   */
  public SnapCap {
    Require.positive("radius", radius.m(), "m");
    Require.positive("rim radius", rim.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        rim.m() < radius.m() && wall.m() < radius.m(),
        "rim radius and wall",
        rim + ", " + wall,
        () -> "below the radius, " + radius,
        "a cap is less than a hemisphere");
  }

  /**
   * A cap built axis up.
   *
   * @param radius radius of the middle of the wall
   * @param rim radius of the clamped rim
   * @param wall thickness
   * @return the cap
   */
  public static SnapCap of(Length radius, Length rim, Length wall) {
    return new SnapCap(radius, rim, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This cap with another rim, of the same sphere.
   *
   * @param of radius of the rim
   * @return the new cap
   */
  public SnapCap rim(Length of) {
    return new SnapCap(radius, of, wall, build);
  }

  /**
   * This cap with another wall.
   *
   * @param of the wall
   * @return the new cap
   */
  public SnapCap wall(Length of) {
    return new SnapCap(radius, rim, of, build);
  }

  /**
   * This cap built another way.
   *
   * @param of how it stands in the printer
   * @return the new cap
   */
  public SnapCap build(BuildDirection of) {
    return new SnapCap(radius, rim, wall, of);
  }

  /**
   * The classical collapse pressure of a whole sphere without a flaw, at the modulus at rest.
   *
   * @param grade the material
   * @param radius radius of the middle of the wall, above 0
   * @param wall thickness, above 0
   * @return p_cl; real spheres collapse at a fifth to three quarters of it
   */
  public static Pressure classical(Grade grade, Length radius, Length wall) {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    return grade.modulusAtRest().times(classical(grade.poisson(), wall.m() / radius.m()));
  }

  private static double classical(double nu, double slender) {
    return 2.0 * slender * slender / Math.sqrt(3.0 * (1.0 - nu * nu));
  }

  /**
   * How deep the cap is in decay lengths.
   *
   * @param grade the material, for its Poisson ratio
   * @return L
   */
  public double depth(Grade grade) {
    return depth(wall.m(), grade.poisson());
  }

  private double depth(double t, double nu) {
    return Math.pow(12.0 * (1.0 - nu * nu), 0.25) * rim.m() / Math.sqrt(radius.m() * t);
  }

  /** Snap pressure over the classical, not a number if the cap only yields. */
  static double share(double depth) {
    if (depth < FIRST) {
      return Double.NaN;
    }
    if (depth >= 6.0) {
      return SIDEWAYS;
    }
    return Math.min(SIDEWAYS, LIMIT.value(Math.max(3.5, depth)));
  }

  private double travel(double t, double nu) {
    double slender = t / radius.m();
    double p = classical(nu, slender) * share(depth(t, nu));
    return 0.5 * (1.0 - nu) * p * radius.m() / slender;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double soft = 0.5 * (1.0 - nu);
    double r = radius.m();
    double depth = depth(grade);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.PRESSURE, (t, u) -> t * u / (soft * r * r))
            .strainSlope(t -> 2.0 * nu / ((1.0 - nu) * r))
            .working((1.0 - nu) / nu) // both hoops are pressed: equivalent strain 2 u/R
            .limit(t -> travel(t, nu))
            .crossesLayers(false)
            .sources(BUDIANSKY, MARGIN);
    Checks checks = Checks.of(NAME, BUDIANSKY);
    checks.check("rim radius / radius", 0.0, 0.5, rim.ratioTo(radius));
    checks.check("wall / radius", 0.0, 0.05, wall.ratioTo(radius));
    checks.check("depth in decay lengths", FIRST, DEEP, depth);
    double end = form.end(load); // refuses a limit where there is none
    checks.check("travel / wall", 0.0, 1.0, end / wall.m());
    if (load instanceof LoadCase.ToLimit) {
      double knocked = (0.14 + 3.2 / (depth * depth)) / share(depth);
      ClosedForm.Band band = new ClosedForm.Band(Math.min(1.0, knocked), 1.05);
      return form.bands(band, band).respond(grade, load, run, checks);
    }
    checks.note("the middle of a shallow cap moves further than the even contraction told here");
    ClosedForm.Band band = new ClosedForm.Band(0.4, 1.05);
    return form.bands(band, band).respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<SnapCap>> levers() {
    return List.of(WALL, RIM);
  }

  @Override
  public Volume printedVolume() {
    double rise = radius.m() - Math.sqrt(radius.m() * radius.m() - rim.m() * rim.m());
    return Volume.m3(2.0 * Math.PI * radius.m() * rise * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "clamped cap, radius " + radius + ", rim " + rim + ", wall " + wall;
  }
}
