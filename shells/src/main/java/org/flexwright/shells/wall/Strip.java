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
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A flat strip in bending, wide enough that it keeps its width.
 *
 * <p>Formula: F = c E' I u/L^3, I = B t^3/12, E' = E/(1 - nu^2), peak strain s t u/L^2; cantilever
 * (load at the free end) c = 3, s = 3/2; guided (the moving end does not turn) c = 12, s = 3; both
 * ends built in, load across the middle, c = 192, s = 12. Symbols: L length, B width, t wall, u
 * travel of the loaded line (m).
 *
 * <p>Range: t/L to 0.1 of the bending length (shear is left out: 2 % there), travel to 0.15 L for
 * the cantilever and the guided strip; built in at both ends the strip stretches, which stiffens it
 * from u/t 0.3 on. A strip narrower than its length is softer by down to 1 - nu^2, which the band
 * then holds. Caveats outside. Source: Timoshenko, Strength of Materials (from memory). Built axis
 * up the length stands upright and the strain pulls layers apart; lying, it does not.
 *
 * <p>JShell: {@code Strip.of(Strip.Ends.GUIDED, mm(20), mm(30), mm(1.2))}
 *
 * @param ends how it is held
 * @param length free length
 * @param width width
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record Strip(Ends ends, Length length, Length width, Length wall, BuildDirection build)
    implements Part<Strip> {

  /** How a strip is held. */
  public enum Ends {
    /** One end built in, the other free and loaded. */
    CANTILEVER(3.0, 1.5, 1.0),
    /** One end built in, the other moved without turning. */
    GUIDED(12.0, 3.0, 0.5),
    /** Both ends built in, loaded across the middle. */
    BUILT_IN(192.0, 12.0, 0.25);

    private final double stiffness;
    private final double strain;
    private final double bending;

    Ends(double stiffness, double strain, double bending) {
      this.stiffness = stiffness;
      this.strain = strain;
      this.bending = bending;
    }
  }

  /** The wall thickness. */
  public static final Lever<Strip> WALL = Lever.of("wall", Strip::wall, Strip::wall);

  /** The length. */
  public static final Lever<Strip> LENGTH = Lever.of("length", Strip::length, Strip::length);

  private static final String NAME = "strip";
  private static final Source BEAM =
      Source.memory("Timoshenko, Strength of Materials: deflection of beams");

  /**
   * Refuses a strip that makes no sense.
   *
   * @param ends how it is held
   * @param length free length
   * @param width width
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall is not
   *     below the length
   */
  public Strip {
    Require.positive("length", length.m(), "m");
    Require.positive("width", width.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < length.m(),
        "wall",
        wall,
        () -> "below the length, " + length,
        "that is a block");
  }

  /**
   * A strip, lying flat in the printer.
   *
   * @param ends how it is held
   * @param length free length
   * @param width width
   * @param wall thickness
   * @return the strip
   */
  public static Strip of(Ends ends, Length length, Length width, Length wall) {
    return new Strip(ends, length, width, wall, BuildDirection.AXIS_LYING);
  }

  /**
   * This strip with another length.
   *
   * @param of the length
   * @return the new strip
   */
  public Strip length(Length of) {
    return new Strip(ends, of, width, wall, build);
  }

  /**
   * This strip with another wall.
   *
   * @param of the wall
   * @return the new strip
   */
  public Strip wall(Length of) {
    return new Strip(ends, length, width, of, build);
  }

  /**
   * This strip built another way.
   *
   * @param of how it stands in the printer
   * @return the new strip
   */
  public Strip build(BuildDirection of) {
    return new Strip(ends, length, width, wall, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    double l = length.m();
    double shape = ends.stiffness * width.m() / (12.0 * plane * l * l * l);
    double working = WorkingStrain.bending(1.0).linearMoment().planeStrain().value();
    double low = width.m() < l ? plane : 0.97;
    return ClosedForm.of(NAME, wall)
        .spring(t -> shape * t * t * t)
        .strainSlope(t -> ends.strain * t / (l * l))
        .working(working)
        .bands(new ClosedForm.Band(low, 1.0), new ClosedForm.Band(0.97, 1.03))
        .crossesLayers(build == BuildDirection.AXIS_UP)
        .sources(BEAM)
        .respond(grade, load, run, reservations(load));
  }

  private Checks reservations(LoadCase load) {
    Checks checks = Checks.of(NAME, BEAM);
    checks.check("wall / bending length", 0.0, 0.1, wall.m() / (ends.bending * length.m()));
    if (width.m() < length.m()) {
      checks.note("narrower than long, so its width gives way: see the low end");
    }
    if (load instanceof LoadCase.ToTravel to) {
      double travel = to.travel().m();
      if (ends == Ends.BUILT_IN) {
        checks.check("travel / wall", 0.0, 0.3, travel / wall.m());
      } else {
        checks.check("travel / length", 0.0, 0.15, travel / length.m());
      }
    }
    return checks;
  }

  @Override
  public List<Lever<Strip>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(width.times(length));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    String held =
        switch (ends) {
          case CANTILEVER -> "cantilever";
          case GUIDED -> "guided";
          case BUILT_IN -> "built-in";
        };
    return held + " strip, length " + length + ", width " + width + ", wall " + wall;
  }
}
