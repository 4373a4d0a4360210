package org.flexwright.grade;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.flexwright.condition.Condition;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.fit.CurveError;
import org.flexwright.fit.FittedLaw;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Length;

/** The mutable twin of a grade, never seen outside this package. */
final class GradeBuilder {

  /** What a curve law rests on until a biaxial test says more. */
  static final Caveat ONE_CURVE =
      Caveat.note(
          "Hencky-strain law",
          "one uniaxial curve serves every state of stretch until a biaxial test confirms it",
          Source.assumption("isotropic Hencky-type law"));

  final String name;
  StrainEnergy law;
  Density density = Density.gPerCm3(1.2);
  double poisson = 0.49;
  double strainAtBreak = 5.0;
  Factors factors = Factors.none().withBand(Factor.STRENGTH, 1.6);
  PrintProcess process = PrintProcess.continuous(Length.mm(0.3), Length.mm(0.3));
  boolean generic;
  List<Source> sources = new ArrayList<>();
  List<Caveat> caveats = new ArrayList<>();
  Set<Deformation> tested = EnumSet.noneOf(Deformation.class);

  GradeBuilder(String name, StrainEnergy law) {
    this.name = name;
    this.law = law;
  }

  /** The reservation of a grade whose strain at break nobody gave. */
  static Caveat breakAssumed(double strain) {
    return Caveat.note(
        "strain at break",
        "not given, " + Text.percent(strain) + " assumed; say it with strainAtBreak",
        Source.assumption("strain at break of a common polyurethane"));
  }

  GradeBuilder(Grade g) {
    this(g.name(), g.law());
    density = g.density();
    poisson = g.poisson();
    strainAtBreak = g.strainAtBreak(false);
    factors = g.materialFactors();
    process = g.process();
    generic = g.generic();
    sources = new ArrayList<>(g.sources());
    caveats = new ArrayList<>(g.caveats());
    tested.addAll(g.tested());
  }

  /** From a fit: nothing of its evidence is lost. */
  static GradeBuilder ofFit(String name, FittedLaw fitted) {
    GradeBuilder b = new GradeBuilder(name, fitted.inData());
    double rms = fitted.errors().stream().mapToDouble(CurveError::relative).max().orElse(0.0);
    double test = Math.log(MeasuredCurve.TEST) / Factors.COVERAGE;
    b.factors = b.factors.with(Factor.MODULUS, Math.hypot(test, Math.log1p(rms)));
    fitted.errors().forEach(e -> b.tested.add(e.mode()));
    b.sources.add(
        Source.derived(
            "least squares on the test curves "
                + fitted.errors().stream()
                    .map(CurveError::curve)
                    .distinct()
                    .collect(Collectors.joining(", "))));
    b.caveats.addAll(fitted.caveats());
    b.caveats.add(breakAssumed(b.strainAtBreak));
    return b;
  }

  /** Under a condition: its law, its band joined with that of the modulus, its words. */
  void under(Condition condition) {
    double band = Require.between("band of a condition", condition.band(), 1.0, 100.0, "");
    law = condition.apply(law);
    factors =
        factors.with(
            Factor.MODULUS,
            Math.hypot(factors.sigma(Factor.MODULUS), Math.log(band) / Factors.COVERAGE));
    sources.addAll(condition.sources());
    caveats.addAll(condition.caveats());
  }
}
