package org.flexwright.law.classical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;
import org.flexwright.testing.Csv;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bulk tables: stresses of the laws, and sets of constants against the curves of Treloar 1944. */
class LawTablesTest {

  private static final List<Csv.Row> TRELOAR =
      read("treloar_1944.csv", "mode", "stretch", "nominal_stress_mpa");

  private static List<Csv.Row> read(String file, String... columns) {
    try (InputStream in =
            Objects.requireNonNull(LawTablesTest.class.getResourceAsStream("/reference/" + file));
        BufferedReader lines =
            new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
      return Csv.read(file, lines.lines().toList(), List.of(columns)).rows();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  private static double number(Csv.Row row, String column) {
    return Double.parseDouble(row.cell(column));
  }

  static Stream<Csv.Row> stresses() {
    return read("law_stresses.csv", "family", "constants", "mode", "stretch", "nominal_stress_mpa")
        .stream();
  }

  static Stream<Csv.Row> sets() {
    return read(
        "treloar_sets.csv",
        "family",
        "constants",
        "shear_modulus",
        "rms_uniaxial",
        "rms_planar",
        "rms_equibiaxial",
        "constants_from")
        .stream();
  }

  /** Constants in MPa, dimensionless ones as they are; Ogden's as mu and alpha in turn. */
  private static StrainEnergy law(Csv.Row row) {
    double[] v =
        Arrays.stream(row.cell("constants").split(" ")).mapToDouble(Double::parseDouble).toArray();
    if (row.cell("family").startsWith("Ogden")) {
      Ogden law = Ogden.of(Pressure.mpa(v[0]), v[1]);
      for (int i = 2; i < v.length; i += 2) {
        law = law.and(Pressure.mpa(v[i]), v[i + 1]);
      }
      return law;
    }
    LawFamily family = LawFamilies.named(row.cell("family")).orElseThrow();
    for (int i = 0; i < v.length; i++) {
      boolean stress = family.constants().get(i).kind() == LawFamily.Constant.Kind.STRESS;
      v[i] *= stress ? 1e6 : 1.0;
    }
    return family.law(v);
  }

  @ParameterizedTest
  @MethodSource("stresses")
  void stressOfTheTable(Csv.Row row) {
    double stress =
        Deformation.valueOf(row.cell("mode")).nominalStress(law(row), number(row, "stretch")).mpa();
    assertPrinted(stress, row.cell("nominal_stress_mpa"), 10);
  }

  @ParameterizedTest
  @MethodSource("sets")
  void setAgainstTheCurves(Csv.Row row) {
    StrainEnergy law = law(row);
    double[] values = {
      law.shearModulus() * 1e-6,
      misfit(law, Deformation.UNIAXIAL),
      misfit(law, Deformation.PLANAR),
      misfit(law, Deformation.EQUIBIAXIAL)
    };
    String[] columns = {"shear_modulus", "rms_uniaxial", "rms_planar", "rms_equibiaxial"};
    // figures of a fit are those before its constants were cut to seven digits: 1e-7 of a stress,
    // which is a hundred times the misfit
    boolean cut = row.cell("constants_from").startsWith("least squares");
    for (int i = 0; i < 4; i++) {
      if (cut) {
        double printed = number(row, columns[i]);
        assertThat(values[i]).isCloseTo(printed, within(2e-5 * printed));
      } else {
        assertPrinted(values[i], row.cell(columns[i]), 6);
      }
    }
  }

  private static double misfit(StrainEnergy law, Deformation mode) {
    double[] errors =
        TRELOAR.stream()
            .filter(point -> point.cell("mode").equals(mode.name()))
            .mapToDouble(
                point ->
                    mode.nominalStress(law, number(point, "stretch")).mpa()
                        - number(point, "nominal_stress_mpa"))
            .toArray();
    return Math.sqrt(Arrays.stream(errors).map(e -> e * e).average().orElseThrow());
  }

  /** Half a unit of the last of so many digits, trailing zeros being dropped in the tables. */
  private static void assertPrinted(double value, String printed, int digits) {
    BigDecimal number = new BigDecimal(printed);
    double unit = Math.pow(10, number.precision() - number.scale() - (double) digits);
    assertThat(value).isCloseTo(number.doubleValue(), within(0.501 * unit));
  }

  @Test
  void tableOfTreloarIsWhole() {
    assertThat(TRELOAR).hasSize(24 + 13 + 16);
  }

  /** Tension alone leads two Mooney-Rivlin constants to a negative modulus: no law. */
  @Test
  void fitToTensionAloneIsNoLaw() {
    assertThatThrownBy(
            () ->
                MooneyRivlinPolynomial.of(
                    Pressure.mpa(0.4063821), Pressure.mpa(-0.7477491), Pressure.mpa(0)))
        .hasMessageContaining("C10 + C01");
  }
}
