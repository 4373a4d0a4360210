package org.flexwright.grade;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.flexwright.condition.OgdenRoxburgh;
import org.flexwright.condition.SoftenedLaw;
import org.flexwright.fit.LawInData;
import org.flexwright.internal.Require;
import org.flexwright.law.HenckyCurve;
import org.flexwright.law.LawFamily;
import org.flexwright.law.ScaledLaw;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.law.classical.LawFamilies;
import org.flexwright.law.classical.Ogden;
import org.flexwright.quantity.Pressure;

/** Laws as fields: families by their constants, curves by their points, laws of laws nested. */
final class LawText {

  private static final String CURVE = "stress-curve";
  private static final String OGDEN = "Ogden";
  private static final String SCALED = "scaled";
  private static final String ENDING = "ending-at-data";
  private static final String SOFTENED = "softened";
  private static final List<String> OURS = List.of(CURVE, OGDEN, SCALED, ENDING, SOFTENED);
  private static final int MOST_POINTS = 20_000;
  private static final int MOST_TERMS = 99;
  private static final int DEEPEST = 16;

  private final List<LawFamily> own;

  LawText(List<LawFamily> own) {
    this.own = List.copyOf(own);
    List<String> seen = new ArrayList<>();
    for (LawFamily family : this.own) {
      Require.that(
          family.name().matches("[A-Za-z0-9-]{1,60}"),
          "name of a law family",
          '"' + family.name() + '"',
          "letters, digits and hyphens",
          "");
      Require.that(
          !OURS.contains(family.name())
              && LawFamilies.named(family.name()).isEmpty()
              && !seen.contains(family.name()),
          "name of a law family",
          family.name(),
          "one that no other family has",
          "");
      seen.add(family.name());
    }
  }

  void write(TextLines to, String key, StrainEnergy law, int depth) {
    Require.that(
        depth <= DEEPEST,
        "laws inside laws",
        depth,
        "at most " + DEEPEST,
        "apply fewer conditions");
    if (law instanceof HenckyCurve curve) {
      writeCurve(to, key, curve);
    } else if (law instanceof Ogden ogden) {
      writeOgden(to, key, ogden);
    } else if (law instanceof ScaledLaw scaled) {
      to.word(key, SCALED);
      to.number(key + ".factor", scaled.factor(), "");
      write(to, key + ".of", scaled.of(), depth + 1);
    } else if (law instanceof LawInData data) {
      to.word(key, ENDING);
      to.number(key + ".low", data.range().low(), "");
      to.number(key + ".high", data.range().high(), "");
      to.text(key + ".reason", data.range().reason());
      EvidenceText.write(to, key + ".source", data.range().source());
      write(to, key + ".of", data.of(), depth + 1);
    } else if (law instanceof SoftenedLaw soft) {
      to.word(key, SOFTENED);
      to.number(key + ".largest", soft.largest().pa(), "Pa");
      to.number(key + ".r", soft.softening().r(), "");
      to.number(key + ".m", soft.softening().m().pa(), "Pa");
      to.number(key + ".beta", soft.softening().beta(), "");
      to.number(key + ".band", soft.softening().band(), "");
      EvidenceText.write(to, key + ".source", soft.softening().source());
      write(to, key + ".of", soft.virgin(), depth + 1);
    } else {
      writeFamily(to, key, law);
    }
  }

  private static void writeCurve(TextLines to, String key, HenckyCurve curve) {
    double[] strain = curve.strains();
    Pressure[] stress = curve.stresses();
    to.word(key, CURVE);
    to.word(key + ".points", Integer.toString(strain.length));
    for (int i = 0; i < strain.length; i++) {
      to.number(key + ".strain." + (i + 1), strain[i], "");
      to.number(key + ".stress." + (i + 1), stress[i].pa(), "Pa");
    }
  }

  private static void writeOgden(TextLines to, String key, Ogden ogden) {
    to.word(key, OGDEN);
    to.word(key + ".terms", Integer.toString(ogden.terms().size()));
    for (int i = 0; i < ogden.terms().size(); i++) {
      to.number(key + ".mu." + (i + 1), ogden.terms().get(i).mu().pa(), "Pa");
      to.number(key + ".alpha." + (i + 1), ogden.terms().get(i).alpha(), "");
    }
  }

  private void writeFamily(TextLines to, String key, StrainEnergy law) {
    Optional<LawFamily> found =
        Stream.concat(own.stream(), LawFamilies.ALL.stream())
            .filter(f -> f.values(law).filter(v -> exact(f, law, v)).isPresent())
            .findFirst();
    Require.that(
        found.isPresent(),
        "law to be saved",
        law,
        "a law of a known family, a stress curve, or one of these changed by a condition",
        "give its family to the text with GradeText.of(family)");
    LawFamily family = found.orElseThrow();
    double[] values = family.values(law).orElseThrow();
    to.word(key, family.name());
    for (int i = 0; i < values.length; i++) {
      LawFamily.Constant c = family.constants().get(i);
      to.number(key + "." + c.name(), values[i], unit(c));
    }
  }

  /** Whether the values make the law again to the last bit. */
  private boolean exact(LawFamily family, StrainEnergy law, double[] values) {
    if (values.length != family.constants().size()) {
      return false;
    }
    StrainEnergy again = family.law(values);
    return again.equals(law)
        || (own.contains(family) && Arrays.equals(family.values(again).orElse(null), values));
  }

  private static String unit(LawFamily.Constant c) {
    return c.kind() == LawFamily.Constant.Kind.STRESS ? "Pa" : "";
  }

  StrainEnergy read(TextFields from, String key, int depth) {
    String kind = from.word(key);
    if (depth > DEEPEST) {
      throw from.refuse(key, "at most " + DEEPEST + " laws inside laws", "");
    }
    return switch (kind) {
      case CURVE -> readCurve(from, key);
      case OGDEN -> readOgden(from, key);
      case SCALED -> {
        double factor = from.number(key + ".factor", "");
        StrainEnergy of = read(from, key + ".of", depth + 1);
        yield from.at(key, () -> new ScaledLaw(of, factor));
      }
      case ENDING -> readEnding(from, key, depth);
      case SOFTENED -> readSoftened(from, key, depth);
      default -> readFamily(from, key, kind);
    };
  }

  private static StrainEnergy readCurve(TextFields from, String key) {
    int n = from.count(key + ".points", MOST_POINTS);
    double[] strain = new double[n];
    Pressure[] stress = new Pressure[n];
    for (int i = 0; i < n; i++) {
      strain[i] = from.number(key + ".strain." + (i + 1), "");
      stress[i] = Pressure.pa(from.number(key + ".stress." + (i + 1), "Pa"));
    }
    return from.at(key, () -> HenckyCurve.through(strain, stress));
  }

  private static StrainEnergy readOgden(TextFields from, String key) {
    int n = from.count(key + ".terms", MOST_TERMS);
    List<Ogden.Term> terms = new ArrayList<>();
    for (int i = 1; i <= n; i++) {
      Pressure mu = Pressure.pa(from.number(key + ".mu." + i, "Pa"));
      double alpha = from.number(key + ".alpha." + i, "");
      terms.add(from.at(key + ".mu." + i, () -> new Ogden.Term(mu, alpha)));
    }
    return from.at(key, () -> new Ogden(terms));
  }

  private StrainEnergy readEnding(TextFields from, String key, int depth) {
    double low = from.number(key + ".low", "");
    double high = from.extended(key + ".high", "");
    String reason = from.text(key + ".reason");
    var source = EvidenceText.source(from, key + ".source");
    StretchRange range = from.at(key, () -> new StretchRange(low, high, reason, source));
    return new LawInData(read(from, key + ".of", depth + 1), range);
  }

  private StrainEnergy readSoftened(TextFields from, String key, int depth) {
    Pressure largest = Pressure.pa(from.number(key + ".largest", "Pa"));
    double r = from.number(key + ".r", "");
    Pressure m = Pressure.pa(from.number(key + ".m", "Pa"));
    double beta = from.number(key + ".beta", "");
    double band = from.number(key + ".band", "");
    var source = EvidenceText.source(from, key + ".source");
    StrainEnergy of = read(from, key + ".of", depth + 1);
    return from.at(key, () -> OgdenRoxburgh.of(r, m, beta, band, source).conditioned(of, largest));
  }

  private StrainEnergy readFamily(TextFields from, String key, String kind) {
    LawFamily family =
        own.stream()
            .filter(f -> f.name().equals(kind))
            .findFirst()
            .or(() -> LawFamilies.named(kind))
            .orElseThrow(
                () ->
                    from.refuse(
                        key,
                        "a family of LawFamilies or " + String.join(", ", OURS),
                        "give a family of your own with GradeText.of(family)"));
    List<LawFamily.Constant> constants = family.constants();
    double[] values = new double[constants.size()];
    for (int i = 0; i < values.length; i++) {
      LawFamily.Constant c = constants.get(i);
      values[i] = from.number(key + "." + c.name(), unit(c));
    }
    return from.at(key, () -> family.law(values));
  }
}
