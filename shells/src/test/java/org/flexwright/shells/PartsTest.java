package org.flexwright.shells;

import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.response.LoadCase;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.tube.Ring;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.Strip;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every part of this module keeps. */
final class PartsTest {

  static Stream<PartCase<?>> cases() {
    return Stream.of(
        PartCase.of(
            "strip",
            (s, d) ->
                Strip.of(
                    d.oneOf(Strip.Ends.values()),
                    mm(20 * s),
                    mm(d.between(5, 80) * s),
                    mm(d.between(0.2, 4) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 6) * s))),
        PartCase.of(
            "patch on a plate",
            (s, d) ->
                CircularPlate.of(
                    d.oneOf(CircularPlate.Rim.values()),
                    mm(20 * s),
                    mm(d.between(0.2, 15) * s),
                    mm(d.between(0.2, 4) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.02, 2) * s))),
        PartCase.of(
            "ring",
            (s, d) ->
                Ring.outside(mm(40 * s))
                    .length(mm(d.between(10, 100) * s))
                    .wall(mm(d.between(0.5, 12) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 4) * s))),
        PartCase.of(
            "bellows",
            (s, d) ->
                Bellows.convolutions(d.oneOf(1, 3, 6))
                    .meanRadius(mm(d.between(10, 40) * s))
                    .depth(mm(8 * s))
                    .pitch(mm(d.between(5, 14) * s))
                    .wall(mm(d.between(0.3, 2) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 6) * s))),
        PartCase.of(
            "omega bellows",
            (s, d) ->
                Bellows.omega(d.oneOf(1, 4))
                    .meanRadius(mm(d.between(15, 60) * s))
                    .torus(mm(4 * s))
                    .wall(mm(d.between(0.3, 2) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 4) * s))),
        PartCase.of(
            "turned bellows",
            (s, d) ->
                Bellows.convolutions(d.oneOf(2, 5))
                    .meanRadius(mm(d.between(10, 40) * s))
                    .depth(mm(8 * s))
                    .pitch(mm(d.between(5, 14) * s))
                    .wall(mm(d.between(0.3, 2) * s)),
            (s, d) -> LoadCase.toAngle(Angle.degrees(d.between(0.5, 15)))),
        PartCase.of(
            "sleeve",
            (s, d) ->
                Sleeve.outside(mm(d.between(20, 21.8) * s))
                    .span(mm(d.between(8, 60) * s))
                    .wall(mm(d.between(0.3, 3) * s))
                    .into(Bore.of(mm(22 * s))),
            (s, d) -> LoadCase.toHold(Force.newtons(d.between(0.5, 40) * s * s))));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void doesWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, Grades.rubber(), 11);
    PartHarness.check(c, Grades.polyurethane(), 12);
  }
}
