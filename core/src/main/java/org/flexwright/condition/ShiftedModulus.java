package org.flexwright.condition;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Temperature;

/** The modulus of a fixed time by temperature: g(t/a_to)/g(t/a_from). */
record ShiftedModulus(Relaxation law, TimeShift shift, Temperature measuredAt, double time)
    implements TemperatureLaw {

  private double reduced(Temperature t, double share) {
    return time / Math.pow(ShiftedRelaxation.factor(shift.log(measuredAt, t)), share);
  }

  private double ratio(Temperature from, Temperature to, double share) {
    return law.at(reduced(to, share)) / law.at(reduced(from, share));
  }

  @Override
  public double ratio(Temperature from, Temperature to) {
    return ratio(from, to, 1.0);
  }

  @Override
  public double band(Temperature from, Temperature to) {
    double here = ratio(from, to, 1.0);
    double off =
        Math.max(
            Math.abs(Math.log(ratio(from, to, 1.0 + shift.plusMinus()) / here)),
            Math.abs(Math.log(ratio(from, to, 1.0 - shift.plusMinus()) / here)));
    return Math.exp(Math.hypot(Math.log(law.band(reduced(from, 1.0), reduced(to, 1.0))), off));
  }

  @Override
  public List<Caveat> caveats(Temperature from, Temperature to) {
    List<Caveat> all = new ArrayList<>(Temperatures.outside(shift.range(), from, to));
    all.addAll(law.caveats(reduced(from, 1.0), reduced(to, 1.0)));
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
    return shift + " of " + law + " at " + Text.number(time) + " s";
  }
}
