package org.flexwright.hardness;

import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The common comparison chart between the scales, as a smooth rising curve that is exact at every
 * entry of the chart.
 *
 * <pre>
 * Shore A  100 95 90 85 80 75 70 65 60 55 50 45 40 35 30
 * Shore D   58 46 39 33 29 25 22 19 16 14 12 10  8  7  6
 * Shore OO       -  - 98 97 95 94 93 91 90 88 86 83 80     (80 to 40 A, then
 *                                    76 70 62 55 45         25 to 5 A)
 * </pre>
 *
 * <p>Below 30 A and 6 D the curve goes on as a straight line, D = A / 5, which is the slope of the
 * last entries and meets zero at zero; that is our extension, and {@link #check(ShoreA)} and {@link
 * #check(ShoreD)} answer with a caveat there. Above 58 D no Shore A exists and the conversion is
 * refused. IRHD is taken equal to Shore A, as is common between 30 and 80 points.
 *
 * <p>The chart is a convention, not physics: linear contact theory with the two indenters misses it
 * by up to 20 to 70 per cent in modulus. One reading on the right scale is better than a
 * conversion.
 *
 * <p>The tolerance is carried through both ends of the band; the larger half is kept, so that the
 * converted band covers the whole band of the reading. The conversions "with scatter" add that of
 * the chart: 3 points of D (0.15 D below 20 D), since a property sheet pairs 96 A with 45 D where
 * the chart has 48, and linear contact of the rounded cone misses it by up to 3 points between 60
 * and 90 A; 4 points of OO, and 8 below 70 OO, by which linear contact misses that column.
 *
 * <pre>{@code
 * HardnessChart.toShoreD(ShoreA.of(95))      // 46 Shore D
 * }</pre>
 */
public final class HardnessChart {

  private static final String MODEL = "hardness comparison chart";
  private static final double TOP_D = 58.0;

  // half the whole band of the chart, in points, and where it changes
  private static final double SCATTER_D = 3.0;
  private static final double D_BEGINS = 20.0;
  private static final double SCATTER_OO = 4.0;
  private static final double SCATTER_OO_SOFT = 8.0;
  private static final double OO_BELONGS = 70.0;

  private static final Source SOURCE =
      Source.read(
          "common durometer comparison chart: Shore D column in one public copy, one point of it in"
              + " a second, Shore OO column in two that agree");
  private static final Source SCATTER_SOURCE =
      Source.derived(
          "misses of the comparison chart: a polyurethane sheet with 96 A and 45 D, a public note"
              + " with 95 A and 45 D, linear contact of the indenters");
  private static final Source IRHD_SOURCE =
      Source.read("handbook chapter on hardness: Shore A about equal to IRHD between 30 and 80");
  private static final ValidityRange RANGE_A =
      new ValidityRange(MODEL, "Shore A", 30.0, 100.0, "points", SOURCE);
  private static final ValidityRange RANGE_D =
      new ValidityRange(MODEL, "Shore D", 6.0, TOP_D, "points", SOURCE);
  private static final ValidityRange RANGE_IRHD =
      new ValidityRange("IRHD as Shore A", "hardness", 30.0, 80.0, "points", IRHD_SOURCE);

  /** The first point is our extension to the origin, the others are the chart. */
  private static final MonotoneCurve A_TO_D =
      new MonotoneCurve(
          new double[] {0, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100},
          new double[] {0, 6, 7, 8, 10, 12, 14, 16, 19, 22, 25, 29, 33, 39, 46, TOP_D});

  private static final MonotoneCurve A_TO_OO =
      new MonotoneCurve(
          new double[] {5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80},
          new double[] {45, 55, 62, 70, 76, 80, 83, 86, 88, 90, 91, 93, 94, 95, 97, 98});

  private HardnessChart() {}

  /**
   * Shore A as Shore D.
   *
   * @param reading the reading on scale A
   * @return the reading on scale D with the tolerance carried over
   */
  public static ShoreD toShoreD(ShoreA reading) {
    double low = A_TO_D.at(reading.low());
    double points = A_TO_D.at(reading.points());
    double high = A_TO_D.at(reading.high());
    return new ShoreD(points, Math.max(points - low, high - points));
  }

  /**
   * Shore D as Shore A.
   *
   * @param reading the reading on scale D, below 58 points
   * @return the reading on scale A with the tolerance carried over
   * @throws org.flexwright.InvalidInputException at 58 Shore D and above, where scale A has ended
   */
  public static ShoreA toShoreA(ShoreD reading) {
    Require.that(
        reading.points() < TOP_D,
        "Shore D reading to convert",
        Text.number(reading.points()) + " points",
        "below 58 points, which is 100 Shore A",
        "stay on Shore D, scale A has ended there");
    double low = A_TO_D.placeOf(reading.low());
    double points = A_TO_D.placeOf(reading.points());
    double high = A_TO_D.placeOf(Math.min(reading.high(), TOP_D));
    return new ShoreA(points, Math.max(points - low, high - points));
  }

  /**
   * IRHD as Shore A: the same number of points.
   *
   * @param reading the reading in IRHD
   * @return the reading on scale A
   */
  public static ShoreA toShoreA(Irhd reading) {
    return new ShoreA(reading.points(), reading.tolerance());
  }

  /**
   * Shore A as IRHD: the same number of points.
   *
   * @param reading the reading on scale A
   * @return the reading in IRHD
   */
  public static Irhd toIrhd(ShoreA reading) {
    return new Irhd(reading.points(), reading.tolerance());
  }

  /**
   * Shore A as Shore D, the tolerance widened by the scatter of the chart.
   *
   * @param reading the reading on scale A
   * @return the reading on scale D
   */
  public static ShoreD toShoreDWithScatter(ShoreA reading) {
    ShoreD d = toShoreD(reading);
    return d.plusMinus(Math.hypot(d.tolerance(), scatterOnD(d.points())));
  }

  /**
   * Shore D as Shore A, the tolerance widened by the scatter of the chart.
   *
   * @param reading the reading on scale D, below 58 points
   * @return the reading on scale A
   * @throws org.flexwright.InvalidInputException at 58 Shore D and above, where scale A has ended
   */
  public static ShoreA toShoreAWithScatter(ShoreD reading) {
    double scatter = scatterOnD(reading.points());
    return toShoreA(reading.plusMinus(Math.hypot(reading.tolerance(), scatter)));
  }

  /**
   * Shore A as a reading of the soft scale OO.
   *
   * @param reading the reading on scale A, 5 to 80 points
   * @return the reading on scale OO, 45 to 98 points, with the tolerance carried over
   * @throws org.flexwright.InvalidInputException outside 5 to 80 Shore A, where the chart has no
   *     Shore OO
   */
  public static DurometerReading toShoreOo(ShoreA reading) {
    double a =
        Require.between(
            "Shore A reading to convert to Shore OO", reading.points(), 5.0, 80.0, "points");
    double points = A_TO_OO.at(a);
    double low = A_TO_OO.at(Math.max(reading.low(), 5.0));
    double high = A_TO_OO.at(Math.min(reading.high(), 80.0));
    return new DurometerReading(Durometer.SHORE_OO, points, Math.max(points - low, high - points));
  }

  /**
   * Shore OO as Shore A.
   *
   * @param reading a reading of a type OO durometer, 45 to 98 points
   * @return the reading on scale A with the tolerance carried over
   * @throws org.flexwright.InvalidInputException for another durometer, or outside 45 to 98 Shore
   *     OO, where the chart ends
   */
  public static ShoreA toShoreA(DurometerReading reading) {
    Require.that(
        reading.durometer() == Durometer.SHORE_OO,
        "reading to convert to Shore A",
        reading,
        "a reading of a type OO durometer",
        "take the modulus by LinearContact");
    double oo =
        Require.between(
            "Shore OO reading to convert to Shore A", reading.points(), 45.0, 98.0, "points");
    double points = A_TO_OO.placeOf(oo);
    double low = A_TO_OO.placeOf(Math.max(reading.low(), 45.0));
    double high = A_TO_OO.placeOf(Math.min(reading.high(), 98.0));
    return new ShoreA(points, Math.max(points - low, high - points));
  }

  /**
   * Shore A as a reading of the scale OO, the tolerance widened by the scatter of the chart.
   *
   * @param reading the reading on scale A, 5 to 80 points
   * @return the reading on scale OO, 45 to 98 points
   * @throws org.flexwright.InvalidInputException outside 5 to 80 Shore A, where the chart has no
   *     Shore OO
   */
  public static DurometerReading toShoreOoWithScatter(ShoreA reading) {
    DurometerReading oo = toShoreOo(reading);
    return oo.plusMinus(Math.hypot(oo.tolerance(), scatterOnOo(oo.points())));
  }

  /**
   * Shore OO as Shore A, the tolerance widened by the scatter of the chart.
   *
   * @param reading a reading of a type OO durometer, 45 to 98 points
   * @return the reading on scale A
   * @throws org.flexwright.InvalidInputException for another durometer, or outside 45 to 98 Shore
   *     OO, where the chart ends
   */
  public static ShoreA toShoreAWithScatter(DurometerReading reading) {
    double scatter = scatterOnOo(reading.points());
    return toShoreA(reading.plusMinus(Math.hypot(reading.tolerance(), scatter)));
  }

  private static double scatterOnD(double pointsOnD) {
    return Math.min(SCATTER_D, pointsOnD * (SCATTER_D / D_BEGINS));
  }

  private static double scatterOnOo(double pointsOnOo) {
    return pointsOnOo < OO_BELONGS ? SCATTER_OO_SOFT : SCATTER_OO;
  }

  /**
   * Where scale A ends on scale D.
   *
   * @return 58 points of Shore D, which is 100 Shore A
   */
  public static double topOfShoreD() {
    return TOP_D;
  }

  /**
   * Where the chart comes from.
   *
   * @return the source
   */
  public static Source source() {
    return SOURCE;
  }

  /**
   * Where the scatter of the chart comes from.
   *
   * @return the source
   */
  public static Source scatterSource() {
    return SCATTER_SOURCE;
  }

  /**
   * The range of the chart between A and D, on scale A.
   *
   * @return 30 to 100 Shore A
   */
  public static ValidityRange range() {
    return RANGE_A;
  }

  /**
   * The range in which IRHD and Shore A are taken as equal.
   *
   * @return 30 to 80 points
   */
  public static ValidityRange irhdRange() {
    return RANGE_IRHD;
  }

  /**
   * The caveat for a reading off the chart, if any.
   *
   * @param reading the reading on scale A
   * @return the caveat, nothing on the chart
   */
  public static Optional<Caveat> check(ShoreA reading) {
    return RANGE_A.check(reading.points());
  }

  /**
   * The caveat for a reading off the chart, if any.
   *
   * @param reading the reading on scale D
   * @return the caveat, nothing on the chart
   */
  public static Optional<Caveat> check(ShoreD reading) {
    return RANGE_D.check(reading.points());
  }

  /**
   * The caveat for an IRHD reading that is no longer close to Shore A, if any.
   *
   * @param reading the reading in IRHD
   * @return the caveat, nothing between 30 and 80 points
   */
  public static Optional<Caveat> check(Irhd reading) {
    return RANGE_IRHD.check(reading.points());
  }
}
