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

  /** The largest tensile strain of either face of any element, around the axis or along. */
  ShellState.Peak peak(double[] x, boolean hoop) {
    ShellState.Peak peak = new ShellState.Peak(0.0, 0, true, hoop);
    int way = hoop ? 2 : 1;
    for (int i = 0; i < mesh.elements(); i++) {
      element.strains(mesh, i, x);
      for (int side = -1; side <= 1; side += 2) {
        face(i, side);
        if (layer[way] - 1.0 > peak.strain()) {
          boolean inner = side * Math.sin(mesh.angle[i]) > 0.0;
          peak = new ShellState.Peak(layer[way] - 1.0, i, inner, hoop);
        }
      }
    }
    return peak;
  }

  /** The layer at a face of an element whose strains are set; gives its depth at rest. */
  private double face(int i, int side) {
    WallSection.Section rest = mesh.sections[i];
    double d = 0.5 * side * rest.thickness();
    WallSection.layerAt(rest, d, element.e, element.k, element.r, element.q, layer);
    return d;
  }

  /** How each obstacle is pressed, elements counted on from those before. */
  List<Touch> touches(double[] x, Contact contact, int before) {
    List<Touch> touches = new ArrayList<>();
    for (int o = 0; o < contact.obstacles().size(); o++) {
      List<Touch.Patch> patches = new ArrayList<>();
      double force = 0.0;
      double area = 0.0;
      double length = 0.0;
      double peak = 0.0;
      for (int i = 0; i < mesh.elements(); i++) {
        for (int side = -1; side <= 1; side += 2) {
          double pressed = contact.pressure(o, i, side);
          if (pressed > 0.0) {
            element.strains(mesh, i, x);
            double d = face(i, side);
            WallSection.Section rest = mesh.sections[i];
            double line = mesh.length[i] * (1.0 - d * rest.curvature()) * layer[1];
            double here = 2.0 * Math.PI * line * (rest.radius() - d * rest.sine()) * layer[2];
            double push = 2.0 * Math.PI * mesh.length[i] * rest.radius() * pressed;
            force += push;
            area += here;
            length += line;
            peak = Math.max(peak, push / here);
            patches.add(
                new Touch.Patch(
                    i + before,
                    Length.m(rest.thickness()),
                    Length.m(line),
                    Pressure.pa(push / here)));
          }
        }
      }
      touches.add(
          new Touch(
              contact.obstacles().get(o),
              Length.m(length),
              Pressure.pa(area > 0.0 ? force / area : 0.0),
              Pressure.pa(peak),
              Force.newtons(force),
              contact.nearest(o).further(before),
              patches));
    }
    return touches;
  }
}
