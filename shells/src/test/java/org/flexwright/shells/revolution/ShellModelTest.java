package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Gent;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Forces against differences of the energy, the tangent against differences of the forces. */
final class ShellModelTest {

  private static final double STEP = 2e-6;
  private static final double PRESSURE = 0.3;
  private static final int LAYERS = 5;

  static Stream<StrainEnergy> laws() {
    return Stream.of(
        NeoHookean.of(Pressure.pa(1.0)),
        Ogden.of(Pressure.pa(0.63), 1.3).and(Pressure.pa(0.0012), 5).and(Pressure.pa(-0.01), -2),
        Gent.of(Pressure.pa(1.0), 60.0),
        HenckyCurve.through(
            new double[] {0.01, 0.4, 0.7, 1.4},
            new Pressure[] {
              Pressure.pa(0.02), Pressure.pa(0.3), Pressure.pa(0.6), Pressure.pa(2.0)
            }));
  }

  private static List<ShellMesh> meshes() {
    return List.of(
        Meshes.sphere(10.0, Math.PI, 1.5, 8),
        Meshes.tube(5.0, 10.0, 1.0, 6),
        Meshes.disc(10.0, 1.0, 5),
        Meshes.convolution(8.0, 4.0, 1.0, 0.4, 3));
  }

  /** The shape at rest with every unknown moved at random. */
  private static double[] moved(ShellMesh mesh, long seed) {
    Random random = new Random(seed);
    double[] x = mesh.rest();
    double by = 0.1 * Arrays.stream(mesh.length).min().orElseThrow();
    for (int i = 0; i < x.length; i++) {
      x[i] += (i % 3 == 2 ? 0.1 : by) * random.nextGaussian();
    }
    for (int i = 0; i < x.length; i += 3) {
      x[i] = Math.abs(x[i]);
    }
    return x;
  }

  private static double potential(ShellModel model, double[] x) {
    assertThat(model.at(x, PRESSURE)).isTrue();
    return model.energy(x) - PRESSURE * model.volume;
  }

  private static double[] forces(ShellModel model, double[] x) {
    assertThat(model.at(x, PRESSURE)).isTrue();
    double[] f = new double[x.length];
    for (int i = 0; i < f.length; i++) {
      f[i] = model.force[i] - PRESSURE * model.swept[i];
    }
    return f;
  }

  private static double largest(double[] values) {
    double most = 0.0;
    for (double v : values) {
      most = Math.max(most, Math.abs(v));
    }
    return most;
  }

  @ParameterizedTest
  @MethodSource("laws")
  void forcesAndTangentAreDerivatives(StrainEnergy law) {
    for (ShellMesh mesh : meshes()) {
      ShellModel model = new ShellModel(mesh, law, LAYERS);
      double[] x = moved(mesh, 7L);
      double[] force = forces(model, x);
      double[][] tangent = new double[x.length][x.length];
      double stiff = 0.0;
      for (int j = 0; j < x.length; j++) {
        double[] unit = new double[x.length];
        unit[j] = 1.0;
        model.tangent.times(unit, tangent[j]);
        stiff = Math.max(stiff, largest(tangent[j]));
      }
      double scale = largest(force);
      for (int j = 0; j < x.length; j++) {
        double at = x[j];
        x[j] = at + STEP;
        double energyUp = potential(model, x);
        double[] up = forces(model, x);
        x[j] = at - STEP;
        double energyDown = potential(model, x);
        double[] down = forces(model, x);
        x[j] = at;
        double slope = (energyUp - energyDown) / (2.0 * STEP);
        assertThat(slope).isCloseTo(force[j], within(1e-7 * scale));
        for (int i = 0; i < x.length; i++) {
          double bend = (up[i] - down[i]) / (2.0 * STEP);
          assertThat(bend).isCloseTo(tangent[j][i], within(1e-7 * stiff));
        }
      }
    }
  }

  @Test
  void nothingIsStrainedAtRest() {
    for (ShellMesh mesh : meshes()) {
      ShellModel model = new ShellModel(mesh, NeoHookean.of(Pressure.pa(1.0)), LAYERS);
      assertThat(model.at(mesh.rest(), 0.0)).isTrue();
      assertThat(model.energy(mesh.rest())).isCloseTo(0.0, within(1e-12 * mesh.size()));
      assertThat(largest(model.force)).isLessThan(1e-11 * mesh.size());
    }
  }

  @Test
  void movingAlongTheAxisCostsNothing() {
    ShellMesh mesh = Meshes.sphere(10.0, 1.2, 0.5, 12);
    ShellModel model = new ShellModel(mesh, NeoHookean.of(Pressure.pa(1.0)), LAYERS);
    double[] x = moved(mesh, 3L);
    assertThat(model.at(x, 0.0)).isTrue();
    double before = model.energy(x);
    for (int i = 1; i < x.length; i += 3) {
      x[i] += 4.0;
    }
    assertThat(model.at(x, 0.0)).isTrue();
    assertThat(model.energy(x)).isCloseTo(before, within(1e-12 * before));
  }

  @Test
  void aClosedSphereHoldsItsVolume() {
    int n = 400;
    ShellMesh mesh = Meshes.sphere(2.0, Math.PI, 0.1, n);
    ShellModel model = new ShellModel(mesh, NeoHookean.of(Pressure.pa(1.0)), LAYERS);
    assertThat(model.at(mesh.rest(), 0.0)).isTrue();
    double exact = 4.0 / 3.0 * Math.PI * 8.0;
    // the inscribed polygon misses (angle of an element)^2 of the volume at most
    assertThat(model.volume).isCloseTo(exact, within(exact * Math.pow(Math.PI / n, 2)));
  }
}
