package org.flexwright.shells.bellows;

import org.flexwright.grade.Grade;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/**
 * What an inner pressure does to a bellows as a whole: it pushes the ends apart, and it bows a long
 * bellows out sideways.
 *
 * <p>Formula: effective area pi R^2; thrust p pi R^2; column squirm at p = 2 pi K/L, where the
 * thrust reaches the Euler load 4 pi^2 (K R^2 L/2)/L^2 of a column whose ends do not turn. Symbols:
 * R mean radius, K axial stiffness at rest of the whole bellows (N/m), L convoluted length (m).
 *
 * <p>Range: perfect bellows with guided ends, L from the mean diameter (shorter ones do not bow). A
 * quarter of it if an end can move sideways. Real bellows bow far earlier: the limit of the
 * expansion-joint standards is 0.34 pi K/L, about a sixth (from memory); stay below that. Squirm in
 * the plane of a convolution and the stresses of the pressure are not covered. Hold the ends, a
 * bellows is no tie. Source: derived; form of the expansion-joint standards (from memory).
 *
 * <p>JShell: {@code BellowsPressure.of(neck, grade).squirm(grade)}
 *
 * @param meanRadius R
 * @param convoluted L
 * @param stiffness axial stiffness over modulus (m), above 0
 */
public record BellowsPressure(Length meanRadius, Length convoluted, double stiffness) {

  /**
   * Refuses figures that are not above 0.
   *
   * @param meanRadius R
   * @param convoluted L
   * @param stiffness axial stiffness over modulus (m), above 0
   */
  public BellowsPressure {
    Require.positive("mean radius", meanRadius.m(), "m");
    Require.positive("convoluted length", convoluted.m(), "m");
    Require.positive("stiffness over modulus", stiffness, "m");
  }

  /**
   * Of a U bellows.
   *
   * @param bellows the bellows
   * @param grade the material, for its Poisson ratio
   * @return the figures
   */
  public static BellowsPressure of(Bellows bellows, Grade grade) {
    return new BellowsPressure(
        bellows.meanRadius(),
        bellows.pitch().times(bellows.count()),
        bellows.stiffness(grade).newtonsPerM() / grade.modulusAtRest().pa());
  }

  /**
   * Of an omega bellows.
   *
   * @param bellows the bellows
   * @param convoluted its length from the first to the last torus
   * @param grade the material, for its Poisson ratio
   * @return the figures
   */
  public static BellowsPressure of(OmegaBellows bellows, Length convoluted, Grade grade) {
    return new BellowsPressure(
        bellows.meanRadius(),
        convoluted,
        bellows.stiffness(grade).newtonsPerM() / grade.modulusAtRest().pa());
  }

  /**
   * The area on which the pressure pushes the ends apart.
   *
   * @return pi R^2
   */
  public Area effectiveArea() {
    return meanRadius.times(meanRadius).times(Math.PI);
  }

  /**
   * The force on held ends.
   *
   * @param inside gauge pressure
   * @return the thrust
   */
  public Force thrust(Pressure inside) {
    return inside.times(effectiveArea());
  }

  /**
   * The inner pressure at which the whole bellows bows out, at the modulus at rest.
   *
   * @param grade the material
   * @return 2 pi K/L
   */
  public Pressure squirm(Grade grade) {
    return grade.modulusAtRest().times(2.0 * Math.PI * stiffness / convoluted.m());
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "bellows under pressure, effective area "
        + effectiveArea()
        + ", length "
        + convoluted
        + ", K/E "
        + Text.number(stiffness * 1e3)
        + " mm";
  }
}
