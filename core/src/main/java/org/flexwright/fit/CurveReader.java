package org.flexwright.fit;

import java.io.IOException;
import java.io.Reader;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Pressure;

/** Reads one table of test curves. Never holds more of a hostile file than its limits allow. */
final class CurveReader {

  static final int MOST_LINES = 100_000;
  static final int LONGEST_LINE = 1000;

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d++(\\.\\d*+)?|\\.\\d++)([eE][+-]?\\d{1,4})?");
  private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d*,\\d+([eE].*)?");
  private static final Pattern AFTER_COMMA = Pattern.compile("0\\d+");
  private static final String DECIMAL_POINT = "write decimal points, not commas";

  private final CurveFormat format;
  private final String name;
  private final Map<String, Curve> curves = new LinkedHashMap<>();
  private int line;
  private char separator;
  private int width;
  private List<String> header = List.of();
  private int strainAt;
  private int stressAt;
  private int modeAt = -1;
  private int curveAt = -1;

  private static final class Curve {
    private final String name;
    private final Deformation mode;
    private final List<TestCurve.Point> points = new ArrayList<>();
    private int direction;

    Curve(String name, Deformation mode) {
      this.name = name;
      this.mode = mode;
    }
  }

  CurveReader(CurveFormat format, String name) {
    this.format = format;
    this.name = name;
  }

  List<TestCurve> read(Reader in) throws IOException {
    StringBuilder text = new StringBuilder();
    line = 1;
    int c = in.read();
    while (c >= 0) {
      if (c == '\n' || c == '\r') {
        finish(text);
        int next = in.read();
        c = c == '\r' && next == '\n' ? in.read() : next;
      } else {
        text.append((char) c);
        if (text.length() > LONGEST_LINE) {
          throw refuse("length", "over " + LONGEST_LINE + " characters", "shorter lines", "");
        }
        c = in.read();
      }
    }
    if (text.length() > 0) {
      finish(text);
    }
    if (curves.isEmpty()) {
      throw new InvalidInputException("table " + name, "without a point", "at least one point", "");
    }
    return curves.values().stream().map(CurveReader::done).toList();
  }

  private static TestCurve done(Curve curve) {
    if (curve.direction < 0) {
      Collections.reverse(curve.points);
    }
    return TestCurve.of(curve.name, curve.mode, curve.points);
  }

  private void finish(StringBuilder text) {
    String words = (line == 1 ? text.toString().replace("\uFEFF", "") : text.toString()).strip();
    text.setLength(0);
    if (line > MOST_LINES) {
      throw refuse("number", Integer.toString(line), "up to " + MOST_LINES, "thin the curve out");
    }
    if (!words.isEmpty() && words.charAt(0) != '#') {
      take(words);
    }
    line++;
  }

  private void take(String words) {
    if (separator == 0) {
      separator = words.indexOf(';') >= 0 ? ';' : words.indexOf('\t') >= 0 ? '\t' : ',';
      List<String> cells = cells(words);
      width = cells.size();
      locate(cells);
      if (format.header()) {
        return;
      }
    }
    List<String> cells = cells(words);
    if (cells.size() != width) {
      throw refuse(
          "number of cells",
          Integer.toString(cells.size()),
          width + " as in the first line",
          separator == ',' ? DECIMAL_POINT : "look for a missing cell");
    }
    point(cells);
  }

  private List<String> cells(String words) {
    List<String> cells = new ArrayList<>();
    int from = 0;
    for (int to = words.indexOf(separator); to >= 0; to = words.indexOf(separator, from)) {
      cells.add(cell(words.substring(from, to)));
      from = to + 1;
    }
    cells.add(cell(words.substring(from)));
    return cells;
  }

  private static String cell(String raw) {
    String cell = raw.strip();
    boolean quoted = cell.length() >= 2 && cell.startsWith("\"") && cell.endsWith("\"");
    return quoted ? cell.substring(1, cell.length() - 1).strip() : cell;
  }

  private void locate(List<String> cells) {
    header = format.header() ? cells : List.of();
    strainAt = column(format.strainColumn());
    stressAt = column(format.stressColumn());
    modeAt = format.modeColumn().map(this::column).orElse(-1);
    curveAt = format.curveColumn().map(this::column).orElse(-1);
  }

  private int column(String wanted) {
    int at = header.indexOf(wanted);
    if (at >= 0) {
      if (header.lastIndexOf(wanted) != at) {
        throw refuse("column " + wanted, "there twice", "one column of that name", "");
      }
      return at;
    }
    if (!format.header() && wanted.matches("[1-9]\\d{0,3}")) {
      at = Integer.parseInt(wanted) - 1;
      if (at < width) {
        return at;
      }
    }
    throw refuse(
        "column",
        quoted(wanted),
        header.isEmpty() ? "a position from 1 to " + width : "one of " + header,
        format.header() ? "the first line must name the columns" : "");
  }

  private void point(List<String> cells) {
    double value = number(cells.get(strainAt), format.strainColumn());
    double stretch = format.strain().stretch(value);
    if (!(stretch > 0.0 && Double.isFinite(stretch))) {
      throw refuse(
          where(format.strainColumn()),
          quoted(cells.get(strainAt)),
          "a deformation of a stretch above 0",
          "check how the deformation is given; it is read as " + format.strain());
    }
    Pressure stress = nominal(cells.get(stressAt), stretch);
    Deformation mode = modeAt < 0 ? format.mode() : mode(cells.get(modeAt));
    String word = mode.name().toLowerCase(Locale.ROOT);
    String label = curveAt < 0 ? name + (modeAt < 0 ? "" : " " + word) : cells.get(curveAt);
    Curve curve = curves.computeIfAbsent(label + '\n' + word, k -> new Curve(label, mode));
    order(curve, stretch, cells.get(strainAt));
    curve.points.add(TestCurve.at(stretch, stress));
  }

  private Pressure nominal(String cell, double stretch) {
    double pascals = format.nominal(number(cell, format.stressColumn()), stretch);
    if (!Double.isFinite(pascals)) {
      throw refuse(
          where(format.stressColumn()),
          quoted(cell),
          "a stress below 1.8e308 Pa",
          "check the unit");
    }
    return Pressure.pa(pascals);
  }

  private void order(Curve curve, double stretch, String text) {
    if (curve.points.isEmpty()) {
      return;
    }
    double before = curve.points.get(curve.points.size() - 1).stretch();
    int direction = Double.compare(stretch, before);
    if (direction == 0 || direction * curve.direction < 0) {
      throw refuse(
          where(format.strainColumn()),
          quoted(text),
          "a stretch "
              + (curve.direction == 0 ? "other than " : curve.direction > 0 ? "above " : "below ")
              + Text.number(before)
              + ", that of the point before",
          "sort the points, keep one branch of a cycle");
    }
    curve.direction = direction;
  }

  private double number(String cell, String column) {
    boolean comma =
        DECIMAL_COMMA.matcher(cell).matches()
            || (separator == ',' && AFTER_COMMA.matcher(cell).matches());
    if (comma || !NUMBER.matcher(cell).matches()) {
      throw refuse(
          where(column), quoted(cell), "a number with a decimal point", comma ? DECIMAL_POINT : "");
    }
    double value = Double.parseDouble(cell);
    if (Double.isInfinite(value)) {
      throw refuse(where(column), quoted(cell), "a finite number", "");
    }
    return value;
  }

  private Deformation mode(String cell) {
    String word = cell.toUpperCase(Locale.ROOT);
    Optional<Deformation> known =
        switch (word) {
          case "UT" -> Optional.of(Deformation.UNIAXIAL);
          case "ET" -> Optional.of(Deformation.EQUIBIAXIAL);
          case "PS" -> Optional.of(Deformation.PLANAR);
          default ->
              List.of(Deformation.values()).stream().filter(m -> m.name().equals(word)).findAny();
        };
    return known.orElseThrow(
        () ->
            refuse(
                where(format.modeColumn().orElse("")),
                quoted(cell),
                "UT, ET, PS or one of " + List.of(Deformation.values()),
                ""));
  }

  private static String where(String column) {
    return "column " + column;
  }

  private static String quoted(String cell) {
    return '"' + (cell.length() > 40 ? cell.substring(0, 40) + "..." : cell) + '"';
  }

  private InvalidInputException refuse(String what, String found, String allowed, String advice) {
    return new InvalidInputException(
        "line " + line + " of " + name + ", " + what, found, allowed, advice);
  }
}
