package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.quantity.Volume;
import org.flexwright.run.RunControl;
import org.junit.jupiter.api.Test;

/** The wall along the meridian against closed forms and free-body cuts. */
final class ProfileTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(10.0));

  private static Length mm(double mm) {
    return Length.mm(mm);
  }

  private static ShellState last(
      ShellMesh mesh, End first, End last, StrainEnergy law, Drive... d) {
    ShellPath path =
        new Journey(mesh, first, last, 5, law, List.of()).run(List.of(d), RunControl.none());
    assertThat(path.termination().complete()).isTrue();
    return path.last();
  }

  @Test
  void aThickTubeHasTheStressesOfGreenAndZerna() {
    // inner radius 8, outer 10, axial stretch 1, bore blown to 1.5: neo-Hookean, mu = 1
    double in = 8.0;
    double out = 10.0;
    double bore = 1.5 * in;
    double rim = Math.sqrt(bore * bore + out * out - in * in);
    double up = bore / in;
    double low = rim / out;
    double p = Math.log(up / low) + 0.5 * (1.0 / (low * low) - 1.0 / (up * up));
    double mid = Math.sqrt(bore * bore + 81.0 - 64.0);
    ShellMesh mesh = Meshes.tube(9.0, 10.0, 2.0, 4);
    double taken = Math.PI * 10.0 * (mid * mid - 81.0);
    ShellState s =
        last(mesh, End.GUIDED, End.GUIDED, Runs.SHEAR, Drive.volume(Volume.m3(taken)).steps(5));
    for (Station at : s.profile()) {
      assertThat(s.pressure().pa()).isCloseTo(p, within(1e-9));
      assertThat(at.inner().hoopStretch()).isCloseTo(up, within(1e-9));
      assertThat(at.inner().hoopStress().pa())
          .isCloseTo(up * up - 1.0 / (up * up) - p, within(1e-8));
      assertThat(at.inner().meridianStress().pa())
          .isCloseTo(1.0 - 1.0 / (up * up) - p, within(1e-8));
      assertThat(at.outer().hoopStress().pa())
          .isCloseTo(low * low - 1.0 / (low * low), within(1e-8));
      assertThat(at.wall().m()).isCloseTo(rim - bore, within(1e-9));
      assertThat(at.hoopForce()).isCloseTo(p * mid, within(1e-8));
      // radial stress at the middle from the same integral, taken to the middle of the wall
      double v = mid / 9.0;
      double radial = -(Math.log(v / low) + 0.5 * (1.0 / (low * low) - 1.0 / (v * v)));
      assertThat(at.middle().hoopStress().pa())
          .isCloseTo(v * v - 1.0 / (v * v) + radial, within(0.05 * p));
    }
  }

  @Test
  void aThickSphereHasTheStressesOfItsIntegral() {
    // inner radius 8, outer 10, bore blown to 1.3; converges with the square of the element
    double up = 1.3;
    double rim = Math.cbrt(Math.pow(1.3 * 8.0, 3) + 1000.0 - 512.0);
    double low = rim / 10.0;
    double p = 2.0 / low + 0.5 / Math.pow(low, 4) - 2.0 / up - 0.5 / Math.pow(up, 4);
    double mid = Math.cbrt(Math.pow(1.3 * 8.0, 3) + 729.0 - 512.0);
    double[] error = new double[2];
    for (int k = 0; k < 2; k++) {
      int n = 40 << k;
      ShellMesh mesh = Meshes.zone(9.0, 0.0, 0.5 * Math.PI, 1.0, 2.0, n);
      double flat = 0.0;
      for (int i = 0; i < n; i++) {
        double a = Math.sin(0.5 * Math.PI * i / n);
        double b = Math.sin(0.5 * Math.PI * (i + 1) / n);
        double h = Math.cos(0.5 * Math.PI * i / n) - Math.cos(0.5 * Math.PI * (i + 1) / n);
        flat += Math.PI / 3.0 * (a * a + a * b + b * b) * h;
      }
      double taken = flat * (mid * mid * mid - 729.0);
      Drive free = Drive.force(Force.newtons(0.0)).steps(1);
      Drive fill = Drive.volume(Volume.m3(taken)).steps(5);
      ShellState s = last(mesh, End.FREE, End.GUIDED, Runs.SHEAR, free, fill);
      Station at = s.profile().get(n / 2);
      double hoop = up * up - 1.0 / Math.pow(up, 4) - p;
      error[k] = at.inner().hoopStress().pa() / hoop - 1.0;
      assertThat(at.inner().meridianStress().pa()).isCloseTo(hoop, within(2e-3));
      assertThat(at.outer().hoopStress().pa())
          .isCloseTo(low * low - 1.0 / Math.pow(low, 4), within(2e-3));
      assertThat(at.hoopForce()).isCloseTo(0.5 * p * mid, within(2e-3 * p * mid));
    }
    assertThat(Math.abs(error[1])).isLessThan(1e-3);
  }

  @Test
  void aClampedPlateBendsAsTimoshenkoSays() {
    // M = q/16 (a^2 (1 + nu) - (3 + nu) r^2) along the radius, (1 + 3 nu) around; edge -q a^2/8
    int n = 200;
    double q = 1e-9;
    ShellState s =
        last(
            Meshes.straight(1.0, 0.0, 0.0, 0.0, 0.02, n),
            End.CLAMPED,
            End.FREE,
            Runs.YOUNG,
            Drive.force(Force.newtons(0.0)).steps(1),
            Drive.pressure(Pressure.pa(q)).steps(1));
    List<Station> all = s.profile();
    for (int i = 0; i < n - 5; i++) {
      double r = all.get(i).radius().m();
      assertThat(all.get(i).meridianMoment())
          .isCloseTo(q / 16.0 * (1.5 - 3.5 * r * r), within(1e-4 * q));
      assertThat(all.get(i).hoopMoment())
          .isCloseTo(q / 16.0 * (1.5 - 2.5 * r * r), within(1e-4 * q));
      // shear by the free body inside r, which pushes the rest up, against the left normal
      assertThat(all.get(i).shearForce()).isCloseTo(-0.5 * q * r, within(1e-4 * q));
    }
    double near = all.get(0).meridianMoment();
    double edge = near + 0.5 * (near - all.get(1).meridianMoment());
    assertThat(edge).isCloseTo(-q / 8.0, within(1e-3 * q / 8.0));
  }

  @Test
  void everyCutBearsTheAxialForce() {
    ShellPath path =
        RevolvedShell.of(
                Meridian.from(mm(12.0), mm(0.0)).convolutions(3, mm(6.0), mm(8.0)).wall(mm(0.8)))
            .run(LAW, Drive.travel(mm(4.0)).steps(4), Drive.pressure(Pressure.kpa(20.0)).steps(2));
    ShellState s = path.last();
    double p = s.pressure().pa();
    double arc = 0.0;
    for (Station at : s.profile()) {
      int i = at.element();
      double r1 = s.radius(i).m();
      double r2 = s.radius(i + 1).m();
      double r = at.radius().m();
      double sin = Math.sin(at.angle().rad());
      double cos = Math.cos(at.angle().rad());
      double cut = 2.0 * Math.PI * r * (at.meridianForce() * sin + at.shearForce() * cos);
      // the pressure fills the mean of the frustum; the whole balance is that of the lid
      double lid = p * Math.PI / 3.0 * (r1 * r1 + r1 * r2 + r2 * r2);
      if (i > 0 && i < s.nodes() - 2) {
        assertThat(lid - cut).isCloseTo(s.force().newtons(), within(1e-6 * s.force().newtons()));
      }
      assertThat(at.arc().m()).isGreaterThan(arc);
      arc = at.arc().m();
      assertThat(at.toString()).isNotEmpty();
    }
  }

  @Test
  void contactStandsAtItsFace() {
    ShellPath path =
        RevolvedShell.of(
                Meridian.from(mm(10.0), mm(0.0))
                    .lineTo(mm(10.0), mm(40.0))
                    .drawn(DrawnFace.OUTER)
                    .wall(mm(0.6)))
            .against(Obstacle.bore(mm(10.5)))
            .run(LAW, Drive.pressure(Pressure.kpa(300.0)));
    Touch touch = path.last().touches().get(0);
    double most = 0.0;
    double force = 0.0;
    for (Station at : path.last().profile()) {
      double c = at.outer().contact().pa();
      most = Math.max(most, c);
      assertThat(at.inner().contact().pa()).isZero();
      double u = at.outer().meridianStretch();
      force += c > 0.0 ? c * 2.0 * Math.PI * 10.5e-3 * u * rest(path, at) : 0.0;
    }
    assertThat(most).isCloseTo(touch.peak().pa(), within(1e-9 * most));
    assertThat(force).isCloseTo(touch.normal().newtons(), within(1e-3 * force));
  }

  private static double rest(ShellPath path, Station at) {
    ShellState s = path.states().get(0);
    return s.height(at.element() + 1).m() - s.height(at.element()).m();
  }
}
