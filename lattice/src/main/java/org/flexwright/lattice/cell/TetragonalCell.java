package org.flexwright.lattice.cell;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;

/**
 * The body-centred cell with one vertical strut along z at each corner. It is not cubic, so it is
 * no {@link UnitCell} and fills no pad; its constants are given for comparison.
 *
 * <p>Formulas: the body-centred cell plus, along z, the vertical struts: C33 grows by A/a^2. Under
 * shear between z and x the nodes turn: corner nodes with the verticals, centres less. With S_e =
 * 12 EI/(a (1 + p_a)) of the vertical, S_b = 64 EI/(L (1 + p)) and S_d = 8 (2 + t) EI/(3 L) of the
 * eight diagonals, t = 1/(1 + nu): C44 grows by 1/(4 a^3 (1/S_e + 1/S_b + 1/(4 S_d))).
 *
 * <p>Symbols: a cell edge, L diagonal from node to node, A and I of the section, p = 12 EI/(kappa
 * GA L^2) of a diagonal and p_a of a vertical, E = 1.
 *
 * <p>Range: centre-line struts, x below {@link #mergingSlenderness}. Caveats: fat joints are
 * unknown.
 *
 * <p>Source: derived.
 *
 * <p>JShell: {@code Cells.BODY_CENTRED_WITH_VERTICALS.centreLine(0.2, 0.3)}
 */
public final class TetragonalCell implements StrutCell {

  private static final double L = 0.5 * Math.sqrt(3.0);
  private static final CellShape SHAPE =
      new CellShape(
          "body-centred with verticals",
          Topology.ofEighths(0, 0, 0, 4, 4, 4).joinAll(48).join(0, 0, 0, 0, 1).build(),
          L,
          AffineCells.EDGE_SPACE,
          (Math.sqrt(3.0) + 0.25) * Math.PI * L * L,
          (1.0 / 3.0 + Math.sqrt(3.0) + 5.0 / 3.0 * Math.sqrt(6.0)) * L * L * L);

  TetragonalCell() {}

  @Override
  public String name() {
    return SHAPE.name();
  }

  @Override
  public Topology topology() {
    return SHAPE.topology();
  }

  @Override
  public double strutOverCell() {
    return L;
  }

  @Override
  public double mergingSlenderness() {
    return SHAPE.merging();
  }

  @Override
  public double relativeDensity(double x) {
    return SHAPE.density(Slenderness.check(this, x));
  }

  @Override
  public double firstOrderDensity(double x) {
    return SHAPE.firstOrder(Slenderness.check(this, x));
  }

  /**
   * The elastic constants of centre-line struts with bending, stretch and shear (Timoshenko),
   * joints as points.
   *
   * @param x slenderness d/L of the diagonals
   * @param poisson Poisson's ratio of the solid, 0 to 0.5
   * @return the constants
   */
  public TetragonalStiffness centreLine(double x, double poisson) {
    Slenderness.check(this, x);
    CubicStiffness diagonals = Cells.BODY_CENTRED.centreLine(x, poisson);
    double vertical = Slenderness.area(x * L); // over a^2
    double inertia = Slenderness.inertia(x * L); // over a^4
    double t = 1.0 / (1.0 + poisson);
    double own = 1.0 + Slenderness.shearNumber(x * L, poisson);
    double edge = 12.0 * inertia / own;
    double sway = 64.0 * inertia / (L * (1.0 + Slenderness.shearNumber(x, poisson)));
    double turn = 8.0 * (2.0 + t) * inertia / (3.0 * L);
    double shear = 0.25 / (1.0 / edge + 1.0 / sway + 0.25 / turn);
    return new TetragonalStiffness(
        diagonals.c11(),
        diagonals.c12(),
        diagonals.c12(),
        diagonals.c11() + vertical,
        diagonals.c44() + shear,
        diagonals.c44());
  }

  /**
   * The largest strut strain over the macroscopic strain for a push along z, sides free: the
   * verticals take all of it.
   *
   * @param x slenderness d/L of the diagonals
   * @return 1, the strain of the verticals
   */
  public double peakStrain(double x) {
    Slenderness.check(this, x);
    return 1.0;
  }

  /**
   * The reservations at a slenderness.
   *
   * @param x slenderness d/L of the diagonals
   * @param poisson Poisson's ratio of the solid
   * @return the caveats
   */
  public List<Caveat> caveats(double x, double poisson) {
    return Slenderness.caveats(name(), Optional.empty(), mergingSlenderness(), x, poisson);
  }

  @Override
  public List<Source> sources() {
    return List.of(
        Source.derived("affine strut network with corner nodes that turn; union volume"));
  }

  /** The name. */
  @Override
  public String toString() {
    return name();
  }
}
