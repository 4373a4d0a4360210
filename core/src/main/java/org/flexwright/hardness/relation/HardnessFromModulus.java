package org.flexwright.hardness.relation;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Estimate;
import org.flexwright.evidence.Source;
import org.flexwright.hardness.HardnessChart;
import org.flexwright.hardness.HardnessRelation;
import org.flexwright.hardness.ShoreA;
import org.flexwright.hardness.ShoreD;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Pressure;

/**
 * The hardness that a modulus would read as: the way back of {@link ModulusFromHardness}, for "it
 * feels like so many Shore".
 *
 * <p>Nominal: the reading S with E(S) = E, where E(S) is the nominal modulus of {@link
 * ModulusFromHardness}; so a reading taken to its nominal modulus and back is itself. Band: the
 * lowest and highest reading that the relations in use at S give for E.
 *
 * <p>E Young's modulus at small strain, above zero; S points of Shore A. One named relation alone:
 * {@code new Gent1958().points(modulus)}.
 *
 * <p>Range 0.2 to 80 MPa. Beyond the ends of scale A the answer stays at 0.5 or 99.5 points, with a
 * caveat.
 *
 * <p>Source: the relations in use, see the estimate.
 *
 * <pre>{@code
 * HardnessFromModulus.shoreA(Pressure.mpa(5))      // 63.84 Shore A (56.99 Shore A to 68.39 Shore A, ...)
 * }</pre>
 */
public final class HardnessFromModulus {

  private static final String MODEL = "hardness from modulus";
  private static final Source RULE =
      Source.derived("inverse of the nominal modulus over the relations in use");
  private static final double LEAST = 0.5;
  private static final double MOST = 99.5;

  private HardnessFromModulus() {}

  /**
   * The Shore A reading of a modulus.
   *
   * @param modulus Young's modulus at small strain, above zero
   * @return the reading, with the band over the relations in use
   * @throws org.flexwright.InvalidInputException if the modulus is not above zero
   */
  public static Estimate<ShoreA> shoreA(Pressure modulus) {
    double pascals = Require.positive("modulus", modulus.pa(), "Pa");
    double points = solve(Math.log(pascals));
    ModulusFromHardness there = ModulusFromHardness.of(ShoreA.of(points));
    double low = points;
    double high = points;
    for (Choice.Member m : choice(points).members()) {
      if (m.share() > 0.0) {
        double own = reading(m.relation(), modulus);
        low = Math.min(low, own);
        high = Math.max(high, own);
      }
    }
    List<Caveat> caveats = new ArrayList<>(there.spread().caveats());
    if (points == LEAST || points == MOST) {
      String where = points == LEAST ? "softer" : "harder";
      String end = modulus + " is " + where + " than scale A can tell, it ends near ";
      caveats.add(Caveat.note(MODEL, end + there.spread().nominal(), RULE));
    }
    return new Estimate<>(
        ShoreA.of(low),
        ShoreA.of(points),
        ShoreA.of(high),
        Estimate.Band.SPREAD_OF_RELATIONS,
        there.spread().sources(),
        caveats);
  }

  private static Choice choice(double points) {
    return Choice.at(ShoreA.of(points), Relations.independent());
  }

  private static double solve(double logModulus) {
    if (logModulus <= choice(LEAST).logNominal()) {
      return LEAST;
    }
    if (logModulus >= choice(MOST).logNominal()) {
      return MOST;
    }
    return new BrentSolver(1e-15, 1e-11)
        .solve(200, s -> choice(s).logNominal() - logModulus, LEAST, MOST);
  }

  /** The reading on scale A that one relation gives, kept on the scale. */
  private static double reading(HardnessRelation relation, Pressure modulus) {
    boolean onD = relation.scale() == ShoreD.class;
    double least = onD ? HardnessChart.toShoreD(ShoreA.of(LEAST)).points() : LEAST;
    double most = onD ? HardnessChart.toShoreD(ShoreA.of(MOST)).points() : MOST;
    if (modulus.compareTo(relation.modulus(least)) <= 0) {
      return LEAST;
    }
    if (modulus.compareTo(relation.modulus(most)) >= 0) {
      return MOST;
    }
    double own = relation.points(modulus);
    return onD ? HardnessChart.toShoreA(ShoreD.of(own)).points() : own;
  }
}
