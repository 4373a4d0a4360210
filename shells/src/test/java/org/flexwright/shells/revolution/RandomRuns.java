package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.ShoreA;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.MooneyRivlin;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/** Shells, laws and drives at random, from sensible to absurd, each run checked. */
final class RandomRuns {

  private static final int LAYERS = 3;

  private static final List<StrainEnergy> LAWS =
      List.of(
          NeoHookean.of(Pressure.mpa(0.5)),
          MooneyRivlin.of(Pressure.mpa(0.4), Pressure.mpa(0.1)),
          Gent.of(Pressure.mpa(0.5), 30.0),
          Ogden.of(Pressure.mpa(0.63), 1.3)
              .and(Pressure.mpa(0.0012), 5.0)
              .and(Pressure.mpa(-0.01), -2.0),
          Grade.polyurethane(ShoreA.of(95).plusMinus(2)).law());

  private final Random random;
  private final boolean stiffened;

  /** The most Newton steps of one leg, over the steps asked for. */
  double dearest;

  /** States in which the shell presses on an obstacle, and on itself. */
  final int[] touching = new int[2];

  /** Runs by how they ended. */
  final int[] ends = new int[Termination.Kind.values().length];

  RandomRuns(long seed) {
    this(seed, false);
  }

  /** Runs, if asked for of shells with up to three rigid stretches. */
  RandomRuns(long seed, boolean stiffened) {
    random = new Random(seed);
    this.stiffened = stiffened;
  }

  /** Counts how often the energy is asked for. */
  private static final class Counted implements StrainEnergy {
    private final StrainEnergy of;
    long calls;

    Counted(StrainEnergy of) {
      this.of = of;
    }

    @Override
    public double energy(double l1, double l2, double l3) {
      calls++;
      return of.energy(l1, l2, l3);
    }

    @Override
    public void gradient(double l1, double l2, double l3, double[] out) {
      of.gradient(l1, l2, l3, out);
    }

    @Override
    public void hessian(double l1, double l2, double l3, double[] out) {
      of.hessian(l1, l2, l3, out);
    }

    @Override
    public double shearModulus() {
      return of.shearModulus();
    }

    @Override
    public StretchRange range() {
      return of.range();
    }

    @Override
    public StrainEnergy scaled(double factor) {
      throw new UnsupportedOperationException();
    }
  }

  /** Asks to stop after some reports. */
  private static final class Stopper implements RunControl {
    private int left;

    Stopper(int left) {
      this.left = left;
    }

    @Override
    public void progress(Progress progress) {
      assertThat(progress.fraction()).isBetween(0.0, 1.0);
      left--;
    }

    @Override
    public boolean stopRequested() {
      return left < 0;
    }
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  /** Log-even between, with either sign. */
  private double wide(double low, double high) {
    return Math.copySign(
        Math.exp(between(Math.log(low), Math.log(high))), random.nextDouble() - 0.5);
  }

  private ShellMesh mesh() {
    int n = 4 + random.nextInt(25);
    double size = Math.exp(between(Math.log(2e-3), Math.log(0.2)));
    double wall = size * Math.exp(between(Math.log(0.005), Math.log(0.4)));
    return switch (random.nextInt(8)) {
      case 0 -> Meshes.tube(size, size * between(0.1, 5.0), wall, n);
      case 1 -> Meshes.disc(size, wall, n);
      case 2 -> Meshes.sphere(size, Math.PI, wall, n);
      case 3 -> Meshes.sphere(size, between(0.1, 3.0), wall, n);
      case 4 -> Meshes.zone(size, between(0.2, 1.0), between(1.2, 2.9), between(0.7, 2.0), wall, n);
      case 5 -> Meshes.convolution(2.0 * size, size, 0.2 * size, 0.3 * wall, n);
      case 6 -> Meshes.torus(2.0 * size, size, wall, n);
      default ->
          Meshes.straight(size, 0.0, size * between(1.5, 4.0), wide(0.01, 2.0) * size, wall, n);
    };
  }

  private void stiffen(ShellMesh mesh) {
    int n = mesh.elements();
    int free = random.nextInt(n); // something must give way
    for (int k = 1 + random.nextInt(3); k > 0; k--) {
      int from = random.nextInt(n);
      int to = Math.min(n, from + 1 + random.nextInt(n / 2));
      for (int i = from; i < to; i++) {
        mesh.rigid[i] = i != free;
      }
    }
  }

  private Drive drive(double size, double modulus) {
    double load = wide(1e-6, 10.0);
    Drive.What what = Drive.What.values()[random.nextInt(4)];
    double target =
        switch (what) {
          case TRAVEL -> wide(1e-3, 10.0) * size;
          case FORCE -> load * modulus * size * size;
          case PRESSURE -> load * modulus;
          case VOLUME -> wide(1e-3, 100.0) * size * size * size;
        };
    return new Drive(what, target, 1 + random.nextInt(12));
  }

  /**
   * Bores, plates and balls that are clear of the shell at rest, near it or far off; often none.
   */
  private List<Obstacle> obstacles(ShellMesh mesh) {
    List<Obstacle> all = new ArrayList<>();
    double out = 0.0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < mesh.nodes(); i++) {
      double wall = mesh.sections[Math.min(i, mesh.elements() - 1)].thickness();
      out = Math.max(out, mesh.radius[i] + wall);
      low = Math.min(low, mesh.height[i] - wall);
      high = Math.max(high, mesh.height[i] + wall);
    }
    double off = Math.abs(wide(1e-3, 1.0)) * mesh.size();
    double ball = between(0.1, 3.0) * mesh.size();
    switch (random.nextInt(10)) {
      case 0 -> all.add(Obstacle.bore(Length.m(out + off)));
      case 1 -> all.add(Obstacle.plateAbove(Length.m(high + off)));
      case 2 -> all.add(Obstacle.plateBelow(Length.m(low - off)));
      case 3 -> all.add(Obstacle.ball(Length.m(ball), Length.m(high + off + ball)));
      case 4 -> {
        all.add(Obstacle.bore(Length.m(out + off)));
        all.add(Obstacle.plateBelow(Length.m(low - off)));
        all.add(Obstacle.ball(Length.m(ball), Length.m(high + off + ball)));
      }
      default -> {
        // free
      }
    }
    return all;
  }

  private <T> T any(T[] of) {
    return of[random.nextInt(of.length)];
  }

  /** One run; checks its end and all its states. */
  void one() {
    ShellMesh mesh = mesh();
    if (stiffened) {
      stiffen(mesh);
    }
    Counted law = new Counted(LAWS.get(random.nextInt(LAWS.size())));
    Journey journey =
        new Journey(mesh, any(End.values()), any(End.values()), LAYERS, law, obstacles(mesh));
    List<Drive> legs = new ArrayList<>();
    int steps = 0;
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      Drive leg = drive(mesh.size(), law.youngModulus());
      steps += leg.steps();
      legs.add(leg);
    }
    boolean stopped = random.nextInt(4) == 0;
    int after = random.nextInt(6);
    ShellPath path = journey.run(legs, stopped ? new Stopper(after) : RunControl.none());
    ends[path.termination().kind().ordinal()]++;
    dearest = Math.max(dearest, (double) law.calls / (mesh.elements() * LAYERS * steps));
    String what = mesh.size() + " " + legs + " " + path.termination();
    if (path.termination().kind() == Termination.Kind.STOPPED) {
      assertThat(path.states().size()).as(what).isLessThanOrEqualTo(after + 1);
    }
    assertThat(path.states()).as(what).isNotEmpty();
    for (ShellState s : path.states()) {
      check(s, mesh.size(), what);
      touching[0] += s.touches().stream().anyMatch(t -> t.length().m() > 0.0) ? 1 : 0;
      touching[1] += s.self().isPresent() ? 1 : 0;
    }
    for (ShellPath.Limit l : path.limits()) {
      assertThat(l.load()).as(what).isFinite();
      assertThat(l.driven()).as(what).isFinite();
    }
    if (path.termination().kind() == Termination.Kind.LIMIT_POINT) {
      assertThat(path.limits()).as(what).isNotEmpty();
    }
    if (legs.size() == 1) {
      notBeyond(path, legs.get(0), what);
    }
    if (path.termination().complete()) {
      reached(path, legs.get(legs.size() - 1), what);
    }
  }

  private static void check(ShellState s, double size, String what) {
    for (int i = 0; i < s.nodes(); i++) {
      assertThat(s.radius(i).m()).as(what).isFinite().isGreaterThanOrEqualTo(-1e-12 * size);
      assertThat(s.height(i).m()).as(what).isFinite();
      assertThat(s.turn(i).rad()).as(what).isFinite();
    }
    assertThat(s.travel().m()).as(what).isFinite();
    assertThat(s.force().newtons()).as(what).isFinite();
    assertThat(s.pressure().pa()).as(what).isFinite();
    assertThat(s.volume().m3()).as(what).isFinite();
    assertThat(s.energy().joules()).as(what).isFinite();
    assertThat(s.peak().strain()).as(what).isFinite();
    for (Touch t : s.touches()) {
      check(t.length(), t.mean(), t.peak(), t.normal(), what);
    }
    s.self().ifPresent(t -> check(t.length(), t.mean(), t.peak(), t.normal(), what));
  }

  private static void check(Length length, Pressure mean, Pressure peak, Force all, String what) {
    assertThat(length.m()).as(what).isFinite().isNotNegative();
    assertThat(mean.pa()).as(what).isFinite().isNotNegative();
    assertThat(peak.pa()).as(what).isFinite().isNotNegative();
    assertThat(all.newtons()).as(what).isFinite().isNotNegative();
  }

  /** No state bears more than was asked for, and none pushes the other way. */
  private static void notBeyond(ShellPath path, Drive leg, String what) {
    for (ShellState s : path.states()) {
      double at =
          switch (leg.what()) {
            case FORCE -> s.force().newtons();
            case PRESSURE -> s.pressure().pa();
            default -> 0.0;
          };
      assertThat(at / leg.target()).as(what).isBetween(-1e-6, 1.0 + 1e-6);
    }
  }

  /** A complete run is where its last leg was to lead. */
  private static void reached(ShellPath path, Drive leg, String what) {
    ShellState s = path.last();
    double at =
        switch (leg.what()) {
          case TRAVEL -> s.travel().m();
          case FORCE -> s.force().newtons();
          case PRESSURE -> s.pressure().pa();
          case VOLUME -> s.volume().m3();
        };
    double within = 1e-6 * Math.abs(leg.target()) + 1e-9;
    assertThat(Math.abs(at - leg.target())).as(what).isLessThanOrEqualTo(within);
  }
}
