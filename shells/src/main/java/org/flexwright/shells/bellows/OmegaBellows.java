package org.flexwright.shells.bellows;

import java.util.List;
import java.util.Objects;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
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
 * A bellows of omega convolutions: each a torus slit along its inner circle, the slit being the
 * neck, pulled or pressed along the axis.
 *
 * <p>Formula, for one convolution: K = E Dm t^3 B3(C3) / [12 (1 - nu^2) r^3], peak meridional
 * strain S(C3) t e/r^2. Symbols: Dm diameter of the circle through the torus centres, r torus
 * radius, t wall (m), e travel of one convolution (m), C3 = 2 sqrt(12 (1 - nu^2)) r^2/(Dm t), which
 * is the 6.61 r^2/(Dm t) of the standards at nu = 0.3. Neck rotation is held, the neck is free to
 * move radially.
 *
 * <p>Range: C3 to 15 (beyond, B3 goes on with its end slope), t/r to 0.3, Dm/r from 8. Caveats
 * outside. Band: stiffness 0.95 to 1.05 (radially held necks are up to 22 % stiffer at C3 = 2),
 * strain 0.9 to 1.06.
 *
 * <p>Source: Clark 1950, J. Appl. Mech. 17 (from memory), factors computed with an axisymmetric
 * shell model. Built axis up, the meridional strain pulls layers apart.
 *
 * <p>JShell: {@code Bellows.omega(4).meanRadius(mm(20)).torus(mm(4)).wall(mm(0.6))}
 *
 * @param count convolutions, at least 1
 * @param meanRadius radius of the circle through the torus centres
 * @param torus radius of the middle of the tube, below the mean radius
 * @param wall wall thickness
 * @param build how it stands in the printer
 */
public record OmegaBellows(
    int count, Length meanRadius, Length torus, Length wall, BuildDirection build)
    implements Part<OmegaBellows> {

  /** The wall thickness. */
  public static final Lever<OmegaBellows> WALL =
      Lever.of("wall", OmegaBellows::wall, OmegaBellows::wall);

  /** The torus radius. */
  public static final Lever<OmegaBellows> TORUS =
      Lever.of("torus radius", OmegaBellows::torus, OmegaBellows::torus);

  /** The mean radius. */
  public static final Lever<OmegaBellows> MEAN_RADIUS =
      Lever.of("mean radius", OmegaBellows::meanRadius, OmegaBellows::meanRadius);

  private static final String NAME = "omega bellows";
  private static final Source FORM =
      Source.memory("Clark 1950, J. Appl. Mech. 17; standard table of B3 over C3");
  private static final Source COMPUTED =
      Source.derived("factors by a linear axisymmetric shell model with shear");
  private static final ClosedForm.Band STIFFNESS_BAND = new ClosedForm.Band(0.95, 1.05);
  private static final ClosedForm.Band STRAIN_BAND = new ClosedForm.Band(0.9, 1.06);
  private static final double C3_HIGH = 15.0;

  // at C3 = 0, 1, ... 15; 0 is the slit circle with held ends
  private static final PolynomialSplineFunction B3 =
      over(
          1, 1.0679, 1.2534, 1.5368, 1.9043, 2.3359, 2.8126, 3.3179, 3.8388, 4.3679, 4.8977, 5.4254,
          5.9492, 6.4685, 6.9832, 7.4940);
  private static final PolynomialSplineFunction STRAIN =
      over(
          0.1592, 0.165, 0.1688, 0.1695, 0.1735, 0.1994, 0.2279, 0.2559, 0.2829, 0.3086, 0.3331,
          0.3564, 0.3786, 0.3999, 0.4204, 0.4402);

  private static PolynomialSplineFunction over(double... values) {
    double[] x = new double[values.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = i;
    }
    return new AkimaSplineInterpolator().interpolate(x, values);
  }

  /**
   * Refuses a shape that is no omega bellows.
   *
   * @param count convolutions, at least 1
   * @param meanRadius radius of the circle through the torus centres
   * @param torus radius of the middle of the tube, below the mean radius
   * @param wall wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the torus reaches the
   *     axis or the wall fills it
   */
  public OmegaBellows {
    Require.atLeast("convolutions", count, 1);
    Require.positive("mean radius", meanRadius.m(), "m");
    Require.positive("torus radius", torus.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        torus.m() < meanRadius.m(),
        "torus radius",
        torus,
        () -> "below the mean radius, " + meanRadius,
        "the neck would reach the axis: take a larger mean radius");
    Require.that(
        wall.m() < 2.0 * torus.m(),
        "wall",
        wall,
        () -> "below twice the torus radius, " + torus.times(2.0),
        "the torus would be solid");
  }

  /**
   * Starts a bellows of omega convolutions.
   *
   * @param count how many, at least 1
   * @return a draft; give mean radius and torus radius, the wall last
   */
  public static Draft convolutions(int count) {
    return new Draft(Require.atLeast("convolutions", count, 1), null, null);
  }

  /** A bellows that is not complete yet. Immutable and thread-safe. */
  public static final class Draft {
    private final int count;
    private final @Nullable Length meanRadius;
    private final @Nullable Length torus;

    private Draft(int count, @Nullable Length meanRadius, @Nullable Length torus) {
      this.count = count;
      this.meanRadius = meanRadius;
      this.torus = torus;
    }

    /**
     * With its mean radius.
     *
     * @param of radius of the circle through the torus centres
     * @return the draft
     */
    public Draft meanRadius(Length of) {
      return new Draft(count, of, torus);
    }

    /**
     * With its torus radius.
     *
     * @param of radius of the middle of the tube
     * @return the draft
     */
    public Draft torus(Length of) {
      return new Draft(count, meanRadius, of);
    }

    /**
     * With its wall, which completes it; built axis up.
     *
     * @param of wall thickness
     * @return the bellows
     * @throws org.flexwright.InvalidInputException if a dimension is missing or makes no sense
     */
    public OmegaBellows wall(Length of) {
      Require.that(
          meanRadius != null, "mean radius", "not given", "a length", "add meanRadius(...)");
      Require.that(torus != null, "torus radius", "not given", "a length", "add torus(...)");
      return new OmegaBellows(
          count,
          Objects.requireNonNull(meanRadius),
          Objects.requireNonNull(torus),
          of,
          BuildDirection.AXIS_UP);
    }

    /** One readable line. */
    @Override
    public String toString() {
      return "draft of a bellows of " + count + " omega convolutions";
    }
  }

  /**
   * This bellows with another count of convolutions.
   *
   * @param of at least 1
   * @return the new bellows
   */
  public OmegaBellows count(int of) {
    return new OmegaBellows(of, meanRadius, torus, wall, build);
  }

  /**
   * This bellows with another mean radius.
   *
   * @param of the radius
   * @return the new bellows
   */
  public OmegaBellows meanRadius(Length of) {
    return new OmegaBellows(count, of, torus, wall, build);
  }

  /**
   * This bellows with another torus radius.
   *
   * @param of the radius
   * @return the new bellows
   */
  public OmegaBellows torus(Length of) {
    return new OmegaBellows(count, meanRadius, of, wall, build);
  }

  /**
   * This bellows with another wall, on the same mid-surface.
   *
   * @param of the wall
   * @return the new bellows
   */
  public OmegaBellows wall(Length of) {
    return new OmegaBellows(count, meanRadius, torus, of, build);
  }

  /**
   * This bellows built another way.
   *
   * @param of how it stands in the printer
   * @return the new bellows
   */
  public OmegaBellows build(BuildDirection of) {
    return new OmegaBellows(count, meanRadius, torus, wall, of);
  }

  private double c3(double t, double nu) {
    double r = torus.m();
    return Math.sqrt(12.0 * (1.0 - nu * nu)) * r * r / (meanRadius.m() * t);
  }

  /** B3 or S at C3, straight on beyond the table. */
  private static double at(PolynomialSplineFunction f, double c3) {
    if (c3 <= C3_HIGH) {
      return f.value(c3);
    }
    return f.value(C3_HIGH) + (f.value(C3_HIGH) - f.value(C3_HIGH - 1.0)) * (c3 - C3_HIGH);
  }

  private double stiffnessOverModulus(double t, double nu) {
    double cube = Math.pow(t / torus.m(), 3);
    double b3 = at(B3, c3(t, nu));
    return meanRadius.m() * cube * b3 / (6.0 * (1.0 - nu * nu)) / count;
  }

  private double strainPerTravel(double t, double nu) {
    return at(STRAIN, c3(t, nu)) * t / (torus.m() * torus.m()) / count;
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
    double cosine = 8.0 / (3.0 * Math.PI); // int |cos|^3 / int cos^2 along the slit circle
    double working = WorkingStrain.bending(1.0).planeStrain().times(cosine).value();
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
    checks.check("C3", 0.0, C3_HIGH, c3(wall.m(), nu));
    checks.check("wall / torus radius", 0.0, 0.3, wall.m() / torus.m());
    checks.check(
        "mean diameter / torus radius",
        8.0,
        Double.POSITIVE_INFINITY,
        2.0 * meanRadius.m() / torus.m());
    double travel = Turned.travel(load, meanRadius);
    if (travel > 0.0) {
      double each = travel / count;
      checks.check("travel of a convolution / torus radius", 0.0, 0.3, each / torus.m());
    }
    return checks;
  }

  @Override
  public List<Lever<OmegaBellows>> levers() {
    return List.of(WALL, TORUS, MEAN_RADIUS);
  }

  /** The volume of the tori, 4 pi^2 R r t each. */
  @Override
  public Volume printedVolume() {
    return Volume.m3(count * 4.0 * Math.PI * Math.PI * meanRadius.m() * torus.m() * wall.m());
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
        + " omega convolutions, mean radius "
        + meanRadius
        + ", torus radius "
        + torus
        + ", wall "
        + wall
        + ", "
        + build;
  }
}
