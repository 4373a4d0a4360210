package org.flexwright.decide;

import java.util.function.Supplier;
import org.flexwright.evidence.Factor;
import org.flexwright.evidence.Factors;
import org.flexwright.response.ScaledValue;

/**
 * One demand as a logarithmic margin that is linear in the uncertainty: margin = headroom + sum c_i
 * z_i + model, met where it is not negative.
 */
@SuppressWarnings("ArrayRecordComponent") // seen by this package only, never compared
record Criterion(
    Supplier<String> words,
    double headroom,
    double[] slope,
    int model,
    double modelUp,
    double modelDown,
    boolean placeholder) {

  /** Places of the independent model errors behind the factors. */
  static final int LOAD_MODEL = 0;

  static final int STRAIN_MODEL = 1;
  static final int MODELS = 2;

  /** Margin of a demand that no factor can change. */
  static final double HOPELESS = 20.0;

  private static final Factor[] FACTORS = Factor.values();

  static Criterion load(Limit limit, ScaledValue value, Factors factors) {
    double room = limit.value() - value.offset();
    double sign = limit.upper() ? 1.0 : -1.0;
    if (room <= 0.0) {
      return new Criterion(
          limit::words, -sign * HOPELESS, new double[FACTORS.length], LOAD_MODEL, 0, 0, false);
    }
    double headroom = sign * Math.log(room / (value.nominal() - value.offset()));
    double[] slope = slope(value, factors, -sign);
    double high = Math.log(value.modelHigh());
    double low = -Math.log(value.modelLow());
    // modelUp is what a model error of two deviations upwards does to the margin
    return new Criterion(
        limit::words, headroom, slope, LOAD_MODEL, -sign * high, sign * low, false);
  }

  /** The demand that the path reaches its end, failed. */
  static Criterion ended(String why) {
    return new Criterion(
        () -> "reach the end of the path (" + why + ")",
        -HOPELESS,
        new double[FACTORS.length],
        LOAD_MODEL,
        0,
        0,
        false);
  }

  static Criterion strain(double allowed, ScaledValue value, Factors factors) {
    double[] slope = slope(value, factors, -1.0);
    slope[Factor.STRENGTH.ordinal()] += factors.sigma(Factor.STRENGTH);
    return new Criterion(
        () -> "strain at most " + value.channel().show(allowed),
        Math.log(allowed / value.nominal()),
        slope,
        STRAIN_MODEL,
        -Math.log(value.modelHigh()),
        -Math.log(value.modelLow()),
        false);
  }

  static Criterion life(Survival demand, ScaledValue value, Factors factors) {
    double k = demand.law().logSlope(value.nominal());
    double[] slope = slope(value, factors, k);
    slope[Factor.LIFE.ordinal()] += Math.hypot(demand.law().logSigma(), factors.sigma(Factor.LIFE));
    double median = demand.law().medianCycles(value.nominal());
    double headroom = Math.min(HOPELESS, Math.log(median / demand.cycles()));
    return new Criterion(
        () -> "life at least " + demand,
        headroom,
        slope,
        STRAIN_MODEL,
        k * Math.log(value.modelHigh()),
        k * Math.log(value.modelLow()),
        demand.law().placeholder());
  }

  private static double[] slope(ScaledValue value, Factors factors, double times) {
    double[] slope = new double[FACTORS.length];
    for (Factor f : FACTORS) {
      slope[f.ordinal()] = times * value.exponents().of(f) * factors.sigma(f);
    }
    return slope;
  }

  /** The demand in words, made only when somebody asks: a scan makes thousands of criteria. */
  String name() {
    return words.get();
  }

  /** Half the whole band of the margin, towards failing (or towards meeting). */
  double half(double[][] cholesky, boolean towardsFailing) {
    double variance = 0.0;
    for (double s : independentSlope(cholesky)) {
      variance += s * s;
    }
    double worst = towardsFailing ? Math.min(modelUp, modelDown) : Math.max(modelUp, modelDown);
    return Math.hypot(Factors.COVERAGE * Math.sqrt(variance), worst);
  }

  /** Whether two bounds look at the same load from both sides. */
  boolean faces(Criterion other) {
    int modulus = Factor.MODULUS.ordinal();
    return model == LOAD_MODEL
        && other.model == LOAD_MODEL
        && slope[modulus] * other.slope[modulus] < 0.0;
  }

  double sureMargin(double[][] cholesky) {
    return headroom - half(cholesky, true);
  }

  /** Whether even the kindest corner of the band fails; a placeholder never condemns. */
  boolean surelyFails(double[][] cholesky) {
    return !placeholder && headroom + half(cholesky, false) < 0.0;
  }

  /** The slope along independent deviates: L' slope. */
  double[] independentSlope(double[][] cholesky) {
    double[] independent = new double[slope.length];
    for (int j = 0; j < slope.length; j++) {
      for (int i = j; i < slope.length; i++) {
        independent[j] += slope[i] * cholesky[i][j];
      }
    }
    return independent;
  }

  /** The margin at a point of independent deviates, those of the models behind the factors. */
  double margin(double[] independentSlope, double[] point) {
    double sum = headroom;
    for (int i = 0; i < independentSlope.length; i++) {
      sum += independentSlope[i] * point[i];
    }
    double e = point[independentSlope.length + model] / Factors.COVERAGE;
    return sum + (e > 0.0 ? e * modelUp : -e * modelDown);
  }

  /** This criterion with the scatter of one factor multiplied. */
  Criterion narrowed(Factor factor, double times) {
    double[] s = slope.clone();
    s[factor.ordinal()] *= times;
    return new Criterion(words, headroom, s, model, modelUp, modelDown, placeholder);
  }

  /** This criterion with everything multiplied that one loaded part tells about. */
  Criterion tested(double times) {
    Criterion c = narrowed(Factor.MODULUS, times).narrowed(Factor.SIZE_BIAS, times);
    return model != LOAD_MODEL
        ? c
        : new Criterion(
            words, headroom, c.slope, model, times * modelUp, times * modelDown, placeholder);
  }
}
