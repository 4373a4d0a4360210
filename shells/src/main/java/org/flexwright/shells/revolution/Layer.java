package org.flexwright.shells.revolution;

import static java.util.Arrays.stream;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer.Optimum;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.util.Pair;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Text;

/**
 * A line through the wall beside the drawn one, y = share t to its left, by the arc length of the
 * drawn one. At a corner it is mitred: cut where both sides meet, or drawn straight on until they
 * do.
 *
 * <p>With thickness t(s), curvature k and tangent angle f of the drawn line it runs along (1 - y k)
 * ds and across y' ds, at the angle f + atan(y'/(1 - y k)). Immutable.
 */
final class Layer {

  private static final double SHARPEST = Math.toRadians(150.0);
  private static final double CLOSE = 1e-9;

  /** A smooth stretch on one curve, by the arc length of the drawn line. */
  record Span(int curve, double from, double to) {

    double middle() {
      return 0.5 * (from + to);
    }
  }

  private final DrawnLine line;
  private final Wall wall;
  private final double share;
  private final Rigid rigid;
  private final List<Span> spans = new ArrayList<>();

  Layer(DrawnLine line, Wall wall, double share) {
    this(line, wall, share, Rigid.NONE);
  }

  /** A layer whose spans end at the borders of rigid stretches, too. */
  Layer(DrawnLine line, Wall wall, double share, Rigid rigid) {
    this.rigid = rigid;
    this.line = line;
    this.wall = wall;
    this.share = share;
    int n = line.curves();
    double[] from = new double[n];
    double[] to = new double[n];
    for (int i = 0; i < n; i++) {
      from[i] = line.start(i);
      to[i] = line.start(i + 1);
    }
    for (int i = 0; i < n - 1; i++) {
      if (line.turn(i) != 0.0 && share != 0.0) {
        mitre(i, from, to);
      }
    }
    for (int i = 0; i < n; i++) {
      if (!(to[i] > from[i])) {
        throw refused(i, "corners that eat up the piece between them");
      }
      split(i, from[i], to[i]);
    }
  }

  private InvalidInputException refused(int curve, String what) {
    double s = line.start(curve + 1);
    return new InvalidInputException(
        "wall",
        Text.number(1e3 * wall.thickness(s)) + " mm at " + line.place(curve, s) + ", with " + what,
        "a wall that finds room in the corner",
        "make the wall thinner, the pieces longer or the corner round");
  }

  private void mitre(int i, double[] from, double[] to) {
    double s = line.start(i + 1);
    double turn = line.turn(i);
    if (Math.abs(turn) > SHARPEST) {
      throw refused(i, "a corner of " + Text.number(Math.toDegrees(turn)) + " deg");
    }
    double back = share * wall.thickness(s) * Math.tan(0.5 * turn);
    double[] cut = {back, back};
    if (back > 0.0) {
      cut = meeting(i, s, back);
      double least = Math.min(line.curve(i).length() - cut[0], line.curve(i + 1).length() - cut[1]);
      if (!(least > 0.0)) {
        throw refused(i, "a corner that eats up a piece beside it");
      }
    }
    to[i] = s - cut[0];
    from[i + 1] = s + cut[1];
  }

  /** How far before and after a corner the two sides meet. */
  private double[] meeting(int i, double s, double guess) {
    double size = guess + wall.thickness(s);
    Span a = new Span(i, line.start(i), s);
    Span b = new Span(i + 1, s, line.start(i + 2));
    try {
      Optimum found =
          new LevenbergMarquardtOptimizer()
              .withCostRelativeTolerance(1e-14)
              .withParameterRelativeTolerance(1e-14)
              .withOrthoTolerance(1e-14)
              .optimize(
                  new LeastSquaresBuilder()
                      .start(new double[] {guess, guess})
                      .target(new double[2])
                      .model(x -> gap(a, b, s, x.getEntry(0), x.getEntry(1)))
                      .maxEvaluations(200)
                      .maxIterations(200)
                      .build());
      double[] cut = found.getPoint().toArray();
      if (found.getCost() <= CLOSE * size && cut[0] > 0.0 && cut[1] > 0.0) {
        return cut;
      }
    } catch (MathIllegalStateException e) {
      InvalidInputException no = refused(i, "sides that do not meet");
      no.initCause(e);
      throw no;
    }
    throw refused(i, "sides that do not meet");
  }

  private Pair<RealVector, RealMatrix> gap(Span a, Span b, double s, double back, double ahead) {
    Spot p = at(a, s - back);
    Spot q = at(b, s + ahead);
    double u = speed(a, s - back);
    double v = speed(b, s + ahead);
    double[][] slopes = {
      {-u * Math.cos(p.angle()), -v * Math.cos(q.angle())},
      {-u * Math.sin(p.angle()), -v * Math.sin(q.angle())}
    };
    return new Pair<>(
        new ArrayRealVector(new double[] {p.r() - q.r(), p.z() - q.z()}, false),
        new Array2DRowRealMatrix(slopes, false));
  }

  private void split(int curve, double from, double to) {
    double[] ends = {line.start(curve), line.start(curve + 1)};
    double[] more = rigid.borders(line.length());
    double[] breaks =
        DoubleStream.concat(stream(wall.breaks()), DoubleStream.concat(stream(ends), stream(more)))
            .sorted()
            .toArray();
    double last = from;
    double least = CLOSE * line.length();
    for (double s : breaks) {
      if (s > last + least && s < to - least) {
        spans.add(new Span(curve, last, s));
        last = s;
      }
    }
    spans.add(new Span(curve, last, to));
  }

  List<Span> spans() {
    return spans;
  }

  /** Whether a span lies in a rigid stretch. */
  boolean rigid(Span span) {
    return rigid.at(held(span, span.middle()));
  }

  /** Whether there is a rigid stretch at all. */
  boolean stiffened() {
    return !rigid.none();
  }

  /** Whether a stretch is on its curve, not drawn on straight from it. */
  private boolean on(Span span) {
    double s = span.middle();
    return s >= line.start(span.curve()) && s <= line.start(span.curve() + 1);
  }

  private double across(Span span, double s) {
    return on(span) ? share * wall.slope(s, span.middle()) : 0.0;
  }

  private double held(Span span, double s) {
    return Math.min(Math.max(s, line.start(span.curve())), line.start(span.curve() + 1));
  }

  /** How much of the drawn line's length is left here, 1 - y k; not above 0 where it folds. */
  double squeeze(Span span, double s) {
    double k = line.at(span.curve(), s).curvature();
    return on(span) ? 1.0 - share * thickness(span, s) * k : 1.0;
  }

  /** The thickness across the drawn line. */
  double thickness(Span span, double s) {
    return wall.thickness(held(span, s));
  }

  /** Length by length of the drawn line. */
  double speed(Span span, double s) {
    return Math.hypot(squeeze(span, s), across(span, s));
  }

  /** The angle to the drawn line. */
  double tilt(Span span, double s) {
    return Math.atan2(across(span, s), squeeze(span, s));
  }

  /** A point, its angle, and the curvature of the drawn line. */
  Spot at(Span span, double s) {
    Spot drawn = line.at(span.curve(), s);
    double y = share * thickness(span, s);
    double r = drawn.r() - y * Math.sin(drawn.angle());
    boolean onAxis = drawn.r() == 0.0;
    return new Spot(
        onAxis ? 0.0 : r,
        drawn.z() + y * Math.cos(drawn.angle()),
        drawn.angle() + tilt(span, s),
        drawn.curvature());
  }

  DrawnLine line() {
    return line;
  }

  Wall wall() {
    return wall;
  }
}
