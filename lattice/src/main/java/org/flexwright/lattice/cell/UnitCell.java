package org.flexwright.lattice.cell;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;

/**
 * The laws of an endless lattice of one cubic cell with equal round struts, pushed along a cell
 * edge. Open to users.
 *
 * <p>Symbols: a edge of the cell, L strut length from node to node, d strut diameter, x = d/L
 * slenderness (above 0, below {@link #mergingSlenderness}). Moduli are over Young's modulus of the
 * solid.
 *
 * <p>JShell: {@code Cells.KELVIN.relativeDensity(0.2)}
 */
public interface UnitCell {

  /**
   * The name for tables.
   *
   * @return the name in words
   */
  String name();

  /**
   * Strut length over cell edge, L/a.
   *
   * @return the ratio
   */
  double strutOverCell();

  /**
   * The slenderness at which neighbouring struts have merged along their whole length; x must stay
   * below.
   *
   * @return tan(theta/2) with theta the least angle between two struts at a node
   */
  double mergingSlenderness();

  /**
   * Volume of material over volume of space, joints counted once.
   *
   * @param x slenderness d/L
   * @return the relative density
   */
  double relativeDensity(double x);

  /**
   * The relative density to first order: all struts at full length, joints counted once for each
   * strut. Formulas of the literature are often written in it.
   *
   * @param x slenderness d/L
   * @return the sum of the strut volumes over the volume of space
   */
  double firstOrderDensity(double x);

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
   * How the struts bend at large compression along a cell edge with the sides free.
   *
   * @return the elastica of one strut
   */
  GuidedElastica strut();

  /**
   * The reservations at a slenderness.
   *
   * @param x slenderness d/L
   * @param poisson Poisson's ratio of the solid
   * @return the caveats, empty inside the ranges of all laws
   */
  List<Caveat> caveats(double x, double poisson);

  /**
   * Where the laws come from.
   *
   * @return the sources
   */
  List<Source> sources();

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
    org.flexwright.internal.Require.positive("slenderness", x, "");
    org.flexwright.internal.Require.between("end factor", n, 1.0, 2.0, "");
    double s = n * Math.PI * x / 4.0;
    return s * s;
  }
}
