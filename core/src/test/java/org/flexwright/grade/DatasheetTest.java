package org.flexwright.grade;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawCheck;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Pressure;
import org.junit.jupiter.api.Test;

final class DatasheetTest {

  private static Datasheet sheet(String name) {
    return Datasheet.of(name);
  }

  private static double sigma(Grade grade) {
    return grade.materialFactors().sigma(Factor.MODULUS);
  }

  private static double nominal(Grade grade, double elongation) {
    return Deformation.UNIAXIAL.nominalStress(grade.law(), 1.0 + elongation).mpa();
  }

  /** Own figures of two property sheets, and what the grade takes over. */
  @Test
  void allFiguresOfTheSheetAreKept() {
    Grade grade =
        Grade.ofDatasheet(
            sheet("55 D")
                .flexural(Pressure.mpa(137.9), 0.01)
                .stress(3, Pressure.mpa(32.41))
                .stress(1, Pressure.mpa(15.93))
                .stress(0.5, Pressure.mpa(12.41))
                .strength(Pressure.mpa(63.43), 5)
                .hardness(ShoreD.of(55))
                .density(Density.gPerCm3(1.21)));
    assertThat(grade.secantModulus(0.01).mpa()).isCloseTo(137.9, within(1e-10));
    double[][] figures = {{0.5, 12.41}, {1, 15.93}, {3, 32.41}, {5, 63.43}};
    for (double[] f : figures) {
      assertThat(nominal(grade, f[0])).isCloseTo(f[1], within(1e-10));
    }
    assertThat(grade.strainAtBreak(false)).isEqualTo(5.0);
    assertThat(grade.law().range().high()).isCloseTo(6.0, within(1e-12));
    assertThat(grade.density()).isEqualTo(Density.gPerCm3(1.21));
    assertThat(sigma(grade)).isCloseTo(Math.log(1.2) / 2, within(1e-15));
    assertThat(grade.caveats()).extracting(Caveat::model).containsExactly("Hencky-strain law");
    assertThat(LawCheck.of(grade.law()).report().passed()).isTrue();
  }

  @Test
  void aTensileModulusIsANominalSecant() {
    Grade grade =
        Grade.ofDatasheet(sheet("t").tensile(Pressure.mpa(40), 0.05).stress(1, Pressure.mpa(8)));
    assertThat(nominal(grade, 0.05)).isCloseTo(2.0, within(1e-12));
  }

  /** From the stress at 100 % alone: the ratios of the sheets and the two fits, by hand. */
  @Test
  void whatIsMissingComesFromTheGenericPolyurethane() {
    Grade grade = Grade.ofDatasheet(sheet("m").stress(1, Pressure.mpa(10)));
    double shoreD = (1.0 - 0.2345) / 0.01709;
    double flexural = Math.pow(10, 0.02851 * shoreD + 0.5957);
    assertThat(grade.secantModulus(0.01).mpa()).isCloseTo(flexural, within(1e-9 * flexural));
    assertThat(nominal(grade, 0.5)).isCloseTo(10 / 1.22, within(1e-9));
    assertThat(nominal(grade, 1)).isCloseTo(10, within(1e-9));
    assertThat(nominal(grade, 3)).isCloseTo(17.5, within(1e-9));
    assertThat(sigma(grade)).isCloseTo(Math.hypot(Math.log(1.2) / 2, 0.24), within(1e-12));
    assertThat(grade.caveats())
        .extracting(Caveat::message)
        .anyMatch(m -> m.startsWith("modulus at 1 % is not given") && m.contains("44.8 Shore D"))
        .anyMatch(m -> m.startsWith("stress at 50 % is not given"))
        .anyMatch(m -> m.startsWith("stress at 300 % is not given"))
        .anyMatch(m -> m.startsWith("not given, 500 % assumed"));
  }

  /** Leaving out one figure of a sheet: the filled one is within the band that the grade states. */
  @Test
  void filledFiguresAreWithinTheirBand() {
    double[][] sheets = {
      {26.9, 4.8, 5.5, 9.7},
      {68.88, 7.58, 9.03, 20.68},
      {137.9, 12.41, 15.93, 32.41},
      {148.93, 11.86, 14.96, 33.72},
      {151.68, 13.1, 17.24, 29.51}
    };
    double[] strains = {0.01, 0.5, 1, 3};
    for (double[] row : sheets) {
      for (int left = 0; left < 4; left++) {
        Datasheet sheet = sheet("s");
        for (int i = 0; i < 4; i++) {
          if (i != left) {
            Pressure value = Pressure.mpa(row[i]);
            sheet = i == 0 ? sheet.flexural(value, 0.01) : sheet.stress(strains[i], value);
          }
        }
        Grade grade = Grade.ofDatasheet(sheet);
        double filled = left == 0 ? grade.secantModulus(0.01).mpa() : nominal(grade, strains[left]);
        double band = Math.exp(2 * sigma(grade));
        assertThat(filled / row[left]).isBetween(1 / band, band);
      }
    }
  }

  @Test
  void eachFigureHasItsBandAndTheWidestCounts() {
    Datasheet full =
        sheet("b")
            .flexural(Pressure.mpa(68.88), 0.01)
            .within(1.05)
            .stress(0.5, Pressure.mpa(7.58))
            .within(1.1)
            .stress(1, Pressure.mpa(9.03))
            .within(1.08)
            .stress(3, Pressure.mpa(20.68))
            .within(1.02);
    assertThat(sigma(Grade.ofDatasheet(full))).isCloseTo(Math.log(1.1) / 2, within(1e-15));
    assertThatThrownBy(() -> sheet("x").within(1.1)).hasMessageContaining("give the figure first");
  }

  @Test
  void aHardnessThatDoesNotFitIsSaid() {
    Datasheet sheet =
        sheet("h")
            .flexural(Pressure.mpa(68.88), 0.01)
            .stress(0.5, Pressure.mpa(7.58))
            .stress(1, Pressure.mpa(9.03))
            .stress(3, Pressure.mpa(20.68))
            .strength(Pressure.mpa(54.47), 5);
    assertThat(Grade.ofDatasheet(sheet.hardness(ShoreD.of(43).plusMinus(3))).caveats()).hasSize(1);
    assertThat(Grade.ofDatasheet(sheet.hardness(ShoreA.of(75))).caveats())
        .extracting(Caveat::message)
        .anyMatch(m -> m.contains("of that of a generic polyurethane of 75"));
  }

  @Test
  void figuresThatCannotBeAreRefused() {
    Datasheet m100 = sheet("r").stress(1, Pressure.mpa(9.03));
    assertThatThrownBy(() -> m100.flexural(Pressure.mpa(9.03), 0.01))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("flexural modulus at 1 % is 9.03 MPa")
        .hasMessageContaining("a \"100 % modulus\" is a stress");
    assertThatThrownBy(() -> sheet("r").tensile(Pressure.mpa(9.03), 1.0))
        .hasMessageContaining("give it with stress(1, ...)");
    assertThatThrownBy(() -> m100.stress(0.5, Pressure.mpa(12.1)))
        .hasMessageContaining("true stress of the stress at 100 %")
        .hasMessageContaining("check their order and units");
    // psi typed as MPa
    assertThatThrownBy(() -> m100.stress(3, Pressure.mpa(3000)))
        .hasMessageContaining("check that both have the same unit");
    assertThatThrownBy(() -> m100.flexural(Pressure.mpa(10_000), 0.01))
        .hasMessageContaining("check the units");
    assertThatThrownBy(() -> m100.stress(50, Pressure.mpa(12)))
        .hasMessageContaining("0.5 means 50 %");
    assertThatThrownBy(() -> m100.stress(1, Pressure.mpa(9.04)))
        .hasMessageContaining("give each strain once");
    assertThatThrownBy(() -> m100.stress(3, Pressure.mpa(-1))).hasMessageContaining("above 0");
    assertThatThrownBy(() -> Grade.ofDatasheet(sheet("r").strength(Pressure.mpa(50), 5)))
        .hasMessageContaining("at least one modulus or one stress");
    // a silicone: no polyurethane is that soft, so nothing can be filled
    assertThatThrownBy(() -> Grade.ofDatasheet(sheet("r").stress(1, Pressure.mpa(0.3))))
        .hasMessageContaining("what is missing cannot be filled");
  }

  /** Any one stress that a polyurethane can have gives a stable law that is exact there. */
  @Property(seed = "66", tries = 1000)
  void oneFigureSuffices(
      @ForAll @DoubleRange(min = 4, max = 20) double mpa,
      @ForAll @DoubleRange(min = 0.5, max = 3) double elongation) {
    Grade grade = Grade.ofDatasheet(sheet("p").stress(elongation, Pressure.mpa(mpa)));
    assertThat(nominal(grade, elongation)).isCloseTo(mpa, within(1e-9 * mpa));
    double before = 0.0;
    for (double e = 0.001; e < 3; e *= 1.05) {
      double s = Deformation.UNIAXIAL.trueStress(grade.law(), Math.exp(e)).pa();
      assertThat(s).isGreaterThan(before);
      before = s;
    }
  }
}
