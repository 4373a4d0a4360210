package org.flexwright.lattice.pad;

import java.util.Optional;
import org.flexwright.grade.Grade;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.lattice.cell.CompressionPath;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.UnitCell;
import org.flexwright.lattice.pad.FinitePads.Grip;

/**
 * The numbers of one pad in a solid of a given Poisson's ratio: everything over Young's modulus of
 * the solid, lengths in metres.
 */
final class PadMechanics {

  /** The most that any frame of a pad between two free faces rises, 1.19 for one Kelvin cell. */
  private static final double FREE_RISE = 1.2;

  private final UnitCell cell;
  private final CompressionPath path;
  private final Optional<FinitePads> table;
  private final int across;
  private final int longer;
  private final int high;
  private final double x;
  private final double area;
  private final CubicStiffness solid;
  private final double confined;
  private final double ownConfined;
  private final Grip grip;
  private final double rise;
  private final double endlessPeak;
  private final double endlessStretch;
  private final double peakRatio;

  PadMechanics(LatticePad pad, double diameter, double poisson) {
    cell = pad.unit();
    table = FinitePads.of(cell);
    WholeCells cells = pad.cells();
    across = Math.min(cells.wide(), cells.deep());
    longer = Math.max(cells.wide(), cells.deep());
    high = cells.high();
    x = diameter / (cell.strutOverCell() * pad.cell().m());
    area = pad.width().m() * pad.depth().m();
    solid = cell.solid(x, poisson);
    confined = solid.c11() / solid.young100();
    CubicStiffness beams = cell.centreLine(x, poisson);
    ownConfined = beams.c11() / beams.young100();
    path = cell.path(x);
    grip = pad.grip();
    rise = rise(grip, across, high, confined);
    endlessPeak = cell.peakStrain(x);
    endlessStretch = cell.axialStrain(x);
    peakRatio = peakRatio(grip);
  }

  private double rise(Grip of, int n, int h, double limit) {
    if (table.isPresent()) {
      return table.get().modulus(of, n, h, limit);
    }
    return cell.topology().crowding(n) * (of == Grip.FREE ? 1.0 : Math.sqrt(limit));
  }

  /**
   * The least rise that must be reckoned with. Without a table: a block whose free sides carry
   * nothing over half a cell in all and whose free end faces add the give of half a cell, which
   * covers all blocks that were computed.
   */
  double lowest() {
    if (table.isPresent()) {
      return Math.min(Math.min(1.0, rise(Grip.FREE)), rise);
    }
    double left = across / (across + 1.0);
    return left * left * (grip == Grip.HELD ? 1.0 : high / (high + 0.5));
  }

  /** The largest rise that must be reckoned with: sides held everywhere, unless no face holds. */
  double highest() {
    if (table.isPresent()) {
      return Math.max(confined, rise);
    }
    double held = grip == Grip.FREE ? FREE_RISE : confined;
    return cell.topology().crowding(across) * held * cell.jointDoubt(x);
  }

  boolean tabled() {
    return table.isPresent();
  }

  double slenderness() {
    return x;
  }

  /** Modulus of the pad over E100 of the endless lattice. */
  double rise() {
    return rise;
  }

  double rise(Grip of) {
    return rise(of, across, high, confined);
  }

  /**
   * The rise if nodes slide on a slippery face but cannot turn. Such a face is a mirror plane: one
   * of them makes half of a held pad of twice the height, two of them a stack without end, where
   * frames give at most 1.04.
   */
  double riseWithoutTurning() {
    return switch (grip) {
      case HELD -> rise;
      case ONE_FREE -> rise(Grip.HELD, across, 2 * high, confined);
      case FREE -> 1.04;
    };
  }

  /** The rise of a square pad as long as the longer side. */
  double riseOfLongerSide() {
    return rise(grip, longer, high, confined);
  }

  /** The rise if fat joints changed nothing about how the pad is held. */
  double riseWithoutTransfer() {
    double own = rise(grip, across, high, ownConfined);
    // a free pad is read as the rise itself, a held one as its share of what holding can add
    return grip == Grip.FREE ? own : 1.0 + (own - 1.0) * (confined - 1.0) / (ownConfined - 1.0);
  }

  /** E100 of the endless lattice with fat joints. */
  double young() {
    return solid.young100();
  }

  /** Whether struts go on straight through the nodes, so that a pad has direct lines of load. */
  boolean straightChains() {
    return solid.zener() > 2.0;
  }

  double softening(double strain) {
    return path.softening(strain);
  }

  CompressionPath path() {
    return path;
  }

  /** Force in newtons at a macroscopic strain. */
  double force(Grade grade, double strain) {
    if (strain == 0.0) {
      return 0.0;
    }
    double modulus = grade.secantModulus(weighted(strain)).pa();
    return modulus * young() * rise * softening(strain) * area;
  }

  /** The strain of the solid that its secant modulus is taken at. */
  double weighted(double strain) {
    WorkingStrain endless = path.working(endlessPeak, endlessStretch, strain);
    return endless.times(Math.sqrt(rise)).value();
  }

  /** The largest strut strain at a macroscopic strain. */
  double peak(double strain) {
    return peakRatio * path.growth(strain);
  }

  /** The largest strut strain over the macroscopic strain, small strain. */
  double peakRatio(Grip of) {
    return table
        .map(t -> t.peak(of, across, high, x) * x)
        .orElseGet(() -> cell.peakStrain(x) * Math.sqrt(rise(of)));
  }

  /** The largest compressive centre strain of a strut over the macroscopic strain. */
  double axialRatio() {
    return table.map(t -> t.axial(grip, across, high, x)).orElseGet(() -> endlessStretch * rise);
  }

  /** The macroscopic strain at which the most compressed strut buckles if its ends turn freely. */
  double buckling() {
    return cell.eulerStrain(x, 1.0) / axialRatio();
  }
}
