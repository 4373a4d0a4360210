package org.flexwright.benchmarks;

import static org.flexwright.quantity.Length.mm;

import java.util.concurrent.TimeUnit;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.law.classical.Yeoh;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.shells.revolution.Drive;
import org.flexwright.shells.revolution.Meridian;
import org.flexwright.shells.revolution.Obstacle;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellPath;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Whole paths of shells of revolution, five layers: a bellows pressed by 8 mm in 8 steps in several
 * laws, a thick-and-thin sleeve inflated to 40 % more radius in 8 steps, one inflated until it
 * seals in a bore. The cost of one Newton iteration is measured beside the engine's tests.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class ShellBenchmark {

  private final StrainEnergy neoHookean = NeoHookean.of(Pressure.mpa(1.0));
  private final StrainEnergy mooneyRivlin = MooneyRivlin.of(Pressure.mpa(0.4), Pressure.mpa(0.1));
  private final StrainEnergy yeoh =
      Yeoh.of(Pressure.mpa(0.5), Pressure.mpa(-0.005), Pressure.mpa(1e-4));
  private final StrainEnergy gent = Gent.of(Pressure.mpa(1.0), 80);
  private final StrainEnergy ogden =
      Ogden.of(Pressure.mpa(0.63), 1.3).and(Pressure.mpa(0.0012), 5).and(Pressure.mpa(-0.01), -2);

  private final RevolvedShell bellows =
      RevolvedShell.of(Meridian.from(mm(12), mm(0)).convolutions(5, mm(8), mm(14)).wall(mm(0.9)));
  private final RevolvedShell sleeve =
      RevolvedShell.of(
          Meridian.from(mm(10), mm(0))
              .lineTo(mm(10), mm(4))
              .named("end")
              .lineTo(mm(10), mm(30))
              .lineTo(mm(10), mm(34))
              .named("end")
              .wall("end", mm(2.5))
              .blend(mm(1))
              .wall(mm(0.8)));
  private final RevolvedShell plug = sleeve.against(Obstacle.bore(mm(11.5)));

  private ShellPath pressed(StrainEnergy law) {
    return bellows.run(law, Drive.travel(mm(8)).steps(8));
  }

  /**
   * A bellows of 370 elements, neo-Hookean.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath bellows() {
    return pressed(neoHookean);
  }

  /**
   * The same, Mooney-Rivlin.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath bellowsMooneyRivlin() {
    return pressed(mooneyRivlin);
  }

  /**
   * The same, Yeoh.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath bellowsYeoh() {
    return pressed(yeoh);
  }

  /**
   * The same, Gent.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath bellowsGent() {
    return pressed(gent);
  }

  /**
   * The same, Ogden of three terms.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath bellowsOgden() {
    return pressed(ogden);
  }

  /**
   * Volume control past the pressure's limit point.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath sleeve() {
    return sleeve.run(neoHookean, Drive.volume(Volume.mm3(7000)).steps(8));
  }

  /**
   * Inflation until the sleeve lies in its bore.
   *
   * @return the path
   */
  @Benchmark
  public ShellPath seal() {
    return plug.run(neoHookean, Drive.pressure(Pressure.kpa(200)).steps(8));
  }

  /**
   * Drawing, checking and meshing the bellows.
   *
   * @return the shell
   */
  @Benchmark
  public RevolvedShell drawing() {
    return RevolvedShell.of(
        Meridian.from(mm(12), mm(0)).convolutions(5, mm(8), mm(14)).wall(mm(0.9)));
  }
}
