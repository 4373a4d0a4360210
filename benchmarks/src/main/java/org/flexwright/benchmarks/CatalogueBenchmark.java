package org.flexwright.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.flexwright.finder.Catalogue;
import org.flexwright.finder.Described;
import org.flexwright.finder.Dimension;
import org.flexwright.finder.Finding;
import org.flexwright.finder.Shape;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.contact.Ball;
import org.flexwright.hardness.contact.BondedLayer;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.pad.LatticePad;
import org.flexwright.lattice.scaling.LevelSurface;
import org.flexwright.lattice.scaling.ScalingLaws;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.shells.block.BondedBlock;
import org.flexwright.shells.catalogue.ShellCatalogue;
import org.flexwright.shells.dome.ConicalDisc;
import org.flexwright.shells.inflate.Balloon;
import org.flexwright.shells.inflate.FlatMembrane;
import org.flexwright.shells.tube.CollapsingTube;
import org.flexwright.shells.tube.ElasticaRing;
import org.flexwright.shells.wall.CircularPlate;
import org.flexwright.shells.wall.PressedPlate;
import org.flexwright.shells.wall.RectangularPlate;
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
 * One member of each family of the catalogue, as a full response. Read the ratios to {@code strip}
 * within one run.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 2, time = 1)
@Measurement(iterations = 3, time = 1)
@Fork(1)
public class CatalogueBenchmark {
  private final Grade grade =
      Grade.polyurethane(ShoreA.of(95).plusMinus(2)).printedBy(PrintProcess.beads(mm(0.3)));
  private final LoadCase travel = LoadCase.toTravel(mm(1));
  private final Strip strip = Strip.of(Strip.Ends.CANTILEVER, mm(30), mm(10), mm(1));
  private final PressedPlate plate = PressedPlate.of(PressedPlate.Rim.CLAMPED, mm(20), mm(0.8));
  private final RectangularPlate rectangle =
      RectangularPlate.of(CircularPlate.Rim.SUPPORTED, mm(20), mm(30), mm(0.8));
  private final ElasticaRing ring = ElasticaRing.of(ElasticaRing.Way.PLATES, mm(40), mm(60), mm(1));
  private final CollapsingTube tube =
      CollapsingTube.of(CollapsingTube.Side.ALL, mm(40), mm(60), mm(1));
  private final ConicalDisc disc = ConicalDisc.of(mm(40), mm(20), mm(1), mm(1.5));
  private final BondedBlock block = BondedBlock.disc(mm(20), mm(8));
  private final Balloon balloon = Balloon.of(mm(40), mm(1));
  private final FlatMembrane membrane = FlatMembrane.of(mm(20), mm(0.6));
  private final LatticePad octet =
      LatticePad.of(Cells.OCTET)
          .footprint(mm(60), mm(60))
          .height(mm(20))
          .cell(mm(10))
          .strut(mm(0.8));
  private final Catalogue shells = ShellCatalogue.all();
  private final Described thing =
      Described.as(Shape.TUBE)
          .with(Dimension.WALL, mm(1))
          .with(Dimension.RADIUS, mm(20))
          .with(Dimension.LENGTH, mm(60))
          .with(Dimension.TRAVEL, mm(1));

  private static Length mm(double value) {
    return Length.mm(value);
  }

  /** The unit of comparison: a strip at small travel. */
  @Benchmark
  public Response strip() {
    return strip.respond(grade, travel);
  }

  /** A round plate at large travel, solved. */
  @Benchmark
  public Response plate() {
    return plate.respond(grade, travel);
  }

  /** A rectangular plate by its series. */
  @Benchmark
  public Response rectangle() {
    return rectangle.respond(grade, travel);
  }

  /** A ring between plates by its elastica. */
  @Benchmark
  public Response ring() {
    return ring.respond(grade, travel);
  }

  /** Collapse of a tube. */
  @Benchmark
  public Response tube() {
    return tube.respond(grade, LoadCase.toLimit());
  }

  /** A conical disc. */
  @Benchmark
  public Response disc() {
    return disc.respond(grade, travel);
  }

  /** A bonded block. */
  @Benchmark
  public Response block() {
    return block.respond(grade, travel);
  }

  /** An inflated sphere, thick wall, by the grade's law. */
  @Benchmark
  public Response balloon() {
    return balloon.respond(grade, travel);
  }

  /** A flat membrane by its differential equation. */
  @Benchmark
  public Response membrane() {
    return membrane.respond(grade, LoadCase.toTravel(mm(8)));
  }

  /** A pad of a stretch-dominated cell. */
  @Benchmark
  public Response octet() {
    return octet.respond(grade, travel);
  }

  /** The constants of a cell with fat joints. */
  @Benchmark
  public CubicStiffness cell() {
    return Cells.DIAMOND.solid(0.2, 0.49);
  }

  /** The density of a level set. */
  @Benchmark
  public double level() {
    return LevelSurface.GYROID_SHEET.density(0.46);
  }

  /** All scaling laws as a table. */
  @Benchmark
  public String laws() {
    return ScalingLaws.table(Pressure.mpa(47), 0.1);
  }

  /** A ball on a bonded layer, by its integral equation. */
  @Benchmark
  public double layer() {
    return new BondedLayer(mm(4)).factor(new Ball(mm(2)), mm(0.4), 0.5);
  }

  /** The finder over every analysis for tubes. */
  @Benchmark
  public List<Finding> finder() {
    return shells.find(thing, grade);
  }
}
