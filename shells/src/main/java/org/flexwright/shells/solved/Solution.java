package org.flexwright.shells.solved;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.run.Termination;

/**
 * What the engine found of one part at one load.
 *
 * @param loads the load at each station that was reached, in SI units
 * @param strains the largest tensile strain up to each of them
 * @param following the part of the last load that follows the modulus
 * @param strainPower the power with which the last strain follows the modulus
 * @param hoop whether the largest strain runs around the axis
 * @param end how the path ended
 * @param caveats what the engine says of the path
 */
@SuppressWarnings("ArrayRecordComponent") // seen by this package only, never compared
record Solution(
    double[] loads,
    double[] strains,
    double following,
    double strainPower,
    boolean hoop,
    Termination end,
    List<Caveat> caveats) {

  /** A part that the engine could not be asked. */
  static Solution none(Termination end) {
    return new Solution(new double[0], new double[0], 0.0, 0.0, false, end, List.of());
  }

  /** Whether every station was reached. */
  boolean whole() {
    return end.complete();
  }

  /** The same in a material so many times stiffer. */
  Solution stiffer(double times) {
    double[] all = loads.clone();
    for (int i = 0; i < all.length; i++) {
      all[i] *= times;
    }
    return new Solution(all, strains, following * times, strainPower, hoop, end, caveats);
  }
}
