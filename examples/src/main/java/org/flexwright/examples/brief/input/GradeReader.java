package org.flexwright.examples.brief.input;

import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.durability.LifeLaw;
import org.flexwright.durability.PowerLife;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.quantity.Length;

/** Reads the material, the printing process and what test prints have shown. */
record GradeReader(
    HardnessReading reading,
    Grade grade,
    Optional<List<Length>> walls,
    Optional<List<Length>> struts,
    LifeLaw life) {

  private static final Length LEAST = Length.um(10.0);
  private static final Length MOST = Length.mm(100.0);

  static GradeReader of(Entry brief) {
    Entry material = brief.child("material");
    String family = material.oneOf("family", "polyurethane", "rubber");
    HardnessReading reading = hardness(material);
    material.end();
    Entry printing = brief.child("printing");
    Length bead = printing.length("bead", LEAST, MOST);
    Optional<List<Length>> walls = sizes(printing, "walls");
    Optional<List<Length>> struts = sizes(printing, "struts");
    printing.end();
    Grade grade =
        material.make(
            () -> family.equals("rubber") ? Grade.rubber(reading) : Grade.polyurethane(reading));
    grade = grade.printedBy(printing.make(() -> PrintProcess.beads(bead)));
    LifeLaw life = LifeLaw.generic();
    if (brief.has("measured")) {
      Entry measured = brief.child("measured");
      grade = measured(measured, grade);
      life = life(measured);
      measured.end();
    }
    return new GradeReader(reading, grade, walls, struts, life);
  }

  /** The sizes that can be made, if the brief lists them. */
  Optional<List<Length>> sizes(Feature.Kind kind) {
    return kind == Feature.Kind.STRUT ? struts : walls;
  }

  /** A size that stands in until one is chosen. */
  Length smallest(Feature.Kind kind) {
    return sizes(kind).map(Collections::min).orElseGet(() -> grade.process().smallest(kind));
  }

  private static Optional<List<Length>> sizes(Entry printing, String name) {
    return printing.has(name) ? Optional.of(printing.lengths(name, LEAST, MOST)) : Optional.empty();
  }

  private static HardnessReading hardness(Entry material) {
    String allowed = "a reading such as \"95 Shore A\" or \"46 Shore D\"";
    String words = material.text("hardness", allowed).toLowerCase(Locale.ROOT);
    boolean onD = words.endsWith("shore d");
    if (!onD && !words.endsWith("shore a")) {
      throw BriefException.at(material.path("hardness"), "is \"" + words + '"', allowed);
    }
    double points = material.counted("hardness", onD ? "Shore D" : "Shore A", 1.0, 99.0);
    double tolerance = material.counted("readingTolerance", "points", 0.0, 20.0);
    return onD ? new ShoreD(points, tolerance) : new ShoreA(points, tolerance);
  }

  /** What test prints of this grade have shown, each entry optional. */
  private static Grade measured(Entry measured, Grade generic) {
    Grade grade = generic;
    if (measured.has("modulus")) {
      Entry modulus = measured.child("modulus");
      double ratio = modulus.number("ratio", 0.1, 10.0);
      double band = 1.0 + modulus.counted("within", "%", 0.0, 100.0) / 100.0;
      modulus.end();
      grade = grade.measuredModulus(ratio, band);
    }
    if (measured.has("sizes")) {
      Entry sizes = measured.child("sizes");
      Length none = Length.mm(0.0);
      Length bias = sizes.length("bias", none, Length.mm(1.0));
      Length scatter = sizes.length("scatter", none, Length.mm(1.0));
      sizes.end();
      grade = grade.measuredSizes(bias, scatter);
    }
    return grade;
  }

  private static LifeLaw life(Entry measured) {
    if (!measured.has("life")) {
      return LifeLaw.generic();
    }
    Entry life = measured.child("life");
    double cycles = life.number("cycles", 1.0, 1e10);
    double strain = life.counted("strain", "%", 0.1, 500.0) / 100.0;
    double exponent = life.number("exponent", 1.0, 20.0);
    double band = life.number("factorEitherWay", 1.0, 1000.0);
    life.end();
    return PowerLife.measured(
        cycles, strain, exponent, band, Source.read("life measured on prints, as the brief says"));
  }
}
