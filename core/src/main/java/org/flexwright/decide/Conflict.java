package org.flexwright.decide;

import java.util.Comparator;
import java.util.List;
import org.flexwright.internal.Text;

/** Names the two demands between which no size is left. */
final class Conflict {

  private Conflict() {}

  static <P> String of(List<Assessment<P>> samples) {
    Assessment<P> nearest =
        samples.stream().max(Comparator.comparingDouble(Assessment::nominalMargin)).orElseThrow();
    if (!nearest.exists()) {
      return "no size makes a part: " + worst(nearest);
    }
    int at = samples.indexOf(nearest);
    String below = worst(samples.get(Math.max(0, at - 1)));
    String above = worst(samples.get(Math.min(samples.size() - 1, at + 1)));
    String miss = Text.percent(Math.exp(-nearest.nominalMargin()) - 1.0);
    String where = "; nearest at " + nearest.size() + ", short by " + miss;
    return below.equals(above)
        ? "no size meets: " + below + where
        : "no size meets both: " + below + " and " + above + where;
  }

  private static String worst(Assessment<?> a) {
    if (a.printMargin() <= a.nominalMargin()) {
      return a.refusal().orElse("the smallest size that prints");
    }
    return a.cases().get(0).criteria().stream()
        .filter(c -> !c.placeholder())
        .min(Comparator.comparingDouble(Criterion::headroom))
        .map(Criterion::name)
        .orElse("nothing");
  }
}
