package org.flexwright.grade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.fit.TestCurve;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;

/**
 * The curve law of measured curves, and how far it holds for those it was not made from.
 *
 * <p>Made from the uniaxial tension, or from compression if there is none. Every other branch and
 * mode is compared at the same stretch, from a tenth of its greatest stress on (below, a ratio
 * shows the resolution of the instrument) to the end of the law's data.
 */
final class MeasuredCurve {

  /** Band of one careful test: the section of a strip to 5 %, force and stretch to 3 % each. */
  static final double TEST = 1.1;

  private static final double LOWEST_SHARE = 0.1;
  private static final double FAR = 1.5;
  private static final double LATE_START = 0.03;
  private static final Source CURVES = Source.derived("comparison of the curves given");

  /**
   * How far the law holds for one branch or mode.
   *
   * @param what the branch or mode
   * @param ratio measured stress over that of the law, where they differ most
   * @param stretch the stretch there
   * @param goodTo the equivalent strain up to which all points are within the band of a test
   */
  record Comparison(String what, double ratio, double stretch, double goodTo) {

    double farthest() {
      return Math.max(ratio, 1.0 / ratio);
    }

    Caveat caveat() {
      String advice =
          farthest() > FAR ? "; fit a law to all curves where that state of stretch matters" : "";
      return Caveat.note(
          "Hencky-strain law",
          what
              + " over the law: within x/ 1.1 to an equivalent strain of "
              + Text.number(goodTo, 2)
              + ", farthest off "
              + Text.number(ratio, 3)
              + " at stretch "
              + Text.number(stretch)
              + advice,
          CURVES);
    }
  }

  private final String name;
  private final List<TestCurve> curves;
  private final List<StressKnots.Knot> tension;
  private final List<StressKnots.Knot> compression;
  private final boolean pulled;
  private final HenckyCurve law;

  MeasuredCurve(String name, List<TestCurve> curves) {
    this.name = name;
    this.curves = curves;
    tension = branch(true);
    compression = branch(false);
    pulled = tension.size() >= 2;
    Require.that(
        pulled || compression.size() >= 2,
        "uniaxial points of " + name,
        Math.max(tension.size(), compression.size()),
        "at least 2 on one side of stretch 1",
        "a grade is made from a uniaxial curve; other modes only test it");
    law = StressKnots.curve(name, pulled ? tension : compression);
  }

  private List<StressKnots.Knot> branch(boolean pull) {
    List<StressKnots.Knot> points = new ArrayList<>();
    for (TestCurve curve : curves) {
      if (curve.mode() == Deformation.UNIAXIAL) {
        for (TestCurve.Point p : curve.points()) {
          double e = Math.log(p.stretch()) * (pull ? 1.0 : -1.0);
          double s = p.nominal().pa() * p.stretch() * (pull ? 1.0 : -1.0);
          if (e > 1e-9) {
            points.add(new StressKnots.Knot(e, s, curve.weight()));
          }
        }
      }
    }
    points.sort(Comparator.comparingDouble(StressKnots.Knot::strain));
    return points;
  }

  HenckyCurve law() {
    return law;
  }

  /** Each branch or mode that the law was not made from and that its data reach. */
  List<Comparison> comparisons() {
    List<Comparison> all = new ArrayList<>();
    if (pulled) {
      List<TestCurve.Point> pressed = new ArrayList<>();
      curves.stream()
          .filter(c -> c.mode() == Deformation.UNIAXIAL)
          .flatMap(c -> c.points().stream())
          .filter(p -> p.stretch() < 1.0)
          .forEach(pressed::add);
      compare("compression", Deformation.UNIAXIAL, pressed, all);
    }
    for (TestCurve curve : curves) {
      if (curve.mode() != Deformation.UNIAXIAL) {
        String what =
            curve.mode().name().toLowerCase(Locale.ROOT) + " test \"" + curve.name() + '"';
        compare(what, curve.mode(), curve.points(), all);
      }
    }
    return all;
  }

  private void compare(
      String what, Deformation mode, List<TestCurve.Point> points, List<Comparison> into) {
    List<TestCurve.Point> inside =
        points.stream()
            .filter(p -> equivalent(mode, p) <= Math.log(law.range().high()) * (1.0 + 1e-12))
            .sorted(Comparator.comparingDouble(p -> equivalent(mode, p)))
            .toList();
    double most = inside.stream().mapToDouble(MeasuredCurve::stress).max().orElse(0.0);
    double worst = 1.0;
    double at = Double.NaN;
    double goodTo = 0.0;
    boolean good = true;
    for (TestCurve.Point p : inside) {
      if (stress(p) > 0.0 && stress(p) >= LOWEST_SHARE * most) {
        double ratio = p.nominal().ratioTo(mode.nominalStress(law, p.stretch()));
        if (Double.isNaN(at) || Math.abs(Math.log(ratio)) > Math.abs(Math.log(worst))) {
          worst = ratio;
          at = p.stretch();
        }
        good &= ratio <= TEST && ratio >= 1.0 / TEST;
        goodTo = good ? equivalent(mode, p) : goodTo;
      }
    }
    if (!Double.isNaN(at)) {
      into.add(new Comparison(what, worst, at, goodTo));
    }
  }

  /** The true stress of a point, positive if it has the sign of its strain. */
  private static double stress(TestCurve.Point p) {
    return p.nominal().pa() * p.stretch() * Math.signum(p.stretch() - 1.0);
  }

  private static double equivalent(Deformation mode, TestCurve.Point p) {
    double sum = 0.0;
    for (double l : mode.stretches(p.stretch())) {
      sum += Math.log(l) * Math.log(l);
    }
    return Math.sqrt(2.0 / 3.0 * sum);
  }

  /** The rms of ln(measured/law) of the points the law was made from. */
  double scatter() {
    List<StressKnots.Knot> points = pulled ? tension : compression;
    double least = LOWEST_SHARE * law.stress(points.get(points.size() - 1).strain());
    double sum = 0.0;
    int n = 0;
    for (StressKnots.Knot k : points) {
      if (k.stress() >= least) {
        double d = Math.log(k.stress() / law.stress(k.strain()));
        sum += d * d;
        n++;
      }
    }
    return n == 0 ? 0.0 : Math.sqrt(sum / n);
  }

  static GradeBuilder grade(String name, List<TestCurve> curves) {
    MeasuredCurve m = new MeasuredCurve(name, curves);
    GradeBuilder b = new GradeBuilder(name, m.law);
    List<Comparison> compared = m.comparisons();
    double sigma = Math.hypot(Math.log(TEST) / Factors.COVERAGE, m.scatter());
    double far = compared.stream().mapToDouble(Comparison::farthest).max().orElse(1.0);
    if (far > TEST) {
      sigma = Math.hypot(sigma, Math.log(far) / Factors.COVERAGE);
    }
    b.factors = b.factors.with(Factor.MODULUS, sigma);
    b.sources.add(
        Source.derived(
            "measured curves "
                + curves.stream().map(TestCurve::name).distinct().collect(Collectors.joining(", "))
                + "; x/ 1.1 for one test, widened by scatter and disagreement"));
    curves.forEach(c -> b.tested.add(c.mode()));
    compared.forEach(c -> b.caveats.add(c.caveat()));
    m.untested(b, compared);
    m.ends(b);
    return b;
  }

  private void untested(GradeBuilder b, List<Comparison> compared) {
    if (compared.stream().allMatch(c -> c.what().equals("compression"))) {
      b.caveats.add(GradeBuilder.ONE_CURVE);
    }
    if (!pulled || compression.isEmpty()) {
      String[] sides =
          pulled
              ? new String[] {"tension", "compression"}
              : new String[] {"compression", "tension"};
      b.caveats.add(
          Caveat.note(
              "Hencky-strain law",
              "measured in " + sides[0] + ", taken for " + sides[1] + " too",
              Source.assumption("isotropic Hencky-type law")));
    }
  }

  private void ends(GradeBuilder b) {
    double first = law.strains()[0];
    if (first > LATE_START) {
      b.caveats.add(
          Caveat.note(
              "stress curve of " + name,
              "begins at "
                  + Text.percent(first)
                  + ": straight below, so its modulus at rest is a"
                  + " secant",
              CURVES));
    }
    if (pulled) {
      b.strainAtBreak = Math.expm1(tension.get(tension.size() - 1).strain());
      b.caveats.add(
          Caveat.note(
              "strain at break",
              "taken as the last point of the curve, "
                  + Text.percent(b.strainAtBreak)
                  + "; say it with strainAtBreak if it broke elsewhere",
              CURVES));
    } else {
      b.caveats.add(GradeBuilder.breakAssumed(b.strainAtBreak));
    }
  }
}
