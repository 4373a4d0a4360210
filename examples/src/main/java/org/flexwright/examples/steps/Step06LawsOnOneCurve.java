package org.flexwright.examples.steps;

import java.io.PrintStream;
import java.util.List;
import org.flexwright.fit.FitComparison;
import org.flexwright.fit.FittedLaw;
import org.flexwright.fit.LawFit;
import org.flexwright.fit.TestCurve;
import org.flexwright.fit.Weighting;
import org.flexwright.law.LawFamily;
import org.flexwright.law.classical.LawFamilies;
import org.flexwright.run.RunControl;

/**
 * Shows: laws fitted to one curve, which of them follows it, and what each says of the deformations
 * that it has not seen.
 *
 * <p>Source: the points of Treloar 1944, Trans. Faraday Soc. 40; see {@link TreloarCurves}.
 *
 * <p>Expect: Gent follows the curve best, yet Yeoh is nearer in the others; a neo-Hookean modulus
 * of 0.567 MPa, as Steinmann, Hossain and Possart 2012 found by plain least squares.
 */
public final class Step06LawsOnOneCurve {

  private Step06LawsOnOneCurve() {}

  /**
   * Runs the step.
   *
   * @param args none
   */
  public static void main(String[] args) {
    run(System.out);
  }

  /** The neo-Hookean shear modulus in MPa. */
  static double run(PrintStream out) {
    List<LawFamily> families = List.of(LawFamilies.NEO_HOOKEAN, LawFamilies.GENT, LawFamilies.YEOH);
    LawFit plain = LawFit.of(LawFamilies.NEO_HOOKEAN).weighting(Weighting.ABSOLUTE);
    List<TestCurve> one = List.of(TreloarCurves.UNIAXIAL);
    FitComparison laws = FitComparison.of(plain, families, one, RunControl.none());
    out.println(laws);
    for (TestCurve unseen : List.of(TreloarCurves.PLANAR, TreloarCurves.EQUIBIAXIAL)) {
      TestCurve.Point middle = unseen.points().get(unseen.points().size() / 2);
      double at = middle.stretch();
      out.println(unseen + ": " + middle.nominal() + " at " + at);
      for (FitComparison.Entry entry : laws.entries()) {
        FittedLaw law = entry.fitted().orElseThrow();
        out.println(
            "  " + entry.family().name() + " " + unseen.mode().nominalStress(law.law(), at));
        law.beyondData(unseen.mode(), at).ifPresent(c -> out.println("    " + c));
      }
    }
    return plain.fit(one).value("mu") / 1e6;
  }
}
