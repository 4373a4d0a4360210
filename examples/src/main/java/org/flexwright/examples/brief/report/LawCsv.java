package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;

/** The laws on the measured curves as a table, a line for each constant. */
final class LawCsv {

  private LawCsv() {}

  static String of(List<TestCurve> curves, FitComparison laws) {
    List<Deformation> modes = LawRow.modes(curves);
    List<String> head = new ArrayList<>(List.of("rank", "family"));
    head.addAll(List.of("constant", "value", "standard error", "unit", "at its bound"));
    for (Deformation mode : modes) {
      head.add("rms " + LawRow.word(mode) + " [MPa]");
      head.add("rms " + LawRow.word(mode) + " [%]");
    }
    head.addAll(List.of("AICc", "stable to", "remarks"));
    Csv csv = new Csv().line(head);
    List<LawRow> rows = LawRow.of(laws, modes);
    for (int i = 0; i < rows.size(); i++) {
      LawRow row = rows.get(i);
      List<String> before = List.of(Integer.toString(i + 1), row.family());
      List<String> after = new ArrayList<>();
      laws.entries().get(i).fitted().ifPresent(f -> modes.forEach(m -> misfit(f, m, after)));
      while (after.size() < 2 * modes.size()) {
        after.add("");
      }
      after.addAll(List.of(row.criterion(), row.stableTo(), row.remarks()));
      List<List<String>> constants =
          laws.entries()
              .get(i)
              .fitted()
              .map(f -> f.constants().stream().map(LawCsv::constant).toList())
              .orElse(List.of(List.of("", "", "", "", "")));
      constants.forEach(c -> csv.line(joined(before, c, after)));
    }
    return csv.toString();
  }

  private static void misfit(FittedLaw law, Deformation mode, List<String> cells) {
    LawRow.Misfit misfit = LawRow.Misfit.of(law, mode);
    cells.add(Say.number(misfit.mpa(), 6));
    cells.add(Say.number(100.0 * misfit.relative(), 6));
  }

  private static List<String> constant(FittedLaw.Value value) {
    boolean stress = value.constant().kind() == LawFamily.Constant.Kind.STRESS;
    double unit = stress ? 1e6 : 1.0;
    OptionalDouble error = value.standardError();
    return List.of(
        value.constant().name(),
        Say.number(value.value() / unit, 6),
        error.isPresent() ? Say.number(error.getAsDouble() / unit, 6) : "",
        stress ? "MPa" : "1",
        value.atBound() ? "yes" : "no");
  }

  private static List<String> joined(List<String> a, List<String> b, List<String> c) {
    List<String> all = new ArrayList<>(a);
    all.addAll(b);
    all.addAll(c);
    return all;
  }
}
