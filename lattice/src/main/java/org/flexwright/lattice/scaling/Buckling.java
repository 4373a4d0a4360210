package org.flexwright.lattice.scaling;

import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Pressure;

/**
 * The stress at which the struts of a stretch-dominated cell buckle: C Es rho1^2.
 *
 * <p>Symbols: Es modulus of the solid, rho1 relative density to first order, C by cell and
 * direction. The simple cubic cell sways: y tan y = 3, P = 4 y^2 Es I/L^2, C = 0.050291. The octet
 * pushed along an edge: struts of factor n (1 ends that turn freely, 2 ends that do not), C =
 * 0.030853 n^2; in a frame n is 1.37 to 1.39 (waves), n = 2 is a bound that no frame reaches. The
 * others are waves over many cells, computed on a coarse set of wave vectors: upper estimates of
 * the least stress, good for perfect struts only.
 *
 * <p>Source: derived (periodic frame with geometric stiffness); octet Deshpande, Fleck and Ashby
 * 2001 (from memory, checked).
 *
 * <p>JShell: {@code Buckling.waves().forEach(System.out::println)}
 *
 * @param cell the name of the cell
 * @param direction where it is pushed, as cube indices
 * @param coefficient C
 * @param strainOverSquare strain at buckling over x^2
 * @param source where C comes from
 */
public record Buckling(
    String cell, String direction, double coefficient, double strainOverSquare, Source source) {

  private static final Source WAVES =
      Source.derived("waves of any length in a periodic frame, Poisson's ratio 0.3, d/L 0.1");
  private static final Source SWAY =
      Source.derived("sway of a simple cubic frame, inextensible slender struts");
  private static final Source OCTET =
      Source.memory("Deshpande, Fleck and Ashby 2001, J. Mech. Phys. Solids 49, 1747");

  /**
   * Refuses constants that are not above 0.
   *
   * @param cell the name of the cell
   * @param direction where it is pushed, as cube indices
   * @param coefficient C
   * @param strainOverSquare strain at buckling over x^2
   * @param source where C comes from
   */
  public Buckling {
    Require.positive("buckling coefficient", coefficient, "");
    Require.positive("strain at buckling", strainOverSquare, "");
  }

  /**
   * The root y of y tan y = 3 between 0 and pi/2.
   *
   * @return 1.192459
   */
  public static double swayRoot() {
    return new BrentSolver(1e-15).solve(100, y -> y * Math.sin(y) - 3.0 * Math.cos(y), 0.5, 1.5);
  }

  /**
   * The simple cubic cell pushed along an edge, which sways.
   *
   * @return C = y^2/(9 pi), from P = 4 y^2 Es I/L^2 on an area L^2 and rho1 = (3 pi/4) (d/L)^2
   */
  public static Buckling simpleCubicSway() {
    double y = swayRoot();
    double load = 4.0 * y * y * Math.PI / 64.0; // P/(Es d^4/L^2)
    double rho = 0.75 * Math.PI; // rho1/x^2
    // strain: P/(Es A) = load x^2/(pi/4)
    return new Buckling("simple cubic", "001", load / (rho * rho), load / (0.25 * Math.PI), SWAY);
  }

  /**
   * The octet cell pushed along an edge: strut stress n^2 pi^2 Es (d/L)^2/16, a third of it times
   * rho1.
   *
   * @param n 1 for ends that turn freely, 2 for ends that do not; a frame reaches 1.39
   * @return C = 0.030853 n^2
   * @throws org.flexwright.InvalidInputException if n is outside 1 to 2
   */
  public static Buckling octet(double n) {
    Require.between("end factor", n, 1.0, 2.0, "");
    double strut = n * n * Math.PI * Math.PI / 16.0; // strain of the strut over x^2
    double rho = 1.5 * Math.sqrt(2.0) * Math.PI;
    // E100 = rho1/9 and stress = rho1/3 x strut stress, so strain = 3 x that of the strut
    return new Buckling(
        "octet, struts of factor " + Text.number(n), "001", strut / (3.0 * rho), 3 * strut, OCTET);
  }

  /**
   * Computed waves, by cell and direction.
   *
   * @return an immutable list
   */
  public static List<Buckling> waves() {
    return List.of(
        new Buckling("simple cubic", "001", 0.0494, 0.349, WAVES),
        new Buckling("octet", "001", 0.05812, 3.419, WAVES),
        new Buckling("octet", "111", 0.06476, 2.145, WAVES),
        new Buckling("octahedral", "001", 0.08076, 2.375, WAVES),
        new Buckling("octahedral", "111", 0.11223, 1.863, WAVES),
        new Buckling("face-centred", "001", 0.04535, 1.334, WAVES),
        new Buckling("face-centred", "111", 0.07613, 1.266, WAVES));
  }

  /**
   * The stress at which it buckles.
   *
   * @param solid modulus of the solid
   * @param density relative density to first order, above 0, at most 0.3
   * @return the estimate, always with the caveat that crooked struts buckle earlier
   */
  public Estimate<Pressure> stress(Pressure solid, double density) {
    Require.positive("modulus of the solid", solid.pa(), "Pa");
    Require.between("relative density", density, Double.MIN_NORMAL, 0.3, "");
    Pressure nominal = solid.times(coefficient * density * density);
    return new Estimate<>(
        nominal.times(0.5),
        nominal,
        nominal,
        Estimate.Band.BRACKET,
        List.of(source),
        List.of(
            Caveat.note(
                "buckling of the " + cell + " cell",
                "for perfect struts, an upper estimate: crooked struts and free sides give way"
                    + " earlier, half of it is the low end (judgement)",
                source)));
  }

  /**
   * The strain at which it buckles.
   *
   * @param slenderness d/L of the struts, above 0, at most 0.2
   * @return the compressive strain, positive
   */
  public double strain(double slenderness) {
    Require.between("slenderness", slenderness, Double.MIN_NORMAL, 0.2, "");
    return strainOverSquare * slenderness * slenderness;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return cell + " [" + direction + "]: " + Text.number(coefficient) + " Es rho^2, " + source;
  }
}
