package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Where the faces of a wall are, and the strain at its edge. */
final class FacesTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(1.0));

  private static RevolvedShell wave() {
    return RevolvedShell.of(
        Meridian.from(mm(12), mm(0)).convolutions(2, mm(6), mm(8)).wall(mm(0.8)));
  }

  @Test
  void atRestTheyAreThoseDrawn() {
    RevolvedShell tube =
        RevolvedShell.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(20)).wall(mm(1.5)));
    for (RevolvedShell.Across a : tube.wall(tube.run(LAW, Drive.travel(mm(1))).states().get(0))) {
      assertThat(a.outerRadius().mm()).isCloseTo(10.0, within(1e-9));
      assertThat(a.innerRadius().mm()).isCloseTo(8.5, within(1e-9));
      assertThat(a.outerHeight().mm()).isCloseTo(a.innerHeight().mm(), within(1e-9));
    }
  }

  @Test
  void aLoadedWallKeepsItsVolumeBetweenThem() {
    RevolvedShell shell = wave();
    ShellPath path = shell.run(LAW, Drive.travel(mm(3)).steps(4), Drive.pressure(Pressure.kpa(20)));
    assertThat(path.termination().complete()).isTrue();
    double rest = volume(shell.wall(path.states().get(0)));
    double drawn = 1e9 * shell.printedVolume().m3();
    // the set-back of both ends is left out, 0.0508 walls of a meridian of some 33 mm each
    assertThat(rest / drawn).isBetween(0.995, 1.0);
    assertThat(volume(shell.wall(path.last()))).isCloseTo(rest, within(3e-3 * rest));
  }

  /** The volume between the faces, by Pappus' rule for the four-cornered pieces of the section. */
  private static double volume(List<RevolvedShell.Across> wall) {
    double sum = 0.0;
    for (int i = 1; i < wall.size(); i++) {
      RevolvedShell.Across a = wall.get(i - 1);
      RevolvedShell.Across b = wall.get(i);
      double[] r = {
        a.outerRadius().mm(), b.outerRadius().mm(), b.innerRadius().mm(), a.innerRadius().mm()
      };
      double[] z = {
        a.outerHeight().mm(), b.outerHeight().mm(), b.innerHeight().mm(), a.innerHeight().mm()
      };
      for (int k = 0; k < 4; k++) {
        int n = (k + 1) % 4;
        // 2 pi int r dA = pi int r^2 dz around the piece
        sum += Math.PI / 3.0 * (z[n] - z[k]) * (r[k] * r[k] + r[k] * r[n] + r[n] * r[n]);
      }
    }
    return Math.abs(sum);
  }

  @Test
  void onlyItsOwnStatesAreDrawn() {
    ShellState other = wave().run(LAW, Drive.travel(mm(1)).steps(1)).last();
    RevolvedShell disc =
        RevolvedShell.of(Meridian.from(mm(0), mm(0)).lineTo(mm(9), mm(0)).wall(mm(1)));
    assertThatThrownBy(() -> disc.wall(other))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("ask the shell that was run");
  }

  @Test
  void theEdgeOfAClampedPlateIsStrainedAsPlateTheorySays() {
    // uniform pressure, incompressible: 3/4 p (a/t)^2 (1 - nu^2)/E at the surface of the rim
    double radius = 10.0;
    double wall = 0.4;
    Pressure p = Pressure.pa(1.0);
    RevolvedShell plate =
        RevolvedShell.of(
                Meridian.from(mm(radius), mm(0)).toAxis().drawn(DrawnFace.MIDDLE).wall(mm(wall)))
            .first(End.CLAMPED);
    Drive free = Drive.force(Force.newtons(0.0)).steps(1);
    ShellState.Peak peak = plate.run(LAW, free, Drive.pressure(p).steps(1)).last().peak();
    double edge = 0.75 * p.pa() * Math.pow(radius / wall, 2) * 0.75 / LAW.youngModulus();
    // 1 %: shear, which the theory leaves out, and the elements
    assertThat(peak.strain()).isCloseTo(edge, within(0.01 * edge));
    assertThat(peak.element()).isZero();
    assertThat(peak.hoop()).isFalse();
  }
}
