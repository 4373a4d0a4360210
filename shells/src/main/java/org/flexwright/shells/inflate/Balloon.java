package org.flexwright.shells.inflate;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Checks;
import org.flexwright.evidence.Source;
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
 * A hollow sphere, thin or thick, inflated; its travel is the growth of its outer radius and it
 * answers with the pressure. Its outside stays when the wall changes.
 *
 * <p>Formula, for any law: p = int_A^B W'(l)/(l^2 R) dR with l = r/R, r^3 = a^3 + R^3 - A^3, W(l) =
 * W(l, l, l^-2); for a thin wall p = (t/R) W'(l)/l^2 on the mean radius. Limit load: the first
 * maximum of the pressure. Peak strain: the hoop strain of the inner face. Volume: what the bore
 * takes in. Symbols: A, B reference inner and outer radius, a deformed inner radius, t wall (m), W
 * energy of the law (Pa).
 *
 * <p>Range: any wall; stretches within the law. Exact for an even wall and a round shape: past the
 * maximum a real balloon may lose its round shape and is stable only while its volume is
 * controlled. Caveats there and above 80 % of the limit pressure (common practice). Band: exact.
 * Source: Green and Zerna 1954 (from memory, checked). Printed layers are pulled apart somewhere in
 * a sphere whatever way it is built.
 *
 * <p>Read the cautions of this package before pressurising anything.
 *
 * <p>JShell: {@code Balloon.of(mm(40), mm(1)).respond(grade, LoadCase.toTravel(mm(6)))}
 *
 * @param outside diameter of the outside at rest
 * @param wall wall thickness, below half the outside
 */
public record Balloon(Length outside, Length wall) implements Part<Balloon> {

  /** The wall thickness; the outside stays. */
  public static final Lever<Balloon> WALL = Lever.of("wall", Balloon::wall, Balloon::wall);

  /** The diameter of the outside; the wall stays. */
  public static final Lever<Balloon> OUTSIDE =
      Lever.of("outside", Balloon::outside, Balloon::outside);

  private static final String NAME = "balloon";
  private static final Source SPHERE = Source.memory("Green and Zerna 1954: thick sphere");

  /**
   * Refuses a balloon that makes no sense.
   *
   * @param outside diameter of the outside at rest
   * @param wall wall thickness, below half the outside
   * @throws org.flexwright.InvalidInputException if a length is not above 0 or the wall leaves no
   *     inside
   */
  public Balloon {
    Require.positive("outside", outside.m(), "m");
    Require.positive("wall", wall.m(), "m");
    Require.that(
        wall.m() < 0.5 * outside.m(),
        "wall",
        wall,
        () -> "below half the outside, " + outside.times(0.5),
        "nothing would be left to inflate");
  }

  /**
   * A balloon.
   *
   * @param outside diameter of the outside at rest
   * @param wall wall thickness
   * @return the balloon
   */
  public static Balloon of(Length outside, Length wall) {
    return new Balloon(outside, wall);
  }

  /**
   * This balloon with another outside, on the same wall.
   *
   * @param of the diameter
   * @return the new balloon
   */
  public Balloon outside(Length of) {
    return new Balloon(of, wall);
  }

  /**
   * This balloon with another wall, on the same outside.
   *
   * @param of the wall
   * @return the new balloon
   */
  public Balloon wall(Length of) {
    return new Balloon(outside, of);
  }

  private double outer() {
    return 0.5 * outside.m();
  }

  private SphereWall sphere(StrainEnergy law, double t) {
    return new SphereWall(law, outer() - t, outer());
  }

  private LimitPoints limits(StrainEnergy law, double t) {
    double end = LimitPoints.farthest(law.range().high());
    return LimitPoints.of(sphere(law, t)::pressure, 1.0, end);
  }

  /**
   * The limit pressure and the minimum after it.
   *
   * @param grade the material
   * @return the points, stretches at the bore
   */
  public LimitPoints limits(Grade grade) {
    return limits(grade.law(), wall.m());
  }

  @Override
  public Response respond(Grade grade, LoadCase load, RunControl run) {
    StrainEnergy law = grade.law();
    ClosedForm form =
        ClosedForm.of(NAME, wall)
            .loadOfLaw(
                Channel.PRESSURE,
                (t, u) -> {
                  SphereWall s = sphere(law, t);
                  return s.pressure(s.bore(u));
                })
            .strain((t, u) -> sphere(law, t).bore(u) - 1.0)
            .volume(this::taken)
            .limit(t -> travel(limits(law, t), sphere(law, t)))
            .crossesLayers(true)
            .sources(SPHERE);
    Checks checks = Checks.of(NAME, SPHERE);
    SphereWall s = sphere(law, wall.m());
    double bore = s.bore(form.end(load));
    Inflating.law(checks, grade, Deformation.EQUIBIAXIAL, bore);
    Inflating.reserve(checks, limits(grade).maximum(), load, bore, s::pressure);
    return form.respond(grade, load, run, checks);
  }

  private static double travel(LimitPoints limits, SphereWall s) {
    Optional<LimitPoints.Point> max = limits.maximum();
    return max.map(m -> s.growth(m.stretch())).orElse(Double.NaN);
  }

  /** The growth of the bore is the growth of the outside: the wall keeps its volume. */
  private double taken(double t, double u) {
    double b = outer() + u;
    return 4.0 / 3.0 * Math.PI * u * (b * b + b * outer() + outer() * outer());
  }

  @Override
  public List<Lever<Balloon>> levers() {
    return List.of(WALL, OUTSIDE);
  }

  @Override
  public Volume printedVolume() {
    double b = outer();
    double a = b - wall.m();
    return Volume.m3(4.0 / 3.0 * Math.PI * wall.m() * (b * b + a * b + a * a));
  }

  @Override
  public Feature thinnest() {
    return new Feature(Feature.Kind.AIRTIGHT_WALL, wall);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "balloon, outside " + outside + ", wall " + wall;
  }
}
