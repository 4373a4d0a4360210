package org.flexwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.apache.commons.math3.random.HaltonSequenceGenerator;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Text;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.run.Progress;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;

/**
 * Looks for the constants of a family: short descents from spread starts, the best ones to the end,
 * stable ones first. Not thread-safe.
 */
final class Search {

  private static final int DRAWS_PER_START = 20;
  private static final int POLISHED = 3;
  private static final double SAME = 1e-6;
  private static final double WIDE = 20.0;
  private static final double TINY_SINGULAR = 1e-10;

  /** The best constants found. */
  record Outcome(
      Descent.Point point,
      StrainEnergy law,
      Optional<String> instability,
      int starts,
      Termination termination) {}

  final StressModel model;
  private final LawFit settings;
  private final Reach reach;
  private final Descent coarse;
  private final Descent fine;

  Search(LawFit settings, FitData data) {
    this.settings = settings;
    model = new StressModel(settings.family(), data, settings.bounded());
    reach = new Reach(data.curves);
    coarse = new Descent(model, false);
    fine = new Descent(model, true);
  }

  Outcome run(RunControl control) {
    List<double[]> starts = starts();
    if (numbers() == 0 && model.linear()) {
      starts = starts.subList(0, 1);
      if (!settings.bounded()) {
        refuseIfNoLaw(starts.get(0));
      }
    }
    List<Descent.Point> found = new ArrayList<>();
    String task = "fit of " + model.family.name();
    Termination ending = Termination.completed();
    for (double[] start : starts) {
      control.progress(new Progress(task, (double) found.size() / starts.size()));
      if (!found.isEmpty() && control.stopRequested()) {
        ending = Termination.stopped(found.size() + " of " + starts.size() + " starts");
        break;
      }
      found.add(coarse.from(start));
    }
    Outcome best = best(found, ending);
    control.progress(new Progress(task, 1.0));
    return best;
  }

  private Outcome best(List<Descent.Point> found, Termination ending) {
    List<Descent.Point> sorted =
        found.stream().sorted(Comparator.comparingDouble(Descent.Point::cost)).toList();
    List<Descent.Point> chosen = new ArrayList<>(distinct(sorted));
    chosen.addAll(distinct(sorted.stream().filter(p -> unstable(p).isEmpty()).toList()));
    List<Outcome> ends = new ArrayList<>();
    for (Descent.Point each : chosen) {
      Descent.Point end = fine.from(each.x());
      if (Double.isFinite(end.cost())) {
        StrainEnergy law = model.family.law(model.values(end.x()));
        ends.add(new Outcome(end, law, reach.instability(law), found.size(), ending));
      }
    }
    return ends.stream()
        .min(
            Comparator.comparing((Outcome o) -> o.instability().isPresent())
                .thenComparingDouble(o -> o.point().cost()))
        .orElseThrow(this::noLaw);
  }

  private Optional<String> unstable(Descent.Point point) {
    return reach.instability(model.family.law(model.values(point.x())));
  }

  private static List<Descent.Point> distinct(List<Descent.Point> sorted) {
    List<Descent.Point> some = new ArrayList<>();
    for (Descent.Point each : sorted) {
      if (some.size() < POLISHED
          && (some.isEmpty() || each.cost() > (1.0 + SAME) * some.get(some.size() - 1).cost())) {
        some.add(each);
      }
    }
    return some;
  }

  private int numbers() {
    int count = 0;
    for (int i = 0; i < model.size; i++) {
      count += model.stress(i) ? 0 : 1;
    }
    return count;
  }

  /** Starts with a law at all points, spread evenly over the usual ranges. */
  private List<double[]> starts() {
    HaltonSequenceGenerator spread = new HaltonSequenceGenerator(model.size);
    spread.skipTo(1);
    List<double[]> starts = new ArrayList<>();
    int missed = 0;
    while (starts.size() < settings.starts() && missed < DRAWS_PER_START * settings.starts()) {
      // the usual ranges widen when they hold no law for these data
      double widened = Math.pow(2.0, 10.0 * missed / (DRAWS_PER_START * settings.starts()));
      double[] base = draw(spread.nextVector(), widened);
      if (!Double.isFinite(coarse.cost(base))) {
        missed++;
        continue;
      }
      if (starts.isEmpty()) {
        model.probeBounds(base);
        model.probeLinear(base);
      }
      starts.add(model.linear() ? withBestStresses(base) : base);
    }
    if (starts.isEmpty()) {
      throw noLaw();
    }
    return starts;
  }

  private InvalidInputException noLaw() {
    return new InvalidInputException(
        "fit of " + model.family.name(),
        "no law that reaches all points, " + settings.starts() + " starts",
        "curves that the family can follow",
        "look for a wrong unit, or leave out the largest stretches");
  }

  private double[] draw(double[] unit, double widened) {
    double[] x = new double[model.size];
    for (int i = 0; i < x.length; i++) {
      LawFamily.Constant constant = model.constants.get(i);
      double from = constant.usualLow();
      double to = constant.usualHigh();
      boolean logarithmic = from > 0.0 && to > WIDE * from;
      to += (to - from) * (widened - 1.0);
      if (!settings.bounded()) {
        // without bounds either sign may be the best
        double more = to - from;
        from -= more;
        to += more;
        logarithmic = false;
      }
      x[i] = logarithmic ? from * Math.pow(to / from, unit[i]) : from + (to - from) * unit[i];
      x[i] = model.clamp(i, x[i]);
    }
    return x;
  }

  /** The start with its stress constants from linear least squares, as far as the bounds let. */
  private double[] withBestStresses(double[] base) {
    double[] best = linearBest(base);
    boolean exact = !settings.bounded() && numbers() == 0;
    if (best.length == 0 || exact) {
      return best.length == 0 ? base : best;
    }
    for (double part = 1.0; part > 0.05; part *= 0.5) {
      double[] x = base.clone();
      for (int i = 0; i < x.length; i++) {
        x[i] = model.clamp(i, base[i] + part * (best[i] - base[i]));
      }
      if (Double.isFinite(coarse.cost(x))) {
        return x;
      }
    }
    return base;
  }

  /** Linear least squares for the stress constants, of least size where they are not unique. */
  private double[] linearBest(double[] base) {
    int[] columns = stressColumns();
    int n = model.data.size;
    double[][] a = new double[n][columns.length];
    if (n < columns.length || !model.basis(base, columns, a)) {
      return new double[0];
    }
    double[] b = new double[n];
    for (int k = 0; k < n; k++) {
      b[k] = model.data.target(k);
    }
    double[] norm = scaleColumns(a);
    SingularValueDecomposition svd =
        new SingularValueDecomposition(new Array2DRowRealMatrix(a, false));
    double[] y = new double[columns.length];
    for (int s = 0; s < columns.length; s++) {
      double singular = svd.getSingularValues()[s];
      if (singular > TINY_SINGULAR * svd.getSingularValues()[0]) {
        double part = svd.getU().getColumnVector(s).dotProduct(vector(b)) / singular;
        for (int c = 0; c < columns.length; c++) {
          y[c] += part * svd.getV().getEntry(c, s);
        }
      }
    }
    double[] x = base.clone();
    for (int c = 0; c < columns.length; c++) {
      x[columns[c]] = norm[c] == 0.0 ? base[columns[c]] : y[c] / norm[c];
    }
    return x;
  }

  private static RealVector vector(double[] b) {
    return new ArrayRealVector(b, false);
  }

  private int[] stressColumns() {
    boolean[] out = new boolean[model.size];
    for (int i = 0; i < model.size; i++) {
      out[i] = !model.stress(i);
    }
    return Descent.free(out);
  }

  /** Makes the columns of a matrix of length 1 in place, and gives their lengths. */
  static double[] scaleColumns(double[][] a) {
    double[] norm = new double[a[0].length];
    for (int c = 0; c < norm.length; c++) {
      double sum = 0.0;
      for (double[] row : a) {
        sum += row[c] * row[c];
      }
      norm[c] = Math.sqrt(sum);
      for (double[] row : a) {
        row[c] /= norm[c] == 0.0 ? 1.0 : norm[c];
      }
    }
    return norm;
  }

  private void refuseIfNoLaw(double[] x) {
    double[] values = model.values(x);
    try {
      model.family.law(values);
    } catch (InvalidInputException refused) {
      InvalidInputException told =
          new InvalidInputException(
              "unbounded least squares of " + model.family.name(),
              text(model.family, values) + shear(x),
              "constants that make a law (" + refused.sentence() + ")",
              "keep the bounds, or add curves of another deformation");
      told.initCause(refused);
      throw told;
    }
  }

  /** The shear modulus at rest, linear in the constants as the stress is, in words. */
  private String shear(double[] x) {
    double[] base = new double[model.size];
    for (int i = 0; i < base.length; i++) {
      base[i] = Math.max(model.step(i), 0.5);
    }
    try {
      double sum = 0.0;
      double at = model.family.law(model.values(base)).shearModulus();
      for (int i = 0; i < base.length; i++) {
        double[] more = base.clone();
        more[i] *= 2.0;
        sum += (model.family.law(model.values(more)).shearModulus() - at) * x[i] / base[i];
      }
      return ", shear modulus at rest " + Text.number(sum / 1e6) + " MPa";
    } catch (InvalidInputException refused) {
      return "";
    }
  }

  /** Constants with their names and units. */
  static String text(LawFamily family, double[] values) {
    List<String> words = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      LawFamily.Constant constant = family.constants().get(i);
      boolean stress = constant.kind() == LawFamily.Constant.Kind.STRESS;
      words.add(
          constant.name()
              + " "
              + Text.number(stress ? values[i] / 1e6 : values[i])
              + (stress ? " MPa" : ""));
    }
    return String.join(", ", words);
  }
}
