package org.flexwright.testing;

import java.util.Locale;
import java.util.regex.Pattern;

/** Numbers in text, the same under every locale. */
final class Numbers {
  private static final Pattern DECIMAL =
      Pattern.compile("[+-]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?");

  private Numbers() {}

  static double parse(String text) {
    if (!DECIMAL.matcher(text).matches()) {
      throw new IllegalArgumentException("'" + text + "' is no decimal number");
    }
    return Double.parseDouble(text);
  }

  static String brief(double value) {
    return String.format(Locale.ROOT, "%.2e", value);
  }

  /** Gives up to seven digits, plain where that is short. */
  static String readable(double value) {
    double size = Math.abs(value);
    if (size != 0 && (size < 1e-4 || size >= 1e7)) {
      return String.format(Locale.ROOT, "%.6e", value);
    }
    int before = size < 1 ? 1 : (int) Math.floor(Math.log10(size)) + 1;
    return String.format(Locale.ROOT, "%." + Math.max(0, 7 - before) + "f", value);
  }
}
