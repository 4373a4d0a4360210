package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.DEPTH;
import static org.flexwright.finder.Dimension.PITCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;

import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Described;
import org.flexwright.finder.Shape;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.bellows.OmegaBellows;

/** Bellows by mean radius, depth, pitch and wall. */
final class BellowsAnalyses {

  private BellowsAnalyses() {}

  static List<Analysis> all() {
    return List.of(
        Analysis.toTravel(
            "U bellows along its axis",
            Shape.BELLOWS,
            BellowsAnalyses::folded,
            RADIUS,
            DEPTH,
            PITCH,
            WALL),
        Analysis.toAngle(
            "U bellows, one end turned",
            Shape.BELLOWS,
            BellowsAnalyses::folded,
            RADIUS,
            DEPTH,
            PITCH,
            WALL),
        Analysis.toAngle(
            "omega bellows, one end turned",
            Shape.BELLOWS,
            BellowsAnalyses::round,
            RADIUS,
            DEPTH,
            WALL),
        Analysis.toTravel(
            "omega bellows along its axis",
            Shape.BELLOWS,
            BellowsAnalyses::round,
            RADIUS,
            DEPTH,
            WALL));
  }

  private static Bellows folded(Described d) {
    return Bellows.convolutions(d.count())
        .meanRadius(d.get(RADIUS))
        .depth(d.get(DEPTH))
        .pitch(d.get(PITCH))
        .wall(d.get(WALL));
  }

  /** A torus as wide as the convolution is deep. */
  private static OmegaBellows round(Described d) {
    return Bellows.omega(d.count())
        .meanRadius(d.get(RADIUS))
        .torus(d.get(DEPTH).times(0.5))
        .wall(d.get(WALL));
  }
}
