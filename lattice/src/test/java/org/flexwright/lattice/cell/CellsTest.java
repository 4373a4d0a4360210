package org.flexwright.lattice.cell;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.testing.ReferenceCase;
import org.flexwright.testing.VerificationTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class CellsTest {

  @RegisterExtension
  static final VerificationTable TABLE = VerificationTable.of(CellsTest.class, "cells.csv");

  private static final List<UnitCell> BENDING =
      List.of(Cells.BODY_CENTRED, Cells.KELVIN, Cells.DIAMOND, Cells.RHOMBIC_DODECAHEDRAL);

  static Stream<ReferenceCase> cases() {
    return TABLE.cases();
  }

  @ParameterizedTest
  @MethodSource("cases")
  void meetsTheReference(ReferenceCase c) {
    TABLE.check(c, computed(c, cell(c.text("cell"))));
  }

  private static UnitCell cell(String name) {
    return Cells.all().stream().filter(u -> u.name().equals(name)).findFirst().orElseThrow();
  }

  private static double computed(ReferenceCase c, UnitCell cell) {
    String formula = c.formula();
    if (formula.startsWith("centre-line ")) {
      return constant(formula.substring(12), cell.centreLine(c.input("x"), c.input("nu")));
    }
    if (formula.equals("solid cell")) {
      return constant(c.text("constant"), cell.solid(c.input("x"), c.input("nu")));
    }
    if (formula.startsWith("slender limit of ")) {
      double rho = cell.firstOrderDensity(1e-4);
      return constant(formula.substring(17), cell.centreLine(1e-4, 0.3)) / (rho * rho);
    }
    return switch (formula) {
      case "relative density" -> cell.relativeDensity(c.input("x"));
      case "first-order density" -> cell.firstOrderDensity(c.input("x"));
      case "peak strut strain" -> cell.peakStrain(c.input("x"));
      case "softening" -> cell.path(0.1).softening(c.input("strain"));
      case "fibre strain" ->
          ((GuidedElastica) cell.path(0.1)).peakStrainOverSlenderness(c.input("strain"));
      case "lateral strain" ->
          // half the width of a Kelvin cell lies in struts that stay straight
          ((GuidedElastica) cell.path(0.1)).widening(c.input("strain"))
              * (cell == Cells.KELVIN ? 0.5 : 1.0);
      default -> throw new IllegalArgumentException(formula);
    };
  }

  private static double constant(String name, CubicStiffness c) {
    return switch (name) {
      case "E100" -> c.young100();
      case "E111" -> c.young111();
      case "C44" -> c.c44();
      case "C11" -> c.c11();
      case "K" -> c.bulk();
      case "nu12" -> c.poisson12();
      default -> throw new IllegalArgumentException(name);
    };
  }

  /** The tensor sum over the eight strut directions, an independent route to the same constants. */
  @Test
  void bodyCentredIsTheTensorSum() {
    double nu = 0.37;
    for (double x : new double[] {0.03, 0.1, 0.25, 0.5}) {
      double beta = 0.75 * x * x;
      double kappa = 6.0 * (1.0 + nu) / (7.0 + 6.0 * nu);
      double b = beta / (1.0 + 2.0 * (1.0 + nu) * beta / kappa);
      double rho = 0.75 * Math.sqrt(3.0) * Math.PI * x * x;
      double c11 = 0.0;
      double c12 = 0.0;
      double c44 = 0.0;
      for (int k = 0; k < 4; k++) {
        double[] n = {1.0, (k & 1) == 0 ? 1.0 : -1.0, (k & 2) == 0 ? 1.0 : -1.0};
        double n0 = n[0] / Math.sqrt(3.0);
        double n1 = n[1] / Math.sqrt(3.0);
        double quad = n0 * n0 * n1 * n1;
        c11 += rho / 4.0 * (Math.pow(n0, 4) + b * (n0 * n0 - Math.pow(n0, 4)));
        c12 += rho / 4.0 * quad * (1.0 - b);
        c44 += rho / 4.0 * (quad + b * ((n0 * n0 + n1 * n1) / 4.0 - quad));
      }
      CubicStiffness ours = Cells.BODY_CENTRED.centreLine(x, nu);
      assertThat(ours.c11()).isCloseTo(c11, within(1e-13 * c11));
      assertThat(ours.c12()).isCloseTo(c12, within(1e-13 * c12));
      assertThat(ours.c44()).isCloseTo(c44, within(1e-13 * c44));
    }
  }

  /** Zhu, Knott and Mills 1997 and Ushijima et al. 2011 without shear (from memory). */
  @Test
  void shearOnlyTakesAwayFromTheEulerForms() {
    for (double x : new double[] {0.02, 0.1, 0.2, 0.3}) {
      double kelvin = euler(Cells.KELVIN, x);
      double centred = euler(Cells.BODY_CENTRED, x);
      assertThat(Cells.KELVIN.centreLine(x, 0.3).young100()).isBetween(0.8 * kelvin, kelvin);
      assertThat(Cells.BODY_CENTRED.centreLine(x, 0.3).young100())
          .isBetween(0.8 * centred, centred);
    }
    // check values 8, 12 and 13
    assertThat(euler(Cells.KELVIN, 0.1)).isCloseTo(4.134196e-05, within(5e-11));
    assertThat(euler(Cells.BODY_CENTRED, 0.1)).isCloseTo(1.524676e-04, within(5e-11));
    assertThat(euler(Cells.BODY_CENTRED, 0.2 / Math.sqrt(3.0)))
        .isCloseTo(2.707163e-04, within(5e-11));
  }

  private static double euler(UnitCell cell, double x) {
    double rho = cell.firstOrderDensity(x);
    return cell == Cells.KELVIN
        ? 16.0
            * Math.sqrt(2.0)
            / 3.0
            / (4.0 * Math.PI)
            * rho
            * rho
            / (1.0 + 8.0 * Math.sqrt(2.0) / (4.0 * Math.PI) * rho)
        : rho / (1.0 + 8.0 / (3.0 * x * x));
  }

  @Test
  void jointsDoNothingToVerySlenderStruts() {
    for (UnitCell cell : Cells.all()) {
      CubicStiffness beam = cell.centreLine(1e-5, 0.49);
      CubicStiffness solid = cell.solid(1e-5, 0.49);
      assertThat(solid.young100() / beam.young100()).isCloseTo(1.0, within(1e-4));
      assertThat(solid.bulk() / beam.bulk()).isCloseTo(1.0, within(1e-4));
    }
  }

  @Test
  void jointStiffeningIsSmoothAndRising() {
    for (UnitCell cell : Cells.all()) {
      for (double nu : new double[] {0.3, 0.49}) {
        double before = 1.0;
        for (double x = 0.005; x < Math.min(0.6, cell.mergingSlenderness()); x += 0.005) {
          double ratio = cell.solid(x, nu).young100() / cell.centreLine(x, nu).young100();
          assertThat(ratio).isBetween(before, before * 1.03);
          before = ratio;
        }
      }
    }
  }

  @Test
  void eulerStrainOfAStrut() {
    // n^2 pi^2 E I/(A L^2) with I/A = d^2/16
    assertThat(Cells.KELVIN.eulerStrain(0.2, 1.0)).isCloseTo(0.0246740, within(1e-7));
    assertThat(Cells.KELVIN.eulerStrain(0.2, 2.0)).isCloseTo(0.0986960, within(1e-7));
  }

  @Test
  void elasticaStartsStraightAndSoftens() {
    for (UnitCell cell : BENDING) {
      GuidedElastica strut = (GuidedElastica) cell.path(0.1);
      assertThat(strut.softening(0.0)).isZero();
      double before = 1.0;
      for (double e = 1e-7; e <= 1.0; e = e < 1e-3 ? 2.0 * e : e + 0.0093) {
        double secant = strut.softening(e) / e;
        assertThat(secant).isBetween(0.5, before + 1e-9);
        before = e < 0.6 ? secant : 1.0; // flat struts pull straight and stiffen again a little
        assertThat(strut.widening(e)).isFinite();
      }
      assertThat(strut.peakStrainOverSlenderness(1e-8) / 1e-8)
          .isCloseTo(strut.peakStrainSlope(), within(1e-5));
    }
  }

  @Test
  void caveatsOutsideTheRanges() {
    assertThat(Cells.KELVIN.caveats(0.25, 0.49)).isEmpty();
    assertThat(Cells.KELVIN.caveats(0.35, 0.49)).hasSize(1);
    assertThat(Cells.BODY_CENTRED.caveats(0.45, 0.1)).hasSize(3);
  }

  @Test
  void refusesWhatMakesNoSense() {
    assertThatThrownBy(() -> Cells.BODY_CENTRED.relativeDensity(0.71))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("slenderness of the struts is 0.71, allowed is below 0.7071")
        .hasMessageContaining("larger cell or a thinner strut");
    assertThatThrownBy(() -> Cells.KELVIN.solid(0.0, 0.49)).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Cells.KELVIN.centreLine(0.1, 0.51))
        .hasMessageContaining("Poisson's ratio of the solid is 0.51, allowed is 0 to 0.5");
    assertThatThrownBy(() -> Cells.KELVIN.path(0.1).softening(1.01))
        .hasMessageContaining("compressive strain is 1.01");
    assertThatThrownBy(() -> Cells.KELVIN.peakStrain(Double.NaN)).hasMessageContaining("NaN");
    assertThatThrownBy(() -> CubicStiffness.ofYoung(9.1, 1.0, 1.0))
        .hasMessageContaining("below 9 bulk moduli");
    assertThatThrownBy(() -> GuidedElastica.ofSine(0.99)).hasMessageContaining("strut angle");
  }

  @Test
  void readsWell() {
    assertThat(Cells.KELVIN.toString()).isEqualTo("Kelvin");
    assertThat(Cells.BODY_CENTRED.toString()).isEqualTo("body-centred");
    assertThat(Cells.KELVIN.path(0.1).toString()).isEqualTo("strut guided at both ends, 45 deg");
    assertThat(Cells.KELVIN.centreLine(0.2, 0.3).toString())
        .isEqualTo(
            "E100 0.0005961, C11 0.003972, K 0.003702, C44 0.0002034 of the solid's modulus");
    assertThat(Cells.KELVIN.sources()).isNotEmpty();
    assertThat(Cells.BODY_CENTRED.sources()).isNotEmpty();
  }
}
