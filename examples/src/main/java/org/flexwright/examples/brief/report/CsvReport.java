package org.flexwright.examples.brief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.decide.Candidate;
import org.flexwright.examples.brief.answer.Answer;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.answer.PartAnswer;
import org.flexwright.response.Channel;
import org.flexwright.shells.solved.Solved;

/** The answer as tables: one for each part, and one with a line for each question. */
final class CsvReport {

  private CsvReport() {}

  static String part(PartAnswer<?> part) {
    Channel channel = channel(part);
    String unit = " [" + channel.shownUnit() + "]";
    Csv csv = new Csv();
    csv.line(
        List.of(
            "question",
            "at",
            part.asked().frame().lever() + " [mm]",
            channel + " low" + unit,
            channel + " nominal" + unit,
            channel + " high" + unit,
            "figures by",
            channel + " by closed form" + unit,
            "engine over closed form",
            "peak strain [%]",
            "P(meets) [%]",
            "P(meets) at worst of service [%]",
            "life [cycles]",
            "printed volume [cm3]",
            "mass [g]",
            "meets nominally",
            "verdict",
            "binds"));
    for (Answer<?> answer : part.answers()) {
      for (Answer.Choice<?> choice : answer.choices()) {
        for (Candidate c : choice.of().candidates()) {
          Optional<Solved.Comparison> both = answer.engine().flatMap(e -> e.at(c.size()));
          csv.line(row(answer.target().toString(), choice.label(), channel, c, both));
        }
      }
    }
    return csv.toString();
  }

  private static List<String> row(
      String target, String label, Channel channel, Candidate c, Optional<Solved.Comparison> both) {
    double factor = channel.shownFactor();
    return List.of(
        target,
        label,
        Say.number(c.size().mm(), 6),
        Say.number(c.load().low() * factor, 6),
        Say.number(c.load().nominal() * factor, 6),
        Say.number(c.load().high() * factor, 6),
        both.isPresent() ? "engine" : "closed form",
        both.map(b -> Say.number(b.closed() * factor, 6)).orElse(""),
        both.map(EngineWords::ratio).orElse(""),
        Say.number(100.0 * c.strain().nominal(), 6),
        Say.fixed(100.0 * c.probability(), 2),
        Say.fixed(100.0 * c.leastProbability(), 2),
        c.life(),
        Say.number(c.printedVolume().cm3(), 6),
        Say.number(c.mass().grams(), 6),
        c.meetsNominally() ? "yes" : "no",
        c.verdict().toString(),
        c.binds());
  }

  /** What the load of a part is; a row without a part says nothing about it. */
  static Channel channel(PartAnswer<?> part) {
    var curve = part.main().window().of().curve();
    return curve.isEmpty() ? Channel.FORCE : curve.get(0).load().channel();
  }

  static String summary(BriefAnswer answer) {
    Csv csv = new Csv();
    csv.line(
        List.of(
            "part",
            "question",
            "at",
            "lever",
            "verdict",
            "best size [mm]",
            "nominal window",
            "sure window",
            "P(meets) [%]",
            "P(meets) at worst of service [%]",
            "printed volume [cm3]",
            "mass [g]",
            "binds",
            "conflict",
            "first lever"));
    for (PartAnswer<?> part : answer.parts()) {
      for (Answer<?> a : part.answers()) {
        csv.line(line(part.asked().name(), a));
      }
    }
    return csv.toString();
  }

  private static List<String> line(String name, Answer<?> a) {
    var best = a.best();
    List<String> cells = new ArrayList<>();
    cells.add(name);
    cells.add(a.target().toString());
    cells.add(a.window().label());
    cells.add(a.window().of().question().lever().name());
    cells.add(a.verdict().toString());
    cells.add(best.map(b -> Say.number(b.size().mm(), 6)).orElse(""));
    cells.add(Say.windows(a.window().of().nominal()));
    cells.add(Say.windows(a.window().of().sure()));
    cells.add(best.map(b -> Say.fixed(100.0 * b.probability(), 2)).orElse(""));
    cells.add(best.map(b -> Say.fixed(100.0 * b.leastProbability(), 2)).orElse(""));
    cells.add(best.map(b -> Say.number(b.printedVolume().cm3(), 6)).orElse(""));
    cells.add(best.map(b -> Say.number(b.mass().grams(), 6)).orElse(""));
    cells.add(best.map(Candidate::binds).orElse(""));
    cells.add(a.window().of().conflict().orElse(""));
    cells.add(a.levers().isEmpty() ? "" : a.levers().get(0).sentence());
    return cells;
  }
}
