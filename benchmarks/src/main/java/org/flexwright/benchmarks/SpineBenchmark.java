package org.flexwright.benchmarks;

import java.util.concurrent.TimeUnit;
import org.flexwright.decide.Question;
import org.flexwright.decide.Target;
import org.flexwright.decide.Window;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.pad.Face;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Stiffness;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.inflate.Bore;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.wall.Strip;
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
 * Cost of the spine from a bare formula to a whole answer. Read the ratios within one run: {@code
 * stripByHand} is the bare cantilever formula on doubles, {@code strip} the same through the typed
 * door with a path of states, exponents and caveats, {@code window} a whole question.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class SpineBenchmark {
  private final Grade grade =
      Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(Length.mm(0.3)));
  private final LoadCase travel = LoadCase.toTravel(Length.mm(3));
  private final LoadCase hold = LoadCase.toHold(Force.newtons(5));
  private final Strip strip =
      Strip.of(Strip.Ends.CANTILEVER, Length.mm(30), Length.mm(10), Length.mm(1));
  private final Bellows bellows =
      Bellows.convolutions(5)
          .meanRadius(Length.mm(15))
          .depth(Length.mm(8))
          .pitch(Length.mm(14))
          .wall(Length.mm(0.9));
  private final Sleeve sleeve =
      Sleeve.outside(Length.mm(21.4))
          .span(Length.mm(30))
          .wall(Length.mm(0.6))
          .into(Bore.of(Length.mm(22)).tolerance(Length.mm(0.2)).friction(0.4, 0.1));
  private final LatticePad pad =
      LatticePad.of(Cells.KELVIN)
          .footprint(Length.mm(60), Length.mm(60))
          .height(Length.mm(20))
          .cell(Length.mm(10))
          .strut(Length.mm(0.8))
          .lower(Face.BONDED)
          .upper(Face.DRY);
  private final Question<Bellows> question =
      Question.of(bellows)
          .vary(Bellows.WALL, Length.mm(0.3), Length.mm(2.1))
          .meet(Target.force().between(Force.newtons(3), Force.newtons(8)).atTravel(Length.mm(6)));
  private double modulus = 60e6;
  private double wall = 1e-3;

  /** The bare formula, 3 E I d / L^3. */
  @Benchmark
  public double stripByHand() {
    return modulus * 0.01 * wall * wall * wall * 3e-3 / (4 * 0.03 * 0.03 * 0.03);
  }

  /** The same through the typed door. */
  @Benchmark
  public Response strip() {
    return strip.respond(grade, travel);
  }

  /** One closed form without path, exponents and caveats. */
  @Benchmark
  public Stiffness bellowsStiffness() {
    return bellows.stiffness(grade);
  }

  /** A bellows with its two interpolated factors. */
  @Benchmark
  public Response bellows() {
    return bellows.respond(grade, travel);
  }

  /** A sleeve: thick-tube quadrature and a free contact edge. */
  @Benchmark
  public Response sleeve() {
    return sleeve.respond(grade, hold);
  }

  /** A lattice pad. */
  @Benchmark
  public Response pad() {
    return pad.respond(grade, travel);
  }

  /** The relations of one reading. */
  @Benchmark
  public ModulusFromHardness hardness() {
    return ModulusFromHardness.of(ShoreA.of(95).plusMinus(3));
  }

  /** A whole window with probabilities. */
  @Benchmark
  public Window<Bellows> window() {
    return question.answer(grade);
  }
}
