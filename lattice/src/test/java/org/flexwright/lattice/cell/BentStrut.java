package org.flexwright.lattice.cell;

import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.BlockRealMatrix;
import org.apache.commons.math3.linear.DecompositionSolver;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A straight strut cut into equal rod elements, seen by its ends only: nine unknowns, the vector
 * from end to end and the turns of both. The sections in between are eliminated at each step of
 * Newton's method and follow when the ends move.
 */
final class BentStrut {

  private static final int OUTER = 9;

  private final RodElement element;
  private final Vector3D[] places; // from the start of the strut
  private final Rotation[] turns;
  private RealMatrix innerPerOuter = new BlockRealMatrix(1, 1);
  private RealVector innerRest = new ArrayRealVector(1);

  BentStrut(RodElement.Section section, Vector3D vector, int elements) {
    element = new RodElement(section, vector.getNorm() / elements);
    places = new Vector3D[elements + 1];
    turns = new Rotation[elements + 1];
    Rotation along = new Rotation(Vector3D.PLUS_K, vector);
    for (int k = 0; k <= elements; k++) {
      places[k] = vector.scalarMultiply((double) k / elements);
      turns[k] = along;
    }
  }

  /** Stiffness and forces at the ends with the sections in between in balance to first order. */
  record Condensed(RealMatrix stiffness, RealVector forces) {}

  Condensed condense() {
    int n = OUTER + 6 * (places.length - 2);
    RealMatrix k = new BlockRealMatrix(n, n);
    RealVector f = new ArrayRealVector(n);
    for (int e = 0; e + 1 < places.length; e++) {
      add(e, k, f);
    }
    RealMatrix inner = k.getSubMatrix(OUTER, n - 1, OUTER, n - 1);
    RealMatrix across = k.getSubMatrix(0, OUTER - 1, OUTER, n - 1);
    DecompositionSolver solver = new LUDecomposition(inner).getSolver();
    innerPerOuter = solver.solve(k.getSubMatrix(OUTER, n - 1, 0, OUTER - 1));
    innerRest = solver.solve(f.getSubVector(OUTER, n - OUTER));
    return new Condensed(
        k.getSubMatrix(0, OUTER - 1, 0, OUTER - 1).subtract(across.multiply(innerPerOuter)),
        f.getSubVector(0, OUTER).subtract(across.operate(innerRest)));
  }

  private void add(int e, RealMatrix k, RealVector f) {
    Vector3D d = places[e + 1].subtract(places[e]);
    double[] forces = element.forces(d, turns[e], turns[e + 1]);
    double[][] tangent = element.tangent(d, turns[e], turns[e + 1]);
    // place and turn of the first section, place and turn of the second
    int[] at = {place(e), turn(e), place(e + 1), turn(e + 1)};
    int[] own = {0, 3, 0, 6};
    for (int p = 0; p < 4; p++) {
      for (int i = 0; at[p] >= 0 && i < 3; i++) {
        double sign = p == 0 ? -1.0 : 1.0;
        f.addToEntry(at[p] + i, sign * forces[own[p] + i]);
        for (int q = 0; q < 4; q++) {
          for (int j = 0; at[q] >= 0 && j < 3; j++) {
            double both = q == 0 ? -sign : sign;
            k.addToEntry(at[p] + i, at[q] + j, both * tangent[own[p] + i][own[q] + j]);
          }
        }
      }
    }
  }

  /** Where the place of a section stands among the unknowns; the start does not move. */
  private int place(int section) {
    if (section == 0) {
      return -1;
    }
    return section == places.length - 1 ? 0 : OUTER + 6 * (section - 1);
  }

  private int turn(int section) {
    if (section == 0) {
      return 3;
    }
    return section == places.length - 1 ? 6 : OUTER + 6 * (section - 1) + 3;
  }

  /**
   * Moves the ends, and the sections in between as the last {@link #condense} says.
   *
   * @return the largest change of a place or turn
   */
  double move(RealVector outer) {
    RealVector inner = innerPerOuter.operate(outer).add(innerRest).mapMultiply(-1.0);
    RealVector all = outer.append(inner);
    for (int s = 0; s < places.length; s++) {
      if (place(s) >= 0) {
        places[s] = places[s].add(part(all, place(s)));
      }
      turns[s] = RodElement.after(part(all, turn(s)), turns[s]);
    }
    return all.getLInfNorm();
  }

  private static Vector3D part(RealVector all, int at) {
    return new Vector3D(all.getSubVector(at, 3).toArray());
  }

  double energy() {
    double sum = 0.0;
    for (int e = 0; e + 1 < places.length; e++) {
      sum += element.energy(places[e + 1].subtract(places[e]), turns[e], turns[e + 1]);
    }
    return sum;
  }
}
