package org.flexwright.shells.wall;

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
 * A thin round membrane on a ring, blown up by pressure; slack-free or stretched beforehand. Its
 * force comes from stretch alone.
 *
 * <p>Formula: without prestrain w = C a (q a/(E t))^(1/3), C 0.6534 at nu 0.3 and 0.5949 at nu 0.5
 * (Hencky); here solved for any nu, with the pressure normal to the wall (Fichter) and a strain e
 * put in beforehand (Campbell: stress E e/(1 - nu) at rest). Symbols: a radius, t wall, w travel of
 * the centre (m), q pressure. Peak strain at the centre or at the rim, prestrain included; a
 * clamped rim adds s sqrt(3 (1 - nu^2) N/(E t)) from bending the slope s away, several times the
 * stretch itself however thin the wall. The secant modulus is taken at the energy-weighted
 * equivalent strain.
 *
 * <p>Range: stretch to 0.03, beyond it the small-strain theory bends away and the law of the rubber
 * itself must be solved; a sqrt(N/D) from 14, which is w/t from about 5 without prestrain, below it
 * bending carries part and {@link PressedPlate} serves. Caveats outside; the path ends at w/a 0.6.
 * Source: Hencky 1915, Z. Math. Phys. 63; Campbell 1956; Fichter 1997, NASA TP-3658 (from memory,
 * solved here). Lying flat in the printer, as it starts, its strain is in the layers.
 *
 * <p>JShell: {@code TautMembrane.of(CircularPlate.Rim.CLAMPED, mm(30), mm(0.3)).prestrain(0.01)}
 *
 * @param rim whether the rim is free to turn; it never slides in
 * @param radius radius of the rim
 * @param wall thickness
 * @param prestrain equal strain in all directions put in beforehand, from 0 to 0.5
 * @param build how it stands in the printer
 */
public record TautMembrane(
    CircularPlate.Rim rim, Length radius, Length wall, double prestrain, BuildDirection build)
    implements Part<TautMembrane> {

  /** The wall thickness. */
  public static final Lever<TautMembrane> WALL =
      Lever.of("wall", TautMembrane::wall, TautMembrane::wall);

  /** The radius. */
  public static final Lever<TautMembrane> RADIUS =
      Lever.of("radius", TautMembrane::radius, TautMembrane::radius);

  private static final String NAME = "taut membrane";
  private static final double LAST = 0.6;
  private static final Source HENCKY =
      Source.memory("Hencky 1915, Z. Math. Phys. 63; Fichter 1997, NASA TP-3658: membranes");

  /**
   * Refuses a membrane that makes no sense.
   *
   * @param rim whether the rim is free to turn; it never slides in
   * @param radius radius of the rim
   * @param wall thickness
   * @param prestrain equal strain in all directions put in beforehand, from 0 to 0.5
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the wall is not below
   *     the radius or the prestrain is not from 0 to 0.5
   */
  public TautMembrane {
    Require.positive("radius", radius.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.between("prestrain", prestrain, 0.0, 0.5, "");
    Require.that(
        wall.m() < radius.m(),
        "wall",
        wall,
        () -> "below the radius, " + radius,
        "that is a block");
  }

  /**
   * A membrane without prestrain, lying flat in the printer (its axis up).
   *
   * @param rim whether the rim is free to turn
   * @param radius radius of the rim
   * @param wall thickness
   * @return the membrane
   */
  public static TautMembrane of(CircularPlate.Rim rim, Length radius, Length wall) {
    return new TautMembrane(rim, radius, wall, 0.0, BuildDirection.AXIS_UP);
  }

  /**
   * This membrane with another radius.
   *
   * @param of the radius
   * @return the new membrane
   */
  public TautMembrane radius(Length of) {
    return new TautMembrane(rim, of, wall, prestrain, build);
  }

  /**
   * This membrane with another wall.
   *
   * @param of the wall
   * @return the new membrane
   */
  public TautMembrane wall(Length of) {
    return new TautMembrane(rim, radius, of, prestrain, build);
  }

  /**
   * This membrane stretched beforehand.
   *
   * @param of equal strain in all directions, from 0 to 0.5
   * @return the new membrane
   */
  public TautMembrane prestrain(double of) {
    return new TautMembrane(rim, radius, wall, of, build);
  }

  /**
   * This membrane built another way.
   *
   * @param of how it stands in the printer
   * @return the new membrane
   */
  public TautMembrane build(BuildDirection of) {
    return new TautMembrane(rim, radius, wall, prestrain, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double a = radius.m();
    double nu = grade.poisson();
    boolean clamped = rim == CircularPlate.Rim.CLAMPED;
    MembraneField field = new MembraneField(nu, prestrain);
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.PRESSURE, (t, u) -> at(field, u).pressure() * t / a)
            .strain((t, u) -> clamped ? at(field, u).clamped() : at(field, u).peak())
            .volume((t, u) -> u > 0.0 ? at(field, u).volume() * a * a * a : 0.0)
            .until(t -> LAST * a, "so deep a dome is no longer of small strain")
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(HENCKY);
    at(field, Math.min(form.end(load), LAST * a));
    double peak = clamped ? field.clamped() : field.peak();
    double narrow = Math.sqrt(12.0 * (1.0 - nu * nu) * field.rimForce()) / wall.ratioTo(radius);
    double bent = (clamped ? 1.5 / narrow : 0.0) + 40.0 / Math.pow(narrow, 3.0);
    double curved = clamped ? 0.0 : 1.5 * wall.m() / form.end(load);
    return form.working(field.working() / peak)
        .bands(
            new ClosedForm.Band(0.97, Math.min(1e6, 1.03 + bent)),
            new ClosedForm.Band(0.9, Math.min(1e6, 1.1 + curved)))
        .respond(grade, load, run, reservations(field, narrow));
  }

  private MembraneField at(MembraneField field, double u) {
    field.to(u / radius.m());
    return field;
  }

  private Checks reservations(MembraneField field, double narrow) {
    Checks checks = Checks.of(NAME, HENCKY);
    checks.check("stretch", 0.0, 0.03, field.peak());
    checks.check("radius / width of rim bending", 14.0, Double.POSITIVE_INFINITY, narrow);
    return checks;
  }

  @Override
  public List<Lever<TautMembrane>> levers() {
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
    return (rim == CircularPlate.Rim.CLAMPED ? "clamped" : "supported")
        + " membrane, radius "
        + radius
        + ", wall "
        + wall
        + (prestrain > 0.0 ? ", prestrain " + org.flexwright.internal.Text.number(prestrain) : "");
  }
}
