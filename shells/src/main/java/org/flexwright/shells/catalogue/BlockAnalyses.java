package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.HEIGHT;
import static org.flexwright.finder.Dimension.INNER_RADIUS;
import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.PATCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Described;
import org.flexwright.finder.Dimension;
import org.flexwright.finder.Shape;
import org.flexwright.shells.block.BondedBlock;
import org.flexwright.shells.block.Indentation;
import org.flexwright.shells.block.RoundSection;
import org.flexwright.shells.block.RubberBush;

/** Solid blocks, rollers, bushes and layers under a ball. */
final class BlockAnalyses {

  private static final Dimension[] BUSH = {INNER_RADIUS, RADIUS, LENGTH};

  private BlockAnalyses() {}

  static List<Analysis> all() {
    List<Analysis> all = new ArrayList<>();
    for (BondedBlock.Faces faces : BondedBlock.Faces.values()) {
      all.add(
          Analysis.toTravel(
              "disc of rubber, faces " + Words.of(faces),
              Shape.BLOCK,
              d -> BondedBlock.disc(d.get(RADIUS).times(2.0), d.get(HEIGHT)).faces(faces),
              RADIUS,
              HEIGHT));
      all.add(
          Analysis.toTravel(
              "strip of rubber, faces " + Words.of(faces),
              Shape.BLOCK,
              d -> BondedBlock.strip(d.get(WIDTH), d.get(LENGTH), d.get(HEIGHT)).faces(faces),
              WIDTH,
              LENGTH,
              HEIGHT));
    }
    all.add(
        Analysis.toTravel(
            "round section between plates",
            Shape.BLOCK,
            d -> RoundSection.of(d.get(RADIUS).times(2.0), d.get(LENGTH)),
            RADIUS,
            LENGTH));
    for (RubberBush.Motion motion : RubberBush.Motion.values()) {
      String name = "bush, " + Words.of(motion);
      all.add(
          motion == RubberBush.Motion.TORSION
              ? Analysis.toAngle(name, Shape.BLOCK, d -> bush(motion, d), BUSH)
              : Analysis.toTravel(name, Shape.BLOCK, d -> bush(motion, d), BUSH));
    }
    for (Indentation.Base base : Indentation.Base.values()) {
      all.add(
          Analysis.toTravel(
              "ball pressed into a layer, base " + Words.of(base),
              Shape.BLOCK,
              d -> Indentation.ball(d.get(PATCH), d.get(HEIGHT)).base(base),
              PATCH,
              HEIGHT));
    }
    return all;
  }

  private static RubberBush bush(RubberBush.Motion motion, Described d) {
    return RubberBush.of(motion, d.get(INNER_RADIUS), d.get(RADIUS), d.get(LENGTH));
  }
}
