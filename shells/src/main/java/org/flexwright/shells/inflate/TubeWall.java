package org.flexwright.shells.inflate;

import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.flexwright.law.StrainEnergy;

/** An incompressible thick tube in one law, uniform along its length, in SI. */
final class TubeWall {

  private static final double STEP = 1.05;
  private static final int STEPS = 100;
  private static final double NOTHING = 1e-12;
  private static final int ITERATIONS = 200;

  private final StrainEnergy law;
  private final double inner;
  private final double outer;

  TubeWall(StrainEnergy law, double inner, double outer) {
    this.law = law;
    this.inner = inner;
    this.outer = outer;
  }

  double section() {
    return Math.PI * (outer - inner) * (outer + inner);
  }

  double pressure(double bore, double axial) {
    return ThickTube.pressure(law, inner, outer, bore, axial);
  }

  /** Axial force less that of the pressure on the bore: pi int (2 sz - sr - st) r dr. */
  double force(double bore, double axial) {
    double[] g = new double[3];
    return Math.PI
        / axial
        * ThickTube.through(
            radius -> {
              double l = hoop(radius, bore, axial);
              double thin = 1.0 / (l * axial);
              law.gradient(l, axial, thin, g);
              return (2.0 * axial * g[1] - l * g[0] - thin * g[2]) * radius;
            },
            inner,
            outer,
            nothing());
  }

  /** Energy of the wall for each reference length. */
  double energy(double bore, double axial) {
    return 2.0
        * Math.PI
        * ThickTube.through(
            radius -> {
              double l = hoop(radius, bore, axial);
              return law.energy(l, axial, 1.0 / (l * axial)) * radius;
            },
            inner,
            outer,
            nothing());
  }

  /** An error of a force or of an energy for each length that does not matter. */
  private double nothing() {
    return NOTHING * law.shearModulus() * section();
  }

  /** Volume of the bore for each reference length. */
  double volume(double bore, double axial) {
    return Math.PI * inner * inner * bore * bore * axial;
  }

  private double hoop(double radius, double bore, double axial) {
    double a = bore * inner;
    return Math.sqrt(a * a + (radius - inner) * (radius + inner) / axial) / radius;
  }

  /** Bore stretch at a deformed outer radius; not a number if no bore is left. */
  double bore(double outside, double axial) {
    return Math.sqrt(outside * outside - (outer - inner) * (outer + inner) / axial) / inner;
  }

  /** Deformed outer radius. */
  double outside(double bore, double axial) {
    double a = bore * inner;
    return Math.sqrt(a * a + (outer - inner) * (outer + inner) / axial);
  }

  /**
   * The axial stretch that the ends allow, the bore given as a function of it; not a number if the
   * law has no such state.
   */
  double axial(TubeEnds ends, DoubleUnaryOperator bore) {
    double scale = law.shearModulus() * section();
    DoubleUnaryOperator f =
        axial -> {
          double l = bore.applyAsDouble(axial);
          double thrust =
              ends == TubeEnds.OPEN ? pressure(l, axial) * Math.PI * square(l * inner) : 0.0;
          return (force(l, axial) + thrust) / scale;
        };
    double from = 1.0;
    double at = f.applyAsDouble(from);
    double factor = at < 0.0 ? STEP : 1.0 / STEP;
    for (int i = 0; i < STEPS; i++) {
      if (at == 0.0) {
        return from;
      }
      double to = from * factor;
      double next = f.applyAsDouble(to);
      if (Double.isNaN(next)) {
        return Double.NaN;
      }
      if (next * at <= 0.0) {
        return new BrentSolver(1e-14, 1e-14)
            .solve(ITERATIONS, f::applyAsDouble, Math.min(from, to), Math.max(from, to));
      }
      from = to;
      at = next;
    }
    return Double.NaN;
  }

  private static double square(double x) {
    return x * x;
  }

  /** Jacobian of pressure and axial force by the stretches; zero where a bulge may start. */
  double jacobian(double bore, double axial) {
    double h = 1e-4;
    double pb = pressure(bore * (1 + h), axial) - pressure(bore * (1 - h), axial);
    double pz = pressure(bore, axial * (1 + h)) - pressure(bore, axial * (1 - h));
    double fb = force(bore * (1 + h), axial) - force(bore * (1 - h), axial);
    double fz = force(bore, axial * (1 + h)) - force(bore, axial * (1 - h));
    return (pb * fz - pz * fb) / (4.0 * h * h);
  }
}
