package org.flexwright.grade;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Length;

/**
 * A printing process by its few figures. Size bias 0.05 mm, scatter 0.04 mm, stiffness band 1.2 and
 * half the strain at break across layers are generic assumptions; replace them by your own
 * measurements.
 *
 * @param bead width of one bead, or zero for a process that makes any size
 * @param smallestWall thinnest wall
 * @param smallestAirtight thinnest wall that holds air
 * @param smallestStrut thinnest strut
 * @param bias half the band of the mean size
 * @param scatter half the band from place to place
 * @param acrossLayers strain at break across layers over that in the layers
 * @param stiffnessBand end of the band of the printed stiffness over the grade's curve
 */
public record Printing(
    Length bead,
    Length smallestWall,
    Length smallestAirtight,
    Length smallestStrut,
    Length bias,
    Length scatter,
    double acrossLayers,
    double stiffnessBand)
    implements PrintProcess {

  private static final int MOST_SIZES = 10_000;

  /**
   * Refuses figures that make no sense.
   *
   * @param bead width of one bead, or zero for a process that makes any size
   * @param smallestWall thinnest wall
   * @param smallestAirtight thinnest wall that holds air
   * @param smallestStrut thinnest strut
   * @param bias half the band of the mean size
   * @param scatter half the band from place to place
   * @param acrossLayers strain at break across layers over that in the layers
   * @param stiffnessBand end of the band of the printed stiffness over the grade's curve
   * @throws org.flexwright.InvalidInputException if a floor is not above 0, a band negative, or a
   *     ratio outside its range
   */
  public Printing {
    Require.notNegative("bead width", bead.m(), "m");
    Require.positive("smallest wall", smallestWall.m(), "m");
    Require.positive("smallest airtight wall", smallestAirtight.m(), "m");
    Require.positive("smallest strut", smallestStrut.m(), "m");
    Require.notNegative("size bias", bias.m(), "m");
    Require.notNegative("size scatter", scatter.m(), "m");
    Require.between("strain ratio across layers", acrossLayers, 0.01, 1.0, "");
    Require.between("stiffness band of the print", stiffnessBand, 1.0, 10.0, "");
  }

  static Printing beads(Length bead) {
    Require.positive("bead width", bead.m(), "m");
    return new Printing(
        bead, bead, bead.times(2.0), bead, Length.mm(0.05), Length.mm(0.04), 0.5, 1.2);
  }

  static Printing continuous(Length wall, Length strut) {
    return new Printing(
        Length.mm(0.0), wall, wall, strut, Length.mm(0.05), Length.mm(0.04), 0.5, 1.2);
  }

  /**
   * This process with other size errors.
   *
   * @param newBias half the band of the mean size
   * @param newScatter half the band from place to place
   * @return the new process
   */
  public Printing sizeErrors(Length newBias, Length newScatter) {
    return new Printing(
        bead,
        smallestWall,
        smallestAirtight,
        smallestStrut,
        newBias,
        newScatter,
        acrossLayers,
        stiffnessBand);
  }

  /**
   * This process with another band of printed stiffness.
   *
   * @param band the end of the band, at least 1
   * @return the new process
   */
  public Printing stiffnessBand(double band) {
    return new Printing(
        bead, smallestWall, smallestAirtight, smallestStrut, bias, scatter, acrossLayers, band);
  }

  @Override
  public List<Length> sizes(Feature.Kind kind, Length from, Length to) {
    List<Length> sizes = new ArrayList<>();
    if (bead.m() > 0.0) {
      long first = (long) Math.ceil(from.m() / bead.m() - 1e-9);
      long last = (long) Math.floor(to.m() / bead.m() + 1e-9);
      for (long i = Math.max(1, first); i <= last && sizes.size() < MOST_SIZES; i++) {
        sizes.add(bead.times((double) i));
      }
    }
    return List.copyOf(sizes);
  }

  @Override
  public boolean anySize(Feature.Kind kind) {
    return bead.m() == 0.0;
  }

  @Override
  public Length smallest(Feature.Kind kind) {
    return switch (kind) {
      case WALL -> smallestWall;
      case AIRTIGHT_WALL -> smallestAirtight;
      case STRUT -> smallestStrut;
    };
  }

  /** One readable line. */
  @Override
  public String toString() {
    return bead.m() > 0.0
        ? "beads of " + bead
        : "any wall from " + smallestWall + ", any strut from " + smallestStrut;
  }
}
