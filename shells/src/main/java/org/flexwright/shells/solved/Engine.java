package org.flexwright.shells.solved;

import java.util.Optional;
import org.flexwright.evidence.Checks;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Length;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.Lever;
import org.flexwright.response.LoadCase;
import org.flexwright.response.Part;
import org.flexwright.run.RunControl;
import org.flexwright.shells.revolution.RevolvedShell;
import org.flexwright.shells.revolution.ShellPath;

/**
 * How one kind of part is put to the engine of shells of revolution. Immutable.
 *
 * @param <P> the part of closed form
 */
interface Engine<P extends Part<P>> {

  /** What caveats call it. */
  String name();

  /** The thickness of its wall, the size that is asked for most. */
  Lever<P> thickness();

  /**
   * Where a part stands along a lever, so that ratios of engine and closed form run straight.
   *
   * @return the logarithm of a length
   */
  default double place(P part, Lever<P> lever) {
    return Math.log(lever.of(part).m());
  }

  /** The part moved along a lever by so much of its place. */
  default P moved(P part, Lever<P> lever, double by) {
    return lever.set(part, Length.m(lever.of(part).m() * Math.exp(by)));
  }

  /** The load case for a material so many times softer in the same states. */
  LoadCase softer(LoadCase load, double times);

  /** The shares of the closed form's path at which both are compared, rising to 1. */
  double[] stations();

  /** True load over that of the engine. */
  ClosedForm.Band loadBand();

  /** True strain over that of the engine. */
  ClosedForm.Band strainBand();

  /** Where the engine is trusted; the checks of what it leaves out. */
  Checks checks(P part, LoadCase load);

  /** Whether a strain around the axis or along the meridian pulls layers apart. */
  boolean crossesLayers(P part, boolean hoop);

  /** What to mind of the place of the largest strain, or nothing. */
  String remark(boolean hoop);

  /** Refuses a load case that the engine cannot be asked. */
  void refuseOther(LoadCase load);

  /**
   * The states of a part asked for a load.
   *
   * @param guess the loads of the closed form at the stations, in the same law
   */
  Solution solve(P part, StrainEnergy law, LoadCase load, double[] guess, RunControl run);

  /** The run behind a solution, ended at its load, for a picture. */
  Pictured pictured(P part, StrainEnergy law, LoadCase load, double found, RunControl run);

  /** What the part presses against, or nothing. */
  Optional<Length> bore(P part);

  /**
   * The states behind a solution.
   *
   * @param shell what was run; its last end lies in the middle of the part, a plane of symmetry
   * @param path the path
   */
  record Pictured(RevolvedShell shell, ShellPath path) {}
}
