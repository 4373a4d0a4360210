package org.flexwright.shells.dome;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.AkimaSplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
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
 * A thin spherical dome pressed at one point, from the first touch to a deep dimple.
 *
 * <p>Formula, with s = t/sqrt(12 (1 - nu^2)): F = E t s^2/R G(w/s). Small: G = 8 w/s (Reissner
 * 1946, 4/sqrt3 E t^2/(R sqrt(1 - nu^2))). Deep: the dimple is a mirror image and its ridge bends,
 * G = 10.477 sqrt(w/s) (Pogorelov's scaling, constant solved exactly: F = 1.62494 E t^2.5 w^0.5/[R
 * (1 - nu^2)^0.75]), reached slowly. Between: a computed hemisphere, R/t = 100. Peak strain: the
 * larger of that under the load, F/(4 pi D) [ln(l/b) + 0.616] t/2 with l = sqrt(R s) and b = 0.325
 * t (Westergaard), and that of the ridge, 0.473 [12 (1 - nu^2)]^(1/4) sqrt(t w)/R.
 *
 * <p>Symbols: R radius of the middle of the wall, t wall, w travel under the load (m), D = E
 * t^3/[12 (1 - nu^2)]. The load acts on a spot no wider than the wall.
 *
 * <p>Band: 1 - 5/(R/t) - 0.02 (to 0.7) to 1.05, from computed hemispheres at R/t 20 and 100; strain
 * 0.5 to 1.6 (judgement). Range: R/t from 20, w/t to 15, beyond which real domes fold into polygons
 * (from memory), w/R to 0.4. Caveats outside. The edge must be at least 3 l away. Source: Reissner
 * 1946, J. Math. Phys. 25; Pogorelov 1967; Westergaard 1926 (from memory, checked).
 *
 * <p>JShell: {@code PressedDome.of(mm(30), mm(0.8)).respond(grade, LoadCase.toTravel(mm(2)))}
 *
 * @param radius radius of the middle of the wall
 * @param wall thickness, below the radius
 * @param build how it stands in the printer
 */
public record PressedDome(Length radius, Length wall, BuildDirection build)
    implements Part<PressedDome> {

  /** The wall thickness. */
  public static final Lever<PressedDome> WALL =
      Lever.of("wall", PressedDome::wall, PressedDome::wall);

  /** The radius. */
  public static final Lever<PressedDome> RADIUS =
      Lever.of("radius", PressedDome::radius, PressedDome::radius);

  private static final String NAME = "pressed dome";
  private static final double DEEP = 1.5 * Math.PI * 2.2232202; // (3 pi/2) I of the ridge
  private static final double TABLED = 60.3947;
  // G/(w/s) of a hemisphere with R/t = 100, nu 0.49, clamped at its equator
  private static final PolynomialSplineFunction CURVE =
      new AkimaSplineInterpolator()
          .interpolate(
              new double[] {
                0, 0.7549, 1.5099, 3.0197, 4.5296, 6.0395, 9.0592, 12.0789, 18.1184, 24.1579,
                30.1974, 45.296, 60.3947
              },
              new double[] {
                7.856, 6.5486, 5.9235, 4.8409, 4.0082, 3.4048, 2.6775, 2.2999, 1.9373, 1.7504,
                1.6224, 1.402, 1.2496
              });
  private static final Source REISSNER =
      Source.memory("Reissner 1946, J. Math. Phys. 25: point load on a shallow sphere");
  private static final Source DIMPLE =
      Source.derived("mirror dimple with an exact ridge (Pogorelov 1967); computed hemisphere");
  private static final double RIDGE = 0.5 * 0.946627; // half the largest slope of the ridge

  /**
   * Refuses a dome that makes no sense.
   *
   * @param radius radius of the middle of the wall
   * @param wall thickness, below the radius
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall is not
   *     below the radius
   */
  public PressedDome {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < radius.m(), "wall", wall, () -> "below the radius, " + radius, "that is a ball");
  }

  /**
   * A dome built axis up.
   *
   * @param radius radius of the middle of the wall
   * @param wall thickness
   * @return the dome
   */
  public static PressedDome of(Length radius, Length wall) {
    return new PressedDome(radius, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This dome with another radius.
   *
   * @param of the radius
   * @return the new dome
   */
  public PressedDome radius(Length of) {
    return new PressedDome(of, wall, build);
  }

  /**
   * This dome with another wall.
   *
   * @param of the wall
   * @return the new dome
   */
  public PressedDome wall(Length of) {
    return new PressedDome(radius, of, build);
  }

  /**
   * This dome built another way.
   *
   * @param of how it stands in the printer
   * @return the new dome
   */
  public PressedDome build(BuildDirection of) {
    return new PressedDome(radius, wall, of);
  }

  /** G of a relative travel. */
  static double curve(double relative) {
    if (relative <= TABLED) {
      return relative * CURVE.value(relative);
    }
    // the computed curve nears the asymptote as 1 - const/w
    double missing = 1.0 - CURVE.value(TABLED) * Math.sqrt(TABLED) / DEEP;
    return DEEP * Math.sqrt(relative) * (1.0 - missing * TABLED / relative);
  }

  private static double scale(double nu) {
    return Math.sqrt(12.0 * (1.0 - nu * nu));
  }

  private double force(double t, double w, double nu) {
    double s = t / scale(nu);
    return t * s * s / radius.m() * curve(w / s);
  }

  private double peak(double t, double w, double nu) {
    double s = t / scale(nu);
    double length = Math.sqrt(radius.m() * s);
    double spot = Math.max(1.1, length / (0.325 * t));
    double moment = force(t, w, nu) / (4.0 * Math.PI) * (Math.log(spot) + 0.616);
    double local = 0.5 * t * moment / (t * s * s);
    double ridge = RIDGE * Math.sqrt(scale(nu)) * Math.sqrt(t * w) / radius.m();
    return Math.max(local, ridge);
  }

  /**
   * How much stiffer the first touch is under an inner pressure (or softer under an outer one):
   * k/k0 = (pi/2) sqrt(T^2 - 1)/artanh(sqrt(1 - T^-2)) for T above 1, (pi/2) sqrt(1 - T^2)/arccos T
   * below; T = p/p_cl, p_cl = 2 E t^2/(R^2 sqrt(3 (1 - nu^2))). Source: Vella and others 2012, J.
   * R. Soc. Interface 9, 448 (from memory, derived anew).
   *
   * @param grade the material
   * @param inside pressure inside over outside, negative for outer pressure, above -p_cl
   * @return k/k0, 1 at no pressure
   * @throws org.flexwright.InvalidInputException if an outer pressure reaches the classical
   *     collapse
   */
  public double stiffening(Grade grade, Pressure inside) {
    double tau = inside.ratioTo(SnapCap.classical(grade, radius, wall));
    Require.that(
        tau > -1.0,
        "pressure inside",
        inside,
        "above minus the classical collapse pressure",
        "the dome has collapsed before");
    double off = tau - 1.0;
    if (Math.abs(off) < 1e-6) {
      return 0.5 * Math.PI * (1.0 + off / 3.0);
    }
    if (tau > 1.0) {
      double root = Math.sqrt(1.0 - 1.0 / (tau * tau));
      double artanh = 0.5 * Math.log((1.0 + root) / (1.0 - root));
      return 0.5 * Math.PI * Math.sqrt(tau * tau - 1.0) / artanh;
    }
    return 0.5 * Math.PI * Math.sqrt(1.0 - tau * tau) / Math.acos(tau);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double slender = radius.ratioTo(wall);
    double low = Math.max(0.7, 0.98 - 5.0 / slender);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.FORCE, (t, w) -> force(t, w, nu))
            .strain((t, w) -> peak(t, w, nu))
            .working(0.4) // ridge and spot: bending, two thirds of it near the peak (judgement)
            .bands(new ClosedForm.Band(low, 1.05), new ClosedForm.Band(0.5, 1.6))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(REISSNER, DIMPLE);
    double w = form.end(load);
    Checks checks = Checks.of(NAME, DIMPLE);
    checks.check("radius / wall", 20.0, Double.POSITIVE_INFINITY, slender);
    checks.check("travel / wall", 0.0, 15.0, w / wall.m());
    checks.check("travel / radius", 0.0, 0.4, w / radius.m());
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<PressedDome>> levers() {
    return List.of(WALL, RADIUS);
  }

  /** The volume of a hemisphere. */
  @Override
  public Volume printedVolume() {
    return Volume.m3(2.0 * Math.PI * radius.m() * radius.m() * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "dome pressed at a point, radius " + radius + ", wall " + wall;
  }
}
