package org.flexwright.shells.revolution;

import java.util.stream.IntStream;
import org.flexwright.numeric.BlockTridiagonal;

/**
 * Rigid links in the chain of nodes: the two nodes of a rigid element move along the axis as one,
 * their radius and turn are held.
 *
 * <p>Formula: each link adds a Lagrange multiplier to the equations, the axial force in it. It
 * takes the place of the held turn of the link's first node, where it couples both heights and
 * nothing else, so that the chain stays a chain of three unknowns a node. As the link is linear the
 * multiplier need not be kept: each Newton step finds it anew. It brings one negative eigenvalue
 * more, which is no instability.
 */
final class Links {

  private static final int MULTIPLIER = 2;
  private static final double[] LINK = link();

  private final int[] at; // first node of each
  private final double[] rise;

  Links(ShellMesh mesh) {
    at = IntStream.range(0, mesh.elements()).filter(i -> mesh.rigid[i]).toArray();
    rise = new double[at.length];
    for (int k = 0; k < at.length; k++) {
      rise[k] = mesh.height[at[k] + 1] - mesh.height[at[k]];
    }
  }

  private static double[] link() {
    double[] k = new double[36];
    k[6 + MULTIPLIER] = -1.0; // with the height of the first node
    k[6 * MULTIPLIER + 4] = 1.0; // with that of the second one
    k[6 * MULTIPLIER + MULTIPLIER] = -1.0; // takes away what stands for a held unknown
    return k;
  }

  /** The unknowns that links hold. */
  int[] held() {
    return IntStream.of(at)
        .flatMap(i -> IntStream.of(3 * i, 3 * i + 2, 3 * i + 3, 3 * i + 5))
        .toArray();
  }

  /** How many. */
  int count() {
    return at.length;
  }

  /** Puts the links into a tangent whose held unknowns have ones on the diagonal. */
  void couple(BlockTridiagonal tangent) {
    for (int i : at) {
      tangent.add(i, LINK);
    }
  }

  /** The same in a tangent of a shell that presses on itself. */
  void couple(Envelope tangent) {
    for (int i : at) {
      tangent.add(i, LINK);
    }
  }

  /** Asks for what rounding has taken from the links. */
  void close(double[] x, double[] right) {
    for (int k = 0; k < at.length; k++) {
      int z = 3 * at[k] + 1;
      right[3 * at[k] + MULTIPLIER] = rise[k] - (x[z + 3] - x[z]);
    }
  }

  /** Takes the multipliers out of a solution. */
  void drop(double[] solution) {
    for (int i : at) {
      solution[3 * i + MULTIPLIER] = 0.0;
    }
  }
}
