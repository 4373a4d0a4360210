package org.flexwright.testing;

import java.math.BigDecimal;
import java.util.Locale;

/**
 * How far a computed value may be from the published one.
 *
 * <p>Written {@code abs 0.01}, {@code rel 1e-6}, or {@code digits}: half a unit of the last printed
 * digit of the published value, {@code digits 2} being two such units.
 *
 * @param text as written
 * @param relative whether the bound is a share of the published value
 * @param bound the bound
 */
public record Tolerance(String text, boolean relative, double bound) {

  /** Reads a tolerance; the published value as printed gives the last digit. */
  public static Tolerance of(String text, String published) {
    String[] words = text.strip().split("\\s+", -1);
    boolean digits = words[0].equals("digits");
    if (words.length > 2 || words.length < (digits ? 1 : 2)) {
      throw new IllegalArgumentException("tolerance is '" + text + "', must be abs, rel or digits");
    }
    double number = words.length == 2 ? Numbers.parse(words[1]) : 0.5;
    if (!(number >= 0)) {
      throw new IllegalArgumentException("tolerance is '" + text + "', must not be negative");
    }
    return switch (words[0]) {
      case "abs" -> new Tolerance(text, false, number);
      case "rel" -> new Tolerance(text, true, number);
      case "digits" ->
          new Tolerance(text, false, number * new BigDecimal(published).ulp().doubleValue());
      default -> throw new IllegalArgumentException("tolerance is '" + text + "'");
    };
  }

  /** Gives the error in the terms of this tolerance. */
  public double error(double published, double computed) {
    double error = Math.abs(computed - published);
    return relative ? error / Math.abs(published) : error;
  }

  /** Tells whether a computed value is near enough; a published zero has no relative error. */
  public boolean holds(double published, double computed) {
    double scale = relative ? Math.abs(published) : 1;
    // A published decimal and a computed binary number may differ in the last place of a double.
    double slack = 4 * Math.ulp(published);
    return Math.abs(computed - published) <= bound * scale + slack;
  }

  @Override
  public String toString() {
    return text.startsWith("digits") ? String.format(Locale.ROOT, "abs %s", (float) bound) : text;
  }
}
