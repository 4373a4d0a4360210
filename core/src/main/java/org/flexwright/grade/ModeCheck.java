package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.fit.TestCurve;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;

/**
 * Whether a law may be used in a deformation.
 *
 * <p>Formula: q = s(mode)/s_H, the true stress of the law over that of the curve law made from the
 * law's own tension, at the same equivalent strain. For one Ogden term in inflation q = l^-alpha:
 * 0.25 at stretch 2 for a neo-Hookean material, 8 for alpha = -3. Measured, vulcanised rubber
 * (Treloar 1944) and a silicone (Meunier et al. 2008) have q of 0.1 to 1 in inflation, so that even
 * the curve law (q = 1) is on the stiff side. Above 2 a law is not for that deformation unless it
 * was tested in it: a caveat, and a refusal where the law is known to rest on other deformations
 * alone and is above 2 at a stretch of 1.5 already.
 */
final class ModeCheck {

  private static final double STIFFEST = 2.0;
  private static final double JUDGED = 1.5;
  private static final int SAMPLES = 24;
  private static final double LEAST_END = 1.0 + 1e-9;

  private static final String NAME = "law of the grade";
  private static final Source SOURCE =
      Source.derived("Treloar 1944 and Meunier et al. 2008: inflation over tension");

  private ModeCheck() {}

  static List<Caveat> caveats(Grade grade, Deformation mode, double stretch) {
    Require.positive("stretch", stretch, "");
    List<Caveat> caveats = new ArrayList<>();
    outside(grade.law(), mode.stretches(stretch)).ifPresent(caveats::add);
    if (mode == Deformation.UNIAXIAL || grade.tested().contains(mode)) {
      return caveats;
    }
    refuse(grade, mode);
    double ratio = ratio(grade.law(), mode, stretch);
    if (ratio > STIFFEST) {
      caveats.add(
          Caveat.note(
              NAME,
              word(mode)
                  + " stress is "
                  + Text.number(ratio, 3)
                  + " of that of its own tension curve, measured elastomers have at most 1: test it"
                  + " in that deformation",
              SOURCE));
    }
    return caveats;
  }

  /** A law known to rest on other deformations is judged at one stretch, whatever the load. */
  private static void refuse(Grade grade, Deformation mode) {
    if (grade.tested().isEmpty()) {
      return;
    }
    double at = Math.min(JUDGED, grade.law().range().high());
    double ratio = ratio(grade.law(), mode, at);
    Require.that(
        ratio <= STIFFEST,
        "stress of " + grade.name() + " in " + word(mode) + " stretch " + Text.number(at),
        Text.number(ratio, 3) + " of that of its tension curve",
        () -> "at most 2, as the law was tested in " + words(grade) + " alone",
        "take Grade.ofCurve of the same test, or fit " + word(mode) + " data too");
  }

  private static String word(Deformation mode) {
    return mode.name().toLowerCase(Locale.ROOT);
  }

  private static String words(Grade grade) {
    return String.join(" and ", grade.tested().stream().sorted().map(ModeCheck::word).toList());
  }

  /** The caveat of the principal stretch that is farthest outside the range of the law. */
  private static Optional<Caveat> outside(StrainEnergy law, double[] stretches) {
    ValidityRange range = law.range().of(NAME);
    double worst = 1.0;
    double far = 0.0;
    for (double l : stretches) {
      double beyond = Math.max(Math.log(l / range.high()), Math.log(range.low() / l));
      if (!range.contains(l) && beyond > far) {
        far = beyond;
        worst = l;
      }
    }
    return range.check(worst);
  }

  private static double ratio(StrainEnergy law, Deformation mode, double stretch) {
    if (law instanceof HenckyCurve) {
      return 1.0;
    }
    double sum = 0.0;
    for (double l : mode.stretches(stretch)) {
      sum += Math.log(l) * Math.log(l);
    }
    double e = Math.sqrt(2.0 / 3.0 * sum);
    if (e < 1e-6) {
      return 1.0;
    }
    double share = mode == Deformation.PLANAR ? 2.0 / Math.sqrt(3.0) : 1.0;
    double curve = share * trueStress(law, Deformation.UNIAXIAL.stretches(Math.exp(e)));
    double own = trueStress(law, mode.stretches(stretch));
    // tension locks before inflation: the law is not on the stiff side; both locked are outside
    return Double.isFinite(curve) && Double.isFinite(own) ? Math.abs(own) / curve : 0.0;
  }

  /** The true stress of the first direction, the third free; not finite at locking. */
  private static double trueStress(StrainEnergy law, double[] l) {
    double[] g = new double[3];
    law.gradient(l[0], l[1], l[2], g);
    return l[0] * g[0] - l[2] * g[2];
  }

  /** The law sampled in a deformation, every principal stretch within its range. */
  static TestCurve sampled(Grade grade, Deformation mode) {
    StretchRange range = grade.law().range();
    // the stretch at which the thinnest direction leaves the range
    double thin =
        switch (mode) {
          case UNIAXIAL -> Math.pow(range.low(), -2.0);
          case EQUIBIAXIAL -> Math.pow(range.low(), -0.5);
          case PLANAR -> 1.0 / range.low();
        };
    double end = Math.min(Math.min(range.high(), thin), 1.0 + grade.strainAtBreak(false));
    Require.that(
        end > LEAST_END,
        "greatest stretch of " + grade.name() + " in " + word(mode),
        Text.number(end),
        "above 1",
        "the law or the strain at break leaves no curve");
    List<TestCurve.Point> points = new ArrayList<>();
    for (int i = 1; i <= SAMPLES; i++) {
      double stretch = i == SAMPLES ? end : Math.pow(end, (double) i / SAMPLES);
      points.add(TestCurve.at(stretch, mode.nominalStress(grade.law(), stretch)));
    }
    return TestCurve.of(grade.name(), mode, points);
  }
}
