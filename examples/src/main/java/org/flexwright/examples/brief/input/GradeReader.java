package org.flexwright.examples.brief.input;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.flexwright.condition.Condition;
import org.flexwright.durability.LifeLaw;
import org.flexwright.durability.PowerLife;
import org.flexwright.evidence.Source;
import org.flexwright.grade.Feature;
import org.flexwright.grade.Grade;
import org.flexwright.grade.PrintProcess;
import org.flexwright.quantity.Length;

/** Reads the material, the printing process and what test prints have shown. */
record GradeReader(
    Basis basis,
    Grade grade,
    Optional<List<Length>> walls,
    Optional<List<Length>> struts,
    LifeLaw life) {

  private static final Length LEAST = Length.um(10.0);
  private static final Length MOST = Length.mm(100.0);

  static GradeReader of(Entry brief, BesideBrief beside) {
    MaterialReader material = MaterialReader.of(brief.child("material"), beside);
    Entry printing = brief.child("printing");
    Length bead = printing.length("bead", LEAST, MOST);
    Optional<List<Length>> walls = sizes(printing, "walls");
    Optional<List<Length>> struts = sizes(printing, "struts");
    printing.end();
    Grade grade = material.grade().printedBy(printing.make(() -> PrintProcess.beads(bead)));
    LifeLaw life = LifeLaw.generic();
    List<String> words = new ArrayList<>(material.words());
    if (brief.has("measured")) {
      Entry measured = brief.child("measured");
      grade = measured(measured, grade, words);
      life = life(measured);
      measured.end();
    }
    if (brief.has("service")) {
      Entry entry = brief.child("service");
      ServiceReader service = ServiceReader.of(entry, material.family());
      for (Condition condition : service.conditions()) {
        Grade before = grade;
        grade = entry.make(() -> before.under(condition));
      }
      service.words().forEach(w -> words.add("service of all parts: " + w));
    }
    boolean plain = material.reading().isPresent() && words.size() == 1;
    Basis basis = new Basis(material.reading(), material.curves(), plain ? List.of() : words);
    return new GradeReader(basis, grade, walls, struts, life);
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

  /** What test prints of this grade have shown, each entry optional. */
  private static Grade measured(Entry measured, Grade generic, List<String> words) {
    Grade grade = generic;
    if (measured.has("modulus")) {
      Entry modulus = measured.child("modulus");
      double ratio = modulus.number("ratio", 0.1, 10.0);
      double band = 1.0 + modulus.counted("within", "%", 0.0, 100.0) / 100.0;
      modulus.end();
      grade = grade.measuredModulus(ratio, band);
      words.add(Basis.scaled("test prints of the same process", ratio, band));
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
