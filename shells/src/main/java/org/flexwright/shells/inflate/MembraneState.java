package org.flexwright.shells.inflate;

import java.util.Arrays;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.exception.NumberIsTooSmallException;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.flexwright.law.StrainEnergy;
import org.jspecify.annotations.Nullable;

/**
 * One state of a flat membrane, all lengths over its radius, the pressure times radius over wall.
 *
 * <p>The membrane is integrated from the pole in one pass at pressure 1 and wall 1 until the hoop
 * stretch has come down to 1: there is the edge, and its radius is the pressure of a membrane of
 * radius 1. Meridional and hoop stretch l1, l2, slope th: R W1 th' = r l1 - W2 sin th, R W11 l1' =
 * W2 cos th - W1 - R W12 l2', R l2' = l1 cos th - l2, height' = l1 sin th, volume' = pi r^2 l1 sin
 * th. It starts with the second-order series at the pole. Moduli are taken over that at rest.
 */
record MembraneState(double pole, double edge, double height, double volume, double pressure) {

  private static final double START = 0.02;
  private static final double FARTHEST = 1e3;
  // slopes of a trial step that left the law: so steep that the step is taken back
  private static final double OUTSIDE = 1e30;
  private static final double TOLERANCE = 1e-10;

  /** The state of a pole stretch above 1, or null if the law has none. */
  static @Nullable MembraneState at(StrainEnergy law, double pole) {
    Flow flow = new Flow(law);
    flow.load(pole, pole);
    double w = flow.w1;
    double k = pole * pole / (2.0 * w);
    double b = -k * k * (w + pole * (3.0 * flow.w11 - flow.w12)) / (16.0 * flow.w11);
    double a = 3.0 * b + 0.5 * pole * k * k;
    double reach = Math.sqrt((1.0 - pole) / b);
    if (!(reach > 0.0) || Double.isInfinite(reach)) {
      return null; // the law is not stable enough: its hoop stretch would rise from the pole
    }
    double start = START * reach;
    double l1 = pole + a * start * start;
    double l2 = pole + b * start * start;
    flow.load(l1, l2);
    double r = l2 * start;
    double slope = Math.asin(0.5 * r * l2 / flow.w1);
    double rise = 0.5 * pole * k * start * start;
    double[] y = {l1, l2, slope, rise, 0.5 * Math.PI * rise * r * r};
    if (!Double.isFinite(slope)) {
      return null;
    }
    DormandPrince853Integrator solver =
        new DormandPrince853Integrator(1e-12 * reach, reach, TOLERANCE, TOLERANCE);
    solver.addEventHandler(new Edge(), FARTHEST * reach, 1e-13 * reach, 100);
    double end;
    try {
      end = solver.integrate(flow, start, y, FARTHEST * reach, y);
    } catch (NumberIsTooSmallException | MathIllegalStateException e) {
      return null; // the law locks before the edge
    }
    double height = y[3] / end;
    return Double.isFinite(height) && Math.abs(y[1] - 1.0) < 1e-6
        ? new MembraneState(pole, y[0], height, y[4] / (end * end * end), end * law.shearModulus())
        : null;
  }

  /** Stops where the hoop stretch is 1. */
  private static final class Edge implements EventHandler {
    @Override
    public void init(double start, double[] y, double end) {}

    @Override
    public double g(double radius, double[] y) {
      return y[1] - 1.0;
    }

    @Override
    public Action eventOccurred(double radius, double[] y, boolean increasing) {
      return Action.STOP;
    }

    @Override
    public void resetState(double radius, double[] y) {}
  }

  /** The equations; the derivatives of the law at thickness stretch 1/(l1 l2), over G. */
  private static final class Flow implements FirstOrderDifferentialEquations {
    private final StrainEnergy law;
    private final double unit;
    private final double[] g = new double[3];
    private final double[] h = new double[6];
    private double w1;
    private double w2;
    private double w11;
    private double w12;

    Flow(StrainEnergy law) {
      this.law = law;
      unit = 1.0 / law.shearModulus();
    }

    void load(double l1, double l2) {
      double l3 = 1.0 / (l1 * l2);
      law.gradient(l1, l2, l3, g);
      law.hessian(l1, l2, l3, h);
      double d1 = l3 / l1;
      double d2 = l3 / l2;
      w1 = unit * (g[0] - g[2] * d1);
      w2 = unit * (g[1] - g[2] * d2);
      w11 = unit * (h[0] - 2.0 * h[4] * d1 + h[2] * d1 * d1 + 2.0 * g[2] * d1 / l1);
      w12 = unit * (h[3] - h[4] * d2 - h[5] * d1 + h[2] * d1 * d2 + g[2] * d1 / l2);
    }

    @Override
    public int getDimension() {
      return 5;
    }

    @Override
    public void computeDerivatives(double radius, double[] y, double[] out) {
      if (!(y[0] > 0.0 && y[1] > 0.0)) {
        Arrays.fill(out, OUTSIDE);
        return;
      }
      load(y[0], y[1]);
      double sin = Math.sin(y[2]);
      double cos = Math.cos(y[2]);
      double r = y[1] * radius;
      double hoop = (y[0] * cos - y[1]) / radius;
      out[0] = ((w2 * cos - w1) / radius - w12 * hoop) / w11;
      out[1] = hoop;
      out[2] = (r * y[0] - w2 * sin) / (radius * w1);
      out[3] = y[0] * sin;
      out[4] = Math.PI * r * r * y[0] * sin;
    }
  }
}
