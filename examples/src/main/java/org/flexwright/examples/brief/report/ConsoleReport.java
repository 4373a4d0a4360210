package org.flexwright.examples.brief.report;

import java.util.List;
import java.util.Locale;
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
import org.flexwright.fit.FitComparison;

/** The answer as plain text. */
final class ConsoleReport {

  private static final int WIDTH = 100;

  private final StringBuilder text = new StringBuilder();
  private final BriefAnswer answer;

  private ConsoleReport(BriefAnswer answer) {
    this.answer = answer;
  }

  static String of(BriefAnswer answer, List<String> files) {
    ConsoleReport report = new ConsoleReport(answer);
    report.head();
    report.grade();
    int number = 2;
    if (answer.laws().isPresent()) {
      report.laws(number++, answer.laws().get());
    }
    for (PartAnswer<?> part : answer.parts()) {
      report.part(number++, part);
    }
    report.plan(number++);
    report.rule(number++ + ". Cautions");
    answer.cautions().forEach(c -> report.wrapped("! ", c));
    report.rule(number + ". Files");
    files.forEach(report::line);
    return Say.ascii(report.text.toString());
  }

  private void head() {
    line(answer.brief().title());
    wrapped("", answer.brief().scenario());
  }

  private void grade() {
    String subject = answer.relations().isPresent() ? "Grade and hardness: " : "Grade: ";
    rule("1. " + subject + answer.brief().grade().name());
    if (answer.relations().isPresent()) {
      text.append(answer.relations().get().table()).append('\n');
      line("");
    }
    List<String> basis = answer.brief().basis().words();
    if (!basis.isEmpty()) {
      line("The grade rests on:");
      basis.forEach(w -> wrapped("  - ", w));
    }
    line("The parts work with the stress curve of the grade, not with one modulus:");
    line(answer.brief().grade().toString());
    line("  strain   secant modulus");
    for (double strain : BriefAnswer.STRAINS) {
      line(
          String.format(
              Locale.ROOT,
              "  %5s    %s",
              Say.percent(strain),
              answer.brief().grade().modulusAt(strain)));
    }
    caveats(answer.brief().grade().caveats());
    line("  sources");
    for (Source source : answer.brief().grade().sources()) {
      wrapped("  - ", source.toString());
    }
  }

  private void laws(int number, FitComparison laws) {
    rule(number + ". " + LawSection.TITLE);
    wrapped("", LawSection.ABOUT);
    LawText words = new LawText(answer.brief().basis().curves(), laws);
    words.table().forEach(this::line);
    line("Constants and remarks:");
    words.paragraphs().forEach(p -> wrapped("  - ", p));
  }

  private void part(int number, PartAnswer<?> part) {
    rule(number + ". " + Say.sentence(part.asked().name()));
    wrapped("", part.chosen().toString());
    question(part.main());
    part.feel()
        .ifPresent(
            f ->
                wrapped(
                    "Feel: ",
                    f.words()
                        + ": "
                        + f.hardness().nominal()
                        + ", "
                        + Say.number(f.hardness().low().points(), 3)
                        + " to "
                        + Say.number(f.hardness().high().points(), 3)));
    caveats(answer.caveats(part));
    for (Answer<?> wish : part.wishes()) {
      line("");
      line("Asked as well:");
      question(wish);
    }
  }

  private void question(Answer<?> a) {
    wrapped("Question: ", a.words());
    for (Answer.Choice<?> choice : a.choices()) {
      if (a.choices().size() > 1) {
        boolean chosen = choice.of() == a.window().of();
        line("At " + choice.label() + (chosen ? " (preferred):" : ":"));
      }
      text.append(choice.of().table());
      line("nominal window: " + Say.windows(choice.of().nominal()));
      line("sure window:    " + Say.windows(choice.of().sure()));
    }
    a.engine().ifPresent(this::engine);
    a.window().of().conflict().ifPresent(c -> wrapped("Conflict: ", c));
    wrapped("Verdict: ", a.sentence());
    a.best().ifPresent(b -> wrapped("Choice: ", choice(b)));
    if (!a.levers().isEmpty()) {
      line("Levers, least change first:");
    }
    int i = 1;
    for (Advice<?> advice : a.levers()) {
      wrapped("  " + i++ + ") ", advice.sentence());
    }
    if (a.verdict() == Verdict.NOT_DECIDABLE) {
      a.budget().ifPresent(b -> wrapped("Open because: ", b.sentence()));
    }
  }

  private void engine(OnEngine e) {
    wrapped("Figures: ", EngineWords.ABOUT);
    line("  " + EngineWords.row(EngineWords.HEAD));
    e.rows().forEach(r -> line("  " + EngineWords.row(EngineWords.cells(r))));
  }

  private static String choice(Candidate b) {
    return b.size()
        + ", "
        + b.load()
        + ", P(meets) "
        + Say.percent(b.probability())
        + " ("
        + Say.percent(b.leastProbability())
        + " at the worst of service), printed volume "
        + b.printedVolume()
        + ", mass "
        + b.mass();
  }

  private void plan(int number) {
    rule(number + ". What to test-print first");
    if (answer.plan().items().isEmpty()) {
      wrapped("", "No question is left open by missing knowledge; print the choices and measure.");
    }
    int i = 1;
    for (TestPlan.Item item : answer.plan().items()) {
      wrapped(i++ + ") ", item.name() + ": " + item.test());
      item.decides().forEach(d -> wrapped("     decides    ", d));
      item.needed().forEach(d -> wrapped("     needed for ", d));
    }
  }

  private void caveats(List<Caveat> caveats) {
    if (!caveats.isEmpty()) {
      line("  caveats");
    }
    for (Caveat c : caveats) {
      wrapped("  - ", c + " [" + c.source() + "]");
    }
  }

  private void rule(String title) {
    line("");
    line("== " + title + " " + "=".repeat(Math.max(3, WIDTH - title.length() - 4)));
  }

  private void line(String words) {
    text.append(words).append('\n');
  }

  /** A paragraph broken at blanks, later lines set in under the first. */
  private void wrapped(String lead, String words) {
    StringBuilder row = new StringBuilder(lead);
    boolean fresh = true;
    for (String word : words.strip().split("\\s+", -1)) {
      if (!fresh && row.length() + 1 + word.length() > WIDTH) {
        line(row.toString());
        row = new StringBuilder(" ".repeat(lead.length()));
        fresh = true;
      }
      row.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(row.toString());
  }
}
