package org.flexwright.shells.inflate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;
import org.flexwright.grade.Grade;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.*;
import org.flexwright.shells.revolution.*;
import org.junit.jupiter.api.Test;

final class SealTest {
  static Seal plug() {
    return Seal.of(
        Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(6)).lineTo(mm(10), mm(46)).named("sleeve").lineTo(mm(10), mm(52))
          .wall("sleeve", mm(0.8)).wall(mm(4)), Bore.of(mm(21)));
  }

  static double win(Touch t, double w) {
    double most = 0; var ps = t.patches();
    for (int i = 0; i < ps.size(); i++) for (int d = -1; d <= 1; d += 2) {
      double left = w, sum = 0;
      for (int j = i; j >= 0 && j < ps.size() && left > 0; j += d) { double part = Math.min(left, ps.get(j).length().mm()); sum += part * ps.get(j).pressure().kpa(); left -= part; }
      most = Math.max(most, sum / w);
    }
    return most;
  }
  @Test
  void time() {
    Grade g = Grade.ofLaw("neo", NeoHookean.of(Pressure.mpa(1)));
    Seal p = plug();
    for (int k = 0; k < 60; k++) {
      long t = System.nanoTime();
      p.inflate(g, Pressure.kpa(150));
      long u = System.nanoTime();
      if (k % 10 == 9) System.out.println((u - t) / 1e6 + " ms");
    }
    Journey j = RevolvedShell.of(p.meridian()).against(Obstacle.bore(mm(10.5))).journey(g.law());
    System.out.println(RevolvedShell.of(p.meridian()).elements() + " elements");
    for (double q = 10; q <= 150; q += 10) { long t = System.nanoTime(); j.go(Drive.pressure(Pressure.kpa(q)).steps(1), org.flexwright.run.RunControl.none()); System.out.printf(java.util.Locale.ROOT, "%.0f %.2f ms %d states%n", q, (System.nanoTime() - t) / 1e6, j.path().states().size()); }
  }
  @Test
  void tmp() {
    Grade g = Grade.ofLaw("neo", NeoHookean.of(Pressure.mpa(1)));
    Seal tube = Seal.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(60)).wall(mm(0.8)), Bore.of(mm(21)));
    var m = Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(6)).lineTo(mm(10), mm(46)).named("sleeve").lineTo(mm(10), mm(52))
          .wall("sleeve", mm(0.8)).wall(mm(4));
    StringBuilder sb = new StringBuilder();
    for (double z = 0; z <= 26.0001; z += 0.05) sb.append(z).append(' ').append(m.wallAt(mm(Math.min(z, 26))).mm()).append('\n');
    try { java.nio.file.Files.writeString(java.nio.file.Path.of("/tmp/fe/wall.txt"), sb); } catch (Exception e) {}
    for (Seal s : new Seal[]{tube, plug()}) for (double f : new double[]{1, 2, 4}) {
      Sealing r = s.fineness(f).inflate(g, Pressure.kpa(150));
      System.out.println(f + " " + r.touch()); if (f == 1) System.out.println(r.caveats());
      for (var st : r.states()) if (st.contact().length().mm() > 0) System.out.printf(java.util.Locale.ROOT, "%.3f Lc %.3f N %.2f mean %.2f best %.2f w1 %.2f w1.5 %.2f w2 %.2f peak %.2f strain %.4f%n", st.pressure().kpa(), st.contact().length().mm(), st.contact().normal().newtons(), st.contact().mean().kpa(), st.best().pressure().kpa(), win(st.contact(), .8), win(st.contact(), 1.2), win(st.contact(), 1.6), st.contact().peak().kpa(), st.shell().peak().strain());
    }
  }
}
