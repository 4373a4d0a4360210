package org.flexwright.shells.inflate;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LogSlope;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A soft round boss or tube end into which a thicker stiff stem or barbed fitting is pushed; its
 * travel is the interference of the radii and it answers with the contact pressure. Its bore stays
 * when the wall changes.
 *
 * <p>Formula, for any law: the pressure of {@link ThickTube} at the bore stretch 1 + u/A, length
 * held by friction; for small u it is Lame's p = 2 G (u/A)(1 - A^2/B^2). Peak strain: the nominal
 * hoop strain of the bore, u/A. Grip: F = mu p 2 pi (A + u) L when the stem first slips. Symbols: u
 * interference, A bore radius, B = A + t, t wall, L length of the contact (m), mu friction.
 *
 * <p>Range: u/A to 0.5 and within the law, L from one bore diameter. Band 0.75 to 1.1 on the
 * pressure: where the boss can shorten on its stem the pressure is lower by up to 25 % for small
 * strains, and higher by some 8 % for large ones. Caveats: the edge of a barb is a notch whose
 * strain is not in the figure, and grip falls as the material relaxes. Source: Green and Zerna
 * 1954; Lame for small strains (from memory, checked). Built axis up, the hoop strain lies in the
 * layers; axis lying, it pulls them apart.
 *
 * <p>JShell: {@code PressFit.of(mm(6), mm(2), mm(12)).retention(grade, mm(0.4), 0.4)}
 *
 * @param bore diameter of the bore at rest
 * @param wall wall thickness around the bore
 * @param length length of the contact
 * @param build how it stands in the printer
 */
public record PressFit(Length bore, Length wall, Length length, BuildDirection build)
    implements Part<PressFit> {

  /** The wall thickness; the bore stays. */
  public static final Lever<PressFit> WALL = Lever.of("wall", PressFit::wall, PressFit::wall);

  /** The length of the contact. */
  public static final Lever<PressFit> LENGTH =
      Lever.of("length", PressFit::length, PressFit::length);

  private static final String NAME = "press fit";
  private static final double LARGEST = 0.5;
  private static final double THICKEST = 1e3; // bore radii
  private static final Source LAME =
      Source.memory("Green and Zerna 1954: thick tube; Lame for small strains");

  /**
   * Refuses a fit that makes no sense.
   *
   * @param bore diameter of the bore at rest
   * @param wall wall thickness around the bore
   * @param length length of the contact
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0
   */
  public PressFit {
    Require.positive("bore", bore.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.positive("length", length.m(), "m");
  }

  /**
   * A boss, built axis up.
   *
   * @param bore diameter of the bore at rest
   * @param wall wall thickness around the bore
   * @param length length of the contact
   * @return the fit
   */
  public static PressFit of(Length bore, Length wall, Length length) {
    return new PressFit(bore, wall, length, BuildDirection.AXIS_UP);
  }

  /**
   * This fit with another wall, around the same bore.
   *
   * @param of the wall
   * @return the new fit
   */
  public PressFit wall(Length of) {
    return new PressFit(bore, of, length, build);
  }

  /**
   * This fit with another length.
   *
   * @param of the length of the contact
   * @return the new fit
   */
  public PressFit length(Length of) {
    return new PressFit(bore, wall, of, build);
  }

  /**
   * This fit built another way.
   *
   * @param of how it stands in the printer
   * @return the new fit
   */
  public PressFit build(BuildDirection of) {
    return new PressFit(bore, wall, length, of);
  }

  private double inner() {
    return 0.5 * bore.m();
  }

  private double pressure(StrainEnergy law, double t, double u) {
    double a = inner();
    return ThickTube.pressure(law, a, a + t, 1.0 + u / a, 1.0);
  }

  /**
   * The pull at which the stem first slips.
   *
   * @param grade the material
   * @param interference radius of the stem less that of the bore, above 0
   * @param friction coefficient of friction, above 0
   * @return the force
   */
  public Force retention(Grade grade, Length interference, double friction) {
    Require.positive("interference", interference.m(), "m");
    Require.positive("friction", friction, "");
    double u = interference.m();
    double area = 2.0 * Math.PI * (inner() + u) * length.m();
    return Force.newtons(friction * pressure(grade.law(), wall.m(), u) * area);
  }

  /**
   * How much the outer radius grows.
   *
   * @param interference radius of the stem less that of the bore, above 0
   * @return the growth of the outer radius
   */
  public Length swelling(Length interference) {
    Require.positive("interference", interference.m(), "m");
    double u = interference.m();
    double b = inner() + wall.m();
    double square = u * (2.0 * inner() + u);
    return Length.m(square / (Math.sqrt(b * b + square) + b));
  }

  /**
   * The wall from which on more wall hardly helps: there the pressure rises by a share of what the
   * wall rises by.
   *
   * @param grade the material
   * @param interference radius of the stem less that of the bore, above 0
   * @param share d ln p/d ln t, above 0 and below 1: 0.2 means that 10 % more wall gives 2 %
   * @return the wall
   */
  public Length usefulWall(Grade grade, Length interference, double share) {
    Require.positive("interference", interference.m(), "m");
    Require.between("share", share, 1e-4, 0.9, "");
    double u = interference.m();
    DoubleUnaryOperator more = t -> LogSlope.at(x -> pressure(grade.law(), x, u), t) - share;
    double thin = 1e-3 * inner();
    return Length.m(LimitPoints.root(more, thin, THICKEST * inner()));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    StrainEnergy law = grade.law();
    double a = inner();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .loadOfLaw(Channel.PRESSURE, (t, u) -> pressure(law, t, u))
            .strain((t, u) -> u / a)
            .volume((t, u) -> Math.PI * length.m() * u * (2.0 * a + u))
            .bands(new ClosedForm.Band(0.75, 1.1), new ClosedForm.Band(0.98, 1.02))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(LAME);
    Checks checks = Checks.of(NAME, LAME);
    checks.check("interference / bore radius", 0.0, LARGEST, form.end(load) / a);
    checks.check("length / bore", 1.0, Double.POSITIVE_INFINITY, length.ratioTo(bore));
    checks.note("the edge of a barb notches the bore: the strain given is that of a smooth stem");
    return form.respond(grade, load, run, checks);
  }

  @Override
  public List<Lever<PressFit>> levers() {
    return List.of(WALL, LENGTH);
  }

  @Override
  public Volume printedVolume() {
    return length.times(wall.times(bore.plus(wall)).times(Math.PI));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "press fit, bore " + bore + ", wall " + wall + ", length " + length;
  }
}
