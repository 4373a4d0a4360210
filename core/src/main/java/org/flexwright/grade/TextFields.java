package org.flexwright.grade;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;

/** Lines of {@code key = value}, each asked for once; every error names its line and key. */
final class TextFields {

  static final int MOST_CHARACTERS = 4_000_000;

  private record Field(int line, String value) {}

  private final Map<String, Field> fields = new LinkedHashMap<>();
  private final Set<String> asked = new HashSet<>();
  private int lines;

  /** Splits a text into fields. */
  static TextFields of(String text) {
    Require.that(
        text.length() <= MOST_CHARACTERS,
        "length of the grade text",
        text.length() + " characters",
        "at most " + MOST_CHARACTERS,
        "this is no text of a grade");
    TextFields all = new TextFields();
    for (String line : text.split("\n", -1)) {
      all.lines++;
      String content = line.strip();
      if (all.lines == 1 && content.startsWith("\uFEFF")) {
        content = content.substring(1).strip();
      }
      if (!content.isEmpty() && content.charAt(0) != '#') {
        all.add(content);
      }
    }
    return all;
  }

  private void add(String content) {
    int equals = content.indexOf('=');
    if (equals <= 0) {
      throw refuse(lines, "", content, "key = value", "a note starts with #");
    }
    String key = content.substring(0, equals).strip();
    Field before = fields.put(key, new Field(lines, content.substring(equals + 1).strip()));
    if (before != null) {
      throw refuse(lines, key, "given again", "once, as in line " + before.line, "");
    }
  }

  private static InvalidInputException refuse(
      int line, String key, String value, String allowed, String advice) {
    String shown = value.length() <= 60 ? value : value.substring(0, 60) + "...";
    String name = key.length() <= 60 ? key : key.substring(0, 60) + "...";
    return new InvalidInputException(
        "line " + line + (name.isEmpty() ? "" : ", " + name),
        shown.isEmpty() ? "empty" : shown,
        allowed,
        advice);
  }

  InvalidInputException refuse(String key, String allowed, String advice) {
    Field field = fields.get(key);
    return field == null
        ? refuse(lines, key, "missing", allowed, advice)
        : refuse(field.line, key, field.value, allowed, advice);
  }

  /** Runs what may refuse the values under a key, and says the line. */
  <T> T at(String key, Supplier<T> make) {
    int line = fields.containsKey(key) ? fields.get(key).line : lines;
    try {
      return make.get();
    } catch (InvalidInputException e) {
      if (e.quantity().startsWith("line ")) {
        throw e;
      }
      InvalidInputException placed =
          new InvalidInputException(
              "line " + line + ", " + key + ": " + e.quantity(),
              e.value(),
              e.allowed(),
              e.advice());
      placed.initCause(e);
      throw placed;
    }
  }

  boolean has(String key) {
    return fields.containsKey(key);
  }

  /** The value of a key as written. */
  String word(String key) {
    Field field = fields.get(key);
    if (field == null) {
      throw refuse(key, "a line " + key + " = ...", "");
    }
    asked.add(key);
    return field.value;
  }

  /** A quoted text. */
  String text(String key) {
    String quoted = word(key);
    int end = quoted.length() - 1;
    if (end < 1 || quoted.charAt(0) != '"' || quoted.charAt(end) != '"') {
      throw refuse(key, "a text in double quotes", "");
    }
    StringBuilder plain = new StringBuilder();
    int i = 1;
    while (i < end) {
      char c = quoted.charAt(i);
      char next = i + 1 < end ? quoted.charAt(i + 1) : ' ';
      if (c != '"' && c != '\\') {
        plain.append(c);
        i++;
      } else if (c == '\\' && (next == '"' || next == '\\')) {
        plain.append(next);
        i += 2;
      } else if (c == '\\' && next == 'u') {
        plain.append(unit(key, quoted, i + 2, end));
        i += 6;
      } else {
        throw refuse(key, "\\\", \\\\ or \\u and four hex digits after \\, and no other quote", "");
      }
    }
    return plain.toString();
  }

  private char unit(String key, String quoted, int from, int end) {
    int code = 0;
    for (int i = from; i < from + 4; i++) {
      int digit = i < end ? Character.digit(quoted.charAt(i), 16) : -1;
      if (digit < 0) {
        throw refuse(key, "four hex digits after \\u", "");
      }
      code = 16 * code + digit;
    }
    return (char) code;
  }

  /** A finite number with its unit. */
  double number(String key, String unit) {
    double value = extended(key, unit);
    if (!Double.isFinite(value)) {
      throw refuse(key, "a finite number" + unit(unit), "");
    }
    return value;
  }

  /** A number that may be infinite or none at all. */
  double extended(String key, String unit) {
    String words = word(key);
    String digits = words;
    if (!unit.isEmpty()) {
      if (!words.endsWith(" " + unit)) {
        throw refuse(key, "a number" + unit(unit), "");
      }
      digits = words.substring(0, words.length() - unit.length() - 1).strip();
    }
    if (digits.equals("not-a-number")) {
      return Double.NaN;
    }
    if (digits.equals("infinity") || digits.equals("-infinity")) {
      return digits.charAt(0) == '-' ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
    }
    if (!digits.matches("[+-]?[0-9]{1,400}(\\.[0-9]{0,400})?([eE][+-]?[0-9]{1,5})?")) {
      throw refuse(key, "a number" + unit(unit), "write it like 1.25 or 1.25E6");
    }
    double value = Double.parseDouble(digits);
    if (Double.isInfinite(value)) {
      throw refuse(key, "a number" + unit(unit) + " below 1.8E308", "");
    }
    return value;
  }

  private static String unit(String unit) {
    return unit.isEmpty() ? "" : " and the unit " + unit;
  }

  /** A whole number from 0 to a limit. */
  int count(String key, int most) {
    String digits = word(key);
    int value = digits.matches("[0-9]{1,7}") ? Integer.parseInt(digits) : -1;
    if (value < 0 || value > most) {
      throw refuse(key, "a whole number from 0 to " + most, "");
    }
    return value;
  }

  /** Refuses a key that nobody asked for. */
  void done() {
    for (String key : fields.keySet()) {
      if (!asked.contains(key)) {
        throw refuse(key, "a key of a grade", "check its spelling, or read with its own reader");
      }
    }
  }
}
