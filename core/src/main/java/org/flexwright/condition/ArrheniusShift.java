package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Energy;
import org.flexwright.quantity.Temperature;

/**
 * The shift of time by one activation energy, for elastomers well above their glass transition.
 *
 * <p>Formula: ln a_T = (Ea/R)(1/T - 1/T0). Symbols: Ea activation energy (J/mol), R 8.31446 J/(mol
 * K), T temperature (K), T0 the temperature of the known times (K).
 *
 * <p>Range: the temperatures it was measured at. Creep of polyurethane follows it between 15 and 35
 * degC (Polymers 15 (2023) 3770). Caveats: temperatures outside the range.
 *
 * <p>Source: the form is the textbook one; the energy is the user's, since no open value for
 * printed polyurethane was found.
 *
 * <p>JShell: {@code ArrheniusShift.of(Energy.joules(6e4), 0.2, Temperature.celsius(15),
 * Temperature.celsius(70), source).log(Temperature.celsius(23), Temperature.celsius(60))}
 *
 * @param perMole Ea for one mole, not negative
 * @param plusMinus how far Ea may be off, as a share of it
 * @param range the temperatures it was measured at, in degrees Celsius
 * @param source where Ea comes from
 */
public record ArrheniusShift(Energy perMole, double plusMinus, ValidityRange range, Source source)
    implements TimeShift {

  private static final double GAS = 8.314462618;
  private static final double ICE = Temperature.celsius(0).kelvin();

  /**
   * Refuses energies that make no sense.
   *
   * @param perMole Ea for one mole, not negative
   * @param plusMinus how far Ea may be off, as a share of it
   * @param range the temperatures it was measured at, in degrees Celsius
   * @param source where Ea comes from
   * @throws org.flexwright.InvalidInputException if the energy is negative or above 1 MJ/mol, or
   *     the range at absolute zero
   */
  public ArrheniusShift {
    Require.between("activation energy per mole", perMole.joules(), 0.0, 1e6, "J");
    Require.between("share by which the activation energy is off", plusMinus, 0.0, 1.0, "");
    Require.between("lowest temperature", range.low(), -200.0, 1000.0, "degC");
  }

  /**
   * From the activation energy.
   *
   * @param perMole Ea for one mole
   * @param plusMinus how far it may be off, as a share of it: 0.2 means 20 %
   * @param from the lowest temperature it was measured at, -200 degC at least
   * @param to the highest
   * @param source the test
   * @return the law
   * @throws org.flexwright.InvalidInputException if a figure makes no sense
   */
  public static ArrheniusShift of(
      Energy perMole, double plusMinus, Temperature from, Temperature to, Source source) {
    return new ArrheniusShift(
        perMole, plusMinus, Temperatures.range("Arrhenius shift", from, to, source), source);
  }

  @Override
  public double log(Temperature from, Temperature to) {
    double cold = Temperatures.inside(range, from) + ICE;
    double warm = Temperatures.inside(range, to) + ICE;
    return perMole.joules() / GAS * (1.0 / warm - 1.0 / cold);
  }

  @Override
  public List<Source> sources() {
    return List.of(source);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "Arrhenius shift, " + Text.number(perMole.joules() / 1e3) + " kJ/mol";
  }
}
