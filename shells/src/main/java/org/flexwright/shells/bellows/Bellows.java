package org.flexwright.shells.bellows;

import java.util.List;
import java.util.Objects;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Stiffness;
import org.flexwright.quantity.Volume;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;
import org.jspecify.annotations.Nullable;

/**
 * A bellows of U convolutions pulled or pressed along its axis: quarter-circle roots and crests,
 * flat legs between them.
 *
 * <p>Formula, for one convolution: K = pi E Dm t^3 / [2 (1 - nu^2) w^3 Cf (1 + h)], peak meridional
 * strain S t e/w^2; n convolutions in series share the travel. Symbols: Dm mean diameter, w depth
 * (height of a convolution between mid-surfaces), rm = pitch/4 radius of root and crest, t wall
 * (all m), e travel of one convolution (m), C1 = 2 rm/w, C2 = [12 (1 - nu^2)]^(1/4) rm/sqrt(Dm t),
 * which is the 1.82 rm/sqrt(Dm t) of the standards at nu = 0.3; Cf and S see {@code UFactors}; h =
 * 2.4/(1 - nu) exp(-1.09 C1 - 0.455 C2 + 0.358 C1 C2) (t/w)^2 transverse shear, own fit. E is the
 * secant modulus at {@link WorkingStrain}: 9/16 of the peak strain, plane strain.
 *
 * <p>Range: C1 0.2 to 1 (parallel legs need pitch/2 at most the depth), C2 to 4, Dm/w 2.5 to 100,
 * t/w to 0.15, travel of a convolution to 0.3 w and until its flanks touch. Caveats outside; also
 * none of this holds under pressure: for thrust and squirm see {@link BellowsPressure}. The end
 * convolutions are taken as the others. Asked for an angle it answers with the moment that turns
 * one end, K Dm^2/8 a radian.
 *
 * <p>Band: the stiffness meets an independent shell computation within 0.6 % in 64 shapes (nu 0.3
 * and 0.49, Dm/w 4 and 8) and within 1.5 % at random shapes of this range. The working strain is
 * that of a straight guided strip; the meridian's own share, by two shell computations, lies
 * between 0.53 and 0.63 of the peak instead of 0.56, which a softening grade turns into up to 4 %
 * of the load. With room for shell theory in thick walls and for the end convolutions the band is
 * 0.92 to 1.05. Peak strain (bending and stretching, either direction of travel) within -6 and +10
 * % at nu 0.45 to 0.5, up to 13 % too high at 0.3; the band is 0.9 to 1.1.
 *
 * <p>Source: form after Anderson 1964 and the expansion-joint standards (from memory), factors
 * computed. Built axis up, the meridional strain pulls layers apart; axis lying, it lies mostly in
 * the layers.
 *
 * <p>JShell: {@code Bellows.convolutions(5).meanRadius(mm(15)).depth(mm(8)).pitch(mm(14)).
 * wall(mm(0.9))}
 *
 * @param count convolutions, at least 1
 * @param meanRadius radius of the middle of the convolutions, above half the depth
 * @param depth height of a convolution between mid-surfaces
 * @param pitch length of one convolution, at most twice the depth
 * @param wall wall thickness
 * @param build how it stands in the printer
 */
public record Bellows(
    int count, Length meanRadius, Length depth, Length pitch, Length wall, BuildDirection build)
    implements Part<Bellows> {

  /** The wall thickness. */
  public static final Lever<Bellows> WALL = Lever.of("wall", Bellows::wall, Bellows::wall);

  /** The depth of a convolution. */
  public static final Lever<Bellows> DEPTH = Lever.of("depth", Bellows::depth, Bellows::depth);

  /** The pitch. */
  public static final Lever<Bellows> PITCH = Lever.of("pitch", Bellows::pitch, Bellows::pitch);

  /** The mean radius. */
  public static final Lever<Bellows> MEAN_RADIUS =
      Lever.of("mean radius", Bellows::meanRadius, Bellows::meanRadius);

  private static final String NAME = "U bellows";
  private static final Source FORM =
      Source.memory("Anderson 1964; EN 13445-3 clause 14: stiffness of a U convolution");
  private static final Source COMPUTED =
      Source.derived("factors by a linear axisymmetric shell model with shear");
  private static final ClosedForm.Band STIFFNESS_BAND = new ClosedForm.Band(0.92, 1.05);
  private static final ClosedForm.Band STRAIN_BAND = new ClosedForm.Band(0.9, 1.1);
  // shear flexibility of a guided strip, 12 E'I/(5/6 G A w^2) = 2.4/(1 - nu) (t/w)^2
  private static final double SHEAR = 2.4;

  /**
   * Refuses a shape that is no bellows of U convolutions.
   *
   * @param count convolutions, at least 1
   * @param meanRadius radius of the middle of the convolutions, above half the depth
   * @param depth height of a convolution between mid-surfaces
   * @param pitch length of one convolution, at most twice the depth
   * @param wall wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the depth reaches the
   *     axis, the pitch is above twice the depth, or the wall fills the convolution
   */
  public Bellows {
    Require.atLeast("convolutions", count, 1);
    Require.positive("mean radius", meanRadius.m(), "m");
    Require.positive("depth", depth.m(), "m");
    Require.positive("pitch", pitch.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        depth.m() < 2.0 * meanRadius.m(),
        "depth",
        depth,
        () -> "below twice the mean radius, " + meanRadius.times(2.0),
        "the roots would reach the axis: take a larger mean radius");
    Require.that(
        pitch.m() <= 2.0 * depth.m() * (1.0 + 1e-12),
        "pitch",
        pitch,
        () -> "at most twice the depth, " + depth.times(2.0),
        "flat legs need root and crest to fit into the depth: more depth or less pitch");
    Require.that(
        wall.m() < 0.5 * pitch.m(),
        "wall",
        wall,
        () -> "below half the pitch, " + pitch.times(0.5),
        "the convolution would be solid: take a longer pitch");
  }

  /**
   * Starts a bellows of U convolutions.
   *
   * @param count how many, at least 1
   * @return a draft; give mean radius, depth and pitch, the wall last
   */
  public static Draft convolutions(int count) {
    return new Draft(Require.atLeast("convolutions", count, 1), null, null, null);
  }

  /**
   * Starts a bellows of omega convolutions.
   *
   * @param count how many, at least 1
   * @return a draft; give mean radius and torus radius, the wall last
   */
  public static OmegaBellows.Draft omega(int count) {
    return OmegaBellows.convolutions(count);
  }

  /** A bellows that is not complete yet. Immutable and thread-safe. */
  public static final class Draft {
    private final int count;
    private final @Nullable Length meanRadius;
    private final @Nullable Length depth;
    private final @Nullable Length pitch;

    private Draft(
        int count, @Nullable Length meanRadius, @Nullable Length depth, @Nullable Length pitch) {
      this.count = count;
      this.meanRadius = meanRadius;
      this.depth = depth;
      this.pitch = pitch;
    }

    /**
     * With its mean radius.
     *
     * @param of radius of the middle of the convolutions
     * @return the draft
     */
    public Draft meanRadius(Length of) {
      return new Draft(count, of, depth, pitch);
    }

    /**
     * With its depth.
     *
     * @param of height of a convolution between mid-surfaces
     * @return the draft
     */
    public Draft depth(Length of) {
      return new Draft(count, meanRadius, of, pitch);
    }

    /**
     * With its pitch.
     *
     * @param of length of one convolution
     * @return the draft
     */
    public Draft pitch(Length of) {
      return new Draft(count, meanRadius, depth, of);
    }

    /**
     * With its wall, which completes it; built axis up.
     *
     * @param of wall thickness
     * @return the bellows
     * @throws org.flexwright.InvalidInputException if a dimension is missing or makes no sense
     */
    public Bellows wall(Length of) {
      Require.that(
          meanRadius != null, "mean radius", "not given", "a length", "add meanRadius(...)");
      Require.that(depth != null, "depth", "not given", "a length", "add depth(...)");
      Require.that(pitch != null, "pitch", "not given", "a length", "add pitch(...)");
      return new Bellows(
          count,
          Objects.requireNonNull(meanRadius),
          Objects.requireNonNull(depth),
          Objects.requireNonNull(pitch),
          of,
          BuildDirection.AXIS_UP);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "draft of a bellows of " + count + " convolutions";
    }
  }

  /**
   * This bellows with another count of convolutions.
   *
   * @param of at least 1
   * @return the new bellows
   */
  public Bellows count(int of) {
    return new Bellows(of, meanRadius, depth, pitch, wall, build);
  }

  /**
   * This bellows with another mean radius.
   *
   * @param of the radius
   * @return the new bellows
   */
  public Bellows meanRadius(Length of) {
    return new Bellows(count, of, depth, pitch, wall, build);
  }

  /**
   * This bellows with another depth, on the same mean radius.
   *
   * @param of the depth
   * @return the new bellows
   */
  public Bellows depth(Length of) {
    return new Bellows(count, meanRadius, of, pitch, wall, build);
  }

  /**
   * This bellows with another pitch.
   *
   * @param of the pitch
   * @return the new bellows
   */
  public Bellows pitch(Length of) {
    return new Bellows(count, meanRadius, depth, of, wall, build);
  }

  /**
   * This bellows with another wall, on the same mid-surface.
   *
   * @param of the wall
   * @return the new bellows
   */
  public Bellows wall(Length of) {
    return new Bellows(count, meanRadius, depth, pitch, of, build);
  }

  /**
   * This bellows built another way.
   *
   * @param of how it stands in the printer
   * @return the new bellows
   */
  public Bellows build(BuildDirection of) {
    return new Bellows(count, meanRadius, depth, pitch, wall, of);
  }

  private double c1() {
    return 0.5 * pitch.m() / depth.m();
  }

  private double c2(double t, double poisson) {
    double root = Math.sqrt(Math.sqrt(12.0 * (1.0 - poisson * poisson)));
    return root * 0.25 * pitch.m() / Math.sqrt(2.0 * meanRadius.m() * t);
  }

  private double depthOverDiameter() {
    return 0.5 * depth.m() / meanRadius.m();
  }

  /** Cf with shear, for a wall in metres. */
  double factor(double t, double poisson) {
    double c2 = c2(t, poisson);
    double thin = UFactors.stiffness(c1(), c2, depthOverDiameter());
    double slender = t / depth.m();
    double share = Math.exp(-1.09 * c1() + c2 * (0.358 * c1() - 0.455));
    return thin * (1.0 + SHEAR / (1.0 - poisson) * share * slender * slender);
  }

  private double stiffnessOverModulus(double t, double poisson) {
    double cube = Math.pow(t / depth.m(), 3);
    double plane = 1.0 - poisson * poisson;
    return Math.PI * meanRadius.m() * cube / (plane * factor(t, poisson)) / count;
  }

  private double strainPerTravel(double t, double poisson) {
    double w = depth.m();
    return UFactors.strain(c1(), c2(t, poisson), depthOverDiameter()) * t / (w * w) / count;
  }

  /**
   * The stiffness of the whole bellows for very small travel.
   *
   * @param grade the material
   * @return force over travel at rest
   */
  public Stiffness stiffness(Grade grade) {
    double k = stiffnessOverModulus(wall.m(), grade.poisson());
    return Stiffness.newtonsPerM(grade.modulusAtRest().pa() * k);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double working = WorkingStrain.bending(1.0).linearMoment().planeStrain().value();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .alike(count)
            .bands(STIFFNESS_BAND, STRAIN_BAND)
            .crossesLayers(build == BuildDirection.AXIS_UP)
            .sources(FORM, COMPUTED);
    return Turned.of(
            load,
            form,
            meanRadius,
            t -> stiffnessOverModulus(t, nu),
            t -> strainPerTravel(t, nu),
            working)
        .respond(grade, load, run, reservations(nu, load));
  }

  private Checks reservations(double nu, LoadCase load) {
    Checks checks = Checks.of(NAME, COMPUTED);
    checks.check("C1 = pitch / 2 depth", UFactors.C1_LOW, UFactors.C1_HIGH + 1e-9, c1());
    checks.check("C2", 0.0, UFactors.C2_HIGH, c2(wall.m(), nu));
    checks.check("mean diameter / depth", 2.5, 100.0, 1.0 / depthOverDiameter());
    checks.check("wall / depth", 0.0, 0.15, wall.m() / depth.m());
    double travel = Turned.travel(load, meanRadius);
    if (travel > 0.0) {
      double each = travel / count;
      checks.check("travel of a convolution / depth", 0.0, 0.3, each / depth.m());
      double free = 0.5 * pitch.m() - wall.m();
      checks.check("travel of a convolution / gap of its flanks", 0.0, 1.0, each / free);
    }
    return checks;
  }

  @Override
  public List<Lever<Bellows>> levers() {
    return List.of(WALL, DEPTH, PITCH, MEAN_RADIUS);
  }

  /**
   * The volume of the convolutions: meridian length times 2 pi Rm t. Necks and flanges are not
   * counted.
   */
  @Override
  public Volume printedVolume() {
    double rm = 0.25 * pitch.m();
    double meridian = 2.0 * (depth.m() - 2.0 * rm) + 2.0 * Math.PI * rm;
    return Volume.m3(count * meridian * 2.0 * Math.PI * meanRadius.m() * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "bellows of "
        + Text.number(count)
        + " convolutions, mean radius "
        + meanRadius
        + ", depth "
        + depth
        + ", pitch "
        + pitch
        + ", wall "
        + wall
        + ", "
        + build;
  }
}
