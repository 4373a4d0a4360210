package org.flexwright.internal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import org.flexwright.InvalidInputException;

/** Numbers as text, the same in every locale, and back. */
public final class Text {

  private static final MathContext FOUR_DIGITS = new MathContext(4);

  private Text() {}

  /**
   * A number with four significant digits and no trailing zeros.
   *
   * @param value the number
   * @return the text
   */
  public static String number(double value) {
    return number(value, FOUR_DIGITS);
  }

  /**
   * A number with a chosen count of significant digits and no trailing zeros.
   *
   * @param value the number
   * @param digits the significant digits, at least 1
   * @return the text
   */
  public static String number(double value, int digits) {
    return number(value, new MathContext(digits));
  }

  private static String number(double value, MathContext digits) {
    if (value == 0.0) {
      return "0";
    }
    if (!Double.isFinite(value)) {
      return value > 0 ? "unlimited" : Double.toString(value);
    }
    // the shortest decimal of the double, not its exact expansion of up to a thousand digits
    BigDecimal rounded = BigDecimal.valueOf(value).round(digits).stripTrailingZeros();
    int exponent = rounded.precision() - rounded.scale() - 1;
    return exponent > 6 || exponent < -5 ? rounded.toString() : rounded.toPlainString();
  }

  /**
   * A fraction as per cent, one decimal below 10.
   *
   * @param fraction the fraction
   * @return the text with its sign
   */
  public static String percent(double fraction) {
    double hundred = 100.0 * fraction;
    String pattern = Math.abs(hundred) < 9.95 ? "%.1f %%" : "%.0f %%";
    return String.format(Locale.ROOT, pattern, hundred);
  }

  /**
   * Lines of cells as a table with aligned columns.
   *
   * @param lines the lines, all with as many cells as the first
   * @return the table, lines ending in a line feed
   */
  public static String table(List<String[]> lines) {
    int columns = lines.get(0).length;
    int[] width = new int[columns];
    for (String[] line : lines) {
      for (int i = 0; i < columns; i++) {
        width[i] = Math.max(width[i], line[i].length());
      }
    }
    StringBuilder text = new StringBuilder();
    for (String[] line : lines) {
      StringBuilder row = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        row.append(line[i]).append(" ".repeat(width[i] - line[i].length() + 2));
      }
      text.append(row.toString().stripTrailing()).append('\n');
    }
    return text.toString();
  }

  static String unit(String unit) {
    return unit.isEmpty() ? "" : " " + unit;
  }

  /**
   * Splits "1.2 mm" into its number and its unit.
   *
   * @param name what is read, for the message
   * @param words the text
   * @param known the known units, for the message
   * @return number and unit
   */
  public static NumberAndUnit split(String name, String words, String known) {
    String trimmed = words.trim();
    int cut = 0;
    while (cut < trimmed.length() && isNumberPart(trimmed, cut)) {
      cut++;
    }
    String unit = trimmed.substring(cut).trim();
    try {
      double value = Double.parseDouble(trimmed.substring(0, cut).trim());
      return new NumberAndUnit(name, words, Require.finite(name, value, unit), unit, known);
    } catch (NumberFormatException e) {
      InvalidInputException refused =
          new InvalidInputException(
              name,
              quoted(words),
              "a number and a unit (" + known + ")",
              "write it like \"1.2 unit\"");
      refused.initCause(e);
      throw refused;
    }
  }

  private static boolean isNumberPart(String text, int at) {
    char c = text.charAt(at);
    if ((c >= '0' && c <= '9') || c == '.' || c == '+' || c == '-') {
      return true;
    }
    // an exponent letter counts only when a digit or a sign follows it
    return (c == 'e' || c == 'E')
        && at > 0
        && at + 1 < text.length()
        && (Character.isDigit(text.charAt(at + 1))
            || text.charAt(at + 1) == '-'
            || text.charAt(at + 1) == '+');
  }

  private static String quoted(String words) {
    return '"' + words + '"';
  }

  /**
   * A number and its unit as read from text.
   *
   * @param name what is read
   * @param words the whole text
   * @param value the number
   * @param unit the unit as written
   * @param known the known units
   */
  public record NumberAndUnit(String name, String words, double value, String unit, String known) {

    /**
     * The error for a unit that is not known.
     *
     * @return the exception to throw
     */
    public InvalidInputException unknownUnit() {
      return new InvalidInputException(
          name, quoted(words), "a number with one of the units " + known, "");
    }
  }
}
