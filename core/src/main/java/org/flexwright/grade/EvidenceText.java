package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;

/** Sources, caveats and factors as fields. */
final class EvidenceText {

  private static final int MOST = 1000;

  private EvidenceText() {}

  static void write(TextLines to, String key, Source source) {
    to.text(key, source.text());
    to.word(key + ".standing", word(source.standing()));
  }

  static Source source(TextFields from, String key) {
    String text = from.text(key);
    String standing = from.word(key + ".standing");
    for (Source.Standing each : Source.Standing.values()) {
      if (word(each).equals(standing)) {
        return new Source(text, each);
      }
    }
    throw from.refuse(key + ".standing", "read, memory, derived or another standing", "");
  }

  static String word(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static void writeSources(TextLines to, List<Source> sources) {
    to.word("sources", Integer.toString(sources.size()));
    for (int i = 0; i < sources.size(); i++) {
      write(to, "source." + (i + 1), sources.get(i));
    }
  }

  static List<Source> sources(TextFields from) {
    int n = from.count("sources", MOST);
    List<Source> sources = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      sources.add(source(from, "source." + i));
    }
    return sources;
  }

  static void writeCaveats(TextLines to, List<Caveat> caveats) {
    to.word("caveats", Integer.toString(caveats.size()));
    for (int i = 0; i < caveats.size(); i++) {
      Caveat c = caveats.get(i);
      String key = "caveat." + (i + 1);
      to.text(key, c.message());
      to.text(key + ".model", c.model());
      write(to, key + ".source", c.source());
      c.excursion()
          .ifPresent(
              e -> {
                ValidityRange r = e.range();
                to.number(key + ".value", e.value(), "");
                to.text(key + ".range", r.model());
                to.text(key + ".range.input", r.input());
                to.number(key + ".range.low", r.low(), "");
                to.number(key + ".range.high", r.high(), "");
                to.text(key + ".range.unit", r.unit());
                write(to, key + ".range.source", r.source());
              });
    }
  }

  static List<Caveat> caveats(TextFields from) {
    int n = from.count("caveats", MOST);
    List<Caveat> caveats = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      caveats.add(caveat(from, "caveat." + i));
    }
    return caveats;
  }

  private static Caveat caveat(TextFields from, String key) {
    String message = from.text(key);
    String model = from.text(key + ".model");
    Source source = source(from, key + ".source");
    Optional<Caveat.Excursion> excursion = Optional.empty();
    if (from.has(key + ".value")) {
      double value = from.extended(key + ".value", "");
      String of = from.text(key + ".range");
      String input = from.text(key + ".range.input");
      double low = from.extended(key + ".range.low", "");
      double high = from.extended(key + ".range.high", "");
      String unit = from.text(key + ".range.unit");
      Source who = source(from, key + ".range.source");
      excursion =
          Optional.of(
              new Caveat.Excursion(
                  value,
                  from.at(
                      key + ".range.low",
                      () -> new ValidityRange(of, input, low, high, unit, who))));
    }
    return new Caveat(model, message, source, excursion);
  }

  static void writeFactors(TextLines to, Factors factors) {
    for (Factor f : Factor.values()) {
      to.number("factor." + word(f), factors.sigma(f), "");
    }
    for (Factor a : Factor.values()) {
      for (Factor b : Factor.values()) {
        if (a.compareTo(b) < 0 && factors.correlation(a, b) != 0.0) {
          to.number(pair(a, b), factors.correlation(a, b), "");
        }
      }
    }
  }

  private static String pair(Factor a, Factor b) {
    return "correlation." + word(a) + "." + word(b);
  }

  static Factors factors(TextFields from) {
    Factors factors = Factors.none();
    for (Factor f : Factor.values()) {
      String key = "factor." + word(f);
      Factors so = factors;
      double sigma = from.number(key, "");
      factors = from.at(key, () -> so.with(f, sigma));
    }
    for (Factor a : Factor.values()) {
      for (Factor b : Factor.values()) {
        if (a.compareTo(b) < 0 && from.has(pair(a, b))) {
          Factors so = factors;
          double rho = from.number(pair(a, b), "");
          factors = from.at(pair(a, b), () -> so.correlated(a, b, rho));
        }
      }
    }
    return factors;
  }
}
