package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;

/**
 * What two sides of a wall enclose when they are turned about the axis: right side forwards, left
 * side back, straight ends.
 */
final class Solid {

  private static final int POINTS = 10;
  private static final double TURN = 0.5;
  private static final int LOOKS = 33;
  private static final double SAME = 1e-12;

  /** A corner of the outline, and where it is on the drawn line. */
  record Corner(double r, double z, int curve, double s) {}

  private final Layer right;
  private final Layer left;

  Solid(Layer right, Layer left) {
    this.right = right;
    this.left = left;
  }

  /** Pi times the integral of r^2 dz round the outline. */
  double volume() {
    List<Corner> a = points(right, 0.0, TURN);
    List<Corner> b = points(left, 0.0, TURN);
    double ends = cone(a.get(a.size() - 1), b.get(b.size() - 1)) - cone(a.get(0), b.get(0));
    return Math.PI * (swept(right) + ends - swept(left));
  }

  private static double cone(Corner a, Corner b) {
    return (a.r() * a.r() + a.r() * b.r() + b.r() * b.r()) * (b.z() - a.z()) / 3.0;
  }

  private static double swept(Layer of) {
    double sum = 0.0;
    for (Layer.Span span : of.spans()) {
      double from = span.from();
      for (double joint : of.line().curve(span.curve()).joints()) {
        double s = of.line().start(span.curve()) + joint;
        if (s > from && s < span.to()) {
          sum += swept(of, span, from, s);
          from = s;
        }
      }
      sum += swept(of, span, from, span.to());
    }
    return sum;
  }

  private static double swept(Layer of, Layer.Span span, double from, double to) {
    double[] x = Gauss.points(POINTS);
    double[] w = Gauss.weights(POINTS);
    double sharpest = of.line().curve(span.curve()).sharpest();
    int n = 4 + (int) Math.ceil((to - from) * sharpest / TURN);
    double half = 0.5 * (to - from) / n;
    double sum = 0.0;
    for (int i = 0; i < n; i++) {
      double middle = from + half * (2 * i + 1);
      for (int g = 0; g < POINTS; g++) {
        double s = middle + half * x[g];
        Spot at = of.at(span, s);
        sum += half * w[g] * at.r() * at.r() * of.speed(span, s) * Math.sin(at.angle());
      }
    }
    return sum;
  }

  /** The right side, forwards, by chords that leave it by a tolerance at most, or turn so far. */
  List<Corner> right(double tolerance, double turn) {
    return points(right, tolerance, turn);
  }

  /** The left side, forwards. */
  List<Corner> left(double tolerance, double turn) {
    return points(left, tolerance, turn);
  }

  private static List<Corner> points(Layer of, double tolerance, double turn) {
    List<Corner> all = new ArrayList<>();
    double least = SAME * of.line().length();
    for (Layer.Span span : of.spans()) {
      int n = chords(of, span, tolerance, turn);
      for (int i = 0; i <= n; i++) {
        double s = i == n ? span.to() : span.from() + (span.to() - span.from()) * i / n;
        Spot at = of.at(span, s);
        boolean first = all.isEmpty();
        Corner last = first ? null : all.get(all.size() - 1);
        if (last == null || at.distance(last.r(), last.z()) > least) {
          all.add(new Corner(at.r(), at.z(), span.curve(), s));
        }
      }
    }
    return all;
  }

  /** Chords of a stretch; a tolerance of 0 counts by the turn alone. */
  private static int chords(Layer of, Layer.Span span, double tolerance, double turn) {
    double length = 0.0;
    double sharpest = 0.0;
    Spot before = of.at(span, span.from());
    double step = (span.to() - span.from()) / (LOOKS - 1);
    double total = 0.0;
    for (int i = 1; i < LOOKS; i++) {
      Spot at = of.at(span, span.from() + i * step);
      double chord = at.distance(before.r(), before.z());
      double by = Math.abs(at.angle() - before.angle());
      length += chord;
      total += by;
      sharpest = Math.max(sharpest, chord > 0.0 ? by / chord : 0.0);
      before = at;
    }
    if (total < SAME) {
      return 1;
    }
    double count = length * sharpest / turn;
    if (tolerance > 0.0) {
      count = Math.max(count, length * Math.sqrt(sharpest / (8.0 * tolerance)));
    }
    return (int) Math.max(1.0, Math.min(Math.ceil(count), 1e7));
  }
}
