package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.grade.WorkingStrain;
import org.flexwright.internal.Require;

/**
 * The path of a cell whose struts stretch: straight up to the strain at which they buckle, flat
 * beyond. Beyond, the peak strut strain takes in the bending of a buckled strut held at both ends:
 * one that shortens by e bends to 2 pi x sqrt(e), from w = (A/2)(1 - cos 2 pi s), e = pi^2 A^2/4.
 *
 * <p>Flat is an envelope of perfect struts. Crooked struts round off the corner and sway may let
 * the load fall; half the load is the low end from there on (judgement).
 *
 * @param cell the name of the cell
 * @param critical the strain at which struts buckle
 * @param estimated whether that strain is only Euler's for pinned ends; waves of a periodic frame
 *     give 0.7 (face-centred) to 3 times as much (edges and body-centred)
 * @param slope peak strut strain over macroscopic strain
 * @param stretch the part of it that is stretch
 * @param slender slenderness of the struts that buckle
 * @param source where the critical strain comes from
 */
record BucklingPath(
    String cell,
    double critical,
    boolean estimated,
    double slope,
    double stretch,
    double slender,
    Source source)
    implements CompressionPath {

  private static final double LOW_END = 0.5;
  private static final double MOST_SLENDER = 0.1; // waves were computed up to here
  private static final double BUILT_IN_OVER_PINNED = 4.0;

  private static double checked(double strain) {
    return Require.between("compressive strain", strain, 0.0, GuidedElastica.MOST, "");
  }

  @Override
  public double softening(double strain) {
    return Math.min(checked(strain), critical);
  }

  @Override
  public double growth(double strain) {
    double straight = softening(strain);
    double bent = 2.0 * Math.PI * slender * Math.sqrt(stretch * (strain - straight));
    return straight + bent / slope;
  }

  /** Stretch has one size along a strut; of the bending part the share of a guided strut. */
  @Override
  public WorkingStrain working(double largest, double stretched, double strain) {
    double straight = softening(strain);
    double bending = (largest - stretched) * straight;
    return new WorkingStrain(
        stretched * straight + WorkingStrain.roundBending(bending).linearMoment().value());
  }

  @Override
  public double least(double strain) {
    double near = checked(strain) / critical;
    return 1.0 - LOW_END * Math.max(0.0, Math.min(1.0, 2.0 * near - 1.0));
  }

  @Override
  public double most(double strain) {
    double near = checked(strain) / critical;
    return estimated ? Math.max(1.0, Math.min(BUILT_IN_OVER_PINNED, near)) : 1.0;
  }

  @Override
  public List<Caveat> caveats(double strain) {
    if (checked(strain) <= critical) {
      return List.of();
    }
    List<Caveat> caveats = new ArrayList<>();
    caveats.add(
        Caveat.note(
            cell + " after buckling",
            "struts have buckled: the flat path is only an envelope, test before use",
            source));
    new ValidityRange(cell + " buckling", "slenderness d/L", 0.0, MOST_SLENDER, "", source)
        .check(slender)
        .ifPresent(caveats::add);
    return List.copyOf(caveats);
  }
}
