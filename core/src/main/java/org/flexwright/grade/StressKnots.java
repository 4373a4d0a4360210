package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.internal.Require;
import org.flexwright.law.HenckyCurve;
import org.flexwright.quantity.Pressure;

/**
 * A rising curve of few points through a cloud of measured ones.
 *
 * <p>More than 24 points are first gathered in 24 bins, evenly spaced in ln e from 1 % strain (or
 * the first point) to the last; what lies below 1 % joins the first bin. A bin gives its least
 * squares secant sum(w e s)/sum(w e^2) at its mean strain. Neighbours whose stress does not rise
 * are then pooled to their weighted mean until it does (isotonic regression). The last knot is
 * carried along the last chord in ln s over ln e to the last strain, so that the range of the law
 * is that of the data.
 */
final class StressKnots {

  private static final int BINS = 24;
  private static final double REST = 0.01;
  private static final double RISE = 1.0 + 1e-9;

  /** A measured point or the mean of several. */
  record Knot(double strain, double stress, double weight) {

    Knot and(Knot other) {
      double w = weight + other.weight;
      return new Knot(
          (weight * strain + other.weight * other.strain) / w,
          (weight * stress + other.weight * other.stress) / w,
          w);
    }
  }

  private StressKnots() {}

  /** The law through points sorted by strain. */
  static HenckyCurve curve(String name, List<Knot> sorted) {
    List<Knot> knots = rising(sorted.size() > BINS ? binned(sorted) : sorted);
    Knot last = knots.get(knots.size() - 1);
    Require.that(
        last.stress > 0.0,
        "stress of " + name,
        Pressure.pa(last.stress),
        "one that rises with strain: positive in tension, negative in compression",
        "check the signs of the curve");
    if (knots.size() == 1) { // a straight line
      knots.add(0, new Knot(0.5 * last.strain, 0.5 * last.stress, last.weight));
    }
    double end = sorted.get(sorted.size() - 1).strain;
    double[] strain = new double[knots.size()];
    Pressure[] stress = new Pressure[strain.length];
    for (int i = 0; i < strain.length; i++) {
      strain[i] = knots.get(i).strain;
      stress[i] = Pressure.pa(knots.get(i).stress);
    }
    HenckyCurve curve = HenckyCurve.through(strain, stress);
    int n = strain.length - 1;
    if (end > strain[n] * RISE) {
      stress[n] = Pressure.pa(curve.stress(end));
      strain[n] = end;
      return HenckyCurve.through(strain, stress);
    }
    return curve;
  }

  private static List<Knot> binned(List<Knot> sorted) {
    double start = Math.max(REST, sorted.get(0).strain);
    double width = Math.log(sorted.get(sorted.size() - 1).strain / start) / BINS;
    List<Knot> knots = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= sorted.size(); i++) {
      if (i == sorted.size()
          || bin(sorted.get(i), start, width) != bin(sorted.get(from), start, width)) {
        knots.add(mean(sorted.subList(from, i)));
        from = i;
      }
    }
    return knots;
  }

  private static int bin(Knot k, double start, double width) {
    double at = Math.log(k.strain / start);
    return at <= 0.0 || !(width > 0.0) ? 0 : Math.min(BINS - 1, (int) (at / width));
  }

  private static Knot mean(List<Knot> bin) {
    double weight = 0.0;
    double first = 0.0;
    double square = 0.0;
    double product = 0.0;
    for (Knot k : bin) {
      weight += k.weight;
      first += k.weight * k.strain;
      square += k.weight * k.strain * k.strain;
      product += k.weight * k.strain * k.stress;
    }
    double strain = first / weight;
    return new Knot(strain, product / square * strain, weight);
  }

  private static List<Knot> rising(List<Knot> knots) {
    List<Knot> up = new ArrayList<>();
    for (Knot k : knots) {
      Knot top = k;
      while (!up.isEmpty() && !rises(up.get(up.size() - 1), top)) {
        top = up.remove(up.size() - 1).and(top);
      }
      up.add(top);
    }
    return up;
  }

  private static boolean rises(Knot a, Knot b) {
    return a.stress > 0.0 && b.stress > a.stress * RISE && b.strain > a.strain * (1.0 + 1e-6);
  }
}
