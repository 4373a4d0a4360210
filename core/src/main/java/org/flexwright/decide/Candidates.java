package org.flexwright.decide;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Mass;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
import org.flexwright.response.Response;
import org.flexwright.response.ScaledValue;

/** Makes the cells of a candidate's row. */
final class Candidates {

  private Candidates() {}

  static Candidate.Banded banded(ScaledValue v, Factors factors) {
    return new Candidate.Banded(v.channel(), v.low(factors), v.nominal(), v.high(factors));
  }

  static String life(Survival demand, ScaledValue strain) {
    if (demand.cycles() <= 1.0) {
      return "not asked";
    }
    double median = demand.law().medianCycles(strain.nominal());
    return Text.number(median, 2) + (demand.law().placeholder() ? " (placeholder)" : "");
  }

  /** The strain of the target that strains the part most. */
  static ScaledValue largestStrain(List<Response> responses) {
    return responses.stream()
        .map(Response::strain)
        .max(Comparator.comparingDouble(ScaledValue::nominal))
        .orElseThrow();
  }

  /** The caveats of nominal service, then those that only an extreme of service raises. */
  static Set<Caveat> caveats(Assessment<?> row) {
    Set<Caveat> all = new LinkedHashSet<>();
    Set<Caveat> known = new LinkedHashSet<>();
    for (int i = 0; i < row.cases().size(); i++) {
      for (Response r : row.cases().get(i).responses()) {
        for (Caveat c : r.caveats()) {
          if (i == 0) {
            all.add(c);
          } else if (!all.contains(c) && known.add(c)) {
            all.add(
                new Caveat(
                    c.model(),
                    "at an extreme of service, " + c.message(),
                    c.source(),
                    c.excursion()));
          }
        }
      }
    }
    return all;
  }

  static Candidate impossible(Assessment<?> row) {
    Candidate.Banded none = new Candidate.Banded(Channel.FORCE, 0.0, 0.0, 0.0);
    String why = row.refusal().orElse("the geometry cannot exist");
    return new Candidate(
        row.size(),
        none,
        new Candidate.Banded(Channel.STRAIN, 0.0, 0.0, 0.0),
        false,
        Verdict.FAILS,
        0.0,
        0.0,
        why,
        "no part",
        Volume.mm3(0.0),
        Mass.grams(0.0),
        List.of(Caveat.note("geometry", why, Source.derived("input check of the part"))));
  }
}
