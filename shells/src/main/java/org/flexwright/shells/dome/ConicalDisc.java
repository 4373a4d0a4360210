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
 * A conical disc pressed flat and beyond between its inner and its outer edge: a soft spring, a
 * clicker or, when steep, a bistable snap.
 *
 * <p>Formula: F = 4 E t^4/(K1 De^2) (s/t) [(h/t - s/t)(h/t - s/2t) + 1], K1 = (1/pi) [(d - 1)/d]^2
 * /[(d + 1)/(d - 1) - 2/ln d], d = De/Di. The section turns nearly rigidly, so the hoop stress
 * stands alone and the factor 1/(1 - nu^2) that is usual for steel is wrong: with it the force is 5
 * to 15 % too high at nu 0.3 and 20 to 40 % at 0.49; {@link #plateModulus} puts it in for
 * comparison. Peak tensile strain: the largest hoop strain of the turning section so far, at the
 * edge of the inner bore or of the rim. Symbols: De, Di outer and inner diameter, t wall, h height
 * of the cone, s travel (m); E secant modulus at the energy-weighted strain of the section.
 *
 * <p>The force has a maximum, which is the limit load, if h/t is above sqrt 2; above 2 sqrt 2 it
 * falls to zero: the disc snaps and stays. Range: d 1.25 to 4, t/(radial width) to 0.2, h/radial
 * width to 0.35, s to 1.5 h; h/t to 3. Caveats outside. Band: axisymmetric finite elements give
 * 0.92 to 1.09 while the force is above a fifth of its peak; for d from 2.5 up to 1.35 past flat.
 * Near the zero of a steep disc nothing is sure. Strain 0.85 to 1.2, a judgement.
 *
 * <p>Source: Almen and Laszlo 1936, Trans. ASME 58 (from memory, checked). Built axis up, hoop
 * strain lies in the layers.
 *
 * <p>JShell: {@code ConicalDisc.of(mm(40), mm(20), mm(1), mm(1.5)).respond(grade,
 * LoadCase.toLimit())}
 *
 * @param outer outer diameter
 * @param inner inner diameter
 * @param wall thickness
 * @param height height of the cone, of the middle surface
 * @param plateModulus whether to use E/(1 - nu^2), as for steel springs
 * @param build how it stands in the printer
 */
public record ConicalDisc(
    Length outer,
    Length inner,
    Length wall,
    Length height,
    boolean plateModulus,
    BuildDirection build)
    implements Part<ConicalDisc> {

  /** The wall thickness. */
  public static final Lever<ConicalDisc> WALL =
      Lever.of("wall", ConicalDisc::wall, ConicalDisc::wall);

  /** The height of the cone. */
  public static final Lever<ConicalDisc> HEIGHT =
      Lever.of("height", ConicalDisc::height, ConicalDisc::height);

  private static final String NAME = "conical disc";
  private static final Source FORM = Source.memory("Almen and Laszlo 1936, Trans. ASME 58");
  private static final Source COMPUTED =
      Source.derived("axisymmetric shell finite elements; energy of the turning section");

  /**
   * Refuses a disc that makes no sense.
   *
   * @param outer outer diameter
   * @param inner inner diameter
   * @param wall thickness
   * @param height height of the cone, of the middle surface
   * @param plateModulus whether to use E/(1 - nu^2), as for steel springs
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the height is negative
   *     or the inner diameter is not below the outer
   */
  public ConicalDisc {
    Require.positive("outer diameter", outer.m(), "m");
    Require.positive("inner diameter", inner.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.notNegative("height", height.m(), "m");
    Require.that(
        inner.m() < outer.m(),
        "inner diameter",
        inner,
        () -> "below the outer, " + outer,
        "leave a ring of material");
  }

  /**
   * A disc, its axis up in the printer.
   *
   * @param outer outer diameter
   * @param inner inner diameter
   * @param wall thickness
   * @param height height of the cone, of the middle surface; 0 is a flat ring
   * @return the disc
   */
  public static ConicalDisc of(Length outer, Length inner, Length wall, Length height) {
    return new ConicalDisc(outer, inner, wall, height, false, BuildDirection.AXIS_UP);
  }

  /**
   * This disc with another outer diameter.
   *
   * @param of the diameter
   * @return the new disc
   */
  public ConicalDisc outer(Length of) {
    return new ConicalDisc(of, inner, wall, height, plateModulus, build);
  }

  /**
   * This disc with another inner diameter.
   *
   * @param of the diameter
   * @return the new disc
   */
  public ConicalDisc inner(Length of) {
    return new ConicalDisc(outer, of, wall, height, plateModulus, build);
  }

  /**
   * This disc with another wall.
   *
   * @param of the wall
   * @return the new disc
   */
  public ConicalDisc wall(Length of) {
    return new ConicalDisc(outer, inner, of, height, plateModulus, build);
  }

  /**
   * This disc with another height.
   *
   * @param of the height of the cone
   * @return the new disc
   */
  public ConicalDisc height(Length of) {
    return new ConicalDisc(outer, inner, wall, of, plateModulus, build);
  }

  /**
   * This disc with or without the plate modulus.
   *
   * @param of true for E/(1 - nu^2), the habit for steel
   * @return the new disc
   */
  public ConicalDisc plateModulus(boolean of) {
    return new ConicalDisc(outer, inner, wall, height, of, build);
  }

  /**
   * This disc built another way.
   *
   * @param of how it stands in the printer
   * @return the new disc
   */
  public ConicalDisc build(BuildDirection of) {
    return new ConicalDisc(outer, inner, wall, height, plateModulus, of);
  }

  /**
   * Whether the disc stays where it snapped to: height over wall above 2 sqrt 2.
   *
   * @return true if it has two states of rest
   */
  public boolean bistable() {
    return height.ratioTo(wall) > 2.0 * Math.sqrt(2.0);
  }

  private double k1() {
    double d = outer.ratioTo(inner);
    double share = (d - 1.0) / d;
    return share * share / Math.PI / ((d + 1.0) / (d - 1.0) - 2.0 / Math.log(d));
  }

  private double forceOverModulus(double t, double s) {
    double h = height.m();
    double wide = k1() * outer.m() * outer.m();
    return 4.0 * t * s / wide * ((h - s) * (h - 0.5 * s) + t * t);
  }

  /** The travel at the maximum of the force; not a number if it has none. */
  private double limit(double t) {
    double h = height.m();
    return h - Math.sqrt((h * h - 2.0 * t * t) / 3.0);
  }

  private DiscSection section(double t) {
    return new DiscSection(0.5 * outer.m(), 0.5 * inner.m(), t, height.m());
  }

  private double force(Grade grade, double t, double s) {
    double nu = grade.poisson();
    double plane = plateModulus ? 1.0 / (1.0 - nu * nu) : 1.0;
    return plane * Working.modulus(grade, section(t).working(s)) * forceOverModulus(t, s);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double h = height.m();
    double wide = outer.ratioTo(inner) > 2.5 ? 1.35 : 1.09;
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .loadOfLaw(Channel.FORCE, (t, s) -> force(grade, t, s))
            .strain((t, s) -> section(t).peak(s))
            .limit(this::limit)
            .until(t -> 3.0 * Math.max(h, t), "turned inside out beyond the model")
            .bands(
                plateModulus ? new ClosedForm.Band(0.65, wide) : new ClosedForm.Band(0.92, wide),
                new ClosedForm.Band(0.85, 1.2))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(FORM, COMPUTED);
    return form.respond(grade, load, run, reservations(form.end(load)));
  }

  private Checks reservations(double end) {
    Checks checks = Checks.of(NAME, COMPUTED);
    Length width = outer.minus(inner).times(0.5);
    checks.check("outer / inner diameter", 1.25, 4.0, outer.ratioTo(inner));
    checks.check("wall / width", 0.0, 0.2, wall.ratioTo(width));
    checks.check("height / width", 0.0, 0.35, height.ratioTo(width));
    checks.check("height / wall", 0.0, 3.0, height.ratioTo(wall));
    checks.check("travel", 0.0, 1.5 * Math.max(height.m(), wall.m()), end);
    double strain = section(wall.m()).peak(end);
    checks.check("peak strain", 0.0, ClosedForm.SMALL_STRAIN, strain);
    double peak = limit(wall.m()) > 0.0 ? forceOverModulus(wall.m(), limit(wall.m())) : 0.0;
    if (end > limit(wall.m()) && forceOverModulus(wall.m(), end) < 0.2 * peak) {
      checks.note(
          "the force has fallen below a fifth of its peak, where its error is as large as itself");
    }
    return checks;
  }

  @Override
  public List<Lever<ConicalDisc>> levers() {
    return List.of(WALL, HEIGHT);
  }

  @Override
  public Volume printedVolume() {
    Length width = outer.minus(inner).times(0.5);
    Length slope = Length.m(Math.hypot(width.m(), height.m()));
    return wall.times(slope.times(outer.plus(inner).times(0.5))).times(Math.PI);
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "conical disc " + outer + " / " + inner + ", wall " + wall + ", height " + height;
  }
}
