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
 * A lip or tongue built in at one end and bent far by a force across its free end that keeps its
 * direction. For small travel it is the {@link Strip}.
 *
 * <p>Formula: exact inextensible elastica, F = f E' I/L^2, I = B t^3/12, E' = E/(1 - nu^2); with a
 * the tip angle sqrt(f) = I[1], u/L = I[sin p]/I[1], I[g] the integral of g/sqrt(2 (sin a - sin p))
 * over p from 0 to a. Peak strain t/2 times the curvature of the root, sqrt(2 f sin a)/L. Symbols:
 * L length, B width, t wall, u travel of the tip across (m).
 *
 * <p>Band: stretch and shear, left out, soften it; a beam that has both (Reissner), incompressible,
 * lies 1.2 + 0.15 f^2 times (t/L)^2 below or less: the low end. Narrower than its length it is
 * softer by down to 1 - nu^2, which the band then holds. Range: t/L to 0.1, tip to 85 degrees (u/L
 * 0.84); at 89 degrees the path ends. Caveats outside. A root in a block of its own material turns:
 * add 0.4 t to the length. Source: Bisshopp and Drucker 1945, Q. Appl. Math. 3, 272 (from memory),
 * solved here. Built axis up the length stands upright and the strain pulls layers apart.
 *
 * <p>JShell: {@code Cantilever.of(mm(20), mm(30), mm(1)).respond(grade, LoadCase.toTravel(mm(12)))}
 *
 * @param length free length
 * @param width width
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record Cantilever(Length length, Length width, Length wall, BuildDirection build)
    implements Part<Cantilever> {

  /** The wall thickness. */
  public static final Lever<Cantilever> WALL = Lever.of("wall", Cantilever::wall, Cantilever::wall);

  /** The length. */
  public static final Lever<Cantilever> LENGTH =
      Lever.of("length", Cantilever::length, Cantilever::length);

  private static final String NAME = "cantilever bent far";
  private static final Source ELASTICA =
      Source.memory("Bisshopp and Drucker 1945, Q. Appl. Math. 3, 272: large deflection");
  private static final double FARTHEST = TipElastica.ofAngle(TipElastica.MOST).travel();

  /**
   * Refuses a cantilever that makes no sense.
   *
   * @param length free length
   * @param width width
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall is not
   *     below the length
   */
  public Cantilever {
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
   * A cantilever, lying flat in the printer.
   *
   * @param length free length
   * @param width width
   * @param wall thickness
   * @return the cantilever
   */
  public static Cantilever of(Length length, Length width, Length wall) {
    return new Cantilever(length, width, wall, BuildDirection.AXIS_LYING);
  }

  /**
   * This cantilever with another length.
   *
   * @param of the length
   * @return the new cantilever
   */
  public Cantilever length(Length of) {
    return new Cantilever(of, width, wall, build);
  }

  /**
   * This cantilever with another wall.
   *
   * @param of the wall
   * @return the new cantilever
   */
  public Cantilever wall(Length of) {
    return new Cantilever(length, width, of, build);
  }

  /**
   * This cantilever built another way.
   *
   * @param of how it stands in the printer
   * @return the new cantilever
   */
  public Cantilever build(BuildDirection of) {
    return new Cantilever(length, width, wall, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    double l = length.m();
    double shape = width.m() / (12.0 * plane * l * l);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.FORCE, (t, u) -> shape * t * t * t * at(u / l).force())
            .strain((t, u) -> 0.5 * t / l * at(u / l).root())
            .until(t -> FARTHEST * l, "the tip points along the force: no force takes it farther");
    TipElastica end = at(Math.min(form.end(load) / l, FARTHEST));
    double slender = wall.ratioTo(length);
    double soft = 1.01 + (1.2 + 0.15 * end.force() * end.force()) * slender * slender;
    double low = (width.m() < l ? plane : 1.0) / soft;
    return form.working(WorkingStrain.bending(end.working()).planeStrain().value())
        .bands(new ClosedForm.Band(low, 1.01), new ClosedForm.Band(0.95, 1.05))
        .crossesLayers(build == BuildDirection.AXIS_UP)
        .sources(ELASTICA)
        .respond(grade, load, run, reservations(form.end(load) / l));
  }

  private static TipElastica at(double travel) {
    return TipElastica.ofTravel(Math.min(travel, FARTHEST));
  }

  private Checks reservations(double travel) {
    Checks checks = Checks.of(NAME, ELASTICA);
    checks.check("wall / length", 0.0, 0.1, wall.ratioTo(length));
    checks.check("travel / length", 0.0, 0.84, travel);
    if (width.m() < length.m()) {
      checks.note("narrower than long, so its width gives way: see the low end");
    }
    return checks;
  }

  @Override
  public List<Lever<Cantilever>> levers() {
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
    return "cantilever, length " + length + ", width " + width + ", wall " + wall;
  }
}
