package org.flexwright.examples.brief.report;

import java.util.List;
import org.flexwright.decide.Advice;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.Verdict;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.examples.brief.answer.Answer;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.answer.OnEngine;
import org.flexwright.examples.brief.answer.PartAnswer;
import org.flexwright.examples.brief.answer.TestPlan;
import org.flexwright.hardness.relation.ModulusFromHardness;

/** The answer as one page that needs nothing from elsewhere. */
final class HtmlReport {

  private final BriefAnswer answer;
  private final Markup page = new Markup();
  private int plots;

  private HtmlReport(BriefAnswer answer) {
    this.answer = answer;
  }

  static String of(BriefAnswer answer, String version) {
    HtmlReport report = new HtmlReport(answer);
    report.write(version);
    return "<!DOCTYPE html>\n" + report.page;
  }

  private void write(String version) {
    page.open("html", "lang", "en").open("head").empty("meta", "charset", "utf-8");
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    page.leaf("title", answer.brief().title()).leaf("style", HtmlStyle.CSS).close();
    page.open("body").leaf("h1", answer.brief().title());
    page.leaf("p", answer.brief().scenario(), "class", "lead");
    summary();
    plan();
    cautions();
    grade();
    answer.laws().ifPresent(l -> LawSection.write(answer.brief().basis().curves(), l, page));
    answer.parts().forEach(this::part);
    sources();
    page.leaf("footer", "Flexwright " + version);
    page.close().close();
  }

  private void summary() {
    page.leaf("h2", "Summary").open("table", "class", "summary").open("thead");
    head(
        "part", "target", "verdict", "choice", "P(meets) at worst", "sure window", "mass", "binds");
    page.close().open("tbody");
    for (PartAnswer<?> part : answer.parts()) {
      for (Answer<?> a : part.answers()) {
        summary(part.asked().name(), a);
      }
    }
    page.close().close();
  }

  private void summary(String name, Answer<?> a) {
    String label = a.window().label().isEmpty() ? "" : ", " + a.window().label();
    String lever = a.window().of().question().lever().name();
    page.open("tr").leaf("th", name, "scope", "row");
    cell(a.target().toString());
    verdict(a.verdict());
    cell(a.best().map(b -> lever + " " + b.size() + label).orElse("none"));
    cell(a.best().map(b -> Say.percent(b.leastProbability())).orElse("-"));
    cell(Say.windows(a.window().of().sure()));
    figure(a.best().map(b -> b.mass().toString()).orElse("-"));
    cell(a.best().map(Candidate::binds).orElse(a.window().of().conflict().orElse("-")));
    page.close();
  }

  private void plan() {
    page.leaf("h2", "What to test-print first");
    if (answer.plan().items().isEmpty()) {
      page.leaf("p", "No question is left open by missing knowledge; print and measure.");
      return;
    }
    page.open("ol");
    for (TestPlan.Item item : answer.plan().items()) {
      page.open("li").leaf("strong", Say.sentence(item.name()) + ":");
      page.words(item.test() + ".").open("ul", "class", "plain");
      item.decides().forEach(d -> page.leaf("li", "decides " + d));
      item.needed().forEach(d -> page.leaf("li", "needed, not enough alone, for " + d));
      page.close().close();
    }
    page.close();
  }

  private void cautions() {
    page.open("section", "class", "caution").leaf("h2", "Cautions");
    list(answer.cautions(), "plain");
    page.close();
  }

  private void grade() {
    var grade = answer.brief().grade();
    page.leaf("h2", answer.relations().isPresent() ? "Grade and hardness" : "Grade");
    page.leaf("p", grade.toString());
    if (!answer.brief().basis().words().isEmpty()) {
      page.leaf("p", "It rests on:");
      list(answer.brief().basis().words(), "plain");
    }
    answer.relations().ifPresent(this::relations);
    page.leaf("h3", "Secant modulus of the grade's stress curve");
    page.open("table").open("thead");
    head("strain", "modulus", "from", "to");
    page.close().open("tbody");
    for (double strain : BriefAnswer.STRAINS) {
      var e = grade.modulusAt(strain);
      row(Say.percent(strain), e.nominal().toString(), e.low().toString(), e.high().toString());
    }
    page.close().close();
    page.leaf("p", "The parts work with this curve at their own strain, not with one modulus.");
    caveats(grade.caveats());
  }

  private void relations(ModulusFromHardness relations) {
    page.leaf("h3", "Small-strain modulus by the hardness relations");
    page.open("table").open("thead");
    head("relation", "read at", "modulus", "share", "remark");
    page.close().open("tbody");
    relations.used().forEach(this::relation);
    relations.leftOut().forEach(this::relation);
    page.close().close();
    page.leaf("p", "Spread of the relations: " + relations.spread() + ".");
    page.leaf("p", "With the tolerance of the reading: " + relations.withReading() + ".");
  }

  private void relation(ModulusFromHardness.Row row) {
    String share = row.share() == 0.0 ? "left out" : Say.percent(row.share());
    row(row.relation(), row.at().toString(), row.modulus().toString(), share, row.reason());
  }

  private void part(PartAnswer<?> part) {
    page.open("section").leaf("h2", Say.sentence(part.asked().name()));
    page.leaf("p", part.chosen().toString());
    question(part.main());
    part.feel()
        .ifPresent(
            f ->
                page.leaf(
                    "p",
                    "Feel: "
                        + f.words()
                        + ": "
                        + f.hardness().nominal()
                        + " ("
                        + Say.number(f.hardness().low().points(), 3)
                        + " to "
                        + Say.number(f.hardness().high().points(), 3)
                        + ")."));
    caveats(answer.caveats(part));
    for (Answer<?> wish : part.wishes()) {
      page.leaf("h3", "Asked as well");
      question(wish);
    }
    page.close();
  }

  private void question(Answer<?> a) {
    page.leaf("p", a.words(), "class", "question");
    page.open("p").leaf("strong", "Answer: ").words(a.sentence() + ".").close();
    plots++;
    page.open("figure");
    WindowPlot.draw(a, "plot" + plots, page);
    page.leaf("figcaption", caption(a));
    page.close();
    a.engine().ifPresent(this::engine);
    for (Answer.Choice<?> choice : a.choices()) {
      if (a.choices().size() > 1) {
        boolean chosen = choice.of() == a.window().of();
        page.leaf("h4", "At " + choice.label() + (chosen ? " (preferred, plotted)" : ""));
      }
      table(choice);
    }
    if (a.verdict() == Verdict.NOT_DECIDABLE) {
      a.budget().ifPresent(b -> page.leaf("p", "Open because " + b.sentence() + "."));
    }
    if (!a.levers().isEmpty()) {
      page.leaf("h4", "Levers, least change first").open("ol");
      for (Advice<?> advice : a.levers()) {
        page.leaf("li", advice.sentence() + ".");
      }
      page.close();
    }
  }

  private void engine(OnEngine e) {
    page.open("figure");
    MeridianPlot.draw(e, "plot" + plots + "m", page);
    page.leaf("figcaption", MeridianPlot.caption(e));
    page.close();
    page.leaf("p", Say.sentence(EngineWords.ABOUT));
    page.open("table").open("thead");
    HtmlRows.head(page, EngineWords.HEAD);
    page.close().open("tbody");
    e.rows().forEach(r -> HtmlRows.row(page, EngineWords.cells(r)));
    page.close().close();
  }

  private static String caption(Answer<?> a) {
    String binds =
        a.best()
            .map(b -> "Binding at " + b.size() + ": " + b.binds())
            .orElse("Conflict: " + a.window().of().conflict().orElse("no realisable size inside"));
    return "Nominal window "
        + Say.windows(a.window().of().nominal())
        + "; sure window "
        + Say.windows(a.window().of().sure())
        + ". "
        + binds
        + ".";
  }

  private void table(Answer.Choice<?> choice) {
    page.open("table").open("thead");
    String lever = choice.of().question().lever().name();
    head(
        lever,
        "load",
        "whole band",
        "P(meets)",
        "at worst",
        "peak strain",
        "life",
        "volume",
        "mass",
        "verdict",
        "binds");
    page.close().open("tbody");
    for (Candidate c : choice.of().candidates()) {
      page.open("tr").leaf("th", c.size().toString(), "scope", "row");
      figure(c.load().channel().show(c.load().nominal()));
      figure(
          c.load().channel().show(c.load().low())
              + " to "
              + c.load().channel().show(c.load().high()));
      figure(Say.percent(c.probability()));
      figure(Say.percent(c.leastProbability()));
      figure(c.strain().channel().show(c.strain().nominal()));
      cell(c.life());
      figure(c.printedVolume().toString());
      figure(c.mass().toString());
      verdict(c.verdict());
      cell(c.binds());
      page.close();
    }
    page.close().close();
  }

  private void caveats(List<Caveat> caveats) {
    if (!caveats.isEmpty()) {
      page.leaf("h4", "Caveats");
      list(caveats.stream().map(c -> c + " [" + c.source() + "]").toList(), "caveats");
    }
  }

  private void sources() {
    page.leaf("h2", "Sources");
    list(answer.sources().stream().map(Source::toString).toList(), "plain");
  }

  private void list(List<String> items, String style) {
    page.open("ul", "class", style);
    items.forEach(i -> page.leaf("li", i));
    page.close();
  }

  private void verdict(Verdict verdict) {
    String style =
        switch (verdict) {
          case MEETS -> "meets";
          case NOT_DECIDABLE -> "open";
          case FAILS -> "fails";
        };
    page.leaf("td", verdict.toString(), "class", style);
  }

  private void head(String... cells) {
    HtmlRows.head(page, List.of(cells));
  }

  private void row(String... cells) {
    HtmlRows.row(page, List.of(cells));
  }

  private void figure(String words) {
    page.leaf("td", words, "class", "figure");
  }

  private void cell(String words) {
    page.leaf("td", words);
  }
}
