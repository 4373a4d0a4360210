package org.flexwright.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.classical.Ogden;

/** Makes the evidence of a finished fit: errors, scatter of the constants, caveats. */
final class Evidence {

  static final Source SOURCE = Source.derived("least squares on the test curves");

  private static final int POINTS_PER_CONSTANT = 3;
  private static final double LOOK = 2.0;
  private static final double SMALL = 1e-3;

  private final LawFit fit;
  private final Search search;
  private final FitData data;
  private final Search.Outcome outcome;
  private final Reach reach;
  private final List<Caveat> caveats = new ArrayList<>();

  private Evidence(LawFit fit, Search search, FitData data, Search.Outcome outcome) {
    this.fit = fit;
    this.search = search;
    this.data = data;
    this.outcome = outcome;
    reach = new Reach(data.curves);
  }

  static FittedLaw of(LawFit fit, Search search, FitData data, Search.Outcome outcome) {
    Evidence evidence = new Evidence(fit, search, data, outcome);
    Identifiability known = evidence.identifiability();
    List<FittedLaw.Value> constants = evidence.constants(known);
    evidence.note(constants, known);
    return new FittedLaw(
        fit, outcome, constants, evidence.errors(), known, evidence.reach, evidence.caveats);
  }

  private Identifiability identifiability() {
    int[] free = Descent.free(outcome.point().held());
    StressModel model = search.model;
    double[] values = model.values(outcome.point().x());
    double[] size = new double[free.length];
    double[][] j = new double[data.size][free.length];
    model.jacobian(outcome.point().x().clone(), free, true, j);
    for (int c = 0; c < free.length; c++) {
      for (double[] row : j) {
        row[c] /= model.unit(free[c]);
      }
      size[c] = Math.max(Math.abs(values[free[c]]), SMALL * model.unit(free[c]));
    }
    int left = data.telling() - free.length;
    OptionalDouble variance =
        left > 0 ? OptionalDouble.of(outcome.point().cost() / left) : OptionalDouble.empty();
    return new Identifiability(
        fit.family().constants(), free, size, j, data.length(), variance, data.modes());
  }

  private List<FittedLaw.Value> constants(Identifiability known) {
    double[] values = search.model.values(outcome.point().x());
    List<FittedLaw.Value> constants = new ArrayList<>();
    for (int i = 0; i < values.length; i++) {
      LawFamily.Constant constant = fit.family().constants().get(i);
      constants.add(
          new FittedLaw.Value(
              constant,
              values[i],
              known.standardError(constant.name()),
              outcome.point().held()[i]));
    }
    return constants;
  }

  private List<CurveError> errors() {
    double[] stresses = new double[data.size];
    data.stresses(outcome.law(), new double[3], stresses);
    List<CurveError> errors = new ArrayList<>();
    for (int c = 0; c < data.curves.size(); c++) {
      errors.add(data.error(c, stresses));
    }
    return errors;
  }

  private void note(List<FittedLaw.Value> constants, Identifiability known) {
    outcome
        .instability()
        .ifPresent(
            where ->
                note(
                    "no stable law was found: this one is not stable in "
                        + where
                        + "; do not use it there"));
    StrainEnergy law = outcome.law();
    if (law.range().high() < reach.principal().high()) {
      note(
          "the range of the law itself ends before the data: "
              + law.range()
              + ", data to "
              + Text.number(reach.principal().high()));
    }
    singleMode(law);
    for (FittedLaw.Value each : constants) {
      if (each.atBound()) {
        note(
            each.constant().name()
                + " is held at its bound: the data would have it there or beyond");
      }
    }
    known.statements().forEach(this::note);
    if (data.telling() < POINTS_PER_CONSTANT * constants.size()) {
      note(data.telling() + " points for " + constants.size() + " constants are few");
    }
    if (!outcome.termination().complete()) {
      note("the search was " + outcome.termination().why());
    }
  }

  private void singleMode(StrainEnergy law) {
    Deformation mode = data.curves.get(0).mode();
    if (!data.only(mode)) {
      return;
    }
    note(
        "all tests are "
            + mode.name().toLowerCase(Locale.ROOT)
            + ": the behaviour in other deformations is not confirmed by a test");
    boolean negative =
        law instanceof Ogden ogden && ogden.terms().stream().allMatch(t -> t.alpha() < 0.0);
    if (mode == Deformation.UNIAXIAL && negative) {
      double times =
          Deformation.EQUIBIAXIAL.nominalStress(law, LOOK).pa()
              / Deformation.UNIAXIAL.nominalStress(law, LOOK).pa();
      note(
          "negative powers from uniaxial tests alone are not fit for inflation: at a stretch of 2"
              + " the equibiaxial stress is "
              + Text.number(times, 2)
              + " times the uniaxial one, rubber has about 1.1 to 1.5");
    }
  }

  private void note(String message) {
    caveats.add(Caveat.note("fit of " + fit.family().name(), message, SOURCE));
  }
}
