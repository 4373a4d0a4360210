package org.flexwright.condition;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Temperature;

/** Ranges of temperature: what lies outside is taken to the end and said. */
final class Temperatures {

  /** Where laboratories test. */
  static final Temperature LABORATORY = Temperature.celsius(23);

  private Temperatures() {}

  static ValidityRange range(String model, Temperature from, Temperature to, Source source) {
    Require.that(
        from.compareTo(to) <= 0, "first temperature of " + model, from, "not above the last", "");
    return new ValidityRange(model, "temperature", from.celsius(), to.celsius(), "degC", source);
  }

  /** The temperature or the end that it passed, in degrees Celsius. */
  static double inside(ValidityRange range, Temperature t) {
    return Math.max(range.low(), Math.min(range.high(), t.celsius()));
  }

  static List<Caveat> outside(ValidityRange range, Temperature from, Temperature to) {
    List<Caveat> all = new ArrayList<>();
    range.check(from.celsius()).ifPresent(all::add);
    if (!to.equals(from)) {
      range.check(to.celsius()).ifPresent(all::add);
    }
    return all;
  }
}
