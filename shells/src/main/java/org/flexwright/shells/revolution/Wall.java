package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Length;
import org.jspecify.annotations.Nullable;

/**
 * The wall along a drawn line: stretches of constant or linear thickness, smooth steps between them
 * (3 x^2 - 2 x^3). Immutable.
 */
final class Wall {

  private static final double SAME = 1e-9;

  /**
   * A zone as it was asked for; a later one covers earlier ones.
   *
   * @param name of the pieces it covers, or null for a stretch by arc length
   * @param from arc length where a stretch starts, m
   * @param to arc length where it ends, m
   * @param first thickness where it starts, m
   * @param last thickness where it ends, m
   */
  record Zone(@Nullable String name, double from, double to, double first, double last) {

    Zone times(double factor) {
      return new Zone(name, from, to, factor * first, factor * last);
    }
  }

  static Zone zone(String name, Length first, Length last) {
    String what = "wall of \"" + name + '"';
    Require.positive(what, first.m(), "m");
    Require.positive(what, last.m(), "m");
    return new Zone(name, 0.0, 0.0, first.m(), last.m());
  }

  static Zone zone(Length from, Length to, Length first, Length last) {
    Require.positive("wall of a stretch", first.m(), "m");
    Require.positive("wall of a stretch", last.m(), "m");
    return new Zone(null, from.m(), to.m(), first.m(), last.m());
  }

  /** A stretch of linear thickness. */
  private record Stretch(double from, double to, double first, double last) {

    double at(double s) {
      double x = Math.min(Math.max((s - from) / (to - from), 0.0), 1.0);
      return first + (last - first) * x;
    }

    /** The part of this stretch between two places. */
    Stretch cut(double a, double b) {
      return new Stretch(a, b, at(a), at(b));
    }

    boolean goesOnWith(Stretch next) {
      double mine = (last - first) / (to - from);
      double other = (next.last - next.first) / (next.to - next.from);
      return Math.abs(last - next.first) <= SAME * last && Math.abs(mine - other) <= SAME;
    }
  }

  private final List<Stretch> stretches;
  private final double[] blends; // length of the step before each stretch
  private final double length;

  /**
   * A wall.
   *
   * @param line the drawn line
   * @param usual thickness outside the zones
   * @param zones zones, later ones over earlier ones
   * @param blend length of the smooth steps; 0 for the thicker wall at each
   */
  Wall(DrawnLine line, double usual, List<Zone> zones, double blend) {
    length = line.length();
    List<Stretch> all = new ArrayList<>(List.of(new Stretch(0.0, length, usual, usual)));
    for (Zone zone : zones) {
      for (Stretch s : resolved(line, zone)) {
        all = covered(all, s);
      }
    }
    stretches = joined(all);
    blends = new double[stretches.size()];
    for (int i = 1; i < blends.length; i++) {
      blends[i] = step(line, stretches.get(i - 1), stretches.get(i), blend);
    }
  }

  private static List<Stretch> resolved(DrawnLine line, Zone zone) {
    String name = zone.name();
    List<Stretch> found = new ArrayList<>();
    if (name == null) {
      found.add(new Stretch(zone.from(), zone.to(), zone.first(), zone.last()));
    } else {
      for (Meridian.Piece p : called(line, name, "wall zone")) {
        found.add(new Stretch(p.from().m(), p.to().m(), zone.first(), zone.last()));
      }
    }
    for (Stretch s : found) {
      Require.that(
          s.from() >= 0.0 && s.to() <= line.length() * (1.0 + SAME) && s.to() > s.from(),
          "wall zone",
          Text.number(1e3 * s.from()) + " to " + Text.number(1e3 * s.to()) + " mm along the line",
          () -> "a stretch within 0 to " + Text.number(1e3 * line.length()) + " mm",
          "");
    }
    return found;
  }

  /** The pieces of a name, or a refusal that says for what. */
  static List<Meridian.Piece> called(DrawnLine line, String name, String what) {
    List<Meridian.Piece> found = line.pieces().stream().filter(p -> p.name().equals(name)).toList();
    if (found.isEmpty()) {
      TreeSet<String> names = new TreeSet<>();
      line.pieces().forEach(p -> names.add(p.name()));
      names.remove("");
      throw new InvalidInputException(
          what, '"' + name + '"', "one of the names " + names, "name a piece first");
    }
    return found;
  }

  private static List<Stretch> covered(List<Stretch> old, Stretch by) {
    List<Stretch> all = new ArrayList<>();
    double most = old.get(old.size() - 1).to();
    double from = by.from() < SAME * most ? 0.0 : by.from();
    double to = by.to() > most * (1.0 - SAME) ? most : by.to();
    for (Stretch s : old) {
      if (s.from() < from) {
        all.add(s.to() <= from ? s : s.cut(s.from(), from));
      }
    }
    all.add(new Stretch(from, to, by.first(), by.last()));
    for (Stretch s : old) {
      if (s.to() > to) {
        all.add(s.from() >= to ? s : s.cut(to, s.to()));
      }
    }
    return all;
  }

  private static List<Stretch> joined(List<Stretch> all) {
    List<Stretch> out = new ArrayList<>();
    for (Stretch s : all) {
      int last = out.size() - 1;
      if (last >= 0 && out.get(last).goesOnWith(s)) {
        Stretch p = out.get(last);
        out.set(last, new Stretch(p.from(), s.to(), p.first(), s.last()));
      } else {
        out.add(s);
      }
    }
    return List.copyOf(out);
  }

  private static double step(DrawnLine line, Stretch a, Stretch b, double asked) {
    double thick = Math.max(a.last(), b.first());
    if (Math.abs(a.last() - b.first()) <= SAME * thick) {
      return 0.0;
    }
    double room = Math.min(a.to() - a.from(), b.to() - b.from());
    if (asked == 0.0) {
      return Math.min(thick, room);
    }
    Require.that(
        asked <= room * (1.0 + SAME),
        "blend of the wall",
        Text.number(1e3 * asked) + " mm at " + line.place(line.curveAt(b.from()), b.from()),
        () -> "up to the shorter of the zones beside it, " + Text.number(1e3 * room) + " mm",
        "shorten the blend or lengthen the zone");
    return asked;
  }

  private int find(double s) {
    int i = 0;
    while (i < stretches.size() - 1 && s > stretches.get(i).to() + 0.5 * blends[i + 1]) {
      i++;
    }
    return i;
  }

  /** The thickness at an arc length; beyond the ends as at the ends. */
  double thickness(double s) {
    int i = find(s);
    Stretch here = stretches.get(i);
    if (i == stretches.size() - 1 || s <= here.to() - 0.5 * blends[i + 1]) {
      return here.at(s);
    }
    double x = (s - here.to()) / blends[i + 1] + 0.5;
    double t = here.at(s);
    return t + (stretches.get(i + 1).at(s) - t) * x * x * (3.0 - 2.0 * x);
  }

  /**
   * The slope of the thickness.
   *
   * @param s arc length
   * @param near a place on the same smooth part, which tells the side at a kink
   */
  double slope(double s, double near) {
    if (near < 0.0 || near > length) {
      return 0.0;
    }
    int i = find(near);
    Stretch here = stretches.get(i);
    double own = (here.last() - here.first()) / (here.to() - here.from());
    if (i == stretches.size() - 1 || near <= here.to() - 0.5 * blends[i + 1]) {
      return own;
    }
    Stretch next = stretches.get(i + 1);
    boolean before = near <= here.to();
    double x = (s - here.to()) / blends[i + 1] + 0.5;
    double a = before ? own : 0.0;
    double b = before ? 0.0 : (next.last() - next.first()) / (next.to() - next.from());
    double rise = next.at(s) - here.at(s);
    return a + (b - a) * x * x * (3.0 - 2.0 * x) + rise * 6.0 * x * (1.0 - x) / blends[i + 1];
  }

  /** Where the thickness is not smooth: ends and middle of the steps, kinks. */
  double[] breaks() {
    TreeSet<Double> at = new TreeSet<>();
    for (int i = 1; i < blends.length; i++) {
      double s = stretches.get(i).from();
      at.add(s);
      at.add(s - 0.5 * blends[i]);
      at.add(s + 0.5 * blends[i]);
    }
    return at.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /**
   * A step between two stretches.
   *
   * @param at arc length of its middle
   * @param blend its length
   * @param before thickness before it
   * @param after thickness after it
   */
  record Step(double at, double blend, double before, double after) {}

  /** The steps in order. */
  List<Step> steps() {
    List<Step> all = new ArrayList<>();
    for (int i = 1; i < blends.length; i++) {
      if (blends[i] > 0.0) {
        Stretch b = stretches.get(i);
        all.add(new Step(b.from(), blends[i], stretches.get(i - 1).last(), b.first()));
      }
    }
    return all;
  }

  /** The length of the smooth step at a place, or 0. */
  double blendAt(double s) {
    for (int i = 1; i < blends.length; i++) {
      if (Math.abs(s - stretches.get(i).from()) < 0.5 * blends[i]) {
        return blends[i];
      }
    }
    return 0.0;
  }

  /** This wall along the pieces of a name, times a factor, as zones. */
  List<Zone> scaled(DrawnLine line, String name, double factor) {
    List<Zone> zones = new ArrayList<>();
    for (Meridian.Piece p : called(line, name, "wall zone")) {
      for (Stretch s : stretches) {
        double a = Math.max(p.from().m(), s.from());
        double b = Math.min(p.to().m(), s.to());
        if (b > a) {
          zones.add(new Zone(null, a, b, factor * s.at(a), factor * s.at(b)));
        }
      }
    }
    return zones;
  }
}
