package org.flexwright.shells.bellows;

import java.util.function.DoubleUnaryOperator;
import org.flexwright.quantity.Length;
import org.flexwright.response.Channel;
import org.flexwright.response.ClosedForm;
import org.flexwright.response.LoadCase;

/**
 * A bellows bent, from its axial spring: turning an end by a spreads and closes the convolutions by
 * R a cos(q) round the axis, so M = K R^2/2 a, and the axial strain at R a is that of the most
 * opened place.
 */
final class Turned {

  /** Share of the working strain round the axis, int |cos|^3/int cos^2. */
  private static final double ROUND = 8.0 / (3.0 * Math.PI);

  private Turned() {}

  /** The axial form; asked for an angle, made one of moment by angle. */
  static ClosedForm of(
      LoadCase load,
      ClosedForm axial,
      Length meanRadius,
      DoubleUnaryOperator stiffness,
      DoubleUnaryOperator strain,
      double working) {
    ClosedForm along = axial.spring(stiffness).strainSlope(strain).working(working);
    if (!(load instanceof LoadCase.ToAngle)) {
      return along;
    }
    double r = meanRadius.m();
    return along
        .turned()
        .load(Channel.MOMENT, (t, a) -> 0.5 * r * r * stiffness.applyAsDouble(t) * a)
        .strain((t, a) -> strain.applyAsDouble(t) * r * a)
        .working(working * ROUND);
  }

  /** The axial travel; of a turned end, that of the most opened place; 0 of another load case. */
  static double travel(LoadCase load, Length meanRadius) {
    if (load instanceof LoadCase.ToAngle to) {
      return to.angle().rad() * meanRadius.m();
    }
    return load instanceof LoadCase.ToTravel to ? to.travel().m() : 0.0;
  }
}
