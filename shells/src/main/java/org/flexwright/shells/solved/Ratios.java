package org.flexwright.shells.solved;

import java.util.Arrays;
import java.util.List;
import org.flexwright.evidence.Caveat;

/**
 * Engine over closed form at one size: logarithms of the ratios at each station, and how those at
 * the last one move with the logarithm of the size.
 *
 * @param loads of the load at each station
 * @param strains of the largest strain at each station
 * @param following of the part of the load that follows the modulus
 * @param strainPower the power with which the strain follows the modulus, as it is
 * @param loadSlope d loads(last) / d ln size
 * @param strainSlope d strains(last) / d ln size
 * @param loadError how far the load may be off by interpolation, as a logarithm
 * @param strainError the same of the strain
 * @param hoop whether the largest strain runs around the axis
 * @param caveats what the engine says
 */
@SuppressWarnings("ArrayRecordComponent") // seen by this package only, never compared
record Ratios(
    double[] loads,
    double[] strains,
    double following,
    double strainPower,
    double loadSlope,
    double strainSlope,
    double loadError,
    double strainError,
    boolean hoop,
    List<Caveat> caveats) {

  /** As one row of numbers, to be interpolated: loads, strains, following, strain power. */
  static double[] row(double[] loads, double[] strains, Solution found, double following) {
    int n = found.loads().length;
    double[] row = new double[2 * n + 2];
    for (int i = 0; i < n; i++) {
      row[i] = Math.log(found.loads()[i] / loads[i]);
      row[n + i] = Math.log(found.strains()[i] / strains[i]);
    }
    row[2 * n] = n == 0 ? 0.0 : Math.log(found.following() / following);
    row[2 * n + 1] = found.strainPower();
    return row;
  }

  static Ratios of(
      double[] row, double[] slope, double[] error, boolean hoop, List<Caveat> caveats) {
    int n = row.length / 2 - 1;
    return new Ratios(
        Arrays.copyOf(row, n),
        Arrays.copyOfRange(row, n, 2 * n),
        row[2 * n],
        row[2 * n + 1],
        slope[n - 1],
        slope[2 * n - 1],
        error[n - 1],
        error[2 * n - 1],
        hoop,
        caveats);
  }

  /** How many stations were reached. */
  int reached() {
    return loads.length;
  }

  /** A ratio at a share of the path, straight between stations and even before the first. */
  static double at(double share, double[] stations, double[] logarithms) {
    int last = logarithms.length - 1;
    for (int i = 0; i <= last; i++) {
      if (share <= stations[i]) {
        if (i == 0) {
          return Math.exp(logarithms[0]);
        }
        double w = (share - stations[i - 1]) / (stations[i] - stations[i - 1]);
        return Math.exp(logarithms[i - 1] + w * (logarithms[i] - logarithms[i - 1]));
      }
    }
    return Math.exp(logarithms[last]);
  }
}
