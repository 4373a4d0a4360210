package org.flexwright.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;
import org.flexwright.law.classical.LawFamilies;
import org.flexwright.run.RunControl;

/**
 * Many families fitted to the same curves with the same weighting, the best first.
 *
 * <p>Order: laws that are stable as far as the data reach, then those that are not, then families
 * that could not be fitted, with the reason; within each by AICc (see {@link FittedLaw}), those
 * with too few points for it last, by their objective. A low AICc says that a law follows these
 * curves with few constants, not that it holds for deformations that were not tested.
 *
 * <p>JShell: {@code FitComparison.of(curves)}
 *
 * @param entries one for each family, the best first
 */
public record FitComparison(List<Entry> entries) {

  /**
   * One family.
   *
   * @param family the family
   * @param fitted the law, nothing if the family could not be fitted
   * @param reason why not, empty if fitted
   */
  public record Entry(LawFamily family, Optional<FittedLaw> fitted, String reason) {}

  /**
   * Keeps the entries from being changed.
   *
   * @param entries one for each family
   * @throws InvalidInputException if there is none
   */
  public FitComparison {
    entries = List.copyOf(entries);
    Require.atLeast("families to compare", entries.size(), 1);
  }

  /**
   * All classical families with relative weighting.
   *
   * @param curves the curves
   * @return the comparison
   * @throws InvalidInputException if the curves make no sense
   */
  public static FitComparison of(List<TestCurve> curves) {
    return of(LawFit.of(LawFamilies.ALL.get(0)), LawFamilies.ALL, curves, RunControl.none());
  }

  /**
   * Chosen families.
   *
   * @param settings the settings of all fits; its family is not used
   * @param families the families, at least one
   * @param curves the curves
   * @param control who watches; after a stop the families not yet fitted stand with that reason
   * @return the comparison
   * @throws InvalidInputException if the curves make no sense or there is no family
   */
  public static FitComparison of(
      LawFit settings, List<LawFamily> families, List<TestCurve> curves, RunControl control) {
    // curves that make no sense are the caller's error, not a family's failure
    FitData data = new FitData(curves, settings);
    List<Entry> entries = new ArrayList<>();
    boolean stopped = false;
    for (LawFamily family : families) {
      if (stopped) {
        entries.add(new Entry(family, Optional.empty(), "stopped by the caller before"));
        continue;
      }
      try {
        FittedLaw fitted = settings.family(family).fit(data.curves, control);
        stopped = !fitted.termination().complete();
        entries.add(new Entry(family, Optional.of(fitted), ""));
      } catch (InvalidInputException refused) {
        entries.add(new Entry(family, Optional.empty(), refused.sentence()));
      }
    }
    entries.sort(
        Comparator.comparingInt(FitComparison::group)
            .thenComparingDouble(e -> e.fitted().map(FitComparison::rank).orElse(0.0))
            .thenComparingDouble(e -> e.fitted().map(FittedLaw::objective).orElse(0.0)));
    return new FitComparison(entries);
  }

  private static int group(Entry entry) {
    return entry.fitted().map(f -> f.instability().isPresent() ? 1 : 0).orElse(2);
  }

  private static double rank(FittedLaw fitted) {
    return fitted.aicc().orElse(Double.POSITIVE_INFINITY);
  }

  /**
   * The best law that is stable as far as the data reach.
   *
   * @return the law, nothing if there is none
   */
  public Optional<FittedLaw> best() {
    return entries.get(0).fitted().filter(f -> f.instability().isEmpty());
  }

  private static String[] row(Entry entry, List<Deformation> modes) {
    List<String> cells = new ArrayList<>();
    cells.add(entry.family().name());
    if (entry.fitted().isEmpty()) {
      cells.add("not fitted");
      modes.forEach(m -> cells.add("-"));
      cells.addAll(List.of("-", "-", entry.reason()));
      return cells.toArray(String[]::new);
    }
    FittedLaw fitted = entry.fitted().get();
    cells.add(String.join(", ", fitted.constants().stream().map(Object::toString).toList()));
    modes.forEach(m -> cells.add(rms(fitted, m)));
    cells.add(
        fitted.aicc().isPresent() ? Text.number(fitted.aicc().getAsDouble()) : "too few points");
    cells.add(Text.number(fitted.law().range().high(), 3));
    cells.add(String.join("; ", fitted.caveats().stream().map(c -> c.message()).toList()));
    return cells.toArray(String[]::new);
  }

  /** The rms of all points of a mode in MPa and per cent. */
  private static String rms(FittedLaw fitted, Deformation mode) {
    double square = 0.0;
    double relative = 0.0;
    int points = 0;
    for (CurveError each : fitted.errors()) {
      if (each.mode() == mode) {
        square += each.points() * each.rms().mpa() * each.rms().mpa();
        relative += each.points() * each.relative() * each.relative();
        points += each.points();
      }
    }
    return Text.number(Math.sqrt(square / points), 2)
        + " MPa "
        + Text.percent(Math.sqrt(relative / points));
  }

  /** The table: family, constants, rms of each deformation, AICc, stretch of its range, remarks. */
  @Override
  public String toString() {
    List<Deformation> modes =
        entries.stream()
            .flatMap(e -> e.fitted().stream())
            .flatMap(f -> f.errors().stream())
            .map(CurveError::mode)
            .distinct()
            .sorted()
            .toList();
    List<String> head = new ArrayList<>(List.of("family", "constants"));
    modes.forEach(m -> head.add("rms " + m.name().toLowerCase(Locale.ROOT)));
    head.addAll(List.of("AICc", "good to stretch", "remarks"));
    List<String[]> lines = new ArrayList<>();
    lines.add(head.toArray(String[]::new));
    entries.forEach(e -> lines.add(row(e, modes)));
    return Text.table(lines);
  }
}
