package org.flexwright.examples.brief.input;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.flexwright.InvalidInputException;
import org.flexwright.fit.TestCurve;
import org.flexwright.grade.Datasheet;
import org.flexwright.grade.Grade;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.law.Deformation;

/** Reads the material: by its hardness, by a datasheet or by measured curves. */
record MaterialReader(
    String family,
    Grade grade,
    Optional<HardnessReading> reading,
    List<TestCurve> curves,
    List<String> words) {

  private static final String READING = "a reading such as \"95 Shore A\" or \"46 Shore D\"";

  static MaterialReader of(Entry material, BesideBrief beside) {
    String family = material.oneOf("family", "polyurethane", "rubber");
    boolean curves = material.has("curves");
    boolean sheet = material.has("datasheet");
    boolean hardness = material.has("hardness");
    if (Stream.of(curves, sheet, hardness).filter(given -> given).count() > 1) {
      throw BriefException.at(
          material.path(),
          "has more than one of hardness, datasheet and curves",
          "one of them; a hardness inside the datasheet is compared with its figures");
    }
    if (!curves && !sheet && !hardness) {
      throw BriefException.at(
          material.path("hardness"), "is missing", READING + ", or a datasheet or curves instead");
    }
    MaterialReader read =
        curves
            ? byCurves(family, material, beside)
            : sheet ? bySheet(family, material) : byHardness(family, material);
    material.end();
    return read;
  }

  private static MaterialReader byHardness(String family, Entry material) {
    HardnessReading reading = hardness(material);
    Grade grade =
        material.make(
            () -> family.equals("rubber") ? Grade.rubber(reading) : Grade.polyurethane(reading));
    return new MaterialReader(
        family, grade, Optional.of(reading), List.of(), List.of("hardness alone, " + reading));
  }

  private static MaterialReader bySheet(String family, Entry material) {
    Datasheet sheet = SheetReader.read(material, name(material));
    String words = "datasheet of " + sheet;
    Grade grade = made(material.path("datasheet"), () -> Grade.ofDatasheet(sheet));
    return new MaterialReader(family, grade, Optional.empty(), List.of(), List.of(words));
  }

  private static MaterialReader byCurves(String family, Entry material, BesideBrief beside) {
    String name = name(material);
    List<TestCurve> curves = CurvesReader.read(material, beside);
    Grade grade =
        made(material.path("curves"), () -> Grade.ofCurve(name, curves.toArray(TestCurve[]::new)));
    List<String> words = new ArrayList<>();
    curves.forEach(c -> words.add("measured curve " + c));
    boolean tested = curves.stream().anyMatch(c -> c.mode() != Deformation.UNIAXIAL);
    words.add(
        "the parts work with the uniaxial stress curve; "
            + (tested ? "the other curves test it" : "no curve tests it in other deformations"));
    return new MaterialReader(family, grade, Optional.empty(), curves, words);
  }

  private static String name(Entry material) {
    return material.text("name", "a name for the report");
  }

  private static Grade made(String path, Supplier<Grade> maker) {
    try {
      return maker.get();
    } catch (InvalidInputException e) {
      throw BriefException.inside(path, e);
    }
  }

  static HardnessReading hardness(Entry material) {
    String words = material.text("hardness", READING).toLowerCase(Locale.ROOT);
    boolean onD = words.endsWith("shore d");
    if (!onD && !words.endsWith("shore a")) {
      throw BriefException.at(material.path("hardness"), "is \"" + words + '"', READING);
    }
    double points = material.counted("hardness", onD ? "Shore D" : "Shore A", 1.0, 99.0);
    double tolerance = material.counted("readingTolerance", "points", 0.0, 20.0);
    return onD ? new ShoreD(points, tolerance) : new ShoreA(points, tolerance);
  }
}
