package org.flexwright.shells.revolution;

/**
 * What the Gauss layers of every element of a mesh are at rest: depth, volume up to there, metric.
 *
 * <p>All arrays by element and layer; read-only by agreement inside the package.
 */
final class Layers {

  final int count;
  final double[] volume; // per length and radian, from the mid-surface
  final double[] along; // one over the length by that of the mid-surface, 1 - d K
  final double[] around; // one over the radius, R - d Q
  final double[] metric; // length times radius by what they are at the mid-surface, and by radius
  final double[] weight; // volume per length and radian that the point stands for

  Layers(ShellMesh mesh, int count) {
    this.count = count;
    int n = mesh.elements() * count;
    volume = new double[n];
    along = new double[n];
    around = new double[n];
    metric = new double[n];
    weight = new double[n];
    double[] points = Gauss.points(count);
    double[] weights = Gauss.weights(count);
    for (int i = 0; i < mesh.elements(); i++) {
      WallSection.Section of = mesh.sections[i];
      double half = 0.5 * of.thickness();
      for (int g = 0; g < count; g++) {
        double d = half * points[g];
        double c1 = 1.0 - d * of.curvature();
        double c2 = of.radius() - d * of.sine();
        int at = i * count + g;
        volume[at] = of.volume(d);
        along[at] = 1.0 / c1;
        around[at] = 1.0 / c2;
        metric[at] = c1 * c2;
        weight[at] = half * weights[g] * c1 * c2;
      }
    }
  }
}
