package org.flexwright.condition;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/** Durations as seconds, and ranges of them. */
final class Times {

  private Times() {}

  static double seconds(Duration time) {
    return time.getSeconds() + 1e-9 * time.getNano();
  }

  static Duration duration(double seconds) {
    long whole = (long) Math.floor(seconds);
    return Duration.ofSeconds(whole, Math.round(1e9 * (seconds - whole)));
  }

  static double positive(String name, Duration time) {
    return Require.positive(name, seconds(time), "s");
  }

  static ValidityRange range(String model, double from, double to, Source source) {
    return new ValidityRange(model, "time under strain", from, to, "s", source);
  }

  static ValidityRange range(String model, Duration from, Duration to, Source source) {
    double low = positive("first time of the range", from);
    double high = positive("last time of the range", to);
    Require.that(low <= high, "first time of the range", show(from), "not after the last", "");
    return range(model, low, high, source);
  }

  /** The caveats of both values: each once. */
  static List<Caveat> outside(ValidityRange range, double from, double to) {
    List<Caveat> all = new ArrayList<>();
    range.check(from).ifPresent(all::add);
    if (to != from) {
      range.check(to).ifPresent(all::add);
    }
    return all;
  }

  /** Checks the ends of a span that is asked about. */
  static void check(double from, double to) {
    Require.positive("time of the known stress", from, "s");
    Require.positive("time of the stress asked for", to, "s");
  }

  static String show(Duration time) {
    return Text.number(seconds(time)) + " s";
  }
}
