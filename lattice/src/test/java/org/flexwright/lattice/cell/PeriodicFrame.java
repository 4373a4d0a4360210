package org.flexwright.lattice.cell;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * A periodic frame of one cell, one Timoshenko strut per edge, solved as a dense system for the six
 * macroscopic strains: it knows topology and section only, none of the closed forms.
 *
 * <p>A strut is described by eight deformations, from its ends' displacements and turns: stretch,
 * turn of its chord against its mean turn, symmetric bending, twist; see {@link #rows}.
 */
final class PeriodicFrame {

  /** Stiffness of one strut: EA, EI, kappa GA (infinite without shear), GJ. */
  private record Section(double ea, double ei, double ga, double gj, double radius) {}

  private final Topology topology;
  private final Section section;
  private final RealMatrix nodal; // 6 n + 6, the last six are the macroscopic strains
  private final int free;

  /** Round struts of slenderness x of the shortest; without shear if the beams are Euler's. */
  PeriodicFrame(Topology topology, double x, double poisson, boolean shear) {
    this.topology = topology;
    double least = topology.struts().stream().mapToDouble(topology::length).min().orElseThrow();
    double d = x * least;
    double area = Math.PI * d * d / 4.0;
    double inertia = Math.PI * Math.pow(d, 4) / 64.0;
    double g = 0.5 / (1.0 + poisson);
    double kappa = 6.0 * (1.0 + poisson) / (7.0 + 6.0 * poisson);
    section =
        new Section(
            area,
            inertia,
            shear ? kappa * g * area : Double.POSITIVE_INFINITY,
            2.0 * g * inertia,
            d / 2.0);
    free = 6 * topology.nodes();
    nodal = new Array2DRowRealMatrix(free + 6, free + 6);
    for (Topology.Strut s : topology.struts()) {
      double[][] rows = rows(s);
      double[] k = moduli(topology.length(s));
      for (int r = 0; r < rows.length; r++) {
        for (int i = 0; i < free + 6; i++) {
          if (rows[r][i] != 0.0) {
            for (int j = 0; j < free + 6; j++) {
              nodal.addToEntry(i, j, k[r] * rows[r][i] * rows[r][j]);
            }
          }
        }
      }
    }
  }

  private double[] moduli(double l) {
    double sway = 12.0 * section.ei / (l * (1.0 + shear(l)));
    double bend = section.ei / l;
    return new double[] {section.ea / l, sway, sway, sway, bend, bend, bend, section.gj / l};
  }

  private double shear(double l) {
    return 12.0 * section.ei / (section.ga * l * l);
  }

  /** The deformations of a strut as rows over all unknowns and the six strains. */
  private double[][] rows(Topology.Strut s) {
    double[] v = topology.vector(s);
    double l = topology.length(s);
    double[] n = {v[0] / l, v[1] / l, v[2] / l};
    double[][] rows = new double[8][free + 6];
    for (int c = 0; c < 3; c++) {
      // displacement difference along c, from nodes and from the macroscopic strain
      double[] du = new double[free + 6];
      du[6 * s.to() + c] += 1.0;
      du[6 * s.from() + c] -= 1.0;
      for (int k = 0; k < 3; k++) {
        du[free + (c == k ? c : 6 - c - k)] += c == k ? v[k] : 0.5 * v[k];
      }
      for (int i = 0; i < free + 6; i++) {
        rows[0][i] += n[c] * du[i];
        // n x du / l, the turn of the chord, taken off the mean turn
        rows[1 + (c + 1) % 3][i] -= n[(c + 2) % 3] * du[i] / l;
        rows[1 + (c + 2) % 3][i] += n[(c + 1) % 3] * du[i] / l;
      }
      for (int k = 0; k < 3; k++) {
        double across = (c == k ? 1.0 : 0.0) - n[c] * n[k];
        rows[1 + k][6 * s.from() + 3 + c] += 0.5 * across;
        rows[1 + k][6 * s.to() + 3 + c] += 0.5 * across;
        rows[4 + k][6 * s.from() + 3 + c] -= across;
        rows[4 + k][6 * s.to() + 3 + c] += across;
      }
      rows[7][6 * s.from() + 3 + c] -= n[c];
      rows[7][6 * s.to() + 3 + c] += n[c];
    }
    return rows;
  }

  /** The 6 x 6 stiffness, order 11, 22, 33, 23, 13, 12 with engineering shears. */
  double[][] stiffness() {
    RealMatrix coupling = nodal.getSubMatrix(3, free - 1, free, free + 5);
    return nodal
        .getSubMatrix(free, free + 5, free, free + 5)
        .subtract(coupling.transpose().multiply(response()))
        .getData();
  }

  /** Nodal answers to the six strains, taken off; the first node does not shift. */
  private RealMatrix response() {
    RealMatrix inner = nodal.getSubMatrix(3, free - 1, 3, free - 1);
    RealMatrix coupling = nodal.getSubMatrix(3, free - 1, free, free + 5);
    return new LUDecomposition(inner, 1e-300).getSolver().solve(coupling);
  }

  /** Largest fibre strain and largest compressive stretch for a push along z, sides free. */
  double[] strutStrain() {
    double[] e =
        new LUDecomposition(new Array2DRowRealMatrix(stiffness()), 1e-300)
            .getSolver()
            .getInverse()
            .getColumn(2);
    double[] u = new double[free + 6];
    for (int k = 0; k < 6; k++) {
      u[free + k] = -e[k] / e[2];
    }
    double[] nodes = response().operate(java.util.Arrays.copyOfRange(u, free, free + 6));
    for (int i = 3; i < free; i++) {
      u[i] = -nodes[i - 3];
    }
    double peak = 0.0;
    double pressed = 0.0;
    for (Topology.Strut s : topology.struts()) {
      double[] q = new Array2DRowRealMatrix(rows(s)).operate(u);
      double l = topology.length(s);
      pressed = Math.max(pressed, -q[0] / l);
      for (double end : new double[] {-1.0, 1.0}) {
        double sum = 0.0;
        for (int k = 0; k < 3; k++) {
          sum += Math.pow(end * 6.0 * q[1 + k] / (1.0 + shear(l)) / l + q[4 + k] / l, 2);
        }
        peak = Math.max(peak, Math.abs(q[0]) / l + section.radius * Math.sqrt(sum));
      }
    }
    return new double[] {peak, pressed};
  }
}
