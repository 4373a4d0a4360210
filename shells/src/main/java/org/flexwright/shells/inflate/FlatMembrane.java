package org.flexwright.shells.inflate;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
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
 * A flat round membrane clamped at its rim and blown up; its travel is the height of the pole and
 * it answers with the pressure.
 *
 * <p>Formula, for any law: the axisymmetric membrane with meridional and hoop stretch l1, l2, d(R
 * W1 cos th)/dR = W2 - p r l1 sin th/t and R W1 sin th = p r^2/(2 t), integrated from the pole
 * until l2 = 1, which is the rim. Limit load: the first maximum of the pressure. Peak strain: the
 * larger of pole and rim, without the bending of the rim: at a sharp clamp that is some six times
 * more at small strains, so give it a round edge. Volume: under the dome. Symbols: R, r radius of a
 * point at rest and now, t wall (m), th slope, W_i derivatives of the law (Pa), p pressure (Pa).
 *
 * <p>Range: wall/radius to 0.1; height from 5 walls, since bending is left out: it adds near 1.5
 * (t/z)^2 of the pressure, which is the high end of the band. Stretches within the law. Before the
 * maximum the dome is stable under a given pressure, after it only under a given volume; caveats
 * there and above 80 % of the limit pressure. For small heights it is Hencky's membrane, z = 0.5949
 * a (p a/(E t))^(1/3). Source: Adkins and Rivlin 1952, Phil. Trans. A 244 (from memory; values
 * computed independently). Lying flat in the printer its strain is in the layers; upright (axis
 * lying) it pulls them apart.
 *
 * <p>Read the cautions of this package before pressurising anything.
 *
 * <p>JShell: {@code FlatMembrane.of(mm(20), mm(0.8)).respond(grade, LoadCase.toTravel(mm(12)))}
 *
 * @param radius radius of the rim
 * @param wall thickness at rest
 * @param build how it stands in the printer
 */
public record FlatMembrane(Length radius, Length wall, BuildDirection build)
    implements Part<FlatMembrane> {

  /** The wall thickness. */
  public static final Lever<FlatMembrane> WALL =
      Lever.of("wall", FlatMembrane::wall, FlatMembrane::wall);

  /** The radius of the rim. */
  public static final Lever<FlatMembrane> RADIUS =
      Lever.of("radius", FlatMembrane::radius, FlatMembrane::radius);

  private static final String NAME = "flat membrane";
  private static final Source ADKINS =
      Source.memory("Adkins and Rivlin 1952, Phil. Trans. A 244: inflated circular sheet");

  /**
   * Refuses a membrane that makes no sense.
   *
   * @param radius radius of the rim
   * @param wall thickness at rest
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall is not
   *     below the radius
   */
  public FlatMembrane {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < radius.m(),
        "wall",
        wall,
        () -> "below the radius, " + radius,
        "that is a block");
  }

  /**
   * A membrane, lying flat in the printer (its axis up).
   *
   * @param radius radius of the rim
   * @param wall thickness at rest
   * @return the membrane
   */
  public static FlatMembrane of(Length radius, Length wall) {
    return new FlatMembrane(radius, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This membrane with another radius.
   *
   * @param of the radius
   * @return the new membrane
   */
  public FlatMembrane radius(Length of) {
    return new FlatMembrane(of, wall, build);
  }

  /**
   * This membrane with another wall.
   *
   * @param of the wall
   * @return the new membrane
   */
  public FlatMembrane wall(Length of) {
    return new FlatMembrane(radius, of, build);
  }

  /**
   * This membrane built another way.
   *
   * @param of how it stands in the printer
   * @return the new membrane
   */
  public FlatMembrane build(BuildDirection of) {
    return new FlatMembrane(radius, wall, of);
  }

  /**
   * The limit pressure and the minimum after it.
   *
   * @param grade the material
   * @return the points, stretches at the pole
   */
  public LimitPoints limits(Grade grade) {
    return MembraneTable.limits(grade.law(), wall.ratioTo(radius));
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    StrainEnergy law = grade.law();
    double a = radius.m();
    Optional<LimitPoints.Point> limit = limits(grade).maximum();
    double give = limit.map(p -> height(law, p.stretch())).orElse(Double.NaN);
    ClosedForm asked = ClosedForm.of(NAME, wall).limit(t -> give * a);
    double height = asked.end(load) / a;
    MembraneTable table = new MembraneTable(law, height);
    double bending = 1.5 * Math.pow(wall.ratioTo(radius) / height, 2);
    Checks checks = Checks.of(NAME, ADKINS);
    checks.check("wall / radius", 0.0, 0.1, wall.ratioTo(radius));
    checks.check("height / wall", 5.0, Double.POSITIVE_INFINITY, height * a / wall.m());
    checks.note(
        "a sharp clamp bends the rim to some six times the strain given: round its edge well");
    double pressure = wall.ratioTo(radius) * table.pressure(height);
    Inflating.law(checks, grade, Deformation.EQUIBIAXIAL, table.pole(height));
    Inflating.reserve(checks, limit, load, table.pole(height), pole -> pressure);
    return asked
        .loadOfLaw(Channel.PRESSURE, (t, u) -> t / a * table.pressure(u / a))
        .strain((t, u) -> Math.max(table.pole(u / a), table.edge(u / a)) - 1.0)
        .volume((t, u) -> a * a * a * table.volume(u / a))
        .bands(
            new ClosedForm.Band(0.99, Math.min(1e6, 1.01 + bending)),
            new ClosedForm.Band(0.99, Math.min(1e6, 1.01 + bending)))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(ADKINS)
        .respond(grade, load, run, checks);
  }

  private static double height(StrainEnergy law, double pole) {
    MembraneState s = MembraneState.at(law, pole);
    return s == null ? Double.NaN : s.height();
  }

  @Override
  public List<Lever<FlatMembrane>> levers() {
    return List.of(WALL, RADIUS);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(radius.times(radius).times(Math.PI));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "flat membrane, radius " + radius + ", wall " + wall;
  }
}
