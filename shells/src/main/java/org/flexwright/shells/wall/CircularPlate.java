package org.flexwright.shells.wall;

import java.util.List;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Volume;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.response.Response;
import org.flexwright.run.RunControl;

/**
 * A round flat plate pressed in the middle by a soft patch of even pressure or by a point.
 *
 * <p>Formula, w the travel of the centre: clamped rim w = P/(64 pi D) [4 a^2 - 4 c^2 ln(a/c) - 3
 * c^2]; supported rim, free to turn and to slide in, w = P/(16 pi D) [(3 + nu)/(1 + nu) a^2 + c^2
 * ln(c/a) - (7 + 3 nu)/(4 (1 + nu)) c^2]. Peak strain t/2 times the largest curvature, at the
 * centre or at a clamped rim. Bending strain under a point would be infinite; through the wall the
 * load spreads, so for the strain a patch below 1.724 t counts as one of radius sqrt(1.6 c^2 + t^2)
 * - 0.675 t (Westergaard 1926, from memory; the layer in three dimensions gives the same to 1 %).
 * Symbols: a radius, c patch radius, t wall (m), D = E t^3/[12 (1 - nu^2)], P load (N). The secant
 * modulus is taken at the energy-weighted equivalent strain of the whole field.
 *
 * <p>Range: w/t to 0.5, beyond it the membrane carries ever more; the band's high end is 1 + 0.6
 * (w/t)^2, that of the strain 1.03 + 0.5 (w/t)^2 (from solutions of von Karman's equations, clamped
 * rims held or sliding, supported ones sliding). t/a to 0.1 (shear is left out; the band's low end
 * holds it), c from 0. Caveats outside. A supported rim that cannot slide is stiffer: by 30 % at
 * w/t 0.4. Source: Timoshenko and Woinowsky-Krieger 1959, Theory of Plates and Shells (from memory,
 * checked). Lying flat in the printer, as it starts, its strain is in the layers; upright (axis
 * lying) it pulls them apart.
 *
 * <p>JShell: {@code CircularPlate.of(CircularPlate.Rim.CLAMPED, mm(20), mm(4), mm(1.2))}
 *
 * @param rim how the rim is held
 * @param radius radius of the rim
 * @param patch radius of the loaded patch, below the radius; 0 for a point
 * @param wall thickness
 * @param build how it stands in the printer
 */
public record CircularPlate(Rim rim, Length radius, Length patch, Length wall, BuildDirection build)
    implements Part<CircularPlate> {

  /** How a rim is held. */
  public enum Rim {
    /** The rim cannot turn. */
    CLAMPED,
    /** The rim rests on a ring; free to turn and to slide in. */
    SUPPORTED
  }

  /** The wall thickness. */
  public static final Lever<CircularPlate> WALL =
      Lever.of("wall", CircularPlate::wall, CircularPlate::wall);

  /** The radius. */
  public static final Lever<CircularPlate> RADIUS =
      Lever.of("radius", CircularPlate::radius, CircularPlate::radius);

  private static final String NAME = "round plate";
  private static final Source PLATE =
      Source.memory("Timoshenko and Woinowsky-Krieger 1959, Theory of Plates and Shells");
  private static final Source SPREAD =
      Source.memory("Westergaard 1926, Public Roads 7: equivalent radius of a small patch");

  /**
   * Refuses a plate that makes no sense.
   *
   * @param rim how the rim is held
   * @param radius radius of the rim
   * @param patch radius of the loaded patch, below the radius; 0 for a point
   * @param wall thickness
   * @param build how it stands in the printer
   * @throws org.flexwright.InvalidInputException if a length is not above 0, the patch is below 0
   *     or not within the rim or the wall is not below the radius
   */
  public CircularPlate {
    Require.positive("radius", radius.m(), "m");
    Require.notNegative("patch radius", patch.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        patch.m() < radius.m(),
        "patch radius",
        patch,
        () -> "below the radius, " + radius,
        "the load must end within the rim");
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
   * @param patch radius of the loaded patch; 0 for a point
   * @param wall thickness
   * @return the plate
   */
  public static CircularPlate of(Rim rim, Length radius, Length patch, Length wall) {
    return new CircularPlate(rim, radius, patch, wall, BuildDirection.AXIS_UP);
  }

  /**
   * This plate with another radius.
   *
   * @param of the radius
   * @return the new plate
   */
  public CircularPlate radius(Length of) {
    return new CircularPlate(rim, of, patch, wall, build);
  }

  /**
   * This plate with another patch.
   *
   * @param of radius of the loaded patch; 0 for a point
   * @return the new plate
   */
  public CircularPlate patch(Length of) {
    return new CircularPlate(rim, radius, of, wall, build);
  }

  /**
   * This plate with another wall.
   *
   * @param of the wall
   * @return the new plate
   */
  public CircularPlate wall(Length of) {
    return new CircularPlate(rim, radius, patch, of, build);
  }

  /**
   * This plate built another way.
   *
   * @param of how it stands in the printer
   * @return the new plate
   */
  public CircularPlate build(BuildDirection of) {
    return new CircularPlate(rim, radius, patch, wall, of);
  }

  /** Deflection of the centre in P a^2/D. */
  double flexibility(double nu) {
    double c = patch.ratioTo(radius);
    double c2 = c * c;
    double log = c > 0.0 ? Math.log(c) : 0.0;
    if (rim == Rim.CLAMPED) {
      return (4.0 + 4.0 * c2 * log - 3.0 * c2) / (64.0 * Math.PI);
    }
    double wide = (3.0 + nu) / (1.0 + nu) + c2 * log - (7.0 + 3.0 * nu) / (4.0 + 4.0 * nu) * c2;
    return wide / (16.0 * Math.PI);
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    double nu = grade.poisson();
    double a = radius.m();
    double flexibility = flexibility(nu);
    double shape = 1.0 / (12.0 * (1.0 - nu * nu) * flexibility * a * a);
    double half = 0.5 / (flexibility * a * a);
    double share = field(nu, wall.m()).working();
    double working = WorkingStrain.bending(1.0).times(share).value();
    double relative = load instanceof LoadCase.ToTravel to ? to.travel().ratioTo(wall) : 0.0;
    double square = Math.min(relative * relative, 1e6);
    double low = 0.97 / (1.0 + shear(nu) / flexibility);
    return ClosedForm.of(NAME, wall)
        .spring(t -> shape * t * t * t)
        .strainSlope(t -> half * t * field(nu, t).peak())
        .working(working)
        .bands(
            new ClosedForm.Band(low, 1.0 + 0.6 * square),
            new ClosedForm.Band(0.97, 1.03 + 0.5 * square))
        .crossesLayers(build == BuildDirection.AXIS_LYING)
        .sources(PLATE, SPREAD)
        .respond(grade, load, run, reservations(relative));
  }

  /** Deflection by shear in P a^2/D, (3/5 (1 + nu)/pi) (t/a)^2 [2 ln(a/c) + 1]/[12 (1 - nu^2)]. */
  private double shear(double nu) {
    double slender = wall.ratioTo(radius);
    double log = -Math.log(Spread.radius(patch.m(), wall.m()) / radius.m());
    return 0.05 / Math.PI * slender * slender * (2.0 * log + 1.0) / (1.0 - nu);
  }

  private PlateField field(double nu, double t) {
    return new PlateField(Spread.radius(patch.m(), t) / radius.m(), rim, nu);
  }

  private Checks reservations(double relative) {
    Checks checks = Checks.of(NAME, PLATE);
    checks.check("travel / wall", 0.0, 0.5, relative);
    checks.check("wall / radius", 0.0, 0.1, wall.ratioTo(radius));
    return checks;
  }

  @Override
  public List<Lever<CircularPlate>> levers() {
    return List.of(WALL, RADIUS);
  }

  @Override
  public Volume printedVolume() {
    return wall.times(radius.times(radius).times(Math.PI));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return (rim == Rim.CLAMPED ? "clamped" : "supported")
        + " round plate, radius "
        + radius
        + ", patch "
        + patch
        + ", wall "
        + wall;
  }
}
