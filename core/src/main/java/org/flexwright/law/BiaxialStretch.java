package org.flexwright.law;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * A homogeneous biaxial state of an incompressible elastomer: two stretches, the thickness free.
 *
 * <p>Formula: w(l1, l2) = W(l1, l2, 1/(l1 l2)), nominal stresses P_i = dw/dl_i, true stresses s_i =
 * l_i P_i, tangent dP_i/dl_j = d2w/dl_i dl_j, which is symmetric. The inverse follows the load from
 * rest by Newton steps.
 *
 * <p>Symbols: l1, l2 stretches, W energy of the {@link StrainEnergy} (Pa), P_i force per reference
 * area, s_i force per deformed area (Pa).
 *
 * <p>Range: stresses wherever the law has them. The inverse is given where dP_i/dl_j is positive
 * definite on the whole way from rest and every stretch inside the range of the law: there it is
 * the one answer that the load can reach. Whether a state is stable: {@link Stability}.
 *
 * <p>Source: Treloar, The Physics of Rubber Elasticity (from memory); on the loss of uniqueness
 * under equal loads Kearsley 1986, Int. J. Solids Struct. 22 (from memory).
 *
 * <p>JShell: {@code new BiaxialStretch(1.5, 1.2).nominalStress(NeoHookean.of(mpa(0.4)))}
 *
 * @param l1 the first stretch, above 0
 * @param l2 the second stretch, above 0
 */
public record BiaxialStretch(double l1, double l2) {

  /**
   * Refuses stretches that cannot be.
   *
   * @param l1 the first stretch, above 0
   * @param l2 the second stretch, above 0
   * @throws InvalidInputException if one is not above 0
   */
  public BiaxialStretch {
    Require.positive("first stretch", l1, "");
    Require.positive("second stretch", l2, "");
    Require.positive("stretch of the thickness", 1.0 / (l1 * l2), "");
  }

  /**
   * The two stresses of a state.
   *
   * @param first in the first direction
   * @param second in the second direction
   */
  public record Stress(Pressure first, Pressure second) {

    /** One readable line. */
    @Override
    public String toString() {
      return first + " and " + second;
    }
  }

  /**
   * The derivatives of the two nominal stresses by the two stretches.
   *
   * @param first dP1/dl1
   * @param second dP2/dl2
   * @param cross dP1/dl2 and dP2/dl1, which are equal
   */
  public record Tangent(Pressure first, Pressure second, Pressure cross) {}

  /**
   * The state under two nominal stresses, reached when both grow in proportion from rest.
   *
   * @param law the law
   * @param nominal the stresses
   * @return the state
   * @throws InvalidInputException if the state is lost on the way
   */
  public static BiaxialStretch under(StrainEnergy law, Stress nominal) {
    return new LoadFollower(law, nominal).state();
  }

  /**
   * The stretch of the thickness, 1/(l1 l2).
   *
   * @return l3
   */
  public double thickness() {
    return 1.0 / (l1 * l2);
  }

  /**
   * Both nominal stresses.
   *
   * @param law the law
   * @return P1 and P2
   * @throws InvalidInputException if the law locks before this state
   */
  public Stress nominalStress(StrainEnergy law) {
    StateStiffness s = in(law);
    return new Stress(typed(law, s.nominal1()), typed(law, s.nominal2()));
  }

  /**
   * Both true stresses.
   *
   * @param law the law
   * @return s1 and s2
   * @throws InvalidInputException if the law locks before this state
   */
  public Stress trueStress(StrainEnergy law) {
    StateStiffness s = in(law);
    return new Stress(typed(law, l1 * s.nominal1()), typed(law, l2 * s.nominal2()));
  }

  /**
   * The derivatives of the nominal stresses.
   *
   * @param law the law
   * @return dP_i/dl_j
   * @throws InvalidInputException if the law locks before this state
   */
  public Tangent nominalTangent(StrainEnergy law) {
    StateStiffness s = in(law);
    return new Tangent(
        typed(law, s.tangent11()), typed(law, s.tangent22()), typed(law, s.tangent12()));
  }

  StateStiffness in(StrainEnergy law) {
    return new StateStiffness(law).at(l1, l2, thickness());
  }

  private Pressure typed(StrainEnergy law, double value) {
    return Pressure.pa(finite(law, value));
  }

  double finite(StrainEnergy law, double value) {
    Require.that(
        Double.isFinite(value),
        "biaxial stretch",
        this,
        () -> "a state in which the law has a finite stress, its range is " + law.range(),
        "keep below the locking of the law, or take one that locks later");
    return value;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "stretches " + Text.number(l1) + " and " + Text.number(l2);
  }
}
