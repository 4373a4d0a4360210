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
 * A conical disc flattened between its edges.
 *
 * <p>Formula (Almen and Laszlo 1936): F = 4 E t^4/(K1 De^2) (s/t) [(h/t - s/t)(h/t - s/(2 t)) + 1],
 * K1 = (1/pi) [(d - 1)/d]^2/[(d + 1)/(d - 1) - 2/ln d], d = De/Di. The section turns as a whole, so
 * the hoop stress is uniaxial and this is the law for elastomers; the textbook factor 1/(1 - nu^2)
 * of metal springs is {@link Hoop#HELD} and up to 40 % too stiff here. Above h/t = sqrt 2 the force
 * has a maximum, above 2 sqrt 2 it turns over and the disc stays. Peak strain: the larger of the
 * lower faces' hoop strains at the two edges, z/r of the turned section, the largest on the way.
 *
 * <p>Symbols: De, Di outer and inner diameter, h height of the cone, t wall, s travel (m).
 *
 * <p>Band: a shell computation lies at 0.956 to 1.081 of it at d = 2 over the stroke, 0.92 to 1.01
 * at 1.25; wide discs (d from 3) to 1.32 past flat. Range: d 1.2 to 4, h/t to 3, t over half De -
 * Di to 0.2, s/h to 2. Caveats outside. Source: Almen and Laszlo 1936, Trans. ASME 58 (from memory,
 * checked). Built axis up the hoop strain lies in the layers; lying it pulls them apart.
 *
 * <p>JShell: {@code ConicalDisc.of(mm(40), mm(20), mm(1.5), mm(1)).respond(grade,
 * LoadCase.toLimit())}
 *
 * @param hoop how the section is held along the hoop
 * @param outer outer diameter
 * @param inner inner diameter
 * @param height height of the cone at rest
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record ConicalDisc(
    Hoop hoop, Length outer, Length inner, Length height, Length wall, BuildDirection build)
    implements Part<ConicalDisc> {

  /** What a section may do across the hoop. */
  public enum Hoop {
    /** Free to narrow: right for discs. */
    FREE,
    /** Held as in a plate: the convention of metal springs, too stiff for elastomers. */
    HELD
  }

  /** The wall thickness. */
  public static final Lever<ConicalDisc> WALL =
      Lever.of("wall", ConicalDisc::wall, ConicalDisc::wall);

  /** The height of the cone. */
  public static final Lever<ConicalDisc> HEIGHT =
      Lever.of("height", ConicalDisc::height, ConicalDisc::height);

  private static final String NAME = "conical disc";
  private static final int GAUSS = 4;
  private static final double[] X = {
    -0.861136311594053, -0.339981043584856, 0.339981043584856, 0.861136311594053
  };
  private static final double[] W = {
    0.347854845137454, 0.652145154862546, 0.652145154862546, 0.347854845137454
  };
  private static final Source ALMEN =
      Source.memory("Almen and Laszlo 1936, Trans. ASME 58, 305: the uniform-section disc spring");

  /**
   * Refuses a disc that makes no sense.
   *
   * @param hoop how the section is held along the hoop
   * @param outer outer diameter
   * @param inner inner diameter
   * @param height height of the cone at rest
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the hole is not
   *     within
   */
  public ConicalDisc {
    Require.positive("outer diameter", outer.m(), "m");
    Require.positive("inner diameter", inner.m(), "m");
    Require.positive("height", height.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        inner.m() < outer.m(),
        "inner diameter",
        inner,
        () -> "below the outer, " + outer,
        "swap them");
  }

  /**
   * A disc free along the hoop, built axis up.
   *
   * @param outer outer diameter
   * @param inner inner diameter
   * @param height height of the cone at rest
   * @param wall thickness
   * @return the disc
   */
  public static ConicalDisc of(Length outer, Length inner, Length height, Length wall) {
    return new ConicalDisc(Hoop.FREE, outer, inner, height, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This disc with another constraint.
   *
   * @param of how the section is held along the hoop
   * @return the new disc
   */
  public ConicalDisc hoop(Hoop of) {
    return new ConicalDisc(of, outer, inner, height, wall, build);
  }

  /**
   * This disc with another height.
   *
   * @param of the height
   * @return the new disc
   */
  public ConicalDisc height(Length of) {
    return new ConicalDisc(hoop, outer, inner, of, wall, build);
  }

  /**
   * This disc with another wall.
   *
   * @param of the wall
   * @return the new disc
   */
  public ConicalDisc wall(Length of) {
    return new ConicalDisc(hoop, outer, inner, height, of, build);
  }

  /**
   * This disc built another way.
   *
   * @param of how it stands in the printer
   * @return the new disc
   */
  public ConicalDisc build(BuildDirection of) {
    return new ConicalDisc(hoop, outer, inner, height, wall, of);
  }

  /** K1 of a diameter ratio; 1 - 1/d to first order near 1, where the bracket cancels. */
  static double k1(double d) {
    double l = Math.log(d);
    // (d + 1)/(d - 1) - 2/ln d = coth(l/2) - 2/l
    double bracket = l < 0.05 ? l / 6.0 * (1.0 - l * l / 60.0) : 1.0 / Math.tanh(0.5 * l) - 2.0 / l;
    double ring = -Math.expm1(-l);
    return ring * ring / (Math.PI * bracket);
  }

  /** Force over modulus at a travel. */
  private double force(double t, double s, double plate) {
    double de = outer.m();
    double x = s / t;
    double h = height.m() / t;
    double shape = x * ((h - x) * (h - 0.5 * x) + 1.0);
    return 4.0 * Math.pow(t, 4) * shape / (k1(outer.ratioTo(inner)) * de * de * plate);
  }

  /** Travel of the largest force, not a number if it only rises. */
  private double limit(double t) {
    double h = height.m() / t;
    return h > Math.sqrt(2.0) ? t * (h - Math.sqrt((h * h - 2.0) / 3.0)) : Double.NaN;
  }

  private double a() {
    return 0.5 * outer.m();
  }

  private double b() {
    return 0.5 * inner.m();
  }

  /** Radius that keeps its length. */
  private double still() {
    return (a() - b()) / Math.log(a() / b());
  }

  /** Largest tensile hoop strain on the way: lower face at the inner and at the outer edge. */
  private double peak(double t, double s) {
    double turn = s / (a() - b());
    double cone = height.m() / (a() - b());
    double inner = largest(turn, cone, -(still() - b()), 0.5 * t) / b();
    double outside = largest(turn, cone, a() - still(), 0.5 * t) / a();
    return Math.max(inner, outside);
  }

  /** The largest of f (x (cone - f/2) + y) for f from 0 to the turn. */
  private static double largest(double turn, double cone, double x, double y) {
    double end = turn * (x * (cone - 0.5 * turn) + y);
    double top = cone + y / x;
    boolean peaked = x > 0.0 && top < turn;
    return peaked ? Math.max(end, top * (x * (cone - 0.5 * top) + y)) : Math.max(0.0, end);
  }

  /** Energy-weighted hoop strain of the section, by Gauss points over width and wall. */
  private double working(double t, double s) {
    double turn = s / (a() - b());
    double rise = height.m() / (a() - b()) - 0.5 * turn;
    double squares = 0.0;
    double cubes = 0.0;
    for (int i = 0; i < GAUSS; i++) {
      double r = 0.5 * (a() + b()) + 0.5 * (a() - b()) * X[i];
      for (int j = 0; j < GAUSS; j++) {
        double y = 0.5 * t * X[j];
        double e = Math.abs(turn * ((r - still()) * rise + y) / r);
        double w = W[i] * W[j] * r * e * e;
        squares += w;
        cubes += w * e;
      }
    }
    return squares > 0.0 ? cubes / squares : 0.0;
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double plate = hoop == Hoop.HELD ? 1.0 - grade.poisson() * grade.poisson() : 1.0;
    double d = outer.ratioTo(inner);
    ClosedForm.Band band =
        d > 3.0 ? new ClosedForm.Band(0.92, 1.32) : new ClosedForm.Band(0.92, 1.09);
    if (hoop == Hoop.HELD) {
      band = new ClosedForm.Band(0.6, 1.0);
    }
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.FORCE, (t, s) -> force(t, s, plate))
            .strain(this::peak)
            .workingStrain(this::working)
            .limit(this::limit)
            .bands(band, new ClosedForm.Band(0.9, 1.15))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(ALMEN);
    Checks checks = Checks.of(NAME, ALMEN);
    checks.check("outer / inner diameter", 1.2, 4.0, d);
    checks.check("height / wall", 0.0, 3.0, height.ratioTo(wall));
    checks.check("wall / width of the disc", 0.0, 0.2, wall.m() / (a() - b()));
    checks.check("travel / height", 0.0, 2.0, form.end(load) / height.m());
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<ConicalDisc>> levers() {
    return List.of(WALL, HEIGHT);
  }

  @Override
  public Volume printedVolume() {
    double slant = Math.hypot(a() - b(), height.m());
    return Volume.m3(Math.PI * (a() + b()) * slant * wall.m());
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "conical disc, outer "
        + outer
        + ", inner "
        + inner
        + ", height "
        + height
        + ", wall "
        + wall;
  }
}
