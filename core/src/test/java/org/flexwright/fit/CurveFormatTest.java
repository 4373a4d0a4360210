package org.flexwright.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.flexwright.InvalidInputException;
import org.flexwright.law.Deformation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CurveFormatTest {

  private static final CurveFormat PLAIN = CurveFormat.named("stretch", "stress");

  @Test
  void readsColumnsByNameWithNotesBlankLinesAndAMark() {
    List<TestCurve> curves =
        PLAIN.read(
            "strip",
            "\uFEFF# a note\r\nno,stress,stretch\r\n\r\n1,0.4,1.5\r\n# more\n2,\"0.6\", 2\n");
    assertThat(curves).hasSize(1);
    assertThat(curves.get(0)).hasToString("strip, uniaxial, 2 points, stretch 1.5 to 2");
    assertThat(curves.get(0).points().get(1).nominal().mpa()).isEqualTo(0.6);
  }

  @Test
  void readsColumnsByPositionWithoutAHeader() {
    List<TestCurve> curves = CurveFormat.positions(2, 1).read("x", "0.4\t1.5\n0.6\t2");
    assertThat(curves.get(0).points().get(0).stretch()).isEqualTo(1.5);
  }

  @ParameterizedTest
  @CsvSource({
    "Pa, 1",
    "kPa, 1e3",
    "MPa, 1e6",
    "N/mm2, 1e6",
    "bar, 1e5",
    "psi, 6894.757293168361",
    // kilogram-force: 9.80665 N by definition
    "kgf/cm2, 98066.5"
  })
  void readsStressUnits(String unit, double pascals) {
    List<TestCurve> curves =
        PLAIN.stress(StressMeasure.NOMINAL, unit).read("x", "stretch;stress\n2;3");
    assertThat(curves.get(0).points().get(0).nominal().pa())
        .isCloseTo(3 * pascals, within(1e-9 * pascals));
  }

  @ParameterizedTest
  @CsvSource({
    "STRETCH, 1.5",
    "ENGINEERING_STRAIN, 0.5",
    "PER_CENT, 50",
    // ln 1.5
    "HENCKY_STRAIN, 0.4054651081081644"
  })
  void readsDeformationsAndTrueStress(StrainMeasure measure, String value) {
    TestCurve.Point point =
        PLAIN
            .strain(measure)
            .stress(StressMeasure.TRUE, "MPa")
            .read("x", "stretch;stress\n" + value + ";3")
            .get(0)
            .points()
            .get(0);
    assertThat(point.stretch()).isCloseTo(1.5, within(1e-15));
    // P = s/l
    assertThat(point.nominal().mpa()).isCloseTo(2.0, within(1e-14));
  }

  @Test
  void partsCurvesByModeAndNameAndTurnsCompressionRound() {
    String table =
        """
        test,mode,stretch,stress
        a,UT,0.9,-0.1
        a,UT,0.8,-0.3
        a,equibiaxial,1.1,0.2
        b,UT,1.1,0.1
        """;
    List<TestCurve> byMode = PLAIN.modeColumn("mode").curveColumn("test").read("x", table);
    assertThat(byMode).hasSize(3);
    assertThat(byMode.get(0).points().get(0).stretch()).isEqualTo(0.8);
    assertThat(byMode.get(1).mode()).isEqualTo(Deformation.EQUIBIAXIAL);
    assertThat(byMode.get(2).name()).isEqualTo("b");
    assertThat(PLAIN.mode(Deformation.PLANAR).read("x", "stretch,stress\n2,1").get(0).mode())
        .isEqualTo(Deformation.PLANAR);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stretch;stress\\n1,5;0,4 | line 2 of x, column stretch is \"1,5\", allowed is a number"
            + " with a decimal point; write decimal points, not commas",
        "stretch,stress\\n1,5,0,4 | line 2 of x, number of cells is 4, allowed is 2 as in the first"
            + " line; write decimal points, not commas",
        "stretch,stress,a,b\\n1,05,0,4 | line 2 of x, column stress is \"05\"",
        "stretch,stress\\n2,1\\n2,1.1 | line 3 of x, column stretch is \"2\", allowed is a stretch"
            + " other than 2",
        "stretch,stress\\n1,0\\n2,1\\n1.5,0.6 | line 4 of x, column stretch is \"1.5\", allowed is"
            + " a stretch above 2, that of the point before; sort the points",
        "stretch,stress\\n-1,1 | a deformation of a stretch above 0",
        "stretch,stress\\n2,NaN | line 2 of x, column stress is \"NaN\"",
        "stretch,stress\\n2,0x1p3 | column stress is \"0x1p3\"",
        "stretch,stress\\n2,1e999 | a finite number",
        "stretch,stress\\n2, | column stress is \"\"",
        "strain,stress\\n2,1 | line 1 of x, column is \"stretch\", allowed is one of [strain,"
            + " stress]",
        "stretch,stretch,stress\\n2,1,1 | column stretch is there twice",
        "stretch,stress | table x is without a point"
      })
  void refusesByLineColumnAndText(String table, String message) {
    assertThatThrownBy(() -> PLAIN.read("x", table.replace("\\n", "\n")))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining(message);
  }

  @Test
  void refusesUnknownModesPositionsAndUnits() {
    assertThatThrownBy(() -> PLAIN.modeColumn("m").read("x", "m,stretch,stress\nshear,2,1"))
        .hasMessageContaining(
            "line 2 of x, column m is \"shear\", allowed is UT, ET, PS or one of");
    assertThatThrownBy(() -> CurveFormat.positions(1, 3).read("x", "1,2"))
        .hasMessageContaining("allowed is a position from 1 to 2");
    assertThatThrownBy(() -> CurveFormat.positions(0, 1)).hasMessageContaining("at least 1");
    assertThatThrownBy(() -> PLAIN.stress(StressMeasure.NOMINAL, "ksi"))
        .isInstanceOf(InvalidInputException.class)
        .hasMessageContaining("MPa");
  }

  @Test
  void stopsReadingAtItsLimits(@TempDir Path folder) throws IOException {
    String longLine = "stretch,stress\n" + "1".repeat(CurveReader.LONGEST_LINE + 1);
    assertThatThrownBy(() -> PLAIN.read("x", longLine)).hasMessageContaining("line 2 of x, length");
    String many = "stretch,stress\n" + "#\n".repeat(CurveReader.MOST_LINES);
    Path file = Files.writeString(folder.resolve("many.csv"), many);
    assertThatThrownBy(() -> PLAIN.read(file)).hasMessageContaining("up to 100000");
    Path good = Files.writeString(folder.resolve("good.csv"), "stretch,stress\n2,1");
    assertThat(PLAIN.read(good).get(0).name()).isEqualTo("good.csv");
  }

  @Property(seed = "59", tries = 500)
  void anyTextIsReadOrRefused(@ForAll String text) {
    try {
      assertThat(PLAIN.read("x", "stretch,stress\n" + text)).isNotEmpty();
    } catch (InvalidInputException refused) {
      assertThat(refused.sentence()).containsPattern("^(line \\d+ of x|table x)");
    }
  }

  /** As many lines as are allowed, with and without a line end behind the last. */
  @Test
  void theLastLineMayEnd() {
    String points = "1.5,1\n2,2";
    String full = "\n".repeat(CurveReader.MOST_LINES - 2) + points;
    CurveFormat format = CurveFormat.positions(1, 2);
    assertThat(format.read("t", full)).hasSize(1);
    assertThat(format.read("t", full + "\n")).hasSize(1);
    assertThatThrownBy(() -> format.read("t", "\n" + full + "\n"))
        .hasMessageContaining("up to 100000");
  }

  @Test
  void aStressBeyondAllNumbersIsRefusedByItsLine() {
    assertThatThrownBy(() -> CurveFormat.positions(1, 2).read("t", "1.5,1\n2,1e305"))
        .hasMessageStartingWith("line 2 of t, column 2 is \"1e305\"");
  }
}
