package org.flexwright.shells;

import static org.flexwright.quantity.Length.mm;

import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.flexwright.quantity.Angle;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.shells.tube.BentTube;
import org.flexwright.shells.tube.BucklingTube;
import org.flexwright.shells.tube.CollapsingTube;
import org.flexwright.shells.tube.ElasticaRing;
import org.flexwright.shells.tube.PinchedTube;
import org.flexwright.shells.tube.RingLoadedTube;
import org.flexwright.shells.wall.Cantilever;
import org.flexwright.shells.wall.LivingHinge;
import org.flexwright.testing.Draw;
import org.flexwright.testing.PartCase;
import org.flexwright.testing.PartHarness;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Parts bent far, and tubes, against what every part must do. */
final class FarPartsTest {

  /** The first number of neighbouring seeds is nearly the same, so it is thrown away. */
  private static Draw later(Draw d) {
    d.between(1, 2);
    return d;
  }

  private static <P extends Part<P>> PartCase<P> of(
      String name, BiFunction<Double, Draw, P> part, BiFunction<Double, Draw, LoadCase> load) {
    return PartCase.of(
        name, (s, d) -> part.apply(s, later(d)), (s, d) -> load.apply(s, later(d)));
  }

  static Stream<PartCase<?>> cases() {
    return Stream.of(
        of(
            "cantilever",
            (s, d) ->
                Cantilever.of(mm(20 * s), mm(d.between(5, 80) * s), mm(d.between(0.2, 4) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.05, 19) * s))),
        of(
            "living hinge",
            (s, d) ->
                LivingHinge.of(
                    d.oneOf(LivingHinge.Blocks.values()),
                    mm(d.between(0.3, 6) * s),
                    mm(d.between(1, 80) * s),
                    mm(d.between(0.2, 1.4) * s)),
            (s, d) -> LoadCase.toAngle(Angle.degrees(d.between(2, 170)))),
        of(
            "ring bent far",
            (s, d) ->
                ElasticaRing.of(
                    d.oneOf(ElasticaRing.Way.values()),
                    mm(40 * s),
                    mm(d.between(10, 100) * s),
                    mm(d.between(0.5, 6) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 18) * s))),
        of(
            "bent tube",
            (s, d) -> BentTube.of(mm(20 * s), mm(d.between(40, 600) * s), mm(d.between(0.1, 2) * s)),
            (s, d) ->
                d.oneOf(LoadCase.toLimit(), LoadCase.toAngle(Angle.degrees(d.between(2, 90))))),
        of(
            "tube loaded by a ring",
            (s, d) ->
                RingLoadedTube.of(
                    d.oneOf(RingLoadedTube.Place.values()),
                    mm(40 * s),
                    mm(d.between(10, 100) * s),
                    mm(d.between(0.5, 4) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 3) * s))),
        of(
            "tube turned at its end",
            (s, d) ->
                RingLoadedTube.of(
                    RingLoadedTube.Place.END,
                    mm(40 * s),
                    mm(d.between(10, 100) * s),
                    mm(d.between(0.5, 4) * s)),
            (s, d) -> LoadCase.toAngle(Angle.rad(d.between(0.01, 0.4)))),
        of(
            "tube pressed from outside",
            (s, d) ->
                CollapsingTube.of(
                    d.oneOf(CollapsingTube.Side.values()),
                    mm(40 * s),
                    mm(d.between(5, 500) * s),
                    mm(d.between(0.3, 4) * s)),
            (s, d) -> d.oneOf(LoadCase.toLimit(), LoadCase.toTravel(mm(d.between(1e-3, 0.5) * s)))),
        of(
            "tube pressed along its axis",
            (s, d) ->
                BucklingTube.of(mm(40 * s), mm(d.between(3, 400) * s), mm(d.between(0.1, 4) * s)),
            (s, d) -> d.oneOf(LoadCase.toLimit(), LoadCase.toTravel(mm(d.between(0.02, 2) * s)))),
        of(
            "pinched tube",
            (s, d) ->
                PinchedTube.of(mm(20 * s), mm(d.between(40, 600) * s), mm(d.between(0.2, 2) * s)),
            (s, d) -> LoadCase.toTravel(mm(d.between(0.02, 2) * s))));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void doesWhatEveryPartMust(PartCase<?> c) {
    PartHarness.check(c, Grades.rubber(), 17);
  }
}
