package org.flexwright.fit;

import java.util.List;
import java.util.Locale;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/** The points of all curves as plain arrays, ready for the inner loop of a fit. Immutable. */
final class FitData {

  /** One megapascal, the unit of absolute residuals. */
  private static final double UNIT = 1e6;

  /** A stress of as many shear moduli is that of a locked law. */
  private static final double BEYOND = 1e30;

  final List<TestCurve> curves;

  /** The number of points. */
  final int size;

  /** A shear modulus of the size of that of the data, for scales. */
  final double shear;

  /** Where each curve starts, and the end. */
  private final int[] first;

  private final double[] l1;
  private final double[] l2;
  private final double[] l3;
  private final double[] ratio;
  private final double[] stress;
  private final double[] floored;
  private final double[] weight;

  FitData(List<TestCurve> curves, LawFit settings) {
    this.curves = List.copyOf(curves);
    Require.atLeast("test curves of a fit", curves.size(), 1);
    first = new int[curves.size() + 1];
    for (int c = 0; c < curves.size(); c++) {
      first[c + 1] = first[c] + curves.get(c).points().size();
    }
    size = first[curves.size()];
    l1 = new double[size];
    l2 = new double[size];
    l3 = new double[size];
    ratio = new double[size];
    stress = new double[size];
    floored = new double[size];
    weight = new double[size];
    double above = 0.0;
    double below = 0.0;
    for (int c = 0; c < curves.size(); c++) {
      fill(c, settings);
      double[] sums = slope(c);
      above += sums[0];
      below += sums[1];
    }
    shear = above / below;
  }

  private void fill(int c, LawFit settings) {
    TestCurve curve = curves.get(c);
    double most = 0.0;
    for (TestCurve.Point point : curve.points()) {
      most = Math.max(most, Math.abs(point.nominal().pa()));
    }
    Require.positive("greatest stress of the test curve " + curve.name(), most, "Pa");
    double share = curve.weight();
    if (settings.curvesAlike()) {
      share *= (double) size / (curves.size() * curve.points().size());
    }
    for (int i = first[c]; i < first[c + 1]; i++) {
      TestCurve.Point point = curve.points().get(i - first[c]);
      double[] l = curve.mode().stretches(point.stretch());
      l1[i] = l[0];
      l2[i] = l[1];
      l3[i] = l[2];
      ratio[i] = l[2] / l[0];
      stress[i] = point.nominal().pa();
      floored[i] = Math.max(Math.abs(stress[i]), settings.floor() * most);
      double scale = settings.weighting() == Weighting.RELATIVE ? floored[i] : UNIT;
      weight[i] = Math.sqrt(share) / scale;
    }
  }

  /** Sums whose ratio is the modulus of a neo-Hookean law through a curve. */
  private double[] slope(int c) {
    double above = 0.0;
    double below = 0.0;
    for (int i = first[c]; i < first[c + 1]; i++) {
      double share = (l1[i] - l3[i] * ratio[i]) / floored[i];
      above += share * stress[i] / floored[i];
      below += share * share;
    }
    TestCurve curve = curves.get(c);
    Require.that(
        below > 0.0,
        "stretches of the test curve " + curve.name(),
        Text.number(curve.points().get(0).stretch()),
        "a point away from rest",
        "");
    Require.that(
        above > 0.0,
        "stress of the test curve " + curve.name(),
        Pressure.pa(stress[first[c + 1] - 1]) + " at stretch " + Text.number(l1[first[c + 1] - 1]),
        "above 0 in tension and below 0 in compression",
        "turn the sign of the stresses, or check how the deformation is given");
    return new double[] {above, below};
  }

  /** Points away from rest, the only ones that say something. */
  int telling() {
    int count = 0;
    for (double l : l1) {
      count += l == 1.0 ? 0 : 1;
    }
    return count;
  }

  /** The nominal stresses of a law in pascals; false if one is beyond locking. */
  boolean stresses(StrainEnergy law, double[] work, double[] out) {
    boolean finite = true;
    for (int i = 0; i < size; i++) {
      law.gradient(l1[i], l2[i], l3[i], work);
      // direction 3 is free in all modes
      out[i] = work[0] - work[2] * ratio[i];
      finite &= Math.abs(out[i]) < BEYOND * shear;
    }
    return finite;
  }

  /** Turns stresses in place into weighted residuals. */
  void residuals(double[] stresses) {
    for (int i = 0; i < size; i++) {
      stresses[i] = (stresses[i] - stress[i]) * weight[i];
    }
  }

  /** The weight on the stress of a point. */
  double weight(int i) {
    return weight[i];
  }

  /** The measured stress of a point times its weight. */
  double target(int i) {
    return stress[i] * weight[i];
  }

  /** The length of the vector of weighted stresses. */
  double length() {
    double sum = 0.0;
    for (int i = 0; i < size; i++) {
      sum += target(i) * target(i);
    }
    return Math.sqrt(sum);
  }

  /** How far a law is off a curve. */
  CurveError error(int c, double[] modelled) {
    double square = 0.0;
    double relative = 0.0;
    double worst = 0.0;
    for (int i = first[c]; i < first[c + 1]; i++) {
      double off = modelled[i] - stress[i];
      square += off * off;
      relative += off / floored[i] * (off / floored[i]);
      worst = Math.max(worst, Math.abs(off) / floored[i]);
    }
    int count = first[c + 1] - first[c];
    TestCurve curve = curves.get(c);
    return new CurveError(
        curve.name(),
        curve.mode(),
        count,
        Pressure.pa(Math.sqrt(square / count)),
        Math.sqrt(relative / count),
        worst);
  }

  /** The modes of the curves in one word or two. */
  String modes() {
    return curves.stream()
        .map(curve -> curve.mode().name().toLowerCase(Locale.ROOT))
        .distinct()
        .reduce((a, b) -> a + " and " + b)
        .orElseThrow();
  }

  /** Whether all curves are of one mode, compression and tension apart. */
  boolean only(Deformation mode) {
    return curves.stream().allMatch(curve -> curve.mode() == mode);
  }
}
