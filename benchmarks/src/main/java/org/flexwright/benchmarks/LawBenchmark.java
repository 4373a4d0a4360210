package org.flexwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.ArrudaBoyce;
import org.flexwright.law.classical.ArrudaBoyceSeries;
import org.flexwright.law.classical.ExtendedTube;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.GentGent;
import org.flexwright.law.classical.GentThomas;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.MooneyRivlinPolynomial;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.law.classical.Yeoh;
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
 * Cost of one state of each law as a solver asks for it: energy, three first and six second
 * derivatives at a stretch of 1.5 with one side held.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LawBenchmark {
  private final NeoHookean neoHookean = NeoHookean.of(Pressure.mpa(0.4));
  private final MooneyRivlin mooneyRivlin =
      MooneyRivlin.of(Pressure.mpa(0.162), Pressure.mpa(0.0059));
  private final MooneyRivlinPolynomial polynomial =
      MooneyRivlinPolynomial.of(Pressure.mpa(0.15), Pressure.mpa(0.02), Pressure.mpa(0.001))
          .squares(Pressure.mpa(0.002), Pressure.mpa(0.0005));
  private final Yeoh yeoh =
      Yeoh.of(Pressure.mpa(0.1755), Pressure.mpa(-0.00188), Pressure.mpa(4.63e-5));
  private final Gent gent = Gent.of(Pressure.mpa(0.27), 85);
  private final GentGent gentGent = GentGent.of(Pressure.mpa(0.246), 79.9, Pressure.mpa(0.291));
  private final GentThomas gentThomas = GentThomas.of(Pressure.mpa(0.163), Pressure.mpa(0.0376));
  private final Ogden ogden =
      Ogden.of(Pressure.mpa(0.63), 1.3).and(Pressure.mpa(0.0012), 5).and(Pressure.mpa(-0.01), -2);
  private final ArrudaBoyce arrudaBoyce = ArrudaBoyce.of(Pressure.mpa(0.27), 26.5);
  private final ArrudaBoyceSeries series = ArrudaBoyceSeries.of(Pressure.mpa(0.27), 26.5);
  private final ExtendedTube tube =
      ExtendedTube.of(Pressure.mpa(0.1867), Pressure.mpa(0.2169)).beta(0.2).delta(0.09693);
  private final double[] out = new double[6];
  private double stretch = 1.5;

  private double state(StrainEnergy law) {
    double l = stretch;
    law.gradient(l, 1.0, 1.0 / l, out);
    double sum = out[0] + out[1] + out[2];
    law.hessian(l, 1.0, 1.0 / l, out);
    return law.energy(l, 1.0, 1.0 / l) + sum + out[0] + out[3];
  }

  /** Neo-Hookean. */
  @Benchmark
  public double neoHookean() {
    return state(neoHookean);
  }

  /** Mooney-Rivlin of two constants. */
  @Benchmark
  public double mooneyRivlin() {
    return state(mooneyRivlin);
  }

  /** Mooney-Rivlin of five constants. */
  @Benchmark
  public double polynomial() {
    return state(polynomial);
  }

  /** Yeoh. */
  @Benchmark
  public double yeoh() {
    return state(yeoh);
  }

  /** Gent. */
  @Benchmark
  public double gent() {
    return state(gent);
  }

  /** Gent with a term of the second invariant. */
  @Benchmark
  public double gentGent() {
    return state(gentGent);
  }

  /** Gent and Thomas. */
  @Benchmark
  public double gentThomas() {
    return state(gentThomas);
  }

  /** Ogden of three terms. */
  @Benchmark
  public double ogden() {
    return state(ogden);
  }

  /** Arruda and Boyce, exact. */
  @Benchmark
  public double arrudaBoyce() {
    return state(arrudaBoyce);
  }

  /** Arruda and Boyce, five terms. */
  @Benchmark
  public double series() {
    return state(series);
  }

  /** Extended tube. */
  @Benchmark
  public double tube() {
    return state(tube);
  }
}
