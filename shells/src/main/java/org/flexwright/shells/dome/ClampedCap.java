package org.flexwright.shells.dome;

import java.util.List;
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
 * A shallow spherical cap with a clamped rim under even pressure on its outside, to its snap.
 *
 * <p>Formula: p = E t^4/[(1 - nu^2) a^4] (c1 y + c2 y^2 + c3 y^3 + c4 y^4), y = w/t with w the
 * travel of the top; the c follow L = [12 (1 - nu^2)]^(1/4) a/sqrt(R t) and nu, fitted within 1 %
 * to paths of a nonlinear shallow-shell computation up to their maximum or y = 1.2. L = 0 is the
 * flat clamped plate. The snap pressure is the maximum. Beyond L about 5.25 the cap buckles
 * unevenly at 0.75 to 0.8 p_cl, and the model rises to 0.775 and stays there, p_cl = 2 E t^2/[R^2
 * sqrt(3 (1 - nu^2))]. Below L about 3.2 (nu 0.5) to 3.4 (nu 0.3) there is no maximum: the cap
 * never gives way. Peak tensile strain: that of the first travel, held in proportion, on the high
 * side later. Symbols: a rim radius, R radius of the cap, t wall (m).
 *
 * <p>Range: L to 5.25, a/R to 0.5, R/t from 20, y to 1.2. Caveats outside. Band of the pressure:
 * its high end 1.06; its low end the design value of NASA SP-8032, 0.14 + 3.2/L^2 of p_cl, over the
 * model at the snap, 0.93 for caps that do not snap. Strain 0.15 (the membrane's push takes most of
 * it away near the snap) to 1.35 (flat plates at y 1.2). Snap pressures rise with nu: by 13 % from
 * nu 0.3 to 0.5 at L = 4.
 *
 * <p>Source: problem of Budiansky 1959, uneven buckling Huang 1964, SP-8032 1969 (from memory);
 * paths computed. Built axis up, the strain lies near the layers.
 *
 * <p>JShell: {@code ClampedCap.of(mm(15), mm(40), mm(0.6)).respond(grade, LoadCase.toLimit())}
 *
 * @param rim radius of the rim
 * @param radius radius of the middle of the wall
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record ClampedCap(Length rim, Length radius, Length wall, BuildDirection build)
    implements Part<ClampedCap> {

  /** The wall thickness. */
  public static final Lever<ClampedCap> WALL = Lever.of("wall", ClampedCap::wall, ClampedCap::wall);

  /** The radius of the cap; smaller is higher. */
  public static final Lever<ClampedCap> RADIUS =
      Lever.of("radius", ClampedCap::radius, ClampedCap::radius);

  private static final String NAME = "clamped cap";
  private static final Source FORM =
      Source.memory("Budiansky 1959; Huang 1964; NASA SP-8032, 1969");
  private static final Source COMPUTED =
      Source.derived("nonlinear shallow-shell collocation, paths of even shape");

  /**
   * Refuses a cap that makes no sense.
   *
   * @param rim radius of the rim
   * @param radius radius of the middle of the wall
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the rim is wider than
   *     the sphere or the wall is not below the rim radius
   */
  public ClampedCap {
    Require.positive("rim radius", rim.m(), "m");
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        rim.m() <= radius.m(),
        "rim radius",
        rim,
        () -> "at most the radius of the cap, " + radius,
        "a cap is no more than a hemisphere");
    Require.that(
        wall.m() < rim.m(), "wall", wall, () -> "below the rim radius, " + rim, "that is a block");
  }

  /**
   * A cap, its axis up in the printer.
   *
   * @param rim radius of the rim
   * @param radius radius of the middle of the wall
   * @param wall thickness
   * @return the cap
   */
  public static ClampedCap of(Length rim, Length radius, Length wall) {
    return new ClampedCap(rim, radius, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This cap with another rim.
   *
   * @param of radius of the rim
   * @return the new cap
   */
  public ClampedCap rim(Length of) {
    return new ClampedCap(of, radius, wall, build);
  }

  /**
   * This cap with another radius.
   *
   * @param of the radius
   * @return the new cap
   */
  public ClampedCap radius(Length of) {
    return new ClampedCap(rim, of, wall, build);
  }

  /**
   * This cap with another wall, on the same middle.
   *
   * @param of the wall
   * @return the new cap
   */
  public ClampedCap wall(Length of) {
    return new ClampedCap(rim, radius, of, build);
  }

  /**
   * This cap built another way.
   *
   * @param of how it stands in the printer
   * @return the new cap
   */
  public ClampedCap build(BuildDirection of) {
    return new ClampedCap(rim, radius, wall, of);
  }

  /**
   * The shallowness L = [12 (1 - nu^2)]^(1/4) a/sqrt(R t), which decides whether the cap snaps.
   *
   * @param grade the material
   * @return L
   */
  public double shallowness(Grade grade) {
    return lambda(wall.m(), grade.poisson());
  }

  private double lambda(double t, double nu) {
    return rim.m() * Math.sqrt(Math.sqrt(12.0 * (1.0 - nu * nu)) / (radius.m() * t));
  }

  /**
   * The pressure at which a perfect full sphere of this wall collapses.
   *
   * @param grade the material
   * @return p_cl at rest
   */
  public Pressure classicalPressure(Grade grade) {
    double nu = grade.poisson();
    double slender = wall.ratioTo(radius);
    return grade.modulusAtRest().times(2.0 * slender * slender / Math.sqrt(3.0 * (1.0 - nu * nu)));
  }

  /** The knock-down of SP-8032, at most 1, for the square of L. */
  static double knockDown(double square) {
    return Math.min(1.0, 0.14 + 3.2 / square);
  }

  private CapPaths paths(double t, double nu) {
    return new CapPaths(lambda(t, nu), nu);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double a = rim.m();
    CapPaths paths = paths(wall.m(), nu);
    double snap = paths.snap();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .loadOfLaw(Channel.PRESSURE, (t, u) -> pressure(grade, t, u))
            .strain((t, u) -> paths(t, nu).strain() * t * u / (a * a))
            .limit(t -> snap(t, nu, snap))
            .bands(band(paths, snap), new ClosedForm.Band(0.15, 1.35))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(FORM, COMPUTED);
    if (snap > 0.0) {
      form =
          form.until(
              t -> snap(t, nu, snap), "at that pressure the cap snaps through and does not stop");
    }
    double end = form.end(load);
    return form.respond(grade, load, run, reservations(lambda(wall.m(), nu), nu, end));
  }

  private double pressure(Grade grade, double t, double u) {
    double nu = grade.poisson();
    double a = rim.m();
    CapPaths paths = paths(t, nu);
    double modulus = Working.modulus(grade, paths.working() * paths.strain() * t * u / (a * a));
    return modulus * paths.pressure(u / t) * Math.pow(t / a, 4) / (1.0 - nu * nu);
  }

  /** The travel at the snap; for a neighbour beyond the onset that of this wall in proportion. */
  private double snap(double t, double nu, double here) {
    double y = paths(t, nu).snap();
    return t * (y > 0.0 ? y : here);
  }

  private ClosedForm.Band band(CapPaths paths, double snap) {
    if (!(snap > 0.0)) {
      return new ClosedForm.Band(0.93, 1.06);
    }
    double ratio = paths.pressure(snap) / paths.classical();
    return new ClosedForm.Band(Math.min(0.93, paths.knockDown() / ratio), 1.06);
  }

  private Checks reservations(double lambda, double nu, double end) {
    return Checks.of(NAME, COMPUTED)
        .check("shallowness L, above which the cap buckles unevenly", 0.0, CapPaths.DEEP, lambda)
        .check("Poisson ratio", 0.3, 0.5, nu)
        .check("rim radius / radius", 0.0, 0.5, rim.ratioTo(radius))
        .check("radius / wall", 20.0, Double.POSITIVE_INFINITY, radius.ratioTo(wall))
        .check("travel / wall", 0.0, 1.2, end / wall.m())
        .check("wall x travel / rim radius^2", 0.0, 0.03, wall.m() * end / (rim.m() * rim.m()));
  }

  @Override
  public List<Lever<ClampedCap>> levers() {
    return List.of(WALL, RADIUS);
  }

  @Override
  public Volume printedVolume() {
    double r = radius.m();
    double high = r - Math.sqrt((r - rim.m()) * (r + rim.m()));
    return Volume.m3(2.0 * Math.PI * r * high * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "clamped cap, rim radius " + rim + ", radius " + radius + ", wall " + wall;
  }
}
