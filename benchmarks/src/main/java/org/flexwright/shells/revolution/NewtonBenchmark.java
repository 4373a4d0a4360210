package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Pressure;
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
 * One Newton iteration of a wavy shell of 400 elements and five layers in a state of bending,
 * stretch and shear: forces, tangent, pressure, factors and both solutions. In the engine's package
 * because hosts never see one iteration alone.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class NewtonBenchmark {

  private static final int ELEMENTS = 400;

  private final ShellMesh mesh = wave();
  private final double[] x = moved(mesh);
  private final double[] right = new double[x.length];
  private final ShellModel neoHookean = model(NeoHookean.of(Pressure.mpa(1.0)));
  private final ShellModel mooneyRivlin =
      model(MooneyRivlin.of(Pressure.mpa(0.4), Pressure.mpa(0.1)));
  private final ShellModel gent = model(Gent.of(Pressure.mpa(1.0), 80));
  private final ShellModel ogden =
      model(
          Ogden.of(Pressure.mpa(0.63), 1.3)
              .and(Pressure.mpa(0.0012), 5)
              .and(Pressure.mpa(-0.01), -2));

  private static ShellMesh wave() {
    double[] radius = new double[ELEMENTS + 1];
    double[] height = new double[ELEMENTS + 1];
    double[] angle = new double[ELEMENTS + 1];
    for (int i = 0; i <= ELEMENTS; i++) {
      double phase = 8.0 * Math.PI * i / ELEMENTS;
      radius[i] = 0.010 + 0.002 * Math.sin(phase);
      height[i] = 0.030 * i / ELEMENTS;
      angle[i] = Math.atan2(0.030, 0.002 * 8.0 * Math.PI * Math.cos(phase));
    }
    double[] wall = new double[ELEMENTS];
    Arrays.fill(wall, 0.0008);
    return new ShellMesh(
        radius,
        height,
        Arrays.copyOf(angle, ELEMENTS),
        Arrays.copyOfRange(angle, 1, ELEMENTS + 1),
        wall);
  }

  private static double[] moved(ShellMesh mesh) {
    double[] x = mesh.rest();
    Random random = new Random(1);
    for (int i = 0; i < x.length; i++) {
      x[i] += (i % 3 == 2 ? 1e-2 : 2e-7) * (random.nextDouble() - 0.5);
    }
    return x;
  }

  private ShellModel model(StrainEnergy law) {
    return new ShellModel(mesh, law, 5);
  }

  private double iteration(ShellModel model) {
    model.at(x, 1e3);
    for (int held : new int[] {0, 1, 2}) {
      model.tangent.hold(0, held, 1.0);
    }
    model.tangent.factor();
    for (int i = 0; i < right.length; i++) {
      right[i] = 1e3 * model.swept[i] - model.force[i];
    }
    model.tangent.solve(right);
    System.arraycopy(model.swept, 0, right, 0, right.length);
    model.tangent.solve(right);
    return right[right.length - 1];
  }

  /**
   * Neo-Hookean.
   *
   * @return the last unknown
   */
  @Benchmark
  public double neoHookean() {
    return iteration(neoHookean);
  }

  /**
   * Mooney-Rivlin.
   *
   * @return the last unknown
   */
  @Benchmark
  public double mooneyRivlin() {
    return iteration(mooneyRivlin);
  }

  /**
   * Gent.
   *
   * @return the last unknown
   */
  @Benchmark
  public double gent() {
    return iteration(gent);
  }

  /**
   * Ogden of three terms.
   *
   * @return the last unknown
   */
  @Benchmark
  public double ogden() {
    return iteration(ogden);
  }
}
