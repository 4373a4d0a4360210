package org.flexwright.shells.revolution;

import java.util.ArrayList;
import java.util.List;

/** Finds the places of a mesh where its wall steps or meets a solid. Immutable. */
final class Shoulders {

  private static final double SAME = 1e-9;

  private final Layer middle;
  private final ShellMesh mesh;

  /**
   * A place where a thin wall begins.
   *
   * @param element of the thin wall beside it
   * @param forward whether the thin wall comes after it
   * @param thin wall
   * @param thick wall, infinite at a solid
   * @param plain whether a solid is only said to be there: it shows no step
   */
  record Shoulder(int element, boolean forward, double thin, double thick, boolean plain) {}

  /** The elements of a span, by the arc length of the drawn line. */
  private record Reach(double from, double to, int first, int last, boolean rigid) {}

  Shoulders(Layer middle, ShellMesh mesh) {
    this.middle = middle;
    this.mesh = mesh;
  }

  /** The shoulders between the ends, in order. */
  List<Shoulder> all() {
    List<Reach> reaches = reaches();
    List<Wall.Step> steps = middle.wall().steps();
    List<Shoulder> found = new ArrayList<>();
    int next = 0;
    for (int k = 0; k < reaches.size(); k++) {
      while (next < steps.size() && steps.get(next).at() <= reaches.get(k).from() + tiny()) {
        step(reaches, steps.get(next++), found);
      }
      if (k > 0 && reaches.get(k).rigid() != reaches.get(k - 1).rigid()) {
        border(reaches.get(k - 1), reaches.get(k), steps, found);
      }
    }
    while (next < steps.size()) {
      step(reaches, steps.get(next++), found);
    }
    return found;
  }

  /** Whether the first (0) or the last end lies in a rigid stretch. */
  boolean rigidAt(int end) {
    return mesh.rigid[end == 0 ? 0 : mesh.elements() - 1];
  }

  private double tiny() {
    return 2.0 * SAME * middle.line().length();
  }

  private List<Reach> reaches() {
    List<Reach> all = new ArrayList<>();
    double near = SAME * mesh.size();
    int node = 0;
    for (Layer.Span span : middle.spans()) {
      Spot end = middle.at(span, span.to());
      int first = node++;
      while (node < mesh.elements() && end.distance(mesh.radius[node], mesh.height[node]) > near) {
        node++;
      }
      all.add(new Reach(span.from(), span.to(), first, node - 1, mesh.rigid[first]));
    }
    return all;
  }

  private void step(List<Reach> reaches, Wall.Step step, List<Shoulder> found) {
    boolean forward = step.after() < step.before();
    double edge = step.at() + (forward ? 0.5 : -0.5) * step.blend();
    double nearest = Double.POSITIVE_INFINITY;
    int element = 0;
    boolean rigid = true;
    for (Reach r : reaches) {
      boolean beyond = 0.5 * (r.from() + r.to()) > edge;
      double away = Math.abs((forward ? r.from() : r.to()) - edge);
      if (beyond == forward && away < nearest) { // not at once where a corner took the room
        nearest = away;
        element = forward ? r.first() : r.last();
        rigid = r.rigid();
      }
    }
    if (!rigid) {
      double thin = Math.min(step.before(), step.after());
      double thick = Math.max(step.before(), step.after());
      found.add(new Shoulder(element, forward, thin, thick, false));
    }
  }

  /** A border of a rigid stretch, unless the wall steps up to the rigid side there. */
  private void border(Reach a, Reach b, List<Wall.Step> steps, List<Shoulder> found) {
    boolean forward = a.rigid();
    for (Wall.Step step : steps) {
      boolean there = Math.abs(step.at() - b.from()) <= 0.5 * step.blend() + tiny();
      if (there && step.after() < step.before() == forward) {
        return;
      }
    }
    int element = forward ? b.first() : a.last();
    double wall = mesh.sections[element].thickness();
    found.add(new Shoulder(element, forward, wall, Double.POSITIVE_INFINITY, true));
  }
}
