package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.run.RunControl;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shells against solids: the same parts by axisymmetric continuum mechanics at constant volume,
 * neo-Hookean with a shear modulus of 1 and lengths without a unit. Two meshes of each shell are
 * extrapolated, so that what is left is the error of the shell, not of its elements.
 */
final class ContinuumTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(ContinuumTest.class, "continuum.csv");

  private static final StrainEnergy UNIT = NeoHookean.of(Pressure.pa(1.0));
  private static final int LAYERS = 5;
  private static final int ELEMENTS = 90;

  static Stream<ReferenceCase> cases() {
    return TABLE.cases().filter(c -> !c.formula().startsWith("set-back"));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsContinuum(ReferenceCase c) {
    double coarse = load(c, ELEMENTS, End.BUILT_IN);
    double fine = load(c, 2 * ELEMENTS, End.BUILT_IN);
    double limit = (4.0 * fine - coarse) / 3.0;
    assertThat(fine / limit).isBetween(0.996, 1.004);
    TABLE.check(c, limit);
  }

  static Stream<ReferenceCase> bounds() {
    return TABLE.cases("set-back of a built-in edge");
  }

  @ParameterizedTest
  @MethodSource("bounds")
  void theSetBackLiesBetweenItsBounds(ReferenceCase c) {
    // the bounds are 0.0004 apart
    TABLE.check(c, BuiltIn.SET_BACK);
    boolean below = c.source().contains("lower");
    assertThat(BuiltIn.SET_BACK - c.published()).isBetween(below ? 0.0 : -4e-4, below ? 4e-4 : 0.0);
  }

  static double load(ReferenceCase c, int n, End end) {
    double wall = c.input("wall");
    double at = c.input("at");
    return switch (c.text("shape")) {
      case "convolution" -> {
        ShellMesh mesh =
            Meshes.convolution(c.input("mean"), c.input("depth"), c.input("round"), wall, n / 3);
        Drive leg = Drive.travel(Length.m(at)).steps(6);
        yield journey(mesh, End.GUIDED, End.GUIDED, leg).last().force().newtons();
      }
      case "tube of uneven wall" -> {
        ShellMesh mesh = uneven(c.input("radius"), c.input("length"), wall, c.input("share"), n);
        yield pressure(mesh, End.GUIDED, End.GUIDED, 0, at);
      }
      case "sleeve" -> {
        ShellMesh mesh = Meshes.tube(c.input("radius"), 0.5 * c.input("length"), wall, n);
        yield pressure(mesh, end, End.GUIDED, -3, at);
      }
      case "disc" -> pressure(Meshes.disc(c.input("radius"), wall, n), End.GUIDED, end, 1, at);
      case "cap" -> cap(c, n, end).last().pressure().pa();
      case "dimpled cap" -> dimpled(c, n, end);
      case "cap limit" -> cap(c, n, end).limits().get(0).load();
      case "cap with boss" -> {
        ShellMesh mesh = zone(c.input("radius"), c.input("boss"), c.input("opening"), wall, n);
        Drive leg = Drive.travel(Length.m(at)).steps(12);
        yield journey(mesh, end, end, leg).last().force().newtons();
      }
      default -> throw new IllegalArgumentException(c.text("shape"));
    };
  }

  private static ShellPath cap(ReferenceCase c, int n, End end) {
    double from = Math.PI - c.input("opening");
    ShellMesh mesh = zone(c.input("radius"), from, Math.PI, c.input("wall"), n);
    Drive free = Drive.force(Force.newtons(0.0)).steps(1);
    return journey(mesh, end, End.GUIDED, free, Drive.volume(Volume.m3(c.input("at"))).steps(12));
  }

  /** Pressure on a cap that has snapped: pushed in first, until the volume is held without push. */
  private static double dimpled(ReferenceCase c, int n, End end) {
    double from = Math.PI - c.input("opening");
    ShellMesh mesh = zone(c.input("radius"), from, Math.PI, c.input("wall"), n);
    Drive volume = Drive.volume(Volume.m3(c.input("at"))).steps(3);
    double[] pressure = new double[1];
    new BrentSolver(1e-3)
        .solve(
            30,
            push -> {
              Drive pushed = Drive.travel(Length.m(push)).steps(6);
              ShellState s = journey(mesh, end, End.GUIDED, pushed, volume).last();
              pressure[0] = s.pressure().pa();
              return s.force().newtons();
            },
            3.0,
            4.5);
    return pressure[0];
  }

  private static ShellPath journey(ShellMesh mesh, End first, End last, Drive... legs) {
    ShellPath path =
        new Journey(mesh, first, last, LAYERS, UNIT, List.of())
            .run(List.of(legs), RunControl.none());
    assertThat(path.termination().complete()).isTrue();
    return path;
  }

  /** Pressure that brings one unknown, counted from the end if negative, to a value. */
  private static double pressure(ShellMesh mesh, End first, End last, int unknown, double to) {
    ShellMesh moving = BuiltIn.of(mesh, first, last).moving;
    int q = 3 * moving.nodes();
    IntStream low = first == End.GUIDED ? IntStream.of(2) : IntStream.of(0, 2);
    IntStream high = last == End.GUIDED ? IntStream.of(q - 1) : IntStream.of(q - 3, q - 1);
    IntStream axis = mesh.radius[0] == 0.0 ? IntStream.of(0) : IntStream.of(1);
    int[] held =
        Stream.of(low, high, axis, IntStream.of(q - 2)).flatMapToInt(s -> s).distinct().toArray();
    ShellSolver s =
        new ShellSolver(new ShellModel(moving, UNIT, LAYERS), Loading.pressure(q), held);
    assertThat(s.evaluate()).isTrue();
    Control control = new Control.Unknown(unknown < 0 ? q + unknown : unknown);
    PathFollower path = new PathFollower(s, () -> {});
    assertThat(path.follow(control, to, 10, "test", RunControl.none()).complete()).isTrue();
    return s.factor;
  }

  private static double[] each(int n, IntToDoubleFunction f) {
    return IntStream.range(0, n).mapToDouble(f).toArray();
  }

  /** A tube whose wall grows from (1 - share) to (1 + share) of the mean along half a wave. */
  private static ShellMesh uneven(double radius, double length, double wall, double share, int n) {
    double[] up = new double[n];
    Arrays.fill(up, 0.5 * Math.PI);
    return new ShellMesh(
        each(n + 1, i -> radius),
        each(n + 1, i -> length * i / n),
        up,
        up,
        each(n, i -> wall * (1.0 - share * Math.cos(Math.PI * (i + 0.5) / n))));
  }

  /** A zone of a sphere between two opening angles. */
  private static ShellMesh zone(double radius, double from, double to, double wall, int n) {
    double by = (to - from) / n;
    double[] walls = new double[n];
    Arrays.fill(walls, wall);
    double[] r = each(n + 1, i -> radius * Math.sin(from + by * i));
    if (to == Math.PI) {
      r[n] = 0.0;
    }
    return new ShellMesh(
        r,
        each(n + 1, i -> -radius * Math.cos(from + by * i)),
        each(n, i -> from + by * i),
        each(n, i -> from + by * (i + 1)),
        walls);
  }
}
