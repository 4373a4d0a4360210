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

  @Test
  void tmp() {
    Grade g = Grade.ofLaw("neo", NeoHookean.of(Pressure.mpa(1)));
    Seal tube = Seal.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(60)).wall(mm(0.8)), Bore.of(mm(21)));
    for (Seal s : new Seal[]{tube, plug()}) {
      Sealing r = s.inflate(g, Pressure.kpa(150));
      System.out.println(s + "\n" + r + "\n" + r.table() + r.caveats());
      double la = ThickTube.grow(mm(9.2), mm(10), mm(10.5), 1);
      System.out.println(ThickTube.pressure(NeoHookean.of(Pressure.mpa(1)), mm(9.2), mm(10), la, 1));
      r = s.toHold(g, Force.newtons(20), Pressure.kpa(150), org.flexwright.run.RunControl.none());
      System.out.println(r);
    }
    Seal big = Seal.of(Meridian.from(mm(10), mm(0)).lineTo(mm(10), mm(60)).wall(mm(0.8)), Bore.of(mm(50)));
    Sealing r = big.inflate(g, Pressure.kpa(150));
    System.out.println(r + "\n" + r.table() + r.caveats());
    for (int k = 0; k < 40; k++) {
      long t = System.nanoTime();
      plug().inflate(g, Pressure.kpa(150));
      long u = System.nanoTime();
      if (k % 10 == 9) System.out.println((u - t) / 1e6 + " ms");
    }
  }
}
