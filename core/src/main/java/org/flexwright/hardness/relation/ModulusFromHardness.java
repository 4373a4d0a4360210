package org.flexwright.hardness.relation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * Young's modulus at small strain from a hardness reading, by the published relations that apply,
 * with the spread between them and the part of the reading shown apart.
 *
 * <p>Nominal: the geometric mean E = exp(sum w_i ln E_i) with the shares w_i of this rule.
 *
 * <ol>
 *   <li>Up to 80 Shore A only relations on rubber scales (Shore A, IRHD) count; from 90 Shore A
 *       only those on Shore D, through {@link org.flexwright.hardness.HardnessChart}. Every
 *       relation on A divides by 100 - S or leaves its range: one point at 95 A moves Gent's
 *       modulus by 21 per cent, and the standards discard readings above 90. Between 80 and 90 the
 *       share passes linearly from the one group to the other.
 *   <li>Within a group a relation counts fully inside its stated range and loses its share over the
 *       ten points beyond, as long as another is better placed. If none is in its range, the
 *       nearest ones answer, extrapolated, with a caveat. So the nominal modulus rises without
 *       steps.
 *   <li>Two relations that are the same formula count once, see {@link Relations#independent()}.
 *   <li>An IRHD reading is answered by the relations on rubber scales alone, with IRHD taken as
 *       Shore A between 30 and 80.
 * </ol>
 *
 * <p>The band of {@link #spread()} runs from the lowest to the highest relation with a share;
 * {@link #withReading()} from the lowest at the low end of the reading to the highest at its high
 * end. A relation loses its place in the band when its share ends, so the band (not the nominal)
 * steps at 80 and 90 A. The family of the material is worth a factor of two either way, which no
 * relation knows; calibrate on a print.
 *
 * <p>Range 20 to 95 Shore A, 20 to 60 Shore D, 30 to 95 IRHD; it answers for every reading, with
 * caveats outside. At 95 Shore A: 41 MPa, 34 to 49.
 *
 * <p>Source: the relations, each with its own; the rule is ours.
 *
 * <pre>{@code
 * var e = ModulusFromHardness.of(ShoreA.of(95).plusMinus(3));
 * e.spread()             // 40.96 MPa (33.76 MPa to 49.33 MPa, spread of the relations, ...)
 * System.out.println(e.table());
 * System.out.println(e.disagreement());
 * }</pre>
 *
 * @param reading the reading
 * @param spread nominal modulus, lowest and highest of the relations in use
 * @param withReading the same, widened by the tolerance of the reading
 * @param used the relations with a share
 * @param leftOut the relations without one; those on scale A are missing above 58 Shore D, where no
 *     Shore A exists
 */
public record ModulusFromHardness(
    HardnessReading reading,
    Estimate<Pressure> spread,
    Estimate<Pressure> withReading,
    List<Row> used,
    List<Row> leftOut) {

  /**
   * One relation at the reading.
   *
   * @param relation the name of the relation
   * @param at the reading on the scale of the relation
   * @param modulus what the relation says
   * @param share its share in the nominal modulus, 0 to 1; 0 if left out
   * @param reason why it is used or left out
   * @param range the range of the relation
   * @param source where the relation comes from
   */
  public record Row(
      String relation,
      HardnessReading at,
      Pressure modulus,
      double share,
      String reason,
      ValidityRange range,
      Source source) {

    private static Row of(Choice.Member m, String reason) {
      HardnessRelation r = m.relation();
      Pressure modulus = Pressure.pa(m.pascals());
      return new Row(r.name(), m.at(), modulus, m.share(), reason, r.range(), r.source());
    }

    /**
     * By how many points the reading lies outside the range of the relation.
     *
     * @return points of its scale, 0 inside
     */
    public double outside() {
      return Choice.excess(range, at.points());
    }

    /** One readable line. */
    @Override
    public String toString() {
      String percent = share == 0.0 ? "-" : Text.percent(share);
      return line(relation, at, modulus, percent, reason);
    }

    private static String line(Object... cells) {
      return String.format(Locale.ROOT, "%-34s %-17s %-11s %6s  %s", cells);
    }

    private String compared(Pressure lowest) {
      String where = outside() == 0.0 ? "in" : "out by " + Text.number(outside(), 2);
      String ratio = String.format(Locale.ROOT, "%.2f", modulus.ratioTo(lowest));
      return comparison(relation, at, modulus, ratio, where, range, source.standing());
    }

    private static String comparison(Object... cells) {
      return String.format(Locale.ROOT, "%-34s %-17s %-11s %6s  %-11s %-27s %s", cells);
    }
  }

  /**
   * Keeps the lists from being changed.
   *
   * @param reading the reading
   * @param spread nominal modulus, lowest and highest of the relations in use
   * @param withReading the same, widened by the tolerance of the reading
   * @param used the relations with a share
   * @param leftOut the relations without one
   */
  public ModulusFromHardness {
    used = List.copyOf(used);
    leftOut = List.copyOf(leftOut);
  }

  /**
   * The modulus by the relations of the library.
   *
   * @param reading any reading
   * @return modulus, bands and the relations behind them
   */
  public static ModulusFromHardness of(HardnessReading reading) {
    return solve(reading, Relations.independent(), Reasons.twins());
  }

  /**
   * The modulus by relations of your choice, every one counted as a separate witness.
   *
   * @param reading any reading
   * @param relations the relations, built-in or your own
   * @return modulus, bands and the relations behind them
   * @throws org.flexwright.InvalidInputException if no relation is on a scale to which the reading
   *     can be converted, or a relation answers with a modulus that is not above zero
   */
  public static ModulusFromHardness of(HardnessReading reading, List<HardnessRelation> relations) {
    return solve(reading, List.copyOf(relations), List.of());
  }

  private static ModulusFromHardness solve(
      HardnessReading reading, List<HardnessRelation> relations, List<HardnessRelation> twins) {
    Choice choice = Choice.at(reading, relations);
    List<Row> used = new ArrayList<>();
    List<Row> left = new ArrayList<>();
    List<Source> sources = new ArrayList<>();
    for (Choice.Member m : choice.members()) {
      if (m.share() > 0.0) {
        used.add(Row.of(m, Reasons.used(m)));
        sources.add(m.relation().source());
      } else {
        left.add(Row.of(m, Reasons.leftOut(m, reading)));
      }
    }
    List<Caveat> caveats = Reasons.caveats(reading, choice, left, sources);
    if (!twins.isEmpty()) {
      addTwins(reading, twins, left);
    }
    Choice low = Choice.at(withPoints(reading, reading.low()), relations);
    Choice high = Choice.at(withPoints(reading, reading.high()), relations);
    double nominal = Math.exp(choice.logNominal());
    double least = Math.min(choice.lowest(), nominal);
    double most = Math.max(choice.highest(), nominal);
    return new ModulusFromHardness(
        reading,
        estimate(least, nominal, most, Estimate.Band.SPREAD_OF_RELATIONS, sources, caveats),
        estimate(
            Math.min(least, low.lowest()),
            nominal,
            Math.max(most, high.highest()),
            Estimate.Band.SPREAD_AND_READING,
            sources,
            Reasons.withEnds(caveats, low, high)),
        used,
        left);
  }

  private static void addTwins(
      HardnessReading reading, List<HardnessRelation> twins, List<Row> left) {
    for (Choice.Member m : Choice.at(reading, twins).members()) {
      left.add(Row.of(m.unshared(), Reasons.twin(m.relation())));
    }
  }

  private static Estimate<Pressure> estimate(
      double low,
      double nominal,
      double high,
      Estimate.Band band,
      List<Source> sources,
      List<Caveat> caveats) {
    return new Estimate<>(
        Pressure.pa(low), Pressure.pa(nominal), Pressure.pa(high), band, sources, caveats);
  }

  private static HardnessReading withPoints(HardnessReading reading, double points) {
    if (reading instanceof ShoreA) {
      return ShoreA.of(points);
    }
    return reading instanceof ShoreD ? ShoreD.of(points) : Irhd.of(points);
  }

  /**
   * Every relation, in use or not, as a table of lines.
   *
   * @return readable ASCII text of several lines
   */
  public String table() {
    StringBuilder text = new StringBuilder();
    text.append("Young's modulus from ").append(reading).append('\n');
    text.append(Row.line("relation", "read at", "modulus", "share", "remark")).append('\n');
    for (Row row : used) {
      text.append(row).append('\n');
    }
    for (Row row : leftOut) {
      text.append(row).append('\n');
    }
    return text.append(bands()).toString();
  }

  /**
   * How far the relations disagree, as a table of lines: every relation that can be asked, from the
   * softest answer to the stiffest, with its ratio to the softest, its range, whether the reading
   * lies in it, and how its source was used.
   *
   * @return readable ASCII text of several lines
   */
  public String disagreement() {
    List<Row> all = new ArrayList<>(used);
    all.addAll(leftOut);
    all.sort(Comparator.comparing(Row::modulus));
    Pressure lowest = all.get(0).modulus();
    StringBuilder text = new StringBuilder();
    text.append("What the relations say at ").append(reading).append('\n');
    text.append(
            Row.comparison(
                "relation", "read at", "modulus", "ratio", "range", "good for", "source"))
        .append('\n');
    for (Row row : all) {
      text.append(row.compared(lowest)).append('\n');
    }
    return text.append("stiffest over softest: ")
        .append(ratio(all))
        .append(inRange(all))
        .toString();
  }

  private static String inRange(List<Row> all) {
    List<Row> good = all.stream().filter(r -> r.outside() == 0.0).toList();
    return good.isEmpty() ? ", none in its range" : "; of those in their range: " + ratio(good);
  }

  private static String ratio(List<Row> rising) {
    Pressure most = rising.get(rising.size() - 1).modulus();
    return String.format(Locale.ROOT, "%.2f", most.ratioTo(rising.get(0).modulus()));
  }

  private String bands() {
    return spread.nominal()
        + ", relations "
        + spread.low()
        + " to "
        + spread.high()
        + ", with the reading "
        + withReading.low()
        + " to "
        + withReading.high();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "modulus from " + reading + ": " + bands();
  }
}
