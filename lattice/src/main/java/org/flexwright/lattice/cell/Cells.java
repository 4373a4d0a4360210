package org.flexwright.lattice.cell;

import java.util.List;

/**
 * The cells that come with the library.
 *
 * <p>Source of lengths and counts: geometry of the body-centred cubic lattice and of its
 * space-filling truncated octahedra (derived).
 */
public final class Cells {

  /** Eight struts from the corners of the cell to its centre; soft along the edges. */
  public static final UnitCell BODY_CENTRED = new BodyCentred();

  /** The edges of truncated octahedra that fill space: the foam cell of Kelvin. */
  public static final UnitCell KELVIN = new Kelvin();

  private Cells() {}

  /**
   * All of them.
   *
   * @return the cells
   */
  public static List<UnitCell> all() {
    return List.of(BODY_CENTRED, KELVIN);
  }
}
