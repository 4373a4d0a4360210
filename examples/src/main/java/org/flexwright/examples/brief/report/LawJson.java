package org.flexwright.examples.brief.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;
import org.flexwright.law.LawFamily;

/** The laws on the measured curves for programs, the best first. */
final class LawJson {

  private LawJson() {}

  static void write(ArrayNode node, List<TestCurve> curves, FitComparison laws) {
    List<Deformation> modes = LawRow.modes(curves);
    for (FitComparison.Entry entry : laws.entries()) {
      ObjectNode law = node.addObject();
      law.put("family", entry.family().name());
      law.put("fitted", entry.fitted().isPresent());
      entry.fitted().ifPresentOrElse(f -> law(law, f, modes), () -> law.put("why", entry.reason()));
    }
  }

  private static void law(ObjectNode node, FittedLaw law, List<Deformation> modes) {
    ArrayNode constants = node.putArray("constants");
    for (FittedLaw.Value each : law.constants()) {
      ObjectNode constant = constants.addObject();
      constant.put("name", each.constant().name());
      constant.put("value", JsonReport.round(each.value()));
      each.standardError().ifPresent(e -> constant.put("standardError", JsonReport.round(e)));
      boolean stress = each.constant().kind() == LawFamily.Constant.Kind.STRESS;
      constant.put("unit", stress ? "Pa" : "1");
      constant.put("atBound", each.atBound());
    }
    ArrayNode misfits = node.putArray("misfits");
    for (Deformation mode : modes) {
      LawRow.Misfit misfit = LawRow.Misfit.of(law, mode);
      ObjectNode each = misfits.addObject();
      each.put("mode", LawRow.word(mode));
      JsonReport.value(each.putObject("rms"), 1e6 * misfit.mpa(), "Pa");
      JsonReport.value(each.putObject("relativeRms"), misfit.relative(), "1");
    }
    law.aicc().ifPresent(a -> node.put("aicc", JsonReport.round(a)));
    node.put("stable", law.instability().isEmpty());
    law.instability().ifPresent(i -> node.put("notStableIn", i));
    ObjectNode stretch = node.putObject("stretch");
    stretch.put("low", JsonReport.round(law.law().range().low()));
    stretch.put("high", JsonReport.round(law.law().range().high()));
    stretch.put("unit", "1");
    JsonReport.caveats(node.putArray("caveats"), law.caveats());
  }
}
