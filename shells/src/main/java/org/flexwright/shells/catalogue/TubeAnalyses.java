package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Described;
import org.flexwright.finder.Dimension;
import org.flexwright.finder.Shape;
import org.flexwright.quantity.Length;
import org.flexwright.response.Part;
import org.flexwright.shells.tube.BentTube;
import org.flexwright.shells.tube.BucklingTube;
import org.flexwright.shells.tube.CollapsingTube;
import org.flexwright.shells.tube.ElasticaRing;
import org.flexwright.shells.tube.PinchedTube;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.tube.RingLoadedTube;

/** Rings and tubes by mean radius, length and wall. */
final class TubeAnalyses {

  private static final Dimension[] TUBE = {RADIUS, LENGTH, WALL};

  private TubeAnalyses() {}

  static List<Analysis> all() {
    List<Analysis> all = new ArrayList<>();
    all.add(
        travel(
            "tube pinched along two lines, small travel",
            d -> Ring.outside(outside(d)).length(d.get(LENGTH)).wall(d.get(WALL))));
    for (ElasticaRing.Way way : ElasticaRing.Way.values()) {
      all.add(
          travel(
              "tube pressed or pulled far, " + Words.of(way),
              d -> ElasticaRing.of(way, outside(d), d.get(LENGTH), d.get(WALL))));
    }
    all.add(
        travel(
            "long tube pinched at two points",
            d -> PinchedTube.of(outside(d), d.get(LENGTH), d.get(WALL))));
    for (RingLoadedTube.Place place : RingLoadedTube.Place.values()) {
      all.add(
          travel(
              "tube under a ring load, " + Words.of(place),
              d -> RingLoadedTube.of(place, outside(d), d.get(LENGTH), d.get(WALL))));
    }
    all.add(limit("kink of a bent tube", TubeAnalyses::bent));
    all.add(Analysis.toAngle("bent tube", Shape.TUBE, TubeAnalyses::bent, TUBE));
    all.add(
        limit(
            "axial buckling of a tube",
            d -> BucklingTube.of(outside(d), d.get(LENGTH), d.get(WALL))));
    for (CollapsingTube.Side side : CollapsingTube.Side.values()) {
      all.add(
          limit(
              "collapse under outer pressure, " + Words.of(side),
              d -> CollapsingTube.of(side, outside(d), d.get(LENGTH), d.get(WALL))));
    }
    return all;
  }

  private static BentTube bent(Described d) {
    return BentTube.of(outside(d), d.get(LENGTH), d.get(WALL));
  }

  private static Analysis travel(String name, Function<Described, Part<?>> part) {
    return Analysis.toTravel(name, Shape.TUBE, part, TUBE);
  }

  private static Analysis limit(String name, Function<Described, Part<?>> part) {
    return Analysis.toLimit(name, Shape.TUBE, part, TUBE);
  }

  /** The outside of a tube or sphere described by its mean radius. */
  static Length outside(Described d) {
    return d.get(RADIUS).times(2.0).plus(d.get(WALL));
  }
}
