package org.flexwright.hardness.relation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.Durometer;
import org.flexwright.hardness.HardnessChart;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Text;

/** Why a relation is used or left out, and which caveats follow for the result. */
final class Reasons {

  private static final String MODEL = "choice of hardness relations";
  private static final Source RULE =
      Source.assumption(
          "relations on rubber scales up to 80 Shore A, on Shore D from 90, both between");
  private static final ValidityRange SCALE_A = Durometer.SHORE_A.range();
  private static final ValidityRange SCALE_D = Durometer.SHORE_D.range();
  private static final ValidityRange MATERIAL =
      new ValidityRange(
          "hardness relations against moulded polyurethane",
          "Shore D",
          Double.NEGATIVE_INFINITY,
          60.0,
          "points",
          Source.read(
              "property sheets of moulded thermoplastic polyurethane, 1300 to 2000 MPa at 75 Shore D"
                  + " where the relations say 180 to 380"));

  private static final double D_BEGINS =
      HardnessChart.toShoreD(ShoreA.of(Choice.RUBBER_ALONE)).points();

  private Reasons() {}

  /** The relations that are not counted beside the independent ones. */
  static List<HardnessRelation> twins() {
    List<HardnessRelation> rest = new ArrayList<>(Relations.all());
    rest.removeAll(Relations.independent());
    return rest;
  }

  /** Why one of them is not counted. */
  static String twin(HardnessRelation relation) {
    if (relation instanceof ShoreDFormula) {
      return "the Sneddon cone with rounded constants, counted once";
    }
    if (relation instanceof KunzStuder2006) {
      return "the cylinder of Gent 1958 on the radius of the flat, counted once";
    }
    if (relation instanceof ContactRelation) {
      return "the contact of Gent 1958 on the true cone, counted once";
    }
    if (relation instanceof LindleyTable) {
      return "one family, black-filled natural rubber: name it to use it";
    }
    return relation instanceof MouldedPolyurethane
        ? "one family, moulded polyurethane: name it to use it"
        : "a fit that follows Gent 1958, counted once";
  }

  private static boolean offScaleA(ShoreD reading) {
    return reading.points() >= HardnessChart.topOfShoreD();
  }

  static String used(Choice.Member m) {
    return m.excess() == 0.0
        ? "in its range, " + m.relation().range()
        : "extrapolated by " + points(m.excess()) + ", good for " + m.relation().range();
  }

  static String leftOut(Choice.Member m, HardnessReading reading) {
    if (m.rubber() && !(reading instanceof Irhd) && endsBefore(m)) {
      return "relations on rubber scales end at 90 Shore A";
    }
    if (!m.rubber()) {
      if (reading instanceof Irhd) {
        return "relations on Shore D do not answer for IRHD";
      }
      if (m.at().points() <= D_BEGINS) {
        return "relations on Shore D begin at 80 Shore A";
      }
    }
    return points(m.excess()) + " outside its range, " + m.relation().range();
  }

  private static boolean endsBefore(Choice.Member m) {
    return m.at().points() >= Choice.D_ALONE;
  }

  private static String points(double count) {
    return Text.number(count, 2) + " points";
  }

  /** The caveats of a choice; adds the sources of the conversions that were needed. */
  static List<Caveat> caveats(
      HardnessReading reading,
      Choice choice,
      List<ModulusFromHardness.Row> left,
      List<Source> sources) {
    List<Caveat> result = new ArrayList<>();
    boolean chart = false;
    boolean equal = false;
    for (Choice.Member m : choice.members()) {
      if (m.share() > 0.0) {
        m.relation().range().check(m.at().points()).ifPresent(result::add);
        chart |= m.at() instanceof ShoreD != reading instanceof ShoreD;
        equal |= m.rubber() && m.at() instanceof Irhd != reading instanceof Irhd;
        if (m.at() instanceof ShoreD) {
          once(result, MATERIAL.check(m.at().points()));
        }
      }
    }
    if (reading instanceof ShoreA a) {
      SCALE_A.check(a.points()).ifPresent(result::add);
      addIf(chart, HardnessChart.check(a), HardnessChart.source(), result, sources);
    } else if (reading instanceof ShoreD d) {
      once(result, SCALE_D.check(d.points()));
      addIf(chart, HardnessChart.check(d), HardnessChart.source(), result, sources);
    }
    ValidityRange same = HardnessChart.irhdRange();
    addIf(equal, equalCheck(same, choice, reading), same.source(), result, sources);
    byReason(left)
        .forEach(
            (reason, names) ->
                result.add(Caveat.note(MODEL, "left out: " + names + "; " + reason, RULE)));
    if (reading instanceof ShoreD d && offScaleA(d)) {
      result.add(
          Caveat.note(
              MODEL,
              "relations on Shore A and IRHD are silent above 58 Shore D, 100 Shore A",
              RULE));
    }
    return result;
  }

  private static Optional<Caveat> equalCheck(
      ValidityRange same, Choice choice, HardnessReading reading) {
    for (Choice.Member m : choice.members()) {
      if (m.share() > 0.0 && m.rubber() && m.at() instanceof Irhd != reading instanceof Irhd) {
        return same.check(m.at().points());
      }
    }
    return Optional.empty();
  }

  private static void addIf(
      boolean needed,
      Optional<Caveat> caveat,
      Source source,
      List<Caveat> caveats,
      List<Source> sources) {
    if (needed) {
      sources.add(source);
      caveat.ifPresent(caveats::add);
    }
  }

  private static void once(List<Caveat> caveats, Optional<Caveat> caveat) {
    if (caveat.isPresent() && !caveats.contains(caveat.get())) {
      caveats.add(caveat.get());
    }
  }

  private static Map<String, String> byReason(List<ModulusFromHardness.Row> left) {
    Map<String, String> names = new LinkedHashMap<>();
    for (ModulusFromHardness.Row row : left) {
      names.merge(row.reason(), row.relation(), (a, b) -> a + ", " + b);
    }
    return names;
  }

  /** The caveats, with those that arise only at the ends of the reading. */
  static List<Caveat> withEnds(List<Caveat> caveats, Choice low, Choice high) {
    List<Caveat> result = new ArrayList<>(caveats);
    for (Choice end : List.of(low, high)) {
      for (Choice.Member m : end.members()) {
        boolean known =
            result.stream()
                .anyMatch(
                    c ->
                        c.model().equals(m.relation().range().model())
                            && c.excursion().isPresent());
        if (m.share() > 0.0 && !known) {
          m.relation().range().check(m.at().points()).ifPresent(result::add);
        }
      }
    }
    return result;
  }
}
