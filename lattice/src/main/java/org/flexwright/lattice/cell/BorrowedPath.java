package org.flexwright.lattice.cell;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.grade.WorkingStrain;

/**
 * A guided strut that stands in for a cell whose own path was never computed. The band runs from
 * the softest path of any bending cell (the Kelvin cell along its space diagonal, stress over
 * modulus and strain not below 1/(1 + 3.5 e)) to a straight line.
 *
 * @param cell the name of the cell
 * @param like the strut whose path is borrowed
 */
record BorrowedPath(String cell, GuidedElastica like) implements CompressionPath {

  private static final double SMALL = 0.02;
  private static final Source SOURCE =
      Source.assumption("the struts soften like guided struts at 45 degrees");

  @Override
  public double softening(double strain) {
    return like.softening(strain);
  }

  @Override
  public double growth(double strain) {
    return like.growth(strain);
  }

  @Override
  public WorkingStrain working(double slope, double stretch, double strain) {
    return like.working(slope, stretch, strain);
  }

  @Override
  public double least(double strain) {
    double own = softening(strain);
    return own == 0.0 ? 1.0 : Math.min(1.0, strain / (1.0 + 3.5 * strain) / own);
  }

  @Override
  public double most(double strain) {
    double own = softening(strain);
    return own == 0.0 ? 1.0 : Math.max(1.0, strain / own);
  }

  @Override
  public List<Caveat> caveats(double strain) {
    if (strain <= SMALL) {
      return List.of();
    }
    return List.of(
        Caveat.note(
            cell + " at large strain",
            "the path of this cell was not computed, a guided strut at 45 degrees stands in",
            SOURCE));
  }
}
