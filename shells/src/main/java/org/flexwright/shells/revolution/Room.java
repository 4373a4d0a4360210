package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** Refuses meridians whose line or wall cannot exist, and says where. */
final class Room {

  private static final double TURN = Math.toRadians(4.0);
  private static final int LEAST = 16;
  private static final double SQUARE = 1e-6;
  private static final double FOLDED = 1e-9;

  private Room() {}

  private static int looks(Curve curve, double length) {
    return LEAST + (int) Math.min(1e5, Math.ceil(length * curve.sharpest() / TURN));
  }

  /** The line: above the axis, and across it where it ends on it. */
  static void checkLine(DrawnLine line) {
    int last = line.curves() - 1;
    for (int c = 0; c <= last; c++) {
      double from = line.start(c);
      double length = line.start(c + 1) - from;
      int n = looks(line.curve(c), length);
      for (int i = 0; i <= n; i++) {
        double s = i == n ? line.start(c + 1) : from + length * i / n;
        Spot at = line.at(c, s);
        boolean end = (c == 0 && i == 0) || (c == last && i == n);
        if (!(at.r() > 0.0)) { // words cost more than the looks, so only here
          checkAxis(line, c, s, at, end);
        }
      }
    }
  }

  private static void checkAxis(DrawnLine line, int c, double s, Spot at, boolean end) {
    Require.that(
        end && at.r() >= 0.0,
        "radius",
        Text.number(1e3 * at.r()) + " mm at " + line.place(c, s),
        "above 0 between the ends of the line",
        "keep the line off the axis");
    Require.that(
        Math.abs(Math.sin(at.angle())) <= SQUARE,
        "direction on the axis",
        Text.number(Math.toDegrees(at.angle())) + " deg at " + line.place(c, s),
        "straight across the axis, 0 or 180 deg",
        "end the line on the axis with toAxis() or with an arc about a centre on the axis");
  }

  private static String wall(Layer layer, Layer.Span span, double s) {
    String place = layer.line().place(span.curve(), s);
    return Text.number(1e3 * layer.thickness(span, s)) + " mm at " + place;
  }

  /** A side of the wall: not folded, not beyond the axis. */
  static void checkLayer(Layer layer) {
    DrawnLine line = layer.line();
    for (Layer.Span span : layer.spans()) {
      double length = span.to() - span.from();
      int n = looks(line.curve(span.curve()), length);
      for (int i = 0; i <= n; i++) {
        double s = i == n ? span.to() : span.from() + length * i / n;
        if (!(layer.squeeze(span, s) > FOLDED)) {
          double round = Math.abs(1.0 / line.at(span.curve(), s).curvature());
          throw new InvalidInputException(
              "wall",
              wall(layer, span, s),
              "one that leaves the inside of the fold a radius, with "
                  + Text.number(1e3 * round)
                  + " mm at the drawn face",
              "make the wall thinner or the fold rounder");
        }
        Spot at = layer.at(span, s);
        boolean onAxis = line.at(span.curve(), s).r() == 0.0;
        if (!(at.r() > 0.0) && !onAxis) {
          throw new InvalidInputException(
              "wall",
              wall(layer, span, s),
              "one that does not cross the axis",
              "make the wall thinner or draw the line farther out");
        }
      }
    }
  }

  /** An edge of the outline. */
  private record Edge(int number, Solid.Corner a, Solid.Corner b) {

    double low() {
      return Math.min(a.z(), b.z());
    }

    double high() {
      return Math.max(a.z(), b.z());
    }

    boolean crosses(Edge o) {
      if (Math.max(a.r(), b.r()) < Math.min(o.a.r(), o.b.r())
          || Math.max(o.a.r(), o.b.r()) < Math.min(a.r(), b.r())) {
        return false;
      }
      return side(a, b, o.a) * side(a, b, o.b) <= 0.0
          && side(o.a, o.b, a) * side(o.a, o.b, b) <= 0.0;
    }

    private static double side(Solid.Corner p, Solid.Corner q, Solid.Corner x) {
      double dr = q.r() - p.r();
      double dz = q.z() - p.z();
      return Math.signum(dr * (x.z() - p.z()) - dz * (x.r() - p.r()));
    }
  }

  /** The outline of the wall: no edge may meet another one. */
  static void checkCrossing(Solid solid, DrawnLine line) {
    List<Solid.Corner> outline = new ArrayList<>(solid.right(0.0, TURN));
    List<Solid.Corner> back = solid.left(0.0, TURN);
    for (int i = back.size() - 1; i >= 0; i--) {
      outline.add(back.get(i));
    }
    int n = outline.size();
    List<Edge> edges = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      edges.add(new Edge(i, outline.get(i), outline.get((i + 1) % n)));
    }
    edges.sort(Comparator.comparingDouble(Edge::low));
    for (int i = 0; i < n; i++) {
      Edge a = edges.get(i);
      for (int j = i + 1; j < n && edges.get(j).low() <= a.high(); j++) {
        Edge b = edges.get(j);
        int apart = Math.abs(a.number() - b.number());
        if (apart > 1 && apart < n - 1 && a.crosses(b)) {
          throw new InvalidInputException(
              "wall",
              "one that meets itself at "
                  + line.place(a.a().curve(), a.a().s())
                  + " and at "
                  + line.place(b.a().curve(), b.a().s()),
              "a wall that does not meet itself",
              "make the wall thinner or the line wider");
        }
      }
    }
  }
}
