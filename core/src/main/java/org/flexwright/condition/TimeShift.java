package org.flexwright.condition;

import java.time.Duration;
import java.util.List;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.quantity.Temperature;

/**
 * Time-temperature superposition: a warm material does at once what a cold one does later.
 *
 * <p>Formula: g(t, T) = g(t/a_T, T0), a_T the shift factor from T0, where g was measured, to T.
 * Symbols: t time (s), T temperature (K), a_T below 1 when warmer. The small change of stiffness
 * with absolute temperature and density (a vertical shift) is left out.
 *
 * <p>Range: beyond its temperatures a law keeps the shift of its end and says so in a caveat.
 * Crystals and hard blocks that melt do not follow it. Open to users; implementations are immutable
 * and thread-safe.
 *
 * <p>JShell: {@code ArrheniusShift.of(Energy.joules(6e4), 0.2, Temperature.celsius(15),
 * Temperature.celsius(70), source).shift(PowerRelaxation.polyurethane(), Temperature.celsius(23),
 * Temperature.celsius(60)).at(3600)}
 */
public interface TimeShift {

  /**
   * The shift from one temperature to another.
   *
   * @param from the temperature of the known times
   * @param to the temperature asked for
   * @return ln a_T, negative when warmer, finite
   */
  double log(Temperature from, Temperature to);

  /**
   * How far ln a_T may be off, as a share of it: 0.2 means from 80 to 120 %, about 95 % of cases.
   *
   * @return the share, not negative
   */
  double plusMinus();

  /**
   * The temperatures at which it holds.
   *
   * @return the range in degrees Celsius
   */
  ValidityRange range();

  /**
   * Where the law comes from.
   *
   * @return the sources, at least one
   */
  List<Source> sources();

  /**
   * A relaxation at another temperature.
   *
   * @param law the relaxation as measured
   * @param from the temperature at which it was measured
   * @param to the temperature asked for
   * @return the relaxation there, its band wider by that of the shift; a shift of more than a
   *     hundred decades of time is refused when it is asked
   */
  default Relaxation shift(Relaxation law, Temperature from, Temperature to) {
    return new ShiftedRelaxation(law, this, from, to);
  }

  /**
   * The modulus by temperature that this shift gives for a relaxation, read at a fixed time.
   *
   * @param law the relaxation as measured
   * @param measuredAt the temperature at which it was measured
   * @param time the time to which the modulus belongs, above 0
   * @return the law
   * @throws org.flexwright.InvalidInputException if the time is not above 0
   */
  default TemperatureLaw modulus(Relaxation law, Temperature measuredAt, Duration time) {
    return new ShiftedModulus(law, this, measuredAt, Times.positive("time of the modulus", time));
  }
}
