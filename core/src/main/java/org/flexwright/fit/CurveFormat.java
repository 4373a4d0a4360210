package org.flexwright.fit;

import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.flexwright.internal.Require;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Pressure;

/**
 * What a table of test curves looks like, and the reader of such tables.
 *
 * <p>A table is text: one point a line, cells parted by commas, semicolons or tabs (the first line
 * that is not a note tells which), notes from {@code #} to the end of a line that starts with it,
 * blank lines anywhere. Columns are named by a header line, or by position from 1 if there is none.
 * Numbers have a decimal point; a decimal comma is refused. Stretches of a curve rise or fall from
 * line to line: one branch of a cycle, not both.
 *
 * <p>Deformations in a column are written as the constants of {@link Deformation} in any case, or
 * UT, ET, PS. A table holds up to 100 000 lines of up to 1000 characters; more is refused.
 *
 * <p>True stress is turned into nominal by P = s/l, which takes the material as incompressible.
 *
 * <p>JShell: {@code CurveFormat.named("strain", "stress").strain(StrainMeasure.PER_CENT)
 * .read("strip", "strain;stress\n50;0.4\n100;0.6")}
 *
 * @param strainColumn the column of the deformation, a name or a position
 * @param stressColumn the column of the stress
 * @param header whether the first line names the columns
 * @param strain how the deformation is given
 * @param stress how the stress is given
 * @param unit the unit of the stress: Pa, kPa, MPa, N/mm2, bar, psi or kgf/cm2
 * @param mode the deformation of all lines, unless a column tells
 * @param modeColumn the column of the deformation mode, if there is one
 * @param curveColumn the column of the name of the curve, if there is one
 */
public record CurveFormat(
    String strainColumn,
    String stressColumn,
    boolean header,
    StrainMeasure strain,
    StressMeasure stress,
    String unit,
    Deformation mode,
    Optional<String> modeColumn,
    Optional<String> curveColumn) {

  private static final double KILOGRAM_FORCE_PER_CM2 = 98066.5;

  /**
   * Refuses an unknown unit.
   *
   * @param strainColumn the column of the deformation, a name or a position
   * @param stressColumn the column of the stress
   * @param header whether the first line names the columns
   * @param strain how the deformation is given
   * @param stress how the stress is given
   * @param unit the unit of the stress: Pa, kPa, MPa, N/mm2, bar, psi or kgf/cm2
   * @param mode the deformation of all lines, unless a column tells
   * @param modeColumn the column of the deformation mode, if there is one
   * @param curveColumn the column of the name of the curve, if there is one
   * @throws org.flexwright.InvalidInputException if the unit is not known
   */
  public CurveFormat {
    pascals(unit);
  }

  private static double pascals(String unit) {
    // the older unit of the rubber trade is not one of quantity.Pressure
    return unit.equals("kgf/cm2") ? KILOGRAM_FORCE_PER_CM2 : Pressure.parse("1 " + unit).pa();
  }

  /**
   * A table with a header: stretch and nominal stress in MPa, uniaxial.
   *
   * @param strainColumn the name of the column of the deformation
   * @param stressColumn the name of the column of the stress
   * @return the format
   */
  public static CurveFormat named(String strainColumn, String stressColumn) {
    return of(strainColumn, stressColumn, true);
  }

  /**
   * A table without a header: stretch and nominal stress in MPa, uniaxial.
   *
   * @param strainColumn the position of the column of the deformation, from 1
   * @param stressColumn the position of the column of the stress, from 1
   * @return the format
   * @throws org.flexwright.InvalidInputException if a position is below 1
   */
  public static CurveFormat positions(int strainColumn, int stressColumn) {
    Require.atLeast("position of the strain column", strainColumn, 1);
    Require.atLeast("position of the stress column", stressColumn, 1);
    return of(Integer.toString(strainColumn), Integer.toString(stressColumn), false);
  }

  private static CurveFormat of(String strainColumn, String stressColumn, boolean header) {
    return new CurveFormat(
        strainColumn,
        stressColumn,
        header,
        StrainMeasure.STRETCH,
        StressMeasure.NOMINAL,
        "MPa",
        Deformation.UNIAXIAL,
        Optional.empty(),
        Optional.empty());
  }

  /**
   * This format with the deformation given in another way.
   *
   * @param as how the deformation is given
   * @return the new format
   */
  public CurveFormat strain(StrainMeasure as) {
    return new CurveFormat(
        strainColumn, stressColumn, header, as, stress, unit, mode, modeColumn, curveColumn);
  }

  /**
   * This format with the stress given in another way.
   *
   * @param as how the stress is given
   * @param in its unit: Pa, kPa, MPa, N/mm2, bar, psi or kgf/cm2
   * @return the new format
   * @throws org.flexwright.InvalidInputException if the unit is not known
   */
  public CurveFormat stress(StressMeasure as, String in) {
    return new CurveFormat(
        strainColumn, stressColumn, header, strain, as, in, mode, modeColumn, curveColumn);
  }

  /**
   * This format with one deformation for all lines.
   *
   * @param all the deformation
   * @return the new format, without a column of the mode
   */
  public CurveFormat mode(Deformation all) {
    return new CurveFormat(
        strainColumn,
        stressColumn,
        header,
        strain,
        stress,
        unit,
        all,
        Optional.empty(),
        curveColumn);
  }

  /**
   * This format with the deformation of each line in a column.
   *
   * @param column the name or position of the column
   * @return the new format
   */
  public CurveFormat modeColumn(String column) {
    return new CurveFormat(
        strainColumn,
        stressColumn,
        header,
        strain,
        stress,
        unit,
        mode,
        Optional.of(column),
        curveColumn);
  }

  /**
   * This format with the curve of each line in a column.
   *
   * @param column the name or position of the column
   * @return the new format
   */
  public CurveFormat curveColumn(String column) {
    return new CurveFormat(
        strainColumn,
        stressColumn,
        header,
        strain,
        stress,
        unit,
        mode,
        modeColumn,
        Optional.of(column));
  }

  /** The nominal stress of a value in pascals. */
  double nominal(double value, double stretch) {
    return stress.nominal(value, stretch) * pascals(unit);
  }

  /**
   * Reads a table from text.
   *
   * @param name a name for messages and curves
   * @param text the table
   * @return the curves in the order of their first lines
   * @throws org.flexwright.InvalidInputException if a line cannot be read; the message names line,
   *     column and text
   */
  public List<TestCurve> read(String name, String text) {
    try {
      return new CurveReader(this, name).read(new StringReader(text));
    } catch (IOException e) {
      throw new UncheckedIOException(e); // a text has no way to fail
    }
  }

  /**
   * Reads a table from a file in UTF-8.
   *
   * @param file the file
   * @return the curves in the order of their first lines
   * @throws IOException if the file cannot be read or is not UTF-8
   * @throws org.flexwright.InvalidInputException if a line cannot be read; the message names line,
   *     column and text
   */
  public List<TestCurve> read(Path file) throws IOException {
    try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
      return new CurveReader(this, String.valueOf(file.getFileName())).read(in);
    }
  }
}
