package org.flexwright.examples.brief.input;

import org.flexwright.grade.Feature;
import org.flexwright.quantity.Length;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.solved.Solved;

/**
 * Reads a sleeve that is inflated in a bore, to be solved by the engine; its wall is in question,
 * its outside stays.
 */
final class SleeveReader {

  private static final Length NONE = Length.mm(0.0);
  private static final Length LEAST = Length.mm(0.1);
  private static final Length MOST = Length.m(1.0);

  private SleeveReader() {}

  static PartQuestion<Solved<Sleeve>> read(Entry part, GradeReader known) {
    PartFrame frame = new PartFrame(part, known);
    Entry shape = part.child("shape");
    Length outside = shape.length("outside", LEAST, MOST);
    Length span = shape.length("span", LEAST, MOST);
    shape.end();
    Bore bore = bore(part.child("bore"), outside);
    Sleeve sleeve =
        shape.make(
            () ->
                Sleeve.outside(outside)
                    .span(span)
                    .wall(known.smallest(Feature.Kind.AIRTIGHT_WALL))
                    .into(bore));
    return frame.ask(Solved.of(sleeve), Solved.by(Sleeve.WALL), TargetReader::hold);
  }

  private static Bore bore(Entry entry, Length outside) {
    Length diameter = entry.length("diameter", LEAST, MOST);
    Length tolerance = entry.length("tolerance", NONE, MOST);
    Entry friction = entry.child("friction");
    double dry = friction.number("dry", 0.01, 5.0);
    double wet = friction.number("wet", 0.01, 5.0);
    friction.end();
    entry.end();
    if (diameter.minus(tolerance).compareTo(outside) <= 0) {
      throw BriefException.at(
          entry.path("diameter"),
          "less its tolerance is " + diameter.minus(tolerance),
          "more than the outside of the sleeve, " + outside);
    }
    if (wet > dry) {
      throw BriefException.at(friction.path("wet"), "is " + wet, "at most the dry one, " + dry);
    }
    return entry.make(() -> Bore.of(diameter).tolerance(tolerance).friction(dry, wet));
  }
}
