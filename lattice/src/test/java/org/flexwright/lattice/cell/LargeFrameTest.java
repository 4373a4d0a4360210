package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Cells of slender struts pushed far: a geometrically exact frame against other routes. */
final class LargeFrameTest {

  @RegisterExtension
  static final VerificationTable TABLE =
      VerificationTable.of(LargeFrameTest.class, "large_frame.csv");

  private static final double NU = 0.3;
  private static final int STRAINS = 6; // 0.1 to 0.6
  private static final Vector3D EDGE = Vector3D.PLUS_K;
  private static final Vector3D DIAGONAL = new Vector3D(1.0, 1.0, 1.0);
  private static final Path ALONG_EDGE = new Path(Cells.KELVIN, EDGE, 0.05);
  private static final Path ALONG_EDGE_THIN = new Path(Cells.KELVIN, EDGE, 0.01);
  private static final Path ALONG_DIAGONAL = new Path(Cells.KELVIN, DIAGONAL, 0.05);

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsTheReference(ReferenceCase c) {
    Path edge = c.input("x") == 0.05 ? ALONG_EDGE : ALONG_EDGE_THIN;
    Path path = c.formula().endsWith("[111]") ? ALONG_DIAGONAL : edge;
    TABLE.check(c, path.limit((int) Math.round(10.0 * c.input("strain")) - 1));
  }

  private static LargeFrame frame(
      UnitCell cell, Vector3D push, double x, boolean corrected, int elements) {
    RodElement.Section section = RodElement.Section.round(x, NU);
    return new LargeFrame(
        cell.topology(), push, corrected ? section.corrected(1.0 / elements) : section, elements);
  }

  /** The modulus of the closed form over EI/L^4. */
  private static double linear(UnitCell cell, Vector3D push, double x) {
    CubicStiffness c = cell.centreLine(x, NU);
    double young = push.equals(EDGE) ? c.young100() : c.young111();
    return young / (Math.PI * Math.pow(x, 4) / 64.0);
  }

  /** Stress over the linear modulus at strains 0.1, 0.2 and so on. */
  private static double[] softening(
      UnitCell cell, Vector3D push, double x, boolean corrected, int elements) {
    LargeFrame frame = frame(cell, push, x, corrected, elements);
    double[] stress = new double[STRAINS];
    for (int i = 0; i < STRAINS; i++) {
      stress[i] = frame.push(0.1 * (i + 1)) / linear(cell, push, x);
    }
    return stress;
  }

  /** Softening with 6 and with 12 corrected elements. */
  private static final class Path {
    private final double[] coarse;
    private final double[] fine;

    Path(UnitCell cell, Vector3D push, double x) {
      coarse = softening(cell, push, x, true, 6);
      fine = softening(cell, push, x, true, 12);
    }

    /** Extrapolated to elements of no length. */
    double limit(int i) {
      return (4.0 * fine[i] - coarse[i]) / 3.0;
    }
  }

  /** At small strain the frame is the closed form of the cell. */
  @Test
  void startsWithTheLinearModulus() {
    double strain = 1e-6;
    for (Vector3D push : List.of(EDGE, DIAGONAL)) {
      for (UnitCell cell : List.of(Cells.KELVIN, Cells.BODY_CENTRED, Cells.DIAMOND)) {
        for (double x : new double[] {0.05, 0.2}) {
          double secant = frame(cell, push, x, true, 3).push(strain) / strain;
          // softening at this strain is 4e-6
          assertThat(secant / linear(cell, push, x)).isCloseTo(1.0, within(1e-5));
        }
      }
    }
  }

  /** Errors fall with the square of the element; both kinds of element have one limit. */
  @Test
  void convergesWithTheSquareOfTheElement() {
    double[] plain = new double[3];
    for (int i = 0; i < 3; i++) {
      plain[i] = softening(Cells.KELVIN, DIAGONAL, 0.05, false, 3 << i)[4];
    }
    double three = softening(Cells.KELVIN, DIAGONAL, 0.05, true, 3)[4];
    double[] corrected = {three, ALONG_DIAGONAL.coarse[4], ALONG_DIAGONAL.fine[4]};
    double shot = 0.2051113; // differential equations of the rods, see the table
    for (double[] at : List.of(plain, corrected)) {
      assertThat((at[0] - at[1]) / (at[1] - at[2])).isBetween(3.8, 4.4);
      assertThat(at[2] / shot).isBetween(1.0, at == plain ? 1.006 : 1.002);
      assertThat((4.0 * at[2] - at[1]) / 3.0).isCloseTo(shot, within(1e-4 * shot));
    }
  }

  /** Six corrected elements are the very model of the other program, to its digits but the last. */
  @Test
  void sixElementsRepeatTheOtherProgram() {
    double[] edge = {0.0860485, 0.153645, 0.211193, 0.263217, 0.312526, 0.361107};
    double[] diagonal = {0.0746447, 0.121474, 0.155658, 0.182996, 0.206275, 0.227053};
    assertThat(ALONG_EDGE.coarse).containsExactly(edge, within(2e-6));
    assertThat(ALONG_DIAGONAL.coarse).containsExactly(diagonal, within(2e-6));
  }

  /** The library's elastica is the frame of very slender struts, for each cell that uses it. */
  @Test
  void theElasticaIsTheSlenderFrame() {
    followsTheElastica(Cells.KELVIN, ALONG_EDGE_THIN);
    for (UnitCell cell : List.of(Cells.BODY_CENTRED, Cells.DIAMOND)) {
      followsTheElastica(cell, new Path(cell, EDGE, 0.01));
    }
  }

  private static void followsTheElastica(UnitCell cell, Path frame) {
    for (int i = 0; i < STRAINS; i++) {
      double elastica = cell.path(0.01).softening(0.1 * (i + 1));
      assertThat(frame.limit(i) / elastica)
          .isBetween(1.0, 1.0003); // stretch 1e-4, extrapolation 1e-4
    }
  }

  /** Stretch and shear of the struts, which the elastica leaves out: 0.2 and 3 % of the stress. */
  @Test
  void thickStrutsSoftenLess() {
    Path thick = new Path(Cells.KELVIN, EDGE, 0.2);
    for (int i = 0; i < STRAINS; i++) {
      double elastica = Cells.KELVIN.path(0.2).softening(0.1 * (i + 1));
      assertThat(ALONG_EDGE.limit(i) / elastica).isBetween(1.001, 1.0025);
      assertThat(thick.limit(i) / elastica).isBetween(1.015, 1.035);
    }
  }

  @Test
  void stressIsTheSlopeOfTheEnergy() {
    LargeFrame frame = frame(Cells.KELVIN, DIAGONAL, 0.05, false, 4);
    frame.push(0.2);
    frame.push(0.399);
    double below = frame.energy();
    double stress = frame.push(0.4);
    frame.push(0.401);
    double slope = (frame.energy() - below) / 0.002;
    assertThat(slope).isCloseTo(stress, within(1e-6 * stress));
  }

  /** The cell stays on its even path: alike across, no shear, no other way to go within a cell. */
  @Test
  void thePathIsEvenAndStable() {
    for (Vector3D push : List.of(EDGE, DIAGONAL)) {
      LargeFrame frame = frame(Cells.KELVIN, push, 0.05, true, 4);
      for (int i = 1; i <= 6; i++) {
        frame.push(0.1 * i);
        double[] f = frame.deformation();
        assertThat(f[0]).isCloseTo(f[1], within(1e-8)).isBetween(0.0, 0.2);
        for (int k = 2; k < 5; k++) {
          assertThat(f[k]).isCloseTo(0.0, within(1e-8));
        }
        RealMatrix t = frame.tangent();
        RealMatrix even = t.add(t.transpose()).scalarMultiply(0.5);
        assertThat(t.subtract(even).getNorm()).isLessThan(1e-5 * t.getNorm());
        double[] all = new EigenDecomposition(even).getRealEigenvalues();
        assertThat(Arrays.stream(all).min().orElseThrow()).isPositive();
      }
    }
  }
}
