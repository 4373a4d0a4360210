package org.flexwright.decide;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.relation.HardnessFromModulus;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.internal.Require;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;

/**
 * Feels-like hardness: the hardness of rubber at which the same part with a stated reference size
 * would be as stiff. Small-strain stiffness is compared with small-strain stiffness, since the
 * rubber relations are small-strain ones.
 *
 * <p>With k(size, E) the stiffness of the part at rest: k(size, E_grade) = k(reference, E_rubber).
 * For a part that bends, E_rubber = E_grade (size/reference)^3 to first order; here it is solved,
 * not assumed.
 *
 * <p>JShell: {@code FeelsLike.of(strip, Strip.WALL, mm(2)).hardness(mm(1), grade)}
 *
 * @param <P> the part
 */
public final class FeelsLike<P extends Part<P>> {

  private static final double SMALL = 1e-4; // travel over reference size, deep in the linear range
  private static final Pressure UNIT = Pressure.mpa(1.0);

  private final P part;
  private final Lever<P> lever;
  private final Length reference;

  private FeelsLike(P part, Lever<P> lever, Length reference) {
    this.part = part;
    this.lever = lever;
    this.reference = reference;
  }

  /**
   * A comparison with a part of rubber.
   *
   * @param part the part
   * @param lever the size that differs
   * @param reference the size of the rubber part, above 0
   * @param <P> the part's type
   * @return the comparison
   * @throws InvalidInputException if the part cannot have that size
   */
  public static <P extends Part<P>> FeelsLike<P> of(P part, Lever<P> lever, Length reference) {
    Require.positive("reference " + lever.name(), reference.m(), "m");
    return new FeelsLike<>(lever.set(part, reference), lever, reference);
  }

  /**
   * The hardness that the part feels like.
   *
   * @param size its size in the grade
   * @param grade the grade
   * @return Shore A with its band: the grade's modulus band and the spread of the relations
   */
  public Estimate<ShoreA> hardness(Length size, Grade grade) {
    double ratio = stiffness(size, grade) / rubberStiffness();
    Estimate<Pressure> band = grade.modulusAt(0.0);
    Estimate<ShoreA> low = read(ratio * band.low().ratioTo(band.nominal()));
    Estimate<ShoreA> nominal = read(ratio);
    Estimate<ShoreA> high = read(ratio * band.high().ratioTo(band.nominal()));
    return new Estimate<>(
        low.low(),
        nominal.nominal(),
        high.high(),
        Estimate.Band.SPREAD_AND_READING,
        List.of(Source.derived("equal stiffness at rest with a reference " + reference)),
        nominal.caveats());
  }

  private static Estimate<ShoreA> read(double unitModuli) {
    return HardnessFromModulus.shoreA(UNIT.times(unitModuli));
  }

  /**
   * The size at which the part in a grade feels like a hardness.
   *
   * @param feel the wanted hardness
   * @param grade the grade
   * @param from least size to consider
   * @param to greatest size to consider
   * @return the size
   * @throws InvalidInputException if no size in the range feels like that; the message names the
   *     hardness at both ends
   */
  public Length size(ShoreA feel, Grade grade, Length from, Length to) {
    Require.that(
        from.compareTo(to) < 0,
        "range of the " + lever,
        from + " to " + to,
        "the least below the greatest",
        "swap the ends");
    Pressure rubber = ModulusFromHardness.of(feel).spread().nominal();
    double wanted = rubberStiffness() * rubber.ratioTo(UNIT);
    double low = stiffness(from, grade);
    double high = stiffness(to, grade);
    Require.that(
        (low - wanted) * (high - wanted) <= 0.0,
        "feels-like hardness",
        feel,
        () -> hardness(from, grade).nominal() + " to " + hardness(to, grade).nominal(),
        "widen the range of the " + lever);
    double x =
        new BrentSolver(1e-12)
            .solve(
                100,
                s -> Math.log(stiffness(Length.m(Math.exp(s)), grade) / wanted),
                Math.log(from.m()),
                Math.log(to.m()));
    return Length.m(Math.exp(x));
  }

  private double rubberStiffness() {
    return stiffness(reference, Grade.ofLaw("rubber of 1 MPa", NeoHookean.ofYoung(UNIT)));
  }

  private double stiffness(Length size, Grade grade) {
    Length travel = reference.times(SMALL);
    P sized = lever.set(part, size);
    return sized.respond(grade, LoadCase.toTravel(travel)).load().nominal() / travel.m();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "feels like " + part;
  }
}
