package org.flexwright.shells.solved;

import java.util.Arrays;
import java.util.Optional;
import org.flexwright.InvalidInputException;
import org.flexwright.evidence.Checks;
import org.flexwright.grade.BuildDirection;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.run.RunControl;
import org.flexwright.shells.bellows.Bellows;
import org.flexwright.shells.revolution.DrawnFace;
import org.flexwright.shells.revolution.Drive;
import org.flexwright.shells.revolution.End;
import org.flexwright.shells.revolution.Meridian;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellPath;
import org.flexwright.shells.revolution.ShellState;

/**
 * A bellows of U convolutions between rigid flanges that hold the roots at either end, pushed. The
 * half below its plane of symmetry is run.
 */
final class BellowsEngine implements Engine<Bellows> {

  static final BellowsEngine ONLY = new BellowsEngine();

  private static final int STEPS = 2;
  private static final double[] STATIONS = {0.5, 1.0};
  private static final double NEAR = 1e-6;
  // straight directors half a per cent, elements up to 0.6 % too stiff
  private static final ClosedForm.Band LOAD = new ClosedForm.Band(0.99, 1.005);
  private static final ClosedForm.Band STRAIN = new ClosedForm.Band(0.95, 1.05);

  private BellowsEngine() {}

  @Override
  public String name() {
    return "bellows on the engine";
  }

  @Override
  public Lever<Bellows> thickness() {
    return Bellows.WALL;
  }

  @Override
  public LoadCase softer(LoadCase load, double times) {
    return load;
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
  public Checks checks(Bellows b, LoadCase load) {
    Checks checks = Checks.of(name(), Solved.ENGINE);
    checks.check("wall / depth", 0.0, 0.15, b.wall().ratioTo(b.depth()));
    checks.check("wall / mean radius", 0.0, 0.1, b.wall().ratioTo(b.meanRadius()));
    if (load instanceof LoadCase.ToTravel to) {
      double each = to.travel().m() / b.count();
      double free = 0.5 * b.pitch().m() - b.wall().m();
      checks.check("travel of a convolution / gap of its flanks", 0.0, 1.0, each / free);
    }
    return checks;
  }

  @Override
  public boolean crossesLayers(Bellows part, boolean hoop) {
    return hoop != (part.build() == BuildDirection.AXIS_UP);
  }

  @Override
  public String remark(boolean hoop) {
    return "";
  }

  @Override
  public void refuseOther(LoadCase load) {
    if (!(load instanceof LoadCase.ToTravel)) {
      throw new InvalidInputException(
          Part.LOAD_CASE,
          load.toString(),
          "a travel",
          "the engine is axisymmetric: ask the bellows itself, by its closed form");
    }
  }

  @Override
  public Solution solve(
      Bellows b, StrainEnergy law, LoadCase load, double[] guess, RunControl run) {
    ShellPath path = pictured(b, law, load, 0.0, run).path();
    double[] loads = new double[STATIONS.length];
    double[] strains = new double[STATIONS.length];
    int reached = 0;
    double most = 0.0;
    double end = half(load);
    for (ShellState s : path.states()) {
      most = Math.max(most, s.peak().strain());
      if (reached < STATIONS.length && Math.abs(s.travel().m() / end - STATIONS[reached]) < NEAR) {
        loads[reached] = s.force().newtons();
        strains[reached++] = most;
      }
    }
    return new Solution(
        Arrays.copyOf(loads, reached),
        Arrays.copyOf(strains, reached),
        reached == 0 ? 0.0 : loads[reached - 1],
        0.0,
        path.last().peak().hoop(),
        path.termination(),
        path.caveats());
  }

  @Override
  public Optional<Length> bore(Bellows part) {
    return Optional.empty();
  }

  private static double half(LoadCase load) {
    return 0.5 * ((LoadCase.ToTravel) load).travel().m();
  }

  @Override
  public Pictured pictured(
      Bellows b, StrainEnergy law, LoadCase load, double found, RunControl run) {
    Length root = b.meanRadius().minus(b.depth().times(0.5));
    RevolvedShell shell =
        RevolvedShell.of(
                Meridian.from(root, Length.m(0.0))
                    .convolutions(0.5 * b.count(), b.depth(), b.pitch())
                    .drawn(DrawnFace.MIDDLE)
                    .wall(b.wall()))
            .last(End.GUIDED);
    ShellPath path = shell.run(law, run, Drive.travel(Length.m(half(load))).steps(STEPS));
    return new Pictured(shell, path);
  }
}
