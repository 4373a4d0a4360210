package org.flexwright.shells;

import static org.flexwright.quantity.Length.mm;

import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.flexwright.grade.Grade;
import org.flexwright.quantity.Angle;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.LoadPath;
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
import org.junit.jupiter.api.Test;
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
    return PartCase.of(name, (s, d) -> part.apply(s, later(d)), (s, d) -> load.apply(s, later(d)));
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
            (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 12) * s))),
        of(
            "bent tube",
            (s, d) ->
                BentTube.of(mm(20 * s), mm(d.between(40, 600) * s), mm(d.between(0.1, 2) * s)),
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

  /** Energy of a part that obeys Hooke, E 1 MPa, by a route that is not the part's own. */
  static Stream<PartCase<?>> hookean() {
    return Stream.of(
        of(
                "bent tube",
                (s, d) -> BentTube.of(mm(20 * s), mm(600 * s), mm(d.between(0.1, 2) * s)),
                (s, d) -> d.oneOf(LoadCase.toLimit(), LoadCase.toAngle(Angle.degrees(20))))
            .energy((part, grade, load) -> bent(part, part.respond(grade, load).path())),
        of(
                "tube loaded by a ring",
                (s, d) ->
                    RingLoadedTube.of(
                        d.oneOf(RingLoadedTube.Place.values()),
                        mm(40 * s),
                        mm(d.between(70, 100) * s),
                        mm(d.between(0.3, 3) * s)),
                (s, d) -> LoadCase.toTravel(mm(d.between(0.1, 3) * s)))
            .energy(FarPartsTest::opened),
        of(
                "tube pressed along its axis",
                (s, d) ->
                    BucklingTube.of(
                        mm(40 * s), mm(d.between(3, 400) * s), mm(d.between(0.1, 4) * s)),
                (s, d) -> d.oneOf(LoadCase.toLimit(), LoadCase.toTravel(mm(0.1 * s))))
            .energy(
                (part, grade, load) -> {
                  double u = part.respond(grade, load).path().last(Channel.TRAVEL);
                  double strain = u / part.length().m();
                  return 0.5 * 1e6 * strain * strain * part.printedVolume().m3();
                }));
  }

  /** Least energy over the flattening z: membrane (1 - 3 z/2 of the round tube) and hoop. */
  private static double bent(BentTube tube, LoadPath path) {
    double t = tube.wall().m();
    double r = 0.5 * (tube.outside().m() - t);
    double l = tube.length().m();
    double curvature = path.last(Channel.ANGLE) / l;
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 50000; i++) {
      double z = i * 1e-5;
      double along = 0.5 * curvature * curvature * Math.PI * r * r * r * t * (1 - 1.5 * z);
      double hoop = 3 * Math.PI / 8 * t * t * t / (0.75 * r) * z * z;
      least = Math.min(least, along + hoop);
    }
    return 1e6 * l * least;
  }

  /** Hoop and bending energy of the field w = w0 e^-x (cos x + sin x), or w0 e^-x cos x. */
  private static double opened(RingLoadedTube tube, Grade grade, LoadCase load) {
    double t = tube.wall().m();
    double r = 0.5 * (tube.outside().m() - t);
    double w0 = ((LoadCase.ToTravel) load).travel().m();
    double decay = tube.decayLength(grade).m();
    boolean middle = tube.place() == RingLoadedTube.Place.MIDDLE;
    double sum = 0;
    int n = 20000;
    for (int i = 0; i < n; i++) {
      double x = 20.0 * (i + 0.5) / n;
      double c = Math.exp(-x) * Math.cos(x);
      double s = Math.exp(-x) * Math.sin(x);
      double w = w0 * (middle ? c + s : c);
      double bend = 2 * w0 / (decay * decay) * (middle ? s - c : s);
      sum += 0.5 * (t * w * w / (r * r) + t * t * t / 9 * bend * bend) * 20.0 / n * decay;
    }
    return 1e6 * 2 * Math.PI * r * sum * (middle ? 2 : 1);
  }

  @ParameterizedTest
  @MethodSource("hookean")
  void workIsTheEnergyStored(PartCase<?> c) {
    PartHarness.check(c, Grades.linear(0.5), 29);
  }

  @Test
  void workOfTheHingeIsTheEnergyOfItsLaw() {
    // stretches of a block bent into a sector, l^2 growing evenly through the wall
    Grade grade = Grades.rubber();
    PartCase<LivingHinge> hinge =
        of(
            "living hinge",
            (s, d) ->
                LivingHinge.of(
                    LivingHinge.Blocks.RIGID,
                    mm(d.between(1, 6) * s),
                    mm(d.between(1, 80) * s),
                    mm(d.between(0.2, 1.4) * s)),
            (s, d) -> LoadCase.toAngle(Angle.degrees(d.between(20, 170))));
    PartHarness.check(
        hinge.energy(
            (part, g, load) -> {
              double x =
                  ((LoadCase.ToAngle) load).angle().rad() * part.wall().ratioTo(part.length());
              double inner = Math.sqrt(1 + x * x) - x;
              double sum = 0;
              int n = 5000;
              for (int i = 0; i < n; i++) {
                double l = Math.sqrt(inner + 2 * x * (i + 0.5) / n);
                sum += g.law().energy(l, 1, 1 / l) / n;
              }
              return sum * part.printedVolume().m3();
            }),
        grade,
        31);
  }
}
