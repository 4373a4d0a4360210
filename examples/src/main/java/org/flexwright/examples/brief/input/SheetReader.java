package org.flexwright.examples.brief.input;

import java.util.function.Supplier;
import org.flexwright.InvalidInputException;
import org.flexwright.grade.Datasheet;
import org.flexwright.quantity.Density;
import org.flexwright.quantity.Pressure;

/** Reads the figures of a datasheet. */
final class SheetReader {

  private static final Pressure LEAST = Pressure.kpa(1.0);
  private static final Pressure MOST = Pressure.mpa(10_000.0);
  private static final Density LIGHTEST = Density.kgPerM3(100.0);
  private static final Density HEAVIEST = Density.kgPerM3(5000.0);

  private SheetReader() {}

  static Datasheet read(Entry material, String name) {
    Entry entry = material.child("datasheet");
    Datasheet sheet = Datasheet.of(name);
    for (String kind : new String[] {"flexural", "tensile"}) {
      if (entry.has(kind)) {
        sheet = modulus(sheet, entry.child(kind), kind.equals("flexural"));
      }
    }
    if (entry.has("stresses")) {
      for (Entry stress : entry.objects("stresses")) {
        sheet = stress(sheet, stress, false);
      }
    }
    if (entry.has("strength")) {
      sheet = stress(sheet, entry.child("strength"), true);
    }
    if (entry.has("hardness")) {
      sheet = sheet.hardness(MaterialReader.hardness(entry));
    }
    if (entry.has("density")) {
      sheet =
          sheet.density(
              entry.quantity(
                  "density",
                  "a density such as \"1.2 g/cm3\"",
                  Density::parse,
                  LIGHTEST,
                  HEAVIEST));
    }
    entry.end();
    return sheet;
  }

  private static Datasheet modulus(Datasheet before, Entry figure, boolean flexural) {
    Pressure modulus = pressure(figure, "modulus");
    double strain = figure.counted("strain", "%", 0.01, 10.0) / 100.0;
    return within(
        figure,
        () -> flexural ? before.flexural(modulus, strain) : before.tensile(modulus, strain));
  }

  private static Datasheet stress(Datasheet before, Entry figure, boolean atBreak) {
    Pressure stress = pressure(figure, "stress");
    double elongation = figure.counted("elongation", "%", 1.0, 2000.0) / 100.0;
    return within(
        figure,
        () -> atBreak ? before.strength(stress, elongation) : before.stress(elongation, stress));
  }

  private static Pressure pressure(Entry figure, String name) {
    return figure.quantity(name, "a stress such as \"9 MPa\"", Pressure::parse, LEAST, MOST);
  }

  private static Datasheet within(Entry figure, Supplier<Datasheet> with) {
    boolean known = figure.has("within");
    double band = known ? 1.0 + figure.counted("within", "%", 0.0, 300.0) / 100.0 : 1.0;
    figure.end();
    try {
      return known ? with.get().within(band) : with.get();
    } catch (InvalidInputException e) {
      throw BriefException.inside(figure.path(), e);
    }
  }
}
