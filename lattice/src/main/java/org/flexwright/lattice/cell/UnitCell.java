package org.flexwright.lattice.cell;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.internal.Require;

/**
 * The laws of an endless lattice of one cubic cell with equal round struts, pushed along a cell
 * edge. Open to users.
 *
 * <p>Symbols: those of {@link StrutCell}. Moduli are over Young's modulus of the solid.
 *
 * <p>JShell: {@code Cells.KELVIN.centreLine(0.2, 0.3)}
 */
public interface UnitCell extends StrutCell {

  /**
   * The elastic constants of centre-line struts with bending, stretch and shear (Timoshenko),
   * joints as points.
   *
   * @param x slenderness d/L
   * @param poisson Poisson's ratio of the solid, 0 to 0.5
   * @return the constants
   */
  CubicStiffness centreLine(double x, double poisson);

  /**
   * The elastic constants of round struts with their fat joints, stiffer than {@link #centreLine}.
   *
   * @param x slenderness d/L
   * @param poisson Poisson's ratio of the solid, 0 to 0.5
   * @return the constants
   */
  CubicStiffness solid(double x, double poisson);

  /**
   * The largest strut strain over the macroscopic strain, for small strain with the sides free.
   *
   * @param x slenderness d/L
   * @return the ratio
   */
  double peakStrain(double x);

  /**
   * The largest compressive strain of the centre line of a strut over the macroscopic strain, for
   * small strain with the sides free. Unless a cell says better, the strain that all struts would
   * share if they held all the energy of E100 by stretch alone.
   *
   * @param x slenderness d/L
   * @return the ratio
   */
  default double axialStrain(double x) {
    return Math.sqrt(centreLine(x, 0.3).young100() / relativeDensity(x));
  }

  /**
   * How many times stiffer than {@link #solid} the cell may be because nothing is known about its
   * fat joints; 1 where they are known.
   *
   * @param x slenderness d/L
   * @return the factor, at least 1
   */
  default double jointDoubt(double x) {
    return 1.0;
  }

  /**
   * How stress and strut strain go on at large compression along a cell edge with the sides free.
   *
   * @param x slenderness d/L
   * @return the shape of the path
   */
  CompressionPath path(double x);

  /**
   * The reservations at a slenderness.
   *
   * @param x slenderness d/L
   * @param poisson Poisson's ratio of the solid
   * @return the caveats, empty inside the ranges of all laws
   */
  List<Caveat> caveats(double x, double poisson);

  /**
   * The axial strain at which a strut buckles, after Euler: n^2 pi^2 x^2/16.
   *
   * <p>n = 1 for ends that turn freely, 2 for ends that do not turn; struts of a lattice lie
   * between. An estimate only: lattices can buckle over many cells at once, and earlier.
   *
   * @param x slenderness d/L
   * @param n the end factor, 1 to 2
   * @return the compressive strain, positive
   */
  default double eulerStrain(double x, double n) {
    Require.positive("slenderness", x, "");
    Require.between("end factor", n, 1.0, 2.0, "");
    double s = n * Math.PI * x / 4.0;
    return s * s;
  }
}
