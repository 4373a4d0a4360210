package org.flexwright.decide;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Mass;
import org.flexwright.quantity.Volume;
import org.flexwright.response.Channel;
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
