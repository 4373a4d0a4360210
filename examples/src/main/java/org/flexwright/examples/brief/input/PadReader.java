package org.flexwright.examples.brief.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.grade.Feature;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.Face;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.quantity.Length;

/** Reads a lattice pad between two plates; its struts are in question, its cells may be too. */
final class PadReader {

  private static final Length LEAST = Length.mm(0.5);
  private static final Length MOST = Length.m(1.0);

  private PadReader() {}

  static PartQuestion<LatticePad> read(Entry part, GradeReader known) {
    PartFrame frame = new PartFrame(part, known);
    Entry shape = part.child("shape");
    Length width = shape.length("width", LEAST, MOST);
    Length depth = shape.length("depth", LEAST, MOST);
    Length height = shape.length("height", LEAST, MOST);
    shape.end();
    Entry cell = part.child("cell");
    UnitCell kind =
        cell.oneOf("kind", "kelvin", "bodyCentred").equals("kelvin")
            ? Cells.KELVIN
            : Cells.BODY_CENTRED;
    List<Length> edges = cell.lengths("edges", LEAST, MOST);
    cell.end();
    Entry faces = part.child("faces");
    Face lower = face(faces, "lower");
    Face upper = face(faces, "upper");
    faces.end();
    List<LatticePad> pads = new ArrayList<>();
    for (Length edge : edges) {
      String path = cell.path("edges[" + pads.size() + "]");
      pads.add(
          Entry.make(
              path,
              () ->
                  LatticePad.of(kind)
                      .footprint(width, depth)
                      .height(height)
                      .cell(edge)
                      .strut(known.smallest(Feature.Kind.STRUT))
                      .lower(lower)
                      .upper(upper)));
    }
    return frame.ask(
        pads.get(0),
        LatticePad.STRUT,
        TargetReader::force,
        Optional.of(LatticePad.CELL),
        edges.subList(1, edges.size()));
  }

  private static Face face(Entry faces, String name) {
    return switch (faces.oneOf(name, "bonded", "dry", "lubricated")) {
      case "bonded" -> Face.BONDED;
      case "dry" -> Face.DRY;
      default -> Face.LUBRICATED;
    };
  }
}
