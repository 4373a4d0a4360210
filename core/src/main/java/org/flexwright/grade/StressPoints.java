package org.flexwright.grade;

import org.flexwright.internal.Require;
import org.flexwright.law.HenckyCurve;
import org.flexwright.quantity.Pressure;

/**
 * The four figures of a datasheet that fix a grade's stress curve: flexural modulus (taken as the
 * secant at 1 % strain) and the nominal stresses at 50, 100 and 300 % elongation.
 *
 * @param flexural flexural modulus
 * @param m50 nominal stress at 50 %
 * @param m100 nominal stress at 100 %
 * @param m300 nominal stress at 300 %
 */
public record StressPoints(Pressure flexural, Pressure m50, Pressure m100, Pressure m300) {

  private static final double FLEXURAL_STRAIN = 0.01;

  /**
   * Refuses figures from which no rising curve follows.
   *
   * @param flexural flexural modulus
   * @param m50 nominal stress at 50 %
   * @param m100 nominal stress at 100 %
   * @param m300 nominal stress at 300 %
   * @throws org.flexwright.InvalidInputException if a figure is not above 0 or the true stresses do
   *     not rise
   */
  public StressPoints {
    Require.positive("flexural modulus", flexural.pa(), "Pa");
    Require.positive("stress at 50 %", m50.pa(), "Pa");
    Require.positive("stress at 100 %", m100.pa(), "Pa");
    Require.positive("stress at 300 %", m300.pa(), "Pa");
  }

  /**
   * The law through these points. True stress is nominal stress times stretch, Hencky strain is the
   * logarithm of the stretch.
   *
   * @return the law, exact at the points
   */
  public HenckyCurve law() {
    return HenckyCurve.through(
        new double[] {FLEXURAL_STRAIN, Math.log(1.5), Math.log(2.0), Math.log(4.0)},
        new Pressure[] {
          flexural.times(FLEXURAL_STRAIN), m50.times(1.5), m100.times(2.0), m300.times(4.0)
        });
  }
}
