package org.flexwright.law.classical;

import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The two-constant Mooney-Rivlin law, W = C10 (I1 - 3) + C01 (I2 - 3).
 *
 * <p>Symbols: I1 = sum l_i^2, I2 = sum over pairs l_i^2 l_j^2; G = 2 (C10 + C01). Both constants
 * not negative, which makes the law stable at every stretch. Source: Mooney 1940, J. Appl. Phys.
 * 11; Rivlin 1948, Phil. Trans. A 241 (from memory, checked).
 *
 * <p>JShell: {@code MooneyRivlin.of(mpa(0.162), mpa(0.0059))}
 *
 * @param c10 the first constant, not negative
 * @param c01 the second constant, not negative, not zero together with the first
 */
public record MooneyRivlin(Pressure c10, Pressure c01) implements StrainEnergy {

  /** What {@link #fromHabit} rests on. */
  public static final Caveat HABIT =
      Caveat.note(
          "Mooney-Rivlin from hardness",
          "C01 = C10/4 is a habit for black-filled rubber, not data; for polyurethane it is wrong"
              + " in kind",
          Source.read("Lalo & Greco, COBEM 2017, paper 5280: constants for 55 to 70 Shore A"));

  private static final StretchRange RANGE =
      new StretchRange(
          1e-3, 1e3, "stable everywhere", Source.derived("stable for constants not below 0"));

  /**
   * Refuses constants that make the law unstable.
   *
   * @param c10 the first constant, not negative
   * @param c01 the second constant, not negative, not zero together with the first
   * @throws org.flexwright.InvalidInputException if one constant is negative or both are zero
   */
  public MooneyRivlin {
    Require.notNegative("C10", c10.pa(), "Pa");
    Require.notNegative("C01", c01.pa(), "Pa");
    Require.positive("C10 + C01", c10.pa() + c01.pa(), "Pa");
  }

  /**
   * From both constants.
   *
   * @param c10 the first constant
   * @param c01 the second constant
   * @return the law
   */
  public static MooneyRivlin of(Pressure c10, Pressure c01) {
    return new MooneyRivlin(c10, c01);
  }

  /**
   * From Young's modulus alone by the habit C01 = C10/4 with 6 (C10 + C01) = E; carry {@link
   * #HABIT} with the result.
   *
   * @param young Young's modulus at rest
   * @return the law
   */
  public static MooneyRivlin fromHabit(Pressure young) {
    return new MooneyRivlin(young.times(4.0 / 30.0), young.times(1.0 / 30.0));
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    return Invariants.sane(
        c10.pa() * Invariants.first(l1, l2, l3) + c01.pa() * Invariants.second(l1, l2, l3));
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    Invariants.gradient(l1, l2, l3, c10.pa(), c01.pa(), out);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    Invariants.hessian(l1, l2, l3, c10.pa(), c01.pa(), 0.0, 0.0, out);
  }

  @Override
  public double shearModulus() {
    return 2.0 * (c10.pa() + c01.pa());
  }

  @Override
  public StretchRange range() {
    return RANGE;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Mooney-Rivlin law, C10 "
        + Text.number(c10.mpa())
        + " MPa, C01 "
        + Text.number(c01.mpa())
        + " MPa";
  }
}
