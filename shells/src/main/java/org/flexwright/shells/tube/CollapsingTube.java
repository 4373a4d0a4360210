package org.flexwright.shells.tube;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
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
 * A tube with ends held round, pressed from outside until it collapses into lobes.
 *
 * <p>Formula (von Mises 1929), l = pi R/L: p = E (t/R)/(n^2 - 1 + l^2/2) [(n^2/l^2 + 1)^-2 + t^2
 * (n^2 - 1 + l^2)^2/(12 R^2 (1 - nu^2))], least over the number of lobes n from 2; pressure on the
 * sides only: without l^2/2. Long: E t^3/[4 (1 - nu^2) R^3]. Before: the radius shrinks by w = (1 -
 * nu/2) p R^2/(E t), sides only p R^2/(E t). The peak tensile strain is that across the wall.
 * Symbols: R mean radius, t wall, L length between the held ends, w travel (m).
 *
 * <p>Band: to 0.75 below for imperfect walls (NASA SP-8007), to 1.05 above; ends that cannot turn
 * carry more. Range: t/R to 0.1, L/R from 0.5, travel to 0.75 of that at collapse. Caveats outside.
 * Ends that are not held round bring any length down to the long tube. The Donnell-Batdorf formula,
 * a third too high for long tubes, is not used here; see {@link #shallowShell}.
 *
 * <p>Source: von Mises 1929; Bresse, Bryan 1888 for the long tube (from memory, checked). Built
 * axis up, the strain across the wall lies in the layers.
 *
 * <p>JShell: {@code CollapsingTube.of(CollapsingTube.Side.ALL, mm(20), mm(60), mm(1))}
 *
 * @param side where the pressure acts
 * @param outside outer diameter
 * @param length length along the axis
 * @param wall wall thickness, below half the outside
 * @param build how it stands in the printer
 */
public record CollapsingTube(
    Side side, Length outside, Length length, Length wall, BuildDirection build)
    implements Part<CollapsingTube> {

  /** Where an outer pressure acts. */
  public enum Side {
    /** On the sides and on closed ends. */
    ALL,
    /** On the sides only. */
    LATERAL
  }

  /** The wall thickness; the outside stays. */
  public static final Lever<CollapsingTube> WALL =
      Lever.of("wall", CollapsingTube::wall, CollapsingTube::wall);

  /** The length. */
  public static final Lever<CollapsingTube> LENGTH =
      Lever.of("length", CollapsingTube::length, CollapsingTube::length);

  private static final String NAME = "tube under external pressure";
  private static final double KNOCK_DOWN = 0.75;
  private static final Source MISES =
      Source.memory("von Mises 1929: critical external pressure of cylindrical tubes");
  private static final Source BATDORF =
      Source.memory("Donnell 1933, Batdorf 1947: buckling of cylinders by shallow-shell theory");
  private static final Source MARGIN =
      Source.memory("NASA SP-8007: buckling of thin-walled circular cylinders, 0.75");

  /**
   * Refuses a tube that makes no sense.
   *
   * @param side where the pressure acts
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall fills it
   */
  public CollapsingTube {
    TubeWall.require(outside, length, wall);
  }

  /**
   * A tube, built axis up.
   *
   * @param side where the pressure acts
   * @param outside outer diameter
   * @param length length along the axis
   * @param wall wall thickness, below half the outside
   * @return the tube
   */
  public static CollapsingTube of(Side side, Length outside, Length length, Length wall) {
    return new CollapsingTube(side, outside, length, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another length.
   *
   * @param of the length
   * @return the new tube
   */
  public CollapsingTube length(Length of) {
    return new CollapsingTube(side, outside, of, wall, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public CollapsingTube wall(Length of) {
    return new CollapsingTube(side, outside, length, of, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public CollapsingTube build(BuildDirection of) {
    return new CollapsingTube(side, outside, length, wall, of);
  }

  /** The pressure over the modulus at which n lobes form. */
  static double pressure(Side side, int n, double slender, double radiusOverLength, double nu) {
    double l2 = Math.pow(Math.PI * radiusOverLength, 2);
    double n2 = (double) n * n;
    double over = n2 - 1.0 + (side == Side.ALL ? 0.5 * l2 : 0.0);
    double stretch = Math.pow(n2 / l2 + 1.0, -2);
    double bend = slender * slender * Math.pow(n2 - 1.0 + l2, 2) / (12.0 * (1.0 - nu * nu));
    return slender / over * (stretch + bend);
  }

  /** The number of lobes at a slenderness: the pressure falls with n and then rises for good. */
  static int lobes(Side side, double slender, double radiusOverLength, double nu) {
    int n = 2;
    while (pressure(side, n + 1, slender, radiusOverLength, nu)
        < pressure(side, n, slender, radiusOverLength, nu)) {
      n++;
    }
    return n;
  }

  /**
   * The number of lobes it collapses into.
   *
   * @param grade the material, for its Poisson ratio
   * @return n, at least 2
   */
  public int lobes(Grade grade) {
    double mean = TubeWall.mean(outside, wall.m());
    return lobes(side, wall.m() / mean, mean / length.m(), grade.poisson());
  }

  /** The Donnell-Batdorf pressure over the modulus, least over the lobes. */
  static double shallow(Side side, double slender, double radiusOverLength, double nu) {
    double flat = 1.0 - nu * nu;
    double over = side == Side.ALL ? 0.5 : 0.0;
    double ratio = Math.pow(radiusOverLength, 2);
    double z2 = flat / (slender * slender * ratio * ratio); // Z = L^2 sqrt(1 - nu^2)/(R t)
    double scale = Math.PI * Math.PI * Math.pow(slender, 3) * ratio / (12.0 * flat);
    double least = Double.POSITIVE_INFINITY;
    for (int n = 2; ; n++) {
      double b2 = Math.pow(n / (Math.PI * radiusOverLength), 2);
      double bend = Math.pow(1.0 + b2, 2);
      double p = scale * (bend + 12.0 * z2 / (Math.pow(Math.PI, 4) * bend)) / (b2 + over);
      if (p >= least) {
        return least;
      }
      least = p;
    }
  }

  /**
   * The collapse pressure by the Donnell-Batdorf formula for shallow lobes, at the modulus at rest,
   * for comparison with handbooks and norms that use it: k pi^2 D/(R L^2), k = [(1 + b^2)^2 + 12
   * Z^2/(pi^4 (1 + b^2)^2)]/(b^2 + 1/2), b = n L/(pi R), Z = L^2 sqrt(1 - nu^2)/(R t); sides only:
   * over b^2. It has n^2 where the ring has n^2 - 1, so with two lobes it is 4/3 of the truth; the
   * low end of the bracket is three quarters.
   *
   * @param grade the material
   * @return the pressure, always with the caveat
   */
  public Estimate<Pressure> shallowShell(Grade grade) {
    double mean = TubeWall.mean(outside, wall.m());
    double p = shallow(side, wall.m() / mean, mean / length.m(), grade.poisson());
    Pressure high = grade.modulusAtRest().times(p);
    return new Estimate<>(
        high.times(0.75),
        high,
        high,
        Estimate.Band.BRACKET,
        List.of(BATDORF),
        List.of(
            Caveat.note(
                "Donnell-Batdorf formula",
                "up to 4/3 too high, and that for long tubes, which form two lobes: ask the tube for"
                    + " its limit instead",
                BATDORF)));
  }

  /** Travel at collapse: w = p R^2/(E t) for pressure on the sides. */
  private double travel(double t, double nu, double soft) {
    double mean = TubeWall.mean(outside, t);
    double slender = t / mean;
    double ratio = mean / length.m();
    int n = lobes(side, slender, ratio, nu);
    return soft * pressure(side, n, slender, ratio, nu) * mean / slender;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    boolean all = side == Side.ALL;
    double soft = all ? 1.0 - 0.5 * nu : 1.0;
    double across = all ? 1.5 * nu / soft : nu; // strain across the wall over w/R
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.PRESSURE, (t, u) -> t * u / (soft * square(TubeWall.mean(outside, t))))
            .strainSlope(t -> across / TubeWall.mean(outside, t))
            .working((all ? WorkingStrain.PLANE_STRAIN : 1.0) / across)
            .limit(t -> travel(t, nu, soft))
            .until(t -> travel(t, nu, soft), "the tube collapses");
    double mean = TubeWall.mean(outside, wall.m());
    Checks checks = Checks.of(NAME, MISES);
    checks.check("wall / mean radius", 0.0, 0.1, wall.m() / mean);
    checks.check("length / mean radius", 0.5, Double.POSITIVE_INFINITY, length.m() / mean);
    boolean toLimit = load instanceof LoadCase.ToLimit;
    if (!toLimit) {
      double part = form.end(load) / travel(wall.m(), nu, soft);
      checks.check("travel / travel at collapse", 0.0, KNOCK_DOWN, part);
    }
    ClosedForm.Band band =
        toLimit ? new ClosedForm.Band(KNOCK_DOWN, 1.05) : new ClosedForm.Band(0.95, 1.1);
    return form.bands(band, band)
        .crossesLayers(false)
        .sources(MISES, MARGIN)
        .respond(grade, load, run, checks);
  }

  private static double square(double x) {
    return x * x;
  }

  @Override
  public List<Lever<CollapsingTube>> levers() {
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
    return (side == Side.ALL ? "tube pressed all round" : "tube pressed on its sides")
        + ", outside "
        + outside
        + ", length "
        + length
        + ", wall "
        + wall;
  }
}
