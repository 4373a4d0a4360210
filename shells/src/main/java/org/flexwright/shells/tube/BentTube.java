package org.flexwright.shells.tube;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
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
 * A long round tube bent by moments at its ends. It flattens, softens and kinks.
 *
 * <p>Formula, k = c R^2 sqrt(1 - nu^2)/t with c = angle/length: flattening z = k^2, M = pi E R t^2/
 * sqrt(1 - nu^2) k (1 - 3 z/2). The moment would peak at z = 2/9 with 0.98731 E R t^2/sqrt(1 -
 * nu^2); a little before, at z = 0.145, the pressed side, flattened to a radius R/(1 - 3 z),
 * reaches its classical buckling stress and kinks: that is the limit here, 5 % below. Peak strain c
 * (R (1 - z) + t/2) on the outside of the bend. Symbols: R mean radius, t wall (m), E secant
 * modulus.
 *
 * <p>Band: the section solved exactly (inextensible, any deflection) lies 1.6 % below at the limit;
 * imperfect walls kink earlier, the low end by the bending knock-down 1 - 0.731 (1 -
 * exp(-sqrt(R/t)/ 16)) on the local stress; the high end is the peak of the moment. Range: t/R
 * 0.005 to 0.1, L from 4 R sqrt(R/t): shorter tubes are kept round by their ends and carry up to
 * 1.94 times, which the band then holds. Caveats outside. ToAngle ends at the kink.
 *
 * <p>Source: Brazier 1927, Proc. R. Soc. A 116; Calladine 1983, Theory of Shell Structures, for the
 * kink; NASA SP-8007 (all from memory, derived anew). Built axis up, as it starts, the strain pulls
 * layers apart; lying it does not.
 *
 * <p>JShell: {@code BentTube.of(mm(20), mm(200), mm(1)).respond(grade, LoadCase.toLimit())}
 *
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record BentTube(Length outside, Length length, Length wall, BuildDirection build)
    implements Part<BentTube> {

  /** The wall thickness; the outside stays. */
  public static final Lever<BentTube> WALL = Lever.of("wall", BentTube::wall, BentTube::wall);

  /** The length. */
  public static final Lever<BentTube> LENGTH =
      Lever.of("length", BentTube::length, BentTube::length);

  private static final String NAME = "bent tube";
  private static final Source BRAZIER =
      Source.memory("Brazier 1927, Proc. R. Soc. A 116: flexure of thin cylindrical shells");
  private static final Source KINKS =
      Source.memory("Calladine 1983, Theory of Shell Structures; NASA SP-8007 for the knock-down");
  private static final double ROUND = 8.0 / (3.0 * Math.PI); // int |y|^3/int y^2 round the tube
  private static final double KINK = kink(1.0);

  /**
   * Refuses a tube that makes no sense.
   *
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public BentTube {
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
  public static BentTube of(Length outside, Length length, Length wall) {
    return new BentTube(outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another length.
   *
   * @param of the length
   * @return the new tube
   */
  public BentTube length(Length of) {
    return new BentTube(outside, of, wall, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public BentTube wall(Length of) {
    return new BentTube(outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public BentTube build(BuildDirection of) {
    return new BentTube(outside, length, wall, of);
  }

  /** Moment over pi E R t^2/sqrt(1 - nu^2) at a curvature. */
  static double moment(double curvature) {
    return curvature * (1.0 - 1.5 * curvature * curvature);
  }

  /** The curvature at which the pressed side kinks, its buckling stress knocked down. */
  static double kink(double knockDown) {
    return new BrentSolver(1e-14, 1e-14)
        .solve(
            100,
            k -> k * (1.0 - k * k) - knockDown * (1.0 - 3.0 * k * k) / Math.sqrt(3.0),
            0.0,
            Math.sqrt(1.0 / 3.0));
  }

  static double knockDown(double slender) {
    return 1.0 + 0.731 * Math.expm1(-Math.sqrt(1.0 / slender) / 16.0);
  }

  /** Curvature k for each radian of the ends. */
  private double scale(double t, double plane) {
    double mean = TubeWall.mean(outside, t);
    return mean * mean * Math.sqrt(plane) / (t * length.m());
  }

  private double momentOverModulus(double t, double angle, double plane) {
    double mean = TubeWall.mean(outside, t);
    double k = Math.min(scale(t, plane) * angle, KINK);
    return Math.PI * mean * t * t / Math.sqrt(plane) * moment(k);
  }

  private double strain(double t, double angle, double plane) {
    double k = Math.min(scale(t, plane) * angle, KINK);
    double arm = TubeWall.mean(outside, t) * (1.0 - k * k) + 0.5 * t;
    return angle / length.m() * arm;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plane = 1.0 - grade.poisson() * grade.poisson();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .turned()
            .load(Channel.MOMENT, (t, a) -> momentOverModulus(t, a, plane))
            .strain((t, a) -> strain(t, a, plane))
            .limit(t -> KINK / scale(t, plane))
            .until(t -> KINK / scale(t, plane), "the tube kinks");
    double mean = TubeWall.mean(outside, wall.m());
    double slender = wall.m() / mean;
    double early = kink(knockDown(slender));
    double k = scale(wall.m(), plane) * form.end(load);
    boolean toLimit = load instanceof LoadCase.ToLimit;
    Checks checks = Checks.of(NAME, KINKS);
    checks.check("wall / mean radius", 0.005, 0.1, slender);
    double reach = length.m() / (mean * Math.sqrt(1.0 / slender));
    checks.check("length / (R sqrt(R/t))", 4.0, Double.POSITIVE_INFINITY, reach);
    if (!toLimit) {
      checks.check("angle / kinking angle", 0.0, early / KINK, k / KINK);
    }
    double least = toLimit ? moment(early) / moment(KINK) : 1.0;
    double round = reach < 4.0 ? (toLimit ? 1.94 : 1.3) : toLimit ? 1.055 : 1.01;
    return form.working(ROUND * mean / (mean + 0.5 * wall.m()))
        .bands(new ClosedForm.Band(0.97 * least, round), new ClosedForm.Band(0.9, 1.1))
        .crossesLayers(build == BuildDirection.AXIS_UP)
        .sources(BRAZIER, KINKS)
        .respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<BentTube>> levers() {
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
    return "bent tube" + ", outside " + outside + ", length " + length + ", wall " + wall;
  }
}
