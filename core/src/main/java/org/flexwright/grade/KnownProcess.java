package org.flexwright.grade;

import java.util.List;
import org.flexwright.quantity.Length;

/** A process of which some figures were measured on its own prints. */
record KnownProcess(PrintProcess of, Length bias, Length scatter, double stiffnessBand)
    implements PrintProcess {

  @Override
  public List<Length> sizes(Feature.Kind kind, Length from, Length to) {
    return of.sizes(kind, from, to);
  }

  @Override
  public boolean anySize(Feature.Kind kind) {
    return of.anySize(kind);
  }

  @Override
  public Length smallest(Feature.Kind kind) {
    return of.smallest(kind);
  }

  @Override
  public double acrossLayers() {
    return of.acrossLayers();
  }

  @Override
  public String toString() {
    return of + ", measured";
  }
}
