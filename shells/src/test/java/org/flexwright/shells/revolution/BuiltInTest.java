package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.m;

import java.util.Arrays;
import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

final class BuiltInTest {

  private static final StrainEnergy UNIT_YOUNG = NeoHookean.of(Pressure.pa(1.0 / 3.0));
  private static final double C = BuiltIn.SET_BACK;

  private static ShellPath run(ShellMesh mesh, End first, End last, Drive... legs) {
    ShellPath path =
        new Journey(mesh, first, last, 5, UNIT_YOUNG, List.of())
            .run(List.of(legs), RunControl.none());
    assertThat(path.termination().complete()).isTrue();
    return path;
  }

  private static double length(ShellMesh mesh) {
    return Arrays.stream(mesh.length).sum();
  }

  @Test
  void onlyBuiltInEndsAreSetBack() {
    ShellMesh tube = Meshes.tube(10.0, 6.0, 2.0, 12);
    assertThat(length(BuiltIn.of(tube, End.CLAMPED, End.PINNED).moving)).isEqualTo(length(tube));
    ShellMesh one = BuiltIn.of(tube, End.GUIDED, End.BUILT_IN).moving;
    assertThat(length(one)).isCloseTo(6.0 - 2.0 * C, within(1e-14));
    assertThat(one.height[12]).isCloseTo(6.0 - 2.0 * C, within(1e-14));
    ShellMesh both = BuiltIn.of(tube, End.BUILT_IN, End.BUILT_IN).moving;
    assertThat(both.height[0]).isCloseTo(2.0 * C, within(1e-15));
    assertThat(both.height[12]).isCloseTo(6.0 - 2.0 * C, within(1e-14));
    assertThat(both.elements()).isEqualTo(12);
  }

  @Test
  void anEndOnTheAxisIsNotBuiltIn() {
    ShellMesh disc = Meshes.disc(10.0, 1.0, 20);
    ShellMesh moving = BuiltIn.of(disc, End.BUILT_IN, End.BUILT_IN).moving;
    assertThat(moving.radius[0]).isZero();
    assertThat(moving.radius[20]).isCloseTo(10.0 - C, within(1e-14));
  }

  @Test
  void aCurvedMeridianIsCutOnItsCurve() {
    double opening = 0.9;
    ShellMesh cap = Meshes.sphere(10.0, opening, 1.5, 40);
    ShellMesh moving = BuiltIn.of(cap, End.GUIDED, End.BUILT_IN).moving;
    // arc against chord of an element: its third power over 24 R^2
    double angle = opening - 1.5 * C / 10.0;
    assertThat(moving.radius[40]).isCloseTo(10.0 * Math.sin(angle), within(1e-5));
    assertThat(moving.height[40]).isCloseTo(-10.0 * Math.cos(angle), within(1e-5));
    double curvature = moving.sections[39].curvature();
    assertThat(curvature).isCloseTo(0.1, within(1e-4));
  }

  @Test
  void elementsInsideTheSetBackGoWithTheirEnd() {
    // 300 elements of 0.02: the set-back of 0.1016 swallows five of them and part of one
    ShellMesh tube = Meshes.tube(10.0, 6.0, 2.0, 300);
    BuiltIn ends = BuiltIn.of(tube, End.BUILT_IN, End.BUILT_IN);
    assertThat(ends.numbered(new ShellState.Peak(0.0, 0, true, true)).element()).isEqualTo(5);
    assertThat(ends.moving.elements()).isEqualTo(290);
    assertThat(length(ends.moving)).isCloseTo(6.0 - 4.0 * C, within(1e-13));
    double[] x = ends.moving.rest();
    x[x.length - 2] += 0.5;
    double[] whole = ends.whole(x);
    assertThat(whole).hasSize(3 * tube.nodes());
    assertThat(whole[1]).isZero();
    assertThat(whole[whole.length - 2]).isCloseTo(6.5, within(1e-14));
    assertThat(whole[whole.length - 3]).isEqualTo(10.0);
    assertThat(whole[3 * 5 + 1]).isCloseTo(2.0 * C, within(1e-14));
  }

  @Test
  void aMeridianShorterThanItsWallKeepsHalfItsLength() {
    ShellMesh ring = Meshes.tube(10.0, 0.1, 2.0, 8);
    assertThat(length(BuiltIn.of(ring, End.BUILT_IN, End.BUILT_IN).moving))
        .isCloseTo(0.05, within(1e-14));
  }

  @Test
  void aBuiltInSleeveIsAClampedOneThatIsShorter() {
    double wall = 0.8;
    double length = 9.0;
    ShellMesh whole = Meshes.tube(10.0, length, wall, 60);
    ShellMesh within = Meshes.tube(10.0, length - 2.0 * C * wall, wall, 60);
    Drive blow = Drive.pressure(Pressure.pa(0.01)).steps(2);
    Drive push = Drive.travel(m(0.6)).steps(4);
    ShellState built = run(whole, End.BUILT_IN, End.BUILT_IN, blow, push).last();
    ShellState clamped = run(within, End.CLAMPED, End.CLAMPED, blow, push).last();
    ShellState longer = run(whole, End.CLAMPED, End.CLAMPED, blow, push).last();
    // the end elements differ in length by a quarter: one part in a thousand
    assertThat(built.force().newtons())
        .isCloseTo(clamped.force().newtons(), within(1e-3 * clamped.force().newtons()));
    assertThat(built.volume().m3())
        .isCloseTo(clamped.volume().m3(), within(1e-3 * Math.abs(clamped.volume().m3())));
    assertThat(built.force().newtons()).isGreaterThan(1.003 * longer.force().newtons());
    assertThat(built.nodes()).isEqualTo(61);
  }

  @Test
  void aThinBuiltInDiscIsThePlateOfASmallerRadius() {
    // w = p b^4/(64 D) (1 + 6.4 (t/b)^2), b = a - c t (shear share 5/6, Poisson ratio 1/2)
    double a = 10.0;
    double t = 0.5;
    double d = t * t * t / 9.0;
    double p = 64.0 * d / Math.pow(a, 4) * 1e-4;
    for (End end : List.of(End.BUILT_IN, End.CLAMPED)) {
      double b = end == End.BUILT_IN ? a - C * t : a;
      double coarse = sag(a, t, p, end, 60);
      double fine = sag(a, t, p, end, 120);
      double plate = p * Math.pow(b, 4) / (64.0 * d) * (1.0 + 6.4 * t * t / (b * b));
      assertThat((4.0 * fine - coarse) / 3.0).isCloseTo(plate, within(3e-4 * plate));
    }
  }

  private static double sag(double a, double t, double p, End end, int n) {
    ShellMesh disc = Meshes.straight(a, 0.0, 0.0, 0.0, t, n);
    Drive free = Drive.force(Force.newtons(0.0)).steps(1);
    ShellPath path = run(disc, end, End.GUIDED, free, Drive.pressure(Pressure.pa(p)).steps(1));
    return Math.abs(path.last().height(n).m());
  }
}
