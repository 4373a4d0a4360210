package org.flexwright.condition;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Require;
import org.flexwright.quantity.Temperature;

/** A relaxation at another temperature: g(t/a), G a times that of t/a. */
record ShiftedRelaxation(Relaxation law, TimeShift shift, Temperature measuredAt, Temperature at)
    implements Relaxation {

  // beyond a hundred decades of time no number is left
  private static final double MOST = 230.0;

  /** The shift factor of a logarithm. */
  static double factor(double log) {
    return Math.exp(Require.between("logarithm of the shift of time", log, -MOST, MOST, ""));
  }

  private double factor() {
    return factor(shift.log(measuredAt, at));
  }

  @Override
  public double at(double seconds) {
    return law.at(seconds / factor());
  }

  @Override
  public double integral(double seconds) {
    double a = factor();
    return a * law.integral(seconds / a);
  }

  @Override
  public double band(double from, double to) {
    double log = shift.log(measuredAt, at);
    double a = factor(log);
    double here = law.at(to / a) / law.at(from / a);
    double off = 0.0;
    for (int side = -1; side <= 1; side += 2) {
      double b = Math.exp(log * (1.0 + side * shift.plusMinus()));
      off = Math.max(off, Math.abs(Math.log(law.at(to / b) / law.at(from / b) / here)));
    }
    return Math.exp(Math.hypot(Math.log(law.band(from / a, to / a)), off));
  }

  @Override
  public List<Caveat> caveats(double from, double to) {
    double a = factor();
    List<Caveat> all = new ArrayList<>(Temperatures.outside(shift.range(), measuredAt, at));
    all.addAll(law.caveats(from / a, to / a));
    return List.copyOf(all);
  }

  @Override
  public List<Source> sources() {
    List<Source> all = new ArrayList<>(law.sources());
    all.addAll(shift.sources());
    return List.copyOf(all);
  }

  @Override
  public String toString() {
    return law + " at " + at;
  }
}
