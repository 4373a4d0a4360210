package org.flexwright.shells.inflate;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Pressure;

/** The uniform states of a tube with given ends, by the stretch of its bore. */
final class TubePath {

  final TubeWall wall;
  private final TubeEnds ends;
  private final double held;
  private final double end;

  TubePath(StrainEnergy law, double inner, double outer, TubeEnds ends, double held) {
    wall = new TubeWall(law, inner, outer);
    this.ends = ends;
    this.held = held;
    end = LimitPoints.farthest(law.range().high());
  }

  double axial(double bore) {
    return ends == TubeEnds.HELD ? held : wall.axial(ends, z -> bore);
  }

  double pressure(double bore) {
    return wall.pressure(bore, axial(bore));
  }

  /** Axial stretch at a deformed outer radius. */
  double axialAt(double outside) {
    return ends == TubeEnds.HELD ? held : wall.axial(ends, z -> wall.bore(outside, z));
  }

  double rest() {
    return ends == TubeEnds.HELD ? 1.0 / Math.sqrt(held) : 1.0;
  }

  double outside(double bore) {
    return wall.outside(bore, axial(bore));
  }

  LimitPoints limits() {
    return LimitPoints.of(this::pressure, rest(), Math.max(end, rest()));
  }

  /** Where a bulge starts: the first zero of the Jacobian of pressure and axial force. */
  Optional<LimitPoints.Point> initiation() {
    DoubleUnaryOperator jacobian = bore -> wall.jacobian(bore, axial(bore));
    return LimitPoints.firstZero(jacobian, rest(), Math.max(rest(), end))
        .map(bore -> new LimitPoints.Point(bore, Pressure.pa(pressure(bore))));
  }

  /** Energy less the work of the pressure, for each reference length: even in two phases. */
  private double potential(double bore, double pressure) {
    double axial = axial(bore);
    return wall.energy(bore, axial) - pressure * wall.volume(bore, axial);
  }

  /** Both phases at the equal-area pressure: bore stretches of the thin side and of the bulge. */
  Optional<double[]> phases(LimitPoints limits) {
    if (limits.maximum().isEmpty() || limits.minimum().isEmpty()) {
      return Optional.empty();
    }
    double max = limits.maximum().get().stretch();
    double min = limits.minimum().get().stretch();
    double low = limits.minimum().get().pressure().pa();
    double high = Math.min(limits.maximum().get().pressure().pa(), pressure(end));
    double hair = 1e-9 * (high - low);
    DoubleUnaryOperator lead = p -> potential(upper(p, min), p) - potential(lower(p, max), p);
    // the bulge costs more at the low end and less at the high one
    if (!(lead.applyAsDouble(low + hair) > 0.0 && lead.applyAsDouble(high - hair) < 0.0)) {
      return Optional.empty();
    }
    double p = LimitPoints.root(lead, low + hair, high - hair);
    return Optional.of(new double[] {lower(p, max), upper(p, min)});
  }

  private double lower(double p, double max) {
    return LimitPoints.root(bore -> pressure(bore) - p, rest(), max);
  }

  private double upper(double p, double min) {
    return LimitPoints.root(bore -> pressure(bore) - p, min, end);
  }
}
