package org.flexwright.shells.inflate;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.flexwright.law.StrainEnergy;

/**
 * The inflated states of a flat membrane of unit radius and unit wall in one law, by the height of
 * the pole. Splines through states of one integration each: the logarithms of pressure/z^3,
 * volume/z and strains/z^2 are smooth functions of z^2. Made for one response.
 */
final class MembraneTable {

  private static final int SEARCH = 30;
  private static final int KNOTS = 24;
  // knots beyond the height asked for, so that the ends of the splines do not count
  private static final double BEYOND = 1.1;

  private final PolynomialSplineFunction pole;
  private final PolynomialSplineFunction edge;
  private final PolynomialSplineFunction pressure;
  private final PolynomialSplineFunction volume;
  private final double most;

  /**
   * A table.
   *
   * @param height the largest pole height over the radius that will be asked for
   */
  MembraneTable(StrainEnergy law, double height) {
    double top = top(law, height);
    MembraneState[] states = new MembraneState[KNOTS];
    int count = 0;
    for (int i = 0; i < KNOTS; i++) {
      // the first one near rest
      double root = top * Math.max(0.1, i) / (KNOTS - 1);
      MembraneState s = MembraneState.at(law, 1.0 + root * root);
      if (s == null || (count > 0 && s.height() <= states[count - 1].height())) {
        break;
      }
      states[count++] = s;
    }
    states = Arrays.copyOf(states, count);
    most = states[count - 1].height();
    pole = spline(states, s -> (s.pole() - 1.0) / (s.height() * s.height()));
    edge = spline(states, s -> (s.edge() - 1.0) / (s.height() * s.height()));
    pressure = spline(states, s -> s.pressure() / Math.pow(s.height(), 3));
    volume = spline(states, s -> s.volume() / s.height());
  }

  /** The root of pole stretch less 1 at which the membrane is high enough. */
  private static double top(StrainEnergy law, double height) {
    // small heights: l0 - 1 is near z^2 times 0.66
    double root = 0.8 * height;
    for (int i = 0; i < 60; i++) {
      MembraneState s = MembraneState.at(law, 1.0 + root * root);
      if (s == null) {
        return root;
      }
      if (s.height() > height) {
        break;
      }
      root *= 1.3;
    }
    return BEYOND * root;
  }

  private interface Of {
    double value(MembraneState s);
  }

  private static PolynomialSplineFunction spline(MembraneState[] states, Of of) {
    double[] x = new double[states.length];
    double[] y = new double[states.length];
    for (int i = 0; i < x.length; i++) {
      x[i] = states[i].height() * states[i].height();
      y[i] = Math.log(of.value(states[i]));
    }
    return new SplineInterpolator().interpolate(x, y);
  }

  private double at(PolynomialSplineFunction f, double height) {
    // below the first knot the leading term of small heights
    double square = Math.max(height * height, f.getKnots()[0]);
    return height > most ? Double.NaN : Math.exp(f.value(square));
  }

  double pole(double height) {
    return 1.0 + at(pole, height) * height * height;
  }

  double edge(double height) {
    return 1.0 + at(edge, height) * height * height;
  }

  /** Pressure times radius over wall. */
  double pressure(double height) {
    return at(pressure, height) * height * height * height;
  }

  /** Volume over the cube of the radius. */
  double volume(double height) {
    return at(volume, height) * height;
  }

  /** The turning points of the pressure: on a spline first, then by integrations beside them. */
  static LimitPoints limits(StrainEnergy law, double thin) {
    double end = LimitPoints.farthest(law.range().high());
    double step = Math.log(end) / SEARCH;
    double[] x = new double[SEARCH];
    double[] y = new double[SEARCH];
    int count = 0;
    for (int i = 0; i < SEARCH; i++) {
      MembraneState s = MembraneState.at(law, Math.exp(step * (i + 1)));
      if (s == null) {
        break;
      }
      x[count] = step * (i + 1);
      y[count++] = thin * s.pressure();
    }
    if (count < 4) {
      return new LimitPoints(Optional.empty(), Optional.empty(), end);
    }
    PolynomialSplineFunction p =
        new SplineInterpolator().interpolate(Arrays.copyOf(x, count), Arrays.copyOf(y, count));
    double reached = Math.exp(x[count - 1]);
    LimitPoints rough =
        LimitPoints.of(l -> p.value(Math.log(l)), Math.exp(x[0]) * 1.001, reached * 0.999);
    return new LimitPoints(
        rough.maximum().map(m -> polish(law, thin, m)),
        rough.minimum().map(m -> polish(law, thin, m)),
        reached);
  }

  private static LimitPoints.Point polish(StrainEnergy law, double thin, LimitPoints.Point rough) {
    DoubleUnaryOperator p =
        l -> {
          MembraneState s = MembraneState.at(law, l);
          return s == null ? Double.NaN : thin * s.pressure();
        };
    return LimitPoints.turn(p, rough.stretch() * 0.99, rough.stretch() * 1.01);
  }
}
