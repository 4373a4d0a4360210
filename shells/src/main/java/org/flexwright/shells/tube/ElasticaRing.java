package org.flexwright.shells.tube;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
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
 * A ring or tube bent far across its axis: squeezed between flat plates or by two bars, or pulled
 * by two bars. The travel is what the diameter along the load loses or gains. For small travel it
 * is the {@link Ring}.
 *
 * <p>Formula: exact inextensible elastica p'' = -(P R^2/2 E' I) sin p, I = L t^3/12, E' = E/(1 -
 * nu^2). Between plates the top lies flat from H/D = 0.71777 on; from there P H^2 = 5.742160 E' I
 * whatever R. The load is divided by the thick-ring factor of the {@link Ring} (1.03 at t/R 0.1,
 * 1.11 at 0.22). Peak strain t/2 times the largest change of curvature, under the load first, at
 * the sides later. Symbols: R mean radius, D = 2 R, H height of the middle line, t wall, L length
 * (m), p angle of the tangent (rad).
 *
 * <p>Band: load 0.97 to 1.01 times that factor, since it is known for small travel only; strain
 * 0.85 to 1.15 + t/(2 R). Range: t/R to 0.2, L from 2 R for plane strain; a shorter ring is softer
 * by down to 1 - nu^2, which the band then holds. Caveats outside. The path ends where the walls
 * touch, or where a pulled ring is nearly straight, P R^2/(E' I) about 120.
 *
 * <p>Source: Frisch-Fay 1962, Flexible Bars (from memory, solved here). Built axis up, the strain
 * lies in the layers; axis lying, it pulls them apart at the sides.
 *
 * <p>JShell: {@code ElasticaRing.of(ElasticaRing.Way.PLATES, mm(20), mm(40), mm(0.8))}
 *
 * @param way how it is loaded
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record ElasticaRing(
    Way way, Length outside, Length length, Length wall, BuildDirection build)
    implements Part<ElasticaRing> {

  /** How a ring is loaded. */
  public enum Way {
    /** Squeezed between flat, slippery plates. */
    PLATES,
    /** Squeezed by two bars. */
    BARS,
    /** Pulled from inside by two bars. */
    PULL
  }

  /** The wall thickness; the outside stays. */
  public static final Lever<ElasticaRing> WALL =
      Lever.of("wall", ElasticaRing::wall, ElasticaRing::wall);

  /** The length. */
  public static final Lever<ElasticaRing> LENGTH =
      Lever.of("length", ElasticaRing::length, ElasticaRing::length);

  private static final String NAME = "ring bent far";
  private static final Source ELASTICA =
      Source.memory("Frisch-Fay 1962, Flexible Bars: rings, solved anew");
  private static final Source THICK =
      Source.memory("Winkler curved beam with shear, as tabulated by Roark");

  /**
   * Refuses a ring that makes no sense.
   *
   * @param way how it is loaded
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public ElasticaRing {
    TubeWall.require(outside, length, wall);
  }

  /**
   * A ring, built axis up.
   *
   * @param way how it is loaded
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness
   * @return the ring
   */
  public static ElasticaRing of(Way way, Length outside, Length length, Length wall) {
    return new ElasticaRing(way, outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This ring with another length.
   *
   * @param of the length
   * @return the new ring
   */
  public ElasticaRing length(Length of) {
    return new ElasticaRing(way, outside, of, wall, build);
  }

  /**
   * This ring with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new ring
   */
  public ElasticaRing wall(Length of) {
    return new ElasticaRing(way, outside, length, of, build);
  }

  /**
   * This ring built another way.
   *
   * @param of how it stands in the printer
   * @return the new ring
   */
  public ElasticaRing build(BuildDirection of) {
    return new ElasticaRing(way, outside, length, wall, of);
  }

  private double mean(double t) {
    return TubeWall.mean(outside, t);
  }

  /** The largest travel: walls touch, or a pulled ring is nearly straight. */
  private double farthest(double t) {
    double mean = mean(t);
    return way == Way.PULL ? 2.0 * mean * RingShape.FARTHEST_PULL : 2.0 * mean - t;
  }

  private RingShape shape(double t, double travel) {
    double loss = Math.min(travel, farthest(t)) / (2.0 * mean(t));
    return switch (way) {
      case PLATES -> RingShape.between(loss);
      case BARS -> RingShape.pushed(loss);
      case PULL -> RingShape.pulled(loss);
    };
  }

  private double loadOverModulus(double t, double travel, double nu) {
    double mean = mean(t);
    double stiff = length.m() * t * t * t / (12.0 * (1.0 - nu * nu) * mean * mean);
    double load = Math.abs(shape(t, travel).load());
    return stiff * load / Ring.overThin(mean, t, nu);
  }

  private double strain(double t, double travel) {
    return 0.5 * t / mean(t) * shape(t, travel).bend();
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double t = wall.m();
    double slender = t / mean(t);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.FORCE, (s, u) -> loadOverModulus(s, u, nu))
            .strain(this::strain)
            .until(
                this::farthest,
                way == Way.PULL ? "the ring is pulled nearly straight" : "the walls touch");
    double share = shape(t, form.end(load)).working();
    double low = length.m() < 2.0 * mean(t) ? 1.0 - nu * nu : 1.0;
    double high = 1.01 * Math.max(1.0 + 0.5 * slender * slender, Ring.overThin(mean(t), t, nu));
    return form.working(WorkingStrain.bending(1.0).planeStrain().times(share).value())
        .bands(
            new ClosedForm.Band(0.97 * low, high), new ClosedForm.Band(0.85, 1.15 + 0.5 * slender))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(ELASTICA, THICK)
        .respond(grade, load, run, reservations());
  }

  private Checks reservations() {
    Checks checks = Checks.of(NAME, THICK);
    double mean = mean(wall.m());
    checks.check("wall / mean radius", 0.0, 0.2, wall.m() / mean);
    if (length.m() < 2.0 * mean) {
      checks.note("shorter than its diameter, so its ends soften it: see the low end");
    }
    return checks;
  }

  @Override
  public List<Lever<ElasticaRing>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return TubeWall.volume(outside, length, wall);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    String held =
        switch (way) {
          case PLATES -> "between plates";
          case BARS -> "between bars";
          case PULL -> "pulled";
        };
    return "ring " + held + ", outside " + outside + ", length " + length + ", wall " + wall;
  }
}
