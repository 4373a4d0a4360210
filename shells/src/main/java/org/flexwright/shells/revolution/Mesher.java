package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.internal.Require;

/**
 * Cuts the middle of a wall into elements graded by size.
 *
 * <p>Size at fineness 1: a sixth of the decay length sqrt(R t) with the hoop radius R = r/sin f (at
 * most the largest radius), a fortieth of the whole length, 5 degrees of turn, at ends, corners and
 * wall steps half a wall, in a step an eighth of it; a few per cent more where whole numbers of
 * elements ask for it. Sizes grow by {@link #GROWTH} at most from one element to the next.
 */
final class Mesher {

  static final double GROWTH = 1.3;
  private static final double SLOPE = 0.15; // exp(0.15) = 1.16
  private static final double LONGER = 1.07; // than asked for, so that rounding comes to rest
  private static final double DECAYS = 6.0;
  private static final double WHOLE = 40.0;
  private static final double TURN = Math.toRadians(5.0);
  private static final double EDGE = 0.5;
  private static final int IN_STEP = 8;
  private static final int LOOKS = 33;
  private static final int PER_ELEMENT = 8;
  private static final int MOST = 1_000_000;
  private static final int PASSES = 30;
  private static final int ROUNDS = 5;

  private final Layer middle;
  private final List<Layer.Span> spans; // to be graded together
  private final DrawnLine line;
  private final DrawnFace drawn;
  private final double fineness;
  private final double widest;
  private final double whole;

  /** Samples of one span: arc length of the drawn line, of the middle, size asked for. */
  private static final class Samples {
    final Layer.Span span;
    final double[] s;
    final double[] x;
    final double[] size;
    final double[] sum; // elements up to here
    int count;

    Samples(Layer.Span span, int n) {
      this.span = span;
      s = new double[n];
      x = new double[n];
      size = new double[n];
      sum = new double[n];
    }

    void integrate() {
      for (int i = 1; i < s.length; i++) {
        double mean = 0.5 * (1.0 / size[i - 1] + 1.0 / size[i]);
        sum[i] = sum[i - 1] + (x[i] - x[i - 1]) * mean;
      }
      count = Math.max(1, (int) Math.ceil(sum[s.length - 1] / LONGER));
    }

    double stretch() {
      return sum[s.length - 1] / count;
    }

    /** Values at equal shares of the count. */
    double[] cuts(double[] of) {
      double[] out = new double[count + 1];
      int last = s.length - 1;
      int j = 1;
      for (int k = 0; k <= count; k++) {
        double want = sum[last] * k / count;
        while (j < last && sum[j] < want) {
          j++;
        }
        double part = (want - sum[j - 1]) / (sum[j] - sum[j - 1]);
        out[k] = k == count ? of[last] : of[j - 1] + part * (of[j] - of[j - 1]);
      }
      return out;
    }
  }

  Mesher(Layer middle, DrawnFace drawn, double fineness) {
    this(middle, drawn, fineness, middle.spans());
  }

  private Mesher(Layer middle, DrawnFace drawn, double fineness, List<Layer.Span> spans) {
    this.middle = middle;
    this.spans = spans;
    this.drawn = drawn;
    this.fineness = Require.between("fineness of the mesh", fineness, 0.1, 32.0, "");
    line = middle.line();
    double most = 0.0;
    double sum = 0.0;
    for (Layer.Span span : spans) {
      Spot before = middle.at(span, span.from());
      for (int i = 1; i < LOOKS; i++) {
        Spot at = middle.at(span, part(span, i, LOOKS));
        sum += before.distance(at.r(), at.z());
        most = Math.max(most, at.r());
        before = at;
      }
    }
    widest = most;
    whole = sum;
  }

  private static double part(Layer.Span span, int i, int n) {
    return i == n - 1 ? span.to() : span.from() + (span.to() - span.from()) * i / (n - 1);
  }

  /** The graded mesh; each flexible stretch is cut as if it stood alone. */
  ShellMesh graded() {
    if (!middle.stiffened()) {
      return mesh(cuts());
    }
    double[][] cuts = new double[spans.size()][];
    int to;
    for (int from = 0; from < cuts.length; from = to) {
      boolean rigid = middle.rigid(spans.get(from));
      to = from + 1;
      while (to < cuts.length && middle.rigid(spans.get(to)) == rigid) {
        to++;
      }
      List<Layer.Span> run = spans.subList(from, to);
      if (rigid) {
        for (int i = from; i < to; i++) {
          cuts[i] = even(spans.get(i), 1 + turns(spans.get(i))).s;
        }
      } else {
        double[][] made = new Mesher(middle, drawn, fineness, run).cuts();
        System.arraycopy(made, 0, cuts, from, made.length);
      }
    }
    return mesh(cuts);
  }

  /** Elements of a rigid span, which only show its shape. */
  private int turns(Layer.Span span) {
    double turn = line.curve(span.curve()).sharpest() * (span.to() - span.from());
    return 1 + (int) Math.min(LOOKS, turn / TURN);
  }

  /** Where the spans are cut, graded by size. */
  private double[][] cuts() {
    List<Samples> all = new ArrayList<>();
    double x = 0.0;
    for (Layer.Span span : spans) {
      Samples made = samples(span, x);
      x = made.x[made.x.length - 1];
      all.add(made);
    }
    boolean done = settle(all);
    for (int round = 0; round < ROUNDS && (round == 0 || !done); round++) {
      all = again(all);
      done = settle(all);
    }
    double[][] cuts = new double[all.size()][];
    for (int i = 0; i < cuts.length; i++) {
      cuts[i] = all.get(i).cuts(all.get(i).s);
    }
    return cuts;
  }

  /** Sizes and counts that suit each other; whether the growth is kept. */
  private boolean settle(List<Samples> all) {
    limitEdges(all);
    for (int pass = 0; pass < PASSES; pass++) {
      smooth(all);
      for (Samples a : all) {
        a.integrate();
      }
      if (even(all)) {
        return true;
      }
      for (Samples a : all) {
        double by = Math.min(1.0, a.stretch());
        for (int i = 0; i < a.size.length; i++) {
          a.size[i] *= by;
        }
      }
    }
    return false;
  }

  /** New samples within the elements found. */
  private List<Samples> again(List<Samples> all) {
    List<Samples> out = new ArrayList<>();
    for (Samples a : all) {
      double[] cuts = a.cuts(a.s);
      int per = Math.max(PER_ELEMENT, LOOKS / a.count);
      Samples b = new Samples(a.span, per * a.count + 1);
      for (int i = 0; i < b.s.length - 1; i++) {
        double from = cuts[i / per];
        b.s[i] = from + (cuts[i / per + 1] - from) * (i % per) / per;
      }
      b.s[b.s.length - 1] = a.span.to();
      out.add(fill(b, a.x[0]));
    }
    return out;
  }

  private Samples samples(Layer.Span span, double x0) {
    Samples few = fill(even(span, LOOKS), x0);
    double least = edge(span, span.from());
    least = Math.min(least, edge(span, span.to()));
    for (double h : few.size) {
      least = Math.min(least, h);
    }
    double length = few.x[LOOKS - 1] - x0;
    int n = (int) Math.min(MOST, Math.max(LOOKS, PER_ELEMENT * length / least));
    Require.that(
        n < MOST,
        "mesh",
        "one of over a hundred thousand elements at " + line.place(span.curve(), span.from()),
        "a wall that is not so thin against the line",
        "lower the fineness or make the wall thicker");
    return fill(even(span, n), x0);
  }

  private static Samples even(Layer.Span span, int n) {
    Samples a = new Samples(span, n);
    for (int i = 0; i < n; i++) {
      a.s[i] = part(span, i, n);
    }
    return a;
  }

  private Samples fill(Samples a, double x0) {
    int n = a.s.length;
    Spot[] at = new Spot[n];
    a.x[0] = x0;
    for (int i = 0; i < n; i++) {
      at[i] = middle.at(a.span, a.s[i]);
      if (i > 0) {
        a.x[i] = a.x[i - 1] + at[i].distance(at[i - 1].r(), at[i - 1].z());
      }
    }
    for (int i = 0; i < n; i++) {
      int before = Math.max(0, i - 1);
      int after = Math.min(n - 1, i + 1);
      double turn = Math.abs(at[after].angle() - at[before].angle());
      double bend = turn / (a.x[after] - a.x[before]);
      a.size[i] = size(a.span, a.s[i], at[i], bend);
    }
    return a;
  }

  private double size(Layer.Span span, double s, Spot at, double bend) {
    double t = middle.thickness(span, s);
    double sine = Math.max(Math.abs(Math.sin(at.angle())), at.r() / widest);
    double hoop = at.r() == 0.0 ? widest : at.r() / sine;
    double size = Math.min(Math.sqrt(hoop * t) / DECAYS, whole / WHOLE);
    size = Math.min(size, TURN / bend);
    double step = middle.wall().blendAt(span.middle());
    if (step > 0.0) {
      size = Math.min(size, Math.min(EDGE * t, step / IN_STEP));
    }
    return size / fineness;
  }

  private double edge(Layer.Span span, double s) {
    return EDGE * middle.thickness(span, s) / fineness;
  }

  /** Half a wall at open ends, corners and wall steps. */
  private void limitEdges(List<Samples> all) {
    int ends = middle.spans().size() - 1;
    for (int i = 0; i < all.size(); i++) {
      Samples a = all.get(i);
      boolean first = i == 0;
      boolean last = i == all.size() - 1;
      int curve = a.span.curve();
      boolean startsSharp =
          first
              ? !(line.startsOnAxis() && a.span.equals(middle.spans().get(0)))
              : all.get(i - 1).span.curve() == curve || line.turn(curve - 1) != 0.0;
      boolean endsSharp =
          last
              ? !(line.endsOnAxis() && a.span.equals(middle.spans().get(ends)))
              : all.get(i + 1).span.curve() == curve || line.turn(curve) != 0.0;
      int end = a.size.length - 1;
      if (startsSharp) {
        a.size[0] = Math.min(a.size[0], edge(a.span, a.span.from()));
      }
      if (endsSharp) {
        a.size[end] = Math.min(a.size[end], edge(a.span, a.span.to()));
      }
    }
  }

  /** Lets no size grow faster than the slope from any other. */
  private static void smooth(List<Samples> all) {
    double size = Double.POSITIVE_INFINITY;
    double x = 0.0;
    for (Samples a : all) {
      for (int i = 0; i < a.size.length; i++) {
        size = Math.min(a.size[i], size + SLOPE * (a.x[i] - x));
        x = a.x[i];
        a.size[i] = size;
      }
    }
    for (int k = all.size() - 1; k >= 0; k--) {
      Samples a = all.get(k);
      for (int i = a.size.length - 1; i >= 0; i--) {
        size = Math.min(a.size[i], size + SLOPE * (x - a.x[i]));
        x = a.x[i];
        a.size[i] = size;
      }
    }
  }

  private static boolean even(List<Samples> all) {
    double before = 0.0;
    for (Samples a : all) {
      double[] x = a.cuts(a.x);
      for (int i = 1; i < x.length; i++) {
        double now = x[i] - x[i - 1];
        if (before > 0.0 && Math.max(now / before, before / now) > 0.99 * GROWTH) {
          return false;
        }
        before = now;
      }
    }
    return true;
  }

  /** The mesh through given places of each span, both ends with them. */
  ShellMesh mesh(double[][] cuts) {
    int elements = 0;
    for (double[] c : cuts) {
      elements += c.length - 1;
    }
    double[] radius = new double[elements + 1];
    double[] height = new double[elements + 1];
    double[] start = new double[elements];
    double[] end = new double[elements];
    double[] thickness = new double[elements];
    int[] piece = new int[elements];
    boolean[] rigid = new boolean[elements];
    int e = 0;
    for (int k = 0; k < cuts.length; k++) {
      Layer.Span span = middle.spans().get(k);
      Spot at = middle.at(span, cuts[k][0]);
      if (k == 0) {
        radius[0] = at.r();
        height[0] = at.z();
      }
      for (int i = 1; i < cuts[k].length; i++, e++) {
        double mid = 0.5 * (cuts[k][i - 1] + cuts[k][i]);
        // the wall curves as the drawn line does: where its thickness steps the middle bends
        // sharply, but no face does, and layers counted on that bend would fold over
        start[e] = at.angle() - middle.tilt(span, cuts[k][i - 1]);
        at = middle.at(span, cuts[k][i]);
        end[e] = at.angle() - middle.tilt(span, cuts[k][i]);
        radius[e + 1] = at.r();
        height[e + 1] = at.z();
        thickness[e] = middle.thickness(span, mid) * Math.cos(middle.tilt(span, mid));
        piece[e] = line.piece(span.curve());
        rigid[e] = middle.stiffened() && middle.rigid(span);
      }
    }
    return new ShellMesh(radius, height, start, end, thickness, piece, drawn, rigid);
  }
}
