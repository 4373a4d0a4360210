package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** The stretches of a drawn line along which the wall is taken as rigid. Immutable. */
final class Rigid {

  static final Rigid NONE = new Rigid(List.of());

  private static final double SAME = 1e-9;
  private static final double ROOM = 2.0 * BuiltIn.SET_BACK; // half of the walls' set-backs is left

  private record Stretch(double from, double to) {}

  private final List<Stretch> stretches; // in order and apart

  private Rigid(List<Stretch> stretches) {
    this.stretches = List.copyOf(stretches);
  }

  /** These and the pieces of a name. */
  Rigid with(DrawnLine line, String name) {
    Rigid all = this;
    for (Meridian.Piece p : Wall.called(line, name, "rigid stretch")) {
      all = all.with(line, p.from().m(), p.to().m());
    }
    return all;
  }

  /** These and a stretch by arc length; those that touch become one. */
  Rigid with(DrawnLine line, double from, double to) {
    double length = line.length();
    double near = SAME * length;
    Require.that(
        from >= -near && to <= length + near && to > from + near,
        "rigid stretch",
        Text.number(1e3 * from) + " to " + Text.number(1e3 * to) + " mm along the line",
        () -> "a stretch within 0 to " + Text.number(1e3 * length) + " mm",
        "");
    List<Stretch> all = new ArrayList<>(stretches);
    all.add(new Stretch(snapped(line, from), snapped(line, to)));
    all.sort(Comparator.comparingDouble(Stretch::from));
    List<Stretch> apart = new ArrayList<>();
    for (Stretch s : all) {
      int last = apart.size() - 1;
      if (last >= 0 && s.from() <= apart.get(last).to() + near) {
        Stretch p = apart.get(last);
        apart.set(last, new Stretch(p.from(), Math.max(p.to(), s.to())));
      } else {
        apart.add(s);
      }
    }
    return new Rigid(apart);
  }

  /** A place, moved onto a joint of curves if it is there but for rounding. */
  private static double snapped(DrawnLine line, double s) {
    for (int i = 0; i <= line.curves(); i++) {
      if (Math.abs(s - line.start(i)) <= SAME * line.length()) {
        return line.start(i);
      }
    }
    return s;
  }

  boolean none() {
    return stretches.isEmpty();
  }

  /** Whether a place, not a border, is in a rigid stretch. */
  boolean at(double s) {
    return stretches.stream().anyMatch(t -> s >= t.from() && s <= t.to());
  }

  /** Where rigid and flexible stretches meet. */
  double[] borders(double length) {
    return stretches.stream()
        .flatMapToDouble(t -> DoubleStream.of(t.from(), t.to()))
        .filter(s -> s > 0.0 && s < length)
        .toArray();
  }

  /** Refuses a line without anything flexible, and borders and stretches that make no sense. */
  void check(Layer middle) {
    DrawnLine line = middle.line();
    for (double s : borders(line.length())) {
      checkBorder(middle, s);
    }
    double at = 0.0;
    boolean flexible = false;
    for (Stretch t : stretches) {
      flexible |= checkRoom(middle, at, t.from());
      at = t.to();
    }
    flexible |= checkRoom(middle, at, line.length());
    Require.that(
        flexible,
        "rigid stretches",
        "all of the line, from piece 1 to piece " + line.pieces().size(),
        "ones that leave a part flexible",
        "leave the wall that shall give way out of them");
  }

  private static void checkBorder(Layer middle, double s) {
    DrawnLine line = middle.line();
    int curve = line.curveAt(s);
    double near = 2.0 * SAME * line.length();
    boolean joint = Math.abs(s - line.start(curve + 1)) <= near;
    boolean smooth = !joint || line.turn(curve) == 0.0;
    boolean there =
        middle.spans().stream().anyMatch(p -> p.from() != 0.0 && Math.abs(p.from() - s) <= near);
    Require.that(
        smooth && there,
        "border of a rigid stretch",
        "in a corner at " + line.place(curve, s),
        "a place where the line is smooth, beyond the room of the corner",
        "take the corner into the rigid stretch, as far as the solid reaches along the wall");
  }

  /** Whether there is a flexible stretch between two places; it must be longer than set-backs. */
  private static boolean checkRoom(Layer middle, double from, double to) {
    DrawnLine line = middle.line();
    if (to - from <= SAME * line.length()) {
      return false;
    }
    double length = 0.0;
    for (Layer.Span p : middle.spans()) {
      double a = Math.max(from, p.from());
      double b = Math.min(to, p.to());
      if (b > a) {
        length += (b - a) * middle.speed(p, 0.5 * (a + b));
      }
    }
    double walls = middle.wall().thickness(from) + middle.wall().thickness(to);
    double has = length;
    Require.that(
        has > ROOM * walls,
        "flexible stretch",
        Text.number(1e3 * has) + " mm at " + line.place(line.curveAt(0.5 * (from + to)), from),
        () -> "above " + Text.number(1e3 * ROOM * walls) + " mm, a fifth of the wall",
        "take it into the rigid stretch beside it or make it longer");
    return true;
  }
}
