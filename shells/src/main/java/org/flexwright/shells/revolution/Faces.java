package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** Where both faces of a wall are. Work space; not thread-safe. */
final class Faces {

  private final ShellMesh whole;
  private final BuiltIn ends;
  private final ShellElement element; // for its strains only
  private final double[] layer = new double[3];
  private final List<RevolvedShell.Across> wall = new ArrayList<>();

  Faces(ShellMesh whole, BuiltIn ends) {
    this.whole = whole;
    this.ends = ends;
    WallSection none = new WallSection(NeoHookean.of(Pressure.pa(1.0)), new Layers(ends.moving, 1));
    element = new ShellElement(none, new Contact(ends.moving, List.of(), 1.0));
  }

  /** The wall of a state: rigid stretches as drawn, the others as deformed. */
  List<RevolvedShell.Across> of(ShellState state) {
    double[] all = new double[3 * whole.nodes()];
    for (int i = 0; i < whole.nodes(); i++) {
      all[3 * i] = state.radius(i).m();
      all[3 * i + 1] = state.height(i).m();
      all[3 * i + 2] = state.turn(i).rad();
    }
    ShellMesh moving = ends.moving;
    double[] x = ends.part(all);
    int last = moving.elements();
    rigid(all, 0, ends.node(0));
    add(moving, x, 0, 0.0);
    for (int i = 0; i < last; i++) {
      if (moving.rigid[i]) {
        rigid(all, ends.node(i), ends.node(i + 1));
      } else {
        add(moving, x, i, 0.5);
      }
    }
    add(moving, x, last - 1, 1.0);
    rigid(all, ends.node(last), whole.elements());
    return List.copyOf(wall);
  }

  private void rigid(double[] x, int from, int to) {
    for (int i = from; i < to; i++) {
      add(whole, x, i, 0.5);
    }
  }

  /** The wall a share along an element, as thick as at its middle. */
  private void add(ShellMesh mesh, double[] x, int i, double share) {
    element.strains(mesh, i, x);
    double r = x[3 * i] + share * (x[3 * i + 3] - x[3 * i]);
    double z = x[3 * i + 1] + share * (x[3 * i + 4] - x[3 * i + 1]);
    double turned = x[3 * i + 2] + share * (x[3 * i + 5] - x[3 * i + 2]);
    double bend = mesh.sections[i].curvature() * mesh.length[i];
    double angle = mesh.angle[i] + (share - 0.5) * bend + turned;
    double sine = Math.sin(angle);
    double cosine = Math.cos(angle);
    double right = depth(mesh, i, -0.5);
    double left = depth(mesh, i, 0.5);
    wall.add(
        new RevolvedShell.Across(
            Length.m(Math.max(0.0, r - right * sine)),
            Length.m(z + right * cosine),
            Length.m(Math.max(0.0, r - left * sine)),
            Length.m(z + left * cosine)));
  }

  private double depth(ShellMesh mesh, int i, double walls) {
    WallSection.Section rest = mesh.sections[i];
    WallSection.layerAt(
        rest, walls * rest.thickness(), element.e, element.k, element.r, element.q, layer);
    return layer[0];
  }
}
