package org.flexwright.lattice.scaling;

import org.flexwright.internal.Require;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.response.LogSlope;

/**
 * What struts cost that are crooked, thin or nicked.
 *
 * <p>Crooked: a strut y = w0 sin(pi s/L) has 1/(1 + 8 (w0/d)^2) of its axial stiffness between
 * pinned ends and 1/(1 + 8 (1 - 8/pi^2) (w0/d)^2) between built-in ends (classical, derived by
 * virtual forces). Thin: d ln E100/d ln d of a cell. Nicked: a straight flaw of depth a across one
 * side of a round strut leaves a section cut off by a chord; the nominal strain at the bottom of
 * the flaw, over that of the whole strut under the same load, follows from area, centroid and
 * second moment of what is left.
 *
 * <p>Symbols: d diameter, L length, w0 amplitude, a depth of the flaw (m). Range: w0/d to 0.5, a/d
 * to 0.6. The sharp bottom of a flaw adds its own concentration: the nominal strain is a least
 * figure. Source: derived.
 *
 * <p>JShell: {@code StrutFlaws.oppositeFactor(0.25)}
 */
public final class StrutFlaws {

  private StrutFlaws() {}

  /**
   * Axial stiffness of a crooked strut over that of a straight one, ends that turn freely.
   *
   * @param amplitude w0/d, 0 to 0.5
   * @return the ratio, at most 1
   */
  public static double crookedPinned(double amplitude) {
    Require.between("amplitude over diameter", amplitude, 0.0, 0.5, "");
    return 1.0 / (1.0 + 8.0 * amplitude * amplitude);
  }

  /**
   * Axial stiffness of a crooked strut over that of a straight one, ends that do not turn.
   *
   * @param amplitude w0/d, 0 to 0.5
   * @return the ratio, at most 1
   */
  public static double crookedBuiltIn(double amplitude) {
    Require.between("amplitude over diameter", amplitude, 0.0, 0.5, "");
    double free = 8.0 * (1.0 - 8.0 / (Math.PI * Math.PI));
    return 1.0 / (1.0 + free * amplitude * amplitude);
  }

  /**
   * The power with which the modulus of a cell follows the strut diameter: 2 where struts stretch,
   * 4 where slender struts bend.
   *
   * @param cell the cell
   * @param slenderness d/L
   * @param poisson Poisson's ratio of the solid
   * @return d ln E100/d ln d with fat joints
   */
  public static double diameterPower(UnitCell cell, double slenderness, double poisson) {
    return LogSlope.at(x -> cell.solid(x, poisson).young100(), slenderness);
  }

  /**
   * The nominal strain at the bottom of a flaw over the peak strain of the whole strut, at the same
   * bending moment. The bottom of a shallow flaw lies nearer the neutral line, so to a/d 0.08 it is
   * up to 2 % below 1; what governs the section is {@link #oppositeFactor}.
   *
   * @param depth a/d, 0 to 0.6
   * @return the factor, above 0.98
   */
  public static double bendingFactor(double depth) {
    Section s = Section.of(depth);
    return 0.25 * Math.PI * s.edge / s.inertia;
  }

  /**
   * The strain of the side opposite a flaw over the peak strain of the whole strut, at the same
   * bending moment: the neutral line moves away from the flaw, and this side is strained more.
   *
   * @param depth a/d, 0 to 0.6
   * @return the factor, at least 1, above {@link #bendingFactor}
   */
  public static double oppositeFactor(double depth) {
    Section s = Section.of(depth);
    return 0.25 * Math.PI * (1.0 - s.shift) / s.inertia;
  }

  /**
   * The nominal strain at the bottom of a flaw over the strain of the whole strut, at the same
   * axial pull through its axis.
   *
   * @param depth a/d, 0 to 0.6
   * @return the factor, at least 1
   */
  public static double pullFactor(double depth) {
    Section s = Section.of(depth);
    return Math.PI * (1.0 / s.area + s.shift * s.edge / s.inertia);
  }

  /** What a chord leaves of a circle of radius 1: shift of the centroid, distance to the chord. */
  private record Section(double area, double shift, double edge, double inertia) {

    static Section of(double depth) {
      Require.between("depth of the flaw over diameter", depth, 0.0, 0.6, "");
      double chord = 1.0 - 2.0 * depth;
      double angle = Math.acos(chord);
      double sine = Math.sin(angle);
      double lost = angle - sine * chord;
      double area = Math.PI - lost;
      double shift = 2.0 / 3.0 * sine * sine * sine / area;
      double about = 0.25 * Math.PI - 0.25 * (lost + 2.0 * sine * sine * sine * chord);
      return new Section(area, shift, chord + shift, about - area * shift * shift);
    }
  }
}
