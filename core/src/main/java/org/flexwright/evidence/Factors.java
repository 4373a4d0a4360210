package org.flexwright.evidence;

import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * The uncertainty factors of a grade with their covariance.
 *
 * <p>Factor i is exp(s_i z_i) with z standard normal and correlated. A result that follows the
 * factors with exponents n_i has ln-standard-deviation sqrt(sum_ij n_i n_j s_i s_j r_ij). The whole
 * band of the library is {@link #COVERAGE} such deviations either way, about 95 % of cases.
 *
 * <p>Immutable and thread-safe.
 */
public final class Factors {

  /** Standard deviations to either side that the library calls "the whole band". */
  public static final double COVERAGE = 2.0;

  private static final int N = Factor.values().length;
  private static final Factors NONE = new Factors(new double[N], identity());

  private final double[] sigma;
  private final double[][] correlation;

  private Factors(double[] sigma, double[][] correlation) {
    this.sigma = sigma;
    this.correlation = correlation;
  }

  /**
   * No uncertainty at all.
   *
   * @return factors with zero scatter
   */
  public static Factors none() {
    return NONE;
  }

  /**
   * These factors with another scatter for one of them.
   *
   * @param factor which one
   * @param logSigma standard deviation of its natural logarithm, 0 to 3 (dimensionless)
   * @return the new factors
   * @throws org.flexwright.InvalidInputException if the scatter is outside 0 to 3
   */
  public Factors with(Factor factor, double logSigma) {
    if (!(logSigma >= 0.0 && logSigma <= 3.0)) {
      Require.between("scatter of the " + factor, logSigma, 0.0, 3.0, "");
    }
    double[] s = sigma.clone();
    s[factor.ordinal()] = logSigma;
    return new Factors(s, correlation);
  }

  /**
   * These factors with the scatter given as the ratio that the whole band reaches: 1.25 means that
   * the band runs from 1/1.25 to 1.25.
   *
   * @param factor which one
   * @param ratio the end of the band, at least 1
   * @return the new factors
   */
  public Factors withBand(Factor factor, double ratio) {
    Require.between("band of the " + factor, ratio, 1.0, 400.0, "");
    return with(factor, Math.log(ratio) / COVERAGE);
  }

  /**
   * These factors with two of them correlated.
   *
   * @param a one factor
   * @param b another factor
   * @param rho the correlation of their logarithms, -0.99 to 0.99
   * @return the new factors
   * @throws org.flexwright.InvalidInputException if the matrix would no longer be positive definite
   */
  public Factors correlated(Factor a, Factor b, double rho) {
    Require.that(a != b, "correlated factors", a, "two different factors", "");
    Require.between("correlation", rho, -0.99, 0.99, "");
    double[][] c = new double[N][];
    for (int i = 0; i < N; i++) {
      c[i] = correlation[i].clone();
    }
    c[a.ordinal()][b.ordinal()] = rho;
    c[b.ordinal()][a.ordinal()] = rho;
    cholesky(c);
    return new Factors(sigma, c);
  }

  /**
   * The standard deviation of the natural logarithm of a factor.
   *
   * @param factor which one
   * @return the deviation, dimensionless
   */
  public double sigma(Factor factor) {
    return sigma[factor.ordinal()];
  }

  /**
   * The covariance of the natural logarithms of two factors.
   *
   * @param a one factor
   * @param b the other
   * @return the covariance, dimensionless
   */
  public double covariance(Factor a, Factor b) {
    int i = a.ordinal();
    int j = b.ordinal();
    return sigma[i] * sigma[j] * correlation[i][j];
  }

  /**
   * The correlation of the natural logarithms of two factors.
   *
   * @param a one factor
   * @param b the other
   * @return the correlation, 1 for a factor with itself
   */
  public double correlation(Factor a, Factor b) {
    return correlation[a.ordinal()][b.ordinal()];
  }

  /**
   * The ln-standard-deviation of a result that follows the factors with given exponents.
   *
   * @param value the exponents
   * @return the deviation, dimensionless
   */
  public double sigmaOf(Exponents value) {
    double sum = 0.0;
    for (Factor a : Factor.values()) {
      for (Factor b : Factor.values()) {
        sum += value.of(a) * value.of(b) * covariance(a, b);
      }
    }
    return Math.sqrt(Math.max(0.0, sum));
  }

  /**
   * The lower triangle L of the correlation matrix, row by row, with L L' the matrix: independent
   * standard normal numbers u give correlated ones z = L u.
   *
   * @return a fresh square array in the order of {@link Factor#values()}
   */
  public double[][] choleskyOfCorrelation() {
    return cholesky(correlation);
  }

  private static double[][] identity() {
    double[][] c = new double[N][N];
    for (int i = 0; i < N; i++) {
      c[i][i] = 1.0;
    }
    return c;
  }

  private static double[][] cholesky(double[][] c) {
    double[][] l = new double[N][N];
    for (int i = 0; i < N; i++) {
      for (int j = 0; j <= i; j++) {
        double s = c[i][j];
        for (int k = 0; k < j; k++) {
          s -= l[i][k] * l[j][k];
        }
        if (i == j) {
          Require.that(s > 1e-9, "correlations", "not consistent", "a positive definite set", "");
          l[i][i] = Math.sqrt(s);
        } else {
          l[i][j] = s / l[j][j];
        }
      }
    }
    return l;
  }

  /** One readable line with the whole band of each factor. */
  @Override
  public String toString() {
    StringBuilder line = new StringBuilder();
    for (Factor f : Factor.values()) {
      if (sigma(f) > 0.0) {
        line.append(line.length() == 0 ? "" : ", ")
            .append(f)
            .append(" x/")
            .append(Text.number(Math.exp(COVERAGE * sigma(f)), 3));
      }
    }
    return line.length() == 0 ? "no uncertainty" : line.toString();
  }
}
