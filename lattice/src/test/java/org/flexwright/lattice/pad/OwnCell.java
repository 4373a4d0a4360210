package org.flexwright.lattice.pad;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.lattice.cell.CompressionPath;
import org.flexwright.lattice.cell.CubicStiffness;
import org.flexwright.lattice.cell.Topology;
import org.flexwright.lattice.cell.UnitCell;

/** A cell of a user: the laws of another, under a name that has no table of pads. */
record OwnCell(UnitCell like) implements UnitCell {
  @Override
  public String name() {
    return "own";
  }

  @Override
  public double strutOverCell() {
    return like.strutOverCell();
  }

  @Override
  public double mergingSlenderness() {
    return like.mergingSlenderness();
  }

  @Override
  public double relativeDensity(double x) {
    return like.relativeDensity(x);
  }

  @Override
  public double firstOrderDensity(double x) {
    return like.firstOrderDensity(x);
  }

  @Override
  public CubicStiffness centreLine(double x, double poisson) {
    return like.centreLine(x, poisson);
  }

  @Override
  public CubicStiffness solid(double x, double poisson) {
    return like.solid(x, poisson);
  }

  @Override
  public double peakStrain(double x) {
    return like.peakStrain(x);
  }

  @Override
  public Topology topology() {
    return like.topology();
  }

  @Override
  public CompressionPath path(double x) {
    return like.path(x);
  }

  @Override
  public List<Caveat> caveats(double x, double poisson) {
    return List.of();
  }

  @Override
  public List<Source> sources() {
    return List.of(Source.assumption("a user's cell"));
  }
}
