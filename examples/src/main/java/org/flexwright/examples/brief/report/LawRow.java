package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.flexwright.evidence.Caveat;
import org.flexwright.fit.CurveError;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.flexwright.law.StretchRange;

/**
 * One law family on the measured curves, as the reports show it.
 *
 * @param family its name
 * @param constants the constants with their errors, a dash if it could not be fitted
 * @param misfits how far it is off, for each deformation that was tested
 * @param criterion AICc, the lower the better
 * @param stableTo how far the law is stable
 * @param remarks what must be said about it
 */
record LawRow(
    String family,
    String constants,
    List<String> misfits,
    String criterion,
    String stableTo,
    String remarks) {

  private static final double EVERYWHERE = 1000.0; // where the laws themselves stop saying more
  private static final String NONE = "-";

  /**
   * The distance of a law from all points of one deformation, root mean square.
   *
   * @param mpa of the nominal stress
   * @param relative as a share of the measured stress
   */
  record Misfit(double mpa, double relative) {

    /** All curves of one deformation together, each point alike. */
    static Misfit of(FittedLaw law, Deformation mode) {
      double square = 0.0;
      double relative = 0.0;
      int points = 0;
      for (CurveError e : law.errors()) {
        if (e.mode() == mode) {
          square += e.points() * e.rms().mpa() * e.rms().mpa();
          relative += e.points() * e.relative() * e.relative();
          points += e.points();
        }
      }
      return new Misfit(Math.sqrt(square / points), Math.sqrt(relative / points));
    }

    @Override
    public String toString() {
      return Say.number(mpa, 2) + " MPa, " + Say.number(100.0 * relative, 2) + " %";
    }
  }

  /** The deformations that were tested. */
  static List<Deformation> modes(List<TestCurve> curves) {
    return curves.stream().map(TestCurve::mode).distinct().sorted().toList();
  }

  /** One row for each family, the best first. */
  static List<LawRow> of(FitComparison laws, List<Deformation> modes) {
    return laws.entries().stream().map(e -> of(e, modes)).toList();
  }

  private static LawRow of(FitComparison.Entry entry, List<Deformation> modes) {
    String name = entry.family().name();
    Optional<FittedLaw> fitted = entry.fitted();
    if (fitted.isEmpty()) {
      List<String> none = modes.stream().map(m -> NONE).toList();
      return new LawRow(name, NONE, none, NONE, NONE, "not fitted: " + entry.reason());
    }
    FittedLaw law = fitted.get();
    return new LawRow(
        name,
        law.constants().stream().map(Object::toString).collect(Collectors.joining(", ")),
        modes.stream().map(m -> Misfit.of(law, m).toString()).toList(),
        law.aicc().isPresent() ? Say.fixed(law.aicc().getAsDouble(), 1) : "too few points",
        stableTo(law),
        law.caveats().stream().map(Caveat::message).collect(Collectors.joining("; ")));
  }

  private static String stableTo(FittedLaw law) {
    if (law.instability().isPresent()) {
      return "not stable: " + law.instability().get();
    }
    StretchRange range = law.law().range();
    return range.high() >= EVERYWHERE
        ? "any stretch"
        : "stretch " + Say.number(range.high(), 3) + ", " + range.reason();
  }

  /** What the cells are. */
  static List<String> head(List<Deformation> modes) {
    List<String> head = new ArrayList<>(List.of("family", "constants"));
    modes.forEach(m -> head.add("rms " + word(m)));
    head.addAll(List.of("AICc", "stable to", "remarks"));
    return head;
  }

  /** The cells in the order of the head. */
  List<String> cells() {
    List<String> cells = new ArrayList<>(List.of(family, constants));
    cells.addAll(misfits);
    cells.addAll(List.of(criterion, stableTo, remarks));
    return cells;
  }

  static String word(Deformation mode) {
    return mode.name().toLowerCase(Locale.ROOT);
  }
}
