package org.flexwright.shells.dome;

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
 * A cylinder with hemispherical ends under pressure from inside, asked for the growth of the radius
 * of the cylinder; its peak strain is that at the junction, where the dome holds the cylinder back.
 *
 * <p>Formula: p = E t u/[R^2 (1 - nu/2)]. The edges of cylinder and dome are joined by a shear
 * force H and a moment M (both with the long-shell solution e^(-b x), b = [3 (1 -
 * nu^2)]^(1/4)/sqrt(R t), which for a hemisphere is that of Geckeler); of equal walls H = -p/(8 b)
 * and M = 0. Peak tensile strain: the largest of hoop and axial surface strain along both walls.
 * Symbols: R radius of the middle of the wall, t wall, u growth of the radius (m), x from the
 * junction.
 *
 * <p>Range: R/t from 10, growth to 5 % of the radius, length from 6/b so that the ends do not meet,
 * dome 0.5 to 2 times the wall. Caveats outside. Band: 0.97 to 1.03 of the pressure; finite
 * elements of the edges are within 0.1 % at R/t 100 (hemisphere) and 3 % for flatter domes at R/t
 * 20; strain 0.95 to 1.05. At equal walls the axial stress reaches 0.6465, the hoop stress 1.0314
 * pR/t (nu 0.3).
 *
 * <p>Source: Geckeler 1926; Timoshenko and Woinowsky-Krieger 1959 (from memory, checked). Built
 * axis lying, the hoop strain pulls layers apart.
 *
 * <p>JShell: {@code DomedCylinder.of(mm(20), mm(80), mm(1)).respond(grade,
 * LoadCase.toTravel(mm(0.4)))}
 *
 * @param radius radius of the middle of the wall
 * @param length length of the cylinder between the domes
 * @param wall wall of the cylinder
 * @param domeShare wall of the domes over that of the cylinder
 * @param build how it stands in the printer
 */
public record DomedCylinder(
    Length radius, Length length, Length wall, double domeShare, BuildDirection build)
    implements Part<DomedCylinder> {

  /** The wall of the cylinder; that of the domes follows. */
  public static final Lever<DomedCylinder> WALL =
      Lever.of("wall", DomedCylinder::wall, DomedCylinder::wall);

  /** The radius. */
  public static final Lever<DomedCylinder> RADIUS =
      Lever.of("radius", DomedCylinder::radius, DomedCylinder::radius);

  private static final String NAME = "domed cylinder";
  private static final Source FORM =
      Source.memory("Geckeler 1926; Timoshenko and Woinowsky-Krieger 1959");
  private static final int POINTS = 120;
  private static final double FAR = 6.0;

  /**
   * Refuses a vessel that makes no sense.
   *
   * @param radius radius of the middle of the wall
   * @param length length of the cylinder between the domes
   * @param wall wall of the cylinder
   * @param domeShare wall of the domes over that of the cylinder
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a size is not above 0 or the wall is not below
   *     the radius
   */
  public DomedCylinder {
    Require.positive("radius", radius.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.between("dome wall over wall", domeShare, 0.01, 100.0, "");
    Require.that(
        wall.m() < radius.m(),
        "wall",
        wall,
        () -> "below the radius, " + radius,
        "that is no hollow part");
  }

  /**
   * A vessel of one wall, its axis up in the printer.
   *
   * @param radius radius of the middle of the wall
   * @param length length of the cylinder between the domes
   * @param wall thickness everywhere
   * @return the vessel
   */
  public static DomedCylinder of(Length radius, Length length, Length wall) {
    return new DomedCylinder(radius, length, wall, 1.0, BuildDirection.AXIS_UP);
  }

  /**
   * This vessel with another radius.
   *
   * @param of the radius
   * @return the new vessel
   */
  public DomedCylinder radius(Length of) {
    return new DomedCylinder(of, length, wall, domeShare, build);
  }

  /**
   * This vessel with another length.
   *
   * @param of the length of the cylinder
   * @return the new vessel
   */
  public DomedCylinder length(Length of) {
    return new DomedCylinder(radius, of, wall, domeShare, build);
  }

  /**
   * This vessel with another wall, the domes in proportion.
   *
   * @param of the wall of the cylinder
   * @return the new vessel
   */
  public DomedCylinder wall(Length of) {
    return new DomedCylinder(radius, length, of, domeShare, build);
  }

  /**
   * This vessel with other domes.
   *
   * @param of wall of the domes over that of the cylinder
   * @return the new vessel
   */
  public DomedCylinder domeShare(double of) {
    return new DomedCylinder(radius, length, wall, of, build);
  }

  /**
   * This vessel built another way.
   *
   * @param of how it stands in the printer
   * @return the new vessel
   */
  public DomedCylinder build(BuildDirection of) {
    return new DomedCylinder(radius, length, wall, domeShare, of);
  }

  /** Peak tensile strain over p R/(E t). */
  double peak(double t, double nu) {
    double r = radius.m();
    EdgeBending cylinder = EdgeBending.of(r, t, nu, 1.0 - 0.5 * nu);
    EdgeBending dome = EdgeBending.of(r, domeShare * t, nu, 0.5 * (1.0 - nu));
    double[] edge = EdgeBending.join(cylinder, dome);
    double most = 0.0;
    for (int i = 0; i <= POINTS; i++) {
      double s = FAR * i / POINTS;
      most = Math.max(most, cylinder.strain(s, edge[0], edge[1]));
      most = Math.max(most, dome.strain(s, -edge[0], edge[1]));
    }
    return most * t / r;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double r = radius.m();
    double hoop = 1.0 - 0.5 * nu;
    // strains of the cylinder far away: hoop 1 - nu/2, axial 1/2 - nu, constant volume across
    double axial = 0.5 - nu;
    double equal = 2.0 / Math.sqrt(3.0) * Math.sqrt(hoop * hoop + hoop * axial + axial * axial);
    double growth = load instanceof LoadCase.ToTravel to ? to.travel().m() : 0.0;
    return ClosedForm.of(NAME, wall)
        .load(Channel.PRESSURE, (t, u) -> t * u / (r * r * hoop))
        .strain((t, u) -> peak(t, nu) * u / (r * hoop))
        .working(equal / peak(wall.m(), nu))
        .volume((t, u) -> volume(nu, u))
        .bands(new ClosedForm.Band(0.97, 1.03), new ClosedForm.Band(0.95, 1.05))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(FORM)
        .respond(grade, load, run, reservations(nu, growth));
  }

  /** The growth of what is inside, to first order: cylinder 2 hoop + axial, domes 3 (1 - nu)/2. */
  private double volume(double nu, double u) {
    double r = radius.m();
    double load = u / (r * (1.0 - 0.5 * nu)); // p R/(E t)
    double cylinder = Math.PI * r * r * length.m() * (2.5 - 2.0 * nu);
    double domes = 2.0 * Math.PI * r * r * r * (1.0 - nu) / domeShare;
    return load * (cylinder + domes);
  }

  private Checks reservations(double nu, double growth) {
    double decay = radius.m() / EdgeBending.of(radius.m(), wall.m(), nu, 1.0).steep();
    return Checks.of(NAME, FORM)
        .check("radius / wall", 10.0, Double.POSITIVE_INFINITY, radius.ratioTo(wall))
        .check("growth / radius", 0.0, 0.05, growth / radius.m())
        .check("length / decay length", 6.0, Double.POSITIVE_INFINITY, length.m() / decay)
        .check("dome wall / wall", 0.5, 2.0, domeShare);
  }

  @Override
  public List<Lever<DomedCylinder>> levers() {
    return List.of(WALL, RADIUS);
  }

  @Override
  public Volume printedVolume() {
    double r = radius.m();
    double area = 2.0 * Math.PI * r * length.m() + domeShare * 4.0 * Math.PI * r * r;
    return Volume.m3(area * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall.times(Math.min(1.0, domeShare)));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "domed cylinder, radius " + radius + ", length " + length + ", wall " + wall;
  }
}
