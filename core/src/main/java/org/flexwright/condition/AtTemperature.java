package org.flexwright.condition;

import java.util.ArrayList;
import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.law.StrainEnergy;
import org.flexwright.quantity.Temperature;

/**
 * At another temperature than that of the test: every stress of the law is multiplied by the same
 * number.
 *
 * <p>Formula: factor = E(T)/E(T0). Symbols: T temperature of service, T0 temperature to which the
 * modulus of the grade belongs, 23 degC unless told otherwise.
 *
 * <p>Range and band: those of the law. Caveats: those of the law; strain at break and life change
 * with temperature too, which this leaves out. Order: then {@link Held}, by the relaxation at this
 * temperature ({@link TimeShift#shift}), gives g(t/a_T)/g(t_ref); with the relaxation of the
 * laboratory it would not, unless that is a power law.
 *
 * <p>Source: that of the law.
 *
 * <p>JShell: {@code grade.under(AtTemperature.of(Temperature.celsius(60),
 * TemperatureTable.polyurethane())).modulusAt(0.05)}
 *
 * @param temperature T
 * @param law the modulus by temperature
 * @param reference T0
 */
public record AtTemperature(Temperature temperature, TemperatureLaw law, Temperature reference)
    implements Condition {

  private static final Caveat LIMITS =
      Caveat.note(
          "at a temperature",
          "only the stiffness follows the temperature; strain at break and life do not",
          Source.assumption("no data"));

  /**
   * For a grade known at 23 degC.
   *
   * @param temperature the temperature of service
   * @param law the modulus by temperature
   * @return the condition
   */
  public static AtTemperature of(Temperature temperature, TemperatureLaw law) {
    return new AtTemperature(temperature, law, Temperatures.LABORATORY);
  }

  /**
   * This condition for a grade whose modulus belongs to another temperature.
   *
   * @param of the temperature of its test
   * @return the new condition
   */
  public AtTemperature reference(Temperature of) {
    return new AtTemperature(temperature, law, of);
  }

  @Override
  public StrainEnergy apply(StrainEnergy of) {
    return of.scaled(law.ratio(reference, temperature));
  }

  @Override
  public double band() {
    return law.band(reference, temperature);
  }

  @Override
  public List<Caveat> caveats() {
    List<Caveat> all = new ArrayList<>(law.caveats(reference, temperature));
    all.add(LIMITS);
    return List.copyOf(all);
  }

  @Override
  public List<Source> sources() {
    return law.sources();
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "at " + temperature + " (" + law + ")";
  }
}
