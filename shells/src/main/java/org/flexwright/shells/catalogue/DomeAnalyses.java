package org.flexwright.shells.catalogue;

import static org.flexwright.finder.Dimension.HEIGHT;
import static org.flexwright.finder.Dimension.INNER_RADIUS;
import static org.flexwright.finder.Dimension.LENGTH;
import static org.flexwright.finder.Dimension.PATCH;
import static org.flexwright.finder.Dimension.RADIUS;
import static org.flexwright.finder.Dimension.WALL;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.finder.Analysis;
import org.flexwright.finder.Described;
import org.flexwright.finder.Shape;
import org.flexwright.quantity.Angle;
import org.flexwright.shells.dome.ClampedCap;
import org.flexwright.shells.dome.ConicalDisc;
import org.flexwright.shells.dome.DomeEdge;
import org.flexwright.shells.dome.DomedCylinder;
import org.flexwright.shells.dome.PressedDome;
import org.flexwright.shells.inflate.Balloon;
import org.flexwright.shells.inflate.FlatMembrane;
import org.flexwright.shells.inflate.InflatedTube;
import org.flexwright.shells.inflate.PressFit;

/** Domes, discs and inflated parts by mean radius and wall. */
final class DomeAnalyses {

  private DomeAnalyses() {}

  static List<Analysis> all() {
    List<Analysis> all = new ArrayList<>(domes());
    all.addAll(inflated());
    return all;
  }

  private static List<Analysis> domes() {
    return List.of(
        Analysis.toTravel(
            "dome pressed by a fingertip",
            Shape.DOME,
            d -> PressedDome.of(d.get(RADIUS), d.get(WALL), d.get(PATCH)),
            RADIUS,
            WALL,
            PATCH),
        Analysis.toTravel(
            "spread edge of a hemisphere",
            Shape.DOME,
            d -> DomeEdge.of(d.get(RADIUS), Angle.degrees(90.0), d.get(WALL)),
            RADIUS,
            WALL),
        Analysis.toLimit(
            "snap of a clamped cap under outer pressure, rim at the patch radius",
            Shape.DOME,
            d -> ClampedCap.of(d.get(PATCH), d.get(RADIUS), d.get(WALL)),
            RADIUS,
            PATCH,
            WALL),
        Analysis.toTravel(
            "flattened conical disc",
            Shape.CONE,
            DomeAnalyses::disc,
            RADIUS,
            INNER_RADIUS,
            HEIGHT,
            WALL),
        Analysis.toLimit(
            "snap of a conical disc",
            Shape.CONE,
            DomeAnalyses::disc,
            RADIUS,
            INNER_RADIUS,
            HEIGHT,
            WALL));
  }

  private static ConicalDisc disc(Described d) {
    return ConicalDisc.of(
        d.get(RADIUS).times(2.0), d.get(INNER_RADIUS).times(2.0), d.get(WALL), d.get(HEIGHT));
  }

  private static List<Analysis> inflated() {
    return List.of(
        Analysis.toTravel(
            "tube with domed ends, small strain",
            Shape.TUBE,
            d -> DomedCylinder.of(d.get(RADIUS), d.get(LENGTH), d.get(WALL)),
            RADIUS,
            LENGTH,
            WALL),
        Analysis.toTravel("inflated tube", Shape.TUBE, DomeAnalyses::tube, RADIUS, LENGTH, WALL),
        Analysis.toLimit(
            "limit pressure of an inflated tube",
            Shape.TUBE,
            DomeAnalyses::tube,
            RADIUS,
            LENGTH,
            WALL),
        Analysis.toTravel(
            "stem pressed into a tube, travel its interference",
            Shape.TUBE,
            d ->
                PressFit.of(
                    d.get(RADIUS).times(2.0).minus(d.get(WALL)), d.get(WALL), d.get(LENGTH)),
            RADIUS,
            LENGTH,
            WALL),
        Analysis.toTravel("inflated sphere", Shape.DOME, DomeAnalyses::sphere, RADIUS, WALL),
        Analysis.toLimit(
            "limit pressure of an inflated sphere", Shape.DOME, DomeAnalyses::sphere, RADIUS, WALL),
        Analysis.toTravel(
            "flat membrane blown up far",
            Shape.ROUND_PLATE,
            d -> FlatMembrane.of(d.get(RADIUS), d.get(WALL)),
            RADIUS,
            WALL));
  }

  private static InflatedTube tube(Described d) {
    return InflatedTube.of(TubeAnalyses.outside(d), d.get(LENGTH), d.get(WALL));
  }

  private static Balloon sphere(Described d) {
    return Balloon.of(TubeAnalyses.outside(d), d.get(WALL));
  }
}
