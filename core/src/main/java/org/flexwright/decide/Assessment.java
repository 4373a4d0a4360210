package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.flexwright.evidence.Factors;
import org.flexwright.quantity.Length;

/** Everything found out about one size: the nominal case first, then the extremes of service. */
@SuppressWarnings("ArrayRecordComponent") // seen by this package only, never compared
record Assessment<P>(
    Length size,
    Optional<P> part,
    Optional<String> refusal,
    double printMargin,
    Factors factors,
    double[][] cholesky,
    List<CaseResult> cases) {

  /** A size for which no part exists. */
  static <P> Assessment<P> impossible(Length size, String why) {
    Factors none = Factors.none();
    return new Assessment<>(
        size,
        Optional.empty(),
        Optional.of(why),
        -Criterion.HOPELESS,
        none,
        none.choleskyOfCorrelation(),
        List.of());
  }

  boolean exists() {
    return part.isPresent();
  }

  double nominalMargin() {
    return cases.isEmpty() ? printMargin : Math.min(printMargin, cases.get(0).nominalMargin());
  }

  double sureMargin() {
    double least = printMargin;
    for (CaseResult c : cases) {
      least = Math.min(least, c.sureMargin(cholesky));
    }
    return least;
  }

  /** Margin of the demands that a placeholder does not hold open. */
  double sureMarginWithoutPlaceholders() {
    return sureMarginWith(UnaryOperator.identity());
  }

  /** The same with every demand changed, as by better knowledge. */
  double sureMarginWith(UnaryOperator<Criterion> change) {
    double least = printMargin;
    for (Criterion c : criteria()) {
      if (!c.placeholder()) {
        least = Math.min(least, change.apply(c).sureMargin(cholesky));
      }
    }
    return least;
  }

  /** What remains between the two limits of a load when the whole band is put there; least. */
  double slack() {
    double least = Criterion.HOPELESS;
    for (CaseResult each : cases) {
      for (Criterion a : each.criteria()) {
        for (Criterion b : each.criteria()) {
          if (a.faces(b)) {
            least = Math.min(least, a.sureMargin(cholesky) + b.sureMargin(cholesky));
          }
        }
      }
    }
    return least;
  }

  List<Criterion> criteria() {
    List<Criterion> all = new ArrayList<>();
    cases.forEach(c -> all.addAll(c.criteria()));
    return all;
  }

  Verdict verdict() {
    if (refusal.isPresent()) {
      return Verdict.FAILS;
    }
    for (Criterion c : criteria()) {
      if (c.surelyFails(cholesky)) {
        return Verdict.FAILS;
      }
    }
    return sureMargin() >= 0.0 ? Verdict.MEETS : Verdict.NOT_DECIDABLE;
  }

  /**
   * What stands nearest to failing: the refusal, else the demand with the least sure margin; a
   * placeholder is named only where no other demand is short.
   */
  String binds() {
    Comparator<Criterion> byMargin = Comparator.comparingDouble(c -> c.sureMargin(cholesky));
    return refusal.orElseGet(
        () ->
            criteria().stream()
                .filter(c -> !c.placeholder())
                .min(byMargin)
                .filter(c -> c.sureMargin(cholesky) < 0.0)
                .or(() -> criteria().stream().min(byMargin))
                .map(Criterion::name)
                .orElse("nothing"));
  }

  /** The share of cases that meet, for the nominal service and each extreme. */
  double[] probabilities() {
    double[] shares = new double[Math.max(1, cases.size())];
    for (int i = 0; i < cases.size() && refusal.isEmpty(); i++) {
      shares[i] = cases.get(i).probability(cholesky);
    }
    return shares;
  }
}
