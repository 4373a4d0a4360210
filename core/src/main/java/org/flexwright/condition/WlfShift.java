package org.flexwright.condition;

import java.util.List;
import org.flexwright.evidence.Source;
import org.flexwright.evidence.ValidityRange;
import org.flexwright.internal.Require;
import org.flexwright.internal.Text;
import org.flexwright.quantity.Temperature;

/**
 * The shift of time by free volume, for the hundred degrees above the glass transition.
 *
 * <p>Formula: log10 a_T = -C1 (T - Tr)/(C2 + T - Tr). Symbols: C1, C2 (K) constants of the
 * reference temperature Tr; from a temperature other than Tr the shift is the difference of two.
 *
 * <p>Range: from Tr to Tr + 100 K unless {@link #range(Temperature, Temperature)} says otherwise;
 * the formula ends at Tr - C2. Caveats: temperatures outside the range. The universal constants
 * belong to no material in particular: ln a_T is taken as known to 30 %, a judgement. Printed
 * polyurethane has its transition at -45 to -20 degC, so room temperature is far up this range:
 * {@link ArrheniusShift} is the better choice from 15 to 70 degC.
 *
 * <p>Source: Williams, Landel and Ferry 1955, J. Am. Chem. Soc. 77 (from memory).
 *
 * <p>JShell: {@code WlfShift.universal(Temperature.celsius(-35)).log(Temperature.celsius(0),
 * Temperature.celsius(30))}
 *
 * @param c1 C1, above 0
 * @param c2 C2 in kelvin, above 0
 * @param reference Tr
 * @param plusMinus how far ln a_T may be off, as a share of it
 * @param range the temperatures at which it holds, in degrees Celsius
 * @param source where the constants come from
 */
public record WlfShift(
    double c1,
    double c2,
    Temperature reference,
    double plusMinus,
    ValidityRange range,
    Source source)
    implements TimeShift {

  private static final String NAME = "WLF shift";
  private static final double SPAN = 100.0;

  /**
   * Refuses constants without a meaning and a range that holds the pole of the formula.
   *
   * @param c1 C1, above 0
   * @param c2 C2 in kelvin, above 0
   * @param reference Tr
   * @param plusMinus how far ln a_T may be off, as a share of it
   * @param range the temperatures at which it holds, in degrees Celsius
   * @param source where the constants come from
   * @throws org.flexwright.InvalidInputException if a constant is not above 0 or the range reaches
   *     down to Tr - C2
   */
  public WlfShift {
    Require.between("C1 of the WLF shift", c1, Double.MIN_NORMAL, 100.0, "");
    Require.between("C2 of the WLF shift", c2, Double.MIN_NORMAL, 1000.0, "K");
    Require.between("share by which the shift is off", plusMinus, 0.0, 1.0, "");
    Require.that(
        range.low() >= reference.celsius() - 0.9 * c2,
        "lowest temperature of the WLF shift",
        Text.number(range.low()) + " degC",
        Text.number(reference.celsius() - 0.9 * c2) + " degC or above, Tr - 0.9 C2",
        "near Tr - C2 the formula has no value");
  }

  /**
   * From measured constants.
   *
   * @param c1 C1
   * @param c2 C2 in kelvin
   * @param reference Tr
   * @param plusMinus how far ln a_T may be off, as a share of it: 0.1 means 10 %
   * @param source the test
   * @return the law, from Tr to Tr + 100 K
   * @throws org.flexwright.InvalidInputException if a constant is not above 0
   */
  public static WlfShift of(
      double c1, double c2, Temperature reference, double plusMinus, Source source) {
    Temperature end = Temperature.kelvin(reference.kelvin() + SPAN);
    return new WlfShift(
        c1, c2, reference, plusMinus, Temperatures.range(NAME, reference, end, source), source);
  }

  /**
   * The universal constants, C1 17.44 and C2 51.6 K at the glass transition.
   *
   * @param glassTransition Tg
   * @return the law
   */
  public static WlfShift universal(Temperature glassTransition) {
    return of(
        17.44,
        51.6,
        glassTransition,
        0.3,
        Source.memory("Williams, Landel & Ferry 1955, J. Am. Chem. Soc. 77, universal constants"));
  }

  /**
   * This law for other temperatures.
   *
   * @param from the lowest, above Tr - 0.9 C2
   * @param to the highest
   * @return the new law
   * @throws org.flexwright.InvalidInputException if the range is empty or holds the pole
   */
  public WlfShift range(Temperature from, Temperature to) {
    return new WlfShift(
        c1, c2, reference, plusMinus, Temperatures.range(NAME, from, to, source), source);
  }

  @Override
  public double log(Temperature from, Temperature to) {
    return log(to) - log(from);
  }

  private double log(Temperature t) {
    double above = Temperatures.inside(range, t) - reference.celsius();
    return -Math.log(10.0) * c1 * above / (c2 + above);
  }

  @Override
  public List<Source> sources() {
    return List.of(source);
  }

  /** One readable line. */
  @Override
  public String toString() {
    return "WLF shift, C1 " + Text.number(c1) + ", C2 " + Text.number(c2) + " K at " + reference;
  }
}
