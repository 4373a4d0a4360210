package org.flexwright.decide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Factor;
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
    double least = printMargin;
    for (Criterion c : criteria()) {
      if (!c.placeholder()) {
        least = Math.min(least, c.sureMargin(cholesky));
      }
    }
    return least;
  }

  /** The same with the scatter of one factor multiplied. */
  double sureMarginWith(Factor factor, double times) {
    double least = printMargin;
    for (Criterion c : criteria()) {
      if (!c.placeholder()) {
        least = Math.min(least, c.narrowed(factor, times).sureMargin(cholesky));
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

  /** What stands nearest to failing: the refusal, or the demand with the least sure margin. */
  String binds() {
    return refusal.orElseGet(
        () ->
            criteria().stream()
                .min(Comparator.comparingDouble(c -> c.sureMargin(cholesky)))
                .map(Criterion::name)
                .orElse("nothing"));
  }

  double probability() {
    return refusal.isPresent() ? 0.0 : cases.get(0).probability(cholesky);
  }

  double leastProbability() {
    return refusal.isPresent()
        ? 0.0
        : cases.stream().mapToDouble(c -> c.probability(cholesky)).min().orElse(0.0);
  }
}
