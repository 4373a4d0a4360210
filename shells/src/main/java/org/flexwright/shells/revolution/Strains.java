package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flexwright.law.classical.NeoHookean;
import org.flexwright.quantity.Force;
import org.flexwright.quantity.Length;
import org.flexwright.quantity.Pressure;

/** The strains of both faces of a shell. Work space; not thread-safe. */
final class Strains {

  private static final double FOLDED = 1e-2; // stretch of a face beyond which it would fold

  private final ShellMesh mesh;
  private final ShellElement element; // for its strains only
  private final double[] layer = new double[3];

  Strains(ShellMesh mesh) {
    this.mesh = mesh;
    WallSection wall = new WallSection(NeoHookean.of(Pressure.pa(1.0)), 1);
    element = new ShellElement(wall, new Contact(mesh, List.of(), 1.0));
  }

  /** The largest tensile strain of either face of any element. */
  ShellState.Peak peak(double[] x) {
    ShellState.Peak peak = new ShellState.Peak(0.0, 0, true, false);
    for (int i = 0; i < mesh.elements(); i++) {
      element.strains(mesh, i, x);
      WallSection.Section rest = mesh.sections[i];
      for (int side = -1; side <= 1; side += 2) {
        WallSection.layerAt(
            rest, 0.5 * side * rest.thickness(), element.e, element.k, element.r, element.q, layer);
        boolean inner = side * Math.sin(mesh.angle[i]) > 0.0;
        for (int way = 1; way <= 2; way++) {
          if (layer[way] - 1.0 > peak.strain()) {
            peak = new ShellState.Peak(layer[way] - 1.0, i, inner, way == 2);
          }
        }
      }
    }
    return peak;
  }

  /** How each obstacle is pressed. */
  List<Touch> touches(double[] x, Contact contact) {
    List<Touch> touches = new ArrayList<>();
    for (int o = 0; o < contact.obstacles().size(); o++) {
      int by = o;
      ShellState.SelfTouch sum = sum(x, (i, side) -> contact.pressure(by, i, side));
      touches.add(
          new Touch(
              contact.obstacles().get(o), sum.length(), sum.mean(), sum.peak(), sum.normal()));
    }
    return touches;
  }

  /** How the shell presses on itself. */
  Optional<ShellState.SelfTouch> touches(double[] x, SelfContact self) {
    return self.presses() ? Optional.of(sum(x, self::pressure)) : Optional.empty();
  }

  /** Pressure on a face of an element, per area of the mid-surface at rest. */
  private interface Pressed {
    double on(int element, int side);
  }

  private ShellState.SelfTouch sum(double[] x, Pressed by) {
    double force = 0.0;
    double area = 0.0;
    double length = 0.0;
    double peak = 0.0;
    for (int i = 0; i < mesh.elements(); i++) {
      for (int side = -1; side <= 1; side += 2) {
        double pressed = by.on(i, side);
        if (pressed > 0.0) {
          WallSection.Section rest = mesh.sections[i];
          double d = 0.5 * side * rest.thickness();
          element.strains(mesh, i, x);
          WallSection.layerAt(rest, d, element.e, element.k, element.r, element.q, layer);
          double metric = (1.0 - d * rest.curvature()) * (rest.radius() - d * rest.sine());
          double along = Math.max(layer[1], FOLDED);
          double here =
              2.0 * Math.PI * mesh.length[i] * metric * along * Math.max(layer[2], FOLDED);
          double push = 2.0 * Math.PI * mesh.length[i] * rest.radius() * pressed;
          force += push;
          area += here;
          length += mesh.length[i] * (1.0 - d * rest.curvature()) * along;
          peak = Math.max(peak, push / here);
        }
      }
    }
    return new ShellState.SelfTouch(
        Length.m(length),
        Pressure.pa(area > 0.0 ? force / area : 0.0),
        Pressure.pa(peak),
        Force.newtons(force));
  }
}
