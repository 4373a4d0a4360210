package org.flexwright.shells.wall;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
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
 * A ring-shaped flat plate: a diaphragm around a boss, a lip around a hole. Travel is that of the
 * inner edge against the outer.
 *
 * <p>Formula: slope s = A r + B/r + particular; line load P in all along the inner edge: -P r (2 ln
 * r - 1)/(8 pi D); pressure q on the ring: [-q r^3/16 + q b^2 r (2 ln r - 1)/8]/D; A and B from the
 * edges, any nu. Symbols: a outer, b inner radius, t wall (m), D = E t^3/[12 (1 - nu^2)]. Peak
 * strain t/2 times the largest curvature. The secant modulus is taken at the energy-weighted
 * equivalent strain of the whole field. Pressure acts on the ring only: add the force of the boss's
 * own area as a line load.
 *
 * <p>Range: w/t to 0.5; beyond it the membrane carries ever more, and the band's high end is 1 +
 * 0.8 (w/t)^2, that of the strain 1.03 + 1.2 (w/t)^2 (from solutions of von Karman's equations for
 * b/a 0.1 to 0.8, clamped edges held or sliding, supported ones sliding; a supported edge that
 * cannot slide is up to 1.8 times stiffer at w/t 0.5). t/(a - b) to 0.1 (shear is left out; the
 * band's low end holds it), b/a 0.05 to 0.95. Caveats outside. Source: Wahl and Lobo 1930, Trans.
 * ASME 52; Timoshenko and Woinowsky-Krieger 1959 (from memory, solved here). Lying flat in the
 * printer, as it starts, its strain is in the layers.
 *
 * <p>JShell: {@code AnnularPlate.of(CircularPlate.Rim.CLAMPED, AnnularPlate.Inner.GUIDED, mm(20),
 * mm(8), mm(1))}
 *
 * @param rim how the outer edge is held
 * @param inner how the inner edge is held
 * @param load what it carries
 * @param radius outer radius
 * @param bore inner radius, below the outer
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record AnnularPlate(
    CircularPlate.Rim rim,
    Inner inner,
    Load load,
    Length radius,
    Length bore,
    Length wall,
    BuildDirection build)
    implements Part<AnnularPlate> {

  /** How the inner edge is held. */
  public enum Inner {
    /** A hole: the edge is free to turn. */
    FREE,
    /** A stiff boss: the edge moves without turning. */
    GUIDED
  }

  /** What the plate carries. */
  public enum Load {
    /** A force along the inner edge: asked for a travel it answers with the force. */
    EDGE,
    /** Even pressure on the ring: asked for a travel it answers with the pressure. */
    PRESSURE
  }

  /** The wall thickness. */
  public static final Lever<AnnularPlate> WALL =
      Lever.of("wall", AnnularPlate::wall, AnnularPlate::wall);

  /** The outer radius. */
  public static final Lever<AnnularPlate> RADIUS =
      Lever.of("radius", AnnularPlate::radius, AnnularPlate::radius);

  /** The inner radius. */
  public static final Lever<AnnularPlate> BORE =
      Lever.of("bore", AnnularPlate::bore, AnnularPlate::bore);

  private static final String NAME = "annular plate";
  private static final Source RINGS =
      Source.memory("Wahl and Lobo 1930, Trans. ASME 52: flat plates with central holes");

  /**
   * Refuses a plate that makes no sense.
   *
   * @param rim how the outer edge is held
   * @param inner how the inner edge is held
   * @param load what it carries
   * @param radius outer radius
   * @param bore inner radius, below the outer
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the bore is not below
   *     the radius or the wall is not below the width of the ring
   */
  public AnnularPlate {
    Require.positive("radius", radius.m(), "m");
    Require.positive("bore", bore.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        bore.m() < radius.m(),
        "bore",
        bore,
        () -> "below the radius, " + radius,
        "nothing is left");
    Length width = radius.minus(bore);
    Require.that(
        wall.m() < width.m(),
        "wall",
        wall,
        () -> "below the width of the ring, " + width,
        "that is a block");
  }

  /**
   * A plate with a force along its inner edge, lying flat in the printer (its axis up).
   *
   * @param rim how the outer edge is held
   * @param inner how the inner edge is held
   * @param radius outer radius
   * @param bore inner radius
   * @param wall thickness
   * @return the plate
   */
  public static AnnularPlate of(
      CircularPlate.Rim rim, Inner inner, Length radius, Length bore, Length wall) {
    return new AnnularPlate(rim, inner, Load.EDGE, radius, bore, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This plate under another load.
   *
   * @param of what it carries
   * @return the new plate
   */
  public AnnularPlate load(Load of) {
    return new AnnularPlate(rim, inner, of, radius, bore, wall, build);
  }

  /**
   * This plate with another outer radius.
   *
   * @param of the radius
   * @return the new plate
   */
  public AnnularPlate radius(Length of) {
    return new AnnularPlate(rim, inner, load, of, bore, wall, build);
  }

  /**
   * This plate with another bore.
   *
   * @param of the inner radius
   * @return the new plate
   */
  public AnnularPlate bore(Length of) {
    return new AnnularPlate(rim, inner, load, radius, of, wall, build);
  }

  /**
   * This plate with another wall.
   *
   * @param of the wall
   * @return the new plate
   */
  public AnnularPlate wall(Length of) {
    return new AnnularPlate(rim, inner, load, radius, bore, of, build);
  }

  /**
   * This plate built another way.
   *
   * @param of how it stands in the printer
   * @return the new plate
   */
  public AnnularPlate build(BuildDirection of) {
    return new AnnularPlate(rim, inner, load, radius, bore, wall, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase asked, RunControl run) {
    double nu = grade.poisson();
    double a = radius.m();
    boolean clamped = rim == CircularPlate.Rim.CLAMPED;
    boolean pressed = load == Load.PRESSURE;
    AnnularField field =
        new AnnularField(bore.ratioTo(radius), clamped, inner == Inner.GUIDED, pressed, nu);
    double travel = field.travel();
    double shape = 1.0 / (12.0 * (1.0 - nu * nu) * travel * a * a * (pressed ? a * a : 1.0));
    double curvature = field.peak() / (travel * a * a);
    double relative = asked instanceof LoadCase.ToTravel to ? to.travel().ratioTo(wall) : 0.0;
    double square = Math.min(relative * relative, 1e6);
    double slender = wall.ratioTo(radius);
    double shear = 0.2 * slender * slender * field.shear() / ((1.0 - nu) * travel);
    return ClosedForm.of(NAME, wall)
        .load(pressed ? Channel.PRESSURE : Channel.FORCE, (t, u) -> shape * t * t * t * u)
        .strainSlope(t -> 0.5 * curvature * t)
        .working(WorkingStrain.bending(1.0).times(field.working()).value())
        .bands(
            new ClosedForm.Band(0.97 / (1.0 + shear), 1.0 + 0.8 * square),
            new ClosedForm.Band(0.93, 1.03 + 1.2 * square))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(RINGS)
        .respond(grade, asked, run, reservations(relative));
  }

  private Checks reservations(double relative) {
    Checks checks = Checks.of(NAME, RINGS);
    checks.check("travel / wall", 0.0, 0.5, relative);
    checks.check("wall / width of the ring", 0.0, 0.1, wall.ratioTo(radius.minus(bore)));
    checks.check("bore / radius", 0.05, 0.95, bore.ratioTo(radius));
    return checks;
  }

  @Override
  public List<Lever<AnnularPlate>> levers() {
    return List.of(WALL, RADIUS, BORE);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(radius.times(radius).minus(bore.times(bore)).times(Math.PI));
  }

  @Override
  public Feature thinnest() {
    return new Feature(
        load == Load.PRESSURE ? Feature.Kind.AIRTIGHT_WALL : Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return (rim == CircularPlate.Rim.CLAMPED ? "clamped" : "supported")
        + " ring plate, "
        + (inner == Inner.FREE ? "free" : "guided")
        + " inside, radius "
        + radius
        + ", bore "
        + bore
        + ", wall "
        + wall
        + (load == Load.EDGE ? ", force at the bore" : ", pressure");
  }
}
