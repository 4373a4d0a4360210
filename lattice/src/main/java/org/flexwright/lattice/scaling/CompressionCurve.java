package org.flexwright.lattice.scaling;

import org.flexwright.internal.Require;
import org.flexwright.quantity.Area;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.Channel;
import org.flexwright.response.LoadPath;

/**
 * A compression curve, computed or measured, and the figures that the trade reads from it.
 *
 * <p>Formulas: energy W(e) = integral of s de; efficiency W(e)/s(e), whose maximum marks the onset
 * of densification (Miltz and Gruenbaum 1981, Polym. Eng. Sci. 21, 1010); ideality W(e)/(s_max e);
 * plateau stress, the mean from 20 to 30 %, and plateau end, where the stress is 1.3 times that
 * (ISO 13314:2011); stress at 40 % (the figure of ISO 3386-1, there in the fourth cycle). All from
 * memory. Between its points the curve is straight; W is exact for that.
 *
 * <p>Symbols: e compressive nominal strain, s nominal stress (Pa). An energy per volume is given as
 * a pressure, 1 J/m3 = 1 Pa. Immutable and thread-safe.
 *
 * <p>JShell: {@code CompressionCurve.of(pad.respond(grade, LoadCase.toTravel(mm(8))).path(),
 * mm(60).times(mm(60)), mm(20)).efficiency(0.3)}
 */
public final class CompressionCurve {

  private final double[] strain;
  private final double[] stress;
  private final double[] energy;

  private CompressionCurve(double[] strain, double[] stress) {
    this.strain = strain;
    this.stress = stress;
    energy = new double[strain.length];
    for (int i = 1; i < strain.length; i++) {
      energy[i] = energy[i - 1] + 0.5 * (stress[i] + stress[i - 1]) * (strain[i] - strain[i - 1]);
    }
  }

  /**
   * The curve of a load path.
   *
   * @param path with travel and force
   * @param area the loaded area
   * @param height the height at rest
   * @return the curve
   */
  public static CompressionCurve of(LoadPath path, Area area, Length height) {
    Require.positive("loaded area", area.m2(), "m2");
    Require.positive("height", height.m(), "m");
    double[] strain = path.values(Channel.TRAVEL);
    double[] stress = path.values(Channel.FORCE);
    for (int i = 0; i < strain.length; i++) {
      strain[i] /= height.m();
      stress[i] /= area.m2();
    }
    return checked(strain, stress);
  }

  /**
   * The curve through measured points; the origin is added if it is missing.
   *
   * @param strain compressive strains, rising, not negative
   * @param stress the stress at each
   * @return the curve
   * @throws org.flexwright.InvalidInputException if the strains do not rise or the counts differ
   */
  public static CompressionCurve through(double[] strain, Pressure[] stress) {
    Require.that(
        strain.length == stress.length,
        "points of the curve",
        strain.length + " strains, " + stress.length + " stresses",
        "as many of both",
        "");
    int first = strain.length > 0 && strain[0] == 0.0 ? 0 : 1;
    double[] e = new double[strain.length + first];
    double[] s = new double[e.length];
    for (int i = 0; i < strain.length; i++) {
      e[i + first] = strain[i];
      s[i + first] = stress[i].pa();
    }
    return checked(e, s);
  }

  private static CompressionCurve checked(double[] strain, double[] stress) {
    Require.atLeast("points of the curve", strain.length, 2);
    for (int i = 0; i < strain.length; i++) {
      Require.notNegative("strain", strain[i], "");
      Require.finite("stress", stress[i], "Pa");
      if (i > 0) {
        Require.that(
            strain[i] > strain[i - 1], "strain", strain[i], "above the one before", "sort them");
        Require.positive("stress", stress[i], "Pa");
      }
    }
    return new CompressionCurve(strain, stress);
  }

  /**
   * The largest strain of the curve.
   *
   * @return the strain
   */
  public double end() {
    return strain[strain.length - 1];
  }

  /**
   * The stress at a strain.
   *
   * @param at the strain, 0 to {@link #end}
   * @return the stress
   * @throws org.flexwright.InvalidInputException if the strain is outside the curve
   */
  public Pressure stressAt(double at) {
    return Pressure.pa(stress(at));
  }

  private double stress(double at) {
    int i = piece(at);
    double share = (at - strain[i]) / (strain[i + 1] - strain[i]);
    return stress[i] + share * (stress[i + 1] - stress[i]);
  }

  private int piece(double at) {
    Require.between("compressive strain", at, 0.0, end(), "");
    int i = 0;
    while (i < strain.length - 2 && at > strain[i + 1]) {
      i++;
    }
    return i;
  }

  /**
   * The energy taken up to a strain, per volume.
   *
   * @param to the strain, 0 to {@link #end}
   * @return 1 J/m3 = 1 Pa
   */
  public Pressure energyTo(double to) {
    return Pressure.pa(energy(to));
  }

  private double energy(double to) {
    int i = piece(to);
    return energy[i] + 0.5 * (stress[i] + stress(to)) * (to - strain[i]);
  }

  /**
   * The energy taken over the stress reached.
   *
   * @param at the strain, above 0, to {@link #end}
   * @return the efficiency, half the strain for a straight line, the strain for a plateau
   */
  public double efficiency(double at) {
    Require.positive("compressive strain", at, "");
    return energy(at) / stress(at);
  }

  /**
   * The energy taken over that of a rectangle as high as the largest stress so far.
   *
   * @param at the strain, above 0, to {@link #end}
   * @return the ideality, at most 1
   */
  public double ideality(double at) {
    Require.positive("compressive strain", at, "");
    double most = stress(at);
    for (int i = 0; i < strain.length && strain[i] <= at; i++) {
      most = Math.max(most, stress[i]);
    }
    return energy(at) / (most * at);
  }

  /**
   * The strain of the largest efficiency, looked for at the points of the curve: the best use of
   * the pad, and the onset of densification if the curve goes on beyond it.
   *
   * @return the strain
   */
  public double densificationOnset() {
    int best = 1;
    for (int i = 2; i < strain.length; i++) {
      if (energy[i] / stress[i] > energy[best] / stress[best]) {
        best = i;
      }
    }
    return strain[best];
  }

  /**
   * The mean stress from 20 to 30 % strain.
   *
   * @return the plateau stress
   * @throws org.flexwright.InvalidInputException if the curve ends before 30 %
   */
  public Pressure plateauStress() {
    return Pressure.pa((energy(0.3) - energy(0.2)) / 0.1);
  }

  /**
   * The strain beyond 30 % at which the stress first reaches 1.3 times the plateau stress.
   *
   * @return the strain; that of the end if the curve does not get there
   */
  public double plateauEnd() {
    double wanted = 1.3 * plateauStress().pa();
    for (int i = 1; i < strain.length; i++) {
      if (strain[i] > 0.3 && stress[i] >= wanted) {
        double from = Math.max(0.3, strain[i - 1]);
        double low = stress(from);
        if (low >= wanted) {
          return from;
        }
        return from + (strain[i] - from) * (wanted - low) / (stress[i] - low);
      }
    }
    return end();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "compression curve of " + strain.length + " points to " + stressAt(end());
  }
}
