package org.flexwright.lattice.cell;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;

/**
 * A slender strut whose two ends keep their direction while they are pushed towards each other: the
 * strut of a cell pressed along its edge when, by symmetry, no node turns.
 *
 * <p>Exact inextensible elastica. With arc length in units of L, p(s) the angle to the plane across
 * the load and f = F L^2/(E I): p'' = f cos p, p(0) = p(1) = p0. The angle is least in the middle,
 * p_m, and p'^2 = 2 f (sin p - sin p_m), so sqrt(f)/2 = I[1], height = I[sin p]/I[1], with I[g] the
 * integral of g/sqrt(2 (sin p - sin p_m)) from p_m to p0. Then strain = 1 - height/sin p0, stress
 * over initial modulus times 1 = f cos^2 p0/(12 sin p0), and the peak fibre strain is p'(0) x/2.
 *
 * <p>Range: bending only, no contact between struts, compressive strain 0 to 0.6; finite thickness
 * changes the curve by 3 % at x = 0.2. The curve softens steadily and has no plateau.
 *
 * <p>Source: model of Zhu, Mills and Knott 1997, J. Mech. Phys. Solids 45, 1875 (bending limit,
 * from memory), solved here.
 *
 * <p>JShell: {@code Cells.KELVIN.path(0.1).softening(0.5)}
 */
public final class GuidedElastica implements CompressionPath {

  /** The largest strain for which the path is given: the strut lies flat. From 0.6 struts touch. */
  public static final double MOST = 1.0;

  static final Source SOURCE =
      Source.memory("Zhu, Mills and Knott 1997, J. Mech. Phys. Solids 45, 1875, bending limit");

  // sixteen Gauss points after the substitution p = p_m + (p0 - p_m) t^2: 1e-14 of the integrals
  private static final double[] T = new double[16];
  private static final double[] W = new double[16];

  static {
    var gauss =
        new org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory()
            .legendre(16, 0.0, 1.0);
    for (int i = 0; i < 16; i++) {
      T[i] = gauss.getPoint(i);
      W[i] = gauss.getWeight(i);
    }
  }

  // between these strains the two curves are read from polynomials good to 1e-10
  private static final double LEAST = 1e-6;
  private static final double TABLED = 0.8;

  private final double p0;
  private final double[] start = new double[65]; // drop of the middle over strain, at even strains
  private final ChebyshevCurve softenings; // softening over strain
  private final ChebyshevCurve peaks; // peak strain over slenderness over strain

  private GuidedElastica(double p0) {
    this.p0 = p0;
    double most = p0 + 0.49 * Math.PI;
    for (int i = 1; i < start.length; i++) {
      double strain = MOST * i / (start.length - 1);
      start[i] =
          new BrentSolver(1e-12, 1e-12).solve(200, d -> strain(d) - strain, 0.0, most) / strain;
    }
    start[0] = 2.0 * start[1] - start[2];
    softenings = ChebyshevCurve.of(e -> exactSoftening(e) / e, LEAST, TABLED);
    peaks = ChebyshevCurve.of(e -> exactPeak(e) / e, LEAST, TABLED);
  }

  /** One state: load f, height over its first value, width over its first value, end curvature. */
  private record State(double f, double height, double width, double curvature) {}

  /**
   * A strut by its slope.
   *
   * @param sine sine of the angle between the strut and the plane across the load, 0.1 to 0.95
   * @return the elastica
   */
  public static GuidedElastica ofSine(double sine) {
    Require.between("sine of the strut angle", sine, 0.1, 0.95, "");
    return new GuidedElastica(Math.asin(sine));
  }

  /**
   * Stress over initial modulus: equal to the strain for a strain near 0, below it later.
   *
   * @param strain compressive strain of the cell, 0 to {@link #MOST}
   * @return stress/E100
   */
  @Override
  public double softening(double strain) {
    Require.between("compressive strain", strain, 0.0, MOST, "");
    return strain <= TABLED ? strain * softenings.at(strain) : exactSoftening(strain);
  }

  double exactSoftening(double strain) {
    double cos = Math.cos(p0);
    return state(strain).f * cos * cos / (12.0 * Math.sin(p0));
  }

  /**
   * The peak fibre strain of the strut for each unit of slenderness.
   *
   * @param strain compressive strain of the cell, 0 to {@link #MOST}
   * @return peak strain over d/L
   */
  public double peakStrainOverSlenderness(double strain) {
    Require.between("compressive strain", strain, 0.0, MOST, "");
    return strain <= TABLED ? strain * peaks.at(strain) : exactPeak(strain);
  }

  double exactPeak(double strain) {
    return 0.5 * state(strain).curvature;
  }

  /**
   * The slope of {@link #peakStrainOverSlenderness} at rest: 3 sin p0/cos p0.
   *
   * @return the slope
   */
  public double peakStrainSlope() {
    return 3.0 * Math.tan(p0);
  }

  @Override
  public double growth(double strain) {
    return peakStrainOverSlenderness(strain) / peakStrainSlope();
  }

  @Override
  public WorkingStrain working(double slope, double stretch, double strain) {
    return WorkingStrain.roundBending(slope * growth(strain)).linearMoment();
  }

  /**
   * How much the strut gains across the load: the lateral strain of a cell whose width is all in
   * such struts (body-centred), twice that of the Kelvin cell.
   *
   * @param strain compressive strain of the cell, 0 to {@link #MOST}
   * @return gain over its first value, positive
   */
  public double widening(double strain) {
    Require.between("compressive strain", strain, 0.0, MOST, "");
    return state(strain).width - 1.0;
  }

  private State state(double strain) {
    if (strain < 1e-9) {
      double f = 12.0 * Math.sin(p0) / (Math.cos(p0) * Math.cos(p0)) * strain;
      return new State(f, 1.0 - strain, 1.0, 2.0 * peakStrainSlope() * strain);
    }
    return at(drop(strain));
  }

  /** How far the middle has turned: secant steps from the table, which is good to 1e-4. */
  private double drop(double strain) {
    double u = strain / MOST * (start.length - 1);
    int i = Math.min((int) u, start.length - 2);
    double a = strain * (start[i] + (u - i) * (start[i + 1] - start[i]));
    double b = a * (1.0 + 1e-5);
    double fa = strain(a) - strain;
    for (int k = 0; k < 20; k++) {
      double fb = strain(b) - strain;
      if (fb == fa) {
        return b;
      }
      double next = b - fb * (b - a) / (fb - fa);
      if (Math.abs(next - b) < 1e-15) {
        return next;
      }
      a = b;
      fa = fb;
      b = next;
    }
    return b;
  }

  private double strain(double drop) {
    return 1.0 - at(drop).height;
  }

  /** The state whose middle has turned by a given angle from rest. */
  private State at(double drop) {
    if (drop == 0.0) {
      return new State(0.0, 1.0, 1.0, 0.0);
    }
    double low = p0 - drop;
    double sineLow = Math.sin(low);
    double one = 0.0;
    double up = 0.0;
    double across = 0.0;
    for (int i = 0; i < T.length; i++) {
      double t = T[i];
      double half = 0.5 * drop * t * t;
      // sin p - sin low with p = low + 2 half, without cancellation
      double rise = 2.0 * Math.cos(low + half) * Math.sin(half);
      double sine = sineLow + rise;
      double w = W[i] * 2.0 * drop * t / Math.sqrt(2.0 * rise);
      one += w;
      up += w * sine;
      across += w * Math.sqrt(Math.max(0.0, 1.0 - sine * sine));
    }
    double f = 4.0 * one * one;
    double whole = 2.0 * Math.cos(p0 - 0.5 * drop) * Math.sin(0.5 * drop);
    return new State(
        f, up / one / Math.sin(p0), across / one / Math.cos(p0), Math.sqrt(2.0 * f * whole));
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "strut guided at both ends, " + Text.number(Math.toDegrees(p0)) + " deg";
  }
}
