package org.flexwright.shells.tube;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A long tube pinched in its middle by two opposite points, between finger and thumb. The travel is
 * what the diameter loses.
 *
 * <p>Formula: F = 1.245/2 E t^2.5 u/[R^1.5 (1 - nu^2)^0.75]; peak strain 0.61 (u/R) (t/R)^0.365 on
 * the inner face under the point, for a patch of load as wide as the wall. Symbols: R mean radius,
 * t wall, u travel (m).
 *
 * <p>Band: Sanders shell theory in double Fourier series gives 0.998 to 1.07 of it from R/t 100 to
 * 10. The strain under a true point is infinite: patches of half to twice the wall give 1.24 to
 * 0.77 of it, and the band runs from 0.75 to 1.3. Range: t/R 0.01 to 0.1; u to the wall (each side
 * half of it); length from 4 R sqrt(R/t): shorter tubes are softer with free ends and up to 4 times
 * stiffer with round ends, which is not in the band. Caveats outside.
 *
 * <p>Source: derived, Sanders shell by Fourier series. Built axis up, the strain lies in the
 * layers; axis lying, it may pull them apart.
 *
 * <p>JShell: {@code PinchedTube.of(mm(20), mm(200), mm(1)).respond(grade,
 * LoadCase.toTravel(mm(1)))}
 *
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record PinchedTube(Length outside, Length length, Length wall, BuildDirection build)
    implements Part<PinchedTube> {

  /** The wall thickness; the outside stays. */
  public static final Lever<PinchedTube> WALL =
      Lever.of("wall", PinchedTube::wall, PinchedTube::wall);

  /** The length. */
  public static final Lever<PinchedTube> LENGTH =
      Lever.of("length", PinchedTube::length, PinchedTube::length);

  private static final String NAME = "pinched tube";
  private static final Source SERIES =
      Source.derived("Sanders shell, long, double Fourier series of the two loads");
  private static final double COEFFICIENT = 1.245;

  /**
   * Refuses a tube that makes no sense.
   *
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public PinchedTube {
    TubeWall.require(outside, length, wall);
  }

  /**
   * A tube, built axis up.
   *
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @return the tube
   */
  public static PinchedTube of(Length outside, Length length, Length wall) {
    return new PinchedTube(outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another length.
   *
   * @param of the length
   * @return the new tube
   */
  public PinchedTube length(Length of) {
    return new PinchedTube(outside, of, wall, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public PinchedTube wall(Length of) {
    return new PinchedTube(outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public PinchedTube build(BuildDirection of) {
    return new PinchedTube(outside, length, wall, of);
  }

  private double stiffnessOverModulus(double t, double plane) {
    double mean = TubeWall.mean(outside, t);
    return 0.5 * COEFFICIENT * Math.pow(t, 2.5) / (Math.pow(mean, 1.5) * Math.pow(plane, 0.75));
  }

  private double strainPerTravel(double t) {
    double mean = TubeWall.mean(outside, t);
    return 0.61 / mean * Math.pow(t / mean, 0.365);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    double mean = TubeWall.mean(outside, wall.m());
    double slender = wall.m() / mean;
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .spring(t -> stiffnessOverModulus(t, plane))
            .strainSlope(this::strainPerTravel)
            .working(0.735 * Math.pow(slender, 0.44));
    Checks checks = Checks.of(NAME, SERIES);
    checks.check("wall / mean radius", 0.01, 0.1, slender);
    checks.check("travel / wall", 0.0, 1.0, form.end(load) / wall.m());
    double reach = length.m() / (mean * Math.sqrt(1.0 / slender));
    checks.check("length / (R sqrt(R/t))", 4.0, Double.POSITIVE_INFINITY, reach);
    return form.bands(new ClosedForm.Band(0.98, 1.08), new ClosedForm.Band(0.75, 1.3))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(SERIES)
        .respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<PinchedTube>> levers() {
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
    return "pinched tube" + ", outside " + outside + ", length " + length + ", wall " + wall;
  }
}
