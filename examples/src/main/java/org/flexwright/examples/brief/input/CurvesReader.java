package org.flexwright.examples.brief.input;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.flexwright.InvalidInputException;
import org.flexwright.fit.CurveFormat;
import org.flexwright.fit.StrainMeasure;
import org.flexwright.fit.StressMeasure;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;

/** Reads measured test curves: points in the brief, or a table in a file beside it. */
final class CurvesReader {

  private static final int MOST_CURVES = 20;
  private static final int MOST_POINTS = 1000; // of all curves: fourteen laws are fitted to them
  private static final String COLUMN =
      "the name of a column, or its position if there is no header";
  private static final Pattern LINE = Pattern.compile("line (\\d+) of .*");

  private CurvesReader() {}

  static List<TestCurve> read(Entry material, BesideBrief beside) {
    String at = material.path("curves");
    List<TestCurve> curves = new ArrayList<>();
    for (Entry entry : material.objects("curves")) {
      curves.addAll(entry.has("file") ? file(entry, beside) : List.of(inline(entry)));
    }
    if (curves.size() > MOST_CURVES) {
      throw BriefException.at(at, "has " + curves.size() + " curves", "at most " + MOST_CURVES);
    }
    int points = curves.stream().mapToInt(c -> c.points().size()).sum();
    if (points > MOST_POINTS) {
      throw BriefException.at(
          at, "has " + points + " points", "at most " + MOST_POINTS + " in all; thin them out");
    }
    Set<String> names = new HashSet<>();
    for (TestCurve curve : curves) {
      if (!names.add(curve.name())) {
        throw BriefException.at(at, "repeats \"" + curve.name() + '"', "each name once");
      }
    }
    return curves;
  }

  private static TestCurve inline(Entry entry) {
    String name = entry.text("name", "a name for the report");
    Deformation mode = mode(entry);
    Entry strain = entry.child("strain");
    Entry stress = entry.child("stress");
    CurveFormat format = measures(CurveFormat.positions(1, 2), strain, stress).mode(mode);
    strain.end();
    stress.end();
    StringBuilder table = new StringBuilder();
    entry.pairs("points").forEach(p -> table.append(p[0]).append(',').append(p[1]).append('\n'));
    entry.end();
    try {
      return format.read(name, table.toString()).get(0);
    } catch (InvalidInputException e) {
      throw BriefException.inside(place(entry.path("points"), e), e);
    }
  }

  /** The point that the reader of tables calls a line. */
  private static String place(String path, InvalidInputException refused) {
    Matcher line = LINE.matcher(refused.quantity());
    return line.lookingAt() ? path + "[" + (Integer.parseInt(line.group(1)) - 1) + "]" : path;
  }

  private static List<TestCurve> file(Entry entry, BesideBrief beside) {
    Path file = beside.file(entry, "file");
    Entry strain = entry.child("strain");
    Entry stress = entry.child("stress");
    boolean header = strain.isText("column");
    CurveFormat format =
        header
            ? CurveFormat.named(strain.text("column", COLUMN), stress.text("column", COLUMN))
            : CurveFormat.positions(
                strain.whole("column", 1, 1000), stress.whole("column", 1, 1000));
    format = measures(format, strain, stress);
    strain.end();
    stress.end();
    format =
        entry.has("modeColumn")
            ? format.modeColumn(column(entry, "modeColumn", header))
            : format.mode(mode(entry));
    if (entry.has("curveColumn")) {
      format = format.curveColumn(column(entry, "curveColumn", header));
    }
    entry.end();
    try {
      return format.read(file);
    } catch (InvalidInputException e) {
      throw BriefException.inside(entry.path("file"), e);
    } catch (IOException e) {
      throw BriefException.at(
          entry.path("file"), "cannot be read (" + e + ")", "a table in UTF-8, readable");
    }
  }

  private static String column(Entry entry, String name, boolean header) {
    return header ? entry.text(name, COLUMN) : Integer.toString(entry.whole(name, 1, 1000));
  }

  private static CurveFormat measures(CurveFormat format, Entry strain, Entry stress) {
    StrainMeasure strainAs =
        switch (strain.oneOf("as", "stretch", "strain", "per cent", "hencky")) {
          case "stretch" -> StrainMeasure.STRETCH;
          case "strain" -> StrainMeasure.ENGINEERING_STRAIN;
          case "per cent" -> StrainMeasure.PER_CENT;
          default -> StrainMeasure.HENCKY_STRAIN;
        };
    StressMeasure stressAs =
        stress.oneOf("as", "nominal", "true").equals("true")
            ? StressMeasure.TRUE
            : StressMeasure.NOMINAL;
    String unit = stress.oneOf("unit", "Pa", "kPa", "MPa", "N/mm2", "bar", "psi", "kgf/cm2");
    return format.strain(strainAs).stress(stressAs, unit);
  }

  private static Deformation mode(Entry entry) {
    String word = entry.oneOf("mode", "uniaxial", "equibiaxial", "planar");
    return Deformation.valueOf(word.toUpperCase(Locale.ROOT));
  }
}
