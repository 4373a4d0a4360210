package org.flexwright.shells.revolution;

import static org.flexwright.quantity.Length.mm;

import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

final class PreparedShellTest {

  private static final StrainEnergy LAW = NeoHookean.of(Pressure.mpa(4.0));

  @Test
  void measure() {
    Meridian wave = Meridian.from(mm(12), mm(0)).convolutions(3, mm(6), mm(8)).wall(mm(0.8));
    for (Drive[] legs :
        new Drive[][] {
          {Drive.travel(mm(8)).steps(8)},
          {Drive.travel(mm(4)), Drive.pressure(Pressure.kpa(5))},
          {Drive.pressure(Pressure.kpa(10))},
          {Drive.volume(org.flexwright.quantity.Volume.cm3(2)), Drive.travel(mm(2))}
        }) {
      RevolvedShell shell = RevolvedShell.of(wave);
      PreparedShell p = shell.prepare(Meridian.WALL, LAW, legs);
      double worst = 0;
      for (double w = 0.6; w < 1.2; w += 0.01) {
        ShellState a = p.at(mm(w)).last();
        ShellState b = shell.meridian(Meridian.WALL.set(wave, mm(w))).run(LAW, legs).last();
        worst = Math.max(worst, Math.abs(a.force().newtons() / b.force().newtons() - 1));
        worst = Math.max(worst, Math.abs(a.pressure().pa() - b.pressure().pa()) / (1e-300+ Math.abs(b.pressure().pa())));
        worst = Math.max(worst, Math.abs(a.peak().strain() / b.peak().strain() - 1));
      }
      for (int r = 0; r < 3; r++) {
        long t0 = System.nanoTime();
        for (double w = 0.6; w < 1.2; w += 0.01) shell.meridian(Meridian.WALL.set(wave, mm(w)));
        long t1 = System.nanoTime();
        for (double w = 0.6; w < 1.2; w += 0.01) p.at(mm(w));
        long t2 = System.nanoTime();
        for (double w = 0.6; w < 1.2; w += 0.01)
          shell.meridian(Meridian.WALL.set(wave, mm(w))).run(LAW, legs);
        long t3 = System.nanoTime();
        System.out.println("MEAS " + worst + " mesh " + (t1 - t0) / 60e6 + " prepared " + (t2 - t1) / 60e6 + " fresh " + (t3 - t2) / 60e6 + " " + PreparedShell.debug);
      }
    }
  }
}
