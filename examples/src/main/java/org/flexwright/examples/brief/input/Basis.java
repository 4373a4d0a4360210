package org.flexwright.examples.brief.input;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.fit.TestCurve;
import org.flexwright.hardness.HardnessReading;

/**
 * What the grade of a brief rests on.
 *
 * @param reading the hardness, if the grade was made from it
 * @param curves the measured curves, empty unless the grade was made from them
 * @param words what it rests on, in words; none for a hardness alone, which the grade itself names
 */
public record Basis(Optional<HardnessReading> reading, List<TestCurve> curves, List<String> words) {

  /** Keeps the lists from being changed. */
  public Basis {
    curves = List.copyOf(curves);
    words = List.copyOf(words);
  }

  /** What changes every stress alike, in words. */
  static String scaled(String what, double factor, double band) {
    return String.format(Locale.ROOT, "%s: every stress x %.3f, known x/ %.2f", what, factor, band);
  }
}
