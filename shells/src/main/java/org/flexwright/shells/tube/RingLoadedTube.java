package org.flexwright.shells.tube;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
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
 * A tube opened by a ring of radial load at its end or in the middle, or its end turned by a ring
 * of moments. How far a stiff end or a ring reaches: about three times the {@link #decayLength}.
 *
 * <p>Formula, b = (3 (1 - nu^2))^(1/4)/sqrt(R t): end F = 2 pi R E t w/(2 R^2 b), middle F = 2 pi R
 * 2 E t w/(R^2 b), moments M = 2 pi R b D a. F and M are summed round the tube. Peak strain: end
 * w/R (hoop), middle sqrt(3 (1 - nu^2)) w/R (along, inner face), turned t b a/2. Symbols: R mean
 * radius, t wall, w growth of the radius (m), a turn of the end (rad), D = E t^3/[12 (1 - nu^2)].
 *
 * <p>Band: 1/(1 + t/R) for shear through the wall. Range: t/R to 0.1, slope b w or a to 0.2, length
 * from three decay lengths on each side of the load; a shorter tube is softer, which the band then
 * holds. Caveats outside. Pressed inwards the loads are the same and the tensile strain is less.
 *
 * <p>Source: Timoshenko, Strength of Materials: cylindrical shell as a beam on elastic foundation
 * (from memory, checked). Built axis up, the strain along the axis pulls layers apart (middle,
 * turned).
 *
 * <p>JShell: {@code RingLoadedTube.of(RingLoadedTube.Place.END, mm(20), mm(40), mm(1))}
 *
 * @param place where the ring of load is
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record RingLoadedTube(
    Place place, Length outside, Length length, Length wall, BuildDirection build)
    implements Part<RingLoadedTube> {

  /** Where a ring of load is. */
  public enum Place {
    /** At a free end. */
    END,
    /** In the middle of the length. */
    MIDDLE
  }

  /** The wall thickness; the outside stays. */
  public static final Lever<RingLoadedTube> WALL =
      Lever.of("wall", RingLoadedTube::wall, RingLoadedTube::wall);

  /** The length. */
  public static final Lever<RingLoadedTube> LENGTH =
      Lever.of("length", RingLoadedTube::length, RingLoadedTube::length);

  private static final String NAME = "tube loaded by a ring";
  private static final Source FOUNDATION =
      Source.memory("Timoshenko, Strength of Materials: long cylindrical shell, axisymmetric load");
  // energy-weighted equivalent strain over the peak strain: hoop uniaxial, bending in plane strain,
  // integrated along the tube and through the wall for nu 0.5
  private static final double END_SHARE = 0.6812;
  private static final double MIDDLE_SHARE = 0.6468;
  private static final double TURNED_SHARE = 0.7324;

  /**
   * Refuses a tube that makes no sense.
   *
   * @param place where the ring of load is
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public RingLoadedTube {
    TubeWall.require(outside, length, wall);
  }

  /**
   * A tube, built axis up.
   *
   * @param place where the ring of load is
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @return the tube
   */
  public static RingLoadedTube of(Place place, Length outside, Length length, Length wall) {
    return new RingLoadedTube(place, outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another length.
   *
   * @param of the length
   * @return the new tube
   */
  public RingLoadedTube length(Length of) {
    return new RingLoadedTube(place, outside, of, wall, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public RingLoadedTube wall(Length of) {
    return new RingLoadedTube(place, outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public RingLoadedTube build(BuildDirection of) {
    return new RingLoadedTube(place, outside, length, wall, of);
  }

  private static double beta(double mean, double t, double plane) {
    return Math.pow(3.0 * plane, 0.25) / Math.sqrt(mean * t);
  }

  /**
   * The length over which what a ring or a stiff end does falls to 1/e; after three of them it is
   * gone (5 %).
   *
   * @param grade the material, for its Poisson ratio
   * @return 1/b
   */
  public Length decayLength(Grade grade) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    return Length.m(1.0 / beta(TubeWall.mean(outside, wall.m()), wall.m(), plane));
  }

  private ClosedForm opened(double plane) {
    boolean end = place == Place.END;
    double factor = end ? 0.5 : 2.0;
    double peak = end ? 1.0 : Math.max(1.0, Math.sqrt(3.0 * plane));
    return ClosedForm.of(NAME, wall)
        .spring(
            t -> {
              double mean = TubeWall.mean(outside, t);
              return 2.0 * Math.PI * factor * t / (mean * beta(mean, t, plane));
            })
        .strainSlope(t -> peak / TubeWall.mean(outside, t))
        .working(end ? END_SHARE : MIDDLE_SHARE);
  }

  private ClosedForm turned(double plane) {
    return ClosedForm.of(NAME, wall)
        .turned()
        .load(
            Channel.MOMENT,
            (t, a) -> {
              double mean = TubeWall.mean(outside, t);
              double bending = t * t * t / (12.0 * plane);
              return 2.0 * Math.PI * mean * beta(mean, t, plane) * bending * a;
            })
        .strainSlope(t -> 0.5 * t * beta(TubeWall.mean(outside, t), t, plane))
        .working(TURNED_SHARE);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    boolean turns = load instanceof LoadCase.ToAngle && place == Place.END;
    ClosedForm form = turns ? turned(plane) : opened(plane);
    double mean = TubeWall.mean(outside, wall.m());
    double slender = wall.m() / mean;
    double decay = decayLength(grade).m();
    double long_ = length.m() / decay;
    double least = place == Place.END ? 3.0 : 6.0;
    Checks checks = Checks.of(NAME, FOUNDATION);
    checks.check("wall / mean radius", 0.0, 0.1, slender);
    checks.check("length / decay length", least, Double.POSITIVE_INFINITY, long_);
    checks.check("slope", 0.0, 0.2, turns ? form.end(load) : form.end(load) / decay);
    double low = (long_ < least ? Math.tanh(0.42 * long_) : 0.98) / (1.0 + slender);
    return form.bands(
            new ClosedForm.Band(low, 1.01), new ClosedForm.Band(0.9, long_ < least ? 1.5 : 1.1))
        .crossesLayers(
            build == BuildDirection.AXIS_UP ? turns || place == Place.MIDDLE : place == Place.END)
        .sources(FOUNDATION)
        .respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<RingLoadedTube>> levers() {
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
    return (place == Place.END ? "tube loaded at its end" : "tube loaded in the middle")
        + ", outside "
        + outside
        + ", length "
        + length
        + ", wall "
        + wall;
  }
}
