package org.flexwright.shells.tube;

import java.util.List;
import java.util.Objects;
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
import org.jspecify.annotations.Nullable;

/**
 * A tube pressed by two opposite line loads: the travel is what the mean diameter loses along the
 * load. Its outside stays when the wall changes.
 *
 * <p>Formula, plane strain: travel u = F R^3 f/(E' I), I = L t^3/12, E' = E/(1 - nu^2); thin f =
 * pi/4 - 2/pi = 0.148779. The curved beam (Winkler) corrects it: f = (t^2/12)/(e R) (k1 pi/4 - 2
 * k2^2/pi), e = R - t/ln(ro/ri), k1 = 1 - e/R + 1.2 E' e/(G R), k2 = 1 - e/R. Peak strain on the
 * inside under the load from the moment F R k2/pi. Symbols: R mean radius, t wall, L length, ro, ri
 * outer and inner radius (m), G = E/[2 (1 + nu)].
 *
 * <p>Band: the curved beam is an upper bound on the flexibility; against plane elasticity the truth
 * is stiffer by 0.5 % at t/R 0.1, 2.4 % at 0.22, 6 % at 0.35, 20 % at 0.67, so the band runs from
 * 0.99 to 1 + 0.5 (t/R)^2. Strain 0.85 to 1.15; what the line load itself dents is not in it.
 * Range: t/R to 0.5, travel to 0.1 R (the elastica ring is 6 % stiffer at 0.17 R), L from 2 R for
 * plane strain; a shorter ring is softer by down to 1 - nu^2, which the band then holds. Caveats
 * outside.
 *
 * <p>Source: Timoshenko, Strength of Materials; Roark for the thick ring (both from memory,
 * checked). Built axis up, the strain lies in the layers; axis lying, it pulls them apart at the
 * sides.
 *
 * <p>JShell: {@code Ring.outside(mm(20)).length(mm(40)).wall(mm(1.2))}
 *
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record Ring(Length outside, Length length, Length wall, BuildDirection build)
    implements Part<Ring> {

  /** The wall thickness; the outside stays. */
  public static final Lever<Ring> WALL = Lever.of("wall", Ring::wall, Ring::wall);

  /** The length. */
  public static final Lever<Ring> LENGTH = Lever.of("length", Ring::length, Ring::length);

  private static final String NAME = "ring under opposite loads";
  private static final Source THIN =
      Source.memory("Timoshenko, Strength of Materials: ring under opposite loads");
  private static final Source THICK =
      Source.memory("Winkler curved beam with shear, as tabulated by Roark");
  private static final double SHEAR = 1.2;
  static final double THIN_FLEXIBILITY = 0.25 * Math.PI - 2.0 / Math.PI;
  // int |m|^3 / int m^2 over the peak, with m = cos/2 - 1/pi along the ring
  private static final double ALONG = 0.63934;

  /**
   * Refuses a ring that makes no sense.
   *
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public Ring {
    Require.positive("outside", outside.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "a solid roller is another part");
  }

  /**
   * Starts a ring.
   *
   * @param diameter outer diameter
   * @return a draft; give the length, the wall last
   */
  public static Draft outside(Length diameter) {
    return new Draft(diameter, null);
  }

  /** A ring that is not complete yet. Immutable and thread-safe. */
  public static final class Draft {
    private final Length outside;
    private final @Nullable Length length;

    private Draft(Length outside, @Nullable Length length) {
      this.outside = outside;
      this.length = length;
    }

    /**
     * With its length.
     *
     * @param of length along the axis
     * @return the draft
     */
    public Draft length(Length of) {
      return new Draft(outside, of);
    }

    /**
     * With its wall, which completes it; built axis up.
     *
     * @param of wall thickness
     * @return the ring
     * @throws org.flexwright.InvalidInputException if the length is missing or makes no sense
     */
    public Ring wall(Length of) {
      Require.that(length != null, "length", "not given", "a length", "add length(...)");
      return new Ring(outside, Objects.requireNonNull(length), of, BuildDirection.AXIS_UP);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "draft of a ring, outside " + outside;
    }
  }

  /**
   * This ring with another length.
   *
   * @param of the length
   * @return the new ring
   */
  public Ring length(Length of) {
    return new Ring(outside, of, wall, build);
  }

  /**
   * This ring with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new ring
   */
  public Ring wall(Length of) {
    return new Ring(outside, length, of, build);
  }

  /**
   * This ring built another way.
   *
   * @param of how it stands in the printer
   * @return the new ring
   */
  public Ring build(BuildDirection of) {
    return new Ring(outside, length, wall, of);
  }

  private double mean(double t) {
    return 0.5 * (outside.m() - t);
  }

  /** Distance of the neutral line from the middle, R - t/ln(ro/ri), by its series when thin. */
  private static double neutral(double t, double mean) {
    double h = 0.5 * t / mean;
    double x = h * h;
    if (h < 0.05) {
      return mean * x / 3.0 * (1.0 + x * (4.0 / 15.0 + x * 44.0 / 315.0));
    }
    return mean - t / Math.log((mean + 0.5 * t) / (mean - 0.5 * t));
  }

  /** Flexibility number f, and k2. */
  private static double[] beam(double mean, double t, double nu) {
    double e = neutral(t, mean);
    double k2 = 1.0 - e / mean;
    double shear = SHEAR * 2.0 / (1.0 - nu) * e / mean; // E'/G = 2/(1 - nu)
    double k1 = k2 + shear;
    double sum = 0.25 * Math.PI * k1 - 2.0 * k2 * k2 / Math.PI;
    return new double[] {t * t / (12.0 * e * mean) * sum, k2};
  }

  /** Flexibility over that of the thin ring. */
  double overThin(double nu) {
    return overThin(mean(wall.m()), wall.m(), nu);
  }

  static double overThin(double mean, double t, double nu) {
    return beam(mean, t, nu)[0] / THIN_FLEXIBILITY;
  }

  private double stiffnessOverModulus(double t, double nu) {
    double slender = t / mean(t);
    double plane = 12.0 * (1.0 - nu * nu);
    return length.m() * Math.pow(slender, 3) / (plane * beam(mean(t), t, nu)[0]);
  }

  /** Strain of the inside under the load: M (rn - ri)/(E' A e ri), M = F R k2/pi. */
  private double strainPerTravel(double t, double nu) {
    double mean = mean(t);
    double e = neutral(t, mean);
    double inside = mean - 0.5 * t;
    double[] f = beam(mean, t, nu);
    double moment = mean * f[1] / Math.PI * Math.pow(t / mean, 3) / (12.0 * f[0]);
    return moment * (0.5 * t - e) / (t * e * inside);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double working = WorkingStrain.bending(1.0).planeStrain().times(ALONG).value();
    double slender = wall.m() / mean(wall.m());
    double high = 1.0 + 0.5 * slender * slender;
    double low = length.m() < 2.0 * mean(wall.m()) ? 1.0 - nu * nu : 0.99;
    return ClosedForm.of(NAME, wall)
        .spring(t -> stiffnessOverModulus(t, nu))
        .strainSlope(t -> strainPerTravel(t, nu))
        .working(working)
        .bands(new ClosedForm.Band(low, high), new ClosedForm.Band(0.85, 1.15))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(THIN, THICK)
        .respond(grade, load, run, reservations(load));
  }

  private Checks reservations(LoadCase load) {
    Checks checks = Checks.of(NAME, THICK);
    double mean = mean(wall.m());
    checks.check("wall / mean radius", 0.0, 0.5, wall.m() / mean);
    if (length.m() < 2.0 * mean) {
      checks.note("shorter than its diameter, so its ends soften it: see the low end");
    }
    if (load instanceof LoadCase.ToTravel to) {
      checks.check("travel / mean radius", 0.0, 0.1, to.travel().m() / mean);
    }
    return checks;
  }

  @Override
  public List<Lever<Ring>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return Volume.m3(2.0 * Math.PI * mean(wall.m()) * wall.m() * length.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "ring, outside " + outside + ", length " + length + ", wall " + wall + ", " + build;
  }
}
