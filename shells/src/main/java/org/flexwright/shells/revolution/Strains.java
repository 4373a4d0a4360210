package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** The strains of both faces of a shell. Work space; not thread-safe. */
final class Strains {

  private final ShellMesh mesh;
  private final ShellElement element; // for its strains only
  private final double[] layer = new double[3];

  Strains(ShellMesh mesh) {
    this.mesh = mesh;
    WallSection wall = new WallSection(NeoHookean.of(Pressure.pa(1.0)), 1);
    element = new ShellElement(wall, new Contact(mesh, List.of(), 1.0));
  }

  /**
   * The largest tensile strain of either face of any element. At the ends, where a held wall bends
   * most, the strain at mid-element is carried on to the edge by a straight line.
   */
  ShellState.Peak peak(double[] x) {
    ShellState.Peak peak = new ShellState.Peak(0.0, 0, true, false);
    int n = mesh.elements();
    for (int i = 0; i < n; i++) {
      int next = i == 0 ? 1 : n - 2; // the neighbour of an element at an end
      boolean edge =
          n > 1 && ((i == 0 && mesh.radius[0] > 0.0) || (i == n - 1 && mesh.radius[n] > 0.0));
      double beyond = edge ? mesh.length[i] / (mesh.length[i] + mesh.length[next]) : 0.0;
      for (int side = -1; side <= 1; side += 2) {
        boolean inner = side * Math.sin(mesh.angle[i]) > 0.0;
        for (int way = 1; way <= 2; way++) {
          double here = strain(x, i, side, way);
          double rise = edge ? here - strain(x, next, side, way) : 0.0;
          double strain = here + beyond * Math.max(0.0, rise);
          if (strain > peak.strain()) {
            peak = new ShellState.Peak(strain, i, inner, way == 2);
          }
        }
      }
    }
    return peak;
  }

  private double strain(double[] x, int i, int side, int way) {
    element.strains(mesh, i, x);
    WallSection.Section rest = mesh.sections[i];
    WallSection.layerAt(
        rest, 0.5 * side * rest.thickness(), element.e, element.k, element.r, element.q, layer);
    return layer[way] - 1.0;
  }

  /** How each obstacle is pressed. */
  List<Touch> touches(double[] x, Contact contact) {
    List<Touch> touches = new ArrayList<>();
    for (int o = 0; o < contact.obstacles().size(); o++) {
      double force = 0.0;
      double area = 0.0;
      double length = 0.0;
      double peak = 0.0;
      for (int i = 0; i < mesh.elements(); i++) {
        for (int side = -1; side <= 1; side += 2) {
          double pressed = contact.pressure(o, i, side);
          if (pressed > 0.0) {
            WallSection.Section rest = mesh.sections[i];
            double d = 0.5 * side * rest.thickness();
            element.strains(mesh, i, x);
            WallSection.layerAt(rest, d, element.e, element.k, element.r, element.q, layer);
            double metric = (1.0 - d * rest.curvature()) * (rest.radius() - d * rest.sine());
            double here = 2.0 * Math.PI * mesh.length[i] * metric * layer[1] * layer[2];
            double push = 2.0 * Math.PI * mesh.length[i] * rest.radius() * pressed;
            force += push;
            area += here;
            length += mesh.length[i] * (1.0 - d * rest.curvature()) * layer[1];
            peak = Math.max(peak, push / here);
          }
        }
      }
      touches.add(
          new Touch(
              contact.obstacles().get(o),
              Length.m(length),
              Pressure.pa(area > 0.0 ? force / area : 0.0),
              Pressure.pa(peak),
              Force.newtons(force)));
    }
    return touches;
  }
}
