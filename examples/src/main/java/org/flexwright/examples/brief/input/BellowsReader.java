package org.flexwright.examples.brief.input;

import org.flexwright.grade.Feature;
import org.flexwright.quantity.Length;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.solved.Solved;

/** Reads a bellows of U convolutions, to be solved by the engine; its wall is in question. */
final class BellowsReader {

  private static final Length LEAST = Length.mm(0.1);
  private static final Length MOST = Length.m(1.0);

  private BellowsReader() {}

  static PartQuestion<Solved<Bellows>> read(Entry part, GradeReader known) {
    PartFrame frame = new PartFrame(part, known);
    Entry shape = part.child("shape");
    int count = shape.whole("convolutions", 1, 1000);
    Length meanRadius = shape.length("meanRadius", LEAST, MOST);
    Length pitch = shape.length("pitch", LEAST, MOST);
    Length depth = shape.length("depth", LEAST, MOST);
    shape.end();
    Bellows bellows =
        shape.make(
            () ->
                Bellows.convolutions(count)
                    .meanRadius(meanRadius)
                    .pitch(pitch)
                    .depth(depth)
                    .wall(known.smallest(Feature.Kind.WALL)));
    return frame.ask(Solved.of(bellows), Solved.by(Bellows.WALL), TargetReader::force);
  }
}
