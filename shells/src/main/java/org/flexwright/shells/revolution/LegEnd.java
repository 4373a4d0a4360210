package org.flexwright.shells.revolution;

/** Where a leg ended: the unknowns of the mesh that moves, the load factor, the state given out. */
final class LegEnd {

  final double[] x; // read-only by agreement
  final double factor;
  final ShellState state;

  LegEnd(double[] x, double factor, ShellState state) {
    this.x = x.clone();
    this.factor = factor;
    this.state = state;
  }
}
