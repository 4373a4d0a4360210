package org.flexwright.shells.revolution;

/**
 * A meridian cut into two-node elements: nodes on the mid-surface, and for each element its length,
 * angle, curvature and wall at mid-length.
 *
 * <p>All arrays in metres and radians; read-only by agreement inside the package.
 */
final class ShellMesh {

  final double[] radius;
  final double[] height;
  final double[] length;
  final double[] angle;
  final WallSection.Section[] sections;
  final int[] piece; // of the meridian, for each element, counted from 0
  final DrawnFace drawn; // the face that stays when the wall changes
  final boolean[] rigid; // elements that only move along the axis, as one with their neighbours

  /**
   * A mesh from nodes.
   *
   * @param radius of each node
   * @param height of each node along the axis
   * @param start angle of the meridian at the start of each element
   * @param end angle at its end
   * @param thickness at mid-length of each element
   */
  ShellMesh(double[] radius, double[] height, double[] start, double[] end, double[] thickness) {
    this(radius, height, start, end, thickness, new int[thickness.length], DrawnFace.MIDDLE);
  }

  /**
   * A mesh from nodes of a meridian.
   *
   * @param radius of each node
   * @param height of each node along the axis
   * @param start angle of the meridian at the start of each element
   * @param end angle at its end
   * @param thickness at mid-length of each element
   * @param piece of the meridian that each element belongs to
   * @param drawn face that the meridian draws
   */
  ShellMesh(
      double[] radius,
      double[] height,
      double[] start,
      double[] end,
      double[] thickness,
      int[] piece,
      DrawnFace drawn) {
    this(radius, height, start, end, thickness, piece, drawn, new boolean[thickness.length]);
  }

  /**
   * A mesh with rigid stretches.
   *
   * @param radius of each node
   * @param height of each node along the axis
   * @param start angle of the meridian at the start of each element
   * @param end angle at its end
   * @param thickness at mid-length of each element
   * @param piece of the meridian that each element belongs to
   * @param drawn face that the meridian draws
   * @param rigid whether each element is part of a rigid stretch
   */
  ShellMesh(
      double[] radius,
      double[] height,
      double[] start,
      double[] end,
      double[] thickness,
      int[] piece,
      DrawnFace drawn,
      boolean[] rigid) {
    this.rigid = rigid;
    int elements = radius.length - 1;
    this.piece = piece;
    this.drawn = drawn;
    this.radius = radius;
    this.height = height;
    length = new double[elements];
    angle = new double[elements];
    sections = new WallSection.Section[elements];
    for (int i = 0; i < elements; i++) {
      double dr = radius[i + 1] - radius[i];
      double dz = height[i + 1] - height[i];
      length[i] = Math.hypot(dr, dz);
      angle[i] = Math.atan2(dz, dr);
      sections[i] =
          new WallSection.Section(
              thickness[i],
              (end[i] - start[i]) / length[i],
              0.5 * (radius[i] + radius[i + 1]),
              dz / length[i]);
    }
  }

  int nodes() {
    return radius.length;
  }

  int elements() {
    return length.length;
  }

  /** The thinnest wall that is not rigid. */
  double thinnest() {
    double thin = Double.POSITIVE_INFINITY;
    for (int i = 0; i < sections.length; i++) {
      thin = rigid[i] ? thin : Math.min(thin, sections[i].thickness());
    }
    return thin;
  }

  /** The largest distance from the axis or along it. */
  double size() {
    double low = height[0];
    double high = height[0];
    double most = 0.0;
    for (int i = 0; i < nodes(); i++) {
      most = Math.max(most, radius[i]);
      low = Math.min(low, height[i]);
      high = Math.max(high, height[i]);
    }
    return Math.max(most, high - low);
  }

  /** The state of rest: radius, height and turn of each node. */
  double[] rest() {
    double[] x = new double[3 * nodes()];
    for (int i = 0; i < nodes(); i++) {
      x[3 * i] = radius[i];
      x[3 * i + 1] = height[i];
    }
    return x;
  }
}
