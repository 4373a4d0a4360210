package org.flexwright.lattice.cell;

import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A lattice whose struts lie in the three cubic families, by volume, in the limit of slender struts
 * that only stretch.
 *
 * <p>Formulas, per relative density and modulus of the solid, s the shares of volume: C11 = sum s
 * a4, C12 = C44 = sum s b4, so K = 1/9 for every mixture. Equally stiff in all directions if sum s
 * (a4 - 3 b4) = s1/3 - s2/12 - 2 s3/9 = 0, the line s1 = 1/5 + s3/3; then E = 1/6, G = 1/15, nu =
 * 1/4, the most that struts can give. Its ends are 20 % edges with 80 % face diagonals and 40 %
 * edges with 60 % space diagonals.
 *
 * <p>Symbols: s1 edges, s2 face diagonals, s3 space diagonals, a4 and b4 see {@link StrutFamily}.
 *
 * <p>Range: slender struts, nodes that move with the mean strain; bending adds a part of the order
 * of (d/L)^2. Elastic constants only: struts of unlike slenderness buckle at unlike loads.
 *
 * <p>Source: Gurtner and Durand 2014, Proc. R. Soc. A 470, 20130611 (values from memory); the
 * criterion is derived.
 *
 * <p>JShell: {@code StrutMixture.isotropic(0.6).stretchLimit(0.1)}
 *
 * @param edges share of the strut volume along the cell edges, 0 to 1
 * @param faceDiagonals share along the face diagonals, 0 to 1
 * @param spaceDiagonals share along the space diagonals, 0 to 1; the three sum to 1
 */
public record StrutMixture(double edges, double faceDiagonals, double spaceDiagonals) {

  /** The share of space diagonals at which no face diagonals are left on the isotropic line. */
  private static final double MOST_SPACE = 0.6;

  private static final double ROUND = 1e-9;

  /**
   * Refuses shares that are no parts of a whole.
   *
   * @param edges share along the cell edges, 0 to 1
   * @param faceDiagonals share along the face diagonals, 0 to 1
   * @param spaceDiagonals share along the space diagonals, 0 to 1
   * @throws InvalidInputException if a share is outside 0 to 1 or they do not sum to 1
   */
  public StrutMixture {
    Require.between("share of struts along the edges", edges, 0.0, 1.0, "");
    Require.between("share of struts along face diagonals", faceDiagonals, 0.0, 1.0, "");
    Require.between("share of struts along space diagonals", spaceDiagonals, 0.0, 1.0, "");
    double sum = edges + faceDiagonals + spaceDiagonals;
    Require.that(
        Math.abs(sum - 1.0) < ROUND, "sum of the shares", sum, "1", "divide each by the sum");
  }

  /**
   * The mixture that is equally stiff in all directions.
   *
   * @param spaceDiagonals share along the space diagonals, 0 to 0.6
   * @return the mixture with as many edges as it takes
   * @throws InvalidInputException if the share is outside 0 to 0.6
   */
  public static StrutMixture isotropic(double spaceDiagonals) {
    Require.between("share of struts along space diagonals", spaceDiagonals, 0.0, MOST_SPACE, "");
    double edges = 0.2 + spaceDiagonals / 3.0;
    return new StrutMixture(edges, Math.max(0.0, 1.0 - edges - spaceDiagonals), spaceDiagonals);
  }

  /**
   * C11 per density.
   *
   * @return sum of s a4
   */
  public double c11() {
    return edges * StrutFamily.EDGES.fourth()
        + faceDiagonals * StrutFamily.FACE_DIAGONALS.fourth()
        + spaceDiagonals * StrutFamily.SPACE_DIAGONALS.fourth();
  }

  /**
   * C12 and C44 per density.
   *
   * @return sum of s b4
   */
  public double c44() {
    return faceDiagonals * StrutFamily.FACE_DIAGONALS.mixed()
        + spaceDiagonals * StrutFamily.SPACE_DIAGONALS.mixed();
  }

  /**
   * How far the mixture is from being equally stiff in all directions: above 0 it is stiffest along
   * the edges, below 0 along the space diagonals.
   *
   * @return sum of s (a4 - 3 b4), -2/9 to 1/3
   */
  public double anisotropy() {
    return c11() - 3.0 * c44();
  }

  /**
   * The elastic constants.
   *
   * @param density relative density, above 0; slender struts mean well below 0.1
   * @return the constants over Young's modulus of the solid
   * @throws InvalidInputException if stretch alone resists no shear, as with one family of edges or
   *     of space diagonals only
   */
  public CubicStiffness stretchLimit(double density) {
    Require.positive("relative density", density, "");
    double tetragonal = 0.5 * (c11() - c44());
    String advice = "such struts must bend, take a cell of Cells";
    Require.that(c44() > ROUND, "shear modulus by stretch", c44(), "above 0", advice);
    Require.that(tetragonal > ROUND, "shear modulus by stretch", tetragonal, "above 0", advice);
    return new CubicStiffness(density / 9.0, density * tetragonal, density * c44());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "struts "
        + Text.number(100.0 * edges)
        + " % edges, "
        + Text.number(100.0 * faceDiagonals)
        + " % face diagonals, "
        + Text.number(100.0 * spaceDiagonals)
        + " % space diagonals";
  }
}
