package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.flexwright.InvalidInputException;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Ring loads and liquids against the formulas of cylinders and tanks. */
final class LoadTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(10.0));
  private static final double E = 30e6;

  private static Length mm(double mm) {
    return Length.mm(mm);
  }

  private static RevolvedShell pipe() {
    return RevolvedShell.of(
            Meridian.from(mm(20.0), mm(0.0))
                .lineTo(mm(20.0), mm(30.0))
                .lineTo(mm(20.0), mm(60.0))
                .named("upper")
                .drawn(DrawnFace.MIDDLE)
                .wall(mm(0.2)))
        .fineness(2.0);
  }

  @Test
  void aRingLoadOpensALongCylinder() {
    // w = P R^2 beta/(2 E t), M = P/(4 beta), Timoshenko; P per length
    double beta = Math.pow(2.25, 0.25) / Math.sqrt(20e-3 * 0.2e-3);
    double around = 2.0 * Math.PI * 20e-3;
    double load = 0.1 * around;
    ShellPath path =
        pipe()
            .under(Load.ring("upper", Force.newtons(load), Force.newtons(0.0)))
            .run(LAW, Drive.force(Force.newtons(0.0)).steps(1));
    assertThat(path.termination().complete()).isTrue();
    ShellState s = path.last();
    double open = 0.0;
    for (int i = 0; i < s.nodes(); i++) {
      open = Math.max(open, s.radius(i).m() - 20e-3);
    }
    double formula = 0.1 * 4e-4 * beta / (2.0 * E * 0.2e-3);
    assertThat(open).isCloseTo(formula, within(0.015 * formula));
    // with the wall's shear, by the Fourier integral of a beam on its bed: D/S = 0.4 t^2
    double soft = 0.8 * beta * beta * 0.2e-3 * 0.2e-3;
    double sheared = formula * (1.0 + soft) / Math.sqrt(1.0 + 0.5 * soft);
    assertThat(open).isCloseTo(sheared, within(3e-3 * sheared));
    // what a linear shell stores is half of load times travel
    assertThat(s.energy().joules()).isCloseTo(0.5 * load * open, within(0.002 * load * open));
    // the moment has its peak at the load, between two elements: shear P/2 over half of one
    List<Station> all = path.last().profile();
    double moment = 0.0;
    for (int i = 1; i < all.size(); i++) {
      double apart = all.get(i).arc().m() - all.get(i - 1).arc().m();
      moment = Math.max(moment, all.get(i).meridianMoment() + 0.05 * 0.5 * apart);
    }
    assertThat(moment).isCloseTo(0.1 / (4.0 * beta), within(0.01 * 0.1 / (4.0 * beta)));
  }

  @Test
  void anAxialRingLoadGoesToBothEnds() {
    ShellPath path =
        pipe()
            .under(Load.ring("upper", Force.newtons(0.0), Force.newtons(-0.2)))
            .run(LAW, Drive.travel(mm(0.0)).steps(1));
    // half of it presses on the last end's side as tension: the end is pulled down
    assertThat(path.last().force().newtons()).isCloseTo(-0.1, within(1e-4));
  }

  @Test
  void aFilledTankBendsAtItsBase() {
    // M0 = (1 - 1/(beta d)) gamma R d t/sqrt(12 (1 - nu^2)), Timoshenko and Woinowsky-Krieger
    double r = 20e-3;
    double t = 0.2e-3;
    double d = 55e-3;
    double beta = Math.pow(2.25, 0.25) / Math.sqrt(r * t);
    double gamma = 1000.0 * 9.80665;
    double base = (1.0 - 1.0 / (beta * d)) * gamma * r * d * t / 3.0;
    ShellPath path =
        pipe()
            .first(End.CLAMPED)
            .last(End.FREE)
            .under(Load.fill(Density.kgPerM3(1000.0), mm(55.0)))
            .run(LAW, Drive.force(Force.newtons(0.0)).steps(1));
    assertThat(path.termination().complete()).isTrue();
    List<Station> all = path.last().profile();
    double h = all.get(1).arc().m() - all.get(0).arc().m();
    double near = all.get(0).meridianMoment();
    double edge = near + (near - all.get(1).meridianMoment()) * all.get(0).arc().m() / h;
    assertThat(Math.abs(edge)).isCloseTo(base, within(0.02 * base));
    // away from the base the hoop force is gamma (d - z) R
    Station high = all.get(all.size() / 2);
    assertThat(high.hoopForce())
        .isCloseTo(gamma * (d - high.height().m()) * r, within(0.01 * gamma * d * r));
    Station dry = all.get(all.size() - 1);
    assertThat(Math.abs(dry.hoopForce())).isLessThan(0.01 * gamma * d * r);
  }

  @Test
  void theHeadOfALiquidIsThatOfAConeCutByItsLevel() {
    // int pi r^2 w (L - z) dz of a cone r = z up to L: pi w L^4/12, the level inside an element
    ShellModel model = new ShellModel(Meshes.straight(0.0, 0.0, 1.0, 1.0, 0.1, 7), Runs.SHEAR, 5);
    model.liquid = new Liquid(3.0, 0.6);
    assertThat(model.at(model.mesh.rest(), 0.0)).isTrue();
    double exact = Math.PI * 3.0 * Math.pow(0.6, 4) / 12.0;
    assertThat(model.filled).isCloseTo(exact, within(1e-12 * exact));
  }

  @Test
  void slopesAndTangentOfALiquidAreItsDifferences() {
    ShellMesh mesh = Meshes.zone(1.0, 0.4, 2.5, 1.0, 0.1, 6);
    ShellModel model = new ShellModel(mesh, Runs.SHEAR, 5);
    model.liquid = new Liquid(3.0, 0.3);
    model.head = 0.7;
    double[] x = mesh.rest();
    int n = x.length;
    double[] way = new double[n];
    Random random = new Random(7);
    for (int i = 0; i < n; i++) {
      x[i] += 0.02 * random.nextDouble();
      way[i] = random.nextDouble() - 0.5;
    }
    double[] turned = new double[n];
    assertThat(model.at(x, 0.0)).isTrue();
    model.tangent.times(way, turned);
    double step = 1e-6;
    double[] up = left(model, x, way, step);
    double high = model.filled;
    double[] down = left(model, x, way, -step);
    double low = model.filled;
    assertThat(model.at(x, 0.0)).isTrue();
    double slope = 0.0;
    for (int i = 0; i < n; i++) {
      slope += model.wetted[i] * way[i];
      assertThat(turned[i]).isCloseTo((up[i] - down[i]) / (2.0 * step), within(1e-6));
    }
    assertThat(slope).isCloseTo((high - low) / (2.0 * step), within(1e-8));
  }

  private static double[] left(ShellModel model, double[] x, double[] way, double step) {
    double[] at = x.clone();
    for (int i = 0; i < at.length; i++) {
      at[i] += step * way[i];
    }
    assertThat(model.at(at, 0.0)).isTrue();
    double[] left = model.force.clone();
    for (int i = 0; i < left.length; i++) {
      left[i] -= model.head * model.wetted[i];
    }
    return left;
  }

  @Test
  void refusesWhatMakesNoSense() {
    Force one = Force.newtons(1.0);
    assertThatThrownBy(() -> pipe().under(Load.ring("lower", one, one)))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("lower");
    Load water = Load.fill(Density.kgPerM3(1000.0), mm(10.0));
    assertThatThrownBy(() -> pipe().under(water, water)).isInstanceOf(InvalidInputException.class);
    assertThatThrownBy(() -> Load.fill(Density.kgPerM3(0.0), mm(10.0)))
        .isInstanceOf(InvalidInputException.class);
  }
}
