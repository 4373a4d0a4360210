package org.flexwright.lattice.cell;

import java.util.List;

/**
 * The cells that come with the library.
 *
 * <p>Source of lengths and counts: geometry of the cubic lattices and of space-filling bodies
 * (derived).
 */
public final class Cells {

  /** Struts along the cell edges; stiff along them, soft in shear. */
  public static final UnitCell SIMPLE_CUBIC = AffineCells.simpleCubic();

  /** Eight struts from the corners of the cell to its centre; soft along the edges. */
  public static final UnitCell BODY_CENTRED = new BodyCentred();

  /** The face diagonals: from the corners to the middles of the faces. */
  public static final UnitCell FACE_CENTRED = AffineCells.faceCentred();

  /** Octahedra and tetrahedra, twelve struts at each node; stiff in all directions. */
  public static final UnitCell OCTET = AffineCells.octet();

  /** Octahedra and cuboctahedra, eight struts at each node. */
  public static final UnitCell OCTAHEDRAL = AffineCells.octahedral();

  /** Four struts at each node, as in diamond; soft in all directions. */
  public static final UnitCell DIAMOND = Diamond.diamond();

  /** The edges of truncated octahedra that fill space: the foam cell of Kelvin. */
  public static final UnitCell KELVIN = new Kelvin();

  /** The edges of rhombic dodecahedra that fill space: twice the struts of diamond. */
  public static final UnitCell RHOMBIC_DODECAHEDRAL = Diamond.rhombic();

  /** Three struts at each node, along the channels of the gyroid; the softest. */
  public static final UnitCell GYROID_NET = new GyroidNet();

  /** Struts along the edges through both kinds of nodes, and to the centre; equal diameters. */
  public static final UnitCell SIMPLE_AND_BODY_CENTRED = AffineCells.simpleAndBodyCentred();

  /** Face diagonals, and struts from the corners to the centre; equal diameters. */
  public static final UnitCell FACE_AND_BODY_CENTRED = AffineCells.faceAndBodyCentred();

  /** The body-centred cell with struts along z at the corners; not cubic. */
  public static final TetragonalCell BODY_CENTRED_WITH_VERTICALS = new TetragonalCell();

  private static final List<UnitCell> ALL =
      List.of(
          SIMPLE_CUBIC,
          BODY_CENTRED,
          FACE_CENTRED,
          OCTET,
          OCTAHEDRAL,
          DIAMOND,
          KELVIN,
          RHOMBIC_DODECAHEDRAL,
          GYROID_NET,
          SIMPLE_AND_BODY_CENTRED,
          FACE_AND_BODY_CENTRED);

  private Cells() {}

  /**
   * All of cubic symmetry.
   *
   * @return the cells
   */
  public static List<UnitCell> all() {
    return ALL;
  }
}
