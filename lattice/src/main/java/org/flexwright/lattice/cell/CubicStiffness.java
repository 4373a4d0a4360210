package org.flexwright.lattice.cell;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The three elastic constants of an endless lattice of cubic symmetry, each over Young's modulus of
 * the solid.
 *
 * <p>Formulas, with K = (C11 + 2 C12)/3 and C' = (C11 - C12)/2: E100 = 9 K C'/(3 K + C'), C11 = K +
 * 4 C'/3, C12 = K - 2 C'/3, nu12 = C12/(C11 + C12), 1/E110 = 1/(9 K) + 1/(12 C') + 1/(4 C44),
 * 1/E111 = 1/(9 K) + 1/(3 C44), Zener ratio C44/C'. Kept as K and C' because a soft cell has C11
 * and C12 equal to many digits.
 *
 * <p>Source: elasticity of cubic crystals, for example Nye, Physical Properties of Crystals (from
 * memory).
 *
 * @param bulk K, above 0
 * @param tetragonal C', the shear modulus on planes at 45 degrees to the cell edges, above 0
 * @param c44 the shear modulus along the cell edges, above 0
 */
public record CubicStiffness(double bulk, double tetragonal, double c44) {

  /**
   * Refuses constants that are not above 0.
   *
   * @param bulk K, above 0
   * @param tetragonal C', above 0
   * @param c44 the shear modulus along the cell edges, above 0
   * @throws org.flexwright.InvalidInputException if a constant is not above 0
   */
  public CubicStiffness {
    Require.positive("bulk modulus", bulk, "");
    Require.positive("tetragonal shear modulus", tetragonal, "");
    Require.positive("shear modulus C44", c44, "");
  }

  /**
   * The constants from Young's modulus along an edge: C' = 3 K E/(9 K - E).
   *
   * @param young100 Young's modulus along a cell edge, above 0, below 9 K
   * @param bulk K, above 0
   * @param c44 the shear modulus along the edges, above 0
   * @return the constants
   * @throws org.flexwright.InvalidInputException if the modulus is not below 9 K
   */
  public static CubicStiffness ofYoung(double young100, double bulk, double c44) {
    Require.positive("Young's modulus of the cell", young100, "");
    Require.that(
        young100 < 9.0 * bulk,
        "Young's modulus of the cell",
        young100,
        () -> "below 9 bulk moduli, " + Text.number(9.0 * bulk),
        "");
    return new CubicStiffness(bulk, 3.0 * bulk * young100 / (9.0 * bulk - young100), c44);
  }

  /**
   * Young's modulus along a cell edge, sides free.
   *
   * @return E100
   */
  public double young100() {
    return 9.0 * bulk * tetragonal / (3.0 * bulk + tetragonal);
  }

  /**
   * Young's modulus along a face diagonal, sides free.
   *
   * @return E110
   */
  public double young110() {
    return 1.0 / (1.0 / (9.0 * bulk) + 1.0 / (12.0 * tetragonal) + 1.0 / (4.0 * c44));
  }

  /**
   * Young's modulus along a space diagonal, sides free.
   *
   * @return E111
   */
  public double young111() {
    return 1.0 / (1.0 / (9.0 * bulk) + 1.0 / (3.0 * c44));
  }

  /**
   * The modulus along a cell edge with the sides held: what a very wide bonded pad tends to.
   *
   * @return C11
   */
  public double c11() {
    return bulk + 4.0 / 3.0 * tetragonal;
  }

  /**
   * The side stress of a pad with its sides held.
   *
   * @return C12
   */
  public double c12() {
    return bulk - 2.0 / 3.0 * tetragonal;
  }

  /**
   * Poisson's ratio for a push along a cell edge.
   *
   * @return nu12
   */
  public double poisson12() {
    return c12() / (c11() + c12());
  }

  /**
   * Zener's ratio: 1 if the lattice is equally stiff in all directions.
   *
   * @return C44/C'
   */
  public double zener() {
    return c44 / tetragonal;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "E100 "
        + Text.number(young100())
        + ", C11 "
        + Text.number(c11())
        + ", K "
        + Text.number(bulk)
        + ", C44 "
        + Text.number(c44)
        + " of the solid's modulus";
  }
}
