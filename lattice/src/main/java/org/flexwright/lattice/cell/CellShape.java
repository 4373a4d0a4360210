package org.flexwright.lattice.cell;

/**
 * The constants of a cell's geometry.
 *
 * @param name the name
 * @param topology nodes and struts
 * @param strutOverCell L/a of the shortest strut
 * @param merging tan of half the least angle at a node
 * @param c1 of the density law in x = d/L
 * @param c2 of the density law in x = d/L
 */
record CellShape(
    String name, Topology topology, double strutOverCell, double merging, double c1, double c2) {

  double density(double x) {
    return x * x * (c1 - c2 * x);
  }

  double firstOrder(double x) {
    return c1 * x * x;
  }
}
