package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.StrainEnergy;

/**
 * Whether a law may be used in a deformation.
 *
 * <p>Formula: q = s(mode)/s_H, the true stress of the law over that of the curve law made from the
 * law's own tension, at the same equivalent strain. For one Ogden term in inflation q = l^-alpha:
 * 0.25 at stretch 2 for a neo-Hookean material, 8 for alpha = -3. Measured, vulcanised rubber
 * (Treloar 1944) and a silicone (Meunier et al. 2008) have q of 0.1 to 1 in inflation, so that even
 * the curve law (q = 1) is on the stiff side. Above 2 a law is not for that deformation unless it
 * was tested in it. Inflation is looked at as its uniaxial twin, l^-2 in compression.
 */
final class ModeCheck {

  static final double STIFFEST = 2.0;

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
    double ratio = ratio(grade.law(), mode, stretch);
    if (ratio > STIFFEST) {
      String name = mode.name().toLowerCase(Locale.ROOT);
      Require.that(
          grade.tested().isEmpty(),
          "stress of " + grade.name() + " in " + name + " stretch " + Text.number(stretch),
          Text.number(ratio, 3) + " of that of its tension curve",
          "at most 2, as the law was tested in " + words(grade) + " alone",
          "take Grade.ofCurve of the same test, or fit " + name + " data too");
      caveats.add(
          Caveat.note(
              NAME,
              name
                  + " stress is "
                  + Text.number(ratio, 3)
                  + " of that of its own tension curve, measured elastomers have at most 1: test it"
                  + " in that deformation",
              SOURCE));
    }
    return caveats;
  }

  private static String words(Grade grade) {
    return String.join(
        " and ",
        grade.tested().stream().sorted().map(d -> d.name().toLowerCase(Locale.ROOT)).toList());
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
    double curve = share * Deformation.UNIAXIAL.trueStress(law, Math.exp(e)).pa();
    return Math.abs(mode.trueStress(law, stretch).pa()) / curve;
  }
}
