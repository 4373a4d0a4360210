package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each way to hold and close an end against the closed form that belongs to it. */
final class EndsTest {

  private static final double YOUNG = 3e6;
  private static final StrainEnergy LAW = NeoHookean.of(Pressure.pa(YOUNG / 3.0));
  private static final Drive LOOSE = Drive.force(Force.newtons(0.0)).steps(1);

  // a thick tube: outer radius 10, inner 7, length 20 mm, small pressure
  private static final double OUTER = 0.010;
  private static final double INNER = 0.007;
  private static final double LENGTH = 0.020;
  private static final double P = 1.0;
  private static final Drive BLOW = Drive.pressure(Pressure.pa(P)).steps(1);

  private static RevolvedShell tube() {
    Meridian m = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).wall(mm(3));
    return RevolvedShell.of(m).first(End.GUIDED).last(End.GUIDED);
  }

  private static ShellState end(RevolvedShell shell, Drive... legs) {
    ShellPath path = shell.run(LAW, legs);
    assertThat(path.termination().complete()).isTrue();
    return path.last();
  }

  private static double lame() {
    return P * INNER * INNER / (OUTER * OUTER - INNER * INNER);
  }

  /** Radial growth at the middle of the wall without axial strain, constant volume. */
  private static double growth() {
    return 1.5 * lame() / YOUNG * OUTER * OUTER / (0.5 * (OUTER + INNER));
  }

  @Test
  void aClosedTubeGrowsWithoutGettingLonger() {
    // Lame's stresses with the thrust p a^2/(b^2 - a^2): no axial strain at a Poisson ratio of 1/2
    for (Drive[] legs : new Drive[][] {{LOOSE, BLOW}, {BLOW}}) {
      ShellState s = end(tube(), legs);
      assertThat(s.radius(5).m() - 0.0085).isCloseTo(growth(), within(1e-5 * growth()));
      assertThat(s.travel().m() / LENGTH).isCloseTo(0.0, within(1e-5 * lame() / YOUNG));
      double thrust = P * Math.PI * INNER * INNER;
      assertThat(s.force().newtons()).isCloseTo(0.0, within(1e-5 * thrust));
    }
  }

  @Test
  void aTubeThatSlidesOverAPlugGetsShorter() {
    // no axial stress: the strain is -(s_r + s_t)/(2 E) = -p a^2/(E (b^2 - a^2))
    Drive off = Drive.force(Force.newtons(P * Math.PI * INNER * INNER)).steps(1);
    ShellState s = end(tube(), off, BLOW);
    double strain = lame() / YOUNG;
    assertThat(s.travel().m() / LENGTH).isCloseTo(strain, within(1e-5 * strain));
    double mean = 0.5 * (OUTER + INNER);
    double shorter = growth() + 0.5 * strain * mean;
    assertThat(s.radius(5).m() - mean).isCloseTo(shorter, within(1e-5 * shorter));
  }

  @Test
  void aDrawnLidIsAnEndThatIsBuiltIn() {
    Meridian cup =
        Meridian.from(mm(10), mm(0))
            .lineTo(mm(10), mm(22))
            .toAxis()
            .wall(mm(1))
            .rigid(mm(20), mm(32));
    Meridian wall = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).wall(mm(1));
    Drive blow = Drive.pressure(Pressure.kpa(40)).steps(2);
    ShellState lid = end(RevolvedShell.of(cup), LOOSE, blow);
    ShellState built = end(RevolvedShell.of(wall), LOOSE, blow);
    double travel = built.travel().m();
    assertThat(lid.travel().m()).isCloseTo(travel, within(1e-11 * Math.abs(travel)));
    double volume = built.volume().m3();
    assertThat(lid.volume().m3()).isCloseTo(volume, within(1e-11 * volume));
    int last = lid.nodes() - 1;
    assertThat(lid.radius(last).m()).isZero();
    // the middle of the lid was drawn half a wall inside
    assertThat(lid.height(last).mm()).isCloseTo(21.5 - 1e3 * travel, within(1e-9));
  }

  @Test
  void aPlaneOfSymmetryIsGuided() {
    Meridian whole = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(30)).wall(mm(1));
    Meridian half = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(15)).wall(mm(1));
    Drive blow = Drive.pressure(Pressure.kpa(60)).steps(3);
    ShellState both = end(RevolvedShell.of(whole), Drive.travel(mm(2)).steps(4), blow);
    ShellState one =
        end(RevolvedShell.of(half).last(End.GUIDED), Drive.travel(mm(1)).steps(4), blow);
    // two meshes of the usual fineness
    double f = both.force().newtons();
    assertThat(one.force().newtons()).isCloseTo(f, within(3e-3 * Math.abs(f)));
    double v = both.volume().m3();
    assertThat(2.0 * one.volume().m3()).isCloseTo(v, within(3e-3 * Math.abs(v)));
  }

  /** Annular plate, bore a half: w = k P a^2/(E t^3), Poisson ratio 1/2. */
  @ParameterizedTest
  @CsvSource({
    "PINNED,  FREE,   0.65744", // four-constant solution; Wahl and Lobo 1930 for a ratio of 0.3
    "PINNED,  GUIDED, 0.06740806",
    "CLAMPED, GUIDED, 0.01958728"
  })
  void ringPlates(End rim, End inner, double k) {
    double t = 0.1;
    Meridian ring = Meridian.from(mm(20), mm(0)).lineTo(mm(10), mm(0)).wall(mm(t));
    RevolvedShell plate = RevolvedShell.of(ring).first(rim).last(inner);
    double force = 1e-9;
    Drive push = Drive.force(Force.newtons(force)).steps(1);
    double coarse = end(plate.fineness(2), push).travel().m();
    double fine = end(plate.fineness(4), push).travel().m();
    double bent = 400e-6 / (YOUNG * Math.pow(t * 1e-3, 3)) * force * k;
    double sheared = force * Math.log(2.0) / (2 * Math.PI * 5 / 6 * YOUNG / 3 * t * 1e-3);
    double w = bent + sheared;
    assertThat((4 * fine - coarse) / 3).isCloseTo(w, within(3e-5 * w));
  }
}
