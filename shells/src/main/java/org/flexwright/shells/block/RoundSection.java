package org.flexwright.shells.block;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A solid round section squeezed between two flat plates: a roller, a cord or an O-ring.
 *
 * <p>Formula: F = E D L f(x), x squeeze over diameter. f is the plane contact of Hertz, x = (3 f/2
 * pi) (2 ln(2/b) - 1) with b^2 = 3 f/(2 pi), times a rise r(x) from 1 at rest to 1.13 at x 0.2 and
 * 1.50 at 0.4, which is an interpolated table of a finite-element computation (plane strain,
 * neo-Hookean, no friction). Contact width w = D sqrt(6 f/pi), peak contact pressure 4 F/(pi w L).
 * Peak tensile strain from a table of a second computation. Symbols: D diameter, L length (m), E
 * modulus (Pa), times 0.75/(1 - nu^2) where the grade says nu below 0.5.
 *
 * <p>Range: squeeze to 0.3, length from 5 diameters. Caveats outside; the path ends at 0.4, the end
 * of the computed curve. Band: the computed curve is 1.30 to 1.34 times Lindley's 1.25 x^1.5 + 50
 * x^6 between 10 and 30 %; his moduli come from hardness and his sections may lengthen, so his
 * curve is the low end there. Below 5 % Hertz holds, low end 0.95. Plates that grip raise the load
 * by 1 % at 0.2 and 14 % at 0.4. The strain is 0.9 to 1.1.
 *
 * <p>Source: Hertz; Lindley 1967, J. Strain Anal. 2 (both from memory, Lindley not confirmed);
 * curve computed, and met by a second program within 0.5 %. Built lying (squeeze across the layers'
 * edges) the strain pulls layers apart.
 *
 * <p>JShell: {@code RoundSection.ring(mm(3), mm(40)).respond(grade, LoadCase.toTravel(mm(0.6)))}
 *
 * @param diameter of the section
 * @param length of the section, along its middle
 * @param build how it stands in the printer, the axis being that of the squeeze
 */
public record RoundSection(Length diameter, Length length, BuildDirection build)
    implements Part<RoundSection> {

  /** The diameter of the section. */
  public static final Lever<RoundSection> DIAMETER =
      Lever.of("diameter", RoundSection::diameter, RoundSection::diameter);

  private static final String NAME = "round section";
  private static final Source HERTZ =
      Source.memory("Hertz, plane contact; Lindley 1967, J. Strain Anal. 2");
  private static final Source COMPUTED =
      Source.derived("plane-strain neo-Hookean finite elements, two programs");
  private static final double END = 0.4;
  private static final double WORKING = 0.75;
  private static final PolynomialSplineFunction RISE =
      over(
          new double[] {0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4},
          new double[] {1, 1.0143, 1.0393, 1.0781, 1.1299, 1.1962, 1.2792, 1.3809, 1.4975});
  // peak tensile strain over sqrt(x); computed to x 0.32, the last two carried on
  private static final PolynomialSplineFunction STRAIN =
      over(
          new double[] {0, 0.02, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.35, 0.4},
          new double[] {0.21, 0.2715, 0.330, 0.4206, 0.5229, 0.6498, 0.8126, 0.9969, 1.20, 1.42});

  private static PolynomialSplineFunction over(double[] x, double[] y) {
    return new SplineInterpolator().interpolate(x, y);
  }

  /**
   * Refuses a section without size.
   *
   * @param diameter of the section
   * @param length of the section, along its middle
   * @param build how it stands in the printer, the axis being that of the squeeze
   * @throws org.flexwright.InvalidInputException if a length is not above 0
   */
  public RoundSection {
    Require.positive("diameter", diameter.m(), "m");
    Require.positive("length", length.m(), "m");
  }

  /**
   * A straight cord or roller, squeezed upright in the printer.
   *
   * @param diameter of the section
   * @param length of the section
   * @return the section
   */
  public static RoundSection of(Length diameter, Length length) {
    return new RoundSection(diameter, length, BuildDirection.AXIS_UP);
  }

  /**
   * An O-ring squeezed along its axis, printed flat.
   *
   * @param diameter of the section
   * @param mean mean diameter of the ring, above that of the section
   * @return the section, as long as the mean circle
   */
  public static RoundSection ring(Length diameter, Length mean) {
    Require.that(
        mean.m() > diameter.m(),
        "mean diameter of the ring",
        mean,
        () -> "above that of the section, " + diameter,
        "a ring needs a hole");
    return of(diameter, mean.times(Math.PI));
  }

  /**
   * This section with another diameter.
   *
   * @param of the diameter
   * @return the new section
   */
  public RoundSection diameter(Length of) {
    return new RoundSection(of, length, build);
  }

  /**
   * This section with another length.
   *
   * @param of the length
   * @return the new section
   */
  public RoundSection length(Length of) {
    return new RoundSection(diameter, of, build);
  }

  /**
   * This section built another way.
   *
   * @param of how it stands in the printer
   * @return the new section
   */
  public RoundSection build(BuildDirection of) {
    return new RoundSection(diameter, length, of);
  }

  /** F/(E D L) of the plane contact of Hertz at nu 0.5. */
  static double hertz(double x) {
    return new BrentSolver(1e-12, 1e-16)
        .solve(
            200,
            f -> 1.5 * f / Math.PI * (2.0 * Math.log(2.0 / halfWidth(f)) - 1.0) - x,
            1e-9 * x,
            2.0 * x + 1e-12);
  }

  private static double halfWidth(double f) {
    return Math.sqrt(1.5 * f / Math.PI);
  }

  /** F/(E D L) at nu 0.5. */
  static double load(double x) {
    return x <= 0.0 ? 0.0 : hertz(x) * RISE.value(Math.min(x, END));
  }

  /** F/(E D L) after Lindley. */
  static double lindley(double x) {
    return 1.25 * Math.pow(x, 1.5) + 50.0 * Math.pow(x, 6);
  }

  private static double strain(double x) {
    return Math.sqrt(x) * STRAIN.value(Math.min(x, END));
  }

  /**
   * The width of the contact with each plate.
   *
   * @param squeeze approach of the plates, above 0, to 0.4 diameters
   * @return the width
   * @throws org.flexwright.InvalidInputException if the squeeze is outside that
   */
  public Length contactWidth(Length squeeze) {
    return diameter.times(Math.sqrt(6.0 / Math.PI * load(checked(squeeze))));
  }

  /**
   * The peak of the contact pressure, in the middle of the width.
   *
   * @param grade the material
   * @param squeeze approach of the plates, above 0, to 0.4 diameters
   * @return the pressure, half-elliptic over the width
   * @throws org.flexwright.InvalidInputException if the squeeze is outside that
   */
  public Pressure peakPressure(Grade grade, Length squeeze) {
    double x = checked(squeeze);
    double perLength = modulus(grade, x) * diameter.m() * load(x);
    return Pressure.pa(4.0 * perLength / (Math.PI * contactWidth(squeeze).m()));
  }

  private double checked(Length squeeze) {
    double x = squeeze.ratioTo(diameter);
    Require.between("squeeze over diameter", x, Double.MIN_NORMAL, END, "");
    return x;
  }

  private static double modulus(Grade grade, double x) {
    double nu = grade.poisson();
    return 0.75 / (1.0 - nu * nu) * Softening.modulus(grade, WORKING * strain(x));
  }

  private static ClosedForm.Band band(double x) {
    double along = Math.min(1.0, Math.max(0.0, (x - 0.05) / 0.05));
    double lindley = x < 0.1 ? 0.745 : Math.min(0.95, lindley(x) / load(x));
    double low = 0.95 + along * (lindley - 0.95);
    return new ClosedForm.Band(low, 1.02 + 0.14 * Math.pow(x / END, 4));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double x = load instanceof LoadCase.ToTravel to ? to.travel().ratioTo(diameter) : 0.0;
    double l = length.m();
    return ClosedForm.of(NAME, diameter)
        .loadOfLaw(Channel.FORCE, (d, u) -> modulus(grade, u / d) * d * l * load(u / d))
        .strain((d, u) -> strain(u / d))
        .until(d -> END * d, "the computed curve ends at a squeeze of 40 % of the diameter")
        .bands(band(Math.min(x, END)), new ClosedForm.Band(0.9, 1.1))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(HERTZ, COMPUTED)
        .respond(grade, load, run, reservations(x));
  }

  private Checks reservations(double x) {
    return Checks.of(NAME, COMPUTED)
        .check("squeeze / diameter", 0.0, 0.3, x)
        .check("length / diameter", 5.0, Double.POSITIVE_INFINITY, length.ratioTo(diameter));
  }

  @Override
  public List<Lever<RoundSection>> levers() {
    return List.of(DIAMETER);
  }

  @Override
  public Volume printedVolume() {
    return length.times(diameter.times(diameter)).times(0.25 * Math.PI);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, diameter);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "round section, diameter " + diameter + ", length " + length;
  }
}
