package org.flexwright.lattice.cell;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The six elastic constants of an endless lattice that is the same along x and y but not along z,
 * each over Young's modulus of the solid.
 *
 * <p>Formulas: E001 = C33 - 2 C13^2/(C11 + C12); E100 = (C11 - C12) m/(C11 C33 - C13^2) with m =
 * (C11 + C12) C33 - 2 C13^2; nu12 = (C12 C33 - C13^2)/(C11 C33 - C13^2); nu31 = C13/(C11 + C12).
 *
 * <p>Range: C11 above C12 and m above 0, as in any stable solid.
 *
 * <p>Source: elasticity of tetragonal crystals, for example Nye, Physical Properties of Crystals
 * (from memory).
 *
 * <p>JShell: {@code Cells.BODY_CENTRED_WITH_VERTICALS.centreLine(0.2, 0.3).young001()}
 *
 * @param c11 along x or y with the sides held
 * @param c12 the side stress along y for a push along x
 * @param c13 the side stress along z for a push along x, and along x for a push along z
 * @param c33 along z with the sides held
 * @param c44 shear between z and x or y
 * @param c66 shear between x and y
 */
public record TetragonalStiffness(
    double c11, double c12, double c13, double c33, double c44, double c66) {

  /**
   * Refuses constants of an unstable solid.
   *
   * @param c11 along x or y with the sides held
   * @param c12 the side stress along y for a push along x
   * @param c13 the side stress along z for a push along x
   * @param c33 along z with the sides held
   * @param c44 shear between z and x or y
   * @param c66 shear between x and y
   * @throws org.flexwright.InvalidInputException if a modulus is not above 0
   */
  public TetragonalStiffness {
    Require.finite("stiffness C13", c13, "");
    Require.positive("stiffness C33", c33, "");
    Require.positive("shear modulus C44", c44, "");
    Require.positive("shear modulus C66", c66, "");
    Require.positive("C11 less C12", c11 - c12, "");
    Require.positive("C11 plus C12", c11 + c12, "");
    Require.positive(
        "(C11 + C12) C33 less twice C13 squared", (c11 + c12) * c33 - 2.0 * c13 * c13, "");
  }

  /**
   * Young's modulus along z, sides free.
   *
   * @return E001
   */
  public double young001() {
    return c33 - 2.0 * c13 * c13 / (c11 + c12);
  }

  /**
   * Young's modulus along x or y, sides free.
   *
   * @return E100
   */
  public double young100() {
    return (c11 - c12) * ((c11 + c12) * c33 - 2.0 * c13 * c13) / (c11 * c33 - c13 * c13);
  }

  /**
   * Poisson's ratio along y for a push along x.
   *
   * @return nu12
   */
  public double poisson12() {
    return (c12 * c33 - c13 * c13) / (c11 * c33 - c13 * c13);
  }

  /**
   * Poisson's ratio along x or y for a push along z.
   *
   * @return nu31
   */
  public double poisson31() {
    return c13 / (c11 + c12);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "E001 "
        + Text.number(young001())
        + ", E100 "
        + Text.number(young100())
        + ", C44 "
        + Text.number(c44)
        + ", C66 "
        + Text.number(c66)
        + " of the solid's modulus";
  }
}
