package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.flexwright.InvalidInputException;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Test;

/** The public door of the engine: legs one after the other, obstacles, endings. */
final class RevolvedShellTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(10.0));

  private static RevolvedShell wave() {
    return RevolvedShell.of(
        Meridian.from(Length.mm(12.0), Length.mm(0.0))
            .convolutions(3, Length.mm(6.0), Length.mm(8.0))
            .wall(Length.mm(0.8)));
  }

  private static RevolvedShell tube() {
    return RevolvedShell.of(
        Meridian.from(Length.mm(10.0), Length.mm(0.0))
            .lineTo(Length.mm(10.0), Length.mm(40.0))
            .drawn(DrawnFace.OUTER)
            .wall(Length.mm(0.6)));
  }

  @Test
  void legsGoOnWhereTheLastOneEnded() {
    ShellPath path =
        wave().run(LAW, Drive.travel(Length.mm(3.0)), Drive.pressure(Pressure.kpa(4.0)));
    assertThat(path.termination().complete()).isTrue();
    assertThat(path.last().travel().mm()).isCloseTo(3.0, within(1e-9));
    assertThat(path.last().pressure().kpa()).isCloseTo(4.0, within(1e-9));
    ShellState pushed = path.states().get(10);
    assertThat(pushed.travel().mm()).isCloseTo(3.0, within(1e-9));
    // pressure on the lids helps the hand that pulls, so the push must grow
    assertThat(path.last().force().newtons()).isGreaterThan(pushed.force().newtons());
  }

  @Test
  void forceAndTravelAreTheSamePath() {
    ShellPath byTravel = wave().run(LAW, Drive.travel(Length.mm(2.0)));
    Force force = byTravel.last().force();
    ShellPath byForce = wave().run(LAW, Drive.force(force));
    assertThat(byForce.last().travel().mm()).isCloseTo(2.0, within(1e-8));
    assertThat(byForce.last().energy().joules())
        .isCloseTo(byTravel.last().energy().joules(), within(1e-9));
  }

  @Test
  void pressureStopsAtTheLimitAndVolumePassesIt() {
    StrainEnergy soft = Gent.of(Pressure.mpa(0.4), 97.2);
    RevolvedShell tube = tube().first(End.GUIDED).last(End.GUIDED);
    ShellPath dead =
        tube.run(soft, Drive.force(Force.newtons(0.0)), Drive.pressure(Pressure.kpa(200.0)));
    assertThat(dead.termination().kind()).isEqualTo(Termination.Kind.LIMIT_POINT);
    assertThat(dead.limits()).hasSize(1);
    // closed thin Gent tube: 0.759252 mu t/R of the mean radius; a wall of R/16 is 0.1 % off
    double thin = 0.759252 * 0.4e6 * 0.6 / 9.7;
    assertThat(dead.limits().get(0).load()).isCloseTo(thin, within(2e-3 * thin));
    ShellPath fed =
        tube.run(soft, Drive.force(Force.newtons(0.0)), Drive.volume(Volume.cm3(40.0)).steps(20));
    assertThat(fed.termination().complete()).isTrue();
    assertThat(fed.limits()).isNotEmpty();
    assertThat(fed.limits().get(0).load())
        .isCloseTo(dead.limits().get(0).load(), within(1e-3 * thin));
    assertThat(fed.last().volume().cm3()).isCloseTo(40.0, within(1e-9));
  }

  @Test
  void aSleeveTouchesItsBoreAndHolds() {
    RevolvedShell sleeve = tube().against(Obstacle.bore(Length.mm(10.5)));
    ShellPath path = sleeve.run(LAW, Drive.pressure(Pressure.kpa(300.0)));
    assertThat(path.termination().complete()).isTrue();
    assertThat(path.states().get(1).touches().get(0).normal().newtons()).isZero();
    Touch touch = path.last().touches().get(0);
    assertThat(touch.length().mm()).isBetween(10.0, 38.0);
    assertThat(touch.holds(0.3).newtons()).isCloseTo(0.3 * touch.normal().newtons(), within(1e-12));
    assertThat(touch.mean().kpa()).isLessThan(300.0);
    assertThat(touch.peak().pa()).isGreaterThanOrEqualTo(touch.mean().pa());
  }

  @Test
  void aWallThatStepsIsStrainedSmoothly() {
    // drawn by its outside, which is straight: where the wall steps nothing folds
    RevolvedShell plug =
        RevolvedShell.of(
            Meridian.from(Length.mm(10.0), Length.mm(0.0))
                .lineTo(Length.mm(10.0), Length.mm(4.0))
                .lineTo(Length.mm(10.0), Length.mm(34.0))
                .named("middle")
                .lineTo(Length.mm(10.0), Length.mm(38.0))
                .wall("middle", Length.mm(0.6))
                .wall(Length.mm(2.0)));
    ShellPath path = plug.run(LAW, Drive.pressure(Pressure.kpa(150.0)));
    double last = -1.0;
    for (ShellState state : path.states()) {
      double strain = state.peak().strain();
      assertThat(strain).isGreaterThan(last).isLessThan(0.2);
      last = strain;
    }
    // the thin middle grows most; both ends alike, the wall being its own mirror image
    ShellState end = path.last();
    int n = end.nodes() - 1;
    assertThat(end.radius(n).mm()).isCloseTo(end.radius(0).mm(), within(1e-9));
    for (int i = 0; i < n / 2; i++) {
      assertThat(end.radius(n - i).mm()).isCloseTo(end.radius(i).mm(), within(1e-6));
    }
  }

  @Test
  void aRimPressesItsDomeOntoABall() {
    // the pole is free along the axis; the rigid ball carries what the rim is pushed with
    Meridian dome =
        Meridian.from(Length.mm(0), Length.mm(0))
            .arcTo(Length.mm(10), Length.mm(10))
            .drawn(DrawnFace.MIDDLE)
            .wall(Length.mm(1.0));
    RevolvedShell shell =
        RevolvedShell.of(dome)
            .first(End.FREE)
            .against(Obstacle.ball(Length.mm(5.0), Length.mm(-5.5)));
    ShellPath path = shell.run(LAW, Drive.travel(Length.mm(1.0)).steps(20));
    assertThat(path.termination().complete()).isTrue();
    ShellState last = path.last();
    double normal = last.touches().get(0).normal().newtons();
    assertThat(last.force().newtons()).isPositive().isLessThanOrEqualTo(normal);
    // the pole goes in with the ball: it stays where the ball is, the rim comes down
    assertThat(last.height(0).mm()).isCloseTo(0.0, within(0.05));
    double work = 0.0;
    for (int i = 1; i < path.states().size(); i++) {
      ShellState a = path.states().get(i - 1);
      ShellState b = path.states().get(i);
      double by = b.travel().m() - a.travel().m();
      work += 0.5 * (a.force().newtons() + b.force().newtons()) * by;
    }
    // trapezes of 20 steps, and the gap of 1e-4 of the wall
    assertThat(last.energy().joules()).isCloseTo(work, within(5e-3 * work));
  }

  @Test
  void aStopIsHonouredWithinAStep() {
    int[] asked = {0};
    RunControl stop =
        new RunControl() {
          @Override
          public void progress(Progress progress) {
            asked[0]++;
          }

          @Override
          public boolean stopRequested() {
            return asked[0] > 3;
          }
        };
    ShellPath path = wave().run(LAW, stop, Drive.travel(Length.mm(3.0)));
    assertThat(path.termination().kind()).isEqualTo(Termination.Kind.STOPPED);
    assertThat(path.states()).hasSize(4);
    assertThat(path.figures().last(Channel.TRAVEL)).isCloseTo(0.0009, within(1e-12));
  }

  @Test
  void aGradeBringsItsCaveats() {
    Grade grade = Grade.polyurethane(ShoreA.of(95.0));
    ShellPath path = wave().run(grade, RunControl.none(), Drive.travel(Length.mm(1.0)));
    assertThat(path.caveats()).containsAll(grade.caveats());
    assertThat(path.last().stable()).isTrue();
    assertThat(path.toString()).contains("11 states", "travel 1 mm");
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThatThrownBy(() -> wave().run(LAW)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> wave().fineness(0.0)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> Drive.travel(Length.mm(1.0)).steps(0))
        .isInstanceOf(InvalidInputException.class);
    ShellState rest = wave().run(LAW, Drive.travel(Length.mm(1.0))).states().get(0);
    assertThatThrownBy(() -> rest.radius(-1)).isInstanceOf(InvalidInputException.class);
  }
}
