package org.flexwright.lattice.cell;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.SingularValueDecomposition;
import org.flexwright.internal.Require;

/**
 * The nodes and struts of one cubic cell: nodes in fractions of the edge, each strut once, from one
 * node to another of this cell or of a neighbour.
 *
 * <p>Formula, for bars b and joints j of one cell with pinned joints (Maxwell and Calladine):
 * mechanisms minus states of self-stress = 3 j - 3 - b with the shape of the cell held. A state of
 * stress of the lattice can be carried by stretch alone if it is the mean stress of a state of
 * self-stress; otherwise struts must bend.
 *
 * <p>Range: periodic over one cell only; mechanisms that vary from cell to cell are not counted.
 *
 * <p>Source: Maxwell 1864; Calladine 1978; Deshpande, Ashby and Fleck 2001, Acta Mater. 49, 1035
 * (from memory).
 *
 * <p>JShell: {@code Cells.OCTET.topology().selfStresses()}
 */
public final class Topology {

  /**
   * One strut.
   *
   * @param from the node where it starts
   * @param to the node where it ends
   * @param dx how many cells away along x that node is
   * @param dy along y
   * @param dz along z
   */
  public record Strut(int from, int to, int dx, int dy, int dz) {}

  private static final double EIGHTHS = 8.0;
  private static final double RANK = 1e-9;

  private final double[][] nodes;
  private final List<Strut> struts;
  private final boolean stretches;

  private Topology(double[][] nodes, List<Strut> struts) {
    this.nodes = nodes;
    this.struts = List.copyOf(struts);
    stretches = stretches();
  }

  /**
   * Starts a topology.
   *
   * @param eighths three coordinates for each node, in eighths of the cell edge, 0 to 7
   * @return a builder without struts
   */
  public static Builder ofEighths(int... eighths) {
    return new Builder(eighths);
  }

  /** Collects the struts. Not thread-safe. */
  public static final class Builder {
    private final int[] eighths;
    private final int count;
    private final List<Strut> struts = new ArrayList<>();

    private Builder(int[] eighths) {
      Require.that(
          eighths.length > 0 && eighths.length % 3 == 0,
          "coordinates of the nodes",
          eighths.length,
          "three for each node",
          "");
      for (int e : eighths) {
        Require.that(e >= 0 && e < EIGHTHS, "coordinate of a node", e, "0 to 7 eighths", "");
      }
      this.eighths = eighths.clone();
      count = eighths.length / 3;
    }

    /**
     * Joins all nodes that lie a distance apart.
     *
     * @param squared the square of the distance, in eighths of the edge
     * @return this builder
     */
    public Builder joinAll(int squared) {
      for (int i = 0; i < count; i++) {
        joinFrom(i, i, squared);
      }
      return this;
    }

    /**
     * Joins one node to all nodes that lie a distance apart.
     *
     * @param node the number of the node, from 0
     * @param squared the square of the distance, in eighths of the edge
     * @return this builder
     */
    public Builder join(int node, int squared) {
      return joinFrom(node, 0, squared);
    }

    private Builder joinFrom(int i, int first, int squared) {
      for (int j = first; j < count; j++) {
        for (int s = 0; s < 27; s++) {
          boolean twice = i == j && s < 13; // the same strut from its other end
          if (!twice && squared(i, j, s / 9 - 1, s / 3 % 3 - 1, s % 3 - 1) == squared) {
            join(i, j, s / 9 - 1, s / 3 % 3 - 1, s % 3 - 1);
          }
        }
      }
      return this;
    }

    private int squared(int i, int j, int dx, int dy, int dz) {
      int[] d = {dx, dy, dz};
      int sum = 0;
      for (int c = 0; c < 3; c++) {
        int along = eighths[3 * j + c] + 8 * d[c] - eighths[3 * i + c];
        sum += along * along;
      }
      return sum;
    }

    /**
     * Joins two nodes.
     *
     * @param from the node where the strut starts
     * @param to the node where it ends
     * @param dx how many cells away along x that node is
     * @param dy along y
     * @param dz along z
     * @return this builder
     */
    public Builder join(int from, int to, int dx, int dy, int dz) {
      Require.between("node of a strut", from, 0, count - 1.0, "");
      Require.between("node of a strut", to, 0, count - 1.0, "");
      Require.that(
          squared(from, to, dx, dy, dz) > 0, "strut", from + " to " + to, "two places", "");
      struts.add(new Strut(from, to, dx, dy, dz));
      return this;
    }

    /**
     * The topology.
     *
     * @return nodes and struts
     */
    public Topology build() {
      Require.atLeast("struts of a cell", struts.size(), 1);
      double[][] nodes = new double[count][3];
      for (int i = 0; i < eighths.length; i++) {
        nodes[i / 3][i % 3] = eighths[i] / EIGHTHS;
      }
      return new Topology(nodes, struts);
    }
  }

  /**
   * How many nodes one cell owns.
   *
   * @return the count
   */
  public int nodes() {
    return nodes.length;
  }

  /**
   * The place of a node.
   *
   * @param node its number, from 0
   * @return three fractions of the cell edge
   */
  public double[] node(int node) {
    Require.between("node", node, 0, nodes.length - 1.0, "");
    return nodes[node].clone();
  }

  /**
   * The struts one cell owns.
   *
   * @return each strut once
   */
  public List<Strut> struts() {
    return struts;
  }

  /**
   * A strut as a vector.
   *
   * @param strut the strut
   * @return from its start to its end, over the cell edge
   */
  public double[] vector(Strut strut) {
    double[] a = nodes[strut.from];
    double[] b = nodes[strut.to];
    return new double[] {b[0] + strut.dx - a[0], b[1] + strut.dy - a[1], b[2] + strut.dz - a[2]};
  }

  /**
   * The length of a strut.
   *
   * @param strut the strut
   * @return its length over the cell edge
   */
  public double length(Strut strut) {
    double[] v = vector(strut);
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  /**
   * How many struts meet at a node.
   *
   * @param node its number, from 0
   * @return the coordination
   */
  public int coordination(int node) {
    Require.between("node", node, 0, nodes.length - 1.0, "");
    return struts.stream().mapToInt(s -> (s.from == node ? 1 : 0) + (s.to == node ? 1 : 0)).sum();
  }

  /**
   * Bars beyond Maxwell's count with the shape of the cell held.
   *
   * @return b - 3 j + 3
   */
  public int maxwell() {
    return struts.size() - 3 * nodes.length + 3;
  }

  /**
   * Ways to move the pinned nodes of a cell of fixed shape without stretching a strut, shifts of
   * the whole lattice left out.
   *
   * @return the count of mechanisms
   */
  public int mechanisms() {
    return selfStresses() - maxwell();
  }

  /**
   * Independent sets of strut forces that balance at every node of a cell of fixed shape.
   *
   * @return the count of states of self-stress
   */
  public int selfStresses() {
    return struts.size() - rank(equilibrium());
  }

  /**
   * How many of the six kinds of macroscopic strain stretch pinned struts: 6 if the lattice is
   * stiff by stretch alone in all of them, 1 if only against a change of volume.
   *
   * @return the rank of the pin-jointed stiffness
   */
  public int stiffModes() {
    return rank(stresses());
  }

  /**
   * Whether a push along the cell edge z is carried by stretch: the modulus then goes with the
   * density, otherwise the struts bend and it goes with its square.
   *
   * @return true if stretch alone carries it
   */
  public boolean stretchesAlongEdge() {
    return stretches;
  }

  private boolean stretches() {
    RealMatrix carried = stresses();
    RealMatrix with = new Array2DRowRealMatrix(6, carried.getColumnDimension() + 1);
    with.setSubMatrix(carried.getData(), 0, 0);
    with.setEntry(2, carried.getColumnDimension(), 1.0);
    return rank(with) == rank(carried);
  }

  /**
   * How much more of the struts that carry a push along z a block of n by n whole cells holds than
   * its share of the endless lattice, if struts in its side faces keep their full diameter: those
   * are counted once for each block, not once for two. Only for cells that carry such a push by
   * stretch; blocks of cells that bend do not gain by it.
   *
   * @param across cells along x and along y
   * @return the ratio, at least 1; 1 for cells that bend
   */
  public double crowding(int across) {
    Require.atLeast("cells across", across, 1);
    if (!stretches) {
      return 1.0;
    }
    double share = (across + 1.0) / across;
    double endless = 0.0;
    double block = 0.0;
    for (Strut s : struts) {
      double[] v = vector(s);
      double l = length(s);
      double carries = l * Math.pow(v[2] / l, 4);
      double times = 1.0;
      for (int c = 0; c < 2; c++) {
        times *= v[c] == 0.0 && nodes[s.from][c] == 0.0 ? share : 1.0;
      }
      endless += carries;
      block += carries * times;
    }
    return block / endless;
  }

  /** One column for each strut: what a unit force in it does to the nodes. */
  private RealMatrix equilibrium() {
    RealMatrix m = new Array2DRowRealMatrix(3 * nodes.length, struts.size());
    for (int k = 0; k < struts.size(); k++) {
      Strut s = struts.get(k);
      double[] v = vector(s);
      double l = length(s);
      for (int c = 0; c < 3; c++) {
        m.addToEntry(3 * s.from + c, k, -v[c] / l);
        m.addToEntry(3 * s.to + c, k, v[c] / l);
      }
    }
    return m;
  }

  /** The mean stresses of the states of self-stress, one column for each. */
  private RealMatrix stresses() {
    RealMatrix equilibrium = equilibrium();
    int b = struts.size();
    // the right singular vectors without a singular value span the states of self-stress
    RealMatrix square = equilibrium.transpose().multiply(equilibrium);
    SingularValueDecomposition svd = new SingularValueDecomposition(square);
    int rank = rank(equilibrium);
    if (rank == b) {
      return new Array2DRowRealMatrix(6, 1);
    }
    RealMatrix mean = new Array2DRowRealMatrix(6, b);
    for (int k = 0; k < b; k++) {
      double[] v = vector(struts.get(k));
      double l = length(struts.get(k));
      mean.setColumn(
          k,
          new double[] {
            v[0] * v[0] / l,
            v[1] * v[1] / l,
            v[2] * v[2] / l,
            v[1] * v[2] / l,
            v[0] * v[2] / l,
            v[0] * v[1] / l
          });
    }
    return mean.multiply(svd.getV().getSubMatrix(0, b - 1, rank, b - 1));
  }

  private static int rank(RealMatrix m) {
    double[] values = new SingularValueDecomposition(m).getSingularValues();
    int rank = 0;
    for (double v : values) {
      rank += v > RANK ? 1 : 0; // all entries are of the order of 1
    }
    return rank;
  }

  /** One readable line. */
  @Override
  public String toString() {
    return nodes.length + " nodes and " + struts.size() + " struts in a cell";
  }
}
