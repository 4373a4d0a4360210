package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.DEPTH;
import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.PATCH;
import static org.flexwright.finder.Dimension.PITCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;
import static org.flexwright.finder.Dimension.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Catalogue;
import org.flexwright.finder.Described;
import org.flexwright.finder.Shape;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.Strip;

/**
 * The catalogue of this module: every part that can be described by lengths alone.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code System.out.println(ShellCatalogue.all().table(Described.as(Shape.TUBE).with(
 * Dimension.WALL, mm(1)).with(Dimension.RADIUS, mm(10)).with(Dimension.TRAVEL, mm(1)), grade))}
 */
public final class ShellCatalogue {

  private ShellCatalogue() {}

  /**
   * All analyses.
   *
   * @return the catalogue
   */
  public static Catalogue all() {
    List<Analysis> all = new ArrayList<>();
    all.addAll(plates());
    all.addAll(strips());
    all.addAll(tubes());
    all.addAll(bellows());
    return Catalogue.of(all);
  }

  private static List<Analysis> plates() {
    List<Analysis> all = new ArrayList<>();
    for (CircularPlate.Rim rim : CircularPlate.Rim.values()) {
      all.add(
          Analysis.toTravel(
              "patch on a " + rim.name().toLowerCase(java.util.Locale.ROOT) + " round plate",
              Shape.ROUND_PLATE,
              d -> CircularPlate.of(rim, d.get(RADIUS), d.get(PATCH), d.get(WALL)),
              RADIUS,
              PATCH,
              WALL));
    }
    return all;
  }

  private static List<Analysis> strips() {
    List<Analysis> all = new ArrayList<>();
    for (Strip.Ends ends : Strip.Ends.values()) {
      all.add(
          Analysis.toTravel(
              ends + " strip",
              Shape.STRIP,
              d -> Strip.of(ends, d.get(LENGTH), d.get(WIDTH), d.get(WALL)),
              LENGTH,
              WIDTH,
              WALL));
    }
    return all;
  }

  private static List<Analysis> tubes() {
    return List.of(
        Analysis.toTravel(
            "tube pinched along two lines",
            Shape.TUBE,
            d -> Ring.outside(outside(d)).length(d.get(LENGTH)).wall(d.get(WALL)),
            RADIUS,
            LENGTH,
            WALL));
  }

  private static org.flexwright.quantity.Length outside(Described d) {
    return d.get(RADIUS).times(2.0).plus(d.get(WALL));
  }

  private static List<Analysis> bellows() {
    return List.of(
        Analysis.toTravel(
            "U bellows, along its axis",
            Shape.BELLOWS,
            d ->
                Bellows.convolutions(d.count())
                    .meanRadius(d.get(RADIUS))
                    .depth(d.get(DEPTH))
                    .pitch(d.get(PITCH))
                    .wall(d.get(WALL)),
            RADIUS,
            DEPTH,
            PITCH,
            WALL),
        Analysis.toTravel(
            "omega bellows, along its axis",
            Shape.BELLOWS,
            d ->
                Bellows.omega(d.count())
                    .meanRadius(d.get(RADIUS))
                    .torus(d.get(DEPTH).times(0.5))
                    .wall(d.get(WALL)),
            RADIUS,
            DEPTH,
            WALL));
  }
}
