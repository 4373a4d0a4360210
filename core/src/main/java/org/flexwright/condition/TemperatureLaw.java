package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Caveat;
import org.flexwright.evidence.Source;
import org.flexwright.quantity.Temperature;

/**
 * How the modulus changes with temperature, by one factor for all strains.
 *
 * <p>Range: beyond the temperatures it was measured at a law keeps the value of its end and says so
 * in a caveat; it never extrapolates. A law comes from a table ({@link TemperatureTable}) or from a
 * shift of time ({@link TimeShift#modulus}). Open to users; implementations are immutable and
 * thread-safe.
 *
 * <p>JShell: {@code TemperatureTable.polyurethane().ratio(Temperature.celsius(23),
 * Temperature.celsius(60))}
 */
public interface TemperatureLaw {

  /**
   * The modulus at one temperature over that at another.
   *
   * @param from the temperature at which it is known
   * @param to the temperature at which it is asked for
   * @return E(to)/E(from), above 0, 1 for the same temperature
   */
  double ratio(Temperature from, Temperature to);

  /**
   * How far that ratio may be off: 1.2 means from 1/1.2 to 1.2 of it, about 95 % of cases.
   *
   * @param from the temperature at which the modulus is known
   * @param to the temperature at which it is asked for
   * @return the end of the band, at least 1
   */
  double band(Temperature from, Temperature to);

  /**
   * What must be said when this law leads from one temperature to another.
   *
   * @param from the temperature at which the modulus is known
   * @param to the temperature at which it is asked for
   * @return the caveats, those of the range of temperatures among them
   */
  List<Caveat> caveats(Temperature from, Temperature to);

  /**
   * Where the law comes from.
   *
   * @return the sources, at least one
   */
  List<Source> sources();
}
