package org.flexwright.shells.inflate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;
import static org.flexwright.quantity.Pressure.kpa;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.BuildDirection;
import org.flexwright.grade.Grade;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadCase;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.revolution.End;
import org.flexwright.shells.revolution.Meridian;
import org.flexwright.shells.revolution.ShellState;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Seals against tubes, continuum elements, balances and the linear sleeve. */
final class SealTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(SealTest.class, "seal.csv");

  private static final NeoHookean ONE = NeoHookean.of(Pressure.mpa(1.0));
  private static final Grade GRADE = Grade.ofLaw("neo", ONE);
  private static final Map<String, Sealing> RUNS = new HashMap<>();
  private static final RunControl NONE = RunControl.none();

  private static Meridian straight(double outer, double length, double wall) {
    return Meridian.from(mm(outer), mm(0)).lineTo(mm(outer), mm(length)).wall(mm(wall));
  }

  private static Seal sleeve(double bore) {
    return Seal.of(straight(10, 60, 0.8), Bore.of(mm(2 * bore)));
  }

  private static Seal plug() {
    return Seal.of(
        Meridian.from(mm(10), mm(0))
            .lineTo(mm(10), mm(6))
            .lineTo(mm(10), mm(46))
            .named("sleeve")
            .lineTo(mm(10), mm(52))
            .wall("sleeve", mm(0.8))
            .wall(mm(4)),
        Bore.of(mm(21)));
  }

  private static Seal uniform(Seal of) {
    return of.first(End.GUIDED).last(End.GUIDED);
  }

  static Stream<ReferenceCase> cases() {
    return Stream.of("touch", "normal force", "contact pressure", "contact length")
        .flatMap(f -> TABLE.cases("seal, " + f));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsReferenceValue(ReferenceCase c) {
    Seal seal =
        switch (c.text("part")) {
          case "tube" -> uniform(Seal.of(straight(10, 20, 2), Bore.of(mm(24))));
          case "plug" -> plug();
          default -> sleeve(10.5);
        };
    boolean tube = c.text("part").equals("tube");
    Grade grade = tube ? Grade.ofLaw("soft", NeoHookean.of(Pressure.mpa(0.3))) : GRADE;
    boolean touch = c.formula().equals("seal, touch");
    double p = touch ? tube ? 200 : 150 : c.input("p");
    Sealing s = RUNS.computeIfAbsent(c.text("part") + p, k -> seal.inflate(grade, kpa(p)));
    assertThat(s.termination().complete()).isTrue();
    double length = s.last().contact().length().mm();
    double force = s.last().contact().normal().newtons();
    TABLE.check(
        c,
        switch (c.formula()) {
          case "seal, touch" -> s.touch().orElseThrow().supply().kpa();
          case "seal, normal force" -> tube ? force / length : force;
          case "seal, contact pressure" -> s.last().best().pressure().kpa();
          default -> length;
        });
  }

  @Test
  void theSmallGapIsThatOfTheLinearSleeve() {
    // a gap of 0.2 % of the radius; the linear sleeve's clamp is that of shell theory, and it
    // touches in the middle, as a sleeve does that is not much longer than 2 pi decay lengths
    Bore bore = Bore.of(mm(20.04));
    Sleeve linear = Sleeve.outside(mm(20)).span(mm(10)).wall(mm(0.4)).into(bore);
    Grade half = GRADE.poisson(0.5);
    Seal seal = Seal.of(straight(10, 10, 0.4), bore).first(End.CLAMPED).last(End.CLAMPED);
    Force force = Force.newtons(4.0);
    Pressure p = Pressure.pa(linear.respond(half, LoadCase.toHold(force)).load().nominal());
    Sealing s = seal.inflate(half, p);
    double touch = linear.touch(half).pa();
    assertThat(s.touch().orElseThrow().supply().pa()).isCloseTo(touch, within(0.02 * touch));
    assertThat(s.last().contact().length().mm())
        .isCloseTo(linear.contact(half, force).mm(), within(0.8));
    // the line reactions at the edges, which the linear sleeve leaves out, hold as well
    assertThat(s.last().holding().newtons()).isBetween(4.0, 6.5);
  }

  @Test
  void theForceOnTheBoreIsTheSlopeOfThePotential() {
    Pressure p = kpa(60);
    double step = 0.02;
    double force = sleeve(10.5).inflate(GRADE, p).last().contact().normal().newtons();
    double[] potential = new double[2];
    for (int i = 0; i < 2; i++) {
      ShellState s = sleeve(10.5 + (2 * i - 1) * step).inflate(GRADE, p).last().shell();
      potential[i] = s.energy().joules() - p.pa() * s.volume().m3();
    }
    double slope = (potential[0] - potential[1]) / (2e-3 * step);
    // a gap of 1e-4 of the wall is left at the bore
    assertThat(slope).isCloseTo(force, within(6e-3 * force));
  }

  @Test
  void theHeldEndCarriesWhatTheMiddleDoesNot() {
    Sealing of = sleeve(10.5).inflate(GRADE, kpa(100));
    Sealing.State s = of.last();
    ShellState shell = s.shell();
    int n = shell.nodes() / 2;
    ShellState start = of.states().get(0).shell();
    double rest = start.height(n + 4).minus(start.height(n - 4)).m();
    double axial = shell.height(n + 4).minus(shell.height(n - 4)).m() / rest;
    TubeWall wall = new TubeWall(ONE, 9.2e-3, 10e-3);
    double bore = wall.bore(10.5e-3, axial);
    double pressed = 100e3 - wall.pressure(bore, axial);
    assertThat(s.best().pressure().pa()).isCloseTo(pressed, within(5e-3 * pressed));
    // the part beyond the middle: end force, wall, pressure on the opening, no friction
    double end = pressed * Math.PI * 10.5e-3 * 10.5e-3 - wall.force(bore, axial);
    assertThat(shell.force().newtons()).isCloseTo(end, within(2e-3 * end));
  }

  @Test
  void snapsFromItsLimitPointToTheBore() {
    // a closed tube that stays even; beyond the touch only its length can grow
    Bore bore = Bore.of(mm(36));
    Seal seal = uniform(Seal.of(straight(10, 10, 0.8), bore)).sliding(true);
    Sealing s = seal.inflate(GRADE, kpa(70));
    assertThat(s.termination().complete()).as(s.toString()).isTrue();
    InflatedTube tube = InflatedTube.of(mm(20), mm(100), mm(0.8));
    double limit = tube.limits(GRADE).maximum().orElseThrow().pressure().pa();
    Sealing.First touch = s.touch().orElseThrow();
    assertThat(touch.snaps()).isTrue();
    assertThat(touch.supply().pa()).isCloseTo(limit, within(1e-4 * limit));
    double met = tube.respond(GRADE, LoadCase.toTravel(mm(8))).load().nominal();
    assertThat(touch.pressure().pa()).isCloseTo(met, within(1e-4 * met));
    assertThat(s.caveats()).anyMatch(c -> c.message().contains("snaps"));
    TubeWall wall = new TubeWall(ONE, 9.2e-3, 10e-3);
    int inside = 0;
    for (Sealing.State state : s.states()) {
      ShellState shell = state.shell();
      // only states between the limit point and its pressure regained need a held volume
      boolean grown = shell.radius(0).mm() > 9.6 * 1.6;
      assertThat(state.held()).isEqualTo(grown && state.pressure().pa() < (1 - 1e-5) * limit);
      if (state.contact().normal().newtons() > 0.0) {
        double axial = (shell.height(shell.nodes() - 1).m() - shell.height(0).m()) / 10e-3;
        double lb = wall.bore(18e-3, axial);
        // closed lids: the axial force beyond that of the pressure is the bore's share
        double q = wall.force(lb, axial) / (Math.PI * 18e-3 * 18e-3);
        double p = wall.pressure(lb, axial) + q;
        assertThat(state.pressure().pa()).isCloseTo(p, within(2e-3 * p));
        assertThat(state.best().pressure().pa()).isCloseTo(q, within(0.02 * q + 100));
        inside++;
      }
    }
    assertThat(inside).isGreaterThan(4);
  }

  @Test
  void runsAwayWhereNoBoreStopsIt() {
    Seal seal = uniform(Seal.of(straight(10, 10, 0.8), Bore.of(mm(400)))).sliding(true);
    Sealing s = seal.inflate(GRADE, kpa(70));
    assertThat(s.termination().kind()).isEqualTo(Termination.Kind.LIMIT_POINT);
    assertThat(s.touch()).isEmpty();
    assertThat(s.last().pressure().kpa()).isLessThan(70.0).isGreaterThan(60.0);
  }

  @Test
  void findsTheSupplyForAForceAndForAMargin() {
    Force force = Force.newtons(20);
    Sealing held = sleeve(10.5).toHold(GRADE, force, kpa(150), NONE);
    Sealing.State met = held.wanted().orElseThrow();
    assertThat(met.holding().newtons()).isCloseTo(20.0, within(0.01));
    Sealing again = sleeve(10.5).inflate(GRADE, met.pressure());
    assertThat(again.last().holding().newtons()).isCloseTo(20.0, within(0.1));
    assertThat(met.holdingLow().newtons()).isCloseTo(5.0, within(0.01));
    Sealing tight = sleeve(10.5).toSeal(GRADE, kpa(20), 1.5, kpa(150), NONE);
    SealMargins margins = tight.wanted().orElseThrow().margins(kpa(20));
    assertThat(margins.leak()).isCloseTo(1.5, within(1e-3));
    // what the long tube takes, and 30 kPa on top
    assertThat(tight.last().pressure().kpa()).isCloseTo(15.9 + 30.0, within(0.6));
    assertThat(margins.blowOut().newtons())
        .isCloseTo(20e3 * Math.PI * 10.5e-3 * 10.5e-3, within(1e-9));
    assertThat(sleeve(10.5).toHold(GRADE, Force.newtons(1e4), kpa(50), NONE).wanted()).isEmpty();
  }

  @Test
  void stopsAtTheStrainOfItsGradeInAndAcrossTheLayers() {
    Seal seal = uniform(sleeve(10.5));
    // around the axis at the inner face: 10.5^2 - 10^2 = 9.2^2 (la^2 - 1)
    Grade brittle = GRADE.strainAtBreak(0.04);
    Sealing in = seal.inflate(brittle, kpa(100));
    assertThat(in.termination().kind()).isEqualTo(Termination.Kind.NO_FURTHER_STATE);
    assertThat(in.termination().why()).contains("around the axis", "in the layers", "inner face");
    double p = ThickTube.pressure(ONE, mm(9.2), mm(10), 1.04, 1.0).kpa();
    assertThat(in.last().pressure().kpa()).isCloseTo(p, within(1e-3 * p));
    assertThat(in.last().demand()).isCloseTo(1.0, within(1e-4));
    Sealing across = seal.build(BuildDirection.AXIS_LYING).inflate(brittle, kpa(100));
    assertThat(across.termination().why()).contains("across the layers");
    double share = brittle.strainAtBreak(true);
    double lower = ThickTube.pressure(ONE, mm(9.2), mm(10), 1.0 + share, 1.0).kpa();
    assertThat(across.last().pressure().kpa()).isCloseTo(lower, within(1e-3 * lower));
  }

  @Test
  void aFingerGrowsToItsBoreAndAConeTouchesAtItsNarrowEnd() {
    Seal finger =
        Seal.of(
            Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(25)).arcTo(mm(0), mm(35)).wall(mm(1)),
            Bore.of(mm(21)));
    Sealing s = finger.inflate(GRADE, kpa(60));
    assertThat(s.termination().complete()).as(s.toString()).isTrue();
    assertThat(s.touch().orElseThrow().height().mm()).isBetween(3.0, 25.0);
    assertThat(s.last().contact().length().mm()).isBetween(8.0, 25.0);
    assertThat(s.last().shell().travel().m()).isNegative();
    Seal cone = Seal.of(straight(10, 60, 0.8), Bore.of(mm(20.6))).widening(Angle.degrees(0.5));
    Sealing c = cone.inflate(GRADE, kpa(60));
    assertThat(c.touch().orElseThrow().height().mm()).isLessThan(20.0);
    assertThat(c.caveats()).anyMatch(v -> v.message().contains("conical"));
  }

  @Test
  void aStopKeepsWhatWasFound() {
    for (int steps : new int[] {2, 6, 20}) {
      int[] asked = {0};
      RunControl stop =
          new RunControl() {
            @Override
            public void progress(Progress progress) {
              asked[0]++;
            }

            @Override
            public boolean stopRequested() {
              return asked[0] >= steps;
            }
          };
      Sealing s = sleeve(10.5).inflate(GRADE, kpa(60), stop);
      assertThat(s.termination().kind()).isEqualTo(Termination.Kind.STOPPED);
      // a leg that is done tells so, too, without asking
      assertThat(asked[0]).isLessThanOrEqualTo(steps + 1);
      assertThat(s.states()).isNotEmpty();
      assertThat(s.figures().has(Channel.FORCE)).isTrue();
    }
  }

  @Test
  void saysWhatIsWrong() {
    assertThatThrownBy(() -> Seal.of(straight(10, 60, 0.8), Bore.of(mm(19))))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("would not go in");
    assertThatThrownBy(() -> sleeve(10.5).inflate(GRADE, kpa(0)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("supply pressure");
    Sealing none = sleeve(10.5).inflate(GRADE, kpa(5));
    assertThat(none.touch()).isEmpty();
    assertThat(none.toString()).startsWith("does not touch");
    assertThat(none.last().margins(kpa(5)).leak()).isZero();
    assertThat(none.table().lines()).hasSize(none.states().size());
    assertThat(sleeve(10.5).extremes()).hasSize(2);
    assertThat(sleeve(10.5).inflate(GRADE, kpa(60)).caveats())
        .anyMatch(c -> c.message().contains("an edge of the part"));
    assertThat(plug().inflate(GRADE, kpa(60)).caveats())
        .noneMatch(c -> c.message().contains("an edge of the part"));
  }
}
