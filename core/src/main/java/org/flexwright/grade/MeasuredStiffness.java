package org.flexwright.grade;

import java.util.List;
import org.flexwright.quantity.Length;

/** A process whose printed stiffness was measured: it adds no band of its own. */
record MeasuredStiffness(PrintProcess of) implements PrintProcess {

  @Override
  public List<Length> sizes(Feature.Kind kind, Length from, Length to) {
    return of.sizes(kind, from, to);
  }

  @Override
  public Length smallest(Feature.Kind kind) {
    return of.smallest(kind);
  }

  @Override
  public Length bias() {
    return of.bias();
  }

  @Override
  public Length scatter() {
    return of.scatter();
  }

  @Override
  public double acrossLayers() {
    return of.acrossLayers();
  }

  @Override
  public double stiffnessBand() {
    return 1.0;
  }

  @Override
  public String toString() {
    return of + ", stiffness measured";
  }
}
