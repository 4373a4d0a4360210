package org.flexwright.law;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;

/**
 * How stable a law is, in a state, along the test deformations and over all biaxial states.
 *
 * <p>Three measures of a state, each 1 at rest for every law and above 0 where the demand is met:
 *
 * <ul>
 *   <li>{@link #stiffness}: the least eigenvalue of the second derivative of W(e1, e2, -e1 - e2) by
 *       the Hencky strains e_i = ln l_i, over 2 G (Drucker, Hill). The usual meaning of a stable
 *       law.
 *   <li>{@link #uniqueness}: the least eigenvalue of dP_i/dl_j in a sheet, over 2 G. At zero the
 *       state gives way under dead loads, as a sheet under equal pulls that goes unequal.
 *   <li>{@link #ellipticity}: the least of the numbers below, over their values at rest. At zero a
 *       shear band may form.
 * </ul>
 *
 * <p>Strong ellipticity of an incompressible isotropic law, all directions: with g_ij = (l_i W_i -
 * l_j W_j)/(l_i^2 - l_j^2), G_ij = l_i l_j g_ij, a_ii = l_i^2 W_ii and a_ij = l_i l_j W_ij + l_i^2
 * g_ij - l_i W_i it holds if and only if for all pairs and triples g_ij above 0 (Baker and
 * Ericksen), p_ij = a_ii + a_jj - 2 a_ij + 2 G_ij above 0 and a_kk + a_ij - a_ik - a_jk + G_ij +
 * G_ik + G_jk + sqrt(p_ik p_jk) above 0. Derived here: for y_i = n_i m_i with the sum 0 the least
 * of the acoustic form over the directions n is sum a_ij y_i y_j + sum G_ij |y_i y_j|, a quadratic
 * form on quadrants. p_ij is 2 (beta + sqrt(alpha gamma)) of the plane i, j. For W(I1) it is W1
 * above 0 and W1 + 2 W11 (l_max - l_min)^2 above 0.
 *
 * <p>Symbols: l_i principal stretches, W_i and W_ij derivatives of the energy (Pa), G shear modulus
 * at rest (Pa), n normal of a band, m its direction of slip.
 *
 * <p>Range: stretches up to {@link #FARTHEST}. Thread-safe; nothing is kept between calls.
 *
 * <p>Source: Hill 1958, J. Mech. Phys. Solids 6; Zee and Sternberg 1983, Arch. Rat. Mech. Anal. 83;
 * Dowaikh and Ogden 1990, IMA J. Appl. Math. 44 (all from memory; derived and checked here).
 *
 * <p>JShell: {@code Stability.of(MooneyRivlin.of(mpa(0.3), mpa(0.05))).map(0.5, 3, 6).table()}
 */
public final class Stability {

  /** The stretch to which a law is looked at. */
  public static final double FARTHEST = 20.0;

  // the ways of a scan: second Hencky strain over the first (the largest), the third has the rest
  private static final double[] WAYS = {
    1.0, -0.5, 0.0, 0.5, -0.25, 0.75, 0.25, -0.375, -0.125, 0.875, 0.625, 0.375, 0.125
  };
  private static final double APART = 0.125;
  private static final double CLOSEST = 1e-3;
  // a hair inside: at the limit itself the least stiffness is zero
  private static final double INSIDE = 1.0 - 1e-9;
  private static final double OF_LOCKING = 0.97;

  private final StrainEnergy law;

  private Stability(StrainEnergy law) {
    this.law = law;
  }

  /**
   * The stability of a law.
   *
   * @param law the law
   * @return its stability
   */
  public static Stability of(StrainEnergy law) {
    return new Stability(law);
  }

  /**
   * The least stiffness in a state, over that at rest, 2 G = 2 E/3.
   *
   * @param state the state
   * @return above 0 if stable
   * @throws InvalidInputException if the law locks before this state
   */
  public double stiffness(BiaxialStretch state) {
    return state.finite(law, state.in(law).drucker());
  }

  /**
   * The least derivative of the nominal stresses in a state, over that at rest, 2 G.
   *
   * @param state the state
   * @return above 0 if the state holds under dead loads
   * @throws InvalidInputException if the law locks before this state
   */
  public double uniqueness(BiaxialStretch state) {
    return state.finite(law, state.in(law).deadLoad());
  }

  /**
   * The margin of strong ellipticity in a state, over that at rest.
   *
   * @param state the state
   * @return above 0 if strongly elliptic
   * @throws InvalidInputException if the law locks before this state
   */
  public double ellipticity(BiaxialStretch state) {
    return state.finite(law, state.in(law).elliptic());
  }

  /**
   * Where a deformation loses its stability in tension.
   *
   * @param mode the deformation
   * @return the least stretch above 1 at which the stiffness is zero, empty if there is none to
   *     {@link #FARTHEST} or to locking
   */
  public OptionalDouble tensionLimit(Deformation mode) {
    return limit(mode, 1.0);
  }

  /**
   * Where a deformation loses its stability in compression.
   *
   * @param mode the deformation
   * @return the greatest stretch below 1 at which the stiffness is zero, empty if there is none
   *     until the largest of the three stretches is {@link #FARTHEST}, or to locking
   */
  public OptionalDouble compressionLimit(Deformation mode) {
    return limit(mode, -1.0);
  }

  private OptionalDouble limit(Deformation mode, double sign) {
    double[] unit = mode.stretches(Math.exp(sign));
    double most = Math.log(Math.max(unit[0], Math.max(unit[1], unit[2])));
    FirstLoss lost =
        along(
            new StateStiffness(law),
            sign * Math.log(unit[0]),
            sign * Math.log(unit[1]),
            sign * Math.log(FARTHEST) / most);
    return lost.kind() == FirstLoss.Kind.ZERO
        ? OptionalDouble.of(Math.exp(lost.strain()))
        : OptionalDouble.empty();
  }

  /** The first loss on the way of Hencky strains t times first, t times second, t to an end. */
  private static FirstLoss along(StateStiffness work, double first, double second, double end) {
    UnivariateFunction least =
        t -> {
          double l1 = Math.exp(first * t);
          double l2 = second == first ? l1 : Math.exp(second * t);
          return work.at(l1, l2, 1.0 / (l1 * l2)).smoothDrucker();
        };
    return FirstLoss.of(least, end);
  }

  /**
   * All biaxial states of a square of stretches.
   *
   * @param low the least stretch of both directions, above 0
   * @param high the greatest
   * @param count the number of stretches of each direction, evenly spaced, 2 or more
   * @return the map
   * @throws InvalidInputException if the square is empty
   */
  public StabilityMap map(double low, double high, int count) {
    Require.positive("least stretch of the map", low, "");
    Require.positive("greatest stretch of the map", high, "");
    Require.that(low < high, "stretches of the map", low + " to " + high, "a least below", "");
    Require.atLeast("stretches of the map", count, 2);
    List<Double> stretches = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      stretches.add(low + (high - low) * i / (count - 1));
    }
    StateStiffness work = new StateStiffness(law);
    List<List<StabilityMap.State>> rows = new ArrayList<>();
    for (double l1 : stretches) {
      List<StabilityMap.State> row = new ArrayList<>();
      for (double l2 : stretches) {
        row.add(StabilityMap.State.of(work.at(l1, l2, 1.0 / (l1 * l2))));
      }
      rows.add(row);
    }
    return new StabilityMap(law.toString(), stretches, rows);
  }

  /**
   * The stretches in which a law is stable (Drucker, Hill), for its own {@link StrainEnergy#range}.
   *
   * <p>Thirteen ways from rest are walked, from uniaxial over planar to equibiaxial, and more
   * beside the worst of them; with the order of the stretches left aside they also are the ways of
   * compression. For a law that locks the range ends at 97 % of the extension at locking. The cost
   * is some 300 states of the law, 30 to 100 microseconds: keep the answer where it is wanted
   * often.
   *
   * @param law the law
   * @return the range, to a stretch of {@link #FARTHEST} at most
   */
  public static StretchRange range(StrainEnergy law) {
    FirstLoss first = firstLoss(law);
    FirstLoss.Kind kind = first.kind();
    double high = Math.exp(first.strain());
    high = kind == FirstLoss.Kind.LOCKED ? 1.0 + OF_LOCKING * (high - 1.0) : high * INSIDE;
    high = Math.max(1.0, high);
    String reason =
        kind == FirstLoss.Kind.LOCKED
            ? "97 % of locking"
            : kind == FirstLoss.Kind.NONE
                ? "stable as far as looked at"
                : "stable in tension, shear and inflation";
    return new StretchRange(
        1.0 / (high * high),
        high,
        reason,
        Source.derived("scan of the second derivative in logarithmic strains"));
  }

  /** The first loss on any way, the worst of the ways looked at more closely. */
  private static FirstLoss firstLoss(StrainEnergy law) {
    StateStiffness work = new StateStiffness(law);
    FirstLoss first = new FirstLoss(Math.log(FARTHEST), FirstLoss.Kind.NONE);
    double worst = 0.0;
    for (double way : WAYS) {
      FirstLoss lost = along(work, 1.0, way, first.strain());
      if (lost.kind() != FirstLoss.Kind.NONE) {
        first = lost;
        worst = way;
      }
    }
    if (first.kind() != FirstLoss.Kind.ZERO) {
      return first;
    }
    for (double step = 0.5 * APART; step > CLOSEST; step *= 0.5) {
      for (double way : new double[] {worst - step, worst + step}) {
        FirstLoss lost = way < -0.5 || way > 1.0 ? first : along(work, 1.0, way, first.strain());
        if (lost.kind() == FirstLoss.Kind.ZERO && lost.strain() < first.strain()) {
          first = lost;
          worst = way;
        }
      }
    }
    return first;
  }
}
