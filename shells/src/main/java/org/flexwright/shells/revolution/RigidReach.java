package org.flexwright.shells.revolution;

import java.util.List;
import java.util.Optional;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;

/** Watches whether a rigid stretch reaches into an obstacle, which does not stop it. */
final class RigidReach {

  private static final double CLOSE = 1e-6; // of the size of the shell

  private final ShellMesh mesh;
  private final List<Obstacle> obstacles;
  private final double[] deepest;
  private final double[] gap = new double[6];

  RigidReach(ShellMesh mesh, List<Obstacle> obstacles) {
    this.mesh = mesh;
    this.obstacles = obstacles;
    deepest = new double[obstacles.size()];
  }

  /** Looks at a state of all nodes. */
  void look(double[] x) {
    for (int i = 0; i < mesh.elements() && deepest.length > 0; i++) {
      if (mesh.rigid[i]) {
        double half = 0.5 * mesh.sections[i].thickness();
        double across = half * Math.sin(mesh.angle[i]);
        double along = half * Math.cos(mesh.angle[i]);
        for (int n = 3 * i; n <= 3 * i + 3; n += 3) {
          look(x[n] - across, x[n + 1] + along);
          look(x[n] + across, x[n + 1] - along);
        }
      }
    }
  }

  private void look(double r, double z) {
    for (int o = 0; o < deepest.length; o++) {
      Gap.of(obstacles.get(o), r, z, gap);
      deepest[o] = Math.max(deepest[o], -gap[0]);
    }
  }

  /** What must be said, if a rigid stretch went into an obstacle. */
  Optional<Caveat> caveat() {
    for (int o = 0; o < deepest.length; o++) {
      if (deepest[o] > CLOSE * mesh.size()) {
        String message =
            "a rigid stretch reaches "
                + Text.number(1e3 * deepest[o])
                + " mm into the "
                + obstacles.get(o)
                + "; only flexible walls are stopped by obstacles";
        return Optional.of(
            Caveat.note("shell of revolution", message, Source.assumption("contact of walls")));
      }
    }
    return Optional.empty();
  }
}
