package org.flexwright.lattice.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import org.flexwright.evidence.Estimate;
import org.flexwright.grade.Grade;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.FinitePads.Grip;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

/** Pads computed again from the struts up, by a program that shares nothing with the table. */
final class PadFrameTest {

  /**
   * A held body-centred layer one cell high: the closed form C11 (all nodes move straight down).
   */
  @Test
  void frameMeetsTheClosedForm() {
    CubicStiffness beams = Cells.BODY_CENTRED.centreLine(0.15, 0.3);
    assertThat(new PadFrame(Cells.BODY_CENTRED, 3, 1, 0.15, 0.3).modulus())
        .isCloseTo(beams.c11(), within(1e-8));
  }

  @Test
  void frameCountsTheStruts() {
    assertThat(new PadFrame(Cells.BODY_CENTRED, 3, 2, 0.1, 0.3).struts()).isEqualTo(8 * 18);
    // the edges of one truncated octahedron
    assertThat(new PadFrame(Cells.KELVIN, 1, 1, 0.1, 0.3).struts()).isEqualTo(36);
  }

  @Test
  void tableMeetsTheFrame() {
    for (UnitCell cell : List.of(Cells.BODY_CENTRED, Cells.KELVIN)) {
      for (double x : new double[] {0.1, 0.3}) {
        for (int n : new int[] {1, 2, 3}) {
          CubicStiffness beams = cell.centreLine(x, 0.3);
          double frame = new PadFrame(cell, n, 2, x, 0.3).modulus() / beams.young100();
          double table =
              FinitePads.of(cell)
                  .orElseThrow()
                  .modulus(Grip.HELD, n, 2, beams.c11() / beams.young100());
          assertThat(table).isCloseTo(frame, within(2e-4 * frame));
        }
      }
    }
  }

  /**
   * The demo pad of the documentation, joints as points: within the band that the answer states.
   */
  @Test
  void demoPadFromTheStrutsUp() {
    LatticePad pad =
        LatticePad.of(Cells.KELVIN)
            .footprint(mm(60), mm(60))
            .height(mm(20))
            .cell(mm(10))
            .strut(mm(0.8));
    Grade linear = Grade.ofLaw("linear", NeoHookean.ofYoung(Pressure.mpa(50)));
    double frame = new PadFrame(Cells.KELVIN, 6, 2, pad.slenderness(), 0.49).modulus();
    CubicStiffness beams = Cells.KELVIN.centreLine(pad.slenderness(), 0.49);
    CubicStiffness solid = Cells.KELVIN.solid(pad.slenderness(), 0.49);
    Estimate<Pressure> ours = pad.modulus(linear);
    double ratio = ours.nominal().mpa() / 50.0 / frame;
    // fat joints stiffen every mode, by no less than the bulk and no more than the bending one
    assertThat(ratio).isBetween(solid.bulk() / beams.bulk(), solid.young100() / beams.young100());
    double table =
        FinitePads.of(Cells.KELVIN)
            .orElseThrow()
            .modulus(Grip.HELD, 6, 2, beams.c11() / beams.young100());
    assertThat(frame / beams.young100()).isCloseTo(table, within(0.01 * table));
  }
}
