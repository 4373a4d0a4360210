package org.flexwright.shells.revolution;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/** Meshes of plain shapes, made without the library's own meridian. */
final class Meshes {

  private Meshes() {}

  private static double[] each(int n, IntToDoubleFunction f) {
    return IntStream.range(0, n).mapToDouble(f).toArray();
  }

  static ShellMesh straight(double r1, double z1, double r2, double z2, double wall, int n) {
    double[] angle = each(n, i -> Math.atan2(z2 - z1, r2 - r1));
    return new ShellMesh(
        each(n + 1, i -> r1 + (r2 - r1) * i / n),
        each(n + 1, i -> z1 + (z2 - z1) * i / n),
        angle,
        angle,
        each(n, i -> wall));
  }

  static ShellMesh tube(double radius, double length, double wall, int n) {
    return straight(radius, 0.0, radius, length, wall, n);
  }

  static ShellMesh disc(double radius, double wall, int n) {
    return straight(0.0, 0.0, radius, 0.0, wall, n);
  }

  /** A cap of a sphere from its pole, at the bottom, to an opening angle; pi closes it. */
  static ShellMesh sphere(double radius, double opening, double wall, int n) {
    double[] r = each(n + 1, i -> radius * Math.sin(opening * i / n));
    if (opening == Math.PI) {
      r[n] = 0.0;
    }
    return new ShellMesh(
        r,
        each(n + 1, i -> -radius * Math.cos(opening * i / n)),
        each(n, i -> opening * i / n),
        each(n, i -> opening * (i + 1) / n),
        each(n, i -> wall));
  }

  /**
   * A smooth meridian through nodes.
   *
   * @param nodes radius, height and angle of the meridian of each
   */
  static ShellMesh smooth(double[][] nodes, IntToDoubleFunction wall) {
    int n = nodes.length - 1;
    return new ShellMesh(
        each(n + 1, i -> nodes[i][0]),
        each(n + 1, i -> nodes[i][1]),
        each(n, i -> nodes[i][2]),
        each(n, i -> nodes[i + 1][2]),
        each(n, wall));
  }

  /**
   * A zone of a sphere between two angles from its lower pole.
   *
   * @param crowd power of the node's number, above 1 to crowd nodes at the first angle
   */
  static ShellMesh zone(double radius, double from, double to, double crowd, double wall, int n) {
    double[][] nodes = new double[n + 1][];
    for (int i = 0; i <= n; i++) {
      double a = from + (to - from) * Math.pow((double) i / n, crowd);
      nodes[i] = new double[] {radius * Math.sin(a), -radius * Math.cos(a), a};
    }
    return smooth(nodes, i -> wall);
  }

  /** A hemisphere, from its pole at the bottom, with a cylinder on it. */
  static ShellMesh flask(double radius, double length, double wall, int n) {
    double[][] nodes = new double[2 * n + 1][];
    for (int i = 0; i <= n; i++) {
      double a = 0.5 * Math.PI * i / n;
      nodes[i] = new double[] {radius * Math.sin(a), -radius * Math.cos(a), a};
      nodes[n + i] = new double[] {radius, length * i / n, 0.5 * Math.PI};
    }
    return smooth(nodes, i -> wall);
  }

  /** Half a torus about the axis, from its innermost to its outermost circle. */
  static ShellMesh torus(double mean, double round, double wall, int n) {
    double[][] nodes = new double[n + 1][];
    for (int i = 0; i <= n; i++) {
      double a = Math.PI * i / n;
      double angle = 0.5 * Math.PI - a;
      nodes[i] = new double[] {mean - round * Math.cos(a), round * Math.sin(a), angle};
    }
    return smooth(nodes, i -> wall);
  }

  /** A tube from its middle on, where the wall is thinner by a share of a cosine's bell. */
  static ShellMesh necked(
      double radius, double length, double wall, double share, double bell, int n) {
    double[][] nodes = new double[n + 1][];
    for (int i = 0; i <= n; i++) {
      nodes[i] = new double[] {radius, length * i / n, 0.5 * Math.PI};
    }
    double part = length / (n * bell);
    return smooth(
        nodes,
        i -> {
          double at = Math.min(1.0, (i + 0.5) * part);
          return wall * (1.0 - 0.5 * share * (1.0 + Math.cos(Math.PI * at)));
        });
  }

  /** Half a convolution from the inside of a root to the outside of a crest, with round ends. */
  static ShellMesh convolution(double mean, double depth, double round, double wall, int n) {
    double[][] nodes = new double[3 * n + 1][];
    double inside = mean - 0.5 * depth;
    double flat = depth - 2.0 * round;
    for (int i = 0; i <= n; i++) {
      double a = 0.5 * Math.PI * i / n;
      double sin = Math.sin(a);
      double cos = Math.cos(a);
      nodes[i] = new double[] {inside + round * (1.0 - cos), round * sin, 0.5 * Math.PI - a};
      nodes[n + i] = new double[] {inside + round + flat * i / n, round, 0.0};
      nodes[2 * n + i] = new double[] {inside + round + flat + round * sin, round * (2.0 - cos), a};
    }
    int last = 3 * n;
    double[] wallAt = new double[last];
    Arrays.fill(wallAt, wall);
    return new ShellMesh(
        each(last + 1, i -> nodes[i][0]),
        each(last + 1, i -> nodes[i][1]),
        each(last, i -> nodes[i][2]),
        each(last, i -> nodes[i + 1][2]),
        wallAt);
  }
}
