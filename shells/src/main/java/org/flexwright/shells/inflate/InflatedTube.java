package org.flexwright.shells.inflate;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
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
 * A long tube, thin or thick, inflated; its travel is the growth of its outer radius and it answers
 * with the pressure. Its outside stays when the wall changes.
 *
 * <p>Formula, for any law: the pressure of {@link ThickTube} at the axial stretch lz that the ends
 * allow. Held: lz given, and the travel counts from the tube so stretched. Closed: F = 0, with F =
 * (pi/lz) int_A^B (2 lz W2 - l W1 - l3 W3) R dR the axial force less that of the pressure on the
 * bore. Open: F + p pi a^2 = 0. For a thin wall p = (t/R) W_hoop/(l lz) on the mean radius. Limit
 * load: the pressure at which a bulge starts, see {@link Bulging}. Peak strain: the larger of the
 * hoop strain of the inner face and the axial strain. Volume: what the bore takes in.
 *
 * <p>Symbols: A, B reference inner and outer radius, a deformed inner radius, t wall (m), l hoop
 * stretch, l3 = 1/(l lz), W_i derivatives of the law (Pa). Range: any wall; stretches within the
 * law; length from 3 diameters, so that the ends do not count. Exact for an even wall. Caveats
 * there, above 80 % of the pressure at which it bulges, beyond it, and where a held tube is in
 * compression along its axis: it bows first. Band: exact. With open ends the work is int p dV less
 * that of the end thrust. Source: Green and Zerna 1954; Haughton and Ogden 1979 (from memory,
 * checked). Built axis up, the hoop strain lies in the layers; axis lying, it pulls them apart.
 *
 * <p>Read the cautions of this package before pressurising anything.
 *
 * <p>JShell: {@code InflatedTube.of(mm(20), mm(200), mm(1)).held(1.2)}
 *
 * @param outside diameter of the outside at rest
 * @param length length at rest, not stretched
 * @param wall wall thickness, below half the outside
 * @param ends what the ends do
 * @param axialStretch the stretch at which held ends hold it; 1 for other ends
 * @param build how it stands in the printer
 */
public record InflatedTube(
    Length outside,
    Length length,
    Length wall,
    TubeEnds ends,
    double axialStretch,
    BuildDirection build)
    implements Part<InflatedTube> {

  /** The wall thickness; the outside stays. */
  public static final Lever<InflatedTube> WALL =
      Lever.of("wall", InflatedTube::wall, InflatedTube::wall);

  /** The diameter of the outside; the wall stays. */
  public static final Lever<InflatedTube> OUTSIDE =
      Lever.of("outside", InflatedTube::outside, InflatedTube::outside);

  private static final String NAME = "inflated tube";
  private static final Source TUBE =
      Source.memory("Green and Zerna 1954; Haughton and Ogden 1979: thick tube");

  /**
   * Refuses a tube that makes no sense.
   *
   * @param outside diameter of the outside at rest
   * @param length length at rest, not stretched
   * @param wall wall thickness, below half the outside
   * @param ends what the ends do
   * @param axialStretch the stretch at which held ends hold it; 1 for other ends
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length or the stretch is not above 0, the
   *     wall leaves no inside, or ends that are not held have a stretch
   */
  public InflatedTube {
    Require.positive("outside", outside.m(), "m");
    Require.positive("length", length.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "nothing would be left to inflate");
    Require.positive("axial stretch", axialStretch, "");
    Require.that(
        ends == TubeEnds.HELD || axialStretch == 1.0,
        "axial stretch",
        axialStretch,
        "1 unless the ends are held",
        "ask with held(stretch)");
  }

  /**
   * A tube with closed ends, built axis up.
   *
   * @param outside diameter of the outside at rest
   * @param length length at rest
   * @param wall wall thickness
   * @return the tube
   */
  public static InflatedTube of(Length outside, Length length, Length wall) {
    return new InflatedTube(outside, length, wall, TubeEnds.CLOSED, 1.0, BuildDirection.AXIS_UP);
  }

  /**
   * This tube with another outside, on the same wall.
   *
   * @param of the diameter
   * @return the new tube
   */
  public InflatedTube outside(Length of) {
    return new InflatedTube(of, length, wall, ends, axialStretch, build);
  }

  /**
   * This tube with another length.
   *
   * @param of the length at rest
   * @return the new tube
   */
  public InflatedTube length(Length of) {
    return new InflatedTube(outside, of, wall, ends, axialStretch, build);
  }

  /**
   * This tube with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new tube
   */
  public InflatedTube wall(Length of) {
    return new InflatedTube(outside, length, of, ends, axialStretch, build);
  }

  /**
   * This tube with its ends held apart.
   *
   * @param stretch held over free length; 1 for the length at rest
   * @return the new tube
   */
  public InflatedTube held(double stretch) {
    return new InflatedTube(outside, length, wall, TubeEnds.HELD, stretch, build);
  }

  /**
   * This tube with closed ends.
   *
   * @return the new tube
   */
  public InflatedTube closed() {
    return new InflatedTube(outside, length, wall, TubeEnds.CLOSED, 1.0, build);
  }

  /**
   * This tube with open ends.
   *
   * @return the new tube
   */
  public InflatedTube open() {
    return new InflatedTube(outside, length, wall, TubeEnds.OPEN, 1.0, build);
  }

  /**
   * This tube built another way.
   *
   * @param of how it stands in the printer
   * @return the new tube
   */
  public InflatedTube build(BuildDirection of) {
    return new InflatedTube(outside, length, wall, ends, axialStretch, of);
  }

  private double outer() {
    return 0.5 * outside.m();
  }

  private TubePath path(StrainEnergy law, double t) {
    return new TubePath(law, outer() - t, outer(), ends, axialStretch);
  }

  /**
   * The maximum of the pressure of the uniform tube and the minimum after it.
   *
   * @param grade the material
   * @return the points, stretches at the bore
   */
  public LimitPoints limits(Grade grade) {
    return path(grade.law(), wall.m()).limits();
  }

  /**
   * Where the tube bulges.
   *
   * @param grade the material
   * @return the states, or why there are none
   */
  public Bulging bulging(Grade grade) {
    return Bulging.of(path(grade.law(), wall.m()), ends);
  }

  /** One state of the tube: stretches of the bore and along the axis. */
  private record At(TubeWall wall, double bore, double axial) {}

  private At at(StrainEnergy law, double t, double growth) {
    TubePath path = path(law, t);
    double outside = path.outside(path.rest()) + growth;
    double axial = path.axialAt(outside);
    return new At(path.wall, path.wall.bore(outside, axial), axial);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    StrainEnergy law = grade.law();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .loadOfLaw(
                Channel.PRESSURE,
                (t, u) -> {
                  At s = at(law, t, u);
                  return s.wall().pressure(s.bore(), s.axial());
                })
            .strain(
                (t, u) -> {
                  At s = at(law, t, u);
                  return Math.max(s.bore(), s.axial()) - 1.0;
                })
            .volume((t, u) -> u == 0.0 ? 0.0 : taken(at(law, t, u), t))
            .limit(t -> travel(path(law, t)))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(TUBE);
    At end = at(law, wall.m(), form.end(load));
    return form.respond(grade, load, run, reservations(grade, load, end));
  }

  private static double travel(TubePath path) {
    return path.initiation()
        .map(p -> path.outside(p.stretch()) - path.outside(path.rest()))
        .orElse(Double.NaN);
  }

  private double taken(At s, double t) {
    double inner = outer() - t;
    return Math.PI * inner * inner * length.m() * (s.bore() * s.bore() * s.axial() - 1.0);
  }

  private Checks reservations(Grade grade, LoadCase load, At end) {
    Checks checks = Checks.of(NAME, TUBE);
    checks.check("length / outside", 3.0, Double.POSITIVE_INFINITY, length.ratioTo(outside));
    Inflating.law(checks, grade, Deformation.PLANAR, end.bore());
    TubePath path = path(grade.law(), wall.m());
    Inflating.reserve(
        checks,
        load instanceof LoadCase.ToLimit ? Optional.empty() : path.initiation(),
        load,
        end.bore(),
        path::pressure);
    if (ends == TubeEnds.HELD && end.wall().force(end.bore(), end.axial()) < 0.0) {
      checks.note(
          "held ends push on this tube: unless it is guided it bows first; stretch it more");
    }
    return checks;
  }

  @Override
  public List<Lever<InflatedTube>> levers() {
    return List.of(WALL, OUTSIDE);
  }

  @Override
  public Volume printedVolume() {
    return length.times(wall.times(outside.minus(wall)).times(Math.PI));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "inflated tube, outside "
        + outside
        + ", length "
        + length
        + ", wall "
        + wall
        + switch (ends) {
          case HELD -> ", held at an axial stretch of " + Text.number(axialStretch);
          case CLOSED -> ", closed ends";
          case OPEN -> ", open ends";
        };
  }
}
