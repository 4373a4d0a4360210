package org.flexwright.law.classical;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.law.Stability;
import org.flexwright.law.StrainEnergy;
import org.flexwright.law.StretchRange;
import org.flexwright.quantity.Pressure;

/**
 * The law of Ogden, any number of terms: W = sum mu_i/alpha_i (l1^alpha_i + l2^alpha_i + l3^alpha_i
 * - 3).
 *
 * <p>Symbols: mu_i (Pa) and alpha_i (dimensionless), G = sum mu_i alpha_i/2. <b>Convention:</b>
 * this is Ogden's own. Where a source writes 2 mu/alpha^2 in front, the mu here is twice that one
 * over alpha.
 *
 * <p>Range: everywhere if every mu_i alpha_i is above 0; else the stretches in which tension, shear
 * and inflation are stable, found by a scan. Source: Ogden 1972, Proc. R. Soc. A 326 (from memory,
 * checked).
 *
 * <p>JShell: {@code Ogden.of(mpa(0.63), 1.3).and(mpa(0.0012), 5).and(mpa(-0.01), -2)}
 *
 * @param terms the terms, at least one
 */
public record Ogden(List<Term> terms) implements StrainEnergy {

  private static final Source SOURCE =
      Source.derived("positive definite for every mu alpha above 0");

  /**
   * One term.
   *
   * @param mu the factor, not 0
   * @param alpha the power, not 0
   */
  public record Term(Pressure mu, double alpha) {

    /**
     * Refuses a term that is nothing.
     *
     * @param mu the factor, not 0
     * @param alpha the power, not 0
     * @throws org.flexwright.InvalidInputException if one is 0 or not finite
     */
    public Term {
      Require.nonZero("mu of an Ogden term", mu.pa(), "Pa");
      Require.nonZero("alpha of an Ogden term", alpha, "");
    }

    /** The energy of one stretch, by its logarithm. */
    double value(double log) {
      return mu.pa() / alpha * Invariants.grown(alpha * log);
    }

    /** Stretch times slope, by the logarithm of the stretch. */
    double slope(double log) {
      return mu.pa() * Math.exp(alpha * log);
    }
  }

  /**
   * Refuses a law without stiffness.
   *
   * @param terms the terms, at least one
   * @throws org.flexwright.InvalidInputException if there is no term or the shear modulus at rest
   *     is not above 0
   */
  public Ogden {
    terms = List.copyOf(terms);
    Require.atLeast("Ogden terms", terms.size(), 1);
    Require.positive("shear modulus of the Ogden terms", shear(terms), "Pa");
  }

  /**
   * A law of one term.
   *
   * @param mu the factor
   * @param alpha the power, of the sign of the factor
   * @return the law
   */
  public static Ogden of(Pressure mu, double alpha) {
    return new Ogden(List.of(new Term(mu, alpha)));
  }

  /**
   * This law with one more term. Start with the stiff ones: the sum must stay above 0.
   *
   * @param mu the factor
   * @param alpha the power
   * @return the new law
   */
  public Ogden and(Pressure mu, double alpha) {
    List<Term> more = new ArrayList<>(terms);
    more.add(new Term(mu, alpha));
    return new Ogden(more);
  }

  private static double shear(List<Term> terms) {
    double sum = 0.0;
    for (Term t : terms) {
      sum += 0.5 * t.mu.pa() * t.alpha;
    }
    return sum;
  }

  @Override
  public double energy(double l1, double l2, double l3) {
    double log1 = Math.log(l1);
    double log2 = Math.log(l2);
    double log3 = Math.log(l3);
    double sum = 0.0;
    for (int i = 0; i < terms.size(); i++) { // no iterator: nothing is allocated
      Term t = terms.get(i);
      sum += t.value(log1) + t.value(log2) + t.value(log3);
    }
    return Invariants.sane(sum);
  }

  @Override
  public void gradient(double l1, double l2, double l3, double[] out) {
    out[0] = slope(l1);
    out[1] = slope(l2);
    out[2] = slope(l3);
  }

  private double slope(double stretch) {
    double log = Math.log(stretch);
    double sum = 0.0;
    for (int i = 0; i < terms.size(); i++) {
      sum += terms.get(i).slope(log);
    }
    return Invariants.sane(sum / stretch);
  }

  @Override
  public void hessian(double l1, double l2, double l3, double[] out) {
    out[0] = curvature(l1);
    out[1] = curvature(l2);
    out[2] = curvature(l3);
    out[3] = 0.0;
    out[4] = 0.0;
    out[5] = 0.0;
  }

  private double curvature(double stretch) {
    double log = Math.log(stretch);
    double sum = 0.0;
    for (int i = 0; i < terms.size(); i++) {
      Term t = terms.get(i);
      sum += (t.alpha - 1.0) * t.slope(log);
    }
    return Invariants.sane(sum / stretch / stretch);
  }

  @Override
  public void derivatives(double l1, double l2, double l3, double[] gradient, double[] hessian) {
    both(l1, 0, gradient, hessian);
    both(l2, 1, gradient, hessian);
    both(l3, 2, gradient, hessian);
    hessian[3] = 0.0;
    hessian[4] = 0.0;
    hessian[5] = 0.0;
  }

  private void both(double stretch, int at, double[] gradient, double[] hessian) {
    double log = Math.log(stretch);
    double first = 0.0;
    double second = 0.0;
    for (int i = 0; i < terms.size(); i++) {
      Term t = terms.get(i);
      double slope = t.slope(log);
      first += slope;
      second += (t.alpha - 1.0) * slope;
    }
    gradient[at] = Invariants.sane(first / stretch);
    hessian[at] = Invariants.sane(second / stretch / stretch);
  }

  @Override
  public double shearModulus() {
    return shear(terms);
  }

  @Override
  public StretchRange range() {
    return terms.stream().allMatch(t -> t.mu.pa() * t.alpha > 0.0)
        ? new StretchRange(1e-3, 1e3, "stable everywhere", SOURCE)
        : Stability.range(this);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return terms.stream()
        .map(t -> Text.number(t.mu.mpa()) + " MPa/" + Text.number(t.alpha))
        .collect(Collectors.joining(", ", "Ogden law, mu/alpha ", ""));
  }
}
