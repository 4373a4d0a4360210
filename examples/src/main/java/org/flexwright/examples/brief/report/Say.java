package org.flexwright.examples.brief.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.flexwright.decide.Interval;

/** Numbers and words as text, the same in every locale. */
final class Say {

  private Say() {}

  /** A number with so many significant digits and no trailing zeros. */
  static String number(double value, int digits) {
    if (value == 0.0 || !Double.isFinite(value)) {
      return value == 0.0 ? "0" : Double.toString(value);
    }
    return new BigDecimal(value)
        .round(new MathContext(digits))
        .stripTrailingZeros()
        .toPlainString();
  }

  /** A number with so many decimals. */
  static String fixed(double value, int decimals) {
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  static String percent(double share) {
    return fixed(100.0 * share, 0) + " %";
  }

  static String windows(List<Interval> windows) {
    return windows.isEmpty()
        ? "none"
        : windows.stream().map(Interval::toString).collect(Collectors.joining(", "));
  }

  /** Plain ASCII: accents are dropped, what is left becomes a question mark. */
  static String ascii(String words) {
    return Normalizer.normalize(words, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .replaceAll("[^\\x20-\\x7e\\n]", "?");
  }

  /** The words with a capital first letter. */
  static String sentence(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
