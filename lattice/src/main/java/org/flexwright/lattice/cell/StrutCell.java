package org.flexwright.lattice.cell;

import java.util.List;
import org.flexwright.evidence.Source;

/**
 * The geometry of an endless lattice with a cubic cell and equal round struts: how its struts lie
 * and how much of the space they fill.
 *
 * <p>Formula: rho = c1 x^2 - c2 x^3. It is exact while the overlap of neighbouring struts stays
 * within half their length, x below tan(theta/2) with theta the least angle between two struts at a
 * node: the overlap at a node is then a body of fixed shape whose volume goes with d^3.
 *
 * <p>Symbols: a edge of the cell, L length of the shortest strut from node to node, d strut
 * diameter, x = d/L slenderness (above 0, below {@link #mergingSlenderness}), rho relative density.
 *
 * <p>Source: derived; for the octet the first term is that of Deshpande, Fleck and Ashby 2001, J.
 * Mech. Phys. Solids 49, 1747 (from memory).
 *
 * <p>JShell: {@code Cells.OCTET.relativeDensity(0.1)}
 */
public interface StrutCell {

  /**
   * The name for tables.
   *
   * @return the name in words
   */
  String name();

  /**
   * Where nodes and struts lie.
   *
   * @return the topology of one cubic cell
   */
  Topology topology();

  /**
   * Length of the shortest strut over cell edge, L/a.
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
   * Where the laws come from.
   *
   * @return the sources
   */
  List<Source> sources();
}
