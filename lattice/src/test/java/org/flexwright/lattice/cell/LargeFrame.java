package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.geometry.euclidean.threed.Rotation;
import org.apache.commons.math3.geometry.euclidean.threed.Vector3D;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.BlockRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * A periodic frame of round struts at any strain, pushed along one direction with its sides free:
 * it knows topology and section only.
 *
 * <p>A strut spans F v + u_to - u_from, with v its vector at rest, u the periodic shifts of the
 * nodes and F the symmetric deformation of the cell, third axis along the push. F33 is given; the
 * other five parts of F carry no force. Lengths in units of the shortest strut, forces in EI/L^2.
 */
final class LargeFrame {

  private static final int MOST_STEPS = 40;
  private static final double STILL = 1e-8; // the next change would be below 1e-12

  private final List<BentStrut> struts = new ArrayList<>();
  private final List<RealMatrix> maps = new ArrayList<>(); // ends of a strut per unknown
  private final int last; // unknowns: 3 n shifts, 3 n turns, F11 F22 F23 F13 F12, F33
  private final double volume;
  private final RealVector sum;
  private RealMatrix stiffness = new BlockRealMatrix(1, 1);

  /** A cell with its direction of push turned upright, each strut cut into equal elements. */
  LargeFrame(Topology topology, Vector3D push, RodElement.Section section, int elements) {
    double least = topology.struts().stream().mapToDouble(topology::length).min().orElseThrow();
    volume = Math.pow(least, -3);
    last = 6 * topology.nodes() + 5;
    sum = new ArrayRealVector(last + 1);
    Rotation upright = new Rotation(push, Vector3D.PLUS_K);
    for (Topology.Strut s : topology.struts()) {
      Vector3D v = upright.applyTo(new Vector3D(topology.vector(s)).scalarMultiply(1.0 / least));
      struts.add(new BentStrut(section, v, elements));
      maps.add(map(s, topology.nodes(), v.toArray()));
    }
  }

  private static RealMatrix map(Topology.Strut s, int nodes, double[] v) {
    int f = 6 * nodes;
    RealMatrix m = new BlockRealMatrix(9, f + 6);
    for (int c = 0; c < 3; c++) {
      m.addToEntry(c, 3 * s.to() + c, 1.0);
      m.addToEntry(c, 3 * s.from() + c, -1.0);
      m.setEntry(3 + c, 3 * (nodes + s.from()) + c, 1.0);
      m.setEntry(6 + c, 3 * (nodes + s.to()) + c, 1.0);
      m.setEntry(c, f + (c == 2 ? 5 : c), v[c]);
      for (int k = 0; k < 3; k++) {
        if (k != c) {
          m.setEntry(c, f + 5 - c - k, v[k]); // F12 last of the five, F23 first
        }
      }
    }
    return m;
  }

  /** Goes on to a strain by Newton's method, and gives the stress over EI/L^4. */
  double push(double strain) {
    double rest = -strain - sum.getEntry(last);
    double change = 1.0;
    for (int step = 0; step < MOST_STEPS; step++) {
      RealVector forces = assemble();
      if (change < STILL) {
        return -forces.getEntry(last) / volume;
      }
      change = advance(forces, rest);
      rest = 0.0;
    }
    throw new IllegalStateException("no balance at strain " + strain);
  }

  /** One correction, with a given change of F33; the first node does not shift. */
  private double advance(RealVector forces, double given) {
    RealVector coupling = stiffness.getColumnVector(last).getSubVector(3, last - 3);
    RealVector free =
        new LUDecomposition(tangent())
            .getSolver()
            .solve(forces.getSubVector(3, last - 3).add(coupling.mapMultiply(given)));
    RealVector all = new ArrayRealVector(last + 1);
    all.setSubVector(3, free.mapMultiply(-1.0));
    all.setEntry(last, given);
    sum.combineToSelf(1.0, 1.0, all);
    double change = 0.0;
    for (int i = 0; i < struts.size(); i++) {
      change = Math.max(change, struts.get(i).move(maps.get(i).operate(all)));
    }
    return change;
  }

  private RealVector assemble() {
    stiffness = new BlockRealMatrix(last + 1, last + 1);
    RealVector forces = new ArrayRealVector(last + 1);
    for (int i = 0; i < struts.size(); i++) {
      BentStrut.Condensed c = struts.get(i).condense();
      RealMatrix map = maps.get(i);
      RealMatrix across = map.transpose();
      stiffness = stiffness.add(across.multiply(c.stiffness()).multiply(map));
      forces = forces.add(across.operate(c.forces()));
    }
    return forces;
  }

  /** F11 - 1, F22 - 1, F23, F13, F12, F33 - 1. */
  double[] deformation() {
    return sum.getSubVector(last - 5, 6).toArray();
  }

  /** Energy in a volume over EI/L^4. */
  double energy() {
    return struts.stream().mapToDouble(BentStrut::energy).sum() / volume;
  }

  /** The tangent of all that is free, sections in the struts eliminated. */
  RealMatrix tangent() {
    return stiffness.getSubMatrix(3, last - 1, 3, last - 1);
  }
}
