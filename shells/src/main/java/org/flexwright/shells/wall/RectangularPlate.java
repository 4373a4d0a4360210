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
 * A rectangular flat plate, all edges clamped or all supported, under even pressure or a central
 * patch. Travel is that of the centre.
 *
 * <p>Formula: w = alpha q a^4/D or alpha P a^2/D, alpha from Levy's series; clamped edges by edge
 * moments that take the slopes back. Symbols: a short, b long side, t wall, s side of a square
 * patch (m), D = E t^3/[12 (1 - nu^2)]. Peak strain t/2 times the largest principal curvature of a
 * grid on the plate: the centre, the middle of a clamped long edge, or the twisted corner of a
 * supported one, which holds for corners kept down. For the strain a patch smaller than the wall
 * counts with the radius that {@link CircularPlate} gives, area for area. The secant modulus is
 * taken at the energy-weighted equivalent strain of the whole field.
 *
 * <p>Range: w/t to 0.5; beyond it the membrane carries ever more, and the band's high end is 1 +
 * 0.8 (w/t)^2, that of the strain 1.03 + 1.2 (w/t)^2 (the bounds of round plates and of strips;
 * supported edges free to slide in). t/a to 0.1; shear is left out, the band's low end holds it.
 * Caveats outside. Source: Timoshenko and Woinowsky-Krieger 1959, Theory of Plates and Shells (from
 * memory, solved here). Lying flat in the printer, as it starts, its strain is in the layers.
 *
 * <p>JShell: {@code RectangularPlate.of(CircularPlate.Rim.CLAMPED, mm(20), mm(30), mm(1))}
 *
 * @param rim how all edges are held
 * @param load what it carries
 * @param width short side
 * @param length long side, not below the width
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record RectangularPlate(
    CircularPlate.Rim rim,
    Load load,
    Length width,
    Length length,
    Length wall,
    BuildDirection build)
    implements Part<RectangularPlate> {

  /** What the plate carries. */
  public sealed interface Load {

    /** Even pressure: asked for a travel it answers with the pressure. */
    record Pressure() implements Load {
      /** One readable word. */
      @Override
      public String toString() {
        return "pressure";
      }
    }

    /**
     * A force spread evenly on a square in the middle: asked for a travel it answers with the
     * force.
     *
     * @param side side of the square, at most the width; 0 for a point
     */
    record Patch(Length side) implements Load {

      /**
       * Refuses a side below 0.
       *
       * @param side side of the square, at most the width; 0 for a point
       * @throws org.flexwright.InvalidInputException if the side is below 0
       */
      public Patch {
        Require.notNegative("side of the patch", side.m(), "m");
      }

      /** One readable line. */
      @Override
      public String toString() {
        return "patch of " + side;
      }
    }
  }

  /** The wall thickness. */
  public static final Lever<RectangularPlate> WALL =
      Lever.of("wall", RectangularPlate::wall, RectangularPlate::wall);

  /** The short side. */
  public static final Lever<RectangularPlate> WIDTH =
      Lever.of("width", RectangularPlate::width, RectangularPlate::width);

  private static final String NAME = "rectangular plate";
  private static final Source LEVY =
      Source.memory(
          "Timoshenko and Woinowsky-Krieger 1959, Theory of Plates and Shells: Levy's series and"
              + " clamped edges");

  /**
   * Refuses a plate that makes no sense.
   *
   * @param rim how all edges are held
   * @param load what it carries
   * @param width short side
   * @param length long side, not below the width
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the length is below
   *     the width, the wall is not below the width or a patch is wider than the plate
   */
  public RectangularPlate {
    Require.positive("width", width.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Length side = width;
    Require.that(
        length.m() >= width.m(),
        "length",
        length,
        () -> "not below the width, " + side,
        "give the short side as the width");
    Require.that(
        wall.m() < width.m(), "wall", wall, () -> "below the width, " + side, "that is a block");
    if (load instanceof Load.Patch patch) {
      Require.that(
          patch.side().m() <= width.m(),
          "side of the patch",
          patch.side(),
          () -> "at most the width, " + side,
          "the load must end within the edges");
    }
  }

  /**
   * A plate under even pressure, lying flat in the printer (its axis up).
   *
   * @param rim how all edges are held
   * @param width short side
   * @param length long side
   * @param wall thickness
   * @return the plate
   */
  public static RectangularPlate of(
      CircularPlate.Rim rim, Length width, Length length, Length wall) {
    return new RectangularPlate(
        rim, new Load.Pressure(), width, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This plate under another load.
   *
   * @param of what it carries
   * @return the new plate
   */
  public RectangularPlate load(Load of) {
    return new RectangularPlate(rim, of, width, length, wall, build);
  }

  /**
   * This plate with another short side.
   *
   * @param of the width
   * @return the new plate
   */
  public RectangularPlate width(Length of) {
    return new RectangularPlate(rim, load, of, length, wall, build);
  }

  /**
   * This plate with another long side.
   *
   * @param of the length
   * @return the new plate
   */
  public RectangularPlate length(Length of) {
    return new RectangularPlate(rim, load, width, of, wall, build);
  }

  /**
   * This plate with another wall.
   *
   * @param of the wall
   * @return the new plate
   */
  public RectangularPlate wall(Length of) {
    return new RectangularPlate(rim, load, width, length, of, build);
  }

  /**
   * This plate built another way.
   *
   * @param of how it stands in the printer
   * @return the new plate
   */
  public RectangularPlate build(BuildDirection of) {
    return new RectangularPlate(rim, load, width, length, wall, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase asked, RunControl run) {
    double nu = grade.poisson();
    double plane = 12.0 * (1.0 - nu * nu);
    double a = width.m();
    boolean pressed = load instanceof Load.Pressure;
    RectangularField field = field(wall.m());
    double travel = travel(field);
    double shape = 1.0 / (plane * travel * a * a * (pressed ? a * a : 1.0));
    double half = 0.5 / (travel * a * a);
    double slender = wall.ratioTo(width);
    double shear = 2.4 * (1.0 + nu) * slender * slender * field.laplacian() / (plane * travel);
    double relative = asked instanceof LoadCase.ToTravel to ? to.travel().ratioTo(wall) : 0.0;
    double square = Math.min(relative * relative, 1e6);
    double peak = field.peak();
    double spread = spread(wall.m());
    return ClosedForm.of(NAME, wall)
        .load(pressed ? Channel.PRESSURE : Channel.FORCE, (t, u) -> shape * t * t * t * u)
        .strainSlope(t -> half * t * (spread(t) == spread ? peak : field(t).peak()))
        .working(WorkingStrain.bending(1.0).times(field.working()).value())
        .bands(
            new ClosedForm.Band(0.97 / (1.0 + shear), 1.0 + 0.8 * square),
            new ClosedForm.Band(0.93, 1.03 + 1.2 * square))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(LEVY)
        .respond(grade, asked, run, reservations(relative));
  }

  /** Side of the patch over the width as the wall spreads it for the strain; 1 under pressure. */
  private double spread(double t) {
    if (load instanceof Load.Patch patch) {
      double round = Math.sqrt(Math.PI);
      double side = round * Spread.radius(patch.side().m() / round, t);
      return Math.min(1.0, side / width.m());
    }
    return 1.0;
  }

  private RectangularField field(double t) {
    boolean clamped = rim == CircularPlate.Rim.CLAMPED;
    double ratio = length.ratioTo(width);
    return load instanceof Load.Patch
        ? RectangularField.patched(ratio, clamped, spread(t))
        : RectangularField.pressed(ratio, clamped);
  }

  private double travel(RectangularField strained) {
    if (load instanceof Load.Patch patch) {
      boolean clamped = rim == CircularPlate.Rim.CLAMPED;
      double side = patch.side().ratioTo(width);
      return RectangularField.patched(length.ratioTo(width), clamped, side).travel();
    }
    return strained.travel();
  }

  private Checks reservations(double relative) {
    Checks checks = Checks.of(NAME, LEVY);
    checks.check("travel / wall", 0.0, 0.5, relative);
    checks.check("wall / width", 0.0, 0.1, wall.ratioTo(width));
    return checks;
  }

  @Override
  public List<Lever<RectangularPlate>> levers() {
    return List.of(WALL, WIDTH);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(width.times(length));
  }

  @Override
  public Feature thinnest() {
    boolean holdsAir = load instanceof Load.Pressure;
    return new Feature(holdsAir ? Feature.Kind.AIRTIGHT_WALL : Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return (rim == CircularPlate.Rim.CLAMPED ? "clamped" : "supported")
        + " plate "
        + width
        + " by "
        + length
        + ", wall "
        + wall
        + ", "
        + load;
  }
}
