package org.flexwright.lattice.cell;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.grade.WorkingStrain;

/**
 * The shape of the path of a cell pushed along its edge, sides free: everything over its value at
 * small strain. Open to users.
 *
 * <p>Symbols: strain, the compressive strain of the cell, 0 to 1.
 *
 * <p>JShell: {@code Cells.OCTET.path(0.1).softening(0.2)}
 */
public interface CompressionPath {

  /**
   * Stress over initial modulus: equal to the strain near 0. It never falls.
   *
   * @param strain compressive strain of the cell, 0 to 1
   * @return stress over E100
   */
  double softening(double strain);

  /**
   * How the peak strut strain grows: the strain at which it would be as large if it stayed in
   * proportion.
   *
   * @param strain compressive strain of the cell, 0 to 1
   * @return the equivalent strain, equal to the strain near 0
   */
  double growth(double strain);

  /**
   * The energy-weighted strain of the struts, at which the solid's secant modulus is taken.
   *
   * @param slope peak strut strain over macroscopic strain at small strain
   * @param stretch the part of the slope that is stretch
   * @param strain compressive strain of the cell, 0 to 1
   * @return the working strain
   */
  WorkingStrain working(double slope, double stretch, double strain);

  /**
   * The least stress that must be reckoned with, over {@link #softening}.
   *
   * @param strain compressive strain of the cell, 0 to 1
   * @return the ratio, at most 1
   */
  default double least(double strain) {
    return 1.0;
  }

  /**
   * The largest stress that must be reckoned with, over {@link #softening}.
   *
   * @param strain compressive strain of the cell, 0 to 1
   * @return the ratio, at least 1
   */
  default double most(double strain) {
    return 1.0;
  }

  /**
   * The reservations at a strain.
   *
   * @param strain compressive strain of the cell, 0 to 1
   * @return the caveats, empty where the path is known
   */
  default List<Caveat> caveats(double strain) {
    return List.of();
  }
}
