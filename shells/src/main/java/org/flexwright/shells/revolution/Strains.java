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
    WallSection wall = new WallSection(NeoHookean.of(Pressure.pa(1.0)), new Layers(mesh, 1));
    element = new ShellElement(wall, new Contact(mesh, List.of(), 1.0));
  }

  /**
   * The largest tensile strain of either face of any element, around the axis or along. At the
   * ends, where a held wall bends most, the strain at mid-element is carried on to the edge by a
   * straight line.
   */
  ShellState.Peak peak(double[] x, boolean hoop) {
    ShellState.Peak peak = new ShellState.Peak(0.0, 0, true, hoop);
    int way = hoop ? 2 : 1;
    for (int i = 0; i < mesh.elements(); i++) {
      if (mesh.rigid[i]) {
        continue;
      }
      int next = inward(i);
      double beyond = next < 0 ? 0.0 : mesh.length[i] / (mesh.length[i] + mesh.length[next]);
      for (int side = -1; side <= 1; side += 2) {
        double here = strain(x, i, side, way);
        double rise = next >= 0 ? here - strain(x, next, side, way) : 0.0;
        double strain = here + beyond * Math.max(0.0, rise);
        if (strain > peak.strain()) {
          boolean inner = side * Math.sin(mesh.angle[i]) > 0.0;
          peak = new ShellState.Peak(strain, i, inner, hoop);
        }
      }
    }
    return peak;
  }

  /** The neighbour away from the edge of an element at a held edge, or -1. */
  private int inward(int i) {
    int n = mesh.elements();
    boolean starts = i == 0 ? mesh.radius[0] > 0.0 : mesh.rigid[i - 1];
    boolean ends = i == n - 1 ? mesh.radius[n] > 0.0 : mesh.rigid[i + 1];
    if (starts == ends) {
      return -1;
    }
    int next = starts ? i + 1 : i - 1;
    return next < 0 || next >= n || mesh.rigid[next] ? -1 : next;
  }

  private double strain(double[] x, int i, int side, int way) {
    element.strains(mesh, i, x);
    WallSection.Section rest = mesh.sections[i];
    WallSection.layerAt(
        rest, 0.5 * side * rest.thickness(), element.e, element.k, element.r, element.q, layer);
    return layer[way] - 1.0;
  }

  /** How each obstacle is pressed, elements counted among all. */
  List<Touch> touches(double[] x, Contact contact, BuiltIn ends) {
    List<Touch> touches = new ArrayList<>();
    for (int o = 0; o < contact.obstacles().size(); o++) {
      int by = o;
      List<Touch.Patch> patches = new ArrayList<>();
      ShellState.SelfTouch sum =
          sum(
              x,
              (i, side) -> contact.pressure(by, i, side),
              (i, line, pressure) ->
                  patches.add(
                      new Touch.Patch(
                          ends.element(i),
                          Length.m(mesh.sections[i].thickness()),
                          Length.m(line),
                          Pressure.pa(pressure))));
      touches.add(
          new Touch(
              contact.obstacles().get(o),
              sum.length(),
              sum.mean(),
              sum.peak(),
              sum.normal(),
              ends.numbered(contact.nearest(o)),
              patches));
    }
    return touches;
  }

  /** How the shell presses on itself. */
  Optional<ShellState.SelfTouch> touches(double[] x, SelfContact self) {
    return self.presses()
        ? Optional.of(sum(x, self::pressure, (i, line, pressure) -> {}))
        : Optional.empty();
  }

  /** Pressure on a face of an element, per area of the mid-surface at rest. */
  private interface Pressed {
    double on(int element, int side);
  }

  /** Takes up a pressed face: element, deformed length of its meridian, pressure. */
  private interface Sink {
    void take(int element, double line, double pressure);
  }

  private ShellState.SelfTouch sum(double[] x, Pressed by, Sink sink) {
    double force = 0.0;
    double area = 0.0;
    double length = 0.0;
    double peak = 0.0;
    for (int i = 0; i < mesh.elements(); i++) {
      for (int side = -1; side <= 1; side += 2) {
        double pressed = by.on(i, side);
        if (pressed > 0.0) {
          element.strains(mesh, i, x);
          WallSection.Section rest = mesh.sections[i];
          double d = 0.5 * side * rest.thickness();
          WallSection.layerAt(rest, d, element.e, element.k, element.r, element.q, layer);
          double line = mesh.length[i] * (1.0 - d * rest.curvature()) * Math.max(layer[1], FOLDED);
          double around = (rest.radius() - d * rest.sine()) * Math.max(layer[2], FOLDED);
          double here = 2.0 * Math.PI * line * around;
          double push = 2.0 * Math.PI * mesh.length[i] * rest.radius() * pressed;
          force += push;
          area += here;
          length += line;
          sink.take(i, line, push / here);
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
