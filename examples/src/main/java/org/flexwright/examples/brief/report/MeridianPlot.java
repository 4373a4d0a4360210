package org.flexwright.examples.brief.report;

import java.util.List;
import org.flexwright.examples.brief.answer.OnEngine;
import org.flexwright.quantity.Length;
import org.flexwright.shells.revolution.RevolvedShell;

/**
 * Draws the half section of a part of revolution, axis lying: the wall with its thickness at rest
 * above, at its load below, both to the same scale.
 */
final class MeridianPlot {

  private static final double LEFT = 40;
  private static final double WIDTH = 676;
  private static final double HEAD = 34;
  private static final double MOST = 200; // height of a section
  private static final double ROOM = 26; // above a section
  private static final double BETWEEN = 1.2; // least distance of two points of a line
  private static final String WALL = "#5d7f96";
  private static final String BORE = "#d9d9d9";
  private static final double[] BARS = {1.0, 2.0, 5.0, 10.0, 20.0, 50.0, 100.0};

  private final OnEngine engine;
  private final String id;
  private final Markup svg;
  private final Pen pen;
  private final double start; // height of the first end, mm
  private final double length; // mm
  private final double most; // largest radius drawn, mm
  private final double scale;

  private MeridianPlot(OnEngine engine, String id, Markup svg) {
    this.engine = engine;
    this.id = id;
    this.svg = svg;
    pen = new Pen(svg);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    double out = engine.shapes().bore().map(Length::mm).orElse(0.0);
    for (List<RevolvedShell.Across> wall :
        List.of(engine.shapes().rest(), engine.shapes().loaded())) {
      for (RevolvedShell.Across a : wall) {
        low = Math.min(low, Math.min(a.outerHeight().mm(), a.innerHeight().mm()));
        high = Math.max(high, Math.max(a.outerHeight().mm(), a.innerHeight().mm()));
        out = Math.max(out, Math.max(a.outerRadius().mm(), a.innerRadius().mm()));
      }
    }
    start = low;
    length = high - low;
    most = out;
    scale = Math.min(WIDTH / length, MOST / most);
  }

  /** Draws the sections into a page; the id must be unique on the page. */
  static void draw(OnEngine engine, String id, Markup page) {
    new MeridianPlot(engine, id, page).draw();
  }

  /** What the drawing shows, in one sentence. */
  static String caption(OnEngine e) {
    String ended =
        e.shapes().termination().complete()
            ? ""
            : " The run ended before: " + e.shapes().termination().why() + ".";
    return "Half section at size "
        + e.size()
        + ", true to scale: at rest, and loaded "
        + e.load()
        + " (the dashed outline is the wall at rest)."
        + ended;
  }

  private void draw() {
    double section = most * scale;
    double first = HEAD + section;
    double second = first + ROOM + HEAD + section;
    double height = second + 62;
    svg.open(
        "svg",
        "viewBox",
        "0 0 756 " + Say.fixed(height, 0),
        "role",
        "img",
        "aria-labelledby",
        id + "-t " + id + "-d");
    svg.leaf("title", "wall at rest and loaded " + engine.load(), "id", id + "-t");
    svg.leaf("desc", description(), "id", id + "-d");
    section("at rest", engine.shapes().rest(), first);
    section("loaded " + engine.load(), engine.shapes().loaded(), second);
    outline(engine.shapes().rest(), second, "none", "0.9", "4 3");
    bar(second + 44);
    svg.close();
  }

  private String description() {
    List<RevolvedShell.Across> rest = engine.shapes().rest();
    List<RevolvedShell.Across> loaded = engine.shapes().loaded();
    String bore = engine.shapes().bore().map(b -> "; the bore has a radius of " + b).orElse("");
    return "Half section of the wall along its axis. At rest it is "
        + figures(rest)
        + "; loaded "
        + engine.load()
        + " it is "
        + figures(loaded)
        + bore
        + ".";
  }

  private static String figures(List<RevolvedShell.Across> wall) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0.0;
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (RevolvedShell.Across a : wall) {
      least = Math.min(least, Math.min(a.innerRadius().mm(), a.outerRadius().mm()));
      most = Math.max(most, Math.max(a.innerRadius().mm(), a.outerRadius().mm()));
      low = Math.min(low, Math.min(a.innerHeight().mm(), a.outerHeight().mm()));
      high = Math.max(high, Math.max(a.innerHeight().mm(), a.outerHeight().mm()));
    }
    return Say.number(high - low, 3)
        + " mm long, its radii from "
        + Say.number(least, 3)
        + " mm to "
        + Say.number(most, 4)
        + " mm";
  }

  private double x(Length height) {
    return LEFT + scale * (height.mm() - start);
  }

  private static double y(double axis, double scale, Length radius) {
    return axis - scale * radius.mm();
  }

  private void section(String words, List<RevolvedShell.Across> wall, double axis) {
    pen.label(LEFT, axis - most * scale - 14, words, "start", Pen.INK);
    double right = LEFT + scale * length;
    engine
        .shapes()
        .bore()
        .ifPresent(
            b -> {
              double at = y(axis, scale, b);
              pen.rect(LEFT, at - 8, right - LEFT, 8, BORE);
              pen.segment(LEFT, at, right, at, Pen.INK, "1", "");
              pen.label(right, at - 14, "bore", "end", Pen.INK);
            });
    outline(wall, axis, WALL, "1", "");
    end(wall.get(0), axis, -5.0);
    end(wall.get(wall.size() - 1), axis, 0.0);
    pen.segment(LEFT - 14, axis, right + 14, axis, Pen.INK, "1", "14 4 3 4");
    pen.label(right + 14, axis + 16, "axis", "end", Pen.INK);
  }

  /** The solid that holds an end. */
  private void end(RevolvedShell.Across at, double axis, double shift) {
    double middle = 0.5 * (x(at.outerHeight()) + x(at.innerHeight()));
    double top = y(axis, scale, at.outerRadius());
    pen.rect(middle + shift, top, 5.0, axis - top, Pen.INK);
  }

  private void outline(
      List<RevolvedShell.Across> wall, double axis, String fill, String width, String dash) {
    StringBuilder path = new StringBuilder();
    double[] last = {Double.NaN, Double.NaN};
    for (RevolvedShell.Across a : wall) {
      point(path, last, x(a.outerHeight()), y(axis, scale, a.outerRadius()));
    }
    for (int i = wall.size() - 1; i >= 0; i--) {
      RevolvedShell.Across a = wall.get(i);
      point(path, last, x(a.innerHeight()), y(axis, scale, a.innerRadius()));
    }
    String d = path + "Z";
    if (!fill.equals("none")) {
      svg.empty("path", "d", d, "fill", fill);
    }
    pen.path(d, Pen.INK, width, dash);
  }

  private static void point(StringBuilder path, double[] last, double x, double y) {
    if (Math.hypot(x - last[0], y - last[1]) < BETWEEN) {
      return; // too near to the one before to be seen
    }
    path.append(path.length() == 0 ? "M" : "L").append(Pen.n(x)).append(' ').append(Pen.n(y));
    last[0] = x;
    last[1] = y;
  }

  /** A bar of a round length, about a fifth of the part. */
  private void bar(double at) {
    double bar = BARS[0];
    for (double b : BARS) {
      bar = b <= 0.3 * length ? b : bar;
    }
    double right = LEFT + bar * scale;
    pen.segment(LEFT, at, right, at, Pen.INK, "2", "");
    pen.segment(LEFT, at - 5, LEFT, at + 5, Pen.INK, "2", "");
    pen.segment(right, at - 5, right, at + 5, Pen.INK, "2", "");
    pen.label(right + 10, at + 5, Say.number(bar, 3) + " mm", "start", Pen.INK);
    pen.rect(right + 110, at - 6, 26, 12, WALL);
    pen.label(right + 144, at + 5, "wall", "start", Pen.INK);
    pen.rect(right + 204, at - 8, 5, 16, Pen.INK);
    pen.label(right + 217, at + 5, "solid end", "start", Pen.INK);
  }
}
