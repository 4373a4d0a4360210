package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.junit.jupiter.api.Test;

/** Rigid stretches of a meridian against closed forms and against parts without them. */
final class RigidTest {

  private static final double MEGA = 1e6;
  private static final StrainEnergy LAW = NeoHookean.of(Pressure.pa(MEGA));
  private static final Drive LOOSE = Drive.force(Force.newtons(0.0)).steps(1);

  private static ShellPath run(RevolvedShell shell, Drive... legs) {
    ShellPath path = shell.run(LAW, legs);
    assertThat(path.termination().complete()).as(path.toString()).isTrue();
    return path;
  }

  private static RevolvedShell shell(Meridian of) {
    return RevolvedShell.of(of);
  }

  /** A tube of a radius of 10 mm and a wall of 0.8 mm. */
  private static Meridian tube(double length) {
    return Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(length)).wall(mm(0.8));
  }

  /** A wide tube, a rigid shoulder and a narrow tube of another length. */
  private static Meridian shoulder() {
    return Meridian.from(mm(10), mm(0))
        .lineTo(mm(10), mm(13))
        .lineTo(mm(7), mm(16))
        .lineTo(mm(7), mm(35))
        .wall(mm(0.8))
        .rigid(mm(11), mm(13 + 3 * Math.sqrt(2) + 2));
  }

  private static double frusta(ShellState s) {
    double sum = 0.0;
    for (int i = 1; i < s.nodes(); i++) {
      double a = s.radius(i - 1).m();
      double b = s.radius(i).m();
      sum += (a * a + a * b + b * b) * (s.height(i).m() - s.height(i - 1).m());
    }
    return sum * Math.PI / 3.0;
  }

  @Test
  void aDiscWithABossIsAnAnnularPlate() {
    // w = P a^2/(8 pi D) [(1 - x^2)/2 - 2 x^2 (ln x)^2/(1 - x^2)], both edges held against turning,
    // and the shear travel P ln(a/b)/(2 pi (5/6) G t); a and b at the set-backs. For x = 1/2 the
    // bracket gives w = 0.01959 P a^2/(E t^3), Wahl and Lobo 1930 (from memory) for a ratio of 1/2
    double t = 0.5;
    for (double x : new double[] {0.2, 0.5, 0.8}) {
      double a = 20 - BuiltIn.SET_BACK * t;
      double b = 20 * x + BuiltIn.SET_BACK * t;
      double q = b / a;
      double log = Math.log(q);
      double bracket = 0.5 * (1 - q * q) - 2 * q * q * log * log / (1 - q * q);
      double d = 3 * MEGA * Math.pow(t * 1e-3, 3) / 9.0;
      double force = 1e-6;
      double w =
          force * a * a * 1e-6 / (8 * Math.PI * d) * bracket
              - force * log / (2 * Math.PI * 5 / 6 * MEGA * t * 1e-3);
      Meridian disc =
          Meridian.from(mm(20), mm(0))
              .lineTo(mm(20 * x), mm(0))
              .toAxis()
              .named("boss")
              .wall(mm(t))
              .rigid("boss");
      Drive push = Drive.force(Force.newtons(force)).steps(1);
      double coarse = run(shell(disc).fineness(2), push).last().travel().m();
      ShellState fine = run(shell(disc).fineness(4), push).last();
      // elements of two nodes converge with the square of their length
      assertThat((4 * fine.travel().m() - coarse) / 3).isCloseTo(w, within(3e-5 * w));
      int end = fine.nodes() - 1;
      assertThat(fine.radius(end).m()).isZero();
      assertThat(fine.height(end).m() - fine.height(end - 1).m()).isCloseTo(0, within(1e-15));
    }
  }

  /** Height of the element of the peak strain, in mm. */
  private static double middle(ShellState s) {
    int i = s.peak().element();
    return 0.5 * (s.height(i).mm() + s.height(i + 1).mm());
  }

  @Test
  void rigidEndsAreBuiltInEnds() {
    Meridian drawn =
        Meridian.from(mm(10), mm(0))
            .lineTo(mm(10), mm(5))
            .named("end")
            .lineTo(mm(10), mm(17))
            .lineTo(mm(10), mm(20))
            .named("end")
            .wall(mm(0.8))
            .rigid("end");
    Drive[] legs = {Drive.travel(mm(1)).steps(4), Drive.pressure(Pressure.kpa(30)).steps(4)};
    ShellState built = run(shell(tube(12)), legs).last();
    for (End end : End.values()) {
      ShellState rigid = run(shell(drawn).first(end).last(end), legs).last();
      double f = built.force().newtons();
      double v = built.volume().m3();
      assertThat(rigid.force().newtons()).isCloseTo(f, within(1e-12 * Math.abs(f)));
      assertThat(rigid.volume().m3()).isCloseTo(v, within(1e-12 * Math.abs(v)));
      assertThat(rigid.peak().strain()).isCloseTo(built.peak().strain(), within(1e-12));
      assertThat(rigid.height(rigid.nodes() - 1).mm()).isCloseTo(19.0, within(1e-12));
      assertThat(rigid.nodes()).isGreaterThan(built.nodes());
      // the part is its own mirror image: rounding says at which end the peak is found
      double place = Math.abs(middle(rigid) - (5 + 5.5));
      assertThat(place).isCloseTo(Math.abs(middle(built) - 5.5), within(1e-9));
    }
  }

  @Test
  void aRingInTheMiddleMakesTwoPartsInSeries() {
    Meridian ringed = tube(30).rigid(mm(12), mm(18));
    Drive blow = Drive.pressure(Pressure.kpa(40)).steps(4);
    ShellState whole = run(shell(ringed), Drive.travel(mm(2)).steps(4), blow).last();
    ShellState half = run(shell(tube(12)), Drive.travel(mm(1)).steps(4), blow).last();
    double f = half.force().newtons();
    assertThat(whole.force().newtons()).isCloseTo(f, within(1e-9 * Math.abs(f)));
    assertThat(whole.energy().joules()).isCloseTo(2 * half.energy().joules(), within(1e-12));
    // between the halves 6 mm of a constant bore come nearer as one
    assertThat(whole.volume().cm3()).isCloseTo(2 * half.volume().cm3(), within(1e-9));
    assertThat(whole.stable()).isTrue();
  }

  @Test
  void unlikePartsInSeriesShareTheForce() {
    Meridian both =
        Meridian.from(mm(12), mm(0))
            .convolutions(1, mm(4), mm(6))
            .lineTo(mm(12), mm(10))
            .named("ring")
            .sine(2, mm(3), mm(7))
            .wall(mm(0.7))
            .rigid("ring");
    Meridian below = Meridian.from(mm(12), mm(0)).convolutions(1, mm(4), mm(6)).wall(mm(0.7));
    Meridian above = Meridian.from(mm(12), mm(0)).sine(2, mm(3), mm(7)).wall(mm(0.7));
    Drive push = Drive.force(Force.newtons(1)).steps(5);
    ShellPath path = run(shell(both), push);
    ShellPath first = run(shell(below), push);
    ShellPath second = run(shell(above), push);
    for (int i = 1; i <= 5; i++) {
      double sum = first.states().get(i).travel().mm() + second.states().get(i).travel().mm();
      assertThat(path.states().get(i).travel().mm()).isCloseTo(sum, within(1e-9 * sum));
    }
    assertThat(path.last().travel().mm()).isGreaterThan(0.5);
  }

  @Test
  void aMovingShoulderKeepsEnergyAndVolume() {
    Drive blow = Drive.pressure(Pressure.kpa(60)).steps(40);
    ShellPath path = run(shell(shoulder()), blow);
    double work = 0.0;
    List<ShellState> states = path.states();
    // Simpson's rule on V(p): p V less the integral of V dp
    for (int i = 2; i < states.size(); i += 2) {
      double step = states.get(i).pressure().pa() - states.get(i - 2).pressure().pa();
      double a = states.get(i - 2).volume().m3();
      double b = states.get(i - 1).volume().m3();
      work -= step / 6.0 * (a + 4 * b + states.get(i).volume().m3());
    }
    ShellState last = path.last();
    work += last.pressure().pa() * last.volume().m3();
    assertThat(last.energy().joules()).isCloseTo(work, within(1e-6 * work));
    double by = frusta(last) - frusta(states.get(0));
    assertThat(last.volume().m3()).isCloseTo(by, within(1e-12 * by));
    // the shoulder's face is pushed up, as one
    double up = -1.0;
    for (int i = 0; i < last.nodes(); i++) {
      double rest = states.get(0).height(i).mm();
      if (rest > 11.1 && rest < 17.9) {
        double moved = last.height(i).mm() - rest;
        assertThat(moved).isGreaterThan(0.05);
        assertThat(up < 0.0 ? moved : up).isCloseTo(moved, within(1e-12));
        assertThat(last.radius(i).m()).isEqualTo(states.get(0).radius(i).m());
        up = moved;
      }
    }
    assertThat(last.stable()).isTrue();
  }

  @Test
  void theThrustOnAShoulderIsThePressureOnItsFace() {
    // last end loose: the wide tube bears the lid and the shoulder, the narrow one the lid alone;
    // by d volume/d height of the free body above a cut through the shoulder
    double p = 1e3;
    Drive blow = Drive.pressure(Pressure.pa(p)).steps(1);
    ShellState both = run(shell(shoulder()), LOOSE, blow).last();
    Meridian wide = tube(11);
    Meridian narrow = Meridian.from(mm(7), mm(0)).lineTo(mm(7), mm(17)).wall(mm(0.8));
    ShellState below = run(shell(wide), LOOSE, blow).last();
    ShellState above = run(shell(narrow), LOOSE, blow).last();
    double sum = below.travel().m() + above.travel().m();
    assertThat(both.travel().m()).isCloseTo(sum, within(1e-9 * Math.abs(sum)));
  }

  @Test
  void aLimitPointIsThatOfOneHalf() {
    StrainEnergy soft = Gent.of(Pressure.mpa(0.4), 97.2);
    Drive feed = Drive.volume(Volume.cm3(40)).steps(20);
    ShellPath half = shell(tube(30)).run(soft, LOOSE, feed);
    ShellPath dead =
        shell(tube(66).rigid(mm(30), mm(36))).run(soft, LOOSE, Drive.pressure(Pressure.kpa(200)));
    assertThat(half.limits()).isNotEmpty();
    double limit = half.limits().get(0).load();
    assertThat(dead.limits()).hasSize(1);
    assertThat(dead.limits().get(0).load()).isCloseTo(limit, within(1e-6 * limit));
    for (ShellState s : dead.states().subList(0, dead.states().size() - 1)) {
      assertThat(s.stable()).isTrue();
    }
  }

  @Test
  void printStaysAsDrawn() {
    Meridian plain = tube(30);
    Meridian ringed = plain.rigid(mm(12), mm(18));
    assertThat(ringed.printedVolume()).isEqualTo(plain.printedVolume());
    assertThat(ringed.triangles(mm(0.05)).volume()).isEqualTo(plain.triangles(mm(0.05)).volume());
    // the rigid stretch stays through every wither
    Meridian thick = ringed.wall(mm(1)).wallTimes(0.9).blend(mm(1));
    ShellMesh mesh = thick.mesh(1.0);
    boolean some = false;
    for (int i = 0; i < mesh.elements(); i++) {
      double z = 0.5e3 * (mesh.height[i] + mesh.height[i + 1]);
      assertThat(mesh.rigid[i]).isEqualTo(z > 12 && z < 18);
      some |= mesh.rigid[i];
    }
    assertThat(some).isTrue();
  }

  @Test
  void stretchesThatTouchAreOne() {
    Meridian one = tube(30).rigid(mm(12), mm(18));
    Meridian two = tube(30).rigid(mm(15), mm(18)).rigid(mm(12), mm(15)).rigid(mm(13), mm(16));
    Drive push = Drive.travel(mm(1)).steps(2);
    assertThat(run(shell(two), push).last().force())
        .isEqualTo(run(shell(one), push).last().force());
  }

  @Test
  void anObstacleDoesNotStopARigidStretchAndThatIsSaid() {
    Meridian ringed = tube(30).rigid(mm(12), mm(18));
    RevolvedShell free = shell(ringed).against(Obstacle.bore(mm(10.5)));
    assertThat(run(free, Drive.travel(mm(1)).steps(2)).caveats().toString())
        .doesNotContain("rigid stretch");
    RevolvedShell tight = shell(ringed).against(Obstacle.bore(mm(9.9)));
    assertThat(tight.run(LAW, Drive.travel(mm(1)).steps(2)).caveats().toString())
        .contains("rigid stretch reaches 0.1 mm into the bore");
  }

  @Test
  void refusesWithThePlace() {
    Meridian cup =
        Meridian.from(mm(0), mm(0))
            .lineTo(mm(10), mm(0))
            .named("lid")
            .lineTo(mm(10), mm(20))
            .wall(mm(1));
    refused(() -> cup.rigid("lid"), "corner at piece 1 (lid)", "solid reaches along the wall");
    refused(() -> cup.rigid(mm(0), mm(10.2)), "corner at piece 2", "room of the corner");
    assertThat(cup.rigid(mm(0), mm(11)).mesh(1.0).rigid[0]).isTrue();
    refused(() -> cup.rigid("core"), "rigid stretch", "[lid]");
    refused(() -> cup.rigid(mm(0), mm(30)), "all of the line");
    refused(() -> cup.rigid(mm(5), mm(31)), "0 to 30 mm");
    refused(() -> tube(30).rigid(mm(0), mm(15)).rigid(mm(15.1), mm(30)), "0.1 mm at piece 1");
  }

  private static void refused(Runnable what, String... words) {
    assertThatThrownBy(what::run)
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContainingAll(words);
  }
}
