package org.flexwright.finder;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.StringJoiner;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.RangeCheck;
import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.response.Response;

/**
 * A list of analyses that can be searched for a described thing.
 *
 * <p>Each analysis that fits the shape is asked in the grade, so that ranges, sources and caveats
 * are those of the real answer: nothing is told here that the analysis would not say itself.
 *
 * <p>Immutable and thread-safe.
 *
 * <p>JShell: {@code System.out.println(ShellCatalogue.all().table(Described.as(Shape.TUBE).with(
 * Dimension.WALL, mm(1)).with(Dimension.RADIUS, mm(10)), grade))}
 */
public final class Catalogue {

  private final List<Analysis> analyses;

  private Catalogue(List<Analysis> analyses) {
    Set<String> names = new HashSet<>();
    for (Analysis a : analyses) {
      Require.that(names.add(a.name()), "analysis", a.name(), "a name used once", "rename it");
    }
    this.analyses = List.copyOf(analyses);
  }

  /**
   * A catalogue.
   *
   * @param analyses its analyses
   * @return the catalogue
   * @throws InvalidInputException if two have the same name
   */
  public static Catalogue of(List<Analysis> analyses) {
    return new Catalogue(analyses);
  }

  /**
   * This catalogue with another one behind it: one of your own, or that of another module.
   *
   * @param other the other
   * @return the new catalogue
   * @throws InvalidInputException if two analyses have the same name
   */
  public Catalogue and(Catalogue other) {
    List<Analysis> all = new ArrayList<>(analyses);
    all.addAll(other.analyses);
    return new Catalogue(all);
  }

  /**
   * The analyses.
   *
   * @return an immutable list
   */
  public List<Analysis> analyses() {
    return analyses;
  }

  /**
   * What every analysis for this shape says: first those inside all their ranges, then by how far
   * they are out, last those that could not be asked, with the reason.
   *
   * @param thing the description
   * @param grade the material
   * @return the findings, empty if no analysis is for this shape
   */
  public List<Finding> find(Described thing, Grade grade) {
    List<Finding> found = new ArrayList<>();
    for (Analysis a : analyses) {
      if (a.shape() == thing.shape()) {
        found.add(finding(a, thing, grade));
      }
    }
    found.sort(Comparator.comparingDouble(Finding::excess));
    return List.copyOf(found);
  }

  private static Finding finding(Analysis a, Described thing, Grade grade) {
    StringJoiner missing = new StringJoiner(", ", "needs ", "").setEmptyValue("");
    a.needs().stream().sorted().filter(d -> !thing.has(d)).forEach(d -> missing.add(d.toString()));
    if (a.turns() && thing.angle().isEmpty()) {
      missing.add("angle");
    }
    if (missing.length() > 0) {
      return new Finding(a, Optional.empty(), Optional.of(missing.toString()));
    }
    try {
      return new Finding(a, Optional.of(a.ask().of(thing, grade)), Optional.empty());
    } catch (InvalidInputException e) {
      return new Finding(a, Optional.empty(), Optional.of(e.sentence()));
    }
  }

  /**
   * The findings as a table: load, peak strain, how far out of range, the ranges that were left and
   * the sources.
   *
   * @param thing the description
   * @param grade the material
   * @return the table, lines ending in a line feed
   */
  public String table(Described thing, Grade grade) {
    List<String[]> lines = new ArrayList<>();
    lines.add(new String[] {"analysis", "load", "peak strain", "out of range", "why", "source"});
    for (Finding f : find(thing, grade)) {
      lines.add(f.response().map(r -> row(f, r)).orElseGet(() -> refused(f)));
    }
    return Text.table(lines);
  }

  private static String[] refused(Finding f) {
    return new String[] {f.analysis().name(), "-", "-", "-", f.reason().orElse(""), ""};
  }

  private static String[] row(Finding f, Response r) {
    StringJoiner out = new StringJoiner("; ");
    f.ranges().stream().filter(c -> !c.inside()).map(RangeCheck::toString).forEach(out::add);
    if (!r.termination().complete()) {
      out.add(r.termination().why());
    }
    StringJoiner sources = new StringJoiner("; ");
    f.sources().forEach(s -> sources.add(s.toString()));
    return new String[] {
      f.analysis().name(),
      r.load().channel() + " " + r.load().channel().show(r.load().nominal()),
      Text.percent(r.strain().nominal()),
      distance(f, r),
      out.toString(),
      sources.toString()
    };
  }

  private static String distance(Finding f, Response r) {
    if (!r.termination().complete()) {
      return "ended before";
    }
    return f.excess() == 0.0 ? "in range" : Text.percent(Math.expm1(f.excess())) + " beyond";
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "catalogue of " + analyses.size() + " analyses";
  }
}
