package org.flexwright.grade;

import java.util.function.DoubleSupplier;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;

/** Printing processes as fields. */
final class ProcessText {

  private static final String PRINTING = "printing";
  private static final String MEASURED = "measured";
  private static final int DEEPEST = 16;

  private ProcessText() {}

  static void write(TextLines to, String key, PrintProcess process, int depth) {
    Require.that(
        depth <= DEEPEST, "measured processes", depth, "at most " + DEEPEST, "measure once");
    if (process instanceof Printing p) {
      to.word(key, PRINTING);
      length(to, key + ".bead", p.bead());
      length(to, key + ".smallest-wall", p.smallestWall());
      length(to, key + ".smallest-airtight", p.smallestAirtight());
      length(to, key + ".smallest-strut", p.smallestStrut());
      length(to, key + ".bias", p.bias());
      length(to, key + ".scatter", p.scatter());
      to.number(key + ".across-layers", p.acrossLayers(), "");
      to.number(key + ".stiffness-band", p.stiffnessBand(), "");
    } else if (process instanceof KnownProcess k) {
      to.word(key, MEASURED);
      length(to, key + ".bias", k.bias());
      length(to, key + ".scatter", k.scatter());
      to.number(key + ".stiffness-band", k.stiffnessBand(), "");
      write(to, key + ".of", k.of(), depth + 1);
    } else {
      Require.that(
          false,
          "process to be saved",
          process,
          "beads or continuous, with or without measured sizes",
          "save the grade before printedBy, and give it your own process after reading");
    }
  }

  private static void length(TextLines to, String key, Length length) {
    to.number(key, length.m(), "m");
  }

  private static Length length(TextFields from, String key) {
    return Length.m(from.number(key, "m"));
  }

  static PrintProcess read(TextFields from, String key, int depth) {
    String kind = from.word(key);
    if (depth > DEEPEST || !(kind.equals(PRINTING) || kind.equals(MEASURED))) {
      throw from.refuse(key, PRINTING + " or " + MEASURED + ", at most " + DEEPEST + " deep", "");
    }
    Length bias = length(from, key + ".bias");
    Length scatter = length(from, key + ".scatter");
    double band = from.number(key + ".stiffness-band", "");
    if (kind.equals(MEASURED)) {
      check(from, key + ".bias", () -> Require.notNegative("size bias", bias.m(), "m"));
      check(from, key + ".scatter", () -> Require.notNegative("size scatter", scatter.m(), "m"));
      check(
          from,
          key + ".stiffness-band",
          () -> Require.between("stiffness band of the print", band, 1.0, 10.0, ""));
      return new KnownProcess(read(from, key + ".of", depth + 1), bias, scatter, band);
    }
    Length bead = length(from, key + ".bead");
    Length wall = length(from, key + ".smallest-wall");
    Length airtight = length(from, key + ".smallest-airtight");
    Length strut = length(from, key + ".smallest-strut");
    double across = from.number(key + ".across-layers", "");
    return from.at(
        key, () -> new Printing(bead, wall, airtight, strut, bias, scatter, across, band));
  }

  private static void check(TextFields from, String key, DoubleSupplier demand) {
    from.at(key, demand::getAsDouble);
  }
}
