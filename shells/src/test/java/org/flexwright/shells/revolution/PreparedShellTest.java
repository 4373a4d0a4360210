package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.flexwright.InvalidInputException;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Answers of a prepared shell against those of fresh runs. */
final class PreparedShellTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(4.0));
  private static final Drive PUSH = Drive.travel(mm(2)).steps(4);
  private static final Drive BLOW = Drive.pressure(Pressure.kpa(8)).steps(4);

  private static RevolvedShell wave() {
    Meridian fold = Meridian.from(mm(12), mm(0)).convolutions(0.5, mm(6), mm(8)).wall(mm(0.8));
    return RevolvedShell.of(fold).last(End.GUIDED).fineness(0.5);
  }

  private static ShellPath fresh(RevolvedShell of, StrainEnergy law, double wall, Drive... legs) {
    return of.meridian(of.meridian().wall(mm(wall))).run(law, legs);
  }

  private static void same(ShellState a, ShellState b) {
    close(a.travel().m(), b.travel().m(), 1e-4);
    close(a.force().newtons(), b.force().newtons(), 1e-2);
    close(a.pressure().pa(), b.pressure().pa(), 1.0);
    close(a.volume().m3(), b.volume().m3(), 1e-9);
    close(a.energy().joules(), b.energy().joules(), 1e-5);
    close(a.peak().strain(), b.peak().strain(), 1e-3);
    assertThat(a.nodes()).isEqualTo(b.nodes());
    assertThat(a.stable()).isEqualTo(b.stable());
  }

  /** Newton's method stops within 1e-8 of the size and converges with the square. */
  private static void close(double a, double b, double least) {
    assertThat(a).isCloseTo(b, within(1e-9 * Math.max(least, Math.abs(b))));
  }

  @Test
  void answersAreThoseOfFreshRuns() {
    Drive take = Drive.volume(Volume.cm3(0.8)).steps(4);
    Drive load = Drive.force(Force.newtons(5)).steps(4);
    for (Drive[] legs : new Drive[][] {{PUSH, BLOW}, {BLOW, PUSH}, {take, PUSH}, {load, BLOW}}) {
      PreparedShell prepared = wave().prepare(Meridian.WALL, LAW, legs);
      for (double wall : new double[] {0.69, 0.8}) {
        ShellPath quick = prepared.at(mm(wall));
        ShellPath whole = fresh(wave(), LAW, wall, legs);
        assertThat(quick.states()).hasSize(3);
        assertThat(quick.caveats()).isEqualTo(whole.caveats());
        same(quick.states().get(0), whole.states().get(0));
        same(quick.states().get(1), whole.states().get(4));
        same(quick.last(), whole.last());
      }
    }
  }

  /** A law that counts how often it is asked. */
  private record Counted(StrainEnergy law, AtomicLong count) implements StrainEnergy {

    @Override
    public double energy(double l1, double l2, double l3) {
      return law.energy(l1, l2, l3);
    }

    @Override
    public void gradient(double l1, double l2, double l3, double[] out) {
      law.gradient(l1, l2, l3, out);
    }

    @Override
    public void hessian(double l1, double l2, double l3, double[] out) {
      count.incrementAndGet();
      law.hessian(l1, l2, l3, out);
    }

    @Override
    public double shearModulus() {
      return law.shearModulus();
    }

    @Override
    public StretchRange range() {
      return law.range();
    }
  }

  @Test
  void anAnswerTakesAFewStepsOfNewton() {
    Counted law = new Counted(LAW, new AtomicLong());
    PreparedShell prepared = wave().prepare(Meridian.WALL, law, Drive.travel(mm(3)).steps(8));
    prepared.at(mm(0.8));
    RevolvedShell shell = wave();
    for (double wall : new double[] {0.76, 0.79, 0.82}) {
      law.count.set(0);
      prepared.at(mm(wall));
      long sweep = 5L * shell.meridian(shell.meridian().wall(mm(wall))).elements();
      // at rest, start of the leg's loads, 3 steps of Newton, the state found
      assertThat(law.count.get()).isLessThanOrEqualTo(6 * sweep);
    }
  }

  @Test
  void answersDoNotDependOnWhatWasAskedBefore() {
    double[] walls = IntStream.range(0, 15).mapToDouble(i -> 0.7 + 0.03 * (i * 7 % 15)).toArray();
    PreparedShell one = wave().prepare(Meridian.WALL, LAW, PUSH);
    PreparedShell other = wave().prepare(Meridian.WALL, LAW, PUSH);
    double[] force = new double[walls.length];
    for (int i = 0; i < walls.length; i++) {
      force[i] = one.at(mm(walls[i])).last().force().newtons();
    }
    for (int i = walls.length - 1; i >= 0; i--) {
      assertThat(other.at(mm(walls[i])).last().force().newtons()).isEqualTo(force[i]);
    }
  }

  @Test
  @Tag("slow")
  void aLongLadderByManyThreadsGivesTheSame() {
    PreparedShell one = wave().prepare(Meridian.WALL, LAW, Drive.travel(mm(0.2)).steps(1));
    IntToDoubleFunction wall = i -> 0.1 * Math.pow(1.1, i % 28);
    IntToDoubleFunction energy = i -> one.at(mm(wall.applyAsDouble(i))).last().energy().joules();
    double[] far = IntStream.range(0, 56).parallel().mapToDouble(energy).toArray();
    for (int i = 0; i < 28; i++) {
      // asked twice, forgotten in between or not
      assertThat(far[i + 28]).isEqualTo(far[i]);
    }
    PreparedShell anew = wave().prepare(Meridian.WALL, LAW, Drive.travel(mm(0.2)).steps(1));
    assertThat(anew.at(mm(wall.applyAsDouble(9))).last().energy().joules()).isEqualTo(far[9]);
  }

  @Test
  void namesAndRigidStretchesArePreparedToo() {
    Meridian part =
        Meridian.from(mm(12), mm(0))
            .lineTo(mm(12), mm(4))
            .convolutions(1, mm(4), mm(6))
            .named("soft")
            .lineTo(mm(12), mm(14))
            .named("ring")
            .convolutions(1, mm(4), mm(6))
            .named("soft")
            .wall("soft", mm(0.7))
            .wall(mm(1.5))
            .rigid("ring");
    RevolvedShell shell = RevolvedShell.of(part).last(End.GUIDED).fineness(0.5);
    PreparedShell prepared = shell.prepare(Meridian.wallOf("soft"), LAW, PUSH, BLOW);
    for (double wall : new double[] {0.66, 0.72, 0.75}) {
      ShellPath whole = shell.meridian(part.wall("soft", mm(wall))).run(LAW, PUSH, BLOW);
      ShellPath quick = prepared.at(mm(wall));
      assertThat(quick.states()).hasSize(3);
      same(quick.last(), whole.last());
    }
  }

  @Test
  @Tag("slow")
  void whereTheLoadHasALimitTheWholePathIsRun() {
    StrainEnergy soft = Gent.of(Pressure.mpa(0.4), 97.2);
    RevolvedShell tube =
        RevolvedShell.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).wall(mm(0.6)))
            .fineness(0.5);
    Drive[] legs = {
      Drive.force(Force.newtons(0.0)).steps(1), Drive.pressure(Pressure.kpa(25)).steps(6)
    };
    PreparedShell prepared = tube.prepare(Meridian.WALL, soft, legs);
    int limits = 0;
    for (double wall : new double[] {0.5, 0.55, 0.6, 0.65, 0.7, 0.8}) {
      ShellPath quick = prepared.at(mm(wall));
      ShellPath whole = fresh(tube, soft, wall, legs);
      assertThat(quick.termination()).isEqualTo(whole.termination());
      assertThat(quick.limits()).isEqualTo(whole.limits());
      same(quick.last(), whole.last());
      limits += whole.termination().complete() ? 0 : 1;
    }
    assertThat(limits).isBetween(1, 5);
  }

  @Test
  @Tag("slow")
  void aDomeThatSnapsOrNotAnswersAsAFreshOne() {
    RevolvedShell dome =
        RevolvedShell.of(
                Meridian.from(mm(10), mm(0))
                    .arcAbout(mm(0), mm(-10), mm(0), mm(-10 + Math.sqrt(200)))
                    .wall(mm(1)))
            .fineness(0.5);
    Drive[] legs = {
      Drive.force(Force.newtons(0.0)).steps(1), Drive.pressure(Pressure.kpa(-150)).steps(8)
    };
    PreparedShell prepared = dome.prepare(Meridian.WALL, LAW, legs);
    int kinds = 0;
    for (double wall : new double[] {0.9, 1.1, 1.25, 1.4, 1.6}) {
      ShellPath quick = prepared.at(mm(wall));
      ShellPath whole = fresh(dome, LAW, wall, legs);
      assertThat(quick.termination()).isEqualTo(whole.termination());
      same(quick.last(), whole.last());
      kinds |= whole.termination().complete() ? 1 : 2;
    }
    assertThat(kinds).isEqualTo(3);
  }

  @Test
  void obstaclesAndTheLastRungMakeItAWholePath() {
    RevolvedShell sleeve =
        RevolvedShell.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).wall(mm(0.8)))
            .against(Obstacle.bore(mm(10.2)));
    Drive blow = Drive.pressure(Pressure.mpa(1)).steps(4);
    ShellPath touching = sleeve.prepare(Meridian.WALL, LAW, blow).at(mm(0.77));
    ShellState whole = fresh(sleeve, LAW, 0.77, blow).last();
    assertThat(touching.last().touches()).isEqualTo(whole.touches());
    // the convolution has no room for the rung above
    double most = 1.95;
    PreparedShell prepared = wave().prepare(Meridian.WALL, LAW, PUSH);
    same(prepared.at(mm(most)).last(), fresh(wave(), LAW, most, PUSH).last());
    assertThatThrownBy(() -> prepared.at(mm(2.05))).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> prepared.at(mm(0))).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> wave().prepare(Meridian.WALL, LAW))
        .isInstanceOf(InvalidInputException.class);
  }

  @Test
  void aStopIsHonoured() {
    RunControl stop =
        new RunControl() {
          @Override
          public void progress(Progress progress) {
            assertThat(progress).isNotNull();
          }

          @Override
          public boolean stopRequested() {
            return true;
          }
        };
    PreparedShell prepared = wave().prepare(Meridian.WALL, LAW, PUSH);
    ShellPath stopped = prepared.at(mm(0.8), stop);
    assertThat(stopped.termination().kind()).isEqualTo(Termination.Kind.STOPPED);
    assertThat(stopped.states()).hasSize(1);
    // and forgotten
    Length wall = mm(0.8);
    assertThat(prepared.at(wall).termination()).isEqualTo(Termination.completed());
    assertThat(List.of(prepared.at(wall).last().force()))
        .containsExactly(wave().prepare(Meridian.WALL, LAW, PUSH).at(wall).last().force());
  }
}
