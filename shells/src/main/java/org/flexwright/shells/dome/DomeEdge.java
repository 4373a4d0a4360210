package org.flexwright.shells.dome;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * The free edge of a spherical dome, spread or drawn in by a ring load in its plane.
 *
 * <p>Formula (Geckeler 1926), L = [3 (1 - nu^2)]^(1/4) sqrt(R/t), A the angle from the axis to the
 * edge: spread d = 2 R L sin^2 A H/(E t), turn 2 L^2 sin A H/(E t) for a force H a length. The
 * force here is the whole of it, 2 pi R sin A H. Peak strain: the hoop strain of the edge d/(R sin
 * A) or the bending strain a quarter wave from it, 6 (1 - nu^2) M/(E t^2), M = 0.3224 H sin A R/L,
 * the larger.
 *
 * <p>Symbols: R radius of the middle of the wall, t wall (m).
 *
 * <p>Band 0.92 to 1.15 (at 40 degrees, R/t 20 and nu 0.5 the load is 1.137 times this one): a shell
 * computation lies at 0.93 to 1.01 of the spread at A 40 to 90 degrees and R/t 20 to 100. Range:
 * R/t from 20, A from 40 degrees, d/t to 0.5. Caveats outside. Source: Geckeler 1926 after
 * Timoshenko and Woinowsky-Krieger 1959 (from memory, checked). Built axis up, the hoop strain lies
 * in the layers and the bending pulls them apart.
 *
 * <p>JShell: {@code DomeEdge.of(mm(30), Angle.degrees(90), mm(1))}
 *
 * @param radius radius of the middle of the wall
 * @param edge angle between the axis and the edge, above 0, to 90 degrees
 * @param wall thickness, below the radius
 * @param build how it stands in the printer
 */
public record DomeEdge(Length radius, Angle edge, Length wall, BuildDirection build)
    implements Part<DomeEdge> {

  /** The wall thickness. */
  public static final Lever<DomeEdge> WALL = Lever.of("wall", DomeEdge::wall, DomeEdge::wall);

  /** The radius. */
  public static final Lever<DomeEdge> RADIUS =
      Lever.of("radius", DomeEdge::radius, DomeEdge::radius);

  private static final String NAME = "edge of a dome";
  private static final double WAVE = Math.exp(-0.25 * Math.PI) * Math.sin(0.25 * Math.PI);
  private static final Source GECKELER =
      Source.memory("Geckeler 1926, after Timoshenko and Woinowsky-Krieger 1959");

  /**
   * Refuses a dome that makes no sense.
   *
   * @param radius radius of the middle of the wall
   * @param edge angle between the axis and the edge, above 0, to 90 degrees
   * @param wall thickness, below the radius
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the angle is outside
   */
  public DomeEdge {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < radius.m(), "wall", wall, () -> "below the radius, " + radius, "that is a ball");
    Require.that(
        edge.rad() > 0.0 && edge.rad() <= 0.5 * Math.PI + 1e-12,
        "angle of the edge",
        edge,
        "above 0, to 90 degrees",
        "measure it from the axis");
  }

  /**
   * A dome built axis up.
   *
   * @param radius radius of the middle of the wall
   * @param edge angle between the axis and the edge
   * @param wall thickness
   * @return the dome
   */
  public static DomeEdge of(Length radius, Angle edge, Length wall) {
    return new DomeEdge(radius, edge, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This dome with another radius.
   *
   * @param of the radius
   * @return the new dome
   */
  public DomeEdge radius(Length of) {
    return new DomeEdge(of, edge, wall, build);
  }

  /**
   * This dome with another wall.
   *
   * @param of the wall
   * @return the new dome
   */
  public DomeEdge wall(Length of) {
    return new DomeEdge(radius, edge, of, build);
  }

  /**
   * This dome built another way.
   *
   * @param of how it stands in the printer
   * @return the new dome
   */
  public DomeEdge build(BuildDirection of) {
    return new DomeEdge(radius, edge, wall, of);
  }

  private EdgeBending edge(double t, double nu) {
    return EdgeBending.of(radius.m(), t, nu, 0.0);
  }

  /**
   * The turn of the edge that goes with a spread.
   *
   * @param grade the material, for its Poisson ratio
   * @param spread the spread of the edge
   * @return L/(R sin A) times the spread
   */
  public Angle turn(Grade grade, Length spread) {
    EdgeBending bending = edge(wall.m(), grade.poisson());
    double ratio = bending.cross(edge.rad()) / bending.byForce(edge.rad());
    return Angle.rad(ratio * spread.m());
  }

  private double hoop() {
    return 1.0 / (radius.m() * Math.sin(edge.rad()));
  }

  private double bending(double t, double nu) {
    EdgeBending bending = edge(t, nu);
    double line = 1.0 / bending.byForce(edge.rad());
    double moment = WAVE * line * Math.sin(edge.rad()) * radius.m() / bending.steep();
    return 6.0 * (1.0 - nu * nu) * moment / (t * t);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double round = 2.0 * Math.PI * radius.m() * Math.sin(edge.rad());
    double bend = bending(wall.m(), nu);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .spring(t -> round / edge(t, nu).byForce(edge.rad()))
            .strainSlope(t -> Math.max(hoop(), bending(t, nu)))
            .working(WorkingStrain.RECTANGLE * WorkingStrain.LINEAR_MOMENT)
            .bands(new ClosedForm.Band(0.92, 1.15), new ClosedForm.Band(0.9, 1.1))
            .crossesLayers((bend > hoop()) == (build == BuildDirection.AXIS_UP))
            .sources(GECKELER);
    Checks checks = Checks.of(NAME, GECKELER);
    checks.check("radius / wall", 20.0, Double.POSITIVE_INFINITY, radius.ratioTo(wall));
    checks.check("angle of the edge", 0.698, 1.6, edge.rad());
    checks.check("spread / wall", 0.0, 0.5, form.end(load) / wall.m());
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<DomeEdge>> levers() {
    return List.of(WALL, RADIUS);
  }

  @Override
  public Volume printedVolume() {
    double r = radius.m();
    return Volume.m3(2.0 * Math.PI * r * r * (1.0 - Math.cos(edge.rad())) * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "dome edge, radius " + radius + ", edge at " + edge + ", wall " + wall;
  }
}
