package org.flexwright.shells.solved;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunction;
import org.apache.commons.math3.analysis.polynomials.PolynomialFunctionLagrangeForm;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.grade.BuildDirection;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.run.RunControl;
import org.flexwright.run.Termination;
import org.flexwright.shells.inflate.Sleeve;
import org.flexwright.shells.revolution.Drive;
import org.flexwright.shells.revolution.End;
import org.flexwright.shells.revolution.Meridian;
import org.flexwright.shells.revolution.Obstacle;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellPath;
import org.flexwright.shells.revolution.ShellState;

/**
 * A sleeve between solid ends, inflated into its bore until friction on the whole normal force
 * holds what is asked. The half below its plane of symmetry is run.
 */
final class SleeveEngine implements Engine<Sleeve> {

  static final SleeveEngine ONLY = new SleeveEngine();

  private static final double[] STATIONS = {0.5, 1.0};
  private static final int FREE_STEPS = 2;
  private static final double BEFORE_TOUCH = 0.85; // of the closed form's touch
  private static final double[] BEYOND = {1.07, 1.4, 2.2}; // of the closed form's pressure
  private static final int STEPS = 5;
  private static final double FAINT = 0.1; // of the normal force asked for
  private static final ClosedForm.Band LOAD = new ClosedForm.Band(0.985, 1.015);
  // a fillet at the ends lowers the strain, a notch raises it
  private static final ClosedForm.Band STRAIN = new ClosedForm.Band(0.8, 1.2);

  private SleeveEngine() {}

  @Override
  public String name() {
    return "sleeve on the engine";
  }

  @Override
  public Lever<Sleeve> thickness() {
    return Sleeve.WALL;
  }

  private static boolean outside(Lever<Sleeve> lever) {
    return lever.name().equals(Sleeve.OUTSIDE.name());
  }

  @Override
  public double place(Sleeve s, Lever<Sleeve> lever) {
    double gap = s.bore().diameter().m() - s.outside().m();
    return outside(lever) ? Math.log(gap) : Engine.super.place(s, lever);
  }

  @Override
  public Sleeve moved(Sleeve s, Lever<Sleeve> lever, double by) {
    double gap = s.bore().diameter().m() - s.outside().m();
    return outside(lever)
        ? s.withOutside(Length.m(s.bore().diameter().m() - gap * Math.exp(by)))
        : Engine.super.moved(s, lever, by);
  }

  @Override
  public LoadCase softer(LoadCase load, double times) {
    return LoadCase.toHold(((LoadCase.ToHold) load).force().times(1.0 / times));
  }

  @Override
  public double[] stations() {
    return STATIONS;
  }

  @Override
  public ClosedForm.Band loadBand() {
    return LOAD;
  }

  @Override
  public ClosedForm.Band strainBand() {
    return STRAIN;
  }

  @Override
  public Checks checks(Sleeve s, LoadCase load) {
    Checks checks = Checks.of(name(), Solved.ENGINE);
    double middle = 0.5 * (s.outside().m() - s.wall().m());
    checks.check("wall / radius", 0.0, 0.12, s.wall().m() / middle);
    checks.check("growth of the outside", 0.0, 0.4, s.bore().diameter().ratioTo(s.outside()) - 1.0);
    return checks;
  }

  @Override
  public boolean crossesLayers(Sleeve part, boolean hoop) {
    return hoop != (part.build() == BuildDirection.AXIS_UP);
  }

  @Override
  public String remark(boolean hoop) {
    return hoop
        ? ""
        : "the largest strain is bending at the stiff ends, where a notch raises it further: give"
            + " the ends a fillet of at least the wall";
  }

  @Override
  public void refuseOther(LoadCase load) {
    if (!(load instanceof LoadCase.ToHold)) {
      throw new InvalidInputException(
          Part.LOAD_CASE, load.toString(), "a force to hold", "ask with LoadCase.toHold(...)");
    }
  }

  @Override
  public Optional<Length> bore(Sleeve part) {
    return Optional.of(part.bore().diameter().times(0.5));
  }

  private static RevolvedShell shell(Sleeve s) {
    Length radius = s.outside().times(0.5);
    return RevolvedShell.of(
            Meridian.from(radius, Length.m(0.0)).lineTo(radius, s.span().times(0.5)).wall(s.wall()))
        .last(End.GUIDED)
        .against(Obstacle.bore(s.bore().diameter().times(0.5)));
  }

  @Override
  public Solution solve(Sleeve s, StrainEnergy law, LoadCase load, double[] guess, RunControl run) {
    RevolvedShell shell = shell(s);
    double held = ((LoadCase.ToHold) load).force().newtons();
    double half = 0.5 * held / s.bore().friction();
    ShellPath path = path(shell, law, half, guess, run);
    if (!path.termination().complete()) {
      return Solution.none(path.termination());
    }
    List<ShellState> touching = path.states().stream().filter(x -> normal(x) > 0.0).toList();
    if (touching.isEmpty() || normal(path.last()) < half) {
      return Solution.none(
          new Termination(
              Termination.Kind.NO_FURTHER_STATE,
              "the force is not held at " + path.last().pressure()));
    }
    return solution(s, shell, path, half);
  }

  /** A path far enough to hold, by pressures that the closed form suggests. */
  private static ShellPath path(
      RevolvedShell shell, StrainEnergy law, double half, double[] guess, RunControl run) {
    double need = guess[1];
    Drive first = pressure(BEFORE_TOUCH * Math.min(guess[0], need), FREE_STEPS);
    ShellPath path = shell.run(law, run, first, pressure(BEYOND[0] * need, STEPS));
    for (int i = 1; i < BEYOND.length; i++) {
      if (path.termination().complete() && normal(path.last()) < half) {
        path = shell.run(law, run, first, pressure(BEYOND[i] * need, 2 * STEPS));
      }
    }
    return path;
  }

  private static Drive pressure(double pa, int steps) {
    return Drive.pressure(Pressure.pa(pa)).steps(steps);
  }

  private static double normal(ShellState s) {
    return s.touches().get(0).normal().newtons();
  }

  /** What is left of the gap where the wall comes nearest to the bore. */
  private static double gap(RevolvedShell shell, ShellState s, double bore) {
    return bore - shell.wall(s).stream().mapToDouble(a -> a.outerRadius().m()).max().orElse(bore);
  }

  private static Solution solution(Sleeve s, RevolvedShell shell, ShellPath path, double half) {
    double bore = 0.5 * s.bore().diameter().m();
    List<double[]> free = new ArrayList<>(); // gap, pressure, strain
    List<double[]> pressed = new ArrayList<>(); // normal force, pressure, strain
    for (ShellState x : path.states()) {
      double[] row = {0.0, x.pressure().pa(), x.peak().strain()};
      if (normal(x) > 0.0) {
        row[0] = normal(x);
        pressed.add(row);
      } else {
        row[0] = gap(shell, x, bore);
        free.add(row);
      }
    }
    double[] touch = at(free, 0.0, 0);
    // a force just above nothing would double the point of touch
    pressed.removeIf(row -> row[0] < FAINT * half);
    pressed.add(0, new double[] {0.0, touch[0], touch[1]});
    double[] hold = at(pressed, half, 0);
    double[] slope = at(pressed, half, 1);
    return new Solution(
        new double[] {touch[0], hold[0]},
        new double[] {touch[1], hold[1]},
        hold[0] - half * slope[0],
        -half * slope[1] / hold[1],
        path.last().peak().hoop(),
        path.termination(),
        path.caveats());
  }

  /** Pressure and strain, or their slopes, at a gap or force, by the four states nearest to it. */
  private static double[] at(List<double[]> rows, double x, int order) {
    List<double[]> near =
        rows.stream()
            .sorted(Comparator.comparingDouble(r -> Math.abs(r[0] - x)))
            .limit(4)
            .sorted(Comparator.comparingDouble(r -> r[0]))
            .toList();
    double unit = near.get(near.size() - 1)[0];
    double[] xs = near.stream().mapToDouble(r -> r[0] / unit).toArray();
    double[] out = new double[2];
    for (int k = 1; k <= 2; k++) {
      int column = k;
      double[] ys = near.stream().mapToDouble(r -> r[column]).toArray();
      PolynomialFunction f =
          new PolynomialFunction(new PolynomialFunctionLagrangeForm(xs, ys).getCoefficients());
      out[k - 1] = order == 0 ? f.value(x / unit) : f.polynomialDerivative().value(x / unit) / unit;
    }
    return out;
  }

  @Override
  public Pictured pictured(
      Sleeve s, StrainEnergy law, LoadCase load, double found, RunControl run) {
    RevolvedShell shell = shell(s);
    ShellPath path =
        shell.run(
            law, run, pressure(BEFORE_TOUCH * found, FREE_STEPS), pressure(found, FREE_STEPS));
    return new Pictured(shell, path);
  }
}
