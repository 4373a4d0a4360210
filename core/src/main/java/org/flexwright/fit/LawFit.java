package org.flexwright.fit;

import java.util.List;
import org.flexwright.internal.Require;
import org.flexwright.law.LawFamily;
import org.flexwright.run.RunControl;

/**
 * The fit of a law family to test curves by weighted least squares.
 *
 * <p>Formula: least S = sum over curves w sum over points r^2, with r after {@link Weighting} and w
 * the weight of the curve. Every point counts the same, so a curve of many points counts for more;
 * {@link #curvesAlike} divides by their numbers.
 *
 * <p>How it is found: starts spread evenly (Halton points) over the usual range of the constants,
 * those in which the stress is linear set to their best; short Levenberg-Marquardt descents; the
 * best ones to the end. Nothing is random: the same input gives the same result. Bounds are held
 * exactly. A result that is not stable (Drucker) as far as the data reach ranks behind all stable
 * ones, and says so.
 *
 * <p>Bounds: those of the family, which keep the law sound. Without them ({@link #bounded} false)
 * the family's own check remains: constants that make no law, such as a shear modulus below 0, are
 * refused with an error that prints them.
 *
 * <p>Caveats: on the result, see {@link FittedLaw#caveats}. Source: Levenberg-Marquardt as in More
 * 1978 (from memory).
 *
 * <p>JShell: {@code LawFit.of(LawFamilies.MOONEY_RIVLIN).fit(curves)}
 *
 * @param family what is fitted
 * @param weighting relative unless said otherwise
 * @param floor the least stress that a relative residual is divided by, over the greatest of its
 *     curve
 * @param curvesAlike whether each curve counts the same, whatever its number of points
 * @param starts the number of starts
 * @param bounded whether the bounds of the family hold
 */
public record LawFit(
    LawFamily family,
    Weighting weighting,
    double floor,
    boolean curvesAlike,
    int starts,
    boolean bounded) {

  private static final double FLOOR = 1e-3;
  private static final int STARTS = 30;

  /**
   * Refuses settings that make no sense.
   *
   * @param family what is fitted
   * @param weighting relative unless said otherwise
   * @param floor the least stress that a relative residual is divided by, over the greatest of its
   *     curve, above 0 to 1
   * @param curvesAlike whether each curve counts the same, whatever its number of points
   * @param starts the number of starts, at least 1
   * @param bounded whether the bounds of the family hold
   * @throws org.flexwright.InvalidInputException if the floor or the number of starts is not
   *     allowed
   */
  public LawFit {
    Require.positive("floor of relative residuals", floor, "");
    Require.between("floor of relative residuals", floor, 0.0, 1.0, "");
    Require.atLeast("starts of a fit", starts, 1);
  }

  /**
   * A fit with relative weighting, 30 starts and the bounds of the family.
   *
   * @param family what is fitted
   * @return the fit
   */
  public static LawFit of(LawFamily family) {
    return new LawFit(family, Weighting.RELATIVE, FLOOR, false, STARTS, true);
  }

  /**
   * This fit for another family.
   *
   * @param other what is fitted
   * @return the new fit
   */
  public LawFit family(LawFamily other) {
    return new LawFit(other, weighting, floor, curvesAlike, starts, bounded);
  }

  /**
   * This fit with another weighting.
   *
   * @param by relative or absolute
   * @return the new fit
   */
  public LawFit weighting(Weighting by) {
    return new LawFit(family, by, floor, curvesAlike, starts, bounded);
  }

  /**
   * This fit with another floor of relative residuals.
   *
   * @param share the least stress to divide by, over the greatest of the curve, above 0 to 1
   * @return the new fit
   * @throws org.flexwright.InvalidInputException if the floor is not allowed
   */
  public LawFit floor(double share) {
    return new LawFit(family, weighting, share, curvesAlike, starts, bounded);
  }

  /**
   * This fit with each curve, or each point, counting the same.
   *
   * @param alike true for each curve
   * @return the new fit
   */
  public LawFit curvesAlike(boolean alike) {
    return new LawFit(family, weighting, floor, alike, starts, bounded);
  }

  /**
   * This fit with another number of starts.
   *
   * @param number at least 1
   * @return the new fit
   * @throws org.flexwright.InvalidInputException if it is below 1
   */
  public LawFit starts(int number) {
    return new LawFit(family, weighting, floor, curvesAlike, number, bounded);
  }

  /**
   * This fit with or without the bounds of the family.
   *
   * @param hold whether they hold
   * @return the new fit
   */
  public LawFit bounded(boolean hold) {
    return new LawFit(family, weighting, floor, curvesAlike, starts, hold);
  }

  /**
   * Fits to curves.
   *
   * @param curves the curves, any mix of deformations
   * @return the law with its evidence
   * @throws org.flexwright.InvalidInputException if there are fewer points than constants, a curve
   *     has stresses of the wrong sign, or no law of the family reaches the data
   */
  public FittedLaw fit(List<TestCurve> curves) {
    return fit(curves, RunControl.none());
  }

  /**
   * Fits to curves, watched. A stop ends the search after the start at hand; the result is the best
   * so far.
   *
   * @param curves the curves, any mix of deformations
   * @param control who watches, asked before each start
   * @return the law with its evidence
   * @throws org.flexwright.InvalidInputException if there are fewer points than constants, a curve
   *     has stresses of the wrong sign, or no law of the family reaches the data
   */
  public FittedLaw fit(List<TestCurve> curves, RunControl control) {
    FitData data = new FitData(curves, this);
    Require.atLeast(
        "points away from rest for the fit of " + family.name(),
        data.telling(),
        family.constants().size());
    Search search = new Search(this, data);
    return Evidence.of(this, search, data, search.run(control));
  }
}
