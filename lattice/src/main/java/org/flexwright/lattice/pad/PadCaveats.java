package org.flexwright.lattice.pad;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.Grade;

/** The reservations of a pad at a strain. */
final class PadCaveats {

  private static final Source FOAM =
      Source.memory("Gibson and Ashby 1997, Cellular Solids, densification of foams");
  private static final Source EULER =
      Source.derived("Euler strain of a strut whose ends turn freely, axial strain of the frame");
  private static final Source NO_SLIP = Source.assumption("dry faces do not slip");

  private final List<Caveat> caveats = new ArrayList<>();
  private final List<RangeCheck> ranges = new ArrayList<>();

  private PadCaveats() {}

  static PadCaveats of(LatticePad pad, PadMechanics m, Grade grade, double strain) {
    PadCaveats c = new PadCaveats();
    c.caveats.addAll(grade.caveats());
    c.caveats.addAll(pad.unit().caveats(m.slenderness(), grade.poisson()));
    c.table(pad, m);
    c.faces(pad);
    c.strain(pad, m, strain);
    return c;
  }

  List<Caveat> caveats() {
    return List.copyOf(caveats);
  }

  /** The ranges looked at; those of the cell only where they are left. */
  List<RangeCheck> ranges() {
    List<RangeCheck> all = new ArrayList<>(ranges);
    for (Caveat c : caveats) {
      c.excursion()
          .map(e -> new RangeCheck(e.range(), e.value()))
          .filter(r -> !all.contains(r))
          .ifPresent(all::add);
    }
    return List.copyOf(all);
  }

  private void range(String model, String input, double low, double high, Source s, double value) {
    RangeCheck check = new RangeCheck(new ValidityRange(model, input, low, high, "", s), value);
    ranges.add(check);
    check.caveat().ifPresent(caveats::add);
  }

  private void table(LatticePad pad, PadMechanics m) {
    String model = "finite pads of the " + pad.unit().name() + " cell";
    if (!m.tabled()) {
      caveats.add(
          Caveat.note(
              model,
              "no pads of this cell were computed, the band runs from free to held sides",
              FinitePads.SOURCE));
      return;
    }
    WholeCells cells = pad.cells();
    int across = Math.min(cells.wide(), cells.deep());
    range(model, "cells across", 1, FinitePads.MOST_ACROSS, FinitePads.SOURCE, across);
    range(model, "cells high", 1, FinitePads.MOST_HIGH, FinitePads.SOURCE, cells.high());
    range(model, "slenderness d/L", 0.05, 0.6, FinitePads.SOURCE, m.slenderness());
    if (cells.wide() != cells.deep()) {
      caveats.add(
          Caveat.note(
              model,
              "only square pads were computed: read for the smaller side, the longer one is in the"
                  + " band",
              FinitePads.SOURCE));
    }
  }

  private void faces(LatticePad pad) {
    if (pad.grip() != pad.slippedGrip()) {
      caveats.add(
          Caveat.note(
              "dry face",
              "taken as no slip; if it slips the load is at the low end of the band",
              NO_SLIP));
    }
  }

  private void strain(LatticePad pad, PadMechanics m, double strain) {
    range("buckling of struts", "compressive strain", 0.0, m.buckling(), EULER, strain);
    caveats.addAll(m.path().caveats(strain));
    double dense = 1.0 - 1.4 * pad.relativeDensity();
    range("densification", "compressive strain", 0.0, Math.max(0.0, dense), FOAM, strain);
    range("bending of struts without contact", "compressive strain", 0.0, 0.6, FOAM, strain);
  }
}
