package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** Where both faces of a wall are. Work space; not thread-safe. */
final class Faces {

  private final ShellMesh mesh;
  private final ShellElement element; // for its strains only
  private final double[] layer = new double[3];

  Faces(ShellMesh mesh) {
    this.mesh = mesh;
    WallSection wall = new WallSection(NeoHookean.of(Pressure.pa(1.0)), 1);
    element = new ShellElement(wall, new Contact(mesh, List.of(), 1.0));
  }

  /** The wall of a state that has so many nodes before the first one of the mesh. */
  List<RevolvedShell.Across> of(ShellState state, int before) {
    double[] x = new double[3 * mesh.nodes()];
    for (int i = 0; i < mesh.nodes(); i++) {
      x[3 * i] = state.radius(before + i).m();
      x[3 * i + 1] = state.height(before + i).m();
      x[3 * i + 2] = state.turn(before + i).rad();
    }
    int n = mesh.elements();
    List<RevolvedShell.Across> wall = new ArrayList<>();
    wall.add(at(x, 0, 0.0));
    for (int i = 0; i < n; i++) {
      wall.add(at(x, i, 0.5));
    }
    wall.add(at(x, n - 1, 1.0));
    return List.copyOf(wall);
  }

  /** The wall a share along an element, as thick as at its middle. */
  private RevolvedShell.Across at(double[] x, int i, double share) {
    element.strains(mesh, i, x);
    double r = x[3 * i] + share * (x[3 * i + 3] - x[3 * i]);
    double z = x[3 * i + 1] + share * (x[3 * i + 4] - x[3 * i + 1]);
    double turned = x[3 * i + 2] + share * (x[3 * i + 5] - x[3 * i + 2]);
    double bend = mesh.sections[i].curvature() * mesh.length[i];
    double angle = mesh.angle[i] + (share - 0.5) * bend + turned;
    double sine = Math.sin(angle);
    double cosine = Math.cos(angle);
    double right = depth(i, -0.5);
    double left = depth(i, 0.5);
    return new RevolvedShell.Across(
        Length.m(Math.max(0.0, r - right * sine)),
        Length.m(z + right * cosine),
        Length.m(Math.max(0.0, r - left * sine)),
        Length.m(z + left * cosine));
  }

  private double depth(int i, double walls) {
    WallSection.Section rest = mesh.sections[i];
    WallSection.layerAt(
        rest, walls * rest.thickness(), element.e, element.k, element.r, element.q, layer);
    return layer[0];
  }
}
