package org.flexwright.lattice.pad;

import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.quantity.Length;

/**
 * The steps that name the sizes of a pad one by one, so that none can be forgotten. See {@link
 * LatticePad#of}.
 */
public final class Stages {

  private Stages() {}

  /**
   * A pad whose footprint is still to come.
   *
   * @param unit the cell
   */
  public record Footprint(UnitCell unit) {

    /**
     * The rectangle that the pad covers.
     *
     * @param width one side
     * @param depth the other side
     * @return the next step
     */
    public Height footprint(Length width, Length depth) {
      return new Height(unit, width, depth);
    }
  }

  /**
   * A pad whose height is still to come.
   *
   * @param unit the cell
   * @param width one side
   * @param depth the other side
   */
  public record Height(UnitCell unit, Length width, Length depth) {

    /**
     * The height of the pad.
     *
     * @param height from plate to plate
     * @return the next step
     */
    public Edge height(Length height) {
      return new Edge(unit, width, depth, height);
    }
  }

  /**
   * A pad whose cell size is still to come.
   *
   * @param unit the cell
   * @param width one side
   * @param depth the other side
   * @param height from plate to plate
   */
  public record Edge(UnitCell unit, Length width, Length depth, Length height) {

    /**
     * The edge of one cell; whole cells must fill the pad.
     *
     * @param edge the edge
     * @return the next step
     */
    public Strut cell(Length edge) {
      return new Strut(unit, width, depth, height, edge);
    }
  }

  /**
   * A pad whose strut diameter is still to come.
   *
   * @param unit the cell
   * @param width one side
   * @param depth the other side
   * @param height from plate to plate
   * @param edge the edge of one cell
   */
  public record Strut(UnitCell unit, Length width, Length depth, Length height, Length edge) {

    /**
     * The diameter of the struts.
     *
     * @param diameter the diameter
     * @return the pad, bonded below and dry above
     * @throws org.flexwright.InvalidInputException if whole cells do not fill it or the struts
     *     merge
     */
    public LatticePad strut(Length diameter) {
      return new LatticePad(unit, width, depth, height, edge, diameter, Face.BONDED, Face.DRY);
    }
  }
}
