package org.flexwright.lattice.pad;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.evidence.Source;
import org.flexwright.lattice.cell.Cells;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.UnitCell;

/**
 * The table of pads of nx x nx x nz cells for one cell, and how it is read between its rows.
 *
 * <p>Modulus: with r the apparent modulus over E100 and r_c = C11/E100, the table is read as the
 * share q = (r - 1)/(r_c - 1) of what holding the sides can add; pads with two free faces as r
 * itself. Between slenderness rows the reading follows a natural spline in ln(r_c - 1), not in x:
 * the fat joints of the solid lattice change r_c, and the pad is read where the centre-line lattice
 * has the same r_c. Beyond 12 cells across q goes on as q = 1 - tanh(m)/m with m straight in nx,
 * the form of a bonded block (Gent and Meinecke 1970, from memory, for the form only), so that a
 * very wide pad tends to q = 1. Rows between two heights are taken at equal nx/nz and blended in
 * 1/nz; higher than 8 cells, the pad of equal nx/nz with 8.
 */
final class FinitePads {

  /** Which end faces hold the nodes. */
  enum Grip {
    HELD,
    ONE_FREE,
    FREE
  }

  static final Source SOURCE =
      Source.derived("frames of whole pads, one Timoshenko beam per strut, linear, 1 to 12 cells");
  static final int MOST_ACROSS = 12;
  static final int MOST_HIGH = 8;

  private static final String[] QUANTITIES = {"modulus", "peak", "axial"};
  private static final double[] X = {0.05, 0.1, 0.2, 0.3, 0.45, 0.6};
  private static final double[] ACROSS = {1, 2, 3, 4, 5, 6, 7, 8, 10, 12};
  private static final double[] HIGH = {1, 2, 3, 4, 5, 6, 8};
  private static final double TABLE_POISSON = 0.3;
  private static final double FULL = 0.98; // from here on q stays as it is

  private static final Map<UnitCell, FinitePads> ALL = read();

  // [grip][quantity][x][nz][nx]; the modulus rows hold q for HELD and ONE_FREE
  private final double[][][][][] value =
      new double[Grip.values().length][QUANTITIES.length][X.length][HIGH.length][];
  private final double[] confinement = new double[X.length]; // ln(r_c - 1), falling with x

  private FinitePads() {}

  static Optional<FinitePads> of(UnitCell cell) {
    return Optional.ofNullable(ALL.get(cell));
  }

  /** The apparent modulus over E100 for a lattice whose C11/E100 is given. */
  double modulus(Grip grip, int across, int high, double confined) {
    double at = Math.log(Math.max(confined - 1.0, 1e-9));
    double y = -Math.max(Math.min(at, confinement[0]), confinement[X.length - 1]);
    double[] knots = new double[X.length];
    double[] values = new double[X.length];
    for (int i = 0; i < X.length; i++) {
      knots[i] = -confinement[i];
      values[i] = sized(value[grip.ordinal()][0][i], across, high, grip != Grip.FREE);
    }
    double read = new SplineInterpolator().interpolate(knots, values).value(y);
    if (grip == Grip.FREE) {
      return read;
    }
    // a pad that is softer than the endless lattice stays so however slender its struts
    double most = read < 0.0 ? Math.exp(confinement[0]) : confined - 1.0;
    return 1.0 + read * Math.min(most, confined - 1.0);
  }

  /** The peak fibre strain over slenderness and macroscopic strain. */
  double peak(Grip grip, int across, int high, double x) {
    return along(grip, 1, across, high, x);
  }

  /** The largest compressive centre strain over the macroscopic strain. */
  double axial(Grip grip, int across, int high, double x) {
    return along(grip, 2, across, high, x);
  }

  private double along(Grip grip, int quantity, int across, int high, double x) {
    double[] values = new double[X.length];
    for (int i = 0; i < X.length; i++) {
      values[i] = Math.log(sized(value[grip.ordinal()][quantity][i], across, high, false));
    }
    double inside = Math.max(X[0], Math.min(X[X.length - 1], x));
    return Math.exp(new SplineInterpolator().interpolate(X, values).value(inside));
  }

  private static double sized(double[][] rows, int across, int high, boolean open) {
    double aspect = (double) across / high;
    int j = 0;
    while (j < HIGH.length - 1 && HIGH[j] < high) {
      j++;
    }
    if (HIGH[j] == high) {
      return across(rows[j], across, open);
    }
    double upper = across(rows[j], aspect * HIGH[j], open);
    if (high > HIGH[j]) {
      return upper;
    }
    double lower = across(rows[j - 1], aspect * HIGH[j - 1], open);
    double share = (1.0 / high - 1.0 / HIGH[j]) / (1.0 / HIGH[j - 1] - 1.0 / HIGH[j]);
    return upper + share * (lower - upper);
  }

  private static double across(double[] row, double across, boolean open) {
    double n = Math.max(1.0, across);
    if (n >= MOST_ACROSS) {
      return open ? wider(row, n) : row[row.length - 1];
    }
    int i = 1;
    while (ACROSS[i] < n) {
      i++;
    }
    double t = (n - ACROSS[i - 1]) / (ACROSS[i] - ACROSS[i - 1]);
    return row[i - 1] + t * (row[i] - row[i - 1]);
  }

  private static double wider(double[] row, double across) {
    int k = row.length - 1;
    if (row[k] >= FULL || row[k - 1] >= row[k] || row[k - 1] <= 0.0) {
      return row[k];
    }
    double last = inverse(row[k]);
    double slope = (last - inverse(row[k - 1])) / (ACROSS[k] - ACROSS[k - 1]);
    double m = last + slope * (across - ACROSS[k]);
    return 1.0 - Math.tanh(m) / m;
  }

  /** The m of q = 1 - tanh(m)/m, for q above 0 and below 1. */
  private static double inverse(double q) {
    return new BrentSolver(1e-12, 1e-12)
        .solve(200, m -> 1.0 - Math.tanh(m) / m - q, 1e-6, 2.0 / (1.0 - q));
  }

  /** The table of a cell with its moduli turned into shares. */
  private FinitePads bound(UnitCell cell) {
    FinitePads bound = new FinitePads();
    for (int i = 0; i < X.length; i++) {
      CubicStiffness c = cell.centreLine(X[i], TABLE_POISSON);
      double above = c.c11() / c.young100() - 1.0;
      bound.confinement[i] = Math.log(above);
      for (Grip grip : Grip.values()) {
        int g = grip.ordinal();
        for (int k = 0; k < QUANTITIES.length; k++) {
          for (int j = 0; j < HIGH.length; j++) {
            double[] row = value[g][k][i][j];
            boolean turned = k == 0 && grip != Grip.FREE;
            bound.value[g][k][i][j] =
                turned ? Arrays.stream(row).map(r -> (r - 1.0) / above).toArray() : row;
          }
        }
      }
    }
    return bound;
  }

  private static Map<UnitCell, FinitePads> read() {
    Map<String, FinitePads> all = new HashMap<>();
    try (InputStream in = FinitePads.class.getResourceAsStream("finite_pads.csv")) {
      if (in == null) {
        throw new IllegalStateException("finite_pads.csv is missing from the lattice module");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      lines
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("cell,"))
          .forEach(line -> take(all, line.split(",", -1)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    Map<UnitCell, FinitePads> bound = new HashMap<>();
    for (UnitCell cell : Cells.all()) {
      FinitePads raw = all.get(cell.name());
      if (raw != null) {
        bound.put(cell, raw.bound(cell));
      }
    }
    return Map.copyOf(bound);
  }

  private static void take(Map<String, FinitePads> all, String[] cells) {
    FinitePads pads = all.computeIfAbsent(cells[0], name -> new FinitePads());
    int g = Grip.valueOf(cells[1]).ordinal();
    int k = Arrays.asList(QUANTITIES).indexOf(cells[2]);
    int i = Arrays.binarySearch(X, Double.parseDouble(cells[3]));
    int j = Arrays.binarySearch(HIGH, Double.parseDouble(cells[4]));
    pads.value[g][k][i][j] =
        Arrays.stream(cells, 5, cells.length).mapToDouble(Double::parseDouble).toArray();
  }
}
