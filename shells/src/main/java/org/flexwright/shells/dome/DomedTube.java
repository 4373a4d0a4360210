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
 * A tube closed by hemispheres of the same wall, under inner pressure and small strain.
 *
 * <p>Formula: away from the ends the radius grows by w = (1 - nu/2) p R^2/(E t). Tube and dome
 * would grow apart by p R^2/(2 E t); the edge shear p/(8 b), b = [3 (1 - nu^2)]^(1/4)/sqrt(R t),
 * closes the gap without a moment. Along the tube, at b x: hoop stress p R/t [1 - e^(-bx) cos(bx)/4
 * + nu B], axial stress at the faces p R/t [1/2 + B], B = 3/(4 sqrt(3 (1 - nu^2))) e^(-bx) sin(bx).
 * Largest at nu 0.3: 1.0314 and 0.6465. Peak strain: the largest hoop or axial strain of a face.
 *
 * <p>Symbols: p pressure, R radius of the middle of the wall, t wall (m).
 *
 * <p>Band 0.95 to 1.05. Range: t/R to 0.1, length from 6/b (the ends do not feel one another), hoop
 * strain to 0.1 (beyond, ask a balloon tube in the grade's law). Caveats outside. Source:
 * Timoshenko and Woinowsky-Krieger 1959 (from memory, checked). Built axis up, the hoop strain lies
 * in the layers.
 *
 * <p>JShell: {@code DomedTube.of(mm(20), mm(60), mm(1)).respond(grade, LoadCase.toTravel(mm(0.3)))}
 *
 * @param outside outer diameter
 * @param length length of the tube between the domes
 * @param wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record DomedTube(Length outside, Length length, Length wall, BuildDirection build)
    implements Part<DomedTube> {

  /** The wall thickness; the outside stays. */
  public static final Lever<DomedTube> WALL = Lever.of("wall", DomedTube::wall, DomedTube::wall);

  private static final String NAME = "tube with domed ends";
  private static final int POINTS = 256;
  private static final double FARTHEST = 6.0;
  private static final Source JUNCTION =
      Source.memory("Timoshenko and Woinowsky-Krieger 1959: pressure vessel with domed ends");

  /**
   * Refuses a tube that makes no sense.
   *
   * @param outside outer diameter
   * @param length length of the tube between the domes
   * @param wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public DomedTube {
    Require.positive("outside", outside.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "nothing would be left to inflate");
  }

  /**
   * A tube built axis up.
   *
   * @param outside outer diameter
   * @param length length of the tube between the domes
   * @param wall thickness
   * @return the tube
   */
  public static DomedTube of(Length outside, Length length, Length wall) {
    return new DomedTube(outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public DomedTube wall(Length of) {
    return new DomedTube(outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public DomedTube build(BuildDirection of) {
    return new DomedTube(outside, length, wall, of);
  }

  private double mean(double t) {
    return 0.5 * (outside.m() - t);
  }

  private static double bend(double nu, double x) {
    return 0.75 / Math.sqrt(3.0 * (1.0 - nu * nu)) * Math.exp(-x) * Math.sin(x);
  }

  private static double hoop(double nu, double x) {
    return 1.0 - 0.25 * Math.exp(-x) * Math.cos(x) + nu * bend(nu, x);
  }

  private static double axial(double nu, double x) {
    return 0.5 + bend(nu, x);
  }

  /** The largest axial stress of a face over p R/t. */
  static double axialPeak(double nu) {
    return 0.5 + bend(nu, 0.25 * Math.PI);
  }

  /** The largest hoop stress of a face over p R/t. */
  static double hoopPeak(double nu) {
    double most = 0.0;
    for (int i = 0; i <= POINTS; i++) {
      most = Math.max(most, hoop(nu, FARTHEST * i / POINTS));
    }
    return most;
  }

  /** The largest strain of a face over p R/(E t). */
  static double strainPeak(double nu) {
    double most = 0.0;
    for (int i = 0; i <= POINTS; i++) {
      double x = FARTHEST * i / POINTS;
      double h = hoop(nu, x);
      double a = axial(nu, x);
      most = Math.max(most, Math.max(h - nu * a, a - nu * h));
    }
    return most;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double soft = 1.0 - 0.5 * nu;
    double peak = strainPeak(nu) / soft; // over w/R
    // plane strain along the tube: the equivalent strain over the hoop strain
    double equivalent = Math.sqrt(0.75) / (1.0 - nu * nu) / peak * soft;
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.PRESSURE, (t, w) -> t * w / (soft * mean(t) * mean(t)))
            .strainSlope(t -> peak / mean(t))
            .working(Math.min(1.2, equivalent))
            .bands(new ClosedForm.Band(0.95, 1.05), new ClosedForm.Band(0.95, 1.05))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(JUNCTION);
    double mean = mean(wall.m());
    double decay = Math.sqrt(mean * wall.m()) / Math.pow(3.0 * (1.0 - nu * nu), 0.25);
    Checks checks = Checks.of(NAME, JUNCTION);
    checks.check("wall / mean radius", 0.0, 0.1, wall.m() / mean);
    checks.check("length / decay length", FARTHEST, Double.POSITIVE_INFINITY, length.m() / decay);
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<DomedTube>> levers() {
    return List.of(WALL);
  }

  @Override
  public Volume printedVolume() {
    double mean = mean(wall.m());
    return Volume.m3(2.0 * Math.PI * mean * (length.m() + 2.0 * mean) * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "domed tube, outside " + outside + ", length " + length + ", wall " + wall;
  }
}
