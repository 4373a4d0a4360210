package org.flexwright.grade;

/** Lines of {@code key = value} as {@link TextFields} reads them. */
final class TextLines {

  private final StringBuilder text = new StringBuilder();

  void note(String words) {
    text.append("# ").append(escaped(words)).append('\n');
  }

  void word(String key, String value) {
    text.append(key).append(" = ").append(value).append('\n');
  }

  void text(String key, String value) {
    word(key, '"' + escaped(value) + '"');
  }

  void number(String key, double value, String unit) {
    word(key, number(value) + (unit.isEmpty() ? "" : " " + unit));
  }

  /** The shortest decimal that reads back to the same number. */
  static String number(double value) {
    if (Double.isNaN(value)) {
      return "not-a-number";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "infinity" : "-infinity";
    }
    return Double.toString(value);
  }

  private static String escaped(String plain) {
    StringBuilder out = new StringBuilder();
    for (int i = 0; i < plain.length(); i++) {
      char c = plain.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (isPlain(c)) {
        out.append(c);
      } else {
        String hex = Integer.toHexString(c);
        out.append("\\u").append("0".repeat(4 - hex.length())).append(hex);
      }
    }
    return out.toString();
  }

  private static boolean isPlain(char c) {
    return c == ' '
        || !(Character.isISOControl(c)
            || Character.isSurrogate(c)
            || Character.isWhitespace(c)
            || Character.isSpaceChar(c)
            || Character.getType(c) == Character.FORMAT
            || Character.getType(c) == Character.UNASSIGNED);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
