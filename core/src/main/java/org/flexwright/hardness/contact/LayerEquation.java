package org.flexwright.hardness.contact;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.flexwright.quantity.Length;

/**
 * The integral equation of {@link BondedLayer} for one shape, solved at a radius of contact.
 *
 * <p>Between 0 and the radius the points are those of Gauss and Legendre; where the shape has an
 * edge, the part beyond it is mapped by t = edge + (a - edge) v^2, since D(t) starts there like a
 * root. The kernel is a product of cosines summed over u, up to u = 20, where 1 - L is 1e-14.
 */
final class LayerEquation {

  private static final int PANELS = 20;

  /** The solution at one radius: phi = d one - own. */
  record Solution(double sumOne, double sumOwn, double endOne, double endOwn) {

    /** The depth at which the pressure ends smoothly at this radius. */
    double depth() {
      return endOwn / endOne;
    }

    double forceArea(double depth) {
      return depth * sumOne - sumOwn;
    }
  }

  private final Indenter indenter;
  private final double h;
  private final double edge;
  private final GaussIntegrator rule;
  private final double[] u;
  private final double[] weight;

  LayerEquation(Indenter indenter, double h, double nu, double widest) {
    this.indenter = indenter;
    this.h = h;
    edge = edge(indenter);
    int extra = (int) Math.ceil(widest / h);
    GaussIntegratorFactory rules = new GaussIntegratorFactory();
    rule = rules.legendre(16 + 3 * extra);
    GaussIntegrator panel = rules.legendre(10 + extra);
    int n = panel.getNumberOfPoints();
    u = new double[PANELS * n];
    weight = new double[PANELS * n];
    for (int i = 0; i < u.length; i++) {
      int from = i / n; // the panel runs from here to one further
      u[i] = from + 0.5 * (1.0 + panel.getPoint(i % n));
      weight[i] = 0.5 * panel.getWeight(i % n) * compliance(u[i], 3.0 - 4.0 * nu);
    }
  }

  /** The radius at which D(t) starts anew: the flat, or where a rounded tip meets the flank. */
  private static double edge(Indenter indenter) {
    if (indenter instanceof Frustum f) {
      return f.flatRadius().m();
    }
    if (indenter instanceof RoundedCone c) {
      return c.tipRadius().m() * Math.cos(c.halfAngle().rad());
    }
    return 0.0;
  }

  /** 1 - L(u), written so that nothing cancels. */
  private static double compliance(double u, double k) {
    double rest = 4.0 * u * u + 1.0 + k * k;
    double above = 2.0 * k * Math.exp(-2.0 * u) + rest + 4.0 * u;
    return above / (2.0 * k * Math.cosh(2.0 * u) + rest);
  }

  Solution at(double a) {
    int n = rule.getNumberOfPoints();
    boolean split = edge > 0.0 && edge < a;
    double[] t = new double[split ? 2 * n : n];
    double[] w = new double[t.length];
    double first = split ? edge : a;
    for (int i = 0; i < n; i++) {
      double v = 0.5 * (1.0 + rule.getPoint(i));
      double share = 0.5 * rule.getWeight(i);
      t[i] = first * v;
      w[i] = first * share;
      if (split) {
        t[n + i] = edge + (a - edge) * v * v;
        w[n + i] = 2.0 * (a - edge) * v * share;
      }
    }
    return solve(t, w, a);
  }

  private Solution solve(double[] t, double[] w, double a) {
    double[][] cos = new double[t.length][];
    for (int i = 0; i < t.length; i++) {
      cos[i] = cosines(t[i]);
    }
    RealMatrix matrix = new Array2DRowRealMatrix(t.length, t.length);
    RealMatrix right = new Array2DRowRealMatrix(t.length, 2);
    for (int i = 0; i < t.length; i++) {
      for (int j = 0; j < t.length; j++) {
        matrix.setEntry(i, j, (i == j ? 1.0 : 0.0) - w[j] * kernel(cos[i], cos[j]));
      }
      right.setEntry(i, 0, 1.0);
      right.setEntry(i, 1, shape(t[i]));
    }
    RealMatrix phi = new LUDecomposition(matrix, 1e-300).getSolver().solve(right);
    double[] end = cosines(a);
    double[] sum = new double[2];
    double[] last = {1.0, shape(a)};
    for (int j = 0; j < t.length; j++) {
      double back = w[j] * kernel(end, cos[j]);
      for (int c = 0; c < 2; c++) {
        sum[c] += w[j] * phi.getEntry(j, c);
        last[c] += back * phi.getEntry(j, c);
      }
    }
    return new Solution(sum[0], sum[1], last[0], last[1]);
  }

  private double shape(double t) {
    return indenter.depthAt(Length.m(t)).m();
  }

  private double[] cosines(double t) {
    double[] cos = new double[u.length];
    for (int i = 0; i < u.length; i++) {
      cos[i] = Math.cos(u[i] * t / h);
    }
    return cos;
  }

  private double kernel(double[] one, double[] other) {
    double sum = 0.0;
    for (int i = 0; i < u.length; i++) {
      sum += weight[i] * one[i] * other[i];
    }
    return 2.0 / (Math.PI * h) * sum;
  }
}
