package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;

/**
 * Draws the lines, labels and marks that all plots share.
 *
 * @param svg what it draws into
 */
record Pen(Markup svg) {

  static final String INK = "#22313f";
  static final String ACCENT = "#8a2f4c";

  void rect(double left, double top, double width, double height, String fill) {
    svg.empty(
        "rect", "x", n(left), "y", n(top), "width", n(width), "height", n(height), "fill", fill);
  }

  void segment(
      double x1, double y1, double x2, double y2, String stroke, String width, String dash) {
    String[] place = {"x1", n(x1), "y1", n(y1), "x2", n(x2), "y2", n(y2)};
    stroked("line", place, stroke, width, dash);
  }

  /** An open path without filling. */
  void path(String d, String stroke, String width, String dash) {
    stroked("path", new String[] {"d", d, "fill", "none"}, stroke, width, dash);
  }

  private void stroked(String tag, String[] place, String stroke, String width, String dash) {
    List<String> all = new ArrayList<>(List.of(place));
    all.addAll(List.of("stroke", stroke, "stroke-width", width));
    if (!dash.isEmpty()) {
      all.addAll(List.of("stroke-dasharray", dash));
    }
    svg.empty(tag, all.toArray(String[]::new));
  }

  void label(double px, double py, String words, String anchor, String fill) {
    svg.leaf("text", words, "x", n(px), "y", n(py), "text-anchor", anchor, "fill", fill);
  }

  /** A label that is read from below to above. */
  void upright(double px, double py, String words) {
    svg.leaf(
        "text",
        words,
        "transform",
        "translate(" + Say.number(px, 4) + " " + n(py) + ") rotate(-90)",
        "text-anchor",
        "middle",
        "fill",
        INK);
  }

  /** A length on the page as text. */
  static String n(double value) {
    return Say.fixed(value, 1);
  }
}
