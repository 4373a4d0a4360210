package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Angle;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

/** Rigid obstacles: their forces are slopes, and a tube in a bore follows its integral. */
final class ContactTest {

  private static final StrainEnergy UNIT = NeoHookean.of(Pressure.pa(1.0));

  @Test
  void forcesAndTangentAreDerivatives() {
    double step = 1e-6;
    ShellMesh mesh = Meshes.sphere(10.0, Math.PI, 1.0, 9);
    List<Obstacle> obstacles =
        List.of(
            new Obstacle.Bore(Length.m(10.1), Angle.degrees(8.0)),
            Obstacle.plateAbove(Length.m(9.5)),
            Obstacle.plateBelow(Length.m(-9.0)),
            Obstacle.ball(Length.m(6.0), Length.m(14.0)));
    ShellModel model = new ShellModel(mesh, UNIT, 5, obstacles);
    Random random = new Random(5L);
    double[] x = mesh.rest();
    for (int i = 0; i < x.length; i++) {
      x[i] += (i % 3 == 2 ? 0.05 : 0.2) * random.nextGaussian();
    }
    for (int i = 0; i < x.length; i += 3) {
      x[i] = Math.abs(x[i]);
    }
    assertThat(model.at(x, 0.0)).isTrue();
    assertThat(model.touching).isPositive();
    model.contact.update();
    assertThat(model.at(x, 0.0)).isTrue();
    double[] force = model.force.clone();
    double[][] tangent = new double[x.length][x.length];
    double stiff = 0.0;
    double scale = 0.0;
    for (int j = 0; j < x.length; j++) {
      double[] unit = new double[x.length];
      unit[j] = 1.0;
      model.tangent.times(unit, tangent[j]);
      stiff = Math.max(stiff, Math.abs(tangent[j][j]));
      scale = Math.max(scale, Math.abs(force[j]));
    }
    for (int j = 0; j < x.length; j++) {
      double at = x[j];
      x[j] = at + step;
      assertThat(model.at(x, 0.0)).isTrue();
      double up = model.energy(x) + model.touching;
      double[] forceUp = model.force.clone();
      x[j] = at - step;
      assertThat(model.at(x, 0.0)).isTrue();
      double slope = (up - model.energy(x) - model.touching) / (2.0 * step);
      assertThat(slope).isCloseTo(force[j], within(1e-7 * scale));
      for (int i = 0; i < x.length; i++) {
        double bend = (forceUp[i] - model.force[i]) / (2.0 * step);
        assertThat(bend).isCloseTo(tangent[j][i], within(1e-7 * stiff));
      }
      x[j] = at;
    }
  }

  @Test
  void aTubeInABorePressesWithWhatIsLeftOfThePressure() {
    int n = 6;
    double inner = 9.0;
    double outer = 10.0;
    double bore = 10.6;
    double middle = 9.5;
    ShellMesh mesh = Meshes.tube(middle, 10.0, 1.0, n);
    int[] held = IntStream.range(0, 2 * n + 2).map(i -> 3 * (i / 2) + 1 + i % 2).toArray();
    ShellModel model = new ShellModel(mesh, UNIT, 5, List.of(Obstacle.bore(Length.m(bore))));
    ShellSolver s = new ShellSolver(model, Loading.pressure(3 * (n + 1)), held);
    assertThat(s.evaluate()).isTrue();
    double p = 0.2;
    PathFollower f = new PathFollower(s, () -> {});
    assertThat(f.follow(new Control.Load(), p, 10, "bore", RunControl.none()).complete()).isTrue();
    // Green and Zerna's integral at the touch; the rest of the pressure is the bore's
    double lb = bore / outer;
    double bored = Math.sqrt(inner * inner + bore * bore - outer * outer);
    double la = bored / inner;
    double touch = Math.log(la / lb) + 0.5 * (1.0 / (lb * lb) - 1.0 / (la * la));
    for (int i = 0; i < n; i++) {
      double pressed = model.contact.pressure(0, i, -1) * middle / bore;
      // a gap of 1e-4 of the wall is left
      assertThat(pressed).isCloseTo(p - touch, within(1e-4));
      assertThat(model.contact.pressure(0, i, 1)).isZero();
    }
  }

  @Test
  void aBallPressesACapWithTheForceOfItsTravel() {
    // the force on the ball is the slope of the stored energy with the travel of the rim
    int n = 60;
    ShellMesh mesh = Meshes.sphere(10.0, 1.2, 0.4, n);
    int q = 3 * (n + 1);
    List<Obstacle> ball = List.of(Obstacle.ball(Length.m(3.0), Length.m(-13.2)));
    ShellModel model = new ShellModel(mesh, UNIT, 5, ball);
    ShellSolver s = new ShellSolver(model, Loading.force(q, q - 2), new int[] {0, 2, q - 3, q - 1});
    assertThat(s.evaluate()).isTrue();
    double start = s.x[q - 2];
    PathFollower f = new PathFollower(s, () -> {});
    Control rim = new Control.Unknown(q - 2);
    double at = start - 1.5;
    assertThat(f.follow(rim, at, 8, "ball", RunControl.none()).complete()).isTrue();
    double force = s.factor;
    assertThat(force).isNegative();
    assertThat(s.solve(rim, at + 1e-3)).isTrue();
    double up = model.energy(s.x);
    assertThat(s.solve(rim, at - 1e-3)).isTrue();
    // the stored energy alone: the obstacle is rigid and without friction
    assertThat((up - model.energy(s.x)) / 2e-3).isCloseTo(force, within(2e-3 * Math.abs(force)));
  }
}
