package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.flexwright.InvalidInputException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What every built-in cell must keep, from its topology up. */
final class CellContractTest {

  static List<UnitCell> cubic() {
    return Cells.all();
  }

  static List<StrutCell> every() {
    return Stream.<StrutCell>concat(
            Cells.all().stream(), Stream.of(Cells.BODY_CENTRED_WITH_VERTICALS))
        .toList();
  }

  private static double[] slenderness(StrutCell cell) {
    double most = Math.min(0.98 * cell.mergingSlenderness(), 0.7);
    return DoubleStream.of(0.01, 0.03, 0.1, 0.2, 0.4 * most, 0.7 * most, most).sorted().toArray();
  }

  @ParameterizedTest
  @MethodSource("every")
  void constantsFollowFromTheTopology(StrutCell cell) {
    Topology t = cell.topology();
    double least = t.struts().stream().mapToDouble(t::length).min().orElseThrow();
    double sum = t.struts().stream().mapToDouble(t::length).sum();
    assertThat(cell.strutOverCell()).isCloseTo(least, within(1e-14));
    assertThat(cell.firstOrderDensity(0.1))
        .isCloseTo(0.01 * Math.PI / 4.0 * least * least * sum, within(1e-14));
    assertThat(cell.mergingSlenderness())
        .isCloseTo(Math.tan(NodeOverlap.leastAngle(t) / 2.0), within(1e-14));
  }

  /** The node overlap by integration over the azimuth around each strut. */
  @ParameterizedTest
  @MethodSource("every")
  void overlapIsTheIntegralOverTheDirections(StrutCell cell) {
    double x = 0.25;
    double l = cell.strutOverCell();
    double overlap = NodeOverlap.of(cell.topology()) * Math.pow(0.5 * x * l, 3);
    double law = cell.firstOrderDensity(x) - cell.relativeDensity(x);
    // Simpson's rule across kinks: 1e-7 with 7200 steps
    assertThat(law).isCloseTo(overlap, within(1e-6 * overlap));
  }

  /** 2^16 Sobol points: the error is below 1.5e-3, where the overlap is 0.01 to 0.1. */
  @ParameterizedTest
  @MethodSource("every")
  void densityIsTheVolumeOfTheUnion(StrutCell cell) {
    double x = Math.min(0.3, 0.95 * cell.mergingSlenderness());
    double d = x * cell.strutOverCell();
    double[][] axes = NodeOverlap.images(cell.topology());
    SobolSequenceGenerator points = new SobolSequenceGenerator(3);
    int n = 1 << 16;
    int inside = 0;
    for (int i = 0; i < n; i++) {
      inside += NodeOverlap.within(axes, points.nextVector(), d / 2.0) ? 1 : 0;
    }
    assertThat(cell.relativeDensity(x)).isCloseTo((double) inside / n, within(1.5e-3));
  }

  @ParameterizedTest
  @MethodSource("every")
  void densityRisesAndStaysBelowOne(StrutCell cell) {
    double before = 0.0;
    for (int i = 1; i < 100; i++) {
      double rho = cell.relativeDensity(0.01 * i * cell.mergingSlenderness());
      assertThat(rho).isBetween(before, 1.0);
      before = rho;
    }
    for (double x : new double[] {cell.mergingSlenderness(), 0.0, -1.0, Double.NaN}) {
      assertThatThrownBy(() -> cell.relativeDensity(x)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> cell.firstOrderDensity(x)).isInstanceOf(InvalidInputException.class);
    }
    assertThat(cell.toString()).isEqualTo(cell.name());
    assertThat(cell.sources()).isNotEmpty();
  }

  /** Every closed form against the periodic frame; 1e-9 is what a dense solve keeps at x = 0.02. */
  @ParameterizedTest
  @MethodSource("cubic")
  void centreLineIsThePeriodicFrame(UnitCell cell) {
    for (double nu : new double[] {0.0, 0.3, 0.5}) {
      for (double x : new double[] {0.02, 0.1, 0.2, 0.3}) {
        double[][] c = new PeriodicFrame(cell.topology(), x, nu, true).stiffness();
        CubicStiffness ours = cell.centreLine(x, nu);
        double scale = 1e-9;
        double bulk = (c[0][0] + 2.0 * c[0][1]) / 3.0;
        double tetragonal = (c[0][0] - c[0][1]) / 2.0;
        assertThat(ours.bulk()).isCloseTo(bulk, within(scale * bulk));
        // a difference of nearly equal numbers in the frame
        assertThat(ours.tetragonal())
            .isCloseTo(tetragonal, within(scale * tetragonal + 1e-12 * bulk));
        assertThat(ours.c44()).isCloseTo(c[3][3], within(scale * c[3][3]));
        assertThat(ours.young100()).isCloseTo(young(c), within(scale * young(c) + 1e-11 * bulk));
        assertThat(ours.poisson12()).isCloseTo(c[0][1] / (c[0][0] + c[0][1]), within(1e-9));
        for (int i = 0; i < 6; i++) { // cubic indeed
          assertThat(c[i][i]).isCloseTo(c[i / 3 * 3][i / 3 * 3], within(1e-9 * bulk));
        }
      }
    }
  }

  private static double young(double[][] c) {
    double sum = c[0][0] + c[0][1];
    return (c[0][0] - c[0][1]) * (sum + c[0][1]) / sum;
  }

  @Test
  void verticalsMakeItTetragonal() {
    TetragonalCell cell = Cells.BODY_CENTRED_WITH_VERTICALS;
    for (double nu : new double[] {0.0, 0.3, 0.5}) {
      for (double x : new double[] {0.02, 0.1, 0.3, 0.5}) {
        double[][] c = new PeriodicFrame(cell.topology(), x, nu, true).stiffness();
        TetragonalStiffness ours = cell.centreLine(x, nu);
        assertThat(ours.c11()).isCloseTo(c[0][0], within(1e-9 * c[0][0]));
        assertThat(ours.c12()).isCloseTo(c[0][1], within(1e-9 * c[0][1]));
        assertThat(ours.c13()).isCloseTo(c[0][2], within(1e-9 * c[0][2]));
        assertThat(ours.c33()).isCloseTo(c[2][2], within(1e-9 * c[2][2]));
        assertThat(ours.c44()).isCloseTo(c[3][3], within(1e-9 * c[3][3]));
        assertThat(ours.c66()).isCloseTo(c[5][5], within(1e-9 * c[5][5]));
        assertThat(ours.c44()).isGreaterThan(ours.c66());
      }
    }
    assertThat(cell.centreLine(0.2, 0.3).toString()).startsWith("E001 0.02578, E100 0.002811");
    assertThat(cell.caveats(0.1, 0.3)).hasSize(1);
    assertThat(cell.peakStrain(0.1))
        .isCloseTo(
            new PeriodicFrame(cell.topology(), 0.1, 0.3, true).strutStrain()[0], within(1e-9));
    assertThatThrownBy(() -> new TetragonalStiffness(1, 1, 0, 1, 1, 1))
        .hasMessageContaining("C11 less C12");
  }

  /** Spline between frame values for bending cells (0.3 %), exact for affine cells. */
  @ParameterizedTest
  @MethodSource("cubic")
  void strutStrainIsThatOfTheFrame(UnitCell cell) {
    boolean affine = cell instanceof AffineCell;
    for (double x : new double[] {0.003, 0.02, 0.07, 0.1, 0.15, 0.25, 0.3}) {
      double[] frame = new PeriodicFrame(cell.topology(), x, 0.3, true).strutStrain();
      double within = affine ? 1e-8 : 3e-3;
      assertThat(cell.peakStrain(x)).isCloseTo(frame[0], within(within * frame[0]));
      if (affine) {
        assertThat(cell.axialStrain(x)).isCloseTo(frame[1], within(1e-8));
      } else {
        assertThat(cell.axialStrain(x)).isGreaterThan(frame[1]);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("cubic")
  void bulkModulusIsANinthAndTheExponentFollowsTheTopology(UnitCell cell) {
    for (double x : slenderness(cell)) {
      for (double nu : new double[] {0.0, 0.3, 0.5}) {
        CubicStiffness c = cell.centreLine(x, nu);
        double rho = cell.firstOrderDensity(x);
        assertThat(c.bulk()).isCloseTo(rho / 9.0, within(1e-13 * rho));
        assertThat(cell.solid(x, nu).young100()).isBetween(c.young100() * 0.999, c.young100() * 12);
      }
    }
    double slope =
        Math.log(cell.centreLine(2e-3, 0.3).young100() / cell.centreLine(1e-3, 0.3).young100())
            / Math.log(4.0);
    double expected = cell.topology().stretchesAlongEdge() ? 1.0 : 2.0;
    assertThat(slope).isCloseTo(expected, within(1e-4));
  }

  @ParameterizedTest
  @MethodSource("cubic")
  void stiffnessRisesWithSlendernessAndNothingIsLost(UnitCell cell) {
    double young = 0.0;
    double c44 = 0.0;
    double peak = 0.0;
    for (double x : slenderness(cell)) {
      CubicStiffness c = cell.solid(x, 0.49);
      assertThat(c.young100()).isGreaterThan(young);
      assertThat(c.c44()).isGreaterThan(c44);
      assertThat(cell.peakStrain(x)).isGreaterThanOrEqualTo(peak * 0.999).isFinite();
      assertThat(cell.axialStrain(x)).isBetween(0.0, 1.0);
      assertThat(cell.jointDoubt(x)).isGreaterThanOrEqualTo(1.0);
      young = c.young100();
      c44 = c.c44();
      peak = Math.min(0.9, cell.peakStrain(x));
      path(cell.path(x));
      assertThat(cell.caveats(x, 0.3)).allMatch(v -> v.message().length() > 10);
    }
    assertThatThrownBy(() -> cell.path(0.1).softening(1.1))
        .isInstanceOf(InvalidInputException.class);
    for (double x : new double[] {cell.mergingSlenderness(), 0.0, Double.NaN}) {
      assertThatThrownBy(() -> cell.centreLine(x, 0.3)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> cell.peakStrain(x)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> cell.axialStrain(x)).isInstanceOf(InvalidInputException.class);
      assertThatThrownBy(() -> cell.path(x)).isInstanceOf(InvalidInputException.class);
    }
  }

  private static void path(CompressionPath path) {
    assertThat(path.softening(0.0)).isZero();
    assertThat(path.growth(0.0)).isZero();
    assertThat(path.softening(1e-6)).isCloseTo(1e-6, within(1e-10));
    assertThat(path.growth(1e-6)).isCloseTo(1e-6, within(1e-10));
    double stress = 0.0;
    double growth = 0.0;
    for (double e = 1e-5; e < 1.0; e *= 1.2) {
      assertThat(path.softening(e)).isGreaterThanOrEqualTo(stress);
      assertThat(path.growth(e)).isGreaterThan(growth);
      assertThat(path.least(e)).isBetween(0.2, 1.0);
      assertThat(path.most(e)).isBetween(1.0, 4.0);
      assertThat(path.working(1.0, 0.5, e).value()).isPositive().isLessThan(2.0);
      stress = path.softening(e);
      growth = path.growth(e);
    }
  }
}
