package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;

/** Draws the measured points of each deformation in a panel, and the best laws through them. */
final class LawPlot {

  /** So many laws are drawn. */
  static final int BEST = 3;

  private static final double WIDTH = 756;
  private static final double TOP = 36;
  private static final double BOTTOM = 296;
  private static final double LEFT = 54;
  private static final double FIRST_LEFT = 78;
  private static final double RIGHT = 14;
  private static final double ROOM = 0.06;
  private static final int STEPS = 80;
  private static final String[] STROKES = {Pen.INK, Pen.ACCENT, "#7a621c"};
  private static final String[] DASHES = {"", "9 4", "2 4"};

  private final List<TestCurve> curves;
  private final List<FittedLaw> laws;
  private final String id;
  private final Markup svg;
  private final Pen pen;

  private LawPlot(List<TestCurve> curves, List<FittedLaw> laws, String id, Markup svg) {
    this.curves = curves;
    this.laws = laws;
    this.id = id;
    this.svg = svg;
    this.pen = new Pen(svg);
  }

  /** Draws the plot into a page; the id must be unique on the page. */
  static void draw(List<TestCurve> curves, FitComparison comparison, String id, Markup page) {
    new LawPlot(curves, best(comparison), id, page).draw();
  }

  /** The best laws, those that are stable first; the order of the comparison. */
  static List<FittedLaw> best(FitComparison comparison) {
    return comparison.entries().stream().flatMap(e -> e.fitted().stream()).limit(BEST).toList();
  }

  private void draw() {
    svg.open(
        "svg", "viewBox", "0 0 756 392", "role", "img", "aria-labelledby", id + "-t " + id + "-d");
    svg.leaf("title", "measured curves and the best laws", "id", id + "-t");
    svg.leaf("desc", description(), "id", id + "-d");
    List<Deformation> modes = LawRow.modes(curves);
    double each = WIDTH / modes.size();
    for (int i = 0; i < modes.size(); i++) {
      double left = i * each + (i == 0 ? FIRST_LEFT : LEFT);
      panel(modes.get(i), left, (i + 1) * each - RIGHT, id + "-c" + i);
    }
    pen.upright(18, (TOP + BOTTOM) / 2, "nominal stress [MPa]");
    pen.label((FIRST_LEFT + WIDTH - RIGHT) / 2, BOTTOM + 42, "stretch", "middle", Pen.INK);
    legend();
    svg.close();
  }

  private String description() {
    String points = curves.stream().map(TestCurve::toString).collect(Collectors.joining("; "));
    return "Measured: "
        + points
        + ". Laws: "
        + laws.stream()
            .map(l -> l.fit().family().name() + " (" + misfits(l) + ")")
            .collect(Collectors.joining("; "))
        + ".";
  }

  private String misfits(FittedLaw law) {
    return LawRow.modes(curves).stream()
        .map(m -> LawRow.word(m) + " " + LawRow.Misfit.of(law, m))
        .collect(Collectors.joining(", "));
  }

  private void panel(Deformation mode, double left, double right, String clip) {
    List<TestCurve.Point> points =
        curves.stream().filter(c -> c.mode() == mode).flatMap(c -> c.points().stream()).toList();
    double[] stretches = points.stream().mapToDouble(TestCurve.Point::stretch).toArray();
    Axis x = axis(stretches, 1.0, left, right);
    Axis y = axis(points.stream().mapToDouble(p -> p.nominal().mpa()).toArray(), 0.0, BOTTOM, TOP);
    svg.open("defs").open("clipPath", "id", clip);
    pen.rect(left, TOP, right - left, BOTTOM - TOP, "none");
    svg.close().close();
    axes(x, y);
    pen.label((left + right) / 2, TOP - 14, LawRow.word(mode), "middle", Pen.INK);
    svg.open("g", "clip-path", "url(#" + clip + ")");
    for (int i = 0; i < laws.size(); i++) {
      String path = line(laws.get(i).law(), mode, stretches, x, y);
      if (!path.isEmpty()) {
        pen.path(path, STROKES[i], "2", DASHES[i]);
      }
    }
    svg.close();
    points.forEach(p -> point(x.at(p.stretch()), y.at(p.nominal().mpa())));
  }

  /** An axis over the values and the state of rest. */
  private static Axis axis(double[] values, double rest, double start, double end) {
    double low = rest;
    double high = rest;
    for (double v : values) {
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
    double room = ROOM * (high - low);
    return new Axis(low < rest ? low - room : low, high + room, start, end, false);
  }

  private void axes(Axis x, Axis y) {
    for (double tick : y.ticks(6)) {
      pen.segment(x.start(), y.at(tick), x.end(), y.at(tick), Pen.INK, "0.4", "1 4");
      pen.label(x.start() - 8, y.at(tick) + 4, Say.number(tick, 4), "end", Pen.INK);
    }
    int about = x.end() - x.start() > 400.0 ? 8 : 4;
    for (double tick : x.ticks(about)) {
      pen.segment(x.at(tick), BOTTOM, x.at(tick), BOTTOM + 6, Pen.INK, "1.2", "");
      pen.label(x.at(tick), BOTTOM + 22, Say.number(tick, 4), "middle", Pen.INK);
    }
    pen.segment(x.start(), BOTTOM, x.end(), BOTTOM, Pen.INK, "1.2", "");
    pen.segment(x.start(), TOP, x.start(), BOTTOM, Pen.INK, "1.2", "");
  }

  /** A law from the first point or rest to the last, as far as its own range goes. */
  private static String line(
      StrainEnergy law, Deformation mode, double[] stretches, Axis x, Axis y) {
    double from = Math.min(1.0, Arrays.stream(stretches).min().orElse(1.0));
    double to = Math.max(1.0, Arrays.stream(stretches).max().orElse(1.0));
    StringBuilder path = new StringBuilder();
    for (int i = 0; i <= STEPS; i++) {
      double stretch = from + (to - from) * i / STEPS;
      if (inside(law, mode, stretch)) {
        path.append(path.length() == 0 ? "M" : "L").append(Pen.n(x.at(stretch))).append(' ');
        path.append(Pen.n(y.at(mode.nominalStress(law, stretch).mpa())));
      }
    }
    return path.toString();
  }

  private static boolean inside(StrainEnergy law, Deformation mode, double stretch) {
    for (double l : mode.stretches(stretch)) {
      if (l < law.range().low() || l > law.range().high()) {
        return false;
      }
    }
    return true;
  }

  private void point(double px, double py) {
    svg.empty(
        "circle",
        "cx",
        Pen.n(px),
        "cy",
        Pen.n(py),
        "r",
        "3.4",
        "fill",
        "#ffffff",
        "stroke",
        Pen.INK,
        "stroke-width",
        "1.4");
  }

  private void legend() {
    double row = BOTTOM + 74;
    List<String> names = new ArrayList<>();
    laws.forEach(l -> names.add(l.fit().family().name()));
    point(FIRST_LEFT + 14, row - 5);
    pen.label(FIRST_LEFT + 28, row, "measured", "start", Pen.INK);
    for (int i = 0; i < names.size(); i++) {
      double left = FIRST_LEFT + 124 + 184 * i;
      pen.segment(left, row - 5, left + 34, row - 5, STROKES[i], "2", DASHES[i]);
      pen.label(left + 42, row, names.get(i), "start", STROKES[i]);
    }
  }
}
