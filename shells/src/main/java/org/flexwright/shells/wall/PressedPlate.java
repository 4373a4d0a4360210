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
 * A round flat plate blown up by even pressure, from the first bending to where the stretched
 * middle surface carries nearly all.
 *
 * <p>Formula: the equations of von Karman, solved: D (s'' + s'/r - s/r^2) = q r/2 + N s, r [(r^2
 * N)'/r]' = -E t s^2/2, s = dw/dr. At small travel w = q a^4/(64 D) clamped, (5 + nu) q a^4/[64 (1
 * + nu) D] supported, each with the travel of shear, q a^2/(4 (5/6) G t), exact there. Symbols: a
 * radius, t wall, w travel of the centre (m), q pressure, N radial force per length, D = E t^3/[12
 * (1 - nu^2)]. Peak strain on the face in tension, bending and stretch together. The secant modulus
 * is taken at the energy-weighted equivalent strain of the field at the end of the path.
 *
 * <p>Range: w/t to 7 (checked; the path ends at 50, where {@link TautMembrane} serves), t/a to 0.2,
 * w/a to 0.2 (rotations stay moderate; pressure that turns with the wall asks 1 to 3 % more there).
 * Caveats outside. The rim strain of a clamped plate is that of a sharp corner in bending; a fillet
 * lowers it. Source: von Karman 1910, Festigkeitsprobleme im Maschinenbau; Way 1934, Trans. ASME 56
 * (from memory, solved here). Lying flat in the printer, as it starts, its strain is in the layers.
 *
 * <p>JShell: {@code PressedPlate.of(PressedPlate.Rim.CLAMPED, mm(20), mm(1.2))}
 *
 * @param rim how the rim is held
 * @param radius radius of the rim
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record PressedPlate(Rim rim, Length radius, Length wall, BuildDirection build)
    implements Part<PressedPlate> {

  /** How the rim is held. */
  public enum Rim {
    /** The rim can neither turn nor slide in: bonded or screwed down. */
    CLAMPED,
    /** The rim cannot turn, but slides in: clipped between smooth rings. */
    CLAMPED_SLIDING,
    /** The rim turns, but cannot slide in. */
    SUPPORTED,
    /** The rim rests on a smooth ring; it turns and slides in. */
    SUPPORTED_SLIDING;

    boolean clamped() {
      return this == CLAMPED || this == CLAMPED_SLIDING;
    }

    boolean fixed() {
      return this == CLAMPED || this == SUPPORTED;
    }
  }

  /** The wall thickness. */
  public static final Lever<PressedPlate> WALL =
      Lever.of("wall", PressedPlate::wall, PressedPlate::wall);

  /** The radius. */
  public static final Lever<PressedPlate> RADIUS =
      Lever.of("radius", PressedPlate::radius, PressedPlate::radius);

  private static final String NAME = "pressed plate";
  private static final double LAST = 50.0;
  private static final Source KARMAN =
      Source.memory("von Karman 1910; Way 1934, Trans. ASME 56: large deflection of round plates");

  /**
   * Refuses a plate that makes no sense.
   *
   * @param rim how the rim is held
   * @param radius radius of the rim
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall is not
   *     below the radius
   */
  public PressedPlate {
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
   * A plate, lying flat in the printer (its axis up).
   *
   * @param rim how the rim is held
   * @param radius radius of the rim
   * @param wall thickness
   * @return the plate
   */
  public static PressedPlate of(Rim rim, Length radius, Length wall) {
    return new PressedPlate(rim, radius, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This plate with another radius.
   *
   * @param of the radius
   * @return the new plate
   */
  public PressedPlate radius(Length of) {
    return new PressedPlate(rim, of, wall, build);
  }

  /**
   * This plate with another wall.
   *
   * @param of the wall
   * @return the new plate
   */
  public PressedPlate wall(Length of) {
    return new PressedPlate(rim, radius, of, build);
  }

  /**
   * This plate built another way.
   *
   * @param of how it stands in the printer
   * @return the new plate
   */
  public PressedPlate build(BuildDirection of) {
    return new PressedPlate(rim, radius, wall, of);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double a = radius.m();
    LargeDeflection field = new LargeDeflection(grade.poisson(), rim.clamped(), rim.fixed());
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .load(Channel.PRESSURE, (t, u) -> at(field, t, u).pressure() * Math.pow(t / a, 4.0))
            .strain((t, u) -> at(field, t, u).peak() * (t / a) * (t / a))
            .workingStrain(
                (t, u) -> {
                  LargeDeflection state = at(field, t, u);
                  return state.working() * state.peak() * (t / a) * (t / a);
                })
            .volume((t, u) -> u > 0.0 ? at(field, t, u).volume() * Math.PI * a * a * t : 0.0)
            .until(t -> LAST * t, "beyond 50 walls of travel bending no longer counts: a membrane")
            .bands(new ClosedForm.Band(0.97, 1.03), new ClosedForm.Band(0.95, 1.1))
            .crossesLayers(build == BuildDirection.AXIS_LYING)
            .sources(KARMAN);
    double end = form.end(load);
    return form.respond(grade, load, run, reservations(end));
  }

  private LargeDeflection at(LargeDeflection field, double t, double u) {
    field.to(u / t, t / radius.m());
    return field;
  }

  private Checks reservations(double travel) {
    Checks checks = Checks.of(NAME, KARMAN);
    checks.check("travel / wall", 0.0, 7.0, travel / wall.m());
    checks.check("travel / radius", 0.0, 0.2, travel / radius.m());
    checks.check("wall / radius", 0.0, 0.2, wall.ratioTo(radius));
    return checks;
  }

  @Override
  public List<Lever<PressedPlate>> levers() {
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
    String held =
        switch (rim) {
          case CLAMPED -> "clamped";
          case CLAMPED_SLIDING -> "clamped but sliding";
          case SUPPORTED -> "supported and held";
          case SUPPORTED_SLIDING -> "supported";
        };
    return held + " plate under pressure, radius " + radius + ", wall " + wall;
  }
}
