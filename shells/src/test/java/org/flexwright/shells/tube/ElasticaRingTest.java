package org.flexwright.shells.tube;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.stream.Stream;
import org.flexwright.grade.BuildDirection;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.run.Termination;
import org.flexwright.shells.Grades;
import org.flexwright.shells.Ode;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class ElasticaRingTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(ElasticaRingTest.class, "elastica_ring.csv");

  // outside 20 mm, thin: R 9.995 mm
  private static final double RADIUS = 9.995e-3;

  static Stream<ReferenceCase> bars() {
    return TABLE.cases("ring between bars");
  }

  static Stream<ReferenceCase> pulled() {
    return TABLE.cases("ring pulled");
  }

  static Stream<ReferenceCase> plates() {
    return TABLE.cases("ring between plates");
  }

  static Stream<ReferenceCase> sides() {
    return TABLE.cases("ring side curvature");
  }

  static Stream<ReferenceCase> widths() {
    return TABLE.cases("ring width");
  }

  static Stream<ReferenceCase> thick() {
    return TABLE.cases("thick ring bent far");
  }

  private static ElasticaRing thin(ElasticaRing.Way way) {
    return ElasticaRing.of(way, mm(20), mm(40), mm(0.01));
  }

  /** P R^2/(E I) of a thin ring that has travelled by a part of its radius. */
  private static double load(ElasticaRing.Way way, double travel) {
    double bending = 1e6 / 0.75 * 40e-3 * 1e-15 / 12;
    return thin(way)
            .respond(Grades.linear(0.5), LoadCase.toTravel(Length.m(travel * RADIUS)))
            .load()
            .nominal()
        * RADIUS
        * RADIUS
        / bending;
  }

  @ParameterizedTest
  @MethodSource("bars")
  void barsMeetReference(ReferenceCase c) {
    TABLE.check(c, load(ElasticaRing.Way.BARS, c.input("travel")));
  }

  @ParameterizedTest
  @MethodSource("pulled")
  void pullMeetsReference(ReferenceCase c) {
    TABLE.check(c, load(ElasticaRing.Way.PULL, c.input("travel")));
  }

  @ParameterizedTest
  @MethodSource("plates")
  void platesMeetReference(ReferenceCase c) {
    TABLE.check(c, load(ElasticaRing.Way.PLATES, 2 * (1 - c.input("height"))));
  }

  @ParameterizedTest
  @MethodSource("sides")
  void strainIsThatOfTheSides(ReferenceCase c) {
    double travel = 2 * (1 - c.input("height")) * RADIUS;
    Response r =
        thin(ElasticaRing.Way.PLATES)
            .respond(Grades.linear(0.5), LoadCase.toTravel(Length.m(travel)));
    TABLE.check(c, 1 + r.strain().nominal() * RADIUS / 0.5e-5);
  }

  @ParameterizedTest
  @MethodSource("widths")
  void widthMeetsReference(ReferenceCase c) {
    TABLE.check(c, RingShape.between(1 - c.input("height")).width());
  }

  /** End values of angle, curvature, height, width and cubes for a load and a side curvature. */
  private static double[] run(double load, double side) {
    return Ode.run(
        Math.PI / 2,
        new double[] {0, side, 0, 0, 0, 0},
        (s, y, d) -> {
          d[0] = y[1];
          d[1] = -0.5 * load * Math.sin(y[0]);
          d[2] = Math.cos(y[0]);
          d[3] = Math.sin(y[0]);
          d[4] = Math.pow(y[1] - 1, 2);
          d[5] = Math.pow(Math.abs(y[1] - 1), 3);
        });
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.01, 0.5, 1, 2.5, 4, 6, -0.01, -1, -3, -6, -20})
  void shapeMeetsIntegration(double load) {
    double side =
        Ode.root(k -> run(load, k)[0] - Math.PI / 2, load > 0 ? 0.99 : 1e-4, load > 0 ? 3.2 : 1);
    double[] y = run(load, side);
    RingShape shape = load > 0 ? RingShape.pushed(1 - y[2]) : RingShape.pulled(y[2] - 1);
    assertThat(shape.load()).isCloseTo(load, within(2e-7 * Math.abs(load)));
    assertThat(shape.side()).isCloseTo(side, within(1e-7));
    assertThat(shape.top()).isCloseTo(y[1], within(1e-6));
    assertThat(shape.width()).isCloseTo(y[3], within(1e-7));
    // the cubes have corners, which Gauss points blur
    double bend = Math.max(Math.abs(side - 1), Math.abs(y[1] - 1));
    assertThat(shape.working()).isCloseTo(y[5] / y[4] / bend, within(2e-3));
  }

  @Test
  void platesJoinBarsAndKeepTheirLaw() {
    double touch = RingShape.FLAT.loss();
    assertThat(RingShape.between(touch + 1e-9).load())
        .isCloseTo(RingShape.between(touch - 1e-9).load(), within(1e-7));
    assertThat(RingShape.between(touch + 1e-9).working())
        .isCloseTo(RingShape.between(touch - 1e-9).working(), within(1e-6));
    // work of the plates is the energy of what is bent: int (k - 1)^2 over the ring
    double loss = 0.6;
    int n = 4000;
    double work = 0;
    for (int i = 0; i < n; i++) {
      work += RingShape.between(loss * (i + 0.5) / n).load() * 2 * loss / n;
    }
    double side = RingShape.between(loss).side();
    double load = side * side;
    double[] y =
        Ode.run( // the free part, integrated over the angle
            Math.PI / 2 - 1e-9,
            new double[] {0, 0},
            (p, z, d) -> {
              double k = Math.sqrt(load * Math.cos(p));
              d[0] = (k - 1) * (k - 1) / k;
              d[1] = 1 / k;
            });
    double energy = 2 * (y[0] + Math.PI / 2 - y[1]);
    assertThat(work / energy).isCloseTo(1, within(1e-4));
  }

  @ParameterizedTest
  @EnumSource(ElasticaRing.Way.class)
  void smallTravelIsTheRing(ElasticaRing.Way way) {
    LoadCase load = LoadCase.toTravel(mm(0.01));
    for (double wall : new double[] {0.2, 1.5}) {
      Response far =
          ElasticaRing.of(way, mm(20), mm(40), mm(wall)).respond(Grades.polyurethane(), load);
      Response near =
          Ring.outside(mm(20)).length(mm(40)).wall(mm(wall)).respond(Grades.polyurethane(), load);
      assertThat(far.load().nominal() / near.load().nominal()).isCloseTo(1, within(2e-3));
      double strain = near.strain().nominal() / far.strain().nominal();
      assertThat(strain).isBetween(far.strain().modelLow(), far.strain().modelHigh());
    }
  }

  @ParameterizedTest
  @MethodSource("thick")
  void bandHoldsStretchAndShear(ReferenceCase c) {
    double slender = c.input("slender");
    double mean = 20e-3 / (2 + slender);
    ElasticaRing ring =
        ElasticaRing.of(ElasticaRing.Way.BARS, mm(20), mm(40), Length.m(slender * mean));
    Response r =
        ring.respond(Grades.linear(0.5), LoadCase.toTravel(Length.m(c.input("travel") * mean)));
    double bending = 1e6 / 0.75 * 40e-3 * Math.pow(slender * mean, 3) / 12;
    double model = r.load().nominal() * mean * mean / bending;
    TABLE.check(c, model);
    assertThat(c.published() / model).isBetween(r.load().modelLow(), r.load().modelHigh());
  }

  @ParameterizedTest
  @CsvSource({"PLATES,19.4,walls touch", "BARS,19.4,walls touch", "PULL,11.2,straight"})
  void pathEnds(ElasticaRing.Way way, double travel, String why) {
    Response r =
        ElasticaRing.of(way, mm(20), mm(40), mm(0.5))
            .respond(Grades.rubber(), LoadCase.toTravel(mm(travel)));
    assertThat(r.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(r.termination().toString()).contains(why);
    if (way != ElasticaRing.Way.PULL) {
      assertThat(r.path().last(Channel.TRAVEL)).isCloseTo(19e-3, within(1e-12));
    }
  }

  @Test
  void sayWhatIsWrongAndWhatIsDoubtful() {
    ElasticaRing ring = ElasticaRing.of(ElasticaRing.Way.PLATES, mm(20), mm(10), mm(2));
    assertThatThrownBy(() -> ring.wall(mm(10))).hasMessageContaining("solid");
    assertThat(ring.respond(Grades.rubber(), LoadCase.toTravel(mm(5))).caveats().toString())
        .contains("wall / mean radius")
        .contains("shorter than its diameter");
    assertThat(
            ring.build(BuildDirection.AXIS_LYING)
                .respond(Grades.rubber(), LoadCase.toTravel(mm(1)))
                .strainCrossesLayers())
        .isTrue();
    assertThat(ring).hasToString("ring between plates, outside 20 mm, length 10 mm, wall 2 mm");
    assertThat(ring.printedVolume().mm3()).isCloseTo(Math.PI * 36 * 10, within(1e-9));
  }
}
