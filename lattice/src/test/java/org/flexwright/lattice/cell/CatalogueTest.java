package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cells besides body-centred and Kelvin against other programs and papers. */
final class CatalogueTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(CatalogueTest.class, "catalogue.csv");

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsTheReference(ReferenceCase c) {
    String name = c.text("cell");
    StrutCell cell =
        CellContractTest.every().stream()
            .filter(u -> u.name().equals(name))
            .findFirst()
            .orElseThrow();
    String what = c.formula().replace(name + " ", "");
    TABLE.check(c, cell instanceof UnitCell u ? cubic(c, what, u) : density(c, what, cell));
  }

  private static double density(ReferenceCase c, String what, StrutCell cell) {
    if (what.equals("relative density")) {
      return cell.relativeDensity(c.input("x"));
    }
    throw new IllegalArgumentException(what);
  }

  private static double cubic(ReferenceCase c, String what, UnitCell cell) {
    return switch (what) {
      case "E100", "centre-line E100" -> cell.centreLine(c.input("x"), c.input("nu")).young100();
      case "C44", "centre-line C44" -> cell.centreLine(c.input("x"), c.input("nu")).c44();
      case "solid E100" -> cell.solid(c.input("x"), c.input("nu")).young100();
      case "solid K" -> cell.solid(c.input("x"), c.input("nu")).bulk();
      case "peak strut strain" -> cell.peakStrain(c.input("x"));
      case "slender E100" ->
          cell.centreLine(1e-4, 0.3).young100() / Math.pow(cell.firstOrderDensity(1e-4), 2);
      case "softening" -> cell.path(c.input("x")).softening(c.input("strain"));
      case "critical strain", "critical strain of cells of octahedra" ->
          cell.path(c.input("x")).softening(1.0);
      case "pinned Euler stress" ->
          cell.eulerStrain(c.input("x"), 1.0) / 3.0 / cell.firstOrderDensity(c.input("x"));
      case "overlap constant" -> {
        double r = 0.5 * c.input("x");
        double x = c.input("x");
        yield (cell.firstOrderDensity(x) - cell.relativeDensity(x)) / (r * r * r);
      }
      default -> density(c, what, cell);
    };
  }

  /** The frame of the tests, without shear, meets the Euler forms of the literature. */
  @Test
  void theFrameOfTheTestsMeetsKnownForms() {
    assertThat(euler(Cells.DIAMOND, 0.1)[0]).isCloseTo(3.811689e-05, within(5e-11));
    assertThat(euler(Cells.DIAMOND, 0.1)[1]).isCloseTo(3.769441e-05, within(5e-11));
    assertThat(euler(Cells.SIMPLE_CUBIC, 0.1)[0]).isCloseTo(7.853982e-03, within(5e-9));
    // 6 EI/a^4
    assertThat(euler(Cells.SIMPLE_CUBIC, 0.1)[1])
        .isCloseTo(6.0 * Math.PI * 1e-4 / 64.0, within(1e-13));
    // Zhu, Knott and Mills 1997; Ushijima et al. 2011 (from memory)
    assertThat(euler(Cells.KELVIN, 0.1)[0]).isCloseTo(4.134196e-05, within(5e-11));
    assertThat(euler(Cells.KELVIN, 0.2)[2]).isCloseTo(0.470874, within(5e-7));
    assertThat(euler(Cells.BODY_CENTRED, 0.1)[0]).isCloseTo(1.524676e-04, within(5e-11));
    // face nodes that turn at d/L 0.2: 0.08426 and 0.08498 of rho1
    double rho = Cells.FACE_CENTRED.firstOrderDensity(0.2);
    assertThat(euler(Cells.FACE_CENTRED, 0.2)[1] / rho).isCloseTo(0.08426, within(5e-6));
    assertThat(euler(Cells.OCTAHEDRAL, 0.2)[1] / rho).isCloseTo(0.08498, within(5e-6));
  }

  /** E100, C44 and nu12. */
  private static double[] euler(UnitCell cell, double x) {
    double[][] c = new PeriodicFrame(cell.topology(), x, 0.3, false).stiffness();
    double sum = c[0][0] + c[0][1];
    return new double[] {(c[0][0] - c[0][1]) * (sum + c[0][1]) / sum, c[3][3], c[0][1] / sum};
  }

  /** Rhombic dodecahedra are two diamond frames. */
  @Test
  void rhombicIsTwiceDiamond() {
    for (double x : new double[] {0.05, 0.2, 0.5}) {
      CubicStiffness two = Cells.RHOMBIC_DODECAHEDRAL.centreLine(x, 0.4);
      CubicStiffness one = Cells.DIAMOND.centreLine(x, 0.4);
      assertThat(two.young100()).isCloseTo(2.0 * one.young100(), within(1e-12 * two.young100()));
      assertThat(two.young111()).isCloseTo(2.0 * one.young111(), within(1e-12 * two.young111()));
      assertThat(two.bulk()).isCloseTo(2.0 * one.bulk(), within(1e-12 * two.bulk()));
    }
  }

  /** Half of pinned and built-in ends bracket what the waves give; face nodes are weak. */
  @Test
  void bucklingLiesBetweenHalfPinnedAndBuiltInStruts() {
    for (UnitCell cell : new UnitCell[] {Cells.OCTET, Cells.OCTAHEDRAL, Cells.FACE_CENTRED}) {
      double critical = cell.path(0.1).softening(1.0) * cell.axialStrain(0.1);
      assertThat(critical).isBetween(0.5 * cell.eulerStrain(0.1, 1.0), cell.eulerStrain(0.1, 2.0));
    }
    // sway of whole columns comes before a strut between nodes buckles
    assertThat(Cells.SIMPLE_CUBIC.path(0.1).softening(1.0))
        .isLessThan(Cells.SIMPLE_CUBIC.eulerStrain(0.1, 1.0));
    CompressionPath estimate = Cells.SIMPLE_AND_BODY_CENTRED.path(0.1);
    assertThat(estimate.softening(1.0))
        .isCloseTo(
            Cells.SIMPLE_AND_BODY_CENTRED.eulerStrain(0.1 * Math.sqrt(0.75), 1.0), within(1e-15));
    assertThat(estimate.most(0.5)).isEqualTo(4.0);
    assertThat(estimate.caveats(0.001)).isEmpty();
    assertThat(estimate.least(0.5)).isEqualTo(0.5);
    assertThat(estimate.caveats(0.5)).hasSize(1);
    assertThat(Cells.OCTET.path(0.2).caveats(0.5)).hasSize(2);
  }

  @Test
  void caveatsSayWhatIsNotKnown() {
    assertThat(Cells.GYROID_NET.caveats(0.1, 0.49))
        .anyMatch(c -> c.message().startsWith("fat joints of this cell are unknown"));
    assertThat(Cells.GYROID_NET.path(0.1).caveats(0.3))
        .anyMatch(c -> c.message().startsWith("the path of this cell was not computed"));
    assertThat(Cells.OCTET.caveats(0.2, 0.49)).isEmpty();
    assertThat(Cells.OCTAHEDRAL.caveats(0.2, 0.49)).hasSize(1);
    assertThat(Cells.OCTAHEDRAL.caveats(0.2, 0.3)).isEmpty();
    assertThat(Cells.OCTET.jointDoubt(0.2)).isEqualTo(1.0);
    assertThat(Cells.GYROID_NET.jointDoubt(0.2)).isGreaterThan(1.69);
  }
}
