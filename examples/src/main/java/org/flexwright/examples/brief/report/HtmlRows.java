package org.flexwright.examples.brief.report;

import java.util.List;

/** Rows of a table on the page. */
final class HtmlRows {

  private HtmlRows() {}

  static void head(Markup page, List<String> cells) {
    page.open("tr");
    cells.forEach(c -> page.leaf("th", c, "scope", "col"));
    page.close();
  }

  static void row(Markup page, List<String> cells) {
    page.open("tr");
    cells.forEach(c -> page.leaf("td", c));
    page.close();
  }
}
