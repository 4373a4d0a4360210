package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;

/** What the built-in cubic cells share: the laws that are constants only. */
abstract class FrameCell implements UnitCell {

  /** The largest ratio of solid to centre-line E100 of any cell here: exp(3.2 x), body-centred. */
  private static final double JOINT_DOUBT = 3.2;

  private final CellShape shape;
  private final Optional<JointStiffening> joints;
  private final List<Source> sources;

  FrameCell(CellShape shape, Optional<JointStiffening> joints, Source... sources) {
    this.shape = shape;
    this.joints = joints;
    List<Source> all = new ArrayList<>(List.of(sources));
    joints.ifPresent(j -> all.add(Slenderness.SOLID_ELEMENTS));
    this.sources = List.copyOf(all);
  }

  /** The largest strut strain over the macroscopic strain for a legal slenderness. */
  abstract double peak(double x);

  /** Up to which slenderness {@link #peak} was computed. */
  double peakLimit() {
    return 0.3;
  }

  @Override
  public final String name() {
    return shape.name();
  }

  @Override
  public final Topology topology() {
    return shape.topology();
  }

  @Override
  public final double strutOverCell() {
    return shape.strutOverCell();
  }

  @Override
  public final double mergingSlenderness() {
    return shape.merging();
  }

  @Override
  public final double relativeDensity(double x) {
    return shape.density(Slenderness.check(this, x));
  }

  @Override
  public final double firstOrderDensity(double x) {
    return shape.firstOrder(Slenderness.check(this, x));
  }

  @Override
  public final CubicStiffness solid(double x, double poisson) {
    CubicStiffness beams = centreLine(x, poisson);
    return joints.map(j -> j.of(beams, x, poisson)).orElse(beams);
  }

  @Override
  public final double jointDoubt(double x) {
    return joints.isPresent() ? 1.0 : Math.exp(JOINT_DOUBT * Slenderness.check(this, x));
  }

  @Override
  public final double peakStrain(double x) {
    return peak(Slenderness.check(this, x));
  }

  @Override
  public final List<Caveat> caveats(double x, double poisson) {
    return Slenderness.caveats(name(), joints, peakLimit(), x, poisson);
  }

  @Override
  public final List<Source> sources() {
    return sources;
  }

  /** The name. */
  @Override
  public final String toString() {
    return name();
  }
}
