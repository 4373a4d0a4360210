package org.flexwright.grade;

import java.util.List;
import java.util.Optional;
import org.flexwright.quantity.Length;

/**
 * What a printing process can make and how well. Open to users: implement it for a machine of your
 * own; {@link #beads} and {@link #continuous} serve the common cases.
 */
public interface PrintProcess {

  /**
   * The realisable sizes of a feature in an interval.
   *
   * @param kind what is printed
   * @param from least size wanted
   * @param to greatest size wanted
   * @return the sizes, rising; empty if none lies there, or if {@link #anySize} says that all do
   */
  List<Length> sizes(Feature.Kind kind, Length from, Length to);

  /**
   * Whether the process makes any size above its smallest, rather than a list of sizes.
   *
   * @param kind what is printed
   * @return true if sizes are free
   */
  boolean anySize(Feature.Kind kind);

  /**
   * The smallest size of a feature.
   *
   * @param kind what is printed
   * @return the smallest size
   */
  Length smallest(Feature.Kind kind);

  /**
   * How far the mean printed size may miss the drawn size, whole band, either way.
   *
   * @return half the band
   */
  Length bias();

  /**
   * How printed sizes differ from one another, whole band, either way.
   *
   * @return half the band
   */
  Length scatter();

  /**
   * Strain at break across layers over that in the layers.
   *
   * @return the ratio, above 0, at most 1
   */
  double acrossLayers();

  /**
   * How far the printed material's stiffness may differ from the grade's curve: 1.2 means from
   * 1/1.2 to 1.2, whole band.
   *
   * @return the end of the band, at least 1
   */
  double stiffnessBand();

  /**
   * Why this process cannot make a feature.
   *
   * @param feature the feature
   * @return the reason, or nothing if it prints
   */
  default Optional<String> refuses(Feature feature) {
    Length least = smallest(feature.kind());
    // a size typed in another unit may miss the limit by a rounding error
    if (feature.size().m() < least.m() * (1.0 - 1e-9)) {
      return Optional.of(feature + " does not print, least is " + least);
    }
    return Optional.empty();
  }

  /**
   * A process that lays beads side by side: sizes are whole beads, one bead is the smallest wall
   * and strut, two beads the smallest wall that holds air (common practice).
   *
   * @param bead the width of one bead, above 0
   * @return the process
   * @throws org.flexwright.InvalidInputException if the width is not above 0
   */
  static Printing beads(Length bead) {
    return Printing.beads(bead);
  }

  /**
   * A process that makes any size above a floor, such as fusing powder.
   *
   * @param smallestWall the thinnest wall, airtight or not
   * @param smallestStrut the thinnest strut
   * @return the process
   * @throws org.flexwright.InvalidInputException if a floor is not above 0
   */
  static Printing continuous(Length smallestWall, Length smallestStrut) {
    return Printing.continuous(smallestWall, smallestStrut);
  }
}
