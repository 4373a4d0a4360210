package org.flexwright.examples.brief.input;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.condition.AtTemperature;
import org.flexwright.condition.Condition;
import org.flexwright.condition.Held;
import org.flexwright.condition.PowerRelaxation;
import org.flexwright.condition.TemperatureTable;
import org.flexwright.evidence.Source;
import org.flexwright.quantity.Temperature;

/**
 * Reads the conditions of service, which hold for all parts: first the temperature, then the time
 * under strain. A power law relaxes alike at every temperature, so that the order is no matter.
 */
record ServiceReader(List<Condition> conditions, List<String> words) {

  private static final Temperature COLDEST = Temperature.celsius(-60.0);
  private static final Temperature WARMEST = Temperature.celsius(150.0);
  private static final Span SHORTEST = Span.parse("0.001 s");
  private static final Span LONGEST = Span.parse("20 y");
  private static final Source OWN = Source.read("condition of service measured, as the brief says");

  static ServiceReader of(Entry service, String family) {
    List<Condition> conditions = new ArrayList<>();
    List<String> words = new ArrayList<>();
    boolean generic = family.equals("polyurethane");
    if (service.has("temperature")) {
      AtTemperature warm = temperature(service.child("temperature"), generic);
      conditions.add(warm);
      double factor = warm.law().ratio(warm.reference(), warm.temperature());
      words.add(
          Basis.scaled(
              "at " + warm.temperature() + ", known at " + warm.reference(), factor, warm.band()));
    }
    if (service.has("held")) {
      Entry entry = service.child("held");
      Span time = span(entry, "for");
      Held held = held(entry, time, generic);
      conditions.add(held);
      words.add(Basis.scaled("held for " + time, held.factor(), held.band()));
    }
    service.end();
    if (conditions.isEmpty()) {
      throw BriefException.at(service.path(), "is empty", "a temperature, held, or both");
    }
    return new ServiceReader(conditions, words);
  }

  private static AtTemperature temperature(Entry entry, boolean generic) {
    Temperature at = temperature(entry, "at");
    Temperature known =
        entry.has("knownAt") ? temperature(entry, "knownAt") : Temperature.celsius(23.0);
    TemperatureTable table;
    if (entry.has("points") || !generic) { // what is missing is refused by its name
      table = TemperatureTable.of(known, OWN);
      for (Entry point : entry.objects("points")) {
        Temperature where = temperature(point, "at");
        double ratio = point.number("ratio", 0.001, 1000.0);
        double band = 1.0 + point.counted("within", "%", 0.0, 300.0) / 100.0;
        point.end();
        TemperatureTable before = table;
        table = Entry.make(point.path("at"), () -> before.point(where, ratio, band));
      }
    } else {
      table = TemperatureTable.polyurethane();
    }
    entry.end();
    return AtTemperature.of(at, table).reference(known);
  }

  private static Held held(Entry entry, Span time, boolean generic) {
    PowerRelaxation law = PowerRelaxation.polyurethane();
    if (entry.has("exponent") || !generic) {
      double exponent = entry.number("exponent", 0.001, 0.5);
      double plusMinus = entry.number("plusMinus", 0.0, 0.5);
      Span from = span(entry, "measuredFrom");
      Span to = span(entry, "measuredTo");
      if (from.compareTo(to) >= 0) {
        throw BriefException.at(entry.path("measuredFrom"), "is " + from, "less than " + to);
      }
      law = PowerRelaxation.measured(exponent, plusMinus, from.time(), to.time(), OWN);
    }
    Held held = Held.of(time.time(), law);
    if (entry.has("knownAfter")) {
      held = held.reference(span(entry, "knownAfter").time());
    }
    entry.end();
    return held;
  }

  private static Temperature temperature(Entry entry, String name) {
    return entry.quantity(
        name, "a temperature such as \"40 degC\"", Temperature::parse, COLDEST, WARMEST);
  }

  private static Span span(Entry entry, String name) {
    return entry.quantity(name, "a time such as \"8 h\"", Span::parse, SHORTEST, LONGEST);
  }
}
