package org.flexwright.law;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.flexwright.internal.Text;

/**
 * The contract that every strain-energy law must meet, run on a law: energy zero at rest, first
 * derivatives equal to differences of the energy, second derivatives equal to differences of the
 * first, the same answer whatever the order of the stretches, the stated shear modulus, and
 * stability (a positive definite second derivative in logarithmic strains at constant volume)
 * wherever the law says it may be used.
 *
 * <p>The library's own laws are judged by the same code. Finite differences are good to about 1e-8
 * of the scale of the energy, hence the tolerances.
 *
 * <p>JShell: {@code LawCheck.of(NeoHookean.of(mpa(0.4))).report()}
 */
public final class LawCheck {

  private static final double[] STRETCHES = {0.5, 0.7, 0.9, 0.99, 1.0, 1.01, 1.1, 1.5, 2.0, 3.0};
  private static final double STEP = 1e-5;
  // smaller for the second derivatives: a curve law may have a kink in its third
  private static final double SMALL_STEP = 1e-7;

  private final StrainEnergy law;

  private LawCheck(StrainEnergy law) {
    this.law = law;
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
   * @param worst the largest relative error found, or the least stiffness for stability
   * @param allowed the limit
   * @param passed whether the demand is met
   */
  public record Line(String what, double worst, double allowed, boolean passed) {

    /** One readable line. */
    @Override
    public String toString() {
      return (passed ? "ok      " : "FAILED  ")
          + what
          + ": worst "
          + Text.number(worst)
          + ", allowed "
          + Text.number(allowed);
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
      lines.forEach(line -> text.append(System.lineSeparator()).append(line));
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
    lines.add(error("energy zero at rest", energyAtRest(), 1e-12));
    lines.add(error("first derivatives are those of the energy", worst(this::gradientError), 1e-8));
    lines.add(error("second derivatives are those of the first", worst(this::hessianError), 1e-7));
    lines.add(error("order of the stretches does not matter", worst(this::orderError), 1e-12));
    lines.add(error("shear modulus as stated", shearError(), 1e-6));
    double least = leastStiffness();
    lines.add(new Line("stable where it says so (least stiffness over E)", least, 0.0, least > 0));
    return new Report(law.toString(), lines);
  }

  private static Line error(String what, double worst, double allowed) {
    return new Line(what, worst, allowed, worst <= allowed);
  }

  private double energyAtRest() {
    return Math.abs(law.energy(1, 1, 1)) / law.youngModulus();
  }

  private double worst(ToDoubleFunction<double[]> error) {
    double worst = 0.0;
    for (double[] l : states()) {
      double e = error.applyAsDouble(l);
      worst = Double.isNaN(e) ? Double.POSITIVE_INFINITY : Math.max(worst, e);
    }
    return worst;
  }

  private List<double[]> states() {
    List<double[]> states = new ArrayList<>();
    StretchRange range = law.range();
    for (Deformation mode : Deformation.values()) {
      for (double stretch : STRETCHES) {
        double[] l = mode.stretches(stretch);
        boolean inside = true;
        for (double each : l) {
          inside &= each >= range.low() && each <= range.high();
        }
        if (inside) {
          states.add(l);
        }
      }
    }
    return states;
  }

  private double gradientError(double[] l) {
    double[] g = new double[3];
    law.gradient(l[0], l[1], l[2], g);
    double scale = law.youngModulus() + Math.abs(g[0]) + Math.abs(g[1]) + Math.abs(g[2]);
    double worst = 0.0;
    for (int i = 0; i < 3; i++) {
      double h = STEP * l[i];
      // fourth-order central difference
      double d =
          (8 * (energyAt(l, i, h) - energyAt(l, i, -h))
                  - (energyAt(l, i, 2 * h) - energyAt(l, i, -2 * h)))
              / (12 * h);
      worst = Math.max(worst, Math.abs(d - g[i]) / scale);
    }
    return worst;
  }

  private double energyAt(double[] l, int i, double h) {
    double[] k = l.clone();
    k[i] += h;
    return law.energy(k[0], k[1], k[2]);
  }

  private double hessianError(double[] l) {
    double[] full = hessian(l);
    double scale = law.youngModulus();
    for (double each : full) {
      scale = Math.max(scale, Math.abs(each));
    }
    double worst = 0.0;
    for (int j = 0; j < 3; j++) {
      double h = SMALL_STEP * l[j];
      double[] up = gradientAt(l, j, h);
      double[] down = gradientAt(l, j, -h);
      for (int i = 0; i < 3; i++) {
        double d = (up[i] - down[i]) / (2 * h);
        worst = Math.max(worst, Math.abs(d - full[3 * i + j]) / scale);
      }
    }
    return worst;
  }

  private double[] gradientAt(double[] l, int i, double h) {
    double[] k = l.clone();
    k[i] += h;
    double[] g = new double[3];
    law.gradient(k[0], k[1], k[2], g);
    return g;
  }

  private double[] hessian(double[] l) {
    double[] h = new double[6];
    law.hessian(l[0], l[1], l[2], h);
    return new double[] {h[0], h[3], h[4], h[3], h[1], h[5], h[4], h[5], h[2]};
  }

  private double orderError(double[] l) {
    double a = law.energy(l[0], l[1], l[2]);
    double b = law.energy(l[2], l[0], l[1]);
    double c = law.energy(l[1], l[0], l[2]);
    return Math.max(Math.abs(a - b), Math.abs(a - c)) / (law.youngModulus() + Math.abs(a));
  }

  private double shearError() {
    double slope = Deformation.PLANAR.trueStress(law, 1.0 + 1e-7).pa() / 1e-7;
    return Math.abs(slope / (4.0 * law.shearModulus()) - 1.0);
  }

  /** Least eigenvalue over E of the Hessian in two independent logarithmic strains. */
  private double leastStiffness() {
    double least = Double.POSITIVE_INFINITY;
    StateStiffness stability = new StateStiffness(law);
    for (double[] l : states()) {
      least = Math.min(least, stability.at(l[0], l[1], l[2]).drucker());
    }
    return least;
  }
}
