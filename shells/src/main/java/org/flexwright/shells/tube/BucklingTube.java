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
 * A tube pressed along its axis until its wall buckles.
 *
 * <p>Formula: F = 2 pi R t E u/L up to the stress sqrt(g) s, s = E t/[R sqrt(3 (1 - nu^2))], g = 1
 * - 0.901 (1 - exp(-sqrt(R/t)/16)). Real tubes buckle between g s, the lower bound of tests, and s;
 * the nominal is the geometric middle of the two and the band runs to both. To be safe take the low
 * end. The peak tensile strain is the hoop strain nu u/L. Symbols: R mean radius, t wall, L length,
 * u shortening (m).
 *
 * <p>Range: R/t 10 to 1500; L^2 sqrt(1 - nu^2)/(R t) from 3, shorter ones are stronger; L/R below
 * pi/sqrt(2 e), e the strain at buckling: longer ones bow as a column first. Asked for a travel: up
 * to g s, from where on it may have buckled already. Caveats outside.
 *
 * <p>Source: Timoshenko and Gere, Theory of Elastic Stability, for s; NASA SP-8007 for g (both from
 * memory). Built axis up, the hoop strain lies in the layers.
 *
 * <p>JShell: {@code BucklingTube.of(mm(20), mm(30), mm(0.6)).respond(grade, LoadCase.toLimit())}
 *
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record BucklingTube(Length outside, Length length, Length wall, BuildDirection build)
    implements Part<BucklingTube> {

  /** The wall thickness; the outside stays. */
  public static final Lever<BucklingTube> WALL =
      Lever.of("wall", BucklingTube::wall, BucklingTube::wall);

  /** The length. */
  public static final Lever<BucklingTube> LENGTH =
      Lever.of("length", BucklingTube::length, BucklingTube::length);

  private static final String NAME = "tube pressed along its axis";
  private static final Source CLASSICAL =
      Source.memory("Timoshenko and Gere, Theory of Elastic Stability: cylinder under axial load");
  private static final Source TESTS =
      Source.memory("NASA SP-8007: buckling of thin-walled circular cylinders");

  /**
   * Refuses a tube that makes no sense.
   *
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public BucklingTube {
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
  public static BucklingTube of(Length outside, Length length, Length wall) {
    return new BucklingTube(outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another length.
   *
   * @param of the length
   * @return the new tube
   */
  public BucklingTube length(Length of) {
    return new BucklingTube(outside, of, wall, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public BucklingTube wall(Length of) {
    return new BucklingTube(outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public BucklingTube build(BuildDirection of) {
    return new BucklingTube(outside, length, wall, of);
  }

  /** The lower bound of tests over the classical stress. */
  static double knockDown(double slender) {
    return 1.0 + 0.901 * Math.expm1(-Math.sqrt(1.0 / slender) / 16.0);
  }

  /** Classical strain at buckling. */
  static double classical(double slender, double nu) {
    return slender / Math.sqrt(3.0 * (1.0 - nu * nu));
  }

  private double travel(double t, double nu) {
    double slender = t / TubeWall.mean(outside, t);
    return length.m() * Math.sqrt(knockDown(slender)) * classical(slender, nu);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double mean = TubeWall.mean(outside, wall.m());
    double slender = wall.m() / mean;
    double half = Math.sqrt(knockDown(slender));
    double most = travel(wall.m(), nu);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .spring(t -> 2.0 * Math.PI * TubeWall.mean(outside, t) * t / length.m())
            .strainSlope(t -> nu / length.m())
            .working(1.0 / nu)
            .limit(t -> travel(t, nu))
            .until(t -> travel(t, nu), "the wall buckles");
    Checks checks = Checks.of(NAME, TESTS);
    checks.check("mean radius / wall", 10.0, 1500.0, 1.0 / slender);
    double batdorf = length.m() * length.m() * Math.sqrt(1.0 - nu * nu) / (mean * wall.m());
    checks.check("L^2 sqrt(1 - nu^2)/(R t)", 3.0, Double.POSITIVE_INFINITY, batdorf);
    double column = Math.PI / Math.sqrt(2.0 * most / length.m());
    checks.check("length / length that bows", 0.0, 1.0, length.m() / mean / column);
    boolean toLimit = load instanceof LoadCase.ToLimit;
    if (!toLimit) {
      checks.check("travel / travel at buckling", 0.0, half, form.end(load) / most);
    }
    ClosedForm.Band band =
        toLimit ? new ClosedForm.Band(half, 1.0 / half) : new ClosedForm.Band(0.97, 1.03);
    return form.bands(band, band)
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(CLASSICAL, TESTS)
        .respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<BucklingTube>> levers() {
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
    return "tube pressed along its axis"
        + ", outside "
        + outside
        + ", length "
        + length
        + ", wall "
        + wall;
  }
}
