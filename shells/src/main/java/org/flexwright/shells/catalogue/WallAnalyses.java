package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.PATCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;
import static org.flexwright.finder.Dimension.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Shape;
import org.flexwright.shells.wall.Cantilever;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.LivingHinge;
import org.flexwright.shells.wall.Strip;

/** Plates, strips and hinges. */
final class WallAnalyses {

  private WallAnalyses() {}

  static List<Analysis> all() {
    List<Analysis> all = new ArrayList<>();
    for (CircularPlate.Rim rim : CircularPlate.Rim.values()) {
      all.add(
          Analysis.toTravel(
              "patch on a " + Words.of(rim) + " round plate",
              Shape.ROUND_PLATE,
              d -> CircularPlate.of(rim, d.get(RADIUS), d.get(PATCH), d.get(WALL)),
              RADIUS,
              PATCH,
              WALL));
    }
    for (Strip.Ends ends : Strip.Ends.values()) {
      all.add(
          Analysis.toTravel(
              Words.of(ends) + " strip, small travel",
              Shape.STRIP,
              d -> Strip.of(ends, d.get(LENGTH), d.get(WIDTH), d.get(WALL)),
              LENGTH,
              WIDTH,
              WALL));
    }
    all.add(
        Analysis.toTravel(
            "cantilever bent far",
            Shape.STRIP,
            d -> Cantilever.of(d.get(LENGTH), d.get(WIDTH), d.get(WALL)),
            LENGTH,
            WIDTH,
            WALL));
    for (LivingHinge.Blocks blocks : LivingHinge.Blocks.values()) {
      all.add(
          Analysis.toAngle(
              "living hinge between " + Words.of(blocks) + " blocks",
              Shape.STRIP,
              d -> LivingHinge.of(blocks, d.get(LENGTH), d.get(WIDTH), d.get(WALL)),
              LENGTH,
              WIDTH,
              WALL));
    }
    return all;
  }
}
