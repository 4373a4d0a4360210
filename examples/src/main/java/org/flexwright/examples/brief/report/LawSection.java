package org.flexwright.examples.brief.report;

import java.util.List;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.TestCurve;
import org.flexwright.law.Deformation;

/** The section of the page about the laws on the measured curves. */
final class LawSection {

  static final String TITLE = "Laws on the measured curves";

  static final String ABOUT =
      "Classical laws fitted to all curves at once with relative weighting, before any condition of"
          + " service: the stable ones by AICc, the lower the better, then the others. The parts do"
          + " not use them, they work with the stress curve of the grade; take a law for a solver,"
          + " in the deformations and stretches that were tested.";

  private LawSection() {}

  static void write(List<TestCurve> curves, FitComparison laws, Markup page) {
    List<Deformation> modes = LawRow.modes(curves);
    page.open("section").leaf("h2", TITLE).leaf("p", ABOUT).open("figure");
    LawPlot.draw(curves, laws, "laws", page);
    page.leaf(
        "figcaption",
        "Measured points in each deformation and the first "
            + LawPlot.best(laws).size()
            + " laws of the table; a line ends where its law does.");
    page.close().open("table").open("thead");
    HtmlRows.head(page, LawRow.head(modes));
    page.close().open("tbody");
    for (LawRow row : LawRow.of(laws, modes)) {
      page.open("tr").leaf("th", row.family(), "scope", "row");
      page.leaf("td", row.constants());
      row.misfits().forEach(m -> page.leaf("td", m, "class", "figure"));
      page.leaf("td", row.criterion(), "class", "figure");
      page.leaf("td", row.stableTo()).leaf("td", row.remarks()).close();
    }
    page.close().close().close();
  }
}
