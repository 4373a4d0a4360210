package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.List;
import org.flexwright.quantity.Length;

/**
 * The pressure of rigid obstacles on the faces of a shell, by an augmented Lagrangian at the middle
 * of each element: potential (max(0, m - s g)^2 - m^2)/(2 s) for gap g, multiplier m and stiffness
 * s, per area at rest.
 *
 * <p>Work space of one solver; not thread-safe.
 */
final class Contact {

  private final ShellMesh mesh;
  private final List<Obstacle> obstacles;
  private final double stiffness;
  private final double[] multiplier; // by obstacle, element, side
  private final double[] gaps;
  private final double[] g = new double[6];

  // slopes of the face point by e, k, r, q, g, height, angle, and the gap's
  private final double[] pr = new double[ShellElement.ALL];
  private final double[] pz = new double[ShellElement.ALL];
  private final double[] pg = new double[ShellElement.ALL];

  Contact(ShellMesh mesh, List<Obstacle> obstacles, double stiffness) {
    this.mesh = mesh;
    this.obstacles = obstacles;
    this.stiffness = stiffness;
    multiplier = new double[2 * mesh.elements() * obstacles.size()];
    gaps = new double[multiplier.length];
    Arrays.fill(gaps, Double.POSITIVE_INFINITY);
  }

  List<Obstacle> obstacles() {
    return obstacles;
  }

  boolean none() {
    return obstacles.isEmpty();
  }

  /** Whether any face was pressed at the last update. */
  boolean presses() {
    for (double m : multiplier) {
      if (m > 0.0) {
        return true;
      }
    }
    return false;
  }

  /**
   * Adds the pressure on one face of element i to a potential by e, k, r, q, g, height, angle.
   *
   * @param side -1 for the face at negative depth, 1 for the other
   * @param wall with the face evaluated
   * @return the potential per length and radian
   */
  double add(int i, int side, WallSection wall, double[] s, double[] first, double[] second) {
    double potential = 0.0;
    double q = Math.sin(s[6]);
    double c = Math.cos(s[6]);
    double y = wall.depth;
    double area = mesh.sections[i].radius();
    for (int o = 0; o < obstacles.size(); o++) {
      Gap.of(obstacles.get(o), s[2] - y * q, s[5] + y * c, g);
      int at = (o * mesh.elements() + i) * 2 + (side + 1) / 2;
      gaps[at] = g[0];
      double push = multiplier[at] - stiffness * g[0];
      if (push <= 0.0) {
        potential -= area * multiplier[at] * multiplier[at] / (2.0 * stiffness);
        continue;
      }
      potential += area * (push * push - multiplier[at] * multiplier[at]) / (2.0 * stiffness);
      push(area, push, y, q, c, wall, first, second);
    }
    return potential;
  }

  private void push(
      double area,
      double push,
      double y,
      double q,
      double c,
      WallSection wall,
      double[] first,
      double[] second) {
    int n = ShellElement.ALL;
    for (int a = 0; a < 4; a++) {
      pr[a] = -q * wall.dy[a];
      pz[a] = c * wall.dy[a];
    }
    pr[2] += 1.0;
    pr[6] = -y * c;
    pz[5] = 1.0;
    pz[6] = -y * q;
    for (int a = 0; a < n; a++) {
      pg[a] = g[1] * pr[a] + g[2] * pz[a];
      first[a] -= area * push * pg[a];
    }
    double across = -g[1] * q + g[2] * c; // gap by depth
    double turn = -g[1] * c - g[2] * q; // gap by depth and angle
    for (int a = 0; a < n; a++) {
      for (int b = 0; b < n; b++) {
        double curved =
            g[3] * pr[a] * pr[b] + g[4] * (pr[a] * pz[b] + pz[a] * pr[b]) + g[5] * pz[a] * pz[b];
        if (a < 4 && b < 4) {
          curved += across * wall.depthCurved[4 * a + b];
        } else if (a < 4 && b == 6) {
          curved += turn * wall.dy[a];
        } else if (b < 4 && a == 6) {
          curved += turn * wall.dy[b];
        } else if (a == 6 && b == 6) {
          curved -= y * across;
        }
        second[n * a + b] += area * (stiffness * pg[a] * pg[b] - push * curved);
      }
    }
  }

  /**
   * Takes the present pressures for multipliers.
   *
   * @return the deepest penetration before
   */
  double update() {
    double deepest = 0.0;
    for (int at = 0; at < multiplier.length; at++) {
      deepest = Math.max(deepest, -gaps[at]);
      double m = Math.max(0.0, multiplier[at] - stiffness * gaps[at]);
      if (m > 0.0 && multiplier[at] > 0.0) {
        deepest = Math.max(deepest, Math.abs(gaps[at])); // a pressed face must touch, too
      }
      multiplier[at] = m;
    }
    return deepest;
  }

  /** The pressure between an obstacle and a face of an element, per area at rest. */
  double pressure(int obstacle, int i, int side) {
    return multiplier[(obstacle * mesh.elements() + i) * 2 + (side + 1) / 2];
  }

  /** Where the shell is nearest to an obstacle, between the elements by a parabola. */
  Touch.Nearest nearest(int obstacle) {
    int n = mesh.elements();
    Touch.Nearest nearest = new Touch.Nearest(0, Length.m(Double.MAX_VALUE));
    for (int side = 0; side < 2; side++) {
      for (int i = 0; i < n; i++) {
        double here = gap(obstacle, i, side);
        if (here < nearest.gap().m()) {
          boolean turns = i > 0 && i < n - 1;
          double least =
              turns ? least(i, gap(obstacle, i - 1, side), here, gap(obstacle, i + 1, side)) : here;
          nearest = new Touch.Nearest(i, Length.m(Math.min(least, nearest.gap().m())));
        }
      }
    }
    return nearest;
  }

  private double gap(int obstacle, int i, int side) {
    return gaps[2 * (obstacle * mesh.elements() + i) + side];
  }

  /** The least value of the parabola through three neighbours, the middle one not the largest. */
  private double least(int i, double before, double here, double after) {
    double back = 0.5 * (mesh.length[i - 1] + mesh.length[i]);
    double on = 0.5 * (mesh.length[i] + mesh.length[i + 1]);
    double slopeBack = (here - before) / back;
    double slopeOn = (after - here) / on;
    double bend = (slopeOn - slopeBack) / (back + on);
    double slope = (slopeBack * on + slopeOn * back) / (back + on);
    boolean lowest =
        before >= here && after >= here && bend > 0.0 && bend < Double.POSITIVE_INFINITY;
    return lowest ? here - 0.25 * slope * slope / bend : here;
  }

  double[] multipliers() {
    return multiplier.clone();
  }

  void restore(double[] of) {
    System.arraycopy(of, 0, multiplier, 0, multiplier.length);
  }
}
