package org.flexwright.condition;

import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Temperature;
import org.jspecify.annotations.Nullable;

/**
 * The modulus by temperature as points of a table, ln E straight over T between them.
 *
 * <p>Formula: ln E(T)/E(T0) = straight pieces through the points. Symbols: T temperature (degC), T0
 * the reference at which the ratio is 1. Between points that rise or fall the curve rises or falls.
 *
 * <p>Range: from the coldest point to the warmest; beyond, the end is kept and a caveat added.
 * Band: each point states how far its ratio to the reference may be off; the errors of ln E are
 * taken to add up along the temperature, so the band between two temperatures is that gained
 * between them.
 *
 * <p>Caveats: temperatures outside the range; those of the generic table.
 *
 * <p>Source: the user's points, or see {@link #polyurethane}.
 *
 * <p>JShell: {@code TemperatureTable.of(Temperature.celsius(23), source).point(
 * Temperature.celsius(60), 0.7, 1.1)}
 */
public final class TemperatureTable implements TemperatureLaw {

  private static final String NAME = "modulus by temperature";

  private record Value(double logRatio, double logBand) {}

  private final Temperature reference;
  private final Source source;
  private final List<Caveat> notes;
  private final NavigableMap<Temperature, Value> points;
  private final ValidityRange range;
  private final @Nullable PolynomialSplineFunction ratio;
  private final @Nullable PolynomialSplineFunction band;

  private TemperatureTable(
      Temperature reference,
      Source source,
      List<Caveat> notes,
      NavigableMap<Temperature, Value> points) {
    this.reference = reference;
    this.source = source;
    this.notes = notes;
    this.points = points;
    range = Temperatures.range(NAME, points.firstKey(), points.lastKey(), source);
    if (points.size() < 2) {
      ratio = null;
      band = null;
      return;
    }
    double[] t = new double[points.size()];
    double[] r = new double[t.length];
    double[] b = new double[t.length];
    int i = 0;
    for (var point : points.entrySet()) {
      t[i] = point.getKey().celsius();
      r[i] = point.getValue().logRatio();
      // signed, so that it grows away from the reference on both sides
      b[i++] = Math.copySign(point.getValue().logBand(), point.getKey().compareTo(reference));
    }
    ratio = new LinearInterpolator().interpolate(t, r);
    band = new LinearInterpolator().interpolate(t, b);
  }

  /**
   * A table that starts with its reference.
   *
   * @param reference the temperature at which the ratio is 1
   * @param source where its points come from
   * @return the table, without other points yet
   */
  public static TemperatureTable of(Temperature reference, Source source) {
    NavigableMap<Temperature, Value> points = new TreeMap<>();
    points.put(reference, new Value(0.0, 0.0));
    return new TemperatureTable(reference, source, List.of(), points);
  }

  /**
   * This table with one more point.
   *
   * @param at the temperature, another than those there are
   * @param ratio the modulus there over that at the reference, above 0
   * @param band how far that ratio may be off, at least 1
   * @return the new table
   * @throws org.flexwright.InvalidInputException if the temperature is there already, the ratio not
   *     above 0 or the band below 1
   */
  public TemperatureTable point(Temperature at, double ratio, double band) {
    Require.that(!points.containsKey(at), "temperature of a point", at, "a new one", "");
    Require.positive("ratio of the modulus at " + at, ratio, "");
    Require.between("band of the modulus at " + at, band, 1.0, 100.0, "");
    NavigableMap<Temperature, Value> more = new TreeMap<>(points);
    more.put(at, new Value(Math.log(ratio), Math.log(band)));
    return new TemperatureTable(reference, source, notes, more);
  }

  /**
   * Moulded thermoplastic polyurethane of 85 Shore A to 55 Shore D, a default with a wide band: 4.4
   * times the modulus at -30 degC (property sheets: 2.2 and 8.7), 0.58 times at 70 degC (0.45 and
   * 0.75), each the geometric mean of two grades. Two grades are few: the band is as wide as the
   * two lie apart, twice what they span.
   *
   * @return the table, 1 at 23 degC
   */
  public static TemperatureTable polyurethane() {
    Source sheets =
        Source.read(
            "open property sheets of moulded thermoplastic polyurethane, flexural modulus of three"
                + " grades at -30, 23 and 70 degC");
    double[] cold = {59.0 / 26.9, 1206.58 / 137.9};
    double[] warm = {62.12 / 137.9, 51.71 / 68.88};
    TemperatureTable table =
        of(Temperatures.LABORATORY, sheets)
            .point(Temperature.celsius(-30), Math.sqrt(cold[0] * cold[1]), cold[1] / cold[0])
            .point(Temperature.celsius(70), Math.sqrt(warm[0] * warm[1]), warm[1] / warm[0]);
    Caveat note =
        Caveat.note(
            NAME,
            "generic default of two grades a temperature; the harder grade changes more, and below 0"
                + " degC the glass transition makes a step that straight pieces miss: measure the"
                + " grade",
            sheets);
    return new TemperatureTable(table.reference, sheets, List.of(note), table.points);
  }

  private double at(@Nullable PolynomialSplineFunction curve, Temperature t) {
    return curve == null ? 0.0 : curve.value(Temperatures.inside(range, t));
  }

  @Override
  public double ratio(Temperature from, Temperature to) {
    return Math.exp(at(ratio, to) - at(ratio, from));
  }

  @Override
  public double band(Temperature from, Temperature to) {
    return Math.exp(Math.abs(at(band, to) - at(band, from)));
  }

  @Override
  public List<Caveat> caveats(Temperature from, Temperature to) {
    List<Caveat> all = new ArrayList<>(Temperatures.outside(range, from, to));
    all.addAll(notes);
    return List.copyOf(all);
  }

  @Override
  public List<Source> sources() {
    return List.of(source);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "modulus at " + points.keySet();
  }
}
