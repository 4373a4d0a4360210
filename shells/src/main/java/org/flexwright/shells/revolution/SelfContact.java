package org.flexwright.shells.revolution;

import java.util.Arrays;

/**
 * The pressure between two faces of one shell, without friction: face points of elements against
 * the smooth line of the opposed face, by the augmented Lagrangian of {@link Contact}, per area at
 * rest of the point's element.
 *
 * <p>Of two parts that meet, the one nearer to the first end brings the points, the other one the
 * line. Both ways at once would ask for two conditions where the gap has room for one, and press
 * curved faces flat. What leaves the points' own elements couples nodes far apart along the
 * meridian; the tangent is then an {@link Envelope}. Points that are inside a wall at rest are left
 * out.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class SelfContact {

  private static final int N = 6;
  private static final int ALL = 3 * N; // a point's element and the four nodes of its line
  private static final double[] NOTHING = {};

  private final ShellMesh mesh;
  private final double stiffness;
  private final FacePoint point;
  private final FaceLine line;
  private final Neighbours neighbours;
  private final boolean[] barred;
  private final boolean off;
  private final double[] multiplier; // by slot
  private final double[] gap;
  private final double[] place; // on the line, 0 where nothing is watched
  private final int[] side; // of the line
  private final int[] watched;
  private int count;
  private int pressed;

  private final int[] at = new int[ALL]; // unknowns
  private final double[] by = new double[ALL]; // gap by unknown
  private final double[] slide = new double[ALL]; // shift along the line
  private final double[] turn = new double[ALL]; // turn of the line
  private final double[] block = new double[N * N];
  private final double[] curved = new double[ALL * ALL];

  SelfContact(ShellMesh mesh, WallSection wall, double stiffness) {
    this.mesh = mesh;
    this.stiffness = stiffness;
    int slots = 2 * mesh.elements();
    point = new FacePoint(wall);
    line = new FaceLine(mesh, point);
    neighbours = new Neighbours(mesh, line);
    multiplier = new double[slots];
    gap = new double[slots];
    place = new double[slots];
    side = new int[slots];
    watched = new int[slots];
    barred = new boolean[slots];
    off = !neighbours.look(mesh.rest(), 0.0);
    for (int c = 0; c < neighbours.count; c++) {
      int slot = neighbours.found[c];
      barred[slot] = neighbours.gap[slot] < 0.0;
    }
  }

  /**
   * Follows the watched points to a state and finds who presses.
   *
   * @return whether any does; the envelope then has the shape for it
   */
  boolean locate(double[] x, Envelope tangent) {
    pressed = 0;
    if (count == 0) {
      return false;
    }
    line.moved(x);
    for (int c = 0; c < count; c++) {
      int slot = watched[c];
      gap[slot] = Double.POSITIVE_INFINITY;
      if (line.project(slot, place[slot], side[slot])
          && line.centre(line.place) >= FaceLine.element(slot) + Neighbours.LEAST) {
        gap[slot] = line.gap;
        place[slot] = line.place;
      }
      if (push(slot) > 0.0) {
        if (pressed++ == 0) {
          tangent.reset();
        }
        int first = 3 * FaceLine.element(slot);
        tangent.couple(3 * (line.centre(place[slot]) - 1), 2 * N, first);
      }
    }
    if (pressed > 0) {
      tangent.clear();
    }
    return pressed > 0;
  }

  private double push(int slot) {
    return multiplier[slot] - stiffness * gap[slot];
  }

  /** Whether the shell presses on itself in the state located last. */
  boolean presses() {
    return pressed > 0;
  }

  /**
   * Adds the pressures of the state located last.
   *
   * @return their potential
   */
  double add(double[] x, double[] force, Envelope tangent) {
    double potential = 0.0;
    for (int c = 0; c < count; c++) {
      int slot = watched[c];
      double m = multiplier[slot];
      double area = area(slot);
      double push = push(slot);
      potential -= area * m * m / (2.0 * stiffness);
      if (push > 0.0) {
        potential += area * push * push / (2.0 * stiffness);
        line.project(slot, place[slot], side[slot]);
        slopes(slot, x);
        push(area, push, force, tangent);
      }
    }
    return potential;
  }

  private double area(int slot) {
    int i = FaceLine.element(slot);
    return 2.0 * Math.PI * mesh.length[i] * mesh.sections[i].radius();
  }

  /** How the gap, the shift and the line's turn go with the unknowns; the curvature of faces. */
  private void slopes(int slot, double[] x) {
    Arrays.fill(by, 0.0);
    Arrays.fill(slide, 0.0);
    Arrays.fill(turn, 0.0);
    Arrays.fill(curved, 0.0);
    int i = FaceLine.element(slot);
    point(i, FaceLine.side(slot), side[slot], 0, 1.0, 0.0, x);
    int j = line.centre(line.place);
    for (int k = 0; k < 3; k++) {
      point(j - 1 + k, side[slot], side[slot], N + 3 * k, -line.share[k], line.slope[k], x);
    }
    for (int u = 0; u < N; u++) {
      at[u] = 3 * i + u;
    }
    for (int u = N; u < ALL; u++) {
      at[u] = 3 * (j - 1) + u - N;
    }
  }

  private void point(
      int i, int face, int way, int first, double share, double turning, double[] x) {
    point.at(mesh, i, face, x);
    point.slopes();
    point.curved(share * line.nr, share * line.nz, block);
    for (int u = 0; u < N; u++) {
      double out = line.nr * point.dr[u] + line.nz * point.dz[u];
      double ahead = way * (line.nz * point.dr[u] - line.nr * point.dz[u]);
      by[first + u] += share * out;
      slide[first + u] += share * ahead;
      turn[first + u] += turning * out;
      for (int w = 0; w < N; w++) {
        curved[ALL * (first + u) + first + w] += block[N * u + w];
      }
    }
  }

  private void push(double area, double push, double[] force, Envelope tangent) {
    double length = line.length;
    double soft = 1.0 / (length * length - line.gap * line.bend);
    for (int u = 0; u < ALL; u++) {
      force[at[u]] -= area * push * by[u];
      for (int w = 0; w <= u; w++) {
        double bent =
            line.bend * slide[u] * slide[w]
                + length * (slide[u] * turn[w] + turn[u] * slide[w])
                + line.gap * turn[u] * turn[w];
        double k = stiffness * by[u] * by[w] - push * (curved[ALL * u + w] - soft * bent);
        tangent.add(at[u], at[w], area * k);
      }
    }
  }

  /**
   * Takes the present pressures for multipliers and looks who else has come close.
   *
   * @return the deepest penetration before, infinite if the meridian crosses itself
   */
  double update(double[] x) {
    if (off) {
      return 0.0;
    }
    double deepest = 0.0;
    int kept = 0;
    for (int c = 0; c < count; c++) {
      int slot = watched[c];
      double m = Math.max(0.0, push(slot));
      if (m > 0.0) {
        deepest = Math.max(deepest, multiplier[slot] > 0.0 ? Math.abs(gap[slot]) : -gap[slot]);
        watched[kept++] = slot;
      } else {
        place[slot] = 0.0;
      }
      multiplier[slot] = m;
    }
    count = kept;
    boolean whole = neighbours.look(x, 0.0);
    double least = Double.POSITIVE_INFINITY;
    for (int c = 0; c < neighbours.count; c++) {
      int slot = neighbours.found[c];
      if (place[slot] == 0.0 && !barred[slot]) {
        place[slot] = neighbours.place[slot];
        side[slot] = neighbours.side[slot];
        gap[slot] = neighbours.gap[slot];
        least = Math.min(least, gap[slot]);
        watched[count++] = slot;
      }
    }
    return whole ? Math.max(deepest, -least) : Double.POSITIVE_INFINITY;
  }

  /** The smallest gap of a state, infinite if no faces are opposed. */
  double least(double[] x) {
    double least = Double.POSITIVE_INFINITY;
    neighbours.look(x, mesh.size());
    for (int c = 0; c < neighbours.count; c++) {
      int slot = neighbours.found[c];
      if (!barred[slot]) {
        least = Math.min(least, neighbours.gap[slot]);
      }
    }
    return least;
  }

  /** The pressure on a face of an element, per area at rest of the side that brings the points. */
  double pressure(int element, int face) {
    return multiplier[FaceLine.slot(element, face)];
  }

  /** What is to be kept of the state updated last. */
  double[] state() {
    if (count == 0) {
      return NOTHING;
    }
    double[] all = new double[4 * count];
    for (int c = 0; c < count; c++) {
      int slot = watched[c];
      all[4 * c] = slot;
      all[4 * c + 1] = side[slot];
      all[4 * c + 2] = place[slot];
      all[4 * c + 3] = multiplier[slot];
    }
    return all;
  }

  void restore(double[] state) {
    for (int c = 0; c < count; c++) {
      place[watched[c]] = 0.0;
      multiplier[watched[c]] = 0.0;
    }
    count = state.length / 4;
    for (int c = 0; c < count; c++) {
      int slot = (int) state[4 * c];
      watched[c] = slot;
      side[slot] = (int) state[4 * c + 1];
      place[slot] = state[4 * c + 2];
      multiplier[slot] = state[4 * c + 3];
    }
  }
}
