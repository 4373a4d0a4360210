package org.flexwright.law;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.flexwright.internal.Text;

/**
 * The contract that every strain-energy law must meet, run on a law of whatever origin.
 *
 * <p>The demands: energy zero at rest; no stress at rest up to a pressure; first derivatives those
 * of the energy and second derivatives those of the first; the same answer in all six orders of the
 * stretches; the stated shear modulus and Young's modulus; stable (Drucker, Hill) on a map of the
 * whole range; strongly elliptic to 10 % and, as a remark, how far beyond; finite in random states
 * of the range; no value that is not a number beyond the range, and locked for good once the energy
 * is infinite; a scaled law that is the law times the factor.
 *
 * <p>Range: states to the very end of the range of the law, near locking too, where differences
 * take steps by the distance to it. Tolerances are those of rounding: 1e-8 for first and 1e-7 for
 * second derivatives, which differences reach even at the kinks that curves of points have in their
 * third; 1e-12 of the scale where only the order of sums differs; 1e-6 for moduli by differences.
 * An error below is not seen, nor is one in a state between those of the map (13 ways from rest, 60
 * steps each), nor one beyond a stretch of {@link Stability#FARTHEST}.
 *
 * <p>Caveats: a law that loses strong ellipticity inside its range is not wrong, but a sheet or a
 * block of it may form shear bands before the range ends, which no closed form here foresees. Laws
 * of one stress curve that softens may do so.
 *
 * <p>Source: derived; measures see {@link Stability}.
 *
 * <p>JShell: {@code LawCheck.of(NeoHookean.of(mpa(0.4))).report()}
 */
public final class LawCheck {

  // a strain that every use reaches
  private static final double NEAR = Math.log(1.1);
  private static final double STEP = 1e-5;
  private static final double FACTOR = 2.5;

  private final StrainEnergy law;
  private final LawDifferences differences;
  private final LawStates states;
  private final double young;

  private LawCheck(StrainEnergy law) {
    this.law = law;
    differences = new LawDifferences(law);
    states = new LawStates(law.range());
    young = 3.0 * Math.abs(law.shearModulus());
  }

  /**
   * A check of one law.
   *
   * @param law the law
   * @return the check, not run yet
   */
  public static LawCheck of(StrainEnergy law) {
    return new LawCheck(law);
  }

  /**
   * One line of a report.
   *
   * @param what the demand
   * @param worst the largest relative error found, the number of states that fail, or the least
   *     stiffness over that at rest
   * @param allowed the limit
   * @param passed whether the demand is met
   * @param remark what else was seen, may be empty
   */
  public record Line(String what, double worst, double allowed, boolean passed, String remark) {

    /** One readable line. */
    @Override
    public String toString() {
      return (passed ? "ok      " : "FAILED  ")
          + what
          + ": worst "
          + Text.number(worst)
          + ", allowed "
          + Text.number(allowed)
          + (remark.isEmpty() ? "" : "; " + remark);
    }
  }

  /**
   * The outcome of all demands.
   *
   * @param law the law in one line
   * @param lines one line for each demand
   */
  public record Report(String law, List<Line> lines) {

    /**
     * Keeps the lines from being changed.
     *
     * @param law the law in one line
     * @param lines one line for each demand
     */
    public Report {
      lines = List.copyOf(lines);
    }

    /**
     * Whether every demand is met.
     *
     * @return true if all passed
     */
    public boolean passed() {
      return lines.stream().allMatch(Line::passed);
    }

    /** A readable block. */
    @Override
    public String toString() {
      StringBuilder text = new StringBuilder(law);
      lines.forEach(line -> text.append("\n").append(line));
      return text.toString();
    }
  }

  /**
   * Runs every demand.
   *
   * @return the report
   */
  public Report report() {
    List<Line> lines = new ArrayList<>();
    lines.add(error("energy zero at rest", Math.abs(law.energy(1, 1, 1)) / young, 1e-12));
    lines.add(error("no stress at rest up to a pressure", stressAtRest(), 1e-12));
    lines.add(
        error(
            "first derivatives are those of the energy", worst(differences::gradientError), 1e-8));
    lines.add(
        error("second derivatives are those of the first", worst(differences::hessianError), 1e-7));
    lines.add(
        error("order of the stretches does not matter", worst(differences::orderError), 1e-12));
    lines.add(error("derivatives at once are the same", worst(differences::togetherError), 1e-13));
    lines.add(error("shear modulus as stated", shearError(), 1e-6));
    lines.add(error("Young's modulus as stated", youngError(), 1e-6));
    double least = least(states.map(Double.POSITIVE_INFINITY), StateStiffness::drucker);
    lines.add(
        new Line(
            "stable in its range (least stiffness over that at rest)", least, 0, least > 0, ""));
    lines.add(ellipticity());
    lines.add(error("finite in its range (states that are not)", notFinite(), 0));
    lines.add(error("locks for good, without a value that is no number (states)", badLock(), 0));
    StrainEnergy scaled = law.scaled(FACTOR);
    lines.add(
        error(
            "scaled law is the law times the factor",
            worst(l -> differences.scaledError(l, scaled, FACTOR)),
            1e-10));
    return new Report(law.toString(), lines);
  }

  private static Line error(String what, double worst, double allowed) {
    return new Line(what, worst, allowed, worst <= allowed, "");
  }

  private double worst(ToDoubleFunction<double[]> error) {
    double worst = 0.0;
    for (double[] l : states.few()) {
      worst = LawDifferences.larger(worst, error.applyAsDouble(l));
    }
    return worst;
  }

  private double stressAtRest() {
    double[] g = differences.gradient(new double[] {1.0, 1.0, 1.0});
    double spread = Math.max(Math.abs(g[0] - g[1]), Math.abs(g[1] - g[2])) / young;
    return LawDifferences.larger(0.0, spread);
  }

  /** The slope of the true stress at rest by a difference, over the law's stated modulus. */
  private double shearError() {
    return LawDifferences.larger(
        0.0, Math.abs(slopeAtRest(Deformation.PLANAR) / (4.0 * law.shearModulus()) - 1.0));
  }

  private double youngError() {
    return LawDifferences.larger(
        0.0, Math.abs(slopeAtRest(Deformation.UNIAXIAL) / law.youngModulus() - 1.0));
  }

  private double slopeAtRest(Deformation mode) {
    return (mode.trueStressPa(law, 1.0 + STEP) - mode.trueStressPa(law, 1.0 - STEP)) / (2.0 * STEP);
  }

  private double least(List<double[]> where, ToDoubleFunction<StateStiffness> measure) {
    double least = Double.POSITIVE_INFINITY;
    StateStiffness work = new StateStiffness(law);
    for (double[] l : where) {
      double value = measure.applyAsDouble(work.at(l[0], l[1], l[2]));
      least = Double.isNaN(value) ? Double.NEGATIVE_INFINITY : Math.min(least, value);
    }
    return least;
  }

  private Line ellipticity() {
    double near = least(states.map(NEAR), StateStiffness::elliptic);
    double lost = Double.POSITIVE_INFINITY;
    StateStiffness work = new StateStiffness(law);
    for (double[] l : states.map(Double.POSITIVE_INFINITY)) {
      if (!(work.at(l[0], l[1], l[2]).elliptic() > 0.0)) {
        lost = Math.min(lost, l[0]);
      }
    }
    return new Line(
        "strongly elliptic to 10 %",
        near,
        0.0,
        near > 0.0,
        lost < Double.POSITIVE_INFINITY
            ? "lost inside the range, from a stretch of about " + Text.number(lost)
            : "in the whole range");
  }

  private double notFinite() {
    return states.random().stream().filter(l -> !differences.finite(l)).count();
  }

  /** States outside with an energy that is no number, or finite again behind locking. */
  private double badLock() {
    int bad = 0;
    for (List<double[]> way : states.beyond()) {
      boolean locked = false;
      for (double[] l : way) {
        double energy = law.energy(l[0], l[1], l[2]);
        boolean infinite = energy == Double.POSITIVE_INFINITY;
        if (!infinite && (locked || !Double.isFinite(energy) || hasNaN(l))) {
          bad++;
        }
        locked |= infinite;
      }
    }
    return bad;
  }

  private boolean hasNaN(double[] l) {
    double[] g = differences.gradient(l);
    return Double.isNaN(g[0]) || Double.isNaN(g[1]) || Double.isNaN(g[2]);
  }
}
