package org.flexwright.shells.revolution;

import static org.assertj.core.api.Assertions.assertThat;

import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

final class JunctionTest {
  @Test
  void shows() {
    for (DrawnFace f : DrawnFace.values()) {
      Meridian m =
          Meridian.from(Length.mm(20), Length.mm(0))
              .lineTo(Length.mm(20), Length.mm(20)).named("thin")
              .lineTo(Length.mm(20), Length.mm(40))
              .drawn(f)
              .wall("thin", Length.mm(1))
              .wall(Length.mm(2));
      for (double fine : new double[] {1, 2, 4}) {
        ShellState s =
            RevolvedShell.of(m)
                .fineness(fine)
                .run(NeoHookean.of(Pressure.mpa(1)), Drive.force(Force.newtons(-1)).steps(1))
                .last();
        s.junctions(Length.mm(0.5)).forEach(j -> System.out.println(f + " " + fine + " " + j + " m " + j.stretching() + " b " + j.bending() + " " + j.notch() + j.caveats()));
      }
    }
    assertThat(1).isEqualTo(1);
  }
}
