package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.CurvePoint;
import org.flexwright.decide.Interval;
import org.flexwright.decide.Verdict;
import org.flexwright.examples.brief.answer.Answer;
import org.flexwright.response.Channel;

/** Draws the load of a part against the size in question, with its band, limits and windows. */
final class WindowPlot {

  private static final double LEFT = 78;
  private static final double RIGHT = 738;
  private static final double TOP = 16;
  private static final double BOTTOM = 316;
  private static final String INK = Pen.INK;
  private static final String BAND = "#bfd3de";
  private static final String NOMINAL = "#f2e6c4";
  private static final String SURE = "#d8b65a";
  private static final String LIMIT = Pen.ACCENT;
  private static final double MARK = 5.5;

  private final Answer<?> answer;
  private final String id;
  private final Markup svg;
  private final Pen pen;
  private final List<CurvePoint> curve;
  private final List<TargetLine> limits;
  private final List<Candidate> candidates;
  private final Channel channel;
  private final Axis x;
  private final Axis y;

  private WindowPlot(Answer<?> answer, String id, Markup svg) {
    this.answer = answer;
    this.id = id;
    this.svg = svg;
    this.pen = new Pen(svg);
    this.curve = answer.window().of().curve();
    this.limits = TargetLine.of(answer.target());
    this.candidates =
        answer.window().of().candidates().stream().filter(c -> c.load().nominal() > 0.0).toList();
    this.channel = curve.isEmpty() ? Channel.FORCE : curve.get(0).load().channel();
    double from = answer.window().of().question().from().mm();
    double to = answer.window().of().question().to().mm();
    double room = 0.03 * (to - from);
    this.x = new Axis(from - room, to + room, LEFT, RIGHT, false);
    double factor = channel.shownFactor();
    List<Double> values = new ArrayList<>();
    curve.forEach(p -> values.add(p.load().low() * factor));
    curve.forEach(p -> values.add(p.load().high() * factor));
    limits.forEach(l -> values.add(l.value() * factor));
    double low = values.stream().mapToDouble(v -> v).min().orElse(0.0);
    double high = values.stream().mapToDouble(v -> v).max().orElse(1.0);
    this.y = Axis.over(low, high, BOTTOM, TOP);
  }

  /** Draws the plot of an answer into a page; the id must be unique on the page. */
  static void draw(Answer<?> answer, String id, Markup page) {
    new WindowPlot(answer, id, page).draw();
  }

  private void draw() {
    svg.open(
        "svg", "viewBox", "0 0 756 436", "role", "img", "aria-labelledby", id + "-t " + id + "-d");
    svg.leaf("title", title(), "id", id + "-t");
    svg.leaf("desc", description(), "id", id + "-d");
    pattern();
    windows(answer.window().of().nominal(), NOMINAL);
    windows(answer.window().of().sure(), "url(#" + id + "-h)");
    grid();
    svg.open("g", "clip-path", "url(#" + id + "-c)");
    band();
    line();
    svg.close();
    limits.forEach(this::limit);
    candidates.forEach(
        c -> mark(x.at(c.size().mm()), y.at(shown(c.load().nominal())), c.verdict()));
    axes();
    legend();
    svg.close();
  }

  private String title() {
    String label = answer.window().label();
    return loadWords()
        + " against "
        + answer.window().of().question().lever()
        + (label.isEmpty() ? "" : " at " + label);
  }

  private String loadWords() {
    return channel == Channel.PRESSURE ? "pressure needed" : channel.toString();
  }

  private String description() {
    StringBuilder words = new StringBuilder(answer.target() + ". ");
    words.append("Nominal window: ").append(Say.windows(answer.window().of().nominal()));
    words.append("; sure window: ").append(Say.windows(answer.window().of().sure())).append(". ");
    for (Candidate c : answer.window().of().candidates()) {
      words.append(c.size()).append(": ").append(c.load()).append(", ").append(c.verdict());
      words.append("; ");
    }
    return words.append(answer.sentence()).append('.').toString();
  }

  private double shown(double si) {
    return si * channel.shownFactor();
  }

  private void pattern() {
    svg.open("defs");
    svg.open(
        "pattern", "id", id + "-h", "width", "7", "height", "7", "patternUnits", "userSpaceOnUse");
    svg.empty("rect", "width", "7", "height", "7", "fill", SURE);
    svg.empty("path", "d", "M0 7L7 0", "stroke", INK, "stroke-width", "0.7", "opacity", "0.6");
    svg.close();
    svg.open("clipPath", "id", id + "-c");
    pen.rect(LEFT, TOP, RIGHT - LEFT, BOTTOM - TOP, "none");
    svg.close();
    svg.close();
  }

  private void windows(List<Interval> windows, String fill) {
    for (Interval w : windows) {
      double from = x.at(w.from().mm());
      pen.rect(from, TOP, Math.max(1.0, x.at(w.to().mm()) - from), BOTTOM - TOP, fill);
    }
  }

  private void grid() {
    for (double tick : y.ticks(6)) {
      pen.segment(LEFT, y.at(tick), RIGHT, y.at(tick), INK, "0.4", "1 4");
      pen.label(LEFT - 8, y.at(tick) + 4, Say.number(tick, 4), "end", INK);
    }
  }

  private void band() {
    StringBuilder path = new StringBuilder();
    for (CurvePoint p : curve) {
      append(path, p.size().mm(), p.load().high());
    }
    for (int i = curve.size() - 1; i >= 0; i--) {
      append(path, curve.get(i).size().mm(), curve.get(i).load().low());
    }
    if (!curve.isEmpty()) {
      svg.empty("path", "d", path + "Z", "fill", BAND, "opacity", "0.75");
    }
  }

  private void line() {
    StringBuilder path = new StringBuilder();
    curve.forEach(p -> append(path, p.size().mm(), p.load().nominal()));
    if (!curve.isEmpty()) {
      pen.path(path.toString(), INK, "2", "");
    }
  }

  private void append(StringBuilder path, double mm, double si) {
    path.append(path.length() == 0 ? "M" : "L").append(Pen.n(x.at(mm))).append(' ');
    path.append(Pen.n(y.at(shown(si))));
  }

  private void limit(TargetLine limit) {
    double at = y.at(shown(limit.value()));
    pen.segment(LEFT, at, RIGHT, at, LIMIT, "1.8", "9 5");
    boolean upper = limit.words().startsWith("most");
    pen.label(RIGHT - 6, upper ? at - 6 : at + 15, limit.words(), "end", LIMIT);
  }

  private void mark(double px, double py, Verdict verdict) {
    switch (verdict) {
      case MEETS ->
          svg.empty("circle", "cx", Pen.n(px), "cy", Pen.n(py), "r", Pen.n(MARK), "fill", INK);
      case NOT_DECIDABLE ->
          svg.empty(
              "path",
              "d",
              String.format(
                  Locale.ROOT,
                  "M%.1f %.1fl%.1f %.1fl%.1f %.1fl%.1f %.1fZ",
                  px,
                  py - MARK - 1.5,
                  MARK + 1.5,
                  MARK + 1.5,
                  -MARK - 1.5,
                  MARK + 1.5,
                  -MARK - 1.5,
                  -MARK - 1.5),
              "fill",
              "#ffffff",
              "stroke",
              INK,
              "stroke-width",
              "1.8");
      case FAILS -> {
        pen.segment(px - MARK, py - MARK, px + MARK, py + MARK, INK, "2", "");
        pen.segment(px - MARK, py + MARK, px + MARK, py - MARK, INK, "2", "");
      }
    }
  }

  private void axes() {
    pen.segment(LEFT, BOTTOM, RIGHT, BOTTOM, INK, "1.2", "");
    pen.segment(LEFT, TOP, LEFT, BOTTOM, INK, "1.2", "");
    double last = -100.0;
    for (Candidate c : answer.window().of().candidates()) {
      double at = x.at(c.size().mm());
      pen.segment(at, BOTTOM, at, BOTTOM + 7, INK, "1.6", "");
      if (at - last > 34.0) {
        pen.label(at, BOTTOM + 22, Say.number(c.size().mm(), 4), "middle", INK);
        last = at;
      }
    }
    String lever = answer.window().of().question().lever() + " [mm], ticks at realisable sizes";
    pen.label((LEFT + RIGHT) / 2, BOTTOM + 42, lever, "middle", INK);
    pen.upright(
        18,
        (TOP + BOTTOM) / 2,
        loadWords() + " [" + channel.shownUnit() + "]" + (y.log() ? ", log scale" : ""));
  }

  private void legend() {
    double row = BOTTOM + 72;
    pen.rect(LEFT, row - 11, 26, 13, NOMINAL);
    pen.label(LEFT + 34, row, "nominal window", "start", INK);
    pen.rect(LEFT + 168, row - 11, 26, 13, "url(#" + id + "-h)");
    pen.label(LEFT + 202, row, "sure window", "start", INK);
    pen.rect(LEFT + 314, row - 11, 26, 13, BAND);
    pen.segment(LEFT + 314, row - 4.5, LEFT + 340, row - 4.5, INK, "2", "");
    pen.label(LEFT + 348, row, "nominal with whole band", "start", INK);
    pen.segment(LEFT + 548, row - 4.5, LEFT + 576, row - 4.5, LIMIT, "1.8", "9 5");
    pen.label(LEFT + 584, row, "limit", "start", LIMIT);
    double next = row + 28;
    pen.label(LEFT, next, "realisable size:", "start", INK);
    mark(LEFT + 128, next - 5, Verdict.MEETS);
    pen.label(LEFT + 140, next, Verdict.MEETS.toString(), "start", INK);
    mark(LEFT + 206, next - 5, Verdict.NOT_DECIDABLE);
    pen.label(LEFT + 218, next, Verdict.NOT_DECIDABLE.toString(), "start", INK);
    mark(LEFT + 366, next - 5, Verdict.FAILS);
    pen.label(LEFT + 378, next, Verdict.FAILS.toString(), "start", INK);
  }
}
