package org.flexwright.hardness.relation;

import org.apache.commons.math3.analysis.interpolation.LinearInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.hardness.HardnessReading;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.Irhd;
import org.flexwright.quantity.Pressure;

/**
 * Lindley's table of natural rubber springs: moduli and compression factor over IRHD.
 *
 * <pre>
 * IRHD   30   35   40   45   50   55   60   65   70   75
 * E0   0.92 1.18 1.50 1.80 2.20 3.25 4.45 5.85 7.35 9.40   MPa
 * G    0.30 0.37 0.45 0.54 0.64 0.81 1.06 1.37 1.73 2.22   MPa
 * k    0.93 0.89 0.85 0.80 0.73 0.64 0.57 0.54 0.53 0.52
 * </pre>
 *
 * <p>E0 Young's modulus at small strain; G shear modulus of a spring at work; k compression factor
 * of a bonded block, E_c = E0 (1 + 2 k S^2) with S its shape factor. Between the entries ln E0, ln
 * G and k run straight; E0 and G go on with the slope of the last two entries, k stays.
 *
 * <p>Never make one law of both columns: above 48 IRHD the compounds are filled with carbon black,
 * E0 / G is 4.0 to 4.3 instead of 3, since the filler softens between the two test strains. Use E0
 * for a block pressed a little, G for a spring sheared far.
 *
 * <p>Range 30 to 75 IRHD; black-filled natural rubber above 48.
 *
 * <p>Source: P. B. Lindley, Engineering Design with Natural Rubber (4th ed. 1978), from memory; k
 * at 65 and 75 read in a quotation, E0 there 2 per cent lower (5.72 and 9.24 MPa).
 *
 * <pre>{@code
 * new LindleyTable().modulus(60)                // 4.45 MPa
 * new LindleyTable().compressionFactor(60)      // 0.57
 * }</pre>
 */
public record LindleyTable() implements HardnessRelation {

  private static final String NAME = "Lindley 1978";
  private static final Source SOURCE =
      Source.memory("P. B. Lindley, Engineering Design with Natural Rubber (4th ed. 1978)");
  private static final ValidityRange RANGE =
      new ValidityRange(NAME, "IRHD", 30.0, 75.0, "points", SOURCE);

  private static final double[] IRHD = {30, 35, 40, 45, 50, 55, 60, 65, 70, 75};
  private static final double[] YOUNG = {
    0.92, 1.18, 1.50, 1.80, 2.20, 3.25, 4.45, 5.85, 7.35, 9.40
  };
  private static final double[] SHEAR = {
    0.30, 0.37, 0.45, 0.54, 0.64, 0.81, 1.06, 1.37, 1.73, 2.22
  };
  private static final double[] FACTOR = {
    0.93, 0.89, 0.85, 0.80, 0.73, 0.64, 0.57, 0.54, 0.53, 0.52
  };

  private static final double[] SCALE = extended(IRHD, IRHD);
  private static final double[] LOG_YOUNG = extended(IRHD, logs(YOUNG));
  private static final PolynomialSplineFunction YOUNG_AT = line(SCALE, LOG_YOUNG);
  private static final PolynomialSplineFunction READING_AT = line(LOG_YOUNG, SCALE);
  private static final PolynomialSplineFunction SHEAR_AT = line(SCALE, extended(IRHD, logs(SHEAR)));
  private static final PolynomialSplineFunction FACTOR_AT = line(IRHD, FACTOR);

  private static double[] logs(double[] values) {
    double[] logs = new double[values.length];
    for (int i = 0; i < logs.length; i++) {
      logs[i] = Math.log(values[i]);
    }
    return logs;
  }

  /** Values at 0, at the entries and at 100 points, going on straight beyond the entries. */
  private static double[] extended(double[] x, double[] y) {
    int n = x.length;
    double[] all = new double[n + 2];
    System.arraycopy(y, 0, all, 1, n);
    all[0] = y[0] - x[0] * (y[1] - y[0]) / (x[1] - x[0]);
    double slope = (y[n - 1] - y[n - 2]) / (x[n - 1] - x[n - 2]);
    all[n + 1] = y[n - 1] + (100.0 - x[n - 1]) * slope;
    return all;
  }

  private static PolynomialSplineFunction line(double[] x, double[] y) {
    return new LinearInterpolator().interpolate(x, y);
  }

  @Override
  public String name() {
    return NAME;
  }

  @Override
  public Class<? extends HardnessReading> scale() {
    return Irhd.class;
  }

  @Override
  public ValidityRange range() {
    return RANGE;
  }

  @Override
  public Source source() {
    return SOURCE;
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  @Override
  public Pressure modulus(double points) {
    double s = HardnessRelation.requireOnScale("IRHD", points);
    return Pressure.mpa(Math.exp(YOUNG_AT.value(s)));
  }

  /**
   * {@inheritDoc}
   *
   * @throws org.flexwright.InvalidInputException outside 0.207 to 32.2 MPa
   */
  @Override
  public double points(Pressure modulus) {
    double log = Math.log(OnScale.mpa(this, modulus));
    boolean inside = log > LOG_YOUNG[0] && log < LOG_YOUNG[LOG_YOUNG.length - 1];
    return OnScale.points(this, modulus, inside ? READING_AT.value(log) : Double.NaN);
  }

  /**
   * The shear modulus of a spring at working strain. Not a third of {@link #modulus}.
   *
   * @param points the reading, strictly between 0 and 100 IRHD
   * @return the modulus
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  public Pressure shearModulus(double points) {
    double s = HardnessRelation.requireOnScale("IRHD", points);
    return Pressure.mpa(Math.exp(SHEAR_AT.value(s)));
  }

  /**
   * The compression factor k of a bonded block.
   *
   * @param points the reading, strictly between 0 and 100 IRHD
   * @return the factor, 0.52 to 0.93
   * @throws org.flexwright.InvalidInputException if the reading is off the scale
   */
  public double compressionFactor(double points) {
    double s = HardnessRelation.requireOnScale("IRHD", points);
    return FACTOR_AT.value(Math.max(RANGE.low(), Math.min(s, RANGE.high())));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return HardnessRelation.describe(this);
  }
}
