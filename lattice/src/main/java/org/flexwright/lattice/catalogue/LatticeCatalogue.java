package org.flexwright.lattice.catalogue;

import static org.flexwright.finder.Dimension.CELL;
import static org.flexwright.finder.Dimension.HEIGHT;
import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.STRUT;
import static org.flexwright.finder.Dimension.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Catalogue;
import org.flexwright.finder.Described;
import org.flexwright.finder.Shape;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.Face;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.lattice.scaling.FoamBlock;

/**
 * The catalogue of this module: a pad of every built-in cell between bonded and between dry plates,
 * and a block of it crushed like a foam.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code
 * System.out.println(LatticeCatalogue.all().table(Described.as(Shape.LATTICE).with( Dimension.CELL,
 * mm(10)).with(Dimension.STRUT, mm(0.8)), grade))}
 */
public final class LatticeCatalogue {

  private LatticeCatalogue() {}

  /**
   * All analyses.
   *
   * @return the catalogue
   */
  public static Catalogue all() {
    List<Analysis> all = new ArrayList<>();
    for (UnitCell unit : Cells.all()) {
      all.add(
          Analysis.toTravel(
              unit.name() + " block, crushed like a foam",
              Shape.LATTICE,
              d ->
                  FoamBlock.of(
                      unit, d.get(WIDTH), d.get(LENGTH), d.get(HEIGHT), d.get(CELL), d.get(STRUT)),
              WIDTH,
              LENGTH,
              HEIGHT,
              CELL,
              STRUT));
      for (Face face : List.of(Face.BONDED, Face.DRY)) {
        all.add(
            Analysis.toTravel(
                unit.name() + " pad, " + face + " faces",
                Shape.LATTICE,
                d -> pad(unit, face, d),
                WIDTH,
                LENGTH,
                HEIGHT,
                CELL,
                STRUT));
      }
    }
    return Catalogue.of(all);
  }

  private static LatticePad pad(UnitCell unit, Face face, Described d) {
    return LatticePad.of(unit)
        .footprint(d.get(WIDTH), d.get(LENGTH))
        .height(d.get(HEIGHT))
        .cell(d.get(CELL))
        .strut(d.get(STRUT))
        .lower(face)
        .upper(face);
  }
}
