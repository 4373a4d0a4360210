package org.flexwright.fit;

import java.util.Locale;
import org.flexwright.internal.Text;
import org.flexwright.law.Deformation;
import org.flexwright.quantity.Pressure;

/**
 * How far a fitted law is off one test curve.
 *
 * <p>Formula: rms = sqrt(mean (P_law - P)^2); relative the same of (P_law - P)/|P|, with |P| not
 * below the floor of the fit.
 *
 * @param curve the name of the curve
 * @param mode its deformation
 * @param points its number of points
 * @param rms root mean square of the stress differences
 * @param relative root mean square of the relative differences
 * @param worst the greatest relative difference
 */
public record CurveError(
    String curve, Deformation mode, int points, Pressure rms, double relative, double worst) {

  /** One readable line. */
  @Override
  public String toString() {
    return curve
        + ", "
        + mode.name().toLowerCase(Locale.ROOT)
        + ", "
        + points
        + " points: rms "
        + rms
        + ", "
        + Text.percent(relative)
        + ", worst "
        + Text.percent(worst);
  }
}
