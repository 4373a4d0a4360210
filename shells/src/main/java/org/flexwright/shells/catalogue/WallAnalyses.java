package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.INNER_RADIUS;
import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.PATCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;
import static org.flexwright.finder.Dimension.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Shape;
import org.flexwright.shells.wall.AnnularPlate;
import org.flexwright.shells.wall.Cantilever;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.LivingHinge;
import org.flexwright.shells.wall.PressedPlate;
import org.flexwright.shells.wall.RectangularPlate;
import org.flexwright.shells.wall.Strip;
import org.flexwright.shells.wall.TautMembrane;

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
    all.addAll(plates());
    all.addAll(strips());
    return all;
  }

  private static List<Analysis> plates() {
    List<Analysis> all = new ArrayList<>();
    for (PressedPlate.Rim rim : PressedPlate.Rim.values()) {
      all.add(
          Analysis.toTravel(
              "pressure on a " + Words.of(rim) + " round plate",
              Shape.ROUND_PLATE,
              d -> PressedPlate.of(rim, d.get(RADIUS), d.get(WALL)),
              RADIUS,
              WALL));
    }
    for (CircularPlate.Rim rim : CircularPlate.Rim.values()) {
      all.add(
          Analysis.toTravel(
              "pressure on a membrane, rim " + Words.of(rim),
              Shape.ROUND_PLATE,
              d -> TautMembrane.of(rim, d.get(RADIUS), d.get(WALL)),
              RADIUS,
              WALL));
      all.add(
          Analysis.toTravel(
              "pressure on a " + Words.of(rim) + " rectangular plate",
              Shape.RECTANGULAR_PLATE,
              d -> RectangularPlate.of(rim, d.get(WIDTH), d.get(LENGTH), d.get(WALL)),
              WIDTH,
              LENGTH,
              WALL));
      for (AnnularPlate.Inner inner : AnnularPlate.Inner.values()) {
        all.add(
            Analysis.toTravel(
                Words.of(rim) + " ring-shaped plate, inner edge " + Words.of(inner),
                Shape.ROUND_PLATE,
                d -> AnnularPlate.of(rim, inner, d.get(RADIUS), d.get(INNER_RADIUS), d.get(WALL)),
                RADIUS,
                INNER_RADIUS,
                WALL));
      }
    }
    return all;
  }

  private static List<Analysis> strips() {
    List<Analysis> all = new ArrayList<>();
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
