package org.flexwright.grade;

import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** What follows from a grade and its process together. */
final class GradeFigures {

  private static final double MOST_SIGMA = 3.0;

  private GradeFigures() {}

  static Pressure secantModulus(StrainEnergy law, double strain) {
    Require.notNegative("strain", strain, "");
    if (law instanceof HenckyCurve curve) {
      return Pressure.pa(curve.secant(strain));
    }
    if (strain < 1e-9) {
      return Pressure.pa(law.youngModulus());
    }
    return Deformation.UNIAXIAL.trueStress(law, Math.exp(strain)).times(1.0 / strain);
  }

  static Estimate<Pressure> modulusAt(Grade grade, double strain) {
    Pressure nominal = grade.secantModulus(strain);
    double end = Math.exp(Factors.COVERAGE * modulusSigma(grade));
    return new Estimate<>(
        nominal.times(1.0 / end),
        nominal,
        nominal.times(end),
        Estimate.Band.FACTORS,
        grade.sources(),
        grade.caveats());
  }

  static Factors factors(Grade grade, Length size) {
    return grade
        .materialFactors()
        .with(Factor.MODULUS, modulusSigma(grade))
        .with(Factor.SIZE_BIAS, relative(grade.process().bias(), size))
        .with(Factor.SIZE_SCATTER, relative(grade.process().scatter(), size));
  }

  private static double relative(Length halfBand, Length size) {
    return Math.min(MOST_SIGMA, halfBand.ratioTo(size) / Factors.COVERAGE);
  }

  /** The material's own and the printed stiffness of the process. */
  private static double modulusSigma(Grade grade) {
    return Math.hypot(
        grade.materialFactors().sigma(Factor.MODULUS),
        Math.log(grade.process().stiffnessBand()) / Factors.COVERAGE);
  }

  static String line(Grade grade) {
    return grade.name()
        + (grade.generic() ? " (generic)" : "")
        + ", E "
        + Text.number(grade.modulusAtRest().mpa())
        + " MPa at rest, "
        + Text.number(grade.secantModulus(0.1).mpa())
        + " MPa at 10 %, band x/ "
        + Text.number(Math.exp(Factors.COVERAGE * modulusSigma(grade)), 3)
        + ", "
        + grade.process();
  }
}
