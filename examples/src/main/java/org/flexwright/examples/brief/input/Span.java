package org.flexwright.examples.brief.input;

import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.flexwright.InvalidInputException;

/** A time as a brief writes it, such as "8 h". */
record Span(Duration time, String words) implements Comparable<Span> {

  private static final Map<String, Double> SECONDS =
      Map.of("s", 1.0, "min", 60.0, "h", 3600.0, "d", 86_400.0, "y", 365.25 * 86_400.0);
  private static final Pattern WORDS = Pattern.compile("(\\d{1,12}(?:\\.\\d{1,9})?) ?([a-z]{1,3})");
  private static final double NANO = 1e9;

  static Span parse(String words) {
    Matcher m = WORDS.matcher(words.strip());
    Double unit = m.matches() ? SECONDS.get(m.group(2)) : null;
    if (unit == null) {
      throw new InvalidInputException(
          "time", '"' + words + '"', "a number and one of s, min, h, d, y", "write \"8 h\"");
    }
    double seconds = Double.parseDouble(m.group(1)) * unit;
    long whole = (long) seconds;
    Duration time = Duration.ofSeconds(whole, Math.round(NANO * (seconds - whole)));
    return new Span(time, m.group(1) + " " + m.group(2));
  }

  @Override
  public int compareTo(Span other) {
    return time.compareTo(other.time);
  }

  @Override
  public String toString() {
    return words;
  }
}
