package org.flexwright.lattice.pad;

import static org.assertj.core.api.Assertions.assertThat;
import static org.flexwright.quantity.Length.mm;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.evidence.Estimate;
import org.flexwright.grade.Grade;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;
import org.flexwright.testing.ReferenceCase;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pads of cells without a table: what was computed elsewhere must lie in the bracket. */
final class BracketTest {

  private static final Grade LINEAR = Grade.ofLaw("linear", NeoHookean.ofYoung(Pressure.mpa(10)));

  static Stream<ReferenceCase> cases() {
    return ReferenceCase.read(BracketTest.class, "blocks.csv").stream();
  }

  private static LatticePad pad(UnitCell cell, int across, int high, double x, Face face) {
    return LatticePad.of(cell)
        .footprint(mm(10 * across), mm(10 * across))
        .height(mm(10 * high))
        .cell(mm(10))
        .strut(mm(10 * x * cell.strutOverCell()))
        .lower(face)
        .upper(face);
  }

  /**
   * Cubes of whole cells, full struts in their sides, lie in the bracket. One frame program: no row
   * of the verification table.
   */
  @ParameterizedTest
  @MethodSource("cases")
  void blocksLieInTheBracket(ReferenceCase c) {
    UnitCell cell =
        Cells.all().stream().filter(u -> u.name().equals(c.text("cell"))).findFirst().orElseThrow();
    double x = c.input("x");
    int n = (int) c.input("cells");
    Face face = c.text("ends").equals("bonded") ? Face.BONDED : Face.LUBRICATED;
    Estimate<Pressure> e = pad(cell, n, n, x, face).modulus(LINEAR);
    CubicStiffness solid = cell.solid(x, LINEAR.poisson());
    double one = LINEAR.modulusAtRest().pa() * solid.young100();
    double low = e.low().pa() / one;
    double high = e.high().pa() / one;
    assertThat(c.published()).as(c.toString()).isBetween(low, high);
    assertThat(high / low).isLessThan(n == 1 ? 130.0 : 60.0);
  }

  /** Face struts counted in full are most of the size effect of the octet with free faces. */
  @Test
  void crowdingIsTheSizeEffectOfTheOctet() {
    double[] frame = {1.4945, 1.2212, 1.1468, 1.1109, 1.0896, 1.0753};
    for (int n = 1; n <= frame.length; n++) {
      double crowding = Cells.OCTET.topology().crowding(n);
      assertThat(crowding).isBetween(frame[n - 1], 1.03 * frame[n - 1]);
    }
    assertThat(Cells.SIMPLE_CUBIC.topology().crowding(2)).isEqualTo(2.25);
    assertThat(Cells.KELVIN.topology().crowding(1)).isEqualTo(1.0);
  }

  /** The two cells with a table, asked without it: its answers lie in the band. */
  @Test
  void tabledPadsLieInTheBandOfTheBracket() {
    for (UnitCell cell : List.of(Cells.BODY_CENTRED, Cells.KELVIN)) {
      for (Face face : Face.values()) {
        for (double x : new double[] {0.05, 0.1, 0.2, 0.3}) {
          for (int n : new int[] {1, 2, 3, 5, 8, 12}) {
            for (int high : new int[] {1, 2, 4, 8}) {
              for (double strain : new double[] {0.001, 0.1, 0.4}) {
                LatticePad known = pad(cell, n, high, x, face);
                LatticePad own = pad(new OwnCell(cell), n, high, x, face);
                LoadCase load = LoadCase.toTravel(known.height().times(strain));
                Response table = known.respond(LINEAR, load);
                Response bracket = own.respond(LINEAR, load);
                String what = known + " at " + strain;
                covers(what, bracket.load(), table.load().nominal());
                covers(what, bracket.strain(), table.strain().nominal());
              }
            }
          }
        }
      }
    }
  }

  private static void covers(String what, ScaledValue band, double value) {
    assertThat(value)
        .as(what + ", " + band.channel())
        .isBetween(band.nominal() * band.modelLow(), band.nominal() * band.modelHigh());
  }

  /** Stretched struts buckle early: told, flat, and the band opens downwards. */
  @Test
  void padsOfStretchedCellsBuckleAndSayIt() {
    for (UnitCell cell : List.of(Cells.SIMPLE_CUBIC, Cells.OCTET, Cells.FACE_CENTRED)) {
      LatticePad pad = pad(cell, 4, 2, 0.1, Face.BONDED);
      Response before = pad.respond(LINEAR, LoadCase.toTravel(mm(0.01)));
      Response after = pad.respond(LINEAR, LoadCase.toTravel(mm(6)));
      Response later = pad.respond(LINEAR, LoadCase.toTravel(mm(8)));
      assertThat(before.caveats()).noneMatch(c -> c.message().contains("have buckled"));
      assertThat(after.caveats()).anyMatch(c -> c.message().contains("have buckled"));
      assertThat(later.load().nominal() / after.load().nominal()).isBetween(0.99, 1.0 + 1e-9);
      assertThat(later.strain().nominal()).isGreaterThan(after.strain().nominal());
      assertThat(after.load().modelLow()).isLessThan(0.51 * before.load().modelHigh());
      assertThat(after.caveats()).anyMatch(c -> c.message().startsWith("no pads of this cell"));
    }
  }

  /** The endless simple cubic lattice, sides free: load E A e until the sway load. */
  @Test
  void simpleCubicCarriesItsColumns() {
    LatticePad pad = pad(Cells.SIMPLE_CUBIC, 12, 2, 0.1, Face.LUBRICATED);
    Estimate<Pressure> e = pad.modulus(LINEAR);
    CubicStiffness solid = Cells.SIMPLE_CUBIC.solid(0.1, LINEAR.poisson());
    // (13/12)^2 columns for each cell
    double expected = LINEAR.modulusAtRest().pa() * solid.young100() * 169.0 / 144.0;
    assertThat(e.nominal().pa() / expected).isBetween(1.0 - 1e-12, 1.0 + 1e-12);
    Response crushed = pad.respond(LINEAR, LoadCase.toTravel(mm(5)));
    double rho = Cells.SIMPLE_CUBIC.firstOrderDensity(0.1);
    double sway =
        LINEAR.modulusAtRest().pa()
            * 0.050291 // y^2/(9 pi), y tan y = 3
            * rho
            * rho
            * (solid.young100() / Cells.SIMPLE_CUBIC.centreLine(0.1, 0.3).young100())
            * 0.12
            * 0.12
            * 169.0
            / 144.0;
    assertThat(crushed.load().nominal() / sway).isBetween(0.99, 1.01);
  }
}
