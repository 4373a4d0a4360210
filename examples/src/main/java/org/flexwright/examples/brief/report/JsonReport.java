package org.flexwright.examples.brief.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import org.flexwright.decide.Advice;
import org.flexwright.decide.Candidate;
import org.flexwright.decide.Interval;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.examples.brief.answer.Answer;
import org.flexwright.examples.brief.answer.BriefAnswer;
import org.flexwright.examples.brief.answer.Budget;
import org.flexwright.examples.brief.answer.OnEngine;
import org.flexwright.examples.brief.answer.PartAnswer;
import org.flexwright.examples.brief.answer.TestPlan;
import org.flexwright.hardness.relation.ModulusFromHardness;
import org.flexwright.quantity.Pressure;

/** The whole answer for programs in other languages: SI numbers, each with its unit. */
final class JsonReport {

  private static final MathContext DIGITS = new MathContext(10);
  private static final JsonMapper MAPPER = new JsonMapper();
  private static final DefaultPrettyPrinter PRINTER =
      new DefaultPrettyPrinter().withObjectIndenter(new DefaultIndenter("  ", "\n"));

  private JsonReport() {}

  static String of(BriefAnswer answer, String version) {
    ObjectNode root = MAPPER.createObjectNode();
    root.put("format", "flexwright design brief answer 1");
    root.put("libraryVersion", version);
    root.put("title", answer.brief().title());
    root.put("scenario", answer.brief().scenario());
    grade(root.putObject("grade"), answer);
    answer
        .laws()
        .ifPresent(l -> LawJson.write(root.putArray("laws"), answer.brief().basis().curves(), l));
    ArrayNode parts = root.putArray("parts");
    answer.parts().forEach(p -> part(parts.addObject(), answer, p));
    ArrayNode plan = root.putArray("testPrintsFirst");
    answer.plan().items().forEach(i -> item(plan.addObject(), i));
    strings(root.putArray("cautions"), answer.cautions());
    strings(root.putArray("sources"), answer.sources().stream().map(Source::toString).toList());
    try {
      return MAPPER.writer(PRINTER).writeValueAsString(root) + "\n";
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("a tree of plain nodes cannot be written", e);
    }
  }

  private static void grade(ObjectNode node, BriefAnswer answer) {
    node.put("name", answer.brief().grade().name());
    answer.brief().basis().reading().ifPresent(r -> node.put("hardness", r.toString()));
    node.put("process", answer.brief().grade().process().toString());
    if (!answer.brief().basis().words().isEmpty()) {
      strings(node.putArray("restsOn"), answer.brief().basis().words());
    }
    answer.relations().ifPresent(r -> relations(node, r));
    ArrayNode curve = node.putArray("secantModulus");
    for (double strain : BriefAnswer.STRAINS) {
      ObjectNode point = curve.addObject();
      value(point.putObject("strain"), strain, "1");
      estimate(point.putObject("modulus"), answer.brief().grade().modulusAt(strain));
    }
    caveats(node.putArray("caveats"), answer.brief().grade().caveats());
  }

  private static void relations(ObjectNode node, ModulusFromHardness relations) {
    ArrayNode rows = node.putArray("relations");
    for (ModulusFromHardness.Row row : relations.used()) {
      relation(rows.addObject(), row, true);
    }
    for (ModulusFromHardness.Row row : relations.leftOut()) {
      relation(rows.addObject(), row, false);
    }
    estimate(node.putObject("modulusBySpread"), relations.spread());
    estimate(node.putObject("modulusWithReading"), relations.withReading());
  }

  private static void relation(ObjectNode node, ModulusFromHardness.Row row, boolean used) {
    node.put("name", row.relation());
    node.put("readAt", row.at().toString());
    value(node.putObject("modulus"), row.modulus().pa(), "Pa");
    node.put("share", round(row.share()));
    node.put("used", used);
    node.put("reason", row.reason());
  }

  private static void estimate(ObjectNode node, Estimate<Pressure> estimate) {
    band(node, estimate.low().pa(), estimate.nominal().pa(), estimate.high().pa(), "Pa");
  }

  private static void part(ObjectNode node, BriefAnswer answer, PartAnswer<?> part) {
    node.put("path", part.asked().path());
    node.put("name", part.asked().name());
    node.put("about", part.chosen().toString());
    node.put("pressurised", part.asked().supply().isPresent());
    ArrayNode answers = node.putArray("answers");
    for (Answer<?> a : part.answers()) {
      question(answers.addObject(), a);
    }
    part.feel()
        .ifPresent(
            f -> {
              ObjectNode feel = node.putObject("feelsLike");
              feel.put("words", f.words());
              band(
                  feel,
                  f.hardness().low().points(),
                  f.hardness().nominal().points(),
                  f.hardness().high().points(),
                  "Shore A");
            });
    caveats(node.putArray("caveats"), answer.caveats(part));
  }

  private static void question(ObjectNode node, Answer<?> answer) {
    node.put("question", answer.words());
    node.put("target", answer.target().toString());
    node.put("lever", answer.window().of().question().lever().name());
    node.put("verdict", answer.verdict().toString());
    node.put("sentence", answer.sentence());
    node.put("preferred", answer.window().label());
    answer.best().ifPresent(b -> candidate(node.putObject("best"), b));
    ArrayNode windows = node.putArray("windows");
    for (Answer.Choice<?> choice : answer.choices()) {
      window(windows.addObject(), choice);
    }
    ArrayNode levers = node.putArray("levers");
    for (Advice<?> advice : answer.levers()) {
      ObjectNode lever = levers.addObject();
      lever.put("kind", advice.kind().name());
      lever.put("name", advice.name());
      lever.put("figure", advice.figure());
      lever.put("enough", advice.enough());
      lever.put("change", round(advice.change()));
      lever.put("sentence", advice.sentence());
    }
    node.put("figuresBy", answer.engine().isPresent() ? "engine" : "closed form");
    answer.engine().ifPresent(e -> engine(node.putObject("engine"), e));
    answer.budget().ifPresent(b -> budget(node.putObject("bandComesFrom"), b));
    node.put("responses", answer.effort());
  }

  private static void engine(ObjectNode node, OnEngine e) {
    node.put("about", EngineWords.ABOUT);
    node.put("asked", e.load().toString());
    ArrayNode rows = node.putArray("besideClosedForm");
    for (OnEngine.Row r : e.rows()) {
      ObjectNode row = rows.addObject();
      String unit = r.both().channel().unit();
      value(row.putObject("size"), r.size().m(), "m");
      value(row.putObject("engine"), r.both().engine(), unit);
      value(row.putObject("closedForm"), r.both().closed(), unit);
      value(row.putObject("ratio"), r.both().ratio(), "1");
      value(row.putObject("peakStrainByEngine"), r.both().engineStrain(), "1");
      value(row.putObject("peakStrainByClosedForm"), r.both().closedStrain(), "1");
    }
    node.put("drawnEnded", e.shapes().termination().toString());
  }

  private static void budget(ObjectNode node, Budget budget) {
    node.put("size", budget.size());
    ArrayNode shares = node.putArray("shares");
    for (Budget.Share s : budget.shares()) {
      ObjectNode share = shares.addObject();
      share.put("name", s.name());
      share.put("low", round(s.low()));
      share.put("high", round(s.high()));
      share.put("unit", "1");
    }
    ObjectNode room = node.putObject("room");
    room.put("down", round(budget.roomDown()));
    if (Double.isFinite(budget.roomUp())) {
      room.put("up", round(budget.roomUp()));
    }
    room.put("unit", "1");
  }

  private static void window(ObjectNode node, Answer.Choice<?> choice) {
    node.put("at", choice.label());
    node.put("verdict", choice.of().verdict().toString());
    intervals(node.putArray("nominal"), choice.of().nominal());
    intervals(node.putArray("sure"), choice.of().sure());
    choice.of().conflict().ifPresent(c -> node.put("conflict", c));
    ArrayNode rows = node.putArray("candidates");
    for (Candidate c : choice.of().candidates()) {
      candidate(rows.addObject(), c);
    }
  }

  private static void intervals(ArrayNode node, List<Interval> intervals) {
    for (Interval i : intervals) {
      ObjectNode interval = node.addObject();
      value(interval.putObject("from"), i.from().m(), "m");
      value(interval.putObject("to"), i.to().m(), "m");
    }
  }

  private static void candidate(ObjectNode node, Candidate c) {
    value(node.putObject("size"), c.size().m(), "m");
    ObjectNode load = node.putObject("load");
    load.put("channel", c.load().channel().toString());
    band(load, c.load().low(), c.load().nominal(), c.load().high(), c.load().channel().unit());
    band(
        node.putObject("peakStrain"),
        c.strain().low(),
        c.strain().nominal(),
        c.strain().high(),
        "1");
    node.put("meetsNominally", c.meetsNominally());
    node.put("verdict", c.verdict().toString());
    node.put("probability", round(c.probability()));
    node.put("probabilityAtWorstOfService", round(c.leastProbability()));
    node.put("binds", c.binds());
    node.put("life", c.life());
    value(node.putObject("printedVolume"), c.printedVolume().m3(), "m3");
    value(node.putObject("mass"), c.mass().kg(), "kg");
    caveats(node.putArray("caveats"), c.caveats());
  }

  private static void item(ObjectNode node, TestPlan.Item item) {
    node.put("teaches", item.name());
    node.put("test", item.test());
    strings(node.putArray("parts"), List.copyOf(item.parts()));
    strings(node.putArray("decides"), item.decides());
    strings(node.putArray("neededNotEnough"), item.needed());
  }

  static void caveats(ArrayNode node, List<Caveat> caveats) {
    for (Caveat c : caveats) {
      ObjectNode caveat = node.addObject();
      caveat.put("model", c.model());
      caveat.put("message", c.message());
      caveat.put("source", c.source().toString());
    }
  }

  private static void band(ObjectNode node, double low, double nominal, double high, String unit) {
    node.put("low", round(low));
    node.put("nominal", round(nominal));
    node.put("high", round(high));
    node.put("unit", unit);
  }

  static void value(ObjectNode node, double value, String unit) {
    node.put("value", round(value));
    node.put("unit", unit);
  }

  private static void strings(ArrayNode node, List<String> words) {
    words.forEach(node::add);
  }

  /** Ten digits, so that the last bit of a machine does not show. */
  static double round(double value) {
    return Double.isFinite(value) ? new BigDecimal(value).round(DIGITS).doubleValue() : value;
  }
}
